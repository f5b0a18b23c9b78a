#pragma once

#include "session/live_state.h"
#include "session/private/plan_index.h"

#include <memory>
#include <string>

namespace bastewright {

/// The fold, one event at a time. Knows nothing of taking back: it is given the events in effect.
class Fold {
public:
    Fold(std::shared_ptr<const Plan> plan, const Setting& setting);

    /// Applies an event that is in effect. Returns why it was ignored, or "".
    Sentence apply(const Event& event);
    /// Lists a taking back that is in effect, or an event that is not and why.
    void noteUndone(const Event& event) { state_.redoable.push_back(event.id); }
    void noteIgnored(Sentence reason) { state_.ignored.push_back(std::move(reason)); }

    const LiveState& state() const { return state_; }
    LiveState take() { return std::move(state_); }
    const std::shared_ptr<const Plan>& plan() const { return plan_; }
    const PlanIndex& index() const { return *index_; }
    /// The session in force, null while it is the one given at the start.
    const std::shared_ptr<const Session>& session() const { return session_; }

private:
    Sentence decide(const Event& event);
    // Each applies one kind of event, or says why not; `event` has its id and time.
    Sentence on(const happened::Started&, const Event& event);
    Sentence on(const happened::Step&, const Event& event);
    Sentence on(const happened::Answer&, const Event& event);
    Sentence on(const happened::ZoneTick&, const Event& event);
    Sentence on(const happened::ZoneAgain&, const Event& event);
    Sentence on(const happened::Undone&, const Event& event);
    Sentence on(const happened::LeftOut&, const Event& event);
    Sentence on(const happened::Released&, const Event& event);
    Sentence on(const happened::Presence&, const Event& event);
    Sentence on(const happened::Pins&, const Event& event);
    Sentence on(const happened::PinsCounted&, const Event& event);
    Sentence on(const happened::Note&, const Event& event);
    Sentence on(const happened::Paused&, const Event& event);
    Sentence on(const happened::Resumed&, const Event& event);
    Sentence on(const happened::NewSetting&, const Event& event);
    Sentence on(const happened::NewPlan&, const Event& event);
    Sentence on(const happened::Unread&, const Event& event);
    Sentence on(const happened::Ended&, const Event& event);
    void take(const std::shared_ptr<const Session>& session);
    void addPins(std::int64_t count);
    void imply(std::span<const Task* const> tasks, const Sentence& what);

    std::shared_ptr<const Plan> plan_;
    std::unique_ptr<const PlanIndex> index_;
    std::shared_ptr<const Session> session_;
    Setting setting_;
    LiveState state_;
};

/// The state's zones become those of the plan: what it leaves out is gone, what is new waits, and a
/// new zone without points has nothing to be done and counts as closed.
void takeZones(const PlanIndex& index, LiveState& state);

/// The fold over a whole stream, takings back included.
Fold foldAll(std::shared_ptr<const Plan> plan, const Setting& setting,
             std::span<const Event> events);

/// Something of the zone is done; a zone without points has nothing to be done.
inline bool isBegun(const Zone& zone, const ZoneLive& live) {
    return live.state != ZoneState::waiting && !zone.points.empty();
}

/// A plan that belongs to somebody else, as the fold wants it.
inline std::shared_ptr<const Plan> borrowed(const Plan& plan) {
    return {std::shared_ptr<const Plan>{}, &plan};
}

/// As those of live_state.h, with the plan's index at hand.
std::optional<Tick> nextTick(const PlanIndex& index, const LiveState& state, int job,
                             const std::string& zone);
Sentences releaseBlockedBy(const PlanIndex& index, const LiveState& state, int job, int pass);

} // namespace bastewright
