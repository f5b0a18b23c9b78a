#include "session/private/fold.h"

#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/effective.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

// More pins than any box holds; keeps sums of counts far from their range.
constexpr std::int64_t kMostPins = 1'000'000;

std::string passName(int pass) {
    return "pass " + std::to_string(pass);
}

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

std::string listed(const std::vector<std::string>& names) {
    std::string out;
    for (std::size_t i = 0; i < names.size() && i < 6; ++i)
        out += (i ? ", " : "") + names[i];
    return names.size() > 6 ? out + " and others" : out;
}

std::string capital(std::string_view text) {
    std::string out{text};
    if (!out.empty() && out.front() >= 'a' && out.front() <= 'z')
        out.front() = static_cast<char>(out.front() - 'a' + 'A');
    return out;
}

} // namespace

Fold::Fold(std::shared_ptr<const Plan> plan, const Setting& setting, ReadBefore& readBefore)
    : plan_{std::move(plan)}
    , index_{std::make_unique<PlanIndex>(*plan_)}
    , setting_{setting}
    , readBefore_{readBefore} {
    state_.currentPass.assign(plan_->quilts.size(), 1);
    addZones();
}

// A zone without points has nothing to be done: it counts as closed from the beginning.
void Fold::addZones() {
    for (int q = 0; q < index_->quilts(); ++q)
        for (const auto& z : plan_->quilts[static_cast<std::size_t>(q)].zones) {
            const auto [at, isNew] = state_.zones.try_emplace({q, z.id});
            if (isNew && z.points.empty())
                at->second.state = ZoneState::closed;
        }
}

std::string Fold::apply(const Event& event) {
    auto reason = decide(event);
    if (!reason.empty()) {
        state_.ignored.push_back(reason);
        return reason;
    }
    state_.lastMs = std::max(state_.lastMs, event.atMs);
    if (event.kind != EventKind::sessionStarted)
        state_.undoable.push_back(event.id);
    return {};
}

std::string Fold::decide(const Event& e) {
    if (e.kind == EventKind::sessionStarted)
        return start(e);
    if (!state_.started)
        return "Nothing can be reported before the session has started.";
    const bool afterwards = e.kind == EventKind::note || e.kind == EventKind::pinsBack ||
                            e.kind == EventKind::pinsFound || e.kind == EventKind::pinsCounted;
    if (state_.ended && !afterwards)
        return "The session has ended; take the ending back to go on with it.";

    switch (e.kind) {
    case EventKind::stepDone:
        return step(e);
    case EventKind::zoneDotted:
    case EventKind::zoneOpened:
    case EventKind::zoneClosed:
    case EventKind::zonePressed:
        return zoneTick(e);
    case EventKind::passReleased:
        return release(e);
    case EventKind::personIn:
        return arrival(e);
    case EventKind::personOut:
        return departure(e);
    case EventKind::replanned:
        return newPlan(e);
    case EventKind::settingChanged:
        return newSetting(e);
    case EventKind::pinsFound:
        if (e.count == 0 || e.count > kMostPins || e.count < -kMostPins)
            return "A number of pins found or missing cannot be " + std::to_string(e.count) + ".";
        state_.pinsFound += e.count;
        return {};
    case EventKind::pinsBack:
        if (e.count <= 0 || e.count > kMostPins)
            return "A number of pins counted back in cannot be " + std::to_string(e.count) + ".";
        state_.pinsBack += e.count;
        return {};
    case EventKind::pinsCounted:
        if (state_.pinsCounted)
            return "The pins are counted already.";
        state_.pinsCounted = true;
        return {};
    case EventKind::note:
        if (e.text.empty())
            return "The note is empty.";
        state_.notes.push_back(e.text);
        return {};
    case EventKind::paused:
        if (state_.paused)
            return "The session is paused already.";
        state_.paused = true;
        return {};
    case EventKind::resumed:
        if (!state_.paused)
            return "The session is not paused.";
        state_.paused = false;
        return {};
    case EventKind::sessionEnded:
        state_.ended = true;
        return {};
    case EventKind::sessionStarted:
    case EventKind::undone:
        break; // decided above, and by foldAll
    }
    return "Not something that happens at the table.";
}

std::string Fold::start(const Event& e) {
    if (state_.started)
        return "The session has started already.";
    state_.started = true;
    state_.startedMs = e.atMs;
    for (const auto& h : setting_.helpers)
        if (!h.from || *h.from <= setting_.start)
            state_.present.insert(h.name);
    return {};
}

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

std::string Fold::zoneTick(const Event& e) {
    const Zone* zone = index_->zone(e.job, e.zone);
    if (!zone)
        return "The plan has no zone " + e.zone + " in quilt " + std::to_string(e.job + 1) + ".";
    const bool dots = index_->dots(e.job);
    if (!dots && (e.kind == EventKind::zoneDotted || e.kind == EventKind::zonePressed))
        return "Zone " + e.zone + " is pinned, not dotted.";
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
    imply(tasks, "Zone " + e.zone + " was " + tick.done);
    // Two people may share a zone as two tasks: each ticks their own, the last one ticks the zone.
    if (tasks.size() > 1 && !e.task.empty()) {
        const auto own = std::ranges::find(tasks, e.task, &Task::id);
        if (own == tasks.end())
            return "Task " + e.task + " is not one of those for zone " + e.zone + ".";
        if (!state_.doneTasks.insert(e.task).second)
            return "Task " + e.task + " is ticked already.";
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

std::string Fold::arrival(const Event& e) {
    if (std::ranges::find(setting_.helpers, e.person, &Helper::name) == setting_.helpers.end())
        return "Nobody called " + e.person + " is among the helpers; add them first.";
    if (!state_.present.insert(e.person).second)
        return e.person + " is at the table already.";
    return {};
}

std::string Fold::departure(const Event& e) {
    if (state_.present.erase(e.person) == 0)
        return e.person + " is not at the table.";
    return {};
}

std::string Fold::newPlan(const Event& e) {
    auto& plan = readBefore_.plans[e.id];
    if (!plan) {
        auto read = readPlan(e.text);
        if (!read.plan)
            return "The new plan cannot be read: " +
                   (read.problems.empty() ? "it is empty." : read.problems.front().text);
        plan = std::make_shared<const Plan>(std::move(*read.plan));
    }
    if (plan->quilts.size() != plan_->quilts.size())
        return "The new plan is for " + std::to_string(plan->quilts.size()) + " quilts, not " +
               std::to_string(plan_->quilts.size()) + ".";
    auto index = std::make_unique<PlanIndex>(*plan);
    for (const auto& [key, live] : state_.zones)
        if (live.state != ZoneState::waiting && index_->zone(key.first, key.second) &&
            !index_->zone(key.first, key.second)->points.empty() &&
            !index->zone(key.first, key.second))
            return "The new plan leaves out zone " + key.second + ", which is begun.";
    std::erase_if(state_.zones,
                  [&index](const auto& z) { return !index->zone(z.first.first, z.first.second); });
    for (int q = 0; q < index->quilts(); ++q)
        for (const auto& z : plan->quilts[static_cast<std::size_t>(q)].zones)
            state_.zones.emplace(std::pair{q, z.id}, ZoneLive{});
    plan_ = plan;
    index_ = std::move(index);
    return {};
}

std::string Fold::newSetting(const Event& e) {
    auto& session = readBefore_.sessions[e.id];
    if (!session) {
        auto read = readSession(e.text);
        if (!read.session)
            return "The changed setting cannot be read: " +
                   (read.problems.empty() ? "it is empty." : read.problems.front().text);
        session = std::make_shared<const Session>(std::move(*read.session));
    }
    if (session->jobs.size() != plan_->quilts.size())
        return "The changed setting is for " + std::to_string(session->jobs.size()) +
               " quilts, not " + std::to_string(plan_->quilts.size()) + ".";
    session_ = session;
    setting_ = session->setting;
    std::erase_if(state_.present, [this](const std::string& person) {
        return std::ranges::find(setting_.helpers, person, &Helper::name) == setting_.helpers.end();
    });
    return {};
}

Fold foldAll(std::shared_ptr<const Plan> plan, const Setting& setting,
             std::span<const Event> events, ReadBefore& readBefore) {
    Fold fold{std::move(plan), setting, readBefore};
    const auto counts = effective(events);
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (!counts.reasons[i].empty())
            fold.noteIgnored(counts.reasons[i]);
        else if (!counts.inEffect[i])
            continue;
        else if (events[i].kind == EventKind::undone)
            fold.noteUndone(events[i]);
        else
            fold.apply(events[i]);
    }
    return fold;
}

std::vector<std::string> releaseBlockedBy(const PlanIndex& index, const LiveState& state, int job,
                                          int pass) {
    std::vector<std::string> out;
    std::vector<std::string> zones;
    for (const auto& [key, live] : state.zones)
        if (const Zone* z = index.zone(key.first, key.second);
            key.first == job && z && z->pass == pass && !live.done())
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
