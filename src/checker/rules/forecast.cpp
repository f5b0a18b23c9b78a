#include "checker/rules/rules.h"

#include <algorithm>
#include <set>
#include <utility>

namespace bastewright::check {

// Early, middle and late lie 2 to 60 % apart, and the finish within 15 % of the middle: an
// estimate, around the sixth by which nine of ten afternoons are quicker or slower (from memory).
// There is a bound of the finish.
void crewRange(const PlanView& v, Report& report) {
    if (v.plan.tasks.empty())
        return;
    const FinishRange& r = v.plan.range;
    const auto share = [&](Seconds a, Seconds b) {
        return double(a.count()) / double(std::max<std::int64_t>(1, b.count()));
    };
    if (r.early <= Seconds{} || share(r.middle, r.early) < 1.02 || share(r.middle, r.early) > 1.6 ||
        share(r.late, r.middle) < 1.02 || share(r.late, r.middle) > 1.6)
        report.add(Pointer{} / "finish_range", "The finish is said to lie between " +
                                                   clock(r.early) + " and " + clock(r.late) +
                                                   ", the middle at " + clock(r.middle) + ".");
    if (std::abs(share(r.middle, v.plan.finish) - 1) > 0.15)
        report.add(Pointer{} / "finish_range/middle",
                   "The plan finishes at " + clock(v.plan.finish) +
                       "; the middle of its range is " + clock(r.middle) + ".");
    if (v.plan.finishBound <= Seconds{} && !v.stopped())
        report.add(Pointer{} / "bounds/finish", "The plan has no bound of its finish.");
}

namespace {

/// True where somebody has told of such a break.
bool isTold(const PlanView& v, const PlannedBreak& b) {
    const Setting& s = v.session.setting;
    const auto begins = s.start.sinceMidnight;
    const auto same = [&](const Break& told) {
        return Seconds{told.from.sinceMidnight - begins} == b.start &&
               Seconds{told.until.sinceMidnight - begins} == b.end;
    };
    if (b.people.empty())
        return std::ranges::any_of(s.breaks, same);
    return std::ranges::all_of(b.people, [&](const std::string& who) {
        const Helper* h = v.helper(who);
        return h != nullptr && std::ranges::any_of(h->breaks, same);
    });
}

/// When the call began whose last task ends then, or the part of it after a break.
Seconds callBegan(const PlanView& v, Seconds end) {
    const auto last = std::ranges::find(v.plan.tasks, end, &Task::end);
    Seconds out = last->start;
    for (const Task& t : v.plan.tasks)
        if (t.job == last->job && t.pass == last->pass && t.kind == last->kind && t.end <= end &&
            std::ranges::none_of(v.plan.breaks, [&](const PlannedBreak& b) {
                return b.start >= t.start && b.start < end;
            }))
            out = std::min(out, t.start);
    return out;
}

} // namespace

// Breaks are somebody's who has told of them, or proposed; those last ten minutes (common
// practice). Where nobody works for so long there is a break, or somebody comes or has breaks of
// their own.
void crewPauses(const PlanView& v, Report& report) {
    constexpr Seconds kProposed{10 * 60};
    const PlannedBreak* last = nullptr;
    for (const PlannedBreak& b : v.plan.breaks) {
        const std::string what = "The break at " + clock(b.start);
        const Pointer there = Pointer{}.in("breaks", v.plan.breaks, b);
        if (b.start < Seconds{} || b.end <= b.start || (b.proposed && b.start >= v.plan.finish))
            report.add(there, what + " ends at " + clock(b.end) + "; the plan finishes at " +
                                  clock(v.plan.finish) + ".");
        if (b.proposed && b.end - b.start != kProposed)
            report.add(there, what + " is proposed and lasts " + clock(b.end - b.start) +
                                  "; ten minutes are.");
        if (!b.proposed && !isTold(v, b))
            report.add(there, what + " is nobody's who has told of one.");
        std::set<std::string> seen;
        for (const std::string& who : b.people)
            if (v.helper(who) == nullptr || !seen.insert(who).second)
                report.add(there.in("people", b.people, who),
                           what + " is of '" + who + "', who is not there or named twice.");
        if (last != nullptr && (b.start < last->start || b == *last))
            report.add(there, what + " is listed after a later one, or twice.");
        last = &b;
    }
    // Where nobody does anything, somebody is waited for or it is a break; a call lasts as long as
    // the middle of its slowest, up to half as long again as its tasks.
    Seconds until = v.plan.tasks.empty() ? Seconds{} : v.plan.tasks.front().end;
    const auto begins = v.session.setting.start.sinceMidnight;
    for (const Task& t : v.plan.tasks) {
        const Seconds from = std::exchange(until, std::max(until, t.end));
        if (t.start - from < kProposed)
            continue;
        const bool covered = std::ranges::any_of(v.plan.breaks, [&](const PlannedBreak& b) {
            return b.start < t.start && b.end > from;
        });
        const bool comes = std::ranges::any_of(v.session.setting.helpers, [&](const Helper& h) {
            return (h.from && abs(Seconds{h.from->sinceMidnight - begins} - t.start) < kProposed) ||
                   !h.breaks.empty();
        });
        if (t.start - from >= (from - callBegan(v, from)) / 2 && !covered && !comes)
            report.add(Pointer{} / "breaks", "Nobody works from " + clock(from) + " to " +
                                                 clock(t.start) +
                                                 ", and no break is planned there.");
    }
}

} // namespace bastewright::check
