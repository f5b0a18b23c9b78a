#pragma once

#include "plan/call.h"
#include "session/live_state.h"
#include "ways/way.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

/// What a session answers when it is asked: which call is in force, what may be ticked now and by
/// whom, what everybody does or waits for. Tablet, phones and sheets ask here and hold no rule of
/// their own (docs/computation/live.md, "What may be ticked").
///
/// The fold (live_state.h) takes facts as they come, also those against the order; these answers
/// are stricter: nobody is told, or let, to do what its call has not come for.
namespace bastewright {

class OpenWork;
class PlanIndex;

/// Something tapped at the table or on a phone, before it is reported.
struct Tap {
    enum class What {
        zone,    ///< the zone's next piece of work is done
        step,    ///< the step `task` of a whole pass is done
        release, ///< `pass` is finished: the next may be moved in
        end      ///< the session is over
    };
    What what = What::zone;
    int job = 0;
    std::string zone{}, task{};
    int pass = 0;
    /// The tick that is meant, where the tap was made looking at an older state (a phone's).
    std::optional<Tick> meant{};
    std::string person{}; ///< who taps; empty: the tablet's, which ticks for anybody
    /// It was done otherwise, and whoever leads says so: the order of the calls does not bind.
    bool otherwise = false;
};

/// Whether a tap counts, and if not, why.
struct TapAnswer {
    enum class Why {
        counts,
        notStarted,
        ended,
        onBreak,
        unknown,    ///< no such zone, step, pass or quilt
        leftOut,    ///< with the rest of its pass
        done,       ///< ticked already
        notOnTable, ///< of a pass that is not on the table
        early,      ///< its call has not come
        answeredNo, ///< a question of the step was answered 'not yet'
        notTheirs   ///< another's work
    };
    Why why = Why::counts;
    Sentence said{}; ///< why not; empty where it counts
    What what{};     ///< what is to be reported where it counts
    bool counts() const { return why == Why::counts; }
};

/// One thing that is to be ticked next.
struct NextStep {
    enum class Kind { zone, step, release, end };
    Kind kind = Kind::step;
    int job = 0, pass = 1;
    Call call = Call::lay;
    std::string zone{}, task{};
    std::optional<Tick> tick{};        ///< of a zone
    std::vector<std::string> people{}; ///< whose turn it is
    bool ready = false;                ///< may be ticked now
    bool asksAgain = false;            ///< an answer was 'not yet': it may be given once more
    Sentence waits{};                  ///< what has to come first where it is not ready
    auto operator<=>(const NextStep&) const = default;
};

/// The call of one quilt.
struct CallNow {
    int pass = 1;
    Call now = Call::lay;
    std::optional<Call> next{};       ///< none where nothing follows
    std::vector<std::string> zones{}; ///< still to be ticked in this call
    std::vector<std::string> tasks{}; ///< steps still to be ticked in this call
    bool toRelease = false;           ///< all of the pass is done: it is to be released
    bool finished = false;            ///< nothing of this quilt is left
    auto operator<=>(const CallNow&) const = default;
};

/// What somebody does at this moment.
struct PersonNow {
    enum class Doing { away, onBreak, works, waits, done };
    std::string person{};
    Doing doing = Doing::done;
    const Task* task = nullptr; ///< what they do, or will do next where they wait
    const Task* next = nullptr; ///< what comes after that
    Sentence waitsFor{};        ///< where they wait: for whom and what, to be read after their name
};

/// The answers for one moment. What it is made of must outlive it and stay as it is.
class Turns {
public:
    Turns(const Plan& plan, const std::vector<Helper>& helpers, const LiveState& state);
    Turns(const PlanIndex& index, const std::vector<Helper>& helpers, const LiveState& state);
    ~Turns();
    Turns(Turns&&) noexcept;

    TapAnswer mayTick(const Tap& tap) const;
    /// Of one quilt: what may be ticked now, and the first step that may not yet; in the plan's
    /// order.
    std::vector<NextStep> nextSteps(int job) const;
    /// What the one button of the table is for: the next step of a whole pass, the release or the
    /// end; none where the session is not going on.
    std::optional<NextStep> mainStep(int job) const;
    CallNow call(int job) const;
    /// Everybody in the session's order.
    std::vector<PersonNow> whoWaitsForWhat() const;
    /// Who does the zone's next piece of work; nobody where it is done or the plan names nobody.
    std::vector<std::string> whoseTurn(int job, const std::string& zone) const;
    /// What would have to be reported for everything of the pass on the table to be done up to the
    /// end of a call, in its order; for whoever leads, where people were quicker than their ticks.
    std::vector<What> upTo(int job, Call call) const;
    /// Nothing of any quilt is left to do.
    bool finished() const;
    /// How a zone of the quilt, which is one of the plan's, is basted.
    const Way& way(int job, const std::string& zone) const;

private:
    std::unique_ptr<const PlanIndex> own_;
    std::unique_ptr<const OpenWork> work_;
    const std::vector<Helper>& helpers_;
    const LiveState& state_;

    TapAnswer zone(const Tap& tap) const;
    TapAnswer step(const Tap& tap) const;
    TapAnswer release(const Tap& tap) const;
    TapAnswer end(const Tap& tap) const;
    PersonNow personNow(const Helper& helper) const;
};

/// The order of calls within a pass, from 0: set up, move, lay, clamp, pin … roll up.
int orderOf(Call call);

} // namespace bastewright
