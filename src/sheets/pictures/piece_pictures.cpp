#include "sheets/pictures/piece_pictures.h"

#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/words.h"

#include <QPainter>

namespace bastewright::sheets {
namespace {

void frame(QPainter& p, QRectF r, double weight, const QBrush& fill = Qt::NoBrush) {
    p.setPen(QPen{ink::kDark, weight, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(fill);
    p.drawRect(r);
}

} // namespace

void drawStartPoint(QPainter& p, QRectF box, const Rect& top, const QString& across,
                    const QString& down) {
    constexpr double kMark = 4, kRing = 7;
    p.save();
    const QRectF r = Mapping{top, box.adjusted(12, 14, -12, -4)}(top);
    const QPointF middle = r.center();
    frame(p, r, ink::kLine, ink::kPaper);
    p.setPen(QPen{ink::kQuiet, ink::kThin, Qt::DashLine});
    p.drawLine(QPointF{r.left(), middle.y()}, QPointF{r.right(), middle.y()});
    p.drawLine(QPointF{middle.x(), r.top()}, QPointF{middle.x(), r.bottom()});
    p.setPen(QPen{ink::kDark, ink::kBold});
    for (const QPointF at : {QPointF{r.left(), middle.y()}, QPointF{r.right(), middle.y()}})
        p.drawLine(at - QPointF{kMark, 0}, at + QPointF{kMark, 0});
    for (const QPointF at : {QPointF{middle.x(), r.top()}, QPointF{middle.x(), r.bottom()}})
        p.drawLine(at - QPointF{0, kMark}, at + QPointF{0, kMark});
    p.setBrush(ink::kPaper);
    p.drawEllipse(middle, kRing, kRing);
    p.setBrush(ink::kDark);
    p.drawEllipse(middle, 2, 2);
    const double half = r.width() / 2 - kRing, quarter = r.height() / 4;
    for (const double side : {-1.0, 1.0}) {
        labelOnWhite(p, middle + QPointF{side * (kRing + half / 2), 0}, across, 10, half - 4);
        labelOnWhite(p, middle + QPointF{0, side * (quarter + kRing / 2)}, down, 10, r.width() - 8);
    }
    label(p, {middle.x(), r.top() - 9}, Text::tr("head"), 10, r.width(), false, ink::kQuiet);
    p.restore();
}

void drawMachineRoll(QPainter& p, QRectF box, const Rect& top, const Roll& roll) {
    p.save();
    Rect flat = top;
    switch (roll.side) {
    case Side::left:
        flat.x0 += roll.rolled;
        break;
    case Side::right:
        flat.x1 -= roll.rolled;
        break;
    case Side::head:
        flat.y0 += roll.rolled;
        break;
    case Side::foot:
        flat.y1 -= roll.rolled;
        break;
    }
    const Mapping map{top, box.adjusted(4, 4, -4, -4)};
    const QRectF r = flat.empty() ? QRectF{map(top).center(), QSizeF{0, 0}} : map(flat);
    frame(p, r, ink::kLine, ink::kPaper);
    const double thick = std::max(8.0, map(roll.diameter));
    const QRectF body =
        roll.side == Side::left    ? QRectF{r.left() - thick, r.top(), thick, r.height()}
        : roll.side == Side::right ? QRectF{r.right(), r.top(), thick, r.height()}
        : roll.side == Side::head  ? QRectF{r.left(), r.top() - thick, r.width(), thick}
                                   : QRectF{r.left(), r.bottom(), r.width(), thick};
    p.setPen(QPen{ink::kDark, ink::kLine});
    p.setBrush(ink::kTable);
    p.drawRoundedRect(body, thick / 2, thick / 2);
    p.setPen(Qt::NoPen);
    p.setBrush(ink::kDark);
    for (int i = 0; i < roll.clips; ++i) {
        const double t = (2.0 * i + 1) / (2.0 * roll.clips);
        if (isAcross(roll.side))
            p.drawRect(QRectF{body.left() + t * body.width() - 1.5, body.top() - 2, 3, thick + 4});
        else
            p.drawRect(QRectF{body.left() - 2, body.top() + t * body.height() - 1.5, thick + 4, 3});
    }
    p.restore();
}

} // namespace bastewright::sheets
