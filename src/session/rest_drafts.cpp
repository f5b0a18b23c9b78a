#include "plan/share.h"
#include "plan/trade_times.h"
#include "session/private/plan_index.h"
#include "session/private/remaining.h"
#include "session/private/words.h"

#include <algorithm>
#include <map>

namespace bastewright {
namespace {

using crew::Needs;
using crew::TaskDraft;

class Drafting {
public:
    Drafting(const Session& session, const Plan& plan, const LiveState& state,
             const std::vector<Hand>& hands, Seconds now)
        : session_{session}
        , plan_{plan}
        , index_{plan}
        , state_{state}
        , hands_{hands}
        , now_{now} {}

    void draftAll(Remaining& out) {
        draftTasks(out);
        if (hands_.empty() && !nobodys_.empty())
            out.findings.push_back({Finding::Level::stop, "/helpers",
                                    core::says("Nobody is at the table."),
                                    core::says("Report who is there, then plan again.")});
        else
            for (const auto& [work, where] : nobodys_)
                out.findings.push_back({Finding::Level::stop, "/helpers",
                                        sentence(work.first, where, work.second),
                                        core::says("Ask somebody who can to come to the table, "
                                                   "then plan again.")});
    }

private:
    void draftTasks(Remaining& out) {
        std::map<std::string_view, int> place;
        for (const auto& t : plan_.tasks) {
            if (state_.doneTasks.contains(t.id) || t.job < 0 || t.job >= index_.quilts())
                continue;
            auto draft = draftOf(t, out);
            for (const auto& id : t.after)
                if (const auto it = place.find(id); it != place.end())
                    draft.after.push_back(it->second);
            place.emplace(t.id, static_cast<int>(out.tasks.size()));
            out.tasks.push_back(&t);
            out.drafts.tasks.push_back(std::move(draft));
        }
    }

    const QuiltPlan& quilt(const Task& t) const {
        return plan_.quilts[static_cast<std::size_t>(t.job)];
    }

    const Pass& passOf(const Task& t) const {
        const auto& passes = quilt(t).passes;
        const auto it = std::ranges::find(passes, t.pass, &Pass::number);
        return it == passes.end() ? passes.front() : *it;
    }

    TaskDraft draftOf(const Task& t, Remaining& out) {
        TaskDraft d{.kind = t.kind, .job = t.job, .pass = t.pass};
        if (isZoneWork(t.kind))
            zoneWork(t, d);
        else if (t.kind == TaskKind::cool)
            d = {.kind = t.kind,
                 .job = t.job,
                 .pass = t.pass,
                 .effort = {.fixed = trade_times::kCool},
                 .team = 0};
        else
            step(t, d, out);
        return d;
    }

    void zoneWork(const Task& t, TaskDraft& d) {
        const auto& zones = quilt(t).zones;
        const auto zone = std::ranges::find(zones, t.zone, &Zone::id);
        if (zone == zones.end())
            return leaveToNobody(t, d, core::says("its zone is not in the plan"));
        d.zone = static_cast<int>(zone - zones.begin());
        d.share = t.share;
        const Zone part{zone->id, zone->pass, zone->area, pointsOf(*zone, t.share)};
        d.effort = crew::zoneWork(t.kind, static_cast<int>(part.points.size()));
        d.team = 1;
        d.needs = {.irons = t.kind == TaskKind::press,
                   .closes = t.kind == TaskKind::closePins,
                   .reach = true};
        if (d.needs.irons && session_.setting.room.irons < 1)
            return leaveToNobody(t, d, core::says("there is no iron"));
        const auto& surface = quilt(t).surface;
        const bool anybody = std::ranges::any_of(hands_, [&](const Hand& h) {
            return crew::may(h.helper, d.needs) &&
                   !sidesFor(workBox(part), passOf(t).table, surface, h.helper).empty();
        });
        if (!anybody)
            leaveToNobody(t, d,
                          d.needs.irons    ? core::says("nobody left may iron and reaches it")
                          : d.needs.closes ? core::says("nobody left closes pins and reaches it")
                                           : core::says("nobody left reaches all of it from an open side"));
    }

    // Work without anybody keeps its place in the order, and its time at pace 1.
    void leaveToNobody(const Task& t, TaskDraft& d, const Sentence& why) {
        d.effort = {.byHand = 0, .fixed = crew::secondsAt(d.effort, 1)};
        d.team = 0;
        d.needs = {};
        nobodys_[{t.kind, why}].push_back(t.zone.empty() ? std::to_string(t.pass) : t.zone);
    }

    static Sentence sentence(TaskKind kind, const std::vector<std::string>& where,
                             const Sentence& why) {
        const Sentence step = spokenFirst(kind), places = core::listed(where, where.size());
        const bool one = where.size() == 1;
        if (isZoneWork(kind))
            return one ? core::says("%1 of zone %2 is left to nobody: %3.", step, places, why)
                       : core::says("%1 of zones %2 is left to nobody: %3.", step, places, why);
        return one ? core::says("%1 of pass %2 is left to nobody: %3.", step, places, why)
                   : core::says("%1 of passes %2 is left to nobody: %3.", step, places, why);
    }

    // The same rules as for a first plan (docs/computation/crew.md, "Tasks"): as many hands as the
    // step asks for, where that many will be there; where too few stand or lift, the others help.
    void step(const Task& t, TaskDraft& d, Remaining& out) {
        std::size_t team = 2;
        d.needs.afoot = true;
        const Pass& pass = passOf(t);
        switch (t.kind) {
        case TaskKind::layBacking:
        case TaskKind::layBatting:
        case TaskKind::layTop:
            d.effort = crew::layLayer(pass);
            break;
        case TaskKind::foldBack:
        case TaskKind::foldForward:
            d.effort = crew::fold(pass);
            break;
        case TaskKind::smooth:
            d.effort = crew::smooth(smoothedArea(t));
            break;
        case TaskKind::shift:
            d.effort = crew::shift(pass);
            team = static_cast<std::size_t>(std::max(1, pass.liftPeople));
            d.needs.lifts = true;
            break;
        case TaskKind::turnOver:
            d.effort.byHand = trade_times::kTurnOver;
            for (std::size_t k = 1; k < quilt(t).passes.size(); ++k)
                d.effort.byHand += crew::shift(quilt(t).passes[k]).byHand;
            team = hands_.size();
            d.needs.lifts = true;
            break;
        case TaskKind::reclamp:
            d.effort = crew::reclamp(pass);
            team = 1;
            break;
        case TaskKind::checkUnderside:
            d.effort.byHand = trade_times::kUnderside;
            team = 1;
            break;
        default:
            d.effort.byHand = trade_times::kHandOver;
            team = 1;
            break;
        }
        if (hands_.empty())
            return leaveToNobody(t, d, core::says("nobody is at the table"));
        const auto when = std::max(t.start, now_) - now_;
        if (d.needs.lifts) {
            const auto lifters = count(d.needs, when);
            if (lifters < team && t.kind == TaskKind::shift)
                sayFewLifters(t, pass, lifters, out);
            team = std::clamp<std::size_t>(lifters, 1, team);
        } else {
            team = std::min(team, std::max<std::size_t>(1, count({}, when)));
        }
        if (count(d.needs, when) < team)
            d.needs = {};
        d.team = static_cast<int>(team);
    }

    // How many of the people there at that time (from now) can; of all where nobody is there then.
    std::size_t count(const Needs& needs, Seconds when) const {
        const auto at = static_cast<int>(when.count());
        const auto there = [at](const Hand& h) { return h.hours.from <= at && at < h.hours.until; };
        const bool anybody = std::ranges::any_of(hands_, there);
        return static_cast<std::size_t>(std::ranges::count_if(hands_, [&](const Hand& h) {
            return (there(h) || !anybody) && crew::may(h.helper, needs);
        }));
    }

    static void sayFewLifters(const Task& t, const Pass& pass, std::size_t lifters,
                              Remaining& out) {
        const Sentence text =
            lifters == 0
                ? core::says("The shift into pass %1 wants %2 people who lift, and none is left.",
                             t.pass, pass.liftPeople)
            : lifters == 1
                ? core::says("The shift into pass %1 wants %2 people who lift, and one is left.",
                             t.pass, pass.liftPeople)
                : core::says("The shift into pass %1 wants %2 people who lift, and %3 are left.",
                             t.pass, pass.liftPeople, lifters);
        out.findings.push_back({Finding::Level::warn, "/helpers", text,
                                core::says("Ask for more hands at the shifts, or slide the quilt "
                                           "in short steps.")});
    }

    // The zones a smoothing is for: those whose pins it directly waits for.
    double smoothedArea(const Task& t) const {
        double area = 0;
        for (const auto& id : t.after)
            if (const Task* b = index_.task(id); b && b->kind == TaskKind::placeOpen)
                if (const Zone* z = index_.zone(b->job, b->zone))
                    area += areaSquareInches(z->area);
        return area > 0 ? area : areaSquareInches(passOf(t).fresh);
    }

    const Session& session_;
    const Plan& plan_;
    PlanIndex index_;
    const LiveState& state_;
    const std::vector<Hand>& hands_;
    Seconds now_;
    /// Zones or passes of the work nobody can do, by its kind and the reason.
    std::map<std::pair<TaskKind, Sentence>, std::vector<std::string>> nobodys_;
};

} // namespace

void draftRest(const Session& session, const Plan& plan, const LiveState& state,
               const std::vector<Hand>& hands, Seconds now, Remaining& out) {
    Drafting{session, plan, state, hands, now}.draftAll(out);
}

} // namespace bastewright
