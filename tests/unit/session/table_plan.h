#pragma once

#include "plan/plan.h"
#include "session/event.h"
#include "session/live_state.h"

#include <string>
#include <vector>

/// A small afternoon made by hand, so that every expected figure can be worked out on paper.
namespace bastewright::made {

inline constexpr std::int64_t kStartMs = 1'800'000'000'000;

/// Harbour Lights, much reduced: zones A1 and B1 in pass 1, A2 and B2 in pass 2, ten pins each
/// (65 s to place open, 65 s to close at pace 1). Ada has the A zones, Bo the B zones; both lay,
/// smooth and shift.
Plan pinnedPlan();

/// The same with dots: one pass, A1 and B1, ten dots each; `thick` batting is turned and pressed
/// again from the back.
Plan dottedPlan(bool thick = false);

/// One pass of A1 and B1 with spray, two patches each, smoothed and left to set afterwards.
Plan sprayedPlan();
/// One pass of A1 and B1 with thread, ten stitches each, smoothed before they are sewn.
Plan sewnPlan();

/// Pass by pass by all its calls: set up, lay, clamp, pin, hands off, close, check and move. Pass 1
/// has the zones A1 (Ada), B1 and B2 (Bo), pass 2 A1 and B1; ids as planned ones have them
/// ("p1.A1"), steps are called "clamp-1" and the like.
Plan calledPlan();

/// 13:00; Ada and Bo from the start, Cai from 14:00; 100 pins.
Session smallSession();
Setting smallSetting();

/// Reports with ids "e1", "e2", … and times a given number of seconds apart.
class Reporter {
public:
    explicit Reporter(int secondsApart = 60)
        : apart_{secondsApart} {}

    Reporter& tell(What what);
    Reporter& start() { return tell(happened::Started{}); }
    Reporter& step(const std::string& task) { return tell(happened::Step{.task = task}); }
    Reporter& tick(Tick kind, const std::string& zone, const std::string& person) {
        return tell(happened::ZoneTick{kind, 0, zone, person});
    }
    Reporter& open(const std::string& zone, const std::string& person) {
        return tick(Tick::opened, zone, person);
    }
    Reporter& close(const std::string& zone, const std::string& person) {
        return tick(Tick::closed, zone, person);
    }
    Reporter& release(int pass) { return tell(happened::Released{.pass = pass}); }
    Reporter& undo(const std::string& target) { return tell(happened::Undone{target}); }
    Reporter& found(std::int64_t n) { return tell(happened::Pins{happened::Pins::Kind::found, n}); }
    Reporter& back(std::int64_t n) { return tell(happened::Pins{happened::Pins::Kind::back, n}); }
    Reporter& inBox(std::int64_t n) { return tell(happened::Pins{happened::Pins::Kind::inBox, n}); }
    Reporter& in(const std::string& who) {
        return tell(happened::Presence{happened::Presence::Kind::in, who});
    }
    Reporter& out(const std::string& who) {
        return tell(happened::Presence{happened::Presence::Kind::out, who});
    }
    Reporter& replanned(const Plan& plan);
    Reporter& settingChanged(const Session& session);
    Reporter& answer(const std::string& task, const std::string& check, bool yes) {
        return tell(happened::Answer{.task = task, .check = check, .yes = yes ? 1 : 0});
    }
    Reporter& abandon(int pass) { return tell(happened::LeftOut{.pass = pass}); }
    Reporter& wait(int seconds);
    Reporter& until(Seconds at); ///< since the session's start; never back
    Reporter& allOfPassOne();    ///< laid, opened, smoothed, closed and checked, not yet released

    const std::vector<Event>& events() const { return events_; }
    std::string last() const { return events_.back().id; }
    std::int64_t nowMs() const { return nowMs_; }

private:
    int apart_;
    std::int64_t nowMs_ = kStartMs;
    std::vector<Event> events_;
};

/// What the session has come to, told of `pinnedPlan` and `smallSetting`, or of another plan.
LiveState folded(const Reporter& told);
LiveState folded(const Reporter& told, const Plan& plan);

} // namespace bastewright::made
