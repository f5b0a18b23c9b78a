#include "session/private/fold.h"

#include "session/effective.h"
#include "session/pins.h"
#include "session/private/change_words.h"
#include "session/private/words.h"

#include <algorithm>

namespace bastewright {
namespace {

// More pins than any box holds; keeps sums of counts far from their range.
constexpr std::int64_t kMostPins = 1'000'000;

} // namespace

Fold::Fold(std::shared_ptr<const Plan> plan, const Setting& setting)
    : plan_{std::move(plan)}
    , index_{std::make_unique<PlanIndex>(*plan_)}
    , setting_{setting} {
    state_.currentPass.assign(plan_->quilts.size(), 1);
    takeZones(*index_, state_);
}

Sentence Fold::apply(const Event& event) {
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

Sentence Fold::decide(const Event& e) {
    if (e.kind == EventKind::sessionStarted)
        return start(e);
    if (!state_.started)
        return core::says("Nothing can be reported before the session has started.");
    const bool afterwards = e.kind == EventKind::note || e.kind == EventKind::pinsBack ||
                            e.kind == EventKind::pinsFound || e.kind == EventKind::pinsInBox ||
                            e.kind == EventKind::pinsCounted;
    if (state_.ended && !afterwards)
        return core::says("The session has ended; take the ending back to go on with it.");

    switch (e.kind) {
    case EventKind::stepDone:
        return step(e);
    case EventKind::checkAnswered:
        return answer(e);
    case EventKind::zoneDotted:
    case EventKind::zoneOpened:
    case EventKind::zoneClosed:
    case EventKind::zonePressed:
        return zoneTick(e);
    case EventKind::zoneAgain:
        return zoneAgain(e);
    case EventKind::passReleased:
        return release(e);
    case EventKind::passAbandoned:
        return abandon(e);
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
            return core::says("A number of pins found or missing cannot be %1.", e.count);
        addPins(e.count);
        return {};
    case EventKind::pinsInBox: {
        if (e.count < 0 || e.count > kMostPins)
            return core::says("A number of pins in the box cannot be %1.", e.count);
        const auto should = pinsLeft(setting_, state_);
        if (e.count < should)
            state_.pinsLost += should - e.count;
        else
            addPins(e.count - should);
        return {};
    }
    case EventKind::pinsBack:
        if (e.count <= 0 || e.count > kMostPins)
            return core::says("A number of pins counted back in cannot be %1.", e.count);
        state_.pinsBack += e.count;
        return {};
    case EventKind::pinsCounted:
        if (state_.pinsCounted)
            return core::says("The pins are counted already.");
        state_.pinsCounted = true;
        return {};
    case EventKind::note:
        if (e.text.empty())
            return core::says("The note is empty.");
        state_.notes.push_back({e.id, e.atMs, e.text});
        return {};
    case EventKind::paused:
        if (state_.paused)
            return core::says("The session is paused already.");
        state_.paused = true;
        state_.pausedMs = e.atMs;
        return {};
    case EventKind::resumed:
        if (!state_.paused)
            return core::says("The session is not paused.");
        state_.paused = false;
        state_.pausedMs = 0;
        return {};
    case EventKind::sessionEnded:
        state_.ended = true;
        return {};
    case EventKind::sessionStarted:
    case EventKind::undone:
        break; // decided above, and by foldAll
    }
    return core::says("Not something that happens at the table.");
}

// Pins that turn up are first of all those that were lost.
void Fold::addPins(std::int64_t count) {
    const auto again = std::clamp<std::int64_t>(count, 0, state_.pinsLost);
    state_.pinsLost -= again;
    state_.pinsFound += count - again;
}

Sentence Fold::start(const Event& e) {
    if (state_.started)
        return core::says("The session has started already.");
    state_.started = true;
    state_.startedMs = e.atMs;
    for (const auto& h : setting_.helpers)
        if (!h.from || *h.from <= setting_.start)
            state_.present.insert(h.name);
    return {};
}

Sentence Fold::arrival(const Event& e) {
    if (std::ranges::find(setting_.helpers, e.person, &Helper::name) == setting_.helpers.end())
        return core::says("Nobody called %1 is among the helpers; add them first.", e.person);
    if (!state_.present.insert(e.person).second)
        return core::says("%1 is at the table already.", e.person);
    return {};
}

Sentence Fold::departure(const Event& e) {
    if (state_.present.erase(e.person) == 0)
        return core::says("%1 is not at the table.", e.person);
    return {};
}

Sentence Fold::abandon(const Event& e) {
    if (e.job < 0 || e.job >= index_->quilts())
        return core::says("There is no quilt %1.", e.job + 1);
    if (!e.zone.empty())
        return setAsideZone(*plan_, state_, e.job, e.zone);
    if (e.pass != state_.currentPass[static_cast<std::size_t>(e.job)])
        return core::says("Pass %1 is not on the table.", e.pass);
    return setAsideRest(*plan_, state_, e.job, e.pass);
}

Sentence Fold::newPlan(const Event& e) {
    if (const auto* unread = std::get_if<UnreadPlan>(&e.carried))
        return unread->why;
    const auto* next = std::get_if<NewPlan>(&e.carried);
    if (!next || !next->plan)
        return core::says("The event carries no plan.");
    const auto& plan = next->plan;
    const auto& session = next->session;
    if (session && session->jobs.size() != plan->quilts.size())
        return core::says("The session of the new plan cannot be read.");
    if (plan->quilts.size() != plan_->quilts.size())
        return core::says("The new plan is for %1 quilts, not %2.", plan->quilts.size(),
                          plan_->quilts.size());
    auto index = std::make_unique<PlanIndex>(*plan);
    for (const auto& [key, live] : state_.zones)
        if (live.state != ZoneState::waiting && index_->zone(key.first, key.second) &&
            !index_->zone(key.first, key.second)->points.empty() &&
            !index->zone(key.first, key.second))
            return core::says("The new plan leaves out zone %1, which is begun.",
                              std::string{zoneName(key.second)});
    plan_ = plan;
    index_ = std::move(index);
    takeZones(*index_, state_);
    if (session)
        take(session);
    return {};
}

void Fold::take(const std::shared_ptr<const Session>& session) {
    session_ = session;
    setting_ = session->setting;
    std::erase_if(state_.present, [this](const std::string& person) {
        return std::ranges::find(setting_.helpers, person, &Helper::name) == setting_.helpers.end();
    });
}

Sentence Fold::newSetting(const Event& e) {
    if (const auto* unread = std::get_if<UnreadPlan>(&e.carried))
        return unread->why;
    const auto* carried = std::get_if<std::shared_ptr<const Session>>(&e.carried);
    if (!carried || !*carried)
        return core::says("The event carries no setting.");
    const auto& session = *carried;
    if (session->jobs.size() != plan_->quilts.size())
        return core::says("The changed setting is for %1 quilts, not %2.", session->jobs.size(),
                          plan_->quilts.size());
    take(session);
    return {};
}

void takeZones(const PlanIndex& index, LiveState& state) {
    std::erase_if(state.zones,
                  [&](const auto& z) { return !index.zone(z.first.first, z.first.second); });
    for (int q = 0; q < index.quilts(); ++q)
        for (const auto& z : index.plan().quilts[static_cast<std::size_t>(q)].zones)
            if (const auto [at, isNew] = state.zones.try_emplace({q, z.id});
                isNew && z.points.empty())
                at->second.state = ZoneState::closed;
}

Fold foldAll(std::shared_ptr<const Plan> plan, const Setting& setting,
             std::span<const Event> events) {
    Fold fold{std::move(plan), setting};
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

} // namespace bastewright
