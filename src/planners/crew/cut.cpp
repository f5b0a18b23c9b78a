#include "planners/crew/cut.h"

#include "plan/find.h"
#include "plan/share.h"

#include <algorithm>
#include <cstdlib>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// Where a zone lies, and who works it from where.
struct Lying {
    const Zone& zone;
    const Pass& pass;
    const SurfacePlan& surface;
    Side side;      ///< of the one who works it
    Length at, end; ///< of their place
};

/// Moves a cut by up to a twelfth of the points to where the next point lies clearly farther off.
int betweenRows(const Zone& zone, Side side, int points) {
    std::vector<Length> at;
    for (const PlacedPoint& p : zone.points)
        at.push_back(isAcross(side) ? p.at.y : p.at.x);
    if (side == Side::left || side == Side::head)
        std::ranges::sort(at);
    else
        std::ranges::sort(at, std::greater{});
    const int all = static_cast<int>(at.size()), most = std::max(1, all / 12);
    const auto gap = [&](int n) { return abs(at[ix(n)] - at[ix(n - 1)]); };
    int best = points;
    for (int n = std::max(1, points - most); n <= std::min(all - 1, points + most); ++n)
        if (gap(n) > gap(best) * 2 ||
            (gap(n) * 2 >= gap(best) && std::abs(n - points) < std::abs(best - points)))
            best = n;
    return best;
}

bool reaches(const Lying& l, const Helper& taker, Side from, const Share& share) {
    const Zone part{l.zone.id, l.zone.pass, l.zone.area, pointsOf(l.zone, share)};
    for (const SideRange& r : sidesFor(workBox(part), l.pass.table, l.surface, taker)) {
        if (r.side != from)
            continue;
        if (from != l.side)
            return true;
        const Length room = elbowRoom(l.pass.table, from);
        const bool before = share.side == Side::left || share.side == Side::head;
        return before ? r.start.lo + room <= l.at : r.start.hi >= l.end;
    }
    return false;
}

} // namespace

std::optional<Share> cutFor(const Given& given, const Planned& plan, int activity, int taker,
                            int points) {
    const TaskDraft& d = plan.drafts.tasks[ix(activity)];
    const Schedule& s = plan.schedule;
    const QuiltPlan& quilt = given.quilts[ix(d.job)];
    const Pass* pass = findPass(quilt, d.pass);
    const int strip = s.strip[ix(activity)];
    if (!pass || strip < 0)
        return {};
    const Length at = Length::nanometres(s.place[ix(activity)]);
    const Lying l{quilt.zones[ix(d.zone)],
                  *pass,
                  quilt.surface,
                  plan.model.edges[ix(strip)].side,
                  at,
                  at + Length::nanometres(plan.model.problem.strips[ix(strip)].room)};
    const bool across = isAcross(l.side);
    const Side before = across ? Side::left : Side::head;
    // Beside the other, on either hand; then from the sides.
    const std::pair<Side, Side> ways[]{{l.side, before},
                                       {l.side, opposite(before)},
                                       {opposite(l.side), opposite(l.side)},
                                       {before, before},
                                       {opposite(before), opposite(before)}};
    for (const auto& [from, side] : ways) {
        const Share share{side, betweenRows(l.zone, side, points)};
        if (reaches(l, given.helpers[ix(taker)], from, share))
            return share;
    }
    return {};
}

} // namespace bastewright::crew
