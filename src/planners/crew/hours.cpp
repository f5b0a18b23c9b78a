#include "planners/crew/hours.h"

#include "planners/crew/sweep.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

/// Until when each person works.
std::vector<int> lastEnds(const Problem& problem, const Schedule& schedule) {
    std::vector<int> last(problem.people.size(), 0);
    for (std::size_t i = 0; i < schedule.crew.size(); ++i)
        for (const int p : schedule.crew[i]) {
            int& own = last[static_cast<std::size_t>(p)];
            own = std::max(own, schedule.end[i]);
        }
    return last;
}

int overtimeOf(const Problem& problem, const Schedule& schedule) {
    const auto last = lastEnds(problem, schedule);
    int sum = 0;
    for (std::size_t p = 0; p < last.size(); ++p)
        sum += std::max(0, last[p] - problem.people[p].until);
    return sum;
}

} // namespace

Schedule leastOvertime(const Problem& problem, Schedule schedule, const SearchOptions& options,
                       std::stop_token stop) {
    for (std::size_t p = 0; p < problem.people.size() && schedule.overtime > 0; ++p) {
        if (problem.people[p].until == kNever || stop.stop_requested())
            continue;
        Problem one = problem;
        one.people[p].until = kNever;
        Schedule s = searchBySweeps(one, construct(one), options, stop);
        s.overtime = overtimeOf(problem, s);
        if (better(s, schedule))
            schedule = std::move(s);
    }
    return schedule;
}

void sayOvertime(const Problem& problem, const Schedule& schedule,
                 const std::vector<Helper>& helpers, ClockTime start, Findings& findings) {
    const auto last = lastEnds(problem, schedule);
    Sentences who, cure;
    for (std::size_t h = 0; h < helpers.size(); ++h) {
        const int over = last[h] - problem.people[h].until;
        if (over <= 0)
            continue;
        const Seconds toMinute{(last[h] + 59) / 60 * 60};
        who.push_back(core::says("%1 by %2", helpers[h].name, Seconds{over}));
        cure.push_back(core::says("%1 until %2", helpers[h].name, after(start, toMinute)));
    }
    if (!who.empty())
        findings.push_back(
            {Finding::Level::stop, "/helpers",
             core::says("The hours are too short: the work needs %1 beyond what was said.",
                        core::commaList(who)),
             core::says("Ask to stay: %1.", core::commaList(cure))});
}

Problem withOpenEnd(Problem problem) {
    for (Person& p : problem.people)
        p.until = kNever;
    return problem;
}

} // namespace bastewright::crew
