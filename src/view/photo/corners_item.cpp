#include "view/photo/corners_item.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <QTransform>

CornersItem::CornersItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &CornersItem::changed, this, [this] {
        if (!photos_ || !photos_->picking())
            scaled_ = {};
        update();
        emit placeChanged();
    });
    connect(this, &QQuickItem::widthChanged, this, &CornersItem::placeChanged);
    connect(this, &QQuickItem::heightChanged, this, &CornersItem::placeChanged);
}

void CornersItem::setPhotos(PhotoDesk* photos) {
    if (photos == photos_)
        return;
    if (photos_)
        photos_->disconnect(this);
    photos_ = photos;
    if (photos_) {
        connect(photos_, &PhotoDesk::pictureChanged, this, &CornersItem::changed);
        connect(photos_, &PhotoDesk::cornersChanged, this, &CornersItem::changed);
    }
    emit changed();
}

QRectF CornersItem::place() const {
    const QRectF room = boundingRect().adjusted(margin_, margin_, -margin_, -margin_);
    if (!photos_ || !photos_->picking() || room.isEmpty())
        return {};
    QRectF out{{0, 0}, QSizeF{photos_->picture().size()}.scaled(room.size(), Qt::KeepAspectRatio)};
    out.moveCenter(room.center());
    return out;
}

void CornersItem::paint(QPainter* painter) {
    const QRectF at = place();
    if (at.isEmpty())
        return;
    const QImage picture = photos_->picture();
    painter->setRenderHint(QPainter::Antialiasing);
    if (scaled_.isNull() || scaledKey_ != picture.cacheKey() ||
        scaled_.size() != at.size().toSize()) {
        scaledKey_ = picture.cacheKey();
        scaled_ =
            picture.scaled(at.size().toSize(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    }
    painter->drawImage(at.topLeft(), scaled_);
    QPolygonF quad;
    for (const QPointF& corner : photos_->corners())
        quad << at.topLeft() + QPointF{corner.x() * at.width(), corner.y() * at.height()};
    QPainterPath outside, inside;
    outside.addRect(at);
    inside.addPolygon(quad);
    inside.closeSubpath();
    painter->fillPath(outside.subtracted(inside), QColor{0, 0, 0, 110});
    paintGrid(*painter, quad);
    for (const auto& [colour, width] :
         {std::pair{ink_, line_ * 4.4}, std::pair{mark_, line_ * 2.4}}) {
        painter->setPen(QPen{colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
        painter->setBrush(Qt::NoBrush);
        painter->drawPolygon(quad);
    }
    if (held_ >= 0 && held_ < quad.size() && lens_ > 0)
        paintLens(*painter);
}

void CornersItem::paintLens(QPainter& painter) const {
    constexpr qreal kEnlarged = 3; // of the picture's own pixels
    const QImage picture = photos_->picture();
    const QPointF corner = photos_->corners()[held_];
    const QPointF at{corner.x() * picture.width(), corner.y() * picture.height()};
    QRectF shown{0, 0, lens_ / kEnlarged, lens_ / kEnlarged};
    shown.moveCenter(at);
    // In the far upper corner of the item.
    const QRectF lens{corner.x() < 0.5 ? width() - lens_ - line_ * 4 : line_ * 4, line_ * 4, lens_,
                      lens_};
    QPainterPath round;
    round.addEllipse(lens);
    painter.save();
    painter.setClipPath(round);
    painter.fillPath(round, Qt::black);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(lens, picture, shown);
    painter.restore();
    for (const auto& [colour, width] :
         {std::pair{ink_, line_ * 4.4}, std::pair{mark_, line_ * 2.4}}) {
        painter.setPen(QPen{colour, width});
        painter.drawEllipse(lens);
        for (const QPointF& arm : {QPointF{lens_ / 5, 0}, QPointF{0, lens_ / 5}})
            painter.drawLine(lens.center() - arm, lens.center() + arm);
    }
}

void CornersItem::paintGrid(QPainter& painter, const QPolygonF& quad) const {
    constexpr int kLines = 4;
    QTransform map;
    if (!QTransform::squareToQuad(quad, map))
        return;
    for (const auto& [colour, width] : {std::pair{QColor{0, 0, 0, 120}, line_ * 1.8},
                                        std::pair{QColor{255, 255, 255, 200}, line_ * 0.9}}) {
        painter.setPen(QPen{colour, width});
        for (int i = 1; i < kLines; ++i) {
            const qreal t = qreal(i) / kLines;
            painter.drawLine(map.map(QPointF{t, 0}), map.map(QPointF{t, 1}));
            painter.drawLine(map.map(QPointF{0, t}), map.map(QPointF{1, t}));
        }
    }
}
