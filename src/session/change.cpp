#include "session/change.h"

#include "job/job_json.h"
#include "plan/find.h"
#include "planners/crew/crew.h"
#include "planners/crew/handed.h"
#include "session/new_plan_json.h"
#include "session/pace.h"
#include "session/pins.h"
#include "session/private/change_words.h"

#include <algorithm>

namespace bastewright {
namespace {

using Kind = Change::Kind;

Event fact(EventKind kind, const std::string& person = {}) {
    Event e;
    e.kind = kind;
    e.person = person;
    return e;
}

void hand(Session& session, int job, const std::string& zone, const std::string& person) {
    auto& handed = session.jobs[static_cast<std::size_t>(job)].handed;
    std::erase_if(handed, [&zone](const HandedZone& h) { return h.zone == zone; });
    if (!person.empty())
        handed.push_back({zone, person});
}

// A stop, somebody kept beyond their hours, or a zone that cannot stay with whom it was handed to,
// that was not there before.
Sentence newTrouble(const Plan& before, const Plan& after) {
    for (const auto& f : after.findings)
        if (isAboutPeople(f) && f.level >= Finding::Level::warn &&
            std::ranges::find(before.findings, f) == before.findings.end())
            return f.text;
    return {};
}

/// Everybody's work from the start on by a proposal's session; surfaces, passes and points stay.
void planAnew(Proposal& out, std::stop_token stop) {
    const auto points = pointsOfZones(out.plan.quilts);
    auto crew = planCrew(out.session, out.plan.quilts, points, {}, std::move(stop));
    out.plan.tasks = std::move(crew.tasks);
    out.plan.breaks = std::move(crew.breaks);
    out.plan.range = crew.range;
    out.plan.finish = out.finishAfter = crew.finish;
    out.plan.finishBound = crew.bound;
    std::erase_if(out.plan.findings, isAboutPeople);
    out.plan.findings.insert(out.plan.findings.end(), crew.findings.begin(), crew.findings.end());
}

class Proposing {
public:
    Proposing(const Session& session, const Plan& plan, std::span<const Event> events,
              const LiveState& state, std::int64_t nowMs)
        : plan_{plan}
        , events_{events.begin(), events.end()}
        , state_{state}
        , nowMs_{nowMs} {
        out_.session = session;
        out_.finishBefore = forecast(plan, session.setting, state, events, nowMs).finish;
    }

    Proposal run(const Change& change, std::stop_token stop) {
        out_.refused = apply(change);
        if (!out_.refused.empty())
            return std::move(out_);
        for (auto& f : out_.facts) {
            Event e = f;
            e.id = "proposed " + std::to_string(events_.size());
            e.atMs = nowMs_;
            events_.push_back(std::move(e));
        }
        const auto options = replanNow(plan_, state_, events_, nowMs_);
        out_.plan = replan(out_.session, plan_, state_, options, stop);
        out_.session = withLearntPaces(std::move(out_.session), options);
        out_.finishAfter = out_.plan.finish;
        out_.changes = whatChanged(asOfNow(change), out_.plan, state_);
        if (change.kind == Kind::handOver && !change.person.empty()) {
            if (auto why = newTrouble(plan_, out_.plan); !why.empty())
                return Proposal{.refused = std::move(why), .session = {}, .plan = {}};
            out_.said = howTaken(out_.plan, state_, change.job, change.zone, change.person,
                                 out_.session.setting.start);
        } else if (change.kind == Kind::pins) {
            out_.said = howFarPinsGo(out_.plan, out_.session.setting, state_);
        } else if (change.kind == Kind::tables) {
            if (auto why = tablesAreGone(out_.plan); !why.empty())
                return Proposal{.refused = std::move(why), .session = {}, .plan = {}};
            out_.said = howTablesMatter(change.count);
        }
        return std::move(out_);
    }

private:
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
            if (c.count == 0)
                return core::says("No pins more and no pins less change nothing.");
            Event e = fact(EventKind::pinsFound);
            e.count = c.count;
            state_.pinsFound += c.count;
            out_.facts.push_back(std::move(e));
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
            out_.facts.push_back(fact(EventKind::resumed));
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
        out_.facts.push_back(fact(EventKind::personIn, who));
        return {};
    }

    Sentence go(const std::string& who) {
        if (state_.present.erase(who) == 0)
            return core::says("%1 is not at the table.", who);
        out_.facts.push_back(fact(EventKind::personOut, who));
        return {};
    }

    void tellSetting() {
        Event e = fact(EventKind::settingChanged);
        e.text = writeSession(out_.session);
        out_.facts.push_back(std::move(e));
    }

    Sentence changeTables(int count) {
        auto& tables = out_.session.setting.room.tables;
        if (tables.empty())
            return core::says(
                "The quilt lies on the floor; there is no table to take away or to add to.");
        if (tables.front().count + count < 0)
            return core::says("There is no table to take away.");
        tables.front().count += count;
        tellSetting();
        return {};
    }

    Sentence abandon(int job) {
        if (job < 0 || static_cast<std::size_t>(job) >= state_.currentPass.size())
            return core::says("There is no such quilt.");
        const int pass = state_.currentPass[static_cast<std::size_t>(job)];
        auto why = setAsideRest(plan_, state_, job, pass);
        if (why.empty()) {
            Event e = fact(EventKind::passAbandoned);
            e.job = job;
            e.pass = pass;
            out_.facts.push_back(std::move(e));
        }
        return why;
    }

    const Plan& plan_;
    std::vector<Event> events_;
    LiveState state_;
    std::int64_t nowMs_;
    std::int64_t rested_ = 0; ///< of the break that ends
    Proposal out_{.session = {}, .plan = {}};
};

} // namespace

Proposal propose(const Session& session, const Plan& plan, std::span<const Event> events,
                 const LiveState& state, const Change& change, std::int64_t nowMs,
                 std::stop_token stop) {
    return Proposing{session, plan, events, state, nowMs}.run(change, std::move(stop));
}

Proposal proposeHandOver(const Session& session, const Plan& plan, int job, const std::string& zone,
                         const std::string& person, std::stop_token stop) {
    Proposal out{.session = session, .plan = plan, .finishBefore = plan.finish};
    const LiveState fresh;
    if (!person.empty())
        out.refused = cannotTake(session, plan, fresh, job, zone, person);
    if (!out.refused.empty())
        return out;
    hand(out.session, job, zone, person);
    planAnew(out, std::move(stop));
    if (!person.empty()) {
        out.refused = newTrouble(plan, out.plan);
        out.said = howTaken(out.plan, fresh, job, zone, person, session.setting.start);
    }
    out.changes = whatChanged(plan, out.plan, fresh);
    return out;
}

Proposal proposeStart(const Session& session, const Plan& plan, ClockTime now,
                      std::stop_token stop) {
    Proposal out{.session = session, .plan = plan, .finishBefore = plan.finish};
    const ClockTime was = session.setting.start;
    out.session.setting.start = now;
    planAnew(out, std::move(stop));
    if (now != was)
        out.plan.help.clear(); // it was about the other start
    for (const Helper& h : session.setting.helpers) {
        const bool before = !h.from || *h.from <= was, then = !h.from || *h.from <= now;
        if (before != then)
            out.facts.push_back(fact(then ? EventKind::personIn : EventKind::personOut, h.name));
    }
    const Seconds by{now.sinceMidnight - was.sinceMidnight};
    const auto ends = after(now, out.finishAfter), ended = after(was, plan.finish);
    if (by > Seconds{})
        out.said.push_back(
            core::says("%1 later than planned: finishes about %2, not %3.", by, ends, ended));
    if (by < Seconds{})
        out.said.push_back(
            core::says("%1 earlier than planned: finishes about %2, not %3.", -by, ends, ended));
    for (const Helper& h : session.setting.helpers)
        if (by == Seconds{} || !h.until)
            continue;
        else if (*h.until <= now)
            out.said.push_back(
                core::says("%1 was to leave at %2 and is not planned for.", h.name, *h.until));
        else if (now.sinceMidnight + std::chrono::ceil<std::chrono::minutes>(out.finishAfter) >
                 h.until->sinceMidnight)
            out.said.push_back(core::says("%1 leaves at %2 as agreed.", h.name, *h.until));
    if (auto trouble = newTrouble(plan, out.plan); !trouble.empty())
        out.said.push_back(std::move(trouble));
    out.changes = whatChanged(plan, out.plan, {});
    return out;
}

Event acceptance(const Proposal& proposal) {
    Event e;
    e.kind = EventKind::replanned;
    e.text = writeNewPlan(proposal.session, proposal.plan);
    return e;
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
