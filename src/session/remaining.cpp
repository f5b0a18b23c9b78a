#include "session/private/remaining.h"

#include "session/private/plan_index.h"

#include <algorithm>
#include <cctype>

namespace bastewright {
namespace {

using crew::Needs;
using crew::TaskDraft;

// A learnt factor takes a pace no further than this from the trade's.
constexpr double kSlowest = 0.2, kFastest = 5;

// Of work in hand a tenth is always left, for nobody has ticked it yet.
constexpr int kLeastShare = 10;

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
            out.findings.push_back({Finding::Level::stop, "/helpers", "Nobody is at the table.",
                                    "Report who is there, then plan again."});
        else
            for (const auto& [work, where] : nobodys_)
                out.findings.push_back({Finding::Level::stop, "/helpers",
                                        sentence(work.first, where, work.second),
                                        "Ask somebody who can to come to the table, then plan "
                                        "again."});
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
                 .effort = {.fixed = crew::kCool},
                 .team = 0};
        else
            step(t, d, out);
        return d;
    }

    void zoneWork(const Task& t, TaskDraft& d) {
        const auto& zones = quilt(t).zones;
        const auto zone = std::ranges::find(zones, t.zone, &Zone::id);
        if (zone == zones.end())
            return leaveToNobody(t, d, "its zone is not in the plan");
        d.zone = static_cast<int>(zone - zones.begin());
        // A shared zone's points are shared out evenly.
        const auto sharers = index_.zoneTasks(t.job, t.zone, t.kind, index_.fromBack(t)).size();
        const auto points = (zone->points.size() + sharers - 1) / std::max<std::size_t>(1, sharers);
        d.effort = crew::zoneWork(t.kind, static_cast<int>(points));
        d.team = 1;
        d.needs = {.irons = t.kind == TaskKind::press,
                   .closes = t.kind == TaskKind::closePins,
                   .reach = true};
        if (d.needs.irons && session_.setting.room.irons < 1)
            return leaveToNobody(t, d, "there is no iron");
        const auto& surface = quilt(t).surface;
        const bool anybody = std::ranges::any_of(hands_, [&](const Hand& h) {
            return crew::may(h.helper, d.needs) &&
                   !crew::sidesFor(crew::workBox(*zone), passOf(t).table, surface.closed,
                                   h.helper.reach, !surface.floor)
                        .empty();
        });
        if (!anybody)
            leaveToNobody(t, d,
                          d.needs.irons    ? "nobody left may iron and reaches it"
                          : d.needs.closes ? "nobody left closes pins and reaches it"
                                           : "nobody left reaches all of it from an open side");
    }

    // Work without anybody keeps its place in the order, and its time at pace 1.
    void leaveToNobody(const Task& t, TaskDraft& d, const std::string& why) {
        d.effort = {.byHand = 0, .fixed = crew::secondsAt(d.effort, 1)};
        d.team = 0;
        d.needs = {};
        nobodys_[{t.kind, why}].push_back(t.zone.empty() ? std::to_string(t.pass) : t.zone);
    }

    static std::string sentence(TaskKind kind, const std::vector<std::string>& where,
                                const std::string& why) {
        std::string text{spoken(kind)};
        text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
        text.append(isZoneWork(kind) ? " of zone" : " of pass")
            .append(where.size() == 1  ? ""
                    : isZoneWork(kind) ? "s"
                                       : "es");
        for (std::size_t i = 0; i < where.size(); ++i)
            text.append(i == 0 ? " " : ", ").append(where[i]);
        return text.append(" is left to nobody: ").append(why).append(".");
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
            d.effort.byHand = crew::kTurnOver;
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
            d.effort.byHand = crew::kUnderside;
            team = 1;
            break;
        default:
            d.effort.byHand = crew::kHandOver;
            team = 1;
            break;
        }
        if (hands_.empty())
            return leaveToNobody(t, d, "nobody is at the table");
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
        std::string text{"The shift into pass "};
        text.append(std::to_string(t.pass))
            .append(" wants ")
            .append(std::to_string(pass.liftPeople))
            .append(" people who lift, and ")
            .append(lifters == 0   ? "none is"
                    : lifters == 1 ? "one is"
                                   : std::to_string(lifters) + " are")
            .append(" left.");
        out.findings.push_back({Finding::Level::warn, "/helpers", std::move(text),
                                "Ask for more hands at the shifts, or slide the quilt in short "
                                "steps."});
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
    std::map<std::pair<TaskKind, std::string>, std::vector<std::string>> nobodys_;
};

// Hands work in hand to shadows of its people, who are free at once and do nothing else; the people
// themselves are free when it is done.
void keepInHand(std::size_t activity, const ReplanOptions& options, const std::vector<Hand>& hands,
                Remaining& r) {
    const Task& task = *r.tasks[activity];
    auto& people = r.model.problem.people;
    auto& a = r.model.problem.activities[activity];
    std::vector<crew::Mode> own;
    int seconds = a.team == 0 ? a.seconds : 0;
    for (const auto& who : task.people) {
        const auto hand =
            std::ranges::find(hands, who, [](const Hand& h) { return h.helper.name; });
        const auto mode =
            std::ranges::find(a.modes, static_cast<int>(hand - hands.begin()), &crew::Mode::person);
        if (mode == a.modes.end())
            return; // they no longer may, or reach it: it is anybody's
        own.push_back(*mode);
        seconds = std::max(seconds, mode->seconds);
    }
    const auto at = options.inHand.find(task.id);
    const auto spent = at == options.inHand.end() ? 0 : static_cast<int>(at->second.count());
    seconds = std::max(seconds - std::max(spent, 0), (seconds + kLeastShare - 1) / kLeastShare);
    a.seconds = seconds;
    a.team = static_cast<int>(own.size());
    for (auto& mode : own) {
        auto& real = people[static_cast<std::size_t>(mode.person)];
        real.from = std::max(real.from, seconds);
        r.shadows.push_back(static_cast<std::size_t>(mode.person));
        mode.person = static_cast<int>(people.size());
        mode.seconds = seconds;
        if (!task.places.empty())
            standAt(task.places.front(), mode, r.model);
        people.push_back({});
    }
    a.modes = std::move(own);
    r.inHand.insert(activity);
}

bool inEachOthersWay(const Task& a, const Task& b) {
    return a.job == b.job && !a.places.empty() && !b.places.empty() &&
           a.places.front().side == b.places.front().side &&
           a.places.front().along.overlaps(b.places.front().along);
}

} // namespace

void standAt(const StandingPlace& place, crew::Mode& mode, crew::Model& model) {
    auto& spots = model.problem.spots;
    const auto at = place.along.lo.nm();
    for (int k = mode.firstSpot; k < mode.endSpot; ++k) {
        const crew::Spot spot = spots[static_cast<std::size_t>(k)];
        if (model.edges[static_cast<std::size_t>(spot.strip)].side != place.side || at < spot.lo ||
            at > spot.hi)
            continue;
        mode.firstSpot = static_cast<int>(spots.size());
        mode.endSpot = mode.firstSpot + 1;
        spots.push_back({.strip = spot.strip, .lo = at, .hi = at, .want = at});
        return;
    }
}

std::vector<Hand> handsOf(const Setting& setting, const LiveState& state,
                          const ReplanOptions& options) {
    const auto now = static_cast<int>(options.now.count());
    std::vector<Hand> out;
    for (const auto& helper : setting.helpers) {
        Hand hand{helper, crew::hoursOf(helper, setting.start),
                  state.present.contains(helper.name)};
        if (!hand.present && hand.hours.from <= now)
            continue; // gone, or not come
        if (hand.present && hand.hours.until <= now)
            hand.hours.until = crew::kNever; // stays on
        hand.hours.from = hand.present ? 0 : hand.hours.from - now;
        if (hand.hours.until < crew::kNever)
            hand.hours.until -= now;
        const auto learnt = options.pace.find(helper.name);
        if (learnt != options.pace.end())
            hand.helper.pace = std::clamp(helper.pace * learnt->second, kSlowest, kFastest);
        out.push_back(std::move(hand));
    }
    return out;
}

std::vector<const Task*> tasksInHand(const Plan& plan, const LiveState& state, int irons) {
    std::vector<const Task*> out;
    std::set<std::string_view> busy;
    for (const auto& t : plan.tasks) {
        if (state.doneTasks.contains(t.id))
            continue;
        const bool next = std::ranges::all_of(t.people, [&](const std::string& who) {
            return state.present.contains(who) && !busy.contains(who);
        });
        busy.insert(t.people.begin(), t.people.end());
        if (!next || !mayStart(t, state) || (t.people.empty() && t.kind != TaskKind::cool))
            continue;
        if (t.kind == TaskKind::press && --irons < 0)
            continue;
        if (std::ranges::none_of(out, [&t](const Task* o) { return inEachOthersWay(*o, t); }))
            out.push_back(&t);
    }
    return out;
}

Remaining remainingOf(const Session& session, const Plan& plan, const LiveState& state,
                      const std::vector<Hand>& hands, const ReplanOptions& options) {
    Remaining r;
    Drafting{session, plan, state, hands, options.now}.draftAll(r);
    std::vector<Helper> helpers;
    for (const auto& h : hands)
        helpers.push_back(h.helper);
    r.model = crew::modelOf(session, helpers, plan.quilts, r.drafts);
    for (std::size_t k = 0; k < hands.size(); ++k)
        r.model.problem.people[k] = hands[k].hours;
    for (const Task* t : tasksInHand(plan, state, session.setting.room.irons))
        keepInHand(static_cast<std::size_t>(std::ranges::find(r.tasks, t) - r.tasks.begin()),
                   options, hands, r);
    return r;
}

} // namespace bastewright
