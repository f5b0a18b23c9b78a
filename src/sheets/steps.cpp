#include "sheets/steps.h"

#include "sheets/task_words.h"
#include "sheets/words.h"

#include <algorithm>

namespace bastewright::sheets {
namespace {

Step fresh(const Task& t, int points) {
    Step step{t.kind, t.start, t.end, t.people, {}, t.places, points};
    if (!t.zone.empty())
        step.zones.push_back(t.zone);
    return step;
}

void append(Step& step, const Task& t, int points) {
    step.zones.push_back(t.zone);
    step.places.insert(step.places.end(), t.places.begin(), t.places.end());
    step.points += points;
    step.end = std::max(step.end, t.end);
}

bool shares(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    return std::ranges::any_of(a,
                               [&](const auto& name) { return std::ranges::count(b, name) > 0; });
}

} // namespace

std::vector<Step> stepsOf(const Plan& plan, std::size_t quilt, int pass) {
    std::vector<Step> steps;
    for (const auto& t : plan.tasks) {
        if (t.job != int(quilt) || t.pass != pass)
            continue;
        const int points = taskPoints(t, plan.quilts[quilt]);
        // The last thing any of these people did in this pass.
        const auto last = std::ranges::find_if(steps.rbegin(), steps.rend(), [&](const Step& s) {
            return shares(s.people, t.people) || s.zones.empty();
        });
        if (!t.zone.empty() && last != steps.rend() && last->kind == t.kind &&
            last->people == t.people && !last->zones.empty())
            append(*last, t, points);
        else
            steps.push_back(fresh(t, points));
    }
    return steps;
}

QString stepLine(const Step& step, const QuiltPlan& quilt, int pass, Basting::With with,
                 Unit unit) {
    Task t;
    t.kind = step.kind;
    t.pass = pass;
    if (step.zones.size() < 2) {
        t.zone = step.zones.empty() ? std::string{} : step.zones.front();
        return taskLine(t, quilt, with, unit);
    }
    return zonesLine(step.kind, zoneList(step.zones), step.points, with);
}

} // namespace bastewright::sheets
