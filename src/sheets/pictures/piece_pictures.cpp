#include "sheets/pictures/piece_pictures.h"

#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/type.h"
#include "sheets/words.h"

#include <QPainter>
#include <QTransform>

#include <cmath>
#include <numbers>

namespace bastewright::sheets {
namespace {

void frame(QPainter& p, QRectF r, double weight, const QBrush& fill = Qt::NoBrush) {
    p.setPen(QPen{ink::kDark, weight, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(fill);
    p.drawRect(r);
}

/// Name above, size below, in the middle of a piece; turned where the piece is tall and narrow.
void caption(QPainter& p, QRectF r, const QString& name, const QString& size) {
    const bool upright = r.height() > r.width() * 1.6 && r.width() < 90;
    const double along = upright ? r.height() : r.width(),
                 across = upright ? r.width() : r.height();
    p.save();
    p.translate(r.center());
    if (upright)
        p.rotate(-90);
    const bool two = across > 34;
    label(p, {0, two ? -8.0 : 0.0}, two ? name : name + QStringLiteral("  ") + size, type::kCheck,
          along - 8, true);
    if (two)
        label(p, {0, 9}, size, type::kBody, along - 8);
    p.restore();
}

Size sizeOf(const Rect& r) {
    return {r.width(), r.length()};
}

/// Cloth is drawn with its length left to right: a quarter turn of the frame it is given in.
Rect turned(const Rect& r) {
    return {r.y0, r.x0, r.y1, r.x1};
}

} // namespace

void drawPattern(QPainter& p, QRectF box, const PointPattern& pattern, Length pin,
                 bool numbered) {
    p.save();
    const Rect tile{Length{}, Length{}, pattern.tile.width, pattern.tile.length};
    // A pin's middle may lie on the tile's edge: half of it is drawn beyond.
    const Mapping map{tile.grown(pin / 2), box.adjusted(3, 3, -3, -3)};
    frame(p, map(tile), ink::kLine, ink::kPaper);
    p.setPen(QPen{ink::kRule, ink::kLine});
    for (const auto& seam : pattern.seams)
        p.drawLine(map(seam.from), map(seam.to));
    int number = 0;
    for (const auto& point : pattern.points) {
        const QPointF at = map(point.at);
        const double half = std::max(3.0, map(pin) / 2);
        const double angle = point.angle * std::numbers::pi / 180;
        const QPointF along = QPointF{std::cos(angle), std::sin(angle)} * half;
        if (pin > Length{}) {
            p.setPen(QPen{ink::kDark, 2.6, Qt::SolidLine, Qt::RoundCap});
            p.drawLine(at - along, at + along);
        } else {
            frame(p, {at.x() - 4, at.y() - 4, 8, 8}, ink::kLine, ink::kFresh);
        }
        if (!numbered)
            continue;
        // The number stands beside the pin, on the side away from the tile's edge.
        const QPointF inward{at.x() > map(tile).center().x() ? -1.0 : 1.0, -1.0};
        labelOnWhite(p, at + QPointF{inward.x() * 9, at.y() < map(tile).top() + 16 ? 10.0 : -10.0},
                     QString::number(++number), 9, 16, true);
    }
    p.restore();
}

Length clothUsed(const BackingPlan& plan, const std::string& fabric) {
    Length used;
    for (const auto& cut : plan.cuts)
        if (cut.fabric == fabric)
            used = std::max(used, cut.onCloth.y1);
    return used;
}

void drawCloth(QPainter& p, QRectF box, const BackingPlan& plan, const std::string& fabric,
               Length usableWidth, Unit unit) {
    p.save();
    const Rect cloth{Length{}, Length{}, usableWidth, clothUsed(plan, fabric)};
    const Mapping map{turned(cloth), box.adjusted(2, 2, -2, -2)};
    frame(p, map(turned(cloth)), ink::kLine, ink::kTable);
    int number = 0;
    for (const auto& cut : plan.cuts) {
        if (cut.fabric != fabric)
            continue;
        const QRectF r = map(turned(cut.onCloth));
        frame(p, r, ink::kLine, ink::kPaper);
        caption(p, r, Text::tr("%1  %2").arg(++number).arg(QString::fromStdString(cut.piece)),
                size(sizeOf(cut.onCloth), unit));
    }
    p.restore();
}

void drawBacking(QPainter& p, QRectF box, const BackingPlan& plan, Size whole, Unit unit) {
    p.save();
    const Mapping map{{Length{}, Length{}, whole.width, whole.length}, box.adjusted(2, 2, -2, -2)};
    for (const auto& panel : plan.panels) {
        const QRectF r = map(panel.area);
        frame(p, r, ink::kLine, ink::kPaper);
        caption(p, r, QString::fromStdString(panel.fabric), size(sizeOf(panel.area), unit));
    }
    p.restore();
}

void drawBatting(QPainter& p, QRectF box, const BattingPlan& plan, Size whole, Unit unit) {
    p.save();
    const Mapping map{{Length{}, Length{}, whole.width, whole.length}, box.adjusted(2, 2, -2, -2)};
    frame(p, map(Rect{Length{}, Length{}, whole.width, whole.length}), ink::kBold, ink::kPaper);
    for (const auto& piece : plan.pieces) {
        const QRectF r = map(piece.area);
        frame(p, r, ink::kLine, ink::kPaper);
        const QString name = QString::fromStdString(piece.name);
        caption(p, r, piece.turned ? Text::tr("%1, turned").arg(name) : name,
                size(sizeOf(piece.area), unit));
    }
    int number = 0;
    for (const auto& join : plan.joins) {
        p.setPen(QPen{ink::kDark, 3, Qt::DashLine, Qt::FlatCap});
        p.drawLine(map(join.from), map(join.to));
        const QPointF at = map(join.from) * 0.75 + map(join.to) * 0.25;
        badge(p, at, 20, QString::number(++number), true);
    }
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
