#include "view/edit/top_item.h"

#include "job/squareness.h"
#include "view/paint/cloth.h"
#include "view/paint/quilt_drawing.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

using namespace bastewright;

namespace {

constexpr double kShown = 0.09; // of the top's shorter side: plain to see, still a quilt
constexpr int kMostTimes = 24;  // what is square enough does not look as if it were not

QPointF inches(Point p) {
    return {p.x.in(), p.y.in()};
}

/// The grid as it adds up, in the middle of the top.
QRectF gridOutline(const Top& top) {
    const Rect area = topRect(top);
    const double w = top.grid->width().in(), l = top.grid->length().in();
    return {(area.width().in() - w) / 2, (area.length().in() - l) / 2, w, l};
}

/// By how much a reading is over the mean of its kind.
double over(const std::vector<Length>& readings, std::size_t i) {
    double sum = 0;
    for (const Length r : readings)
        sum += r.in();
    return readings[i].in() - sum / double(readings.size());
}

/// What is off, in inches: head and foot wider, left and right longer, the foot to the right.
struct Off {
    double head = 0, foot = 0, left = 0, right = 0, lean = 0;
    double largest() const {
        return std::max(
            {std::abs(head), std::abs(foot), std::abs(left), std::abs(right), std::abs(lean)});
    }
};

Off offOf(const Top& top) {
    Off off;
    if (!top.width.empty()) {
        off.head = over(top.width, 0);
        off.foot = over(top.width, top.width.size() - 1);
    }
    if (!top.length.empty()) {
        off.left = over(top.length, 0);
        off.right = over(top.length, top.length.size() - 1);
    }
    off.lean = squareness(top).lean.value_or(Length{}).in();
    return off;
}

} // namespace

TopItem::TopItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &TopItem::changed, this, [this] { update(); });
}

void TopItem::setFace(const QuiltFace& face) {
    if (face == face_)
        return;
    face_ = face;
    emit changed();
}

int TopItem::exaggeration() const {
    if (!face_.top())
        return 0;
    const double off = offOf(*face_.top()).largest();
    const Rect top = topRect(*face_.top());
    if (off < 0.01)
        return 0;
    return std::clamp(int(kShown * std::min(top.width().in(), top.length().in()) / off), 1,
                      kMostTimes);
}

QTransform TopItem::map() const {
    auto area = drawing::inches(topRect(*face_.top()));
    if (showsGrid() && face_.top()->grid)
        area = area.united(gridOutline(*face_.top()));
    const qreal room = crooked_ ? kShown * std::min(area.width(), area.height()) * 1.2 : 0;
    return drawing::fitted(area.adjusted(-room, -room, room, room), size(), 4 * line_);
}

QPointF TopItem::placeAt(qreal x, qreal y) const {
    return face_.top() ? map().inverted().map(QPointF{x, y}) : QPointF{};
}

void TopItem::paint(QPainter* painter) {
    if (!face_.top() || topRect(*face_.top()).empty())
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    if (crooked_ && exaggeration() > 0)
        return paintCrooked(*painter);
    const bastewright::Top& top = *face_.top();
    const Rect area = topRect(top);
    const auto to = map();
    cloth::paintTop(*painter, top, to);
    if (!top.photo.empty())
        cloth::paintSeams(*painter, top, to); // what is measured, over what it looks like
    painter->setPen(QPen{accent_, line_ * 3, Qt::SolidLine, Qt::RoundCap});
    for (const auto& s : top.seams)
        painter->drawLine(to.map(inches(s.from)), to.map(inches(s.to)));
    if (begun_.x() >= 0) {
        painter->setBrush(accent_);
        painter->drawEllipse(to.map(begun_), line_ * 4, line_ * 4);
    }
    painter->setPen(QPen{ink_, line_ * 2});
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(to.mapRect(drawing::inches(area)));
    if (showsGrid() && top.grid)
        paintGridOff(*painter);
}

void TopItem::paintGridOff(QPainter& painter) const {
    const auto to = map();
    const QRectF whole = to.mapRect(drawing::inches(topRect(*face_.top())));
    painter.setPen(QPen{accent_, line_ * 2, Qt::DashLine});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(to.mapRect(gridOutline(*face_.top())));
    QFont font = painter.font();
    font.setPixelSize(int(textSize_));
    font.setBold(true);
    painter.setFont(font);
    // Words lie along the border they are about, on cloth of their own so that seams do not cross
    // them.
    const auto say = [&](QPointF at, double turned, const QString& text) {
        if (text.isEmpty())
            return;
        painter.save();
        painter.translate(at);
        painter.rotate(turned);
        const QSizeF size = QFontMetricsF{font}.size(Qt::TextSingleLine, text) + QSizeF{12, 4};
        const QRectF box{-size.width() / 2, -size.height() / 2, size.width(), size.height()};
        painter.setPen(QPen{accent_, line_});
        painter.setBrush(cloth_);
        painter.drawRoundedRect(box, 4, 4);
        painter.setPen(ink_);
        painter.drawText(box, Qt::AlignCenter, text);
        painter.restore();
    };
    const double in = textSize_;
    say({whole.left() + in, whole.center().y()}, -90, sides_);
    say({whole.right() - in, whole.center().y()}, -90, sides_);
    say({whole.center().x(), whole.top() + in}, 0, ends_);
    say({whole.center().x(), whole.bottom() - in}, 0, ends_);
}

void TopItem::paintCrooked(QPainter& painter) const {
    const Rect area = topRect(*face_.top());
    const Off off = offOf(*face_.top());
    const double k = exaggeration(), w = area.width().in(), l = area.length().in();
    const auto to = map();
    QPolygonF shape;
    shape << QPointF{-k * off.head / 2, -k * off.left / 2}
          << QPointF{w + k * off.head / 2, -k * off.right / 2}
          << QPointF{w + k * (off.foot / 2 + off.lean), l + k * off.right / 2}
          << QPointF{k * (off.lean - off.foot / 2), l + k * off.left / 2};
    painter.setPen(QPen{ink_, line_ * 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.setBrush(patch_);
    painter.drawPolygon(to.map(shape));
    painter.setPen(QPen{ink_, line_});
    painter.drawLine(to.map(shape[0]), to.map(shape[2]));
    painter.drawLine(to.map(shape[1]), to.map(shape[3]));
    painter.setPen(QPen{accent_, line_ * 2, Qt::DashLine});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(to.mapRect(drawing::inches(area)));
}
