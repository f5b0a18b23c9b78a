#include "planners/passes/holds.h"

#include "planners/rolls/rolls.h"

namespace bastewright {
namespace {

constexpr Length kTapePiece = Length::inches(6), kTapeEvery = Length::inches(12);
constexpr Length kClampEvery = Length::inches(18);
constexpr Length kHeldBeside = Length::inches(6); ///< of what is basted, the anchor

Rect layerRect(Size layer, Size top) {
    const PerSide<Length> s = spare(layer, top);
    return {-s.left, -s.head, top.width + s.right, top.length + s.foot};
}

/// `count` places spread evenly over a stretch, the middle ones first, then outward in turn.
std::vector<Length> outwardPlaces(Interval along, int count) {
    std::vector<Length> out;
    for (int i = 0; i < count; ++i)
        out.push_back(along.lo + along.size() * (2 * i + 1) / (2 * count));
    const Length middle = along.middle();
    std::ranges::stable_sort(out, {}, [&](Length at) { return abs(at - middle); });
    return out;
}

/// The new area with the anchor beside it, and to the end of the cloth where the top ends.
Rect aroundNew(const Rect& fresh, Size top, const Rect& cloth) {
    return {fresh.x0 <= Length{} ? cloth.x0 : fresh.x0 - kHeldBeside,
            fresh.y0 <= Length{} ? cloth.y0 : fresh.y0 - kHeldBeside,
            fresh.x1 >= top.width ? cloth.x1 : fresh.x1 + kHeldBeside,
            fresh.y1 >= top.length ? cloth.y1 : fresh.y1 + kHeldBeside};
}

/// A length as it is said at the table: whole inches or centimetres.
Length wholeSteps(Length l, Unit unit) {
    const Length one = unit == Unit::inch ? Length::inches(1) : Length::millimetres(10);
    return one * ((l + one / 2).nm() / one.nm());
}

/// The round in which a hold is set that so many of its side come before: odd along the table's
/// long sides, even at its ends.
int roundOf(bool onLongSide, std::size_t before) {
    return 2 * static_cast<int>(before) + (onLongSide ? 1 : 2);
}

} // namespace

PerSide<Length> overhang(Size layer, Size top, const Rect& table) {
    const Rect r = layerRect(layer, top);
    return {.head = table.y0 - r.y0,
            .foot = r.y1 - table.y1,
            .left = table.x0 - r.x0,
            .right = r.x1 - table.x1};
}

PerSide<Length> spare(Size layer, Size top) {
    const Length across = (layer.width - top.width) / 2, down = (layer.length - top.length) / 2;
    return {.head = down, .foot = down, .left = across, .right = across};
}

PerSide<Beyond> beyond(const BeyondInput& in) {
    PerSide<Beyond> out;
    for (const Side side : kSides) {
        if (in.floor || in.backing[side] <= Length{})
            continue;
        if (std::ranges::find(in.walls, side) != in.walls.end())
            out[side] = Beyond::onTable;
        else if (in.rolled && in.top[side] > kWorthRolling)
            out[side] = Beyond::rolled;
        else if (in.top[side] <= kHangsFree)
            out[side] = Beyond::hangs;
        else
            out[side] = in.spareTable ? Beyond::spareTable : Beyond::chairs;
    }
    return out;
}

bool hasSpareTable(const Room& room, const Arrangement& surface) {
    int tables = 0;
    for (const Table& t : room.tables)
        tables += t.group == surface.group ? t.count : 0;
    return tables > static_cast<int>(surface.tables.size());
}

std::vector<Hold> holds(Size backing, Size top, const Rect& table, const Rect& fresh,
                        const PerSide<Beyond>& beyond, bool floor, Unit unit) {
    const Rect cloth = layerRect(backing, top);
    const Rect held = aroundNew(fresh, top, cloth);
    const PerSide<Length> over = overhang(backing, top, table);
    const bool wide = table.width() >= table.length();
    const std::array order = wide ? std::array{Side::head, Side::foot, Side::left, Side::right}
                                  : std::array{Side::left, Side::right, Side::head, Side::foot};
    std::vector<Hold> out;
    for (const Side side : order) {
        const Interval along =
            isAcross(side) ? intersection(held.x(), table.x()) : intersection(held.y(), table.y());
        if (along.size() <= Length{} || beyond[side] == Beyond::onTable)
            continue;
        Hold h;
        h.side = side;
        h.kind = over[side] > Length{} && !floor ? Hold::Kind::clamp : Hold::Kind::tape;
        const auto every = h.kind == Hold::Kind::clamp ? kClampEvery : kTapeEvery;
        h.count = static_cast<int>(ceilDiv(along.size(), every));
        if (h.kind == Hold::Kind::clamp && along.size() > Length::inches(12))
            h.count = std::max(h.count, 2);
        if (h.kind == Hold::Kind::tape)
            h.length = h.count * kTapePiece;
        h.positions = outwardPlaces(along, h.count);
        for (std::size_t k = 0; k < h.positions.size(); ++k)
            h.numbers.push_back(roundOf(isAcross(side) == wide, k));
        h.apart = h.count > 1 ? wholeSteps(along.size() / h.count, unit) : Length{};
        out.push_back(std::move(h));
    }
    return out;
}

std::vector<Roll> passRolls(const Job& job, const Stash& stash, Size backing, Size top,
                            const Pass& pass) {
    const PerSide<Length> over = overhang(backing, top, pass.table);
    std::vector<Roll> out;
    for (const Side side : kSides) {
        if (pass.beyond[side] != Beyond::rolled && pass.beyond[side] != Beyond::onTable)
            continue;
        Roll r;
        r.side = side;
        r.rolled = over[side];
        r.along = isAcross(side) ? backing.width : backing.length;
        r.diameter = rollDiameter(r.rolled, sandwichThickness(job.batting));
        r = clipped(r, stash);
        r.folded = r.clipHolds == Length{};
        if (r.folded)
            r.clips = 0;
        out.push_back(r);
    }
    return out;
}

std::vector<Roll> machineRolls(const Job& job, const Stash& stash, Size backing) {
    // Rolled along the shorter way, so that the least has to pass under the machine's arm.
    const bool leftRight = backing.width <= backing.length;
    std::vector<Roll> out;
    for (const Side side :
         leftRight ? std::array{Side::left, Side::right} : std::array{Side::head, Side::foot}) {
        Roll r;
        r.side = side;
        r.rolled = std::min(backing.width, backing.length) / 2;
        r.along = std::max(backing.width, backing.length);
        r.diameter = rollDiameter(r.rolled, sandwichThickness(job.batting));
        r = clipped(r, stash);
        if (r.clipHolds == Length{} && r.diameter > kLargestClip) {
            r.folded = true;
            r.clips = 0;
        }
        out.push_back(r);
    }
    return out;
}

} // namespace bastewright
