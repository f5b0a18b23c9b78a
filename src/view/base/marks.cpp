#include "view/base/marks.h"

#include "view/base/people_palette.h"

#include <QPainter>

PersonMark::PersonMark(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &PersonMark::changed, this, [this] { update(); });
}

void PersonMark::paint(QPainter* painter) {
    const qreal side = std::min(width(), height());
    people::paintMark(*painter, {(width() - side) / 2, (height() - side) / 2, side, side}, mark_,
                      letter_, family_);
}

FabricBand::FabricBand(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &FabricBand::changed, this, [this] { update(); });
}

void FabricBand::paint(QPainter* painter) {
    people::paintFabric(*painter, QRectF{0, 0, width(), height()}.adjusted(1, 1, -1, -1), mark_,
                        QPen{ink_, 2});
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
