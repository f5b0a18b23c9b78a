#include "checker/rules/rules.h"
#include "checker/ways/seen_way.h"
#include "plan/call.h"

#include <algorithm>
#include <limits>
#include <map>
#include <utility>

namespace bastewright::check {
namespace {

/// A barrier: all tasks of an earlier stage of a quilt have ended before any of a later one begins.
struct Stage {
    int pass, step;
    auto operator<=>(const Stage&) const = default;
};

constexpr int kAfterAllPasses = std::numeric_limits<int>::max();

/// Step within a pass: nobody goes on before the next call.
int step(TaskKind kind, std::span<const SeenWay* const> ways) {
    switch (kind) {
    case TaskKind::setUp:
        return 0;
    case TaskKind::shift:
        return 1;
    case TaskKind::layBacking:
        return 2;
    case TaskKind::clamp:
        return 3;
    case TaskKind::layBatting:
        return 4;
    case TaskKind::layTop:
        return 5;
    case TaskKind::reclamp:
        return 6;
    case TaskKind::checkUnderside:
        return 17;
    case TaskKind::turnOver:
        return 20;
    case TaskKind::handOver:
        return 23;
    default:
        break;
    }
    for (const SeenWay* way : ways)
        if (const auto own = std::ranges::find(way->tasks, kind, &SeenTask::kind);
            own != way->tasks.end())
            return own->stage;
    return seenTask(kind)->stage;
}

/// Once the quilt has been turned over it is pressed and cools again, whatever pass a zone was of.
std::map<Stage, std::vector<const Task*>> stages(const QuiltView& v) {
    const auto tasks = v.tasks();
    const auto turn = std::ranges::find(tasks, TaskKind::turnOver, &Task::kind);
    // Of what is left of a session the turning may be done.
    const bool alreadyTurned =
        isPressedTwice(v) && !tasks.empty() && std::ranges::all_of(tasks, [](const Task* t) {
            return t->kind == TaskKind::press || t->kind == TaskKind::cool ||
                   t->kind == TaskKind::handOver;
        });
    std::map<Stage, std::vector<const Task*>> out;
    std::map<int, std::vector<const SeenWay*>> ways; // by pass
    for (const Pass& p : v.quilt.passes)
        ways[p.number] = seenWays(v, p.number);
    for (const Task* t : tasks) {
        const bool turned = turn == tasks.end() ? alreadyTurned : t->start >= (*turn)->start;
        Stage stage{t->pass, step(t->kind, ways[t->pass])};
        if (t->kind == TaskKind::turnOver || t->kind == TaskKind::handOver)
            stage.pass = kAfterAllPasses;
        if (turned && t->kind == TaskKind::press)
            stage = {kAfterAllPasses, 21};
        if (turned && t->kind == TaskKind::cool)
            stage = {kAfterAllPasses, 22};
        out[stage].push_back(t);
    }
    return out;
}

/// The tasks of one kind that a zone has.
std::vector<const Task*> ofZone(const QuiltView& v, const Zone& z, TaskKind kind) {
    auto tasks = v.tasks(kind, z.pass);
    std::erase_if(tasks, [&](const Task* t) { return t->zone != z.id; });
    return tasks;
}

Seconds lastEnd(const std::vector<const Task*>& tasks) {
    Seconds out{};
    for (const Task* t : tasks)
        out = std::max(out, t->end);
    return out;
}

} // namespace

// What must precede what is worked out anew here; Task::after is not asked.
void crewOrder(const QuiltView& v, Report& report) {
    const Task* last = nullptr; // of the stages so far, the task that ends last
    for (const auto& [stage, tasks] : stages(v)) {
        for (const Task* t : tasks)
            if (last != nullptr && t->start < last->end)
                report.add(where(v, *t) / "start", v.label() + ": '" + t->id + "' (" +
                                                       std::string{name(t->kind)} + ") begins at " +
                                                       clock(t->start) + ", before '" + last->id +
                                                       "' (" + std::string{name(last->kind)} +
                                                       ") ends at " + clock(last->end) + ".");
        for (const Task* t : tasks)
            if (last == nullptr || t->end > last->end)
                last = t;
    }
}

namespace {

/// The last task of the quilt that lies on the same surface before this one.
std::vector<std::string> lastOnTheTable(const QuiltView& v) {
    std::vector<std::string> out;
    for (int i = 0; i < v.index; ++i) {
        if (v.plan.quilts[std::size_t(i)].surface.number != v.quilt.surface.number)
            continue;
        Seconds last{};
        for (const Task& t : v.plan.tasks)
            if (t.job == i && t.end >= last) {
                last = t.end;
                out = {t.id};
            }
    }
    return out;
}

} // namespace

// What a task waits for is everything of the call before, and nothing else.
void crewWaits(const QuiltView& v, Report& report) {
    std::vector<std::string> before = lastOnTheTable(v);
    TaskKind kind{};
    int pass = 0;
    std::vector<std::string> now;
    std::vector<const Task*> all;
    for (const auto& [stage, tasks] : stages(v))
        all.insert(all.end(), tasks.begin(), tasks.end());
    for (const Task* t : all) {
        if (!now.empty() && (t->kind != kind || t->pass != pass)) {
            std::ranges::sort(now);
            before = std::exchange(now, {});
        }
        kind = t->kind;
        pass = t->pass;
        now.push_back(t->id);
        std::vector<std::string> said = t->after;
        std::ranges::sort(said);
        if (said != before)
            report.add(where(v, *t) / "after",
                       v.label() + ": '" + t->id + "' is said to wait for " +
                           std::to_string(said.size()) + " tasks; the call before has " +
                           std::to_string(before.size()) + ", and not just those.");
    }
}

// Closing early shifts the layers: a zone's pins are closed after a smoothing that came after all
// of them were placed.
void crewSmoothed(const QuiltView& v, Report& report) {
    for (const Zone& z : v.quilt.zones) {
        const auto placed = ofZone(v, z, TaskKind::placeOpen);
        const auto smoothing = v.tasks(TaskKind::smooth, z.pass);
        for (const Task* close : ofZone(v, z, TaskKind::closePins)) {
            const bool smoothed = std::ranges::any_of(smoothing, [&](const Task* s) {
                return s->start >= lastEnd(placed) && s->end <= close->start;
            });
            if (!smoothed)
                report.add(where(v, *close) / "start",
                           v.label() + ": '" + close->id + "' closes zone " + z.id + " at " +
                               clock(close->start) +
                               ", with no smoothing between placing and closing.");
        }
    }
}

// A pressed web that is moved while it is hot lets go, and so does spray that has not set: nothing
// touches the quilt for a minute.
void crewCooled(const QuiltView& v, Report& report) {
    constexpr Seconds kCool{60};
    const auto tasks = v.tasks();
    for (const Task* t : tasks) {
        if (isWaiting(t->kind) && t->end - t->start < kCool)
            report.add(where(v, *t) / "end", v.label() + ": '" + t->id + "' lasts " +
                                                 clock(t->end - t->start) +
                                                 "; 60 s are the least.");
        if (t->kind != TaskKind::checkUnderside && t->kind != TaskKind::shift &&
            t->kind != TaskKind::turnOver && t->kind != TaskKind::handOver)
            continue;
        for (const Task* press : tasks)
            if (press->kind == TaskKind::press && press->start < t->start &&
                press->end + kCool > t->start)
                report.add(where(v, *t) / "start", v.label() + ": '" + t->id + "' begins at " +
                                                       clock(t->start) +
                                                       ", less than 60 s after '" + press->id +
                                                       "' ended at " + clock(press->end) + ".");
    }
}

} // namespace bastewright::check
