#include "session/live_session.h"

#include "session/effective.h"
#include "session/private/fold.h"

#include <unordered_map>

namespace bastewright {

struct LiveSession::Inside {
    Session given;
    std::shared_ptr<const Plan> givenPlan;
    std::vector<Event> events;
    std::unordered_map<std::string, std::size_t> place;
    std::optional<Fold> fold;
    int revision = 0;

    void foldAgain() {
        ++revision;
        fold.emplace(foldAll(givenPlan, given.setting, events));
    }
};

LiveSession::LiveSession(Session session, Plan plan, std::vector<Event> events)
    : inside_{std::make_unique<Inside>()} {
    inside_->given = std::move(session);
    inside_->givenPlan = std::make_shared<const Plan>(std::move(plan));
    inside_->events = std::move(events);
    for (std::size_t i = 0; i < inside_->events.size(); ++i)
        inside_->place.emplace(inside_->events[i].id, i);
    inside_->foldAgain();
}

LiveSession::LiveSession(LiveSession&&) noexcept = default;
LiveSession& LiveSession::operator=(LiveSession&&) noexcept = default;
LiveSession::~LiveSession() = default;

Sentence LiveSession::add(Event event) {
    auto& in = *inside_;
    if (!in.place.emplace(event.id, in.events.size()).second)
        return core::says("Event %1 is stored already.", event.id);
    const Event& added = in.events.emplace_back(std::move(event));
    if (!added.is<happened::Undone>()) {
        if (added.is<happened::NewSetting>() || added.is<happened::NewPlan>())
            ++in.revision;
        return in.fold->apply(added);
    }
    in.foldAgain();
    return effective(in.events).reasons.back();
}

const LiveState& LiveSession::state() const {
    return inside_->fold->state();
}
int LiveSession::revision() const {
    return inside_->revision;
}
const Plan& LiveSession::plan() const {
    return *inside_->fold->plan();
}
const Session& LiveSession::session() const {
    const auto& changed = inside_->fold->session();
    return changed ? *changed : inside_->given;
}
const std::vector<Event>& LiveSession::events() const {
    return inside_->events;
}

const Event* LiveSession::find(const std::string& id) const {
    const auto it = inside_->place.find(id);
    return it == inside_->place.end() ? nullptr : &inside_->events[it->second];
}

std::optional<Tick> LiveSession::nextTick(int job, const std::string& zone) const {
    return bastewright::nextTick(inside_->fold->index(), state(), job, zone);
}
Sentences LiveSession::releaseBlockedBy(int job, int pass) const {
    return bastewright::releaseBlockedBy(inside_->fold->index(), state(), job, pass);
}
const Task* LiveSession::task(std::string_view id) const {
    return inside_->fold->index().task(id);
}
Turns LiveSession::turns() const {
    return {inside_->fold->index(), session().setting.helpers, state()};
}

Forecast LiveSession::forecastAt(std::int64_t nowMs, std::optional<ClockTime> began) const {
    Setting setting = session().setting;
    setting.start = hoursCountFrom(setting.start, began);
    return forecast(plan(), setting, state(), inside_->events, nowMs);
}

} // namespace bastewright
