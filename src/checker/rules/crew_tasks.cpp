#include "checker/rules/rules.h"
#include "checker/rules/tasks_asked.h"
#include "checker/task_traits.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

namespace bastewright::check {
namespace {

constexpr int kAny = std::numeric_limits<int>::max();

/// Compares how often a kind of task occurs with what the quilt needs.
class Expect {
public:
    Expect(const QuiltView& v, const Excused& excused, Report& report)
        : v_{v}
        , excused_{excused}
        , report_{report} {}

    void ofPass(const Pass& p, TaskKind kind, int least, int most) {
        check(std::ssize(v_.tasks(kind, p.number)), "pass " + std::to_string(p.number), kind,
              excused_.pass(p) ? 0 : least, most);
    }
    void ofZone(const Zone& z, TaskKind kind, int least, int most) {
        const auto tasks = v_.tasks(kind, z.pass);
        check(std::ranges::count(tasks, z.id, &Task::zone), "zone " + z.id, kind,
              std::max(0, least - excused_.ofZone(z, kind)), most);
    }
    void ofQuilt(TaskKind kind, int least, int most) {
        const auto tasks = v_.tasks();
        check(std::ranges::count(tasks, kind, &Task::kind), "the quilt", kind, least, most);
    }

private:
    void check(std::ptrdiff_t number, const std::string& of, TaskKind kind, int least, int most) {
        if (number < least || number > most)
            report_.add(Pointer{} / "tasks",
                        v_.label() + ": " + of + " has " + std::to_string(number) +
                            " tasks of the kind " + std::string{name(kind)} + "; " +
                            (number < least ? std::to_string(least) + " at least"
                                            : std::to_string(most) + " at most") +
                            " must be there.");
    }
    const QuiltView& v_;
    const Excused& excused_;
    Report& report_;
};

bool hasClamps(const Pass& p) {
    return std::ranges::any_of(
        p.holds, [](const Hold& h) { return h.kind == Hold::Kind::clamp && h.count > 0; });
}

bool hasHolds(const Pass& p) {
    return std::ranges::any_of(p.holds, [](const Hold& h) { return h.count > 0; });
}

/// A kind of task that a way has: once in every zone that is basted so.
void expectAtZones(const QuiltView& v, const SeenWay& way, const SeenTask& task, Expect& expect) {
    for (const Zone& z : v.quilt.zones) {
        const bool has = !z.points.empty() && &seenWay(v.job, z) == &way;
        const int times = !has ? 0 : task.again && isPressedTwice(v, z) ? 2 : 1;
        expect.ofZone(z, task.kind, times, times);
    }
}

/// A kind of task of whole passes, as whichever ways they are basted in have it.
void expectInPasses(const QuiltView& v, TaskKind kind, Expect& expect) {
    using Of = SeenTask::Of;
    for (const Pass& p : v.quilt.passes) {
        int least = 0, most = 0;
        bool again = false;
        for (const SeenWay* way : seenWays(v, p.number)) {
            const auto task = std::ranges::find(way->tasks, kind, &SeenTask::kind);
            if (task == way->tasks.end())
                continue;
            least = std::max(least, task->of == Of::maybe ? 0 : 1);
            most = std::max(most, task->of == Of::pass ? 1 : kAny);
        }
        for (const SeenWay& way : seenWays())
            again = again || std::ranges::any_of(way.tasks, [&](const SeenTask& t) {
                        return t.kind == kind && t.again;
                    });
        if (again && isPressedTwice(v) && &p == &v.quilt.passes.back() && most < kAny)
            ++most; // once it is turned
        expect.ofPass(p, kind, least, most);
    }
}

} // namespace

void crewList(const PlanView& v, Report& report) {
    std::set<std::string> ids;
    const Task* last = nullptr;
    for (const Task& t : v.plan.tasks) {
        if (t.id.empty() || !ids.insert(t.id).second)
            report.add(where(v, t) / "id", "The id '" + t.id + "' is empty or given to two tasks.");
        if (t.start < Seconds{} || t.end <= t.start)
            report.add(where(v, t),
                       label(t) + " runs from " + clock(t.start) + " to " + clock(t.end) + ".");
        if (last != nullptr && std::pair{t.start, t.id} < std::pair{last->start, last->id})
            report.add(where(v, t), label(t) + " is listed after '" + last->id +
                                        "', out of the order of start and id.");
        last = &t;
        const QuiltView* quilt = v.quilt(t.job);
        if (quilt == nullptr || quilt->pass(t.pass) == nullptr) {
            report.add(where(v, t) / (quilt == nullptr ? "job" : "pass"),
                       label(t) + " is of a quilt or pass that is not there.");
            continue;
        }
        const Zone* zone = quilt->zone(t.zone);
        if (isOfZone(t.kind) ? zone == nullptr || zone->pass != t.pass : !t.zone.empty())
            report.add(where(v, t) / "zone",
                       label(t) + " (" + std::string{name(t.kind)} + ") names zone '" + t.zone +
                           "', which is not one of pass " + std::to_string(t.pass) + ".");
    }
}

void crewAfter(const PlanView& v, Report& report) {
    std::map<std::string, const Task*> byId;
    for (const Task& t : v.plan.tasks)
        byId.emplace(t.id, &t);
    for (const Task& t : v.plan.tasks)
        for (const std::string& id : t.after) {
            const auto it = byId.find(id);
            if (it == byId.end())
                report.add(where(v, t).in("after", t.after, id),
                           label(t) + " comes after '" + id + "', which is not there.");
            else if (it->second->end > t.start)
                report.add(where(v, t) / "start", label(t) + " begins at " + clock(t.start) +
                                                      ", before '" + id + "' ends at " +
                                                      clock(it->second->end) + ".");
        }
}

void crewTasks(const QuiltView& v, Report& report) {
    tasksAsked(v,
               {.pass = [](const Pass&) { return false; },
                .ofZone = [](const Zone&, TaskKind) { return 0; }},
               report);
}

void tasksAsked(const QuiltView& v, const Excused& excused, Report& report) {
    using enum TaskKind;
    Expect expect{v, excused, report};
    const bool twice = isPressedTwice(v);
    for (const Pass& p : v.quilt.passes) {
        const int first = p.number == 1 ? 1 : 0;
        const int lies = p.pulled ? 0 : 1;
        for (const TaskKind kind : {layBacking, layBatting, layTop})
            expect.ofPass(p, kind, lies, lies);
        expect.ofPass(p, setUp, first, first * kAny); // in parts where it is long
        expect.ofPass(p, shift, 1 - first, 1 - first);
        const int holds = hasHolds(p) && !p.pulled ? 1 : 0;
        const int clamps = hasClamps(p) && !p.pulled ? 1 : 0;
        expect.ofPass(p, clamp, holds, holds);
        expect.ofPass(p, reclamp, clamps, clamps);
        expect.ofPass(p, checkUnderside, 1, 1);
    }
    std::set<TaskKind> ofPasses;
    for (const SeenWay& way : seenWays())
        for (const SeenTask& task : way.tasks)
            if (task.of == SeenTask::Of::zone)
                expectAtZones(v, way, task, expect);
            else if (ofPasses.insert(task.kind).second)
                expectInPasses(v, task.kind, expect);
    if (!v.quilt.passes.empty()) {
        expect.ofQuilt(turnOver, twice ? 1 : 0, twice ? kAny : 0);
        expect.ofQuilt(handOver, 1, 1);
    }
}

} // namespace bastewright::check
