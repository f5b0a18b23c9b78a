#pragma once

#include "plan/plan.h"
#include "session/event.h"

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace bastewright {

/// How far a zone is. With pins: waiting → open → closed. With dots: waiting → dotted (lower face)
/// → open (both faces) → closed (pressed) → pressedBack (thick batting only). A zone without points
/// has nothing to be done and is closed from the start.
enum class ZoneState { waiting, dotted, open, closed, pressedBack };

struct ZoneLive {
    ZoneState state = ZoneState::waiting;
    std::string openedBy, closedBy;
    std::int64_t openedMs = 0, closedMs = 0;
    auto operator<=>(const ZoneLive&) const = default;
    bool done() const { return state >= ZoneState::closed; }
};

/// Something written down at the table.
struct Note {
    std::string id; ///< of its event, by which it is taken back
    std::int64_t atMs = 0;
    std::string text;
    auto operator<=>(const Note&) const = default;
};

/// Where a session stands: a pure fold over its plan and events, in the order they were stored.
/// Events that do not fit the plan (an unknown zone, closing before opening) change nothing and are
/// listed in `ignored`, one sentence each. docs/computation/live.md has the rules.
struct LiveState {
    bool started = false, ended = false, paused = false;
    std::int64_t startedMs = 0, lastMs = 0;
    std::int64_t pausedMs = 0;                             ///< when the break began that is on
    std::map<std::pair<int, std::string>, ZoneLive> zones; ///< (quilt, zone id)
    std::set<std::string> doneTasks;                       ///< ids of tasks ticked or implied
    /// (id of the step, name of the check) → yes or no; see checks.h.
    std::map<std::pair<std::string, std::string>, bool> answers;
    /// Per quilt, from 1. Stays at the last pass once that is released (see `released`).
    std::vector<int> currentPass;
    std::set<std::pair<int, int>> released;         ///< (quilt, pass) checked and let go
    std::set<std::pair<int, std::string>> setAside; ///< zones left out with the rest of their pass
    std::set<std::string> present;                  ///< people at the table
    /// `pinsOut` is what sits in the quilts: the points of all pinned zones that are open or
    /// closed.
    std::int64_t pinsOut = 0, pinsBack = 0, pinsFound = 0, pinsLost = 0;
    bool pinsCounted = false;
    std::vector<std::string> undoable; ///< ids of events that can be taken back, latest last
    std::vector<std::string> redoable; ///< ids of takings-back that can be taken back, latest last
    std::vector<Note> notes;           ///< in the order they were written
    Sentences cautions; ///< accepted but against the trade's order, e.g. closed unsmoothed
    Sentences ignored;
    auto operator<=>(const LiveState&) const = default;
};

/// `plan` is the plan the session started with; `replanned` events replace it on the way.
LiveState fold(const Plan& plan, const Setting& setting, std::span<const Event> events);

/// The plan in force after these events: the last `replanned` that counts and fits, else `plan`.
Plan planInForce(const Plan& plan, std::span<const Event> events);

/// The session in force after these events: the last `settingChanged` that counts and fits, else
/// `session`. `plan` is the one the session started with.
Session sessionInForce(const Session& session, const Plan& plan, std::span<const Event> events);

/// The share of zones closed, 0…1; 1 for a plan without zones.
double progress(const LiveState& state);

/// What a tap on a zone would report now; nothing where the zone's work is done or its pass is not
/// on the table. `plan` is the one in force, here and below.
std::optional<Tick> nextTick(const Plan& plan, const LiveState& state, int job,
                             const std::string& zone);

/// True where everything the task waits for is done.
bool mayStart(const Task& task, const LiveState& state);

/// Why the pass may not be released yet, one sentence each; empty where it may.
Sentences releaseBlockedBy(const Plan& plan, const LiveState& state, int job, int pass);

} // namespace bastewright
