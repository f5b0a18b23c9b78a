#pragma once

#include "session/event.h"
#include "session/private/plan_index.h"

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <vector>

namespace bastewright {

/// Makes one clock of the time stamps of several devices, none of which can be trusted. It never
/// runs backwards: a small step back is taken as another device's clock and waits for the others to
/// catch up; a step back of more than ten minutes is a clock that was set, and time goes on from
/// there.
class TableClock {
public:
    void advance(std::int64_t atMs);
    void pause() { paused_ = true; }
    void resume() { paused_ = false; }

    std::int64_t session() const { return session_; } ///< ms since the first event
    std::int64_t working() const { return working_; } ///< the same without the breaks
    int timesSet() const { return timesSet_; }        ///< how often a clock was set back

private:
    bool running_ = false, paused_ = false;
    std::int64_t latest_ = 0, session_ = 0, working_ = 0;
    int timesSet_ = 0;
};

/// One piece of zone work as it was ticked: what was planned for this person, and how long it took.
struct TimedTick {
    std::string person;
    double plannedSeconds = 0;
    double actualSeconds = 0; ///< breaks left out; at most `kLongestShare` times the plan
    bool measured = true;     ///< false: a clock was set meanwhile, so the time tells nothing
};

inline constexpr double kLongestShare = 3;
/// What is believed of a learnt pace.
inline constexpr double kSlowestLearnt = 0.25, kFastestLearnt = 4;

/// What the events say about time, by the rules of `pace.h`.
struct WorkLog {
    std::vector<TimedTick> ticks;                    ///< since the last re-plan
    std::map<std::string, std::int64_t> personSince; ///< working ms of their last tick or arrival
    std::map<int, std::int64_t> quiltSince;          ///< working ms of the last step or release
    std::int64_t working = 0, session = 0;           ///< at the end
    std::int64_t lastRest = 0; ///< working ms when the last break ended, or the start
    std::int64_t restEnd = 0;  ///< the same, in session ms

    /// Since when this person can have been at work on that quilt.
    std::int64_t since(const std::string& person, int job) const;
};
WorkLog workLog(const Plan& plan, std::span<const Event> events, std::int64_t nowMs);

/// As that of `pace.h`, with the log at hand.
double learntPace(const WorkLog& log, const std::string& person);

/// Seconds the trade's figures give for a zone's work at pace 1 (plan/trade_times.h).
double tradeSeconds(TaskKind kind, std::size_t points);

} // namespace bastewright
