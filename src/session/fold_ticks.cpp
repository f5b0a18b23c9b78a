#include "session/checks.h"
#include "session/private/fold.h"
#include "session/private/words.h"
#include "session/ticks.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

Sentence doneBy(Tick tick, const Way& way) {
    const auto work = tick == Tick::pressed ? std::nullopt : workAt(tick, way);
    return work ? zoneStepWords(*work).past : core::says("pressed from the back");
}

Sentence inWords(ZoneState s, const Way& way) {
    switch (s) {
    case ZoneState::waiting:
        return core::says("waiting");
    case ZoneState::dotted:
        return core::says("dotted at the lower face");
    case ZoneState::open:
        return core::says("open");
    case ZoneState::closed:
        return zoneStepWords(way.lastWork()).past;
    case ZoneState::pressedBack:
        return core::says("pressed from the back");
    }
    return {};
}

Sentence wrong(Check c) {
    switch (c) {
    case Check::cautions:
        return core::says("the cautions are not read");
    case Check::palmGlides:
        return core::says("the palm does not glide");
    case Check::underside:
        return core::says("it does not lie flat underneath");
    case Check::spare:
        return core::says("the overage is not as planned");
    }
    return {};
}

} // namespace

// Finishes what the tasks plainly rest on, and warns of checks before them that nobody has ticked.
void Fold::imply(std::span<const Task* const> tasks, const Sentence& what) {
    for (const Task* t : index_->before(tasks)) {
        if (isZoneWork(t->kind) || state_.doneTasks.contains(t->id))
            continue;
        if (isPlainToSee(t->kind)) {
            state_.doneTasks.insert(t->id);
            continue;
        }
        auto caution =
            core::says("%1 before %2 of pass %3 was ticked.", what, spoken(t->kind), t->pass);
        if (std::ranges::find(state_.cautions, caution) == state_.cautions.end())
            state_.cautions.push_back(std::move(caution));
    }
}

Sentence Fold::on(const happened::Step& step, const Event&) {
    const Task* t = index_->task(step.task);
    if (!t || t->job < 0 || t->job >= index_->quilts())
        return core::says("The plan has no task %1.", step.task);
    if (!t->zone.empty())
        return core::says("Task %1 is work on zone %2; tick the zone.", step.task,
                          std::string{zoneName(t->zone)});
    if (state_.doneTasks.contains(t->id))
        return core::says("%1 of pass %2 is ticked already.", spokenFirst(t->kind), t->pass);
    const int current = state_.currentPass[static_cast<std::size_t>(t->job)];
    const bool last = t->kind == TaskKind::handOver || t->kind == TaskKind::turnOver;
    if (t->pass > current && !last)
        return core::says("%1 belongs to pass %2; pass %3 is on the table.", spokenFirst(t->kind),
                          t->pass, current);
    for (const Check c : checksOf(t->kind))
        if (answerTo(state_, t->id, c) == false)
            return core::says("%1 of pass %2 is not done: %3. Put it right and answer again.",
                              spokenFirst(t->kind), t->pass, wrong(c));
    // Smoothing or checking is of no use to zones that come after it: they have to be there first.
    std::vector<std::string> missing;
    for (const Task* b : index_->before(std::array{t}))
        if (isZoneWork(b->kind) && !state_.doneTasks.contains(b->id) &&
            !state_.setAside.contains({b->job, b->zone}) &&
            std::ranges::find(missing, b->zone) == missing.end())
            missing.push_back(b->zone);
    for (auto& zone : missing)
        zone = zoneName(zone);
    if (!missing.empty())
        return core::says("%1 of pass %2 has to wait for the zones %3.", spokenFirst(t->kind),
                          t->pass, core::listed(missing));
    imply(std::array{t}, core::says("%1 was ticked", spokenFirst(t->kind)));
    state_.doneTasks.insert(t->id);
    return {};
}

Sentence Fold::on(const happened::Answer& answer, const Event&) {
    const Task* t = index_->task(answer.task);
    if (!t)
        return core::says("The plan has no task %1.", answer.task);
    const auto asked = checksOf(t->kind);
    const auto about = checkNamed(answer.check);
    if (!about || std::ranges::find(asked, *about) == asked.end())
        return core::says("\"%1\" is not asked at %2.", answer.check, spoken(t->kind));
    if (answer.yes != 0 && answer.yes != 1)
        return core::says("An answer is 1 for yes or 0 for no, not %1.", answer.yes);
    if (state_.doneTasks.contains(t->id))
        return core::says("%1 of pass %2 is ticked already.", spokenFirst(t->kind), t->pass);
    state_.answers[{t->id, answer.check}] = answer.yes == 1;
    return {};
}

Sentence Fold::on(const happened::ZoneTick& tick, const Event& e) {
    const std::string name{zoneName(tick.zone)};
    const Zone* zone = index_->zone(tick.job, tick.zone);
    if (!zone)
        return core::says("The plan has no zone %1 in quilt %2.", name, tick.job + 1);
    const Way& way = index_->way(tick.job, *zone);
    if (!workAt(tick.kind, way))
        return way.words.noSuchStep(name);
    if (state_.setAside.contains({tick.job, tick.zone}))
        return core::says("Zone %1 was left out with its pass; take that back to work it.", name);
    const bool fromBack = tick.kind == Tick::pressed;
    const Sentence done = doneBy(tick.kind, way);
    ZoneLive& live = state_.zones.at({tick.job, tick.zone});
    if (live.state != stateBefore(tick.kind, way))
        return core::says("Zone %1 is %2, so it cannot be %3 now.", name, inWords(live.state, way),
                          done);
    const int current = state_.currentPass[static_cast<std::size_t>(tick.job)];
    const bool onTable = zone->pass == current && !state_.released.contains({tick.job, zone->pass});
    if (!fromBack && !onTable)
        return core::says("Zone %1 belongs to pass %2, which is not on the table now.", name,
                          zone->pass);

    auto tasks = index_->ticked(tick.job, tick.zone, tick.kind);
    if (fromBack && tasks.empty())
        return way.words.noSuchStep(name);
    imply(tasks, core::says("Zone %1 was %2", name, done));
    for (const Task* t : tasks)
        state_.doneTasks.insert(t->id);
    live.state = stateAfter(tick.kind);
    if (live.state == ZoneState::open) {
        live.openedBy = tick.person;
        live.openedMs = e.atMs;
        if (way.fromBox)
            state_.pinsOut += static_cast<std::int64_t>(zone->points.size());
    } else if (live.state == ZoneState::closed) {
        live.closedBy = tick.person;
        live.closedMs = e.atMs;
    }
    return {};
}

Sentence Fold::on(const happened::ZoneAgain& again, const Event&) {
    const std::string name{zoneName(again.zone)};
    const Zone* zone = index_->zone(again.job, again.zone);
    if (!zone)
        return core::says("The plan has no zone %1 in quilt %2.", name, again.job + 1);
    const Way& way = index_->way(again.job, *zone);
    ZoneLive& live = state_.zones.at({again.job, again.zone});
    const bool onTable = zone->pass == state_.currentPass[static_cast<std::size_t>(again.job)] &&
                         !state_.released.contains({again.job, zone->pass});
    if (!onTable)
        return core::says("Zone %1 belongs to pass %2, which is not on the table now.", name,
                          zone->pass);
    if (live.state != ZoneState::closed || zone->points.empty())
        return core::says("Zone %1 is %2, so there is nothing to redo.", name,
                          inWords(live.state, way));
    for (const auto& t : plan_->tasks)
        if (t.job == again.job && t.pass == zone->pass && t.kind == TaskKind::checkUnderside &&
            state_.doneTasks.contains(t.id))
            return core::says("%1 of pass %2 is ticked already.", spokenFirst(t.kind), t.pass);
    for (const Task* t : index_->ticked(again.job, again.zone, Tick::closed))
        state_.doneTasks.erase(t->id);
    live.state = stateBefore(Tick::closed, way);
    live.closedBy.clear();
    live.closedMs = 0;
    return {};
}

Sentence Fold::on(const happened::Released& done, const Event&) {
    if (done.job < 0 || done.job >= index_->quilts())
        return core::says("There is no quilt %1.", done.job + 1);
    int& current = state_.currentPass[static_cast<std::size_t>(done.job)];
    if (state_.released.contains({done.job, done.pass}))
        return core::says("Pass %1 is released already.", done.pass);
    if (done.pass != current)
        return core::says("Pass %1 is not on the table; pass %2 is.", done.pass, current);
    const auto blocked = releaseBlockedBy(*index_, state_, done.job, done.pass);
    if (!blocked.empty())
        return blocked.front();
    state_.released.emplace(done.job, done.pass);
    current = std::min(current + 1, index_->lastPass(done.job));
    return {};
}

Sentences releaseBlockedBy(const PlanIndex& index, const LiveState& state, int job, int pass) {
    Sentences out;
    std::vector<std::string> zones;
    for (const auto& [key, live] : state.zones)
        if (const Zone* z = index.zone(key.first, key.second); key.first == job && z &&
                                                               z->pass == pass && !live.done() &&
                                                               !state.setAside.contains(key))
            zones.emplace_back(zoneName(z->id));
    if (!zones.empty())
        out.push_back(zones.size() == 1
                          ? core::says("One zone of pass %1 is not done: %2.", pass, zones.front())
                          : core::says("%3 zones of pass %1 are not done: %2.", pass,
                                       core::listed(zones), zones.size()));
    for (const auto& t : index.plan().tasks)
        if (t.job == job && t.pass == pass && isCheck(t.kind) && !index.fromBack(t) &&
            !state.doneTasks.contains(t.id)) {
            auto sentence =
                core::says("%1 of pass %2 has not been ticked.", spokenFirst(t.kind), pass);
            if (std::ranges::find(out, sentence) == out.end())
                out.push_back(std::move(sentence));
        }
    return out;
}

} // namespace bastewright
