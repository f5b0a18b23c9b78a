#include "checker/rules/rules.h"
#include "checker/task_traits.h"

#include <algorithm>
#include <map>
#include <set>

namespace bastewright::check {
namespace {

/// Present from, present until, in seconds of the session. Both are times of the day it begins on:
/// who leaves before the start is never there.
std::pair<Seconds, Seconds> hours(const Helper& h, ClockTime start) {
    const auto after = [&](ClockTime t) { return Seconds{t.sinceMidnight - start.sinceMidnight}; };
    return {h.from ? std::max(after(*h.from), Seconds{}) : Seconds{},
            h.until ? after(*h.until) : Seconds::max()};
}

int lifters(const PlanView& v) {
    return static_cast<int>(std::ranges::count_if(v.session.setting.helpers, liftsWell));
}

/// There for all of a task, without a break of their own.
bool isThereFor(const PlanView& v, const Helper& h, const Task& t) {
    const ClockTime start = v.session.setting.start;
    const auto [from, until] = hours(h, start);
    return from <= t.start && until >= t.end && std::ranges::none_of(h.breaks, [&](const Break& b) {
               return t.start < b.until.sinceMidnight - start.sinceMidnight &&
                      t.end > b.from.sinceMidnight - start.sinceMidnight;
           });
}

/// Belongs to the table of a task: where quilts lie on several tables, has something to do at that
/// pass; at one table everybody does.
bool isOfTheTable(const PlanView& v, const Helper& h, const Task& t) {
    const auto surface = [&](int job) {
        const QuiltView* quilt = v.quilt(job);
        return quilt == nullptr ? 0 : quilt->quilt.surface.number;
    };
    const bool several = std::ranges::any_of(
        v.plan.tasks, [&](const Task& o) { return surface(o.job) != surface(t.job); });
    return !several || std::ranges::any_of(v.plan.tasks, [&](const Task& o) {
        return o.job == t.job && o.pass == t.pass &&
               std::ranges::find(o.people, h.name) != o.people.end();
    });
}

/// Those of the table who lift and are there for all of a task.
int liftersAt(const PlanView& v, const Task& t) {
    return static_cast<int>(std::ranges::count_if(v.session.setting.helpers, [&](const Helper& h) {
        return liftsWell(h) && isThereFor(v, h, t) && isOfTheTable(v, h, t);
    }));
}

/// Those who lift and have not left before a task ends.
int liftersUntil(const PlanView& v, const Task& t) {
    return static_cast<int>(std::ranges::count_if(v.session.setting.helpers, [&](const Helper& h) {
        return liftsWell(h) && hours(h, v.session.setting.start).second >= t.end;
    }));
}

/// How many people a task takes at least and at most.
std::pair<int, int> team(const PlanView& v, const Task& t) {
    const int all = static_cast<int>(v.session.setting.helpers.size());
    switch (t.kind) {
    case TaskKind::setUp:
    case TaskKind::layBacking:
    case TaskKind::layBatting:
    case TaskKind::layTop:
    case TaskKind::clamp:
    case TaskKind::reclamp:
    case TaskKind::smooth:
        return {1, all};
    case TaskKind::shift: {
        const QuiltView* quilt = v.quilt(t.job);
        const Pass* pass = quilt == nullptr ? nullptr : quilt->pass(t.pass);
        const int asked = pass == nullptr ? 1 : pass->liftPeople;
        return {std::max(1, std::min(asked, liftersUntil(v, t))), all};
    }
    case TaskKind::turnOver:
        return {std::max(1, liftersAt(v, t)), all};
    case TaskKind::cool:
    case TaskKind::settle:
        return {0, 0};
    case TaskKind::foldBack:
    case TaskKind::foldForward:
        return {1, all};
    default:
        return {1, 1};
    }
}

} // namespace

void crewPeople(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks) {
        std::set<std::string> seen;
        for (const std::string& who : t.people) {
            if (v.helper(who) == nullptr)
                report.add(where(v, t).in("people", t.people, who),
                           label(t) + " is given to '" + who + "', who is not among the helpers.");
            if (!seen.insert(who).second)
                report.add(where(v, t).in("people", t.people, who),
                           label(t) + " names " + who + " twice.");
        }
    }
}

void crewTeams(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks) {
        const auto [least, most] = team(v, t);
        const int people = static_cast<int>(t.people.size());
        if (people < least || people > most)
            report.add(where(v, t) / "people",
                       label(t) + " (" + std::string{name(t.kind)} + ") has " +
                           std::to_string(people) + " people; it takes " + std::to_string(least) +
                           (most == least ? "" : " to " + std::to_string(most)) + ".");
    }
    const bool warned = std::ranges::any_of(v.plan.findings, [](const Finding& f) {
        return f.kind == Finding::Kind::fewLift || f.kind == Finding::Kind::nobodyLifts;
    });
    for (const QuiltView& quilt : v.quilts)
        for (const Pass& p : quilt.quilt.passes) {
            int there = lifters(v);
            for (const Task* t : quilt.tasks(TaskKind::shift, p.number))
                there = std::min(there, static_cast<int>(t->people.size()));
            if (p.number > 1 && p.liftPeople > there && !warned)
                report.add(where(quilt, p) / "lift_people",
                           quilt.label() + ", pass " + std::to_string(p.number) +
                               ": the shift asks for " + std::to_string(p.liftPeople) +
                               " people who lift, there are " + std::to_string(there) +
                               ", and the plan does not warn of it.");
        }
}

void crewSkills(const PlanView& v, Report& report) {
    const bool someLook = std::ranges::any_of(v.session.setting.helpers, looksBelow);
    for (const Task& t : v.plan.tasks)
        for (const std::string& who : t.people) {
            const Helper* h = v.helper(who);
            if (h == nullptr)
                continue;
            using enum TaskKind;
            const char* lacks = t.kind == closePins && !h->closes ? "close pins"
                                : t.kind == press && !h->irons    ? "iron"
                                : (isLift(t.kind) || isLaying(t.kind)) && !liftsWell(*h) ? "lift"
                                : isOfZone(t.kind) && t.kind != press && !h->pins ? "work at zones"
                                : t.kind == checkUnderside && someLook && !looksBelow(*h)
                                    ? "look underneath"
                                    : nullptr;
            if (lacks != nullptr)
                report.add(where(v, t).in("people", t.people, who),
                           label(t) + " is given to " + who + ", who does not " + lacks + ".");
        }
}

void crewHours(const PlanView& v, Report& report) {
    for (const Task& t : v.plan.tasks)
        for (const std::string& who : t.people) {
            const Helper* h = v.helper(who);
            if (h == nullptr)
                continue;
            const auto [from, until] = hours(*h, v.session.setting.start);
            if (t.start < from)
                report.add(where(v, t) / "start", label(t) + " begins at " + clock(t.start) + ", " +
                                                      who + " comes at " + clock(from) + ".");
            if (t.end > until)
                report.add(where(v, t) / "end", label(t) + " ends at " + clock(t.end) + ", " + who +
                                                    " leaves at " + clock(until) + ".");
        }
}

void crewBreaks(const PlanView& v, Report& report) {
    const auto begin = v.session.setting.start.sinceMidnight;
    for (const Task& t : v.plan.tasks)
        for (const std::string& who : t.people) {
            const Helper* h = v.helper(who);
            if (h == nullptr)
                continue;
            std::vector<Break> rests = h->breaks;
            const auto& all = v.session.setting.breaks;
            rests.insert(rests.end(), all.begin(), all.end());
            for (const Break& rest : rests)
                if (t.start < rest.until.sinceMidnight - begin &&
                    t.end > rest.from.sinceMidnight - begin)
                    report.add(where(v, t), label(t) + " runs from " + clock(t.start) + " to " +
                                                clock(t.end) + ", into the break of " + who +
                                                " at " + clock(rest.from.sinceMidnight - begin) +
                                                ".");
        }
}

void crewTwice(const PlanView& v, Report& report) {
    std::map<std::string, std::vector<const Task*>> byPerson;
    for (const Task& t : v.plan.tasks)
        for (const std::string& who : std::set(t.people.begin(), t.people.end()))
            byPerson[who].push_back(&t);
    for (auto& [who, tasks] : byPerson) {
        std::ranges::sort(tasks, {}, &Task::start);
        const Task* longest = nullptr; // of those before, the one that ends last
        for (const Task* t : tasks) {
            if (longest != nullptr && overlap(*longest, *t))
                report.add(where(v, *t), who + " is in '" + longest->id + "' and in '" + t->id +
                                             "' at " + clock(t->start) + ".");
            if (longest == nullptr || t->end > longest->end)
                longest = t;
        }
    }
}

void crewIrons(const PlanView& v, Report& report) {
    std::map<Seconds, int> change; // in use from then on, counted up and down
    for (const Task& t : v.plan.tasks)
        if (t.kind == TaskKind::press) {
            ++change[t.start];
            --change[t.end];
        }
    int inUse = 0;
    for (const auto& [at, by] : change) {
        inUse += by;
        if (inUse > v.session.setting.room.irons && by > 0)
            report.add(Pointer{} / "tasks", "At " + clock(at) + " " + std::to_string(inUse) +
                                                " irons are in use; the room has " +
                                                std::to_string(v.session.setting.room.irons) + ".");
    }
}

} // namespace bastewright::check
