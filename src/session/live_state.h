#pragma once

#include "plan/plan.h"
#include "session/event.h"

#include <map>
#include <set>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace bastewright {

enum class ZoneState { waiting, open, closed };

struct ZoneLive {
    ZoneState state = ZoneState::waiting;
    std::string openedBy, closedBy;
    std::int64_t openedMs = 0, closedMs = 0;
    auto operator<=>(const ZoneLive&) const = default;
};

/// Where a session stands: a pure fold over its plan and events, in the order they were stored.
/// Events that do not fit the plan (an unknown zone, closing before opening) change nothing and are
/// listed in `ignored`.
struct LiveState {
    bool started = false, ended = false, paused = false;
    std::int64_t startedMs = 0, lastMs = 0;
    std::map<std::pair<int, std::string>, ZoneLive> zones; ///< (quilt, zone id)
    std::set<std::string> doneTasks;                       ///< ids of tasks ticked or implied
    std::vector<int> currentPass;                          ///< per quilt, from 1
    std::set<std::string> present;                         ///< people at the table
    std::int64_t pinsOut = 0, pinsBack = 0, pinsFound = 0;
    std::vector<std::string> undoable; ///< ids of events that can be taken back, latest last
    std::vector<std::string> notes;
    std::vector<std::string> ignored;
    auto operator<=>(const LiveState&) const = default;
};

LiveState fold(const Plan& plan, const Setting& setting, std::span<const Event> events);

/// The share of zones closed, 0…1; 1 for a plan without zones.
double progress(const LiveState& state);

/// What a person does now and next: the first two tasks of theirs, in the plan's order, that are not
/// done. Fewer where there are fewer.
std::vector<Task> nextTasks(const Plan& plan, const LiveState& state, const std::string& person);

/// Learnt pace of a person: planned over actual seconds, from their ticks; 1 until there are three.
double learntPace(const Plan& plan, std::span<const Event> events, const std::string& person);

/// Expected finish, seconds from the session's start, with a likely range, from what is done so far.
struct Forecast {
    Seconds finish{}, early{}, late{};
    auto operator<=>(const Forecast&) const = default;
};
Forecast forecast(const Plan& plan, const LiveState& state, std::span<const Event> events,
                  std::int64_t nowMs);

} // namespace bastewright
