#pragma once

#include "session/live_state.h"
#include "session/replan.h"

#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

namespace bastewright {

/// Something that happens at the table, or is wished there, and that the plan may have to follow.
struct Change {
    enum class Kind {
        personIn,  ///< `person` has come
        personOut, ///< `person` has gone
        swap,      ///< `person` has gone and `other` has come in their place
        guest,     ///< `person`, unknown so far, has come: the trade's usual reach and pace
        hours,     ///< `person` has to leave at `until`; without a time they stay
        irons,     ///< `count` more, or fewer
        pins,      ///< `count` more turned up, or are missing; 0 where they are short already
        tables,    ///< `count` more of the first kind of table, or fewer
        handOver,  ///< what is left of `zone` of quilt `job` goes to `person`; "" gives it back
        abandon,   ///< what is not begun of the pass on the table of quilt `job` is left out
        goOn,      ///< after a pause, overnight perhaps
        planAgain, ///< nothing but time and pace
    };
    /// What is done where pins are short.
    enum class ForPins {
        nothing,    ///< more will be fetched
        widerRows,  ///< what is left, so far apart that those in the box do
        dots,       ///< zones near the edge get fuse dots and no pins
        fewerZones, ///< as far as they last; the rest on another day
    };
    Kind kind = Kind::planAgain;
    std::string person{}, other{};
    int job = 0;
    std::string zone{};
    int count = 0;
    std::optional<ClockTime> until{};
    ForPins forPins = ForPins::nothing;
    /// The time of day at which the session began, where that is known: what is said of times
    /// counts from it, and people's hours as `hoursCountFrom` has it.
    std::optional<ClockTime> began{};
};

/// What is left to do by a plan, to be set beside what would be left by another.
struct WhatIsLeft {
    int passes = 0;        ///< not released, pulls not counted
    int zones = 0;         ///< with points, not done
    std::int64_t pins = 0; ///< still to be taken out of the box
    auto operator<=>(const WhatIsLeft&) const = default;
};

/// What would become of the plan. Nothing has happened yet.
struct Proposal {
    /// Why it cannot be, one sentence. Of the rest then only `facts` and `note` are set: they where
    /// no plan could be made, or the checker kept it back, and not where what is told cannot be.
    Sentence refused{};
    std::vector<What> facts{}; ///< to be stored whichever plan is kept
    Sentence note{};           ///< to be written down with them, in the language that is spoken
    Session session;           ///< in force with the new plan, learnt paces written in
    Plan plan;                 ///< the new one
    Seconds finishBefore{};    ///< as it was expected before
    Seconds finishAfter{};
    Sentences said{};    ///< what it means, one sentence each
    Sentences changes{}; ///< what moves: `whatChanged`
    WhatIsLeft before{}, after{};
    bool pinsShort = false; ///< the pins in the box do not last: `Change::ForPins` may help
};

/// During a session: `session` and `plan` are those in force, `state` the fold of `events`. Pure;
/// takes as long as a re-plan.
Proposal propose(const Session& session, const Plan& plan, std::span<const Event> events,
                 const LiveState& state, const Change& change, std::int64_t nowMs,
                 std::stop_token stop = {});

/// Before a session: a zone goes to somebody ("" to whoever is best) and everybody's work is
/// planned again round that; surfaces, passes and points stay.
Proposal proposeHandOver(const Session& session, const Plan& plan, int job, const std::string& zone,
                         const std::string& person, std::stop_token stop = {});

/// Before a session that begins at another time of the day than its plan says: hours and breaks are
/// times of the day and stay where they are, so the work is planned again from then on, with those
/// who are there then; surfaces, passes and points stay. `facts` tell who has come meanwhile; they
/// and the acceptance are stored after the start. What it says is said before anything begins.
Proposal proposeStart(const Session& session, const Plan& plan, ClockTime now,
                      std::stop_token stop = {});

/// By which a proposal's plan is taken, together with its session: one event, so that one taking
/// back undoes it.
What acceptance(const Proposal& proposal);

/// Why nobody but others can take a zone: one sentence, empty where `person` can. What is done of
/// it counts.
Sentence cannotTake(const Session& session, const Plan& plan, const LiveState& state, int job,
                    const std::string& zone, const std::string& person);

} // namespace bastewright
