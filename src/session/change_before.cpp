#include "planners/crew/crew.h"
#include "planners/crew/zone_points.h"
#include "session/change.h"
#include "session/checked_plan.h"
#include "session/private/change_words.h"
#include "session/private/proposing.h"
#include "session/private/rest_plan.h"

#include <algorithm>

namespace bastewright {
namespace {

using Come = happened::Presence::Kind;

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

/// Why a plan that is made before the session begins is not offered; empty where it may be.
Sentence notBefore(const Session& session, const Plan& plan, const Plan& before) {
    LiveState state = asSeenBy(before, {});
    for (const Helper& h : session.setting.helpers)
        if (!h.from || *h.from <= session.setting.start)
            state.present.insert(h.name);
    const auto faults = faultsOfRest(session, plan, before, state, Seconds{});
    return faults.empty() ? Sentence{} : notOffered(faults.front());
}

} // namespace

Proposal proposeHandOver(const Session& session, const Plan& plan, int job, const std::string& zone,
                         const std::string& person, std::stop_token stop) {
    Proposal out{.session = session, .plan = plan, .finishBefore = plan.finish};
    const LiveState fresh;
    const auto refused = [](Sentence why) {
        return Proposal{.refused = std::move(why), .session = {}, .plan = {}};
    };
    if (!person.empty())
        if (auto why = cannotTake(session, plan, fresh, job, zone, person); !why.empty())
            return refused(std::move(why));
    hand(out.session, job, zone, person);
    planAnew(out, std::move(stop));
    if (auto why = notBefore(out.session, out.plan, plan); !why.empty())
        return refused(std::move(why));
    if (!person.empty()) {
        if (auto why = newTrouble(plan, out.plan); !why.empty())
            return refused(std::move(why));
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
            out.facts.push_back(happened::Presence{then ? Come::in : Come::out, h.name});
    }
    if (auto why = notBefore(out.session, out.plan, plan); !why.empty())
        return {
            .refused = std::move(why), .facts = std::move(out.facts), .session = {}, .plan = {}};
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

} // namespace bastewright
