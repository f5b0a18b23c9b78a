#include "session/change.h"

#include "plan/find.h"
#include "planners/crew/handed.h"
#include "session/checked_plan.h"
#include "session/pace.h"
#include "session/pins.h"
#include "session/private/change_words.h"
#include "session/private/other_passes.h"
#include "session/private/proposing.h"
#include "session/private/rest_plan.h"
#include "session/private/short_of_pins.h"

#include <algorithm>
#include <iterator>

namespace bastewright {
namespace {

using Kind = Change::Kind;
using ForPins = Change::ForPins;

class Proposing {
public:
    Proposing(const Session& session, const Plan& plan, std::span<const Event> events,
              const LiveState& state, std::int64_t nowMs)
        : plan_{plan}
        , events_{events.begin(), events.end()}
        , state_{state}
        , nowMs_{nowMs} {
        out_.session = session;
    }

    Proposal run(const Change& change, std::stop_token stop) {
        followClock(change.began);
        out_.finishBefore = forecast(plan_, out_.session.setting, state_, events_, nowMs_).finish;
        if (auto why = apply(change); !why.empty())
            return {.refused = std::move(why), .session = {}, .plan = {}};
        if (!isAnybodyThere())
            return keptBack(core::says("Nobody is at the table, and nobody is still to come. Say "
                                       "first who is there."));
        out_.before = whatIsLeftBy(plan_, out_.session.setting, state_);
        if (change.kind == Kind::pins && change.forPins == ForPins::dots)
            if (auto why = dots(stop); !why.empty())
                return keptBack(std::move(why));
        for (const auto& fact : out_.facts)
            events_.push_back({"proposed " + std::to_string(events_.size()), nowMs_, fact});
        const auto options = replanNow(plan_, state_, events_, nowMs_);
        plan(change, options, std::move(stop));
        if (!out_.refused.empty())
            return keptBack(std::move(out_.refused));
        out_.session = withLearntPaces(std::move(out_.session), options);
        if (const auto faults = faultsOfRest(out_.session, out_.plan, plan_, state_, options.now);
            !faults.empty())
            return keptBack(notOffered(faults.front()));
        out_.finishAfter = out_.plan.finish;
        const LiveState seen = asSeenBy(out_.plan, state_);
        out_.after = whatIsLeftBy(out_.plan, out_.session.setting, seen);
        out_.pinsShort = countPins(out_.plan, out_.session.setting, seen).shortBy() > 0;
        out_.changes = otherPasses_ ? passesChanged(plan_, out_.plan, out_.before, out_.after)
                                    : whatChanged(asOfNow(change), out_.plan, state_);
        if (change.kind == Kind::handOver && !change.person.empty()) {
            if (auto why = newTrouble(plan_, out_.plan); !why.empty())
                return keptBack(std::move(why));
            out_.said = howTaken(out_.plan, state_, change.job, change.zone, change.person, clock_);
        } else if (change.kind == Kind::pins && change.forPins == ForPins::nothing) {
            out_.said = howFarPinsGo(out_.plan, out_.session.setting, state_, clock_);
        }
        return std::move(out_);
    }

private:
    /// No new plan, but what happened can be noted all the same.
    Proposal keptBack(Sentence why) {
        return {.refused = std::move(why),
                .facts = std::move(out_.facts),
                .note = std::move(out_.note),
                .session = {},
                .plan = {}};
    }

    /// Or is still to come.
    bool isAnybodyThere() const {
        const Setting& s = out_.session.setting;
        const ClockTime now = after(s.start, elapsed(events_, nowMs_));
        return s.helpers.empty() || !state_.present.empty() ||
               std::ranges::any_of(s.helpers,
                                   [&](const Helper& h) { return h.from && *h.from > now; });
    }

    void followClock(std::optional<ClockTime> began) {
        ClockTime& start = out_.session.setting.start;
        clock_ = began.value_or(start);
        start = hoursCountFrom(start, began);
    }

    /// The new plan, by whatever the change asks for.
    void plan(const Change& c, const ReplanOptions& options, std::stop_token stop) {
        if (c.kind == Kind::tables)
            return planTables(c.count, options, std::move(stop));
        if (c.kind == Kind::pins && c.forPins == ForPins::widerRows)
            return take(withWiderRows(out_.session, plan_, state_, options, std::move(stop)));
        out_.plan = replan(out_.session, plan_, state_, options, std::move(stop));
        if (c.kind == Kind::pins && c.forPins == ForPins::fewerZones) {
            Today today = asFarAsPinsLast(std::move(out_.plan), out_.session.setting, state_);
            out_.plan = std::move(today.plan);
            out_.said = std::move(today.said);
        }
    }

    void take(OtherPasses&& other) {
        out_.refused = std::move(other.refused);
        if (!out_.refused.empty())
            return;
        out_.plan = std::move(other.plan);
        for (std::size_t q = 0; q < out_.session.jobs.size(); ++q)
            out_.session.jobs[q] = std::move(other.session.jobs[q]);
        otherPasses_ = true;
        for (const auto& [job, pass] : other.finishing)
            out_.said.push_back(finishedWhereItLies(plan_, job, pass));
    }

    /// On the tables that are there, where that is needed or makes fewer passes.
    void planTables(int more, const ReplanOptions& options, std::stop_token stop) {
        OtherPasses other = onOtherTables(out_.session, plan_, state_, options, stop);
        const auto left = [&](const Plan& p) {
            return whatIsLeftBy(p, out_.session.setting, asSeenBy(p, state_)).passes;
        };
        if (standsOnMissing(plan_, out_.session.setting.room, state_) ||
            (other.refused.empty() && left(other.plan) < out_.before.passes))
            return take(std::move(other));
        out_.plan = replan(out_.session, plan_, state_, options, std::move(stop));
        out_.said.push_back(howTablesMatter(more));
    }

    /// The plan to compare with: a night in between makes nothing later than it was planned.
    Plan asOfNow(const Change& c) const {
        Plan out = plan_;
        if (c.kind == Kind::goOn)
            out.finish += Seconds{rested_ / 1000};
        return out;
    }

    Sentence apply(const Change& c) {
        switch (c.kind) {
        case Kind::personIn:
            return come(c.person);
        case Kind::personOut:
            return go(c.person);
        case Kind::swap: {
            auto why = go(c.person);
            return why.empty() ? come(c.other) : why;
        }
        case Kind::guest: {
            auto& helpers = out_.session.setting.helpers;
            if (std::ranges::find(helpers, c.person, &Helper::name) != helpers.end())
                return core::says("There is a %1 among the helpers already.", c.person);
            helpers.emplace_back().name = c.person;
            tellSetting();
            return come(c.person);
        }
        case Kind::hours:
            return changeHours(c);
        case Kind::irons:
            if (out_.session.setting.room.irons + c.count < 0)
                return core::says("There is no iron to take away.");
            out_.session.setting.room.irons += c.count;
            tellSetting();
            return {};
        case Kind::pins: {
            if (c.count == 0 && countPins(plan_, out_.session.setting, state_).shortBy() == 0)
                return core::says("No pins more and no pins less change nothing.");
            if (c.count != 0) {
                state_.pinsFound += c.count;
                out_.facts.push_back(happened::Pins{happened::Pins::Kind::found, c.count});
            }
            return {};
        }
        case Kind::tables:
            return changeTables(c.count);
        case Kind::handOver: {
            if (c.job < 0 || static_cast<std::size_t>(c.job) >= plan_.quilts.size())
                return core::says("There is no such quilt.");
            auto why = c.person.empty()
                           ? Sentence{}
                           : cannotTake(out_.session, plan_, state_, c.job, c.zone, c.person);
            if (why.empty())
                hand(out_.session, c.job, c.zone, c.person);
            return why;
        }
        case Kind::abandon:
            return abandon(c.job);
        case Kind::goOn:
            if (!state_.paused)
                return core::says("The session is not paused.");
            rested_ = std::max<std::int64_t>(0, nowMs_ - state_.pausedMs);
            state_.paused = false;
            state_.pausedMs = 0;
            out_.facts.push_back(happened::Resumed{});
            return {};
        case Kind::planAgain:
            return {};
        }
        return {};
    }

    Sentence changeHours(const Change& c) {
        auto& helpers = out_.session.setting.helpers;
        const auto who = std::ranges::find(helpers, c.person, &Helper::name);
        if (who == helpers.end())
            return core::says("Nobody called %1 is among the helpers.", c.person);
        if (who->until == c.until)
            return c.until ? core::says("%1 leaves at %2 already.", c.person, *c.until)
                           : core::says("%1 stays to the end already.", c.person);
        if (c.until && who->from && c.until->sinceMidnight <= who->from->sinceMidnight)
            return core::says("%1 comes at %2: leaving is later than that.", c.person, *who->from);
        who->until = c.until;
        tellSetting();
        return {};
    }

    Sentence come(const std::string& who) {
        const auto& helpers = out_.session.setting.helpers;
        if (std::ranges::find(helpers, who, &Helper::name) == helpers.end())
            return core::says("Nobody called %1 is among the helpers.", who);
        if (!state_.present.insert(who).second)
            return core::says("%1 is at the table already.", who);
        out_.facts.push_back(happened::Presence{happened::Presence::Kind::in, who});
        return {};
    }

    Sentence go(const std::string& who) {
        if (state_.present.erase(who) == 0)
            return core::says("%1 is not at the table.", who);
        out_.facts.push_back(happened::Presence{happened::Presence::Kind::out, who});
        return {};
    }

    void tellSetting() {
        out_.facts.push_back(happened::NewSetting{std::make_shared<const Session>(out_.session)});
    }

    Sentence changeTables(int count) {
        auto& tables = out_.session.setting.room.tables;
        if (tables.empty())
            return core::says(
                "The quilt lies on the floor; there is no table to take away or to add to.");
        if (tables.front().count + count < 0)
            return core::says("There is no table to take away.");
        tables.front().count += count;
        if (tables.front().count == 0)
            tables.erase(tables.begin());
        tellSetting();
        return {};
    }

    Sentence abandon(int job) {
        if (job < 0 || static_cast<std::size_t>(job) >= state_.currentPass.size())
            return core::says("There is no such quilt.");
        const int pass = state_.currentPass[static_cast<std::size_t>(job)];
        auto why = setAsideRest(plan_, state_, job, pass);
        if (why.empty())
            out_.facts.push_back(happened::LeftOut{job, pass});
        return why;
    }

    /// Dots are planned where that is still to be planned. Zones of a pass that is begun are left
    /// out of the pins, and that is written down.
    Sentence dots(const std::stop_token& stop) {
        if (auto why = takeDots(out_.session, plan_, state_); !why.empty())
            return why;
        const auto options = replanNow(plan_, state_, events_, nowMs_);
        const Plan then = replan(out_.session, plan_, state_, options, stop);
        const auto missing = countPins(then, out_.session, asSeenBy(then, state_)).shortBy();
        if (missing == 0)
            return {};
        const DotsInstead found = dotsInstead(out_.session, plan_, state_, options, missing);
        std::vector<What> leftOut;
        for (const auto& [job, zone] : found.zones) {
            const int pass = findZone(plan_.quilts[static_cast<std::size_t>(job)], zone)->pass;
            if (auto why = setAsideZone(plan_, state_, job, zone); !why.empty())
                return why;
            leftOut.push_back(happened::LeftOut{job, pass, zone});
        }
        std::ranges::move(leftOut, std::back_inserter(out_.facts));
        if (found.said.empty())
            return {};
        out_.note = found.said;
        out_.said.push_back(found.said);
        return {};
    }

    const Plan& plan_;
    std::vector<Event> events_;
    LiveState state_;
    std::int64_t nowMs_;
    ClockTime clock_{};        ///< when the session began, for what is said
    std::int64_t rested_ = 0;  ///< of the break that ends
    bool otherPasses_ = false; ///< what is left goes by other passes
    Proposal out_{.session = {}, .plan = {}};
};

} // namespace

Proposal propose(const Session& session, const Plan& plan, std::span<const Event> events,
                 const LiveState& state, const Change& change, std::int64_t nowMs,
                 std::stop_token stop) {
    return Proposing{session, plan, events, state, nowMs}.run(change, std::move(stop));
}

What acceptance(const Proposal& proposal) {
    return happened::NewPlan{std::make_shared<const Plan>(proposal.plan),
                             std::make_shared<const Session>(proposal.session)};
}

Sentence cannotTake(const Session& session, const Plan& plan, const LiveState& state, int job,
                    const std::string& zone, const std::string& person) {
    const auto q = static_cast<std::size_t>(job);
    if (job < 0 || q >= plan.quilts.size() || q >= session.jobs.size())
        return core::says("There is no such quilt.");
    const auto& helpers = session.setting.helpers;
    const auto who = std::ranges::find(helpers, person, &Helper::name);
    if (who == helpers.end())
        return core::says("Nobody called %1 is among the helpers.", person);
    const Zone* at = findZone(plan.quilts[q], zone);
    if (!at)
        return core::says("The plan has no zone %1.", std::string{zoneName(zone)});
    std::vector<TaskKind> left;
    for (const auto& t : plan.tasks)
        if (t.job == job && t.zone == zone && !state.doneTasks.contains(t.id))
            left.push_back(t.kind);
    if (left.empty())
        return core::says("Zone %1 is done.", std::string{zoneName(zone)});
    if (state.started && !state.present.contains(person) &&
        (!who->from ||
         after(session.setting.start, elapsedOf(state)).sinceMidnight >= who->from->sinceMidnight))
        return core::says("%1 is not at the table; report them there first.", person);
    return crew::whyNot(*who, plan.quilts[q], *at, left, session.jobs[q].unit);
}

} // namespace bastewright
