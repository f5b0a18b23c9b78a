#include "session/private/short_of_pins.h"

#include "plan/call.h"
#include "plan/find.h"
#include "planners/crew/dot_zones.h"
#include "planners/crew/stand_ins.h"
#include "session/pins.h"
#include "session/private/rest_plan.h"
#include "ways/way.h"

#include <algorithm>
#include <map>
#include <set>

namespace bastewright {
namespace {

using ZoneKey = std::pair<int, std::string>;

/// In a pass that is not begun everybody's place is where they work today.
void keepPlacesOfToday(Plan& plan, const LiveState& state) {
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        for (Pass& p : plan.quilts[q].passes) {
            const int job = static_cast<int>(q);
            if (isStepped(plan, state, job, p.number))
                continue;
            for (Stretch& s : p.stretches) {
                std::vector<StandingPlace> places;
                bool any = false;
                for (const Task& t : plan.tasks)
                    if (t.job == job && t.pass == p.number && !t.zone.empty() &&
                        zonePlace(t.zone) == s.place) {
                        any = true;
                        if (t.people == std::vector{s.person})
                            places.insert(places.end(), t.places.begin(), t.places.end());
                    }
                if (!any || !places.empty()) // else others do all of theirs
                    s.edges = crew::together(std::move(places));
            }
            std::erase_if(p.stretches, [](const Stretch& s) { return s.edges.empty(); });
        }
}

} // namespace

Sentence takeDots(Session& session, const Plan& plan, const LiveState& state) {
    if (countPins(plan, session, state).shortBy() == 0)
        return core::says("The pins do for all that is left.");
    if (session.setting.room.irons == 0)
        return core::says("Fuse dots want an iron, and there is none.");
    bool any = false;
    for (Job& job : session.jobs) {
        const Basting::With before = job.basting.whereShort;
        const Way& way = wayOf(job);
        job.basting.whereShort = way.instead.value_or(before);
        if (standInOf(job, session) != nullptr)
            any = true;
        else
            job.basting.whereShort = before;
    }
    return any ? Sentence{}
               : core::says("Fuse dots cannot stand in here: the batting does not take an iron, or "
                            "nobody here may use one.");
}

DotsInstead dotsInstead(const Session& session, const Plan& plan, const LiveState& state,
                        const ReplanOptions& options, std::int64_t missing) {
    DotsInstead out;
    const Situation situation{.before = &plan,
                              .done = state.doneTasks,
                              .inHand = options.inHand,
                              .begun = begunZones(session, plan, state),
                              .setAside = state.setAside};
    for (std::size_t q = 0; q < plan.quilts.size() && q < session.jobs.size(); ++q) {
        const Job& job = session.jobs[q];
        if (standInOf(job, session) == nullptr)
            continue;
        std::vector<Zone> waiting;
        for (const Zone& z : plan.quilts[q].zones)
            if (wayOf(job, z).fromBox && waits(state, {static_cast<int>(q), z.id}) &&
                crew::keepsZones(situation, static_cast<int>(q), z.pass))
                waiting.push_back(z);
        const auto ids = zonesForDots(waiting, plan.quilts[q].layers.top, missing);
        if (ids.empty())
            continue;
        std::int64_t dots = 0;
        for (const auto& id : ids) {
            out.zones.emplace_back(static_cast<int>(q), id);
            dots += std::ssize(findZone(plan.quilts[q], id)->points);
        }
        out.said =
            core::says("Fuse dots in place of pins: %1, %2 dots. Press them before the quilt "
                       "is moved on.",
                       zoneList(ids), dots);
        return out;
    }
    return out;
}

Today asFarAsPinsLast(Plan plan, const Setting& setting, const LiveState& before) {
    const LiveState state = asSeenBy(plan, before); // zones that are new wait
    const PinCount pins = countPins(plan, setting, state);
    std::int64_t left = std::max<std::int64_t>(0, pins.left);
    std::map<int, int> last;   // of a quilt that is not finished today: its last pass
    std::set<ZoneKey> another; // for another day
    std::set<std::pair<int, int>> pinned;
    for (const Task& t : plan.tasks) {
        const ZoneKey key{t.job, t.zone};
        if (t.zone.empty() || !isFirstWork(t.kind) || !wayWith(t.kind).fromBox ||
            !waits(state, key))
            continue;
        const Zone* zone = findZone(plan.quilts[static_cast<std::size_t>(t.job)], t.zone);
        const auto takes = zone ? std::ssize(zone->points) : 0;
        if (const auto at = last.find(t.job); at != last.end() && t.pass > at->second) {
            another.insert(key);
        } else if (takes <= left) {
            left -= takes;
            pinned.emplace(t.job, t.pass);
        } else {
            another.insert(key);
            last.emplace(t.job, t.pass);
        }
    }
    // A pass of which nothing could be pinned is not laid.
    for (auto& [job, pass] : last)
        if (!pinned.contains({job, pass}) && !isStepped(plan, state, job, pass))
            --pass;
    std::set<std::string> gone;
    std::erase_if(plan.tasks, [&](const Task& t) {
        const auto at = last.find(t.job);
        const bool later =
            at != last.end() && (t.pass > at->second || callOf(t.kind) == Call::rollUp);
        const bool drop =
            !state.doneTasks.contains(t.id) && (later || another.contains({t.job, t.zone}));
        if (drop)
            gone.insert(t.id);
        return drop;
    });
    // What waits for nothing but what is for another day is too: where no zone of a pass is for
    // today, its smoothing. Tasks stand in the order of their starts.
    std::erase_if(plan.tasks, [&](const Task& t) {
        const bool drop =
            !gone.empty() && !state.doneTasks.contains(t.id) && !t.after.empty() &&
            std::ranges::all_of(t.after, [&](const std::string& id) { return gone.contains(id); });
        if (drop)
            gone.insert(t.id);
        return drop;
    });
    keepPlacesOfToday(plan, state);
    plan.finish = Seconds{};
    for (Task& t : plan.tasks) {
        std::erase_if(t.after, [&](const std::string& id) { return gone.contains(id); });
        plan.finish = std::max(plan.finish, t.end);
    }
    const Seconds by = plan.range.middle - plan.finish;
    plan.range = {plan.range.early - by, plan.range.middle - by, plan.range.late - by};
    plan.finishBound = std::min(plan.finishBound, plan.finish);
    std::erase_if(plan.breaks,
                  [&](const PlannedBreak& b) { return b.proposed && b.start >= plan.finish; });
    Today out{std::move(plan), {}};
    if (last.empty())
        return out;
    std::erase_if(out.plan.findings,
                  [](const Finding& f) { return f.kind == Finding::Kind::pinsShort; });
    Sentence text =
        another.size() == 1
            ? core::says("The pins last for today's part: 1 zone is left for another day, with %1 "
                         "pins more.",
                         pins.shortBy())
            : core::says("The pins last for today's part: %1 zones are left for another day, with "
                         "%2 pins more.",
                         another.size(), pins.shortBy());
    out.plan.findings.push_back({Finding::Kind::pinsShort, Finding::Level::note, "/stash/pins",
                                 text, core::says("Fetch %1 more.", pins.shortBy())});
    out.said.push_back(std::move(text));
    return out;
}

} // namespace bastewright
