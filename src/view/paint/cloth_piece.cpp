#include "view/paint/cloth_piece.h"

#include "view/paint/cloth.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace {

constexpr qreal kPixelsPerInch = 8; ///< enough for a tile; it is scaled to it
const QColor kPale{0xf3, 0xef, 0xe6};

} // namespace

ClothPiece::ClothPiece(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &ClothPiece::changed, this, [this] { update(); });
}

const QImage& ClothPiece::picture() {
    if (picture_.isNull() || drawn_ != face_ || drawnArea_ != area_) {
        drawn_ = face_;
        drawnArea_ = area_;
        picture_ = cloth::pictureOf(*face_.top(), area_, (area_.size() * kPixelsPerInch).toSize());
    }
    return picture_;
}

void ClothPiece::paint(QPainter* painter) {
    const QRectF all{0, 0, width(), height()};
    if (area_.isEmpty() || all.isEmpty())
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    // Upright first, then turned as it lies; the cloth keeps its scale and fills the tile.
    const bool lying = quarter_ % 2 != 0;
    const QSizeF upright = lying ? all.size().transposed() : all.size();
    painter->save();
    painter->translate(all.center());
    painter->rotate(90 * quarter_);
    painter->translate(-upright.width() / 2, -upright.height() / 2);
    const QRectF own{{0, 0}, upright};
    painter->setClipRect(own, Qt::IntersectClip);
    const qreal scale =
        std::max(upright.width() / area_.width(), upright.height() / area_.height());
    if (plain_ || !face_.top()) {
        painter->fillRect(own, plain_ ? ground_ : kPale);
    } else {
        QRectF cover{{0, 0}, area_.size() * scale};
        cover.moveCenter(own.center());
        painter->drawImage(cover, picture());
        if (stage_ == QLatin1String("waiting")) {
            QColor pale = kPale;
            pale.setAlpha(150);
            painter->fillRect(own, pale);
        }
    }
    if (stage_ == QLatin1String("closed")) {
        QPainterPath path;
        path.addRect(own);
        cloth::paintSewn(*painter, path, scale);
    } else if (stage_ == QLatin1String("open")) {
        const qreal length = std::clamp(1.4 * scale, 10.0, 22.0);
        for (const QVariant& place : std::as_const(places_)) {
            const QPointF at = place.toPointF() - area_.topLeft();
            cloth::paintPin(
                *painter,
                {at.x() / area_.width() * own.width(), at.y() / area_.height() * own.height()},
                length, 0, true);
        }
    }
    painter->restore();
    const QColor thread = plain_ ? ink_ : cloth::kThread,
                 outline = plain_ ? ground_ : cloth::kOutline;
    if (stage_ == QLatin1String("open")) {
        const qreal in = line_ * 8; // inside the yellow frame of whose turn it is
        cloth::paintOpen(*painter, all.adjusted(in, in, -in, -in), line_, thread, outline);
    } else if (stage_ == QLatin1String("closed")) {
        // Slanted stitches round what is done.
        const qreal step = line_ * 6, slant = line_ * 4;
        for (const auto& [colour, width] :
             {std::pair{outline, line_ * 3.2}, std::pair{thread, line_ * 1.8}}) {
            painter->setPen(QPen{colour, width, Qt::SolidLine, Qt::RoundCap});
            for (qreal x = step; x < all.width() - step; x += step)
                for (const qreal y : {line_, all.height() - line_ - slant})
                    painter->drawLine(QPointF{x, y + slant}, QPointF{x + slant, y});
            for (qreal y = step; y < all.height() - step; y += step)
                for (const qreal x : {line_, all.width() - line_ - slant})
                    painter->drawLine(QPointF{x, y + slant}, QPointF{x + slant, y});
        }
    }
}
