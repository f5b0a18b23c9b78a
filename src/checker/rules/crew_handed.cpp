#include "checker/geometry/standing_reach.h"
#include "checker/rules/quilt_side.h"
#include "checker/rules/rules.h"
#include "checker/task_traits.h"

#include <algorithm>

namespace bastewright::check {
namespace {

/// True where somebody may do the task and can reach its zone from an open side.
bool can(const QuiltView& quilt, const Task& t, const Helper& h) {
    const Pass* pass = quilt.pass(t.pass);
    const Zone* zone = quilt.zone(t.zone);
    if (pass == nullptr || zone == nullptr || (t.kind == TaskKind::closePins && !h.closes) ||
        (t.kind == TaskKind::press && !h.irons))
        return false;
    const auto& closed = quilt.quilt.surface.closed;
    const SurfacePlan& surface = quilt.quilt.surface;
    return std::ranges::any_of(kSides, [&](Side side) {
        return std::ranges::find(closed, side) == closed.end() &&
               (!h.side || quiltSide(*h.side, surface.quiltLengthAlongLength) == side) &&
               (surface.floor ||
                leastReachNeeded(pass->table, side, workBox(*zone)) <= reachOf(h).in());
    });
}

} // namespace

void crewHanded(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks) {
        const QuiltView* quilt = v.quilt(t.job);
        if (!isOfZone(t.kind) || quilt == nullptr)
            continue;
        const auto wish = std::ranges::find(quilt->job.handed, t.zone, &HandedZone::zone);
        if (wish == quilt->job.handed.end() ||
            std::ranges::find(t.people, wish->person) != t.people.end())
            continue;
        const Helper* h = v.helper(wish->person);
        if (h != nullptr && can(*quilt, t, *h))
            report.add("Task '" + t.id + "' is given to " +
                       (t.people.empty() ? std::string{"nobody"} : t.people.front()) +
                       "; its zone was handed to " + h->name + ", who can do it.");
    }
}

} // namespace bastewright::check
