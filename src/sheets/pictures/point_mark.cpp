#include "sheets/pictures/point_mark.h"

#include "sheets/ink.h"

#include <QPainter>

namespace bastewright::sheets {

void drawPoint(QPainter& p, QPointF at, WayPoint::Shape shape, bool level, bool mine) {
    const bool pin = shape == WayPoint::Shape::pin;
    if (shape == WayPoint::Shape::stitch) {
        const QPointF half = level ? QPointF{2.2, 0} : QPointF{0, 2.2};
        p.setPen(
            QPen{mine ? ink::kDark : ink::kQuiet, mine ? 1.1 : 0.6, Qt::SolidLine, Qt::RoundCap});
        p.drawLine(at - half, at + half);
        return;
    }
    if (shape == WayPoint::Shape::patch) {
        const double half = mine ? 3.2 : 2.2;
        p.setBrush(Qt::NoBrush);
        p.setPen(QPen{mine ? ink::kDark : ink::kQuiet, mine ? 1.0 : 0.6});
        p.drawRect(QRectF{at - QPointF{half, half}, QSizeF{2 * half, 2 * half}});
        return;
    }
    if (!pin || !mine) {
        p.setPen(Qt::NoPen);
        p.setBrush(mine ? ink::kDark : ink::kQuiet);
        const double r = pin ? 0.9 : mine ? 1.9 : 1.2;
        if (pin)
            p.drawEllipse(at, r, r);
        else
            p.drawRect(QRectF{at - QPointF{r, r}, QSizeF{2 * r, 2 * r}});
        return;
    }
    // An open pin: its back, its arm, its head.
    p.setPen(QPen{ink::kDark, 0.8, Qt::SolidLine, Qt::RoundCap});
    p.drawLine(at + QPointF{-2.6, 1.4}, at + QPointF{2.8, 1.4});
    p.drawLine(at + QPointF{-2.6, 1.4}, at + QPointF{2.2, -1.6});
    p.setPen(Qt::NoPen);
    p.setBrush(ink::kDark);
    p.drawEllipse(at + QPointF{2.2, -1.6}, 1, 1);
}

} // namespace bastewright::sheets
