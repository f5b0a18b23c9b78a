#include "planners/crew/homes.h"

#include "planners/surface/closed_sides.h"

#include <algorithm>
#include <array>

namespace bastewright::crew {
namespace {

/// Round the table the way a clock goes.
constexpr std::array kRound{Side::head, Side::right, Side::foot, Side::left};
constexpr int kNobody = -1;
/// How far somebody goes beyond their own part before it is another place.
constexpr Length kStep = Length::inches(24);

Length sizeOf(const TableSides& t, Side side) {
    return isAcross(side) ? t.width : t.length;
}

bool isOpen(const TableSides& t, Side side) {
    return std::ranges::find(t.closed, side) == t.closed.end();
}

int mostAt(const TableSides& t, Side side) {
    return isOpen(t, side) ? std::max(1, static_cast<int>(sizeOf(t, side).nm() / kRoom.nm())) : 0;
}

Rect ownRect(const TableSides& t) {
    return {{}, {}, t.width, t.length};
}

/// Against the axis on the way back.
bool against(Side side) {
    return side == Side::foot || side == Side::left;
}

std::size_t roundIndex(Side side) {
    return static_cast<std::size_t>(std::ranges::find(kRound, side) - kRound.begin());
}

/// Several people share a side by their paces, in the order along the axis.
void shareSide(const TableSides& t, Side side, std::span<Home* const> along,
               std::span<const Helper* const> helpers) {
    const Interval whole{Length{}, sizeOf(t, side)};
    const Length room = std::min(kRoom, whole.size());
    Interval work = intersection(whole, isAcross(side) ? t.workX : t.workY);
    const auto n = static_cast<std::int64_t>(along.size());
    if (work.size() < n * room)
        work = whole;
    double all = 0;
    for (const Home* h : along)
        all += helpers[static_cast<std::size_t>(h->person)]->pace;
    // Nobody less than their room: what is over goes by pace.
    const Length over = work.size() - n * room;
    Length at = work.lo;
    for (Home* h : along) {
        const double share = helpers[static_cast<std::size_t>(h->person)]->pace / all;
        const Length size =
            room +
            Length::nanometres(static_cast<std::int64_t>(share * static_cast<double>(over.nm())));
        h->own = {at, at + size};
        h->at = h->own.middle();
        at += size;
    }
    along.front()->own.lo = whole.lo;
    along.back()->own.hi = whole.hi;
}

Interval grown(Interval i, Length by, Interval within) {
    return intersection({i.lo - by, i.hi + by}, within);
}

/// The end of a side that is met first on the way round, and a stretch of it from there.
Interval fromCorner(const TableSides& t, Side side, bool first, Length size) {
    const Interval whole{Length{}, sizeOf(t, side)};
    const bool low = first != against(side);
    return low ? Interval{whole.lo, std::min(whole.hi, whole.lo + size)}
               : Interval{std::max(whole.lo, whole.hi - size), whole.hi};
}

} // namespace

int roomFor(const TableSides& t) {
    int sum = 0;
    for (const Side s : kSides)
        sum += mostAt(t, s);
    return sum;
}

std::vector<PerSide<int>> spreads(const TableSides& t, int people, bool evenly) {
    std::vector<PerSide<int>> out;
    const PerSide<int> most{mostAt(t, Side::head), mostAt(t, Side::foot), mostAt(t, Side::left),
                            mostAt(t, Side::right)};
    const auto even = [evenly](int a, int b, int mostA, int mostB) {
        // As even as their rooms allow: the fuller one is not ahead by two while the other has
        // room.
        return !evenly || std::abs(a - b) <= 1 || (a > b ? b == mostB : a == mostA);
    };
    for (int across = 0; across <= people; ++across)
        for (int head = 0; head <= across; ++head) {
            const int foot = across - head, down = people - across;
            if (head > most.head || foot > most.foot || !even(head, foot, most.head, most.foot))
                continue;
            for (int left = 0; left <= down; ++left) {
                const int right = down - left;
                if (left <= most.left && right <= most.right &&
                    even(left, right, most.left, most.right))
                    out.push_back({head, foot, left, right});
            }
        }
    return out;
}

std::optional<std::vector<Home>> homesFor(const TableSides& t, const PerSide<int>& count,
                                          std::span<const int> people,
                                          std::span<const Helper* const> helpers, int turn,
                                          bool quiltLengthAlongLength) {
    std::vector<Home> out;
    for (const Side side : kRound)
        for (int k = 0; k < count[side]; ++k)
            out.push_back({kNobody, side, {}, {}});
    const std::size_t n = people.size();
    if (out.size() != n)
        return {};
    const auto take = [&](int person, std::optional<Side> side) {
        const auto free = std::ranges::find_if(
            out, [&](const Home& h) { return h.person == kNobody && (!side || h.side == *side); });
        if (free == out.end())
            return false;
        free->person = person;
        return true;
    };
    // Who keeps to a side first; the others fill what is left, in their order round the table.
    for (const bool keepers : {true, false})
        for (std::size_t k = 0; k < n; ++k) {
            const int person = people[(k + static_cast<std::size_t>(turn)) % n];
            const Helper& helper = *helpers[static_cast<std::size_t>(person)];
            if (helper.side.has_value() != keepers)
                continue;
            std::optional<Side> side;
            if (helper.side) {
                const std::array kept{*helper.side};
                side = closedSides(kept, quiltLengthAlongLength).front();
            }
            if (!take(person, side))
                return {};
        }
    for (const Side side : kRound) {
        std::vector<Home*> along;
        for (Home& h : out)
            if (h.side == side)
                along.push_back(&h);
        if (against(side))
            std::ranges::reverse(along);
        if (!along.empty())
            shareSide(t, side, along, helpers);
    }
    return out;
}

Post postOf(const TableSides& t, const std::vector<Home>& homes, std::size_t k,
            const Helper& helper, const Rect& table, Roaming roaming) {
    const Home& home = homes[k];
    std::vector<StandingPlace> edges;
    const Interval whole{Length{}, sizeOf(t, home.side)};
    const bool alone = homes.size() == 1;
    if (helper.seated) {
        const Length room = std::min(kRoom, whole.size());
        const Length lo = std::clamp(home.at - room / 2, whole.lo, whole.hi - room);
        edges.push_back({home.side, {lo, lo + room}});
    } else if (helper.side) {
        edges.push_back({home.side, roaming == Roaming::little && !alone
                                        ? grown(home.own, kStep, whole)
                                        : whole});
    } else if (roaming == Roaming::everywhere || alone) {
        edges = openSides(ownRect(t), t.closed);
        // Their own side first.
        std::ranges::stable_sort(
            edges, {}, [&](const StandingPlace& e) { return e.side == home.side ? 0 : 1; });
    } else {
        edges.push_back(
            {home.side, roaming == Roaming::little ? grown(home.own, kStep, whole) : whole});
        // Round each corner onto a side where nobody belongs; half of it is the next one's.
        const std::size_t at = roundIndex(home.side);
        for (const bool onward : {true, false}) {
            const bool nearCorner =
                onward != against(home.side) ? home.own.hi == whole.hi : home.own.lo == whole.lo;
            const Side side = kRound[(at + (onward ? 1 : 3)) % 4];
            const bool taken =
                std::ranges::any_of(homes, [&](const Home& h) { return h.side == side; });
            if (taken || !isOpen(t, side) || (!nearCorner && roaming == Roaming::little))
                continue;
            const Side beyond = kRound[(at + 2) % 4];
            const bool shared =
                std::ranges::any_of(homes, [&](const Home& h) { return h.side == beyond; });
            const Length size = sizeOf(t, side);
            edges.push_back(
                {side,
                 fromCorner(t, side, onward,
                            shared && roaming == Roaming::little ? size / 2 + kStep / 2 : size)});
        }
    }
    const Length x = table.x0, y = table.y0;
    for (StandingPlace& e : edges) {
        const Length by = isAcross(e.side) ? x : y;
        e.along = {e.along.lo + by, e.along.hi + by};
    }
    Point at{home.side == Side::left    ? table.x0
             : home.side == Side::right ? table.x1
                                        : x + home.at,
             home.side == Side::head   ? table.y0
             : home.side == Side::foot ? table.y1
                                       : y + home.at};
    return {&helper, at, std::move(edges)};
}

bool keepSeats(const TableSides& t, std::vector<Home>& homes,
               std::span<const Helper* const> helpers, const std::map<int, Length>& stood) {
    for (Home& h : homes) {
        const auto was = stood.find(h.person);
        if (!helpers[static_cast<std::size_t>(h.person)]->seated || was == stood.end())
            continue;
        const Length from =
            onTheWayRound(t, h.side, against(h.side) ? sizeOf(t, h.side) : Length{});
        const Length along = was->second - from;
        if (along < Length{} || along > sizeOf(t, h.side))
            return false;
        h.at = against(h.side) ? sizeOf(t, h.side) - along : along;
        if (!h.own.contains(h.at))
            return false;
    }
    return true;
}

Length wayRound(const TableSides& t) {
    return 2 * (t.width + t.length);
}

Length onTheWayRound(const TableSides& t, Side side, Length at) {
    switch (side) {
    case Side::head:
        return at;
    case Side::right:
        return t.width + at;
    case Side::foot:
        return t.width + t.length + (t.width - at);
    case Side::left:
        break;
    }
    return 2 * t.width + t.length + (t.length - at);
}

Length walkBetween(const TableSides& t, Length a, Length b) {
    const Length d = abs(a - b);
    return std::min(d, wayRound(t) - d);
}

} // namespace bastewright::crew
