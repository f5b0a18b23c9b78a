#include "view/paint/ribbon.h"

#include <QPainter>
#include <QPainterPath>

Ribbon::Ribbon(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &Ribbon::changed, this, [this] { update(); });
}

void Ribbon::paint(QPainter* painter) {
    const qreal w = width(), h = height(), notch = h * 0.3;
    painter->setRenderHint(QPainter::Antialiasing);
    if (mirrored_) {
        painter->translate(w, 0);
        painter->scale(-1, 1);
    }
    QPainterPath shape;
    shape.moveTo(0, 0);
    shape.lineTo(w, 0);
    shape.lineTo(w - notch, h / 2);
    shape.lineTo(w, h);
    shape.lineTo(0, h);
    shape.closeSubpath();
    painter->fillPath(shape, colour_);
    painter->save();
    painter->setClipPath(shape);
    // Twill runs aslant; a thread of selvage along both edges.
    QColor twill = ink_;
    twill.setAlpha(22);
    painter->setPen(QPen{twill, 1.4});
    for (qreal x = -h; x < w; x += 7)
        painter->drawLine(QPointF{x, h}, QPointF{x + h, 0});
    painter->fillRect(QRectF{0, h * 0.07, w, 2}, QColor{255, 255, 255, 100});
    painter->fillRect(QRectF{0, h * 0.93 - 2, w, 2}, QColor{255, 255, 255, 100});
    painter->restore();
    painter->setPen(QPen{ink_, 1});
    painter->setBrush(Qt::NoBrush);
    painter->drawPath(shape);
}
