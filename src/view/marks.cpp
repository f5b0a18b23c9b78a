#include "view/marks.h"

#include "view/people_palette.h"

#include <QPainter>

PersonMark::PersonMark(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &PersonMark::changed, this, [this] { update(); });
}

void PersonMark::paint(QPainter* painter) {
    const qreal side = std::min(width(), height());
    if (side < 4)
        return;
    const QColor ink{0x14, 0x21, 0x2b};
    const qreal line = std::max(1.0, side / 22);
    QRectF disc{(width() - side) / 2, (height() - side) / 2, side, side};
    disc.adjust(line / 2, line / 2, -line / 2, -line / 2);
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    painter->setBrush(people::fill(mark_));
    painter->drawEllipse(disc);
    painter->setBrush(QBrush{ink, people::pattern(mark_)});
    painter->setPen(QPen{ink, line});
    painter->drawEllipse(disc);
    const qreal ring = side * 0.17;
    const QRectF plain = disc.adjusted(ring, ring, -ring, -ring);
    painter->setBrush(Qt::white);
    painter->drawEllipse(plain);
    QFont font{family_};
    font.setBold(true);
    font.setPixelSize(std::max(6, int(plain.height() * (letter_.size() < 2   ? 0.78
                                                        : letter_.size() < 3 ? 0.58
                                                                             : 0.42))));
    painter->setFont(font);
    painter->drawText(plain, Qt::AlignCenter, letter_);
}

StitchFrame::StitchFrame(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &StitchFrame::changed, this, [this] { update(); });
}

void StitchFrame::paint(QPainter* painter) {
    QPen pen{color_, thickness_};
    pen.setDashPattern({4, 2.6});
    pen.setCapStyle(Qt::RoundCap);
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(pen);
    painter->drawRoundedRect(QRectF{0, 0, width(), height()}.adjusted(1, 1, -1, -1), radius_,
                             radius_);
}

StateMark::StateMark(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &StateMark::changed, this, [this] { update(); });
}

void StateMark::paint(QPainter* painter) {
    const qreal side = std::min(width(), height());
    const qreal line = std::max(1.5, side / 12);
    QRectF box{(width() - side) / 2, (height() - side) / 2, side, side};
    box.adjust(line, line, -line, -line);
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen{ink_, line});
    if (state_ == QLatin1String("closed")) {
        painter->setBrush(fill_);
        painter->drawEllipse(box);
        painter->setPen(QPen{Qt::white, line * 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
        const auto at = [&](qreal x, qreal y) {
            return QPointF{box.left() + x * box.width(), box.top() + y * box.height()};
        };
        painter->drawPolyline(QPolygonF{{at(0.25, 0.55), at(0.43, 0.72), at(0.76, 0.3)}});
        return;
    }
    painter->setBrush(Qt::NoBrush);
    painter->drawEllipse(box);
    if (state_ == QLatin1String("open")) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(ink_);
        painter->drawPie(box.adjusted(line, line, -line, -line), -90 * 16, 180 * 16);
    }
}
