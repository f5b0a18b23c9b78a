#include "session/checks.h"
#include "session/private/fold.h"
#include "session/private/words.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

// What a tick is about: the state it leads from and to, and the tasks it finishes.
struct Tick {
    ZoneState from, to;
    TaskKind kind;
    bool fromBack;
    const char* done;
};

Tick tickOf(EventKind kind, bool dots) {
    switch (kind) {
    case EventKind::zoneDotted:
        return {ZoneState::waiting, ZoneState::dotted, TaskKind::dotLower, false, "dotted"};
    case EventKind::zoneOpened:
        return {dots ? ZoneState::dotted : ZoneState::waiting, ZoneState::open,
                dots ? TaskKind::dotUpper : TaskKind::placeOpen, false, "opened"};
    case EventKind::zoneClosed:
        return {ZoneState::open, ZoneState::closed, dots ? TaskKind::press : TaskKind::closePins,
                false, "closed"};
    default:
        return {ZoneState::closed, ZoneState::pressedBack, TaskKind::press, true,
                "pressed from the back"};
    }
}

std::string_view inWords(ZoneState s) {
    switch (s) {
    case ZoneState::waiting:
        return "waiting";
    case ZoneState::dotted:
        return "dotted at the lower face";
    case ZoneState::open:
        return "open";
    case ZoneState::closed:
        return "closed";
    case ZoneState::pressedBack:
        return "pressed from the back";
    }
    return "";
}

std::string_view wrong(Check c) {
    switch (c) {
    case Check::palmGlides:
        return "the palm does not glide";
    case Check::underside:
        return "the underside does not lie flat";
    case Check::spare:
        return "the spare is not as planned";
    }
    return "";
}

} // namespace

// Finishes what the tasks plainly rest on, and warns of checks before them that nobody has ticked.
void Fold::imply(std::span<const Task* const> tasks, const std::string& what) {
    for (const Task* t : index_->before(tasks)) {
        if (isZoneWork(t->kind) || state_.doneTasks.contains(t->id))
            continue;
        if (isPlainToSee(t->kind)) {
            state_.doneTasks.insert(t->id);
            continue;
        }
        auto caution = what + " before " + std::string{spoken(t->kind)} + " of " +
                       passName(t->pass) + " was ticked.";
        if (std::ranges::find(state_.cautions, caution) == state_.cautions.end())
            state_.cautions.push_back(std::move(caution));
    }
}

std::string Fold::step(const Event& e) {
    const Task* t = index_->task(e.task);
    if (!t || t->job < 0 || t->job >= index_->quilts())
        return "The plan has no task " + e.task + ".";
    if (!t->zone.empty())
        return "Task " + e.task + " is work on zone " + t->zone + "; tick the zone.";
    if (state_.doneTasks.contains(t->id))
        return capital(spoken(t->kind)) + " of " + passName(t->pass) + " is ticked already.";
    const int current = state_.currentPass[static_cast<std::size_t>(t->job)];
    const bool last = t->kind == TaskKind::handOver || t->kind == TaskKind::turnOver;
    if (t->pass > current && !last)
        return capital(spoken(t->kind)) + " belongs to " + passName(t->pass) + "; " +
               passName(current) + " is on the table.";
    for (const Check c : checksOf(t->kind))
        if (answerTo(state_, t->id, c) == false)
            return capital(spoken(t->kind)) + " of " + passName(t->pass) +
                   " is not done: " + std::string{wrong(c)} + ". Put it right and answer again.";
    // Smoothing or checking is of no use to zones that come after it: they have to be there first.
    std::vector<std::string> missing;
    for (const Task* b : index_->before(std::array{t}))
        if (isZoneWork(b->kind) && !state_.doneTasks.contains(b->id) &&
            std::ranges::find(missing, b->zone) == missing.end())
            missing.push_back(b->zone);
    if (!missing.empty())
        return capital(spoken(t->kind)) + " of " + passName(t->pass) +
               " has to wait for the zones " + listed(missing) + ".";
    imply(std::array{t}, capital(spoken(t->kind)) + " was ticked");
    state_.doneTasks.insert(t->id);
    return {};
}

std::string Fold::answer(const Event& e) {
    const Task* t = index_->task(e.task);
    if (!t)
        return "The plan has no task " + e.task + ".";
    const auto asked = checksOf(t->kind);
    const auto about = checkNamed(e.text);
    if (!about || std::ranges::find(asked, *about) == asked.end())
        return "\"" + e.text + "\" is not asked at " + std::string{spoken(t->kind)} + ".";
    if (e.count != 0 && e.count != 1)
        return "An answer is 1 for yes or 0 for no, not " + std::to_string(e.count) + ".";
    if (state_.doneTasks.contains(t->id))
        return capital(spoken(t->kind)) + " of " + passName(t->pass) + " is ticked already.";
    state_.answers[{t->id, e.text}] = e.count == 1;
    return {};
}

std::string Fold::zoneTick(const Event& e) {
    const Zone* zone = index_->zone(e.job, e.zone);
    if (!zone)
        return "The plan has no zone " + e.zone + " in quilt " + std::to_string(e.job + 1) + ".";
    const bool dots = index_->dots(e.job);
    if (!dots && (e.kind == EventKind::zoneDotted || e.kind == EventKind::zonePressed))
        return "Zone " + e.zone + " is pinned, not dotted.";
    if (state_.setAside.contains({e.job, e.zone}))
        return "Zone " + e.zone + " was left out with its pass; take that back to work it.";
    const Tick tick = tickOf(e.kind, dots);
    ZoneLive& live = state_.zones.at({e.job, e.zone});
    if (live.state != tick.from)
        return "Zone " + e.zone + " is " + std::string{inWords(live.state)} + ", so it cannot be " +
               tick.done + " now.";
    const int current = state_.currentPass[static_cast<std::size_t>(e.job)];
    const bool onTable = zone->pass == current && !state_.released.contains({e.job, zone->pass});
    if (!tick.fromBack && !onTable)
        return "Zone " + e.zone + " belongs to " + passName(zone->pass) +
               ", which is not on the table now.";

    auto tasks = index_->zoneTasks(e.job, e.zone, tick.kind, tick.fromBack);
    if (tick.fromBack && tasks.empty())
        return "Zone " + e.zone + " is not pressed from the back in this plan.";
    // Two people may share a zone as two tasks: each ticks their own, the last one ticks the zone.
    const bool shared = tasks.size() > 1 && !e.task.empty();
    if (shared && std::ranges::find(tasks, e.task, &Task::id) == tasks.end())
        return "Task " + e.task + " is not one of those for zone " + e.zone + ".";
    if (shared && state_.doneTasks.contains(e.task))
        return "Task " + e.task + " is ticked already.";
    imply(tasks, "Zone " + e.zone + " was " + tick.done);
    if (shared) {
        state_.doneTasks.insert(e.task);
        if (!std::ranges::all_of(
                tasks, [this](const Task* t) { return state_.doneTasks.contains(t->id); }))
            return {};
    }
    for (const Task* t : tasks)
        state_.doneTasks.insert(t->id);
    live.state = tick.to;
    if (tick.to == ZoneState::open) {
        live.openedBy = e.person;
        live.openedMs = e.atMs;
        if (!dots)
            state_.pinsOut += static_cast<std::int64_t>(zone->points.size());
    } else if (tick.to == ZoneState::closed) {
        live.closedBy = e.person;
        live.closedMs = e.atMs;
    }
    return {};
}

std::string Fold::release(const Event& e) {
    if (e.job < 0 || e.job >= index_->quilts())
        return "There is no quilt " + std::to_string(e.job + 1) + ".";
    int& current = state_.currentPass[static_cast<std::size_t>(e.job)];
    if (state_.released.contains({e.job, e.pass}))
        return capital(passName(e.pass)) + " is released already.";
    if (e.pass != current)
        return capital(passName(e.pass)) + " is not on the table; " + passName(current) + " is.";
    const auto blocked = releaseBlockedBy(*index_, state_, e.job, e.pass);
    if (!blocked.empty())
        return blocked.front();
    state_.released.emplace(e.job, e.pass);
    current = std::min(current + 1, index_->lastPass(e.job));
    return {};
}

std::vector<std::string> releaseBlockedBy(const PlanIndex& index, const LiveState& state, int job,
                                          int pass) {
    std::vector<std::string> out;
    std::vector<std::string> zones;
    for (const auto& [key, live] : state.zones)
        if (const Zone* z = index.zone(key.first, key.second); key.first == job && z &&
                                                               z->pass == pass && !live.done() &&
                                                               !state.setAside.contains(key))
            zones.push_back(z->id);
    if (!zones.empty())
        out.push_back((zones.size() == 1 ? "One zone" : std::to_string(zones.size()) + " zones") +
                      " of " + passName(pass) + (zones.size() == 1 ? " is" : " are") +
                      " not done: " + listed(zones) + ".");
    for (const auto& t : index.plan().tasks)
        if (t.job == job && t.pass == pass && isCheck(t.kind) && !index.fromBack(t) &&
            !state.doneTasks.contains(t.id)) {
            auto sentence =
                capital(spoken(t.kind)) + " of " + passName(pass) + " has not been ticked.";
            if (std::ranges::find(out, sentence) == out.end())
                out.push_back(std::move(sentence));
        }
    return out;
}

} // namespace bastewright
