#include "sheets/pictures/piece_pictures.h"

#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/words.h"

#include <QPainter>

#include <cmath>
#include <numbers>
#include <vector>

namespace bastewright::sheets {
namespace {

void frame(QPainter& p, QRectF r, double weight, const QBrush& fill = Qt::NoBrush) {
    p.setPen(QPen{ink::kDark, weight, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(fill);
    p.drawRect(r);
}

double overlap(const QRectF& a, const QRectF& b) {
    const QRectF both = a & b;
    return both.isValid() ? both.width() * both.height() : 0;
}

/// Room for a number beside its pin: the place where it covers least of pins and other numbers and
/// leaves the tile least.
QRectF freeSpot(QPointF pin, const QRectF& tile, const std::vector<QRectF>& taken) {
    constexpr double kWide = 13, kHigh = 10;
    QRectF best;
    double least = 1e9;
    for (const double far : {9.0, 12.0, 15.0})
        for (int turn = 0; turn < 8; ++turn) {
            const double angle = turn * std::numbers::pi / 4 - std::numbers::pi / 2;
            const QPointF middle =
                pin + QPointF{far * 1.1 * std::cos(angle), far * std::sin(angle)};
            const QRectF spot{middle.x() - kWide / 2, middle.y() - kHigh / 2, kWide, kHigh};
            double bad = far / 100; // else the nearest
            bad += kWide * kHigh - overlap(spot, tile);
            for (const auto& other : taken)
                bad += overlap(spot, other);
            if (bad < least) {
                least = bad;
                best = spot;
            }
        }
    return best;
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
    std::vector<QRectF> taken; // by pins, then by numbers
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
        const QRectF pinBox{at - along, at + along};
        taken.push_back(pinBox.normalized().adjusted(-2, -2, 2, 2));
    }
    for (std::size_t i = 0; numbered && i < pattern.points.size(); ++i) {
        const QRectF spot = freeSpot(map(pattern.points[i].at), map(tile), taken);
        labelOnWhite(p, spot.center(), QString::number(i + 1), 9, 16, true);
        taken.push_back(spot);
    }
    p.restore();
}

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
