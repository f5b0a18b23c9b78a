#include "checker/rules/rules.h"
#include "checker/task_traits.h"

#include <algorithm>

namespace bastewright::check {
// A wish is kept, or the plan says why not.
void crewHanded(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks) {
        const QuiltView* quilt = v.quilt(t.job);
        if (!isOfZone(t.kind) || quilt == nullptr)
            continue;
        const auto wish = std::ranges::find(quilt->job.handed, t.zone, &HandedZone::zone);
        if (wish == quilt->job.handed.end() ||
            std::ranges::find(t.people, wish->person) != t.people.end())
            continue;
        if (quilt->tells(Finding::Kind::handedElsewhere, wish->person) == nullptr)
            report.add(where(v, t) / "people",
                       "Task '" + t.id + "' is given to " +
                           (t.people.empty() ? std::string{"nobody"} : t.people.front()) +
                           "; its zone was handed to " + wish->person +
                           ", and nothing is said of it.");
    }
}

} // namespace bastewright::check
