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
    if (!event.is<happened::Started>())
        state_.undoable.push_back(event.id);
    return {};
}

Sentence Fold::decide(const Event& e) {
    if (!state_.started && !e.is<happened::Started>())
        return core::says("Nothing can be reported before the session has started.");
    const bool afterwards = e.is<happened::Started>() || e.is<happened::Note>() ||
                            e.is<happened::Pins>() || e.is<happened::PinsCounted>();
    if (state_.ended && !afterwards)
        return core::says("The session has ended; take the ending back to go on with it.");
    return std::visit([&](const auto& what) { return on(what, e); }, e.what);
}

Sentence Fold::on(const happened::Pins& pins, const Event&) {
    const auto count = pins.count;
    const bool tooMany = count > kMostPins || count < -kMostPins;
    switch (pins.kind) {
    case happened::Pins::Kind::found:
        if (count == 0 || tooMany)
            return core::says("A number of pins found or missing cannot be %1.", count);
        addPins(count);
        break;
    case happened::Pins::Kind::inBox: {
        if (count < 0 || tooMany)
            return core::says("A number of pins in the box cannot be %1.", count);
        const auto should = pinsLeft(setting_, state_);
        if (count < should)
            state_.pinsLost += should - count;
        else
            addPins(count - should);
        break;
    }
    case happened::Pins::Kind::back:
        if (count <= 0 || tooMany)
            return core::says("A number of pins counted back in cannot be %1.", count);
        state_.pinsBack += count;
        break;
    }
    return {};
}

Sentence Fold::on(const happened::PinsCounted&, const Event&) {
    if (state_.pinsCounted)
        return core::says("The pins are counted already.");
    state_.pinsCounted = true;
    return {};
}

Sentence Fold::on(const happened::Note& note, const Event& e) {
    if (note.text.empty())
        return core::says("The note is empty.");
    state_.notes.push_back({e.id, e.atMs, note.text});
    return {};
}

Sentence Fold::on(const happened::Paused&, const Event& e) {
    if (state_.paused)
        return core::says("The session is paused already.");
    state_.paused = true;
    state_.pausedMs = e.atMs;
    return {};
}

Sentence Fold::on(const happened::Resumed&, const Event&) {
    if (!state_.paused)
        return core::says("The session is not paused.");
    state_.paused = false;
    state_.pausedMs = 0;
    return {};
}

Sentence Fold::on(const happened::Ended&, const Event&) {
    state_.ended = true;
    return {};
}

// What is taken back is left out before the fold (foldAll).
Sentence Fold::on(const happened::Undone&, const Event&) {
    return core::says("Not something that happens at the table.");
}

// Pins that turn up are first of all those that were lost.
void Fold::addPins(std::int64_t count) {
    const auto again = std::clamp<std::int64_t>(count, 0, state_.pinsLost);
    state_.pinsLost -= again;
    state_.pinsFound += count - again;
}

Sentence Fold::on(const happened::Started&, const Event& e) {
    if (state_.started)
        return core::says("The session has started already.");
    state_.started = true;
    state_.startedMs = e.atMs;
    for (const auto& h : setting_.helpers)
        if (!h.from || *h.from <= setting_.start)
            state_.present.insert(h.name);
    return {};
}

Sentence Fold::on(const happened::Presence& who, const Event&) {
    if (who.kind == happened::Presence::Kind::out)
        return state_.present.erase(who.person) == 0
                   ? core::says("%1 is not at the table.", who.person)
                   : Sentence{};
    if (std::ranges::find(setting_.helpers, who.person, &Helper::name) == setting_.helpers.end())
        return core::says("Nobody called %1 is among the helpers; add them first.", who.person);
    if (!state_.present.insert(who.person).second)
        return core::says("%1 is at the table already.", who.person);
    return {};
}

Sentence Fold::on(const happened::LeftOut& part, const Event&) {
    if (part.job < 0 || part.job >= index_->quilts())
        return core::says("There is no quilt %1.", part.job + 1);
    if (!part.zone.empty())
        return setAsideZone(*plan_, state_, part.job, part.zone);
    if (part.pass != state_.currentPass[static_cast<std::size_t>(part.job)])
        return core::says("Pass %1 is not on the table.", part.pass);
    return setAsideRest(*plan_, state_, part.job, part.pass);
}

Sentence Fold::on(const happened::Unread& unread, const Event&) {
    return unread.why;
}

Sentence Fold::on(const happened::NewPlan& next, const Event&) {
    const auto& plan = next.plan;
    const auto& session = next.session;
    if (session && session->jobs.size() != plan->quilts.size())
        return core::says("The session of the new plan cannot be read.");
    if (plan->quilts.size() != plan_->quilts.size())
        return core::says("The new plan is for %1 quilts, not %2.", plan->quilts.size(),
                          plan_->quilts.size());
    auto index = std::make_unique<PlanIndex>(*plan);
    for (const auto& [key, live] : state_.zones)
        if (const Zone* zone = index_->zone(key.first, key.second);
            zone && isBegun(*zone, live) && !index->zone(key.first, key.second))
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

Sentence Fold::on(const happened::NewSetting& changed, const Event&) {
    const auto& session = changed.session;
    if (session->jobs.size() != plan_->quilts.size())
        return core::says("The changed setting is for %1 quilts, not %2.", session->jobs.size(),
                          plan_->quilts.size());
    take(session);
    return {};
}

namespace {

const ZoneLive kNothingToDo{.state = ZoneState::closed, .openedBy = {}, .closedBy = {}};

} // namespace

void takeZones(const PlanIndex& index, LiveState& state) {
    std::erase_if(state.zones,
                  [&](const auto& z) { return !index.zone(z.first.first, z.first.second); });
    for (int q = 0; q < index.quilts(); ++q)
        for (const auto& z : index.plan().quilts[static_cast<std::size_t>(q)].zones)
            if (const auto [at, isNew] = state.zones.try_emplace({q, z.id}); z.points.empty()) {
                if (isNew)
                    at->second.state = ZoneState::closed;
            } else if (at->second == kNothingToDo) { // its name was that of a zone without points
                at->second = {};
            }
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
        else if (events[i].is<happened::Undone>())
            fold.noteUndone(events[i]);
        else
            fold.apply(events[i]);
    }
    return fold;
}

} // namespace bastewright
