#include "sheets/pictures/table_marks.h"

#include "sheets/ink.h"
#include "sheets/pictures/table_picture.h"
#include "sheets/type.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <optional>

namespace bastewright::sheets {
namespace {

QPointF outward(Side side) {
    switch (side) {
    case Side::head:
        return {0, -1};
    case Side::foot:
        return {0, 1};
    case Side::left:
        return {-1, 0};
    case Side::right:
        return {1, 0};
    }
    return {};
}

/// The part of an area that lies farthest towards a side.
Rect outermost(const Region& area, Side side) {
    const Rect whole = area.bounds();
    const auto there = std::ranges::find_if(area.parts, [&](const Rect& r) {
        return side == Side::head   ? r.y0 == whole.y0
               : side == Side::foot ? r.y1 == whole.y1
               : side == Side::left ? r.x0 == whole.x0
                                    : r.x1 == whole.x1;
    });
    return there == area.parts.end() ? whole : *there;
}

/// A box lying along a side: `along` × `across` points, centred.
QRectF lying(Side side, QPointF centre, double along, double across) {
    const double w = isAcross(side) ? along : across, h = isAcross(side) ? across : along;
    return {centre.x() - w / 2, centre.y() - h / 2, w, h};
}

Length lengthOfSide(const Rect& r, Side side) {
    return isAcross(side) ? r.width() : r.length();
}

} // namespace

TableMarks::TableMarks(QPainter& p, const Mapping& map, const Rect& table)
    : p_{p}
    , map_{map}
    , table_{table} {}

QPointF TableMarks::onSide(Side side, Length along, double out) const {
    const Point at{isAcross(side)         ? along
                   : (side == Side::left) ? table_.x0
                                          : table_.x1,
                   !isAcross(side)        ? along
                   : (side == Side::head) ? table_.y0
                                          : table_.y1};
    return map_(at) + outward(side) * out;
}

double TableMarks::rollThickness(const Roll& roll) const {
    return std::max(7.0, map_(roll.diameter));
}

void TableMarks::hold(const HoldPoint& hold, Length overhang) {
    constexpr double kSize = 12;
    const bool clamp = hold.kind == Hold::Kind::clamp;
    // A clamp grips the edge from outside; tape lies where the backing ends on the table.
    const QPointF at =
        onSide(hold.side, hold.at, clamp ? kSize * 0.3 : std::min(0.0, map_(overhang)));
    p_.setPen(QPen{ink::kDark, ink::kThin});
    p_.setBrush(clamp ? ink::kDark : ink::kPaper);
    if (clamp)
        p_.drawRoundedRect(lying(hold.side, at, kSize, kSize), 2, 2);
    else
        p_.drawRect(lying(hold.side, at, kSize * 1.5, kSize * 0.95));
    label(p_, at, QString::number(hold.number), 8, kSize - 1, true,
          clamp ? ink::kPaper : ink::kDark);
}

void TableMarks::roll(const Roll& roll, const Rect& top) {
    const Rect on = intersection(top, table_);
    const Length middle = isAcross(roll.side) ? on.x().middle() : on.y().middle();
    const double thick = rollThickness(roll), half = map_(roll.along) / 2;
    const QPointF centre = onSide(roll.side, middle, 10 + thick / 2);
    const QRectF body = lying(roll.side, centre, 2 * half, thick);
    p_.setPen(QPen{ink::kDark, ink::kLine, roll.folded ? Qt::DashLine : Qt::SolidLine});
    p_.setBrush(ink::kPaper);
    p_.drawRoundedRect(body, thick / 2, thick / 2);
    if (roll.folded)
        return;
    for (int i = 0; i < roll.clips; ++i) {
        const double t = (2.0 * i + 1) / (2.0 * roll.clips) * 2 - 1;
        const QPointF along = isAcross(roll.side) ? QPointF{t * half, 0} : QPointF{0, t * half};
        p_.setPen(Qt::NoPen);
        p_.setBrush(ink::kDark);
        p_.drawRoundedRect(lying(roll.side, centre + along, 3, thick + 5), 1, 1);
    }
}

void TableMarks::wall(Side side, const Pass& pass) {
    constexpr double kThick = 6;
    double out = 10; // clear of the clamps, and of a roll between table and wall
    for (const auto& roll : pass.rolls)
        if (roll.side == side)
            out += rollThickness(roll) + 5;
    const Length mid = isAcross(side) ? table_.x().middle() : table_.y().middle();
    const double along = map_(lengthOfSide(table_, side));
    const QRectF band = lying(side, onSide(side, mid, out), along, kThick);
    p_.setPen(Qt::NoPen);
    p_.setBrush(ink::kPaper);
    p_.drawRect(band);
    hatch(p_, band, 3);
    p_.setPen(QPen{ink::kDark, ink::kThin});
    p_.setBrush(Qt::NoBrush);
    p_.drawRect(band);
    labelOnWhite(p_, band.center(), Text::tr("wall"), type::kHead - 1, 60);
}

void TableMarks::place(const PlaceMark& mark) {
    constexpr double kBadge = 17, kFoot = 3.5;
    const double along = map_(mark.place.along.size());
    const QPointF foot = onSide(mark.place.side, mark.place.along.middle(), 4);
    p_.setPen(Qt::NoPen);
    p_.setBrush(ink::kDark);
    p_.drawRect(lying(mark.place.side, foot, along, kFoot));
    badge(p_, onSide(mark.place.side, mark.place.along.middle(), 4 + kFoot / 2 + kBadge / 2),
          kBadge, mark.text, mark.solid);
}

void TableMarks::smoothing(const QuiltPlan& quilt, const Pass& pass) {
    for (const Side side : pass.smoothTowards) {
        const bool across = isAcross(side);
        const Rect part = outermost(pass.fresh, side);
        const QRectF fresh = map_(part);
        const QPointF out = outward(side);
        const double depth = across ? fresh.height() : fresh.width();
        const double line = freeLine(quilt, pass, part, side);
        const QPointF rim = across
                                ? QPointF{line, side == Side::head ? fresh.top() : fresh.bottom()}
                                : QPointF{side == Side::left ? fresh.left() : fresh.right(), line};
        const QPointF tip = rim - out * 9;
        arrow(p_, tip - out * std::min(36.0, depth * 0.3), tip, 1.6);
    }
}

double TableMarks::freeLine(const QuiltPlan& quilt, const Pass& pass, const Rect& bounds,
                            Side side) const {
    const bool across = isAcross(side);
    const Interval whole = across ? bounds.x() : bounds.y();
    std::optional<Length> best;
    for (const auto& zone : quilt.zones) {
        const Length at = across ? zone.area.x0 : zone.area.y0;
        if (zone.pass == pass.number && whole.lo < at && at < whole.hi &&
            (!best || abs(at - whole.middle()) < abs(*best - whole.middle())))
            best = at;
    }
    const QPointF low = map_(Point{bounds.x0, bounds.y0});
    constexpr double kInset = 5.5;
    if (!best)
        return (across ? low.x() : low.y()) + kInset;
    const QPointF on = map_(across ? Point{*best, bounds.y0} : Point{bounds.x0, *best});
    return across ? on.x() : on.y();
}

void TableMarks::sideName(Side side, const Rect& world, double out) {
    const QRectF r = map_(world);
    const double half = (isAcross(side) ? r.height() : r.width()) / 2;
    p_.save();
    p_.translate(r.center() + outward(side) * (half + out));
    if (!isAcross(side))
        p_.rotate(-90);
    label(p_, {0, 0}, sheets::sideName(side), type::kHead, 80, false, ink::kQuiet);
    p_.restore();
}

} // namespace bastewright::sheets
