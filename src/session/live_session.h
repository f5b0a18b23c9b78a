#pragma once

#include "session/live_state.h"
#include "session/pace.h"
#include "session/turns.h"

#include <memory>
#include <vector>

namespace bastewright {

/// A running session held in memory: what it started from, its events, and the state they fold to.
/// A convenience for screens; `fold` stays the definition. Cheap to add ticks to (a re-plan is read
/// once, not at every tick). Not thread-safe.
class LiveSession {
public:
    LiveSession(Session session, Plan plan, std::vector<Event> events = {});
    LiveSession(LiveSession&&) noexcept;
    LiveSession& operator=(LiveSession&&) noexcept;
    ~LiveSession();

    /// Adds an event that the library has stored. Returns the reason where it was ignored, else "".
    Sentence add(Event event);

    const LiveState& state() const;
    /// Grows whenever `plan()` or `session()` may have become others.
    int revision() const;
    const Plan& plan() const;       ///< in force
    const Session& session() const; ///< in force
    const std::vector<Event>& events() const;
    /// The event with this id, or null.
    const Event* find(const std::string& id) const;

    /// As the functions of live_state.h say, for what is in force now; quick enough to ask of every
    /// zone at every tick.
    std::optional<Tick> nextTick(int job, const std::string& zone) const;
    Sentences releaseBlockedBy(int job, int pass) const;

    /// The task of the plan in force with this id, or null.
    const Task* task(std::string_view id) const;
    /// The answers for this moment; valid until the next event is added.
    Turns turns() const;

    /// `began`: the time of day at which the session began (`hoursCountFrom`).
    Forecast forecastAt(std::int64_t nowMs, std::optional<ClockTime> began = {}) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace bastewright
