#include "planners/crew/model.h"

#include "plan/share.h"
#include "planners/crew/handed.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace bastewright::crew {
namespace {

int seconds(std::chrono::minutes m) {
    return static_cast<int>(std::chrono::duration_cast<Seconds>(m).count());
}

class Modeller {
public:
    Modeller(const std::vector<Helper>& helpers, const std::vector<QuiltPlan>& quilts)
        : helpers_(helpers)
        , quilts_(quilts) {}

    void add(const TaskDraft& draft) {
        Activity a{.seconds = draft.effort.fixed, .team = draft.team, .after = draft.after,
                   .apart = draft.apart};
        if (draft.needs.irons)
            a.demand = {1};
        if (draft.team > 0)
            addModes(a, draft);
        out_.problem.activities.push_back(std::move(a));
    }

    Model take() {
        leastCrowdedFirst();
        return std::move(out_);
    }

private:
    void addModes(Activity& a, const TaskDraft& draft) {
        // People of equal reach who keep to the same side, or to none, share their places.
        std::map<std::pair<Length, std::optional<Side>>, std::pair<int, int>> spotsOf;
        for (std::size_t h = 0; h < helpers_.size(); ++h) {
            if (!may(helpers_[h], draft.needs))
                continue;
            Mode m{.person = static_cast<int>(h),
                   .seconds = secondsAt(draft.effort, helpers_[h].pace)};
            if (draft.needs.reach) {
                const auto [at, fresh] =
                    spotsOf.try_emplace({leaningReach(helpers_[h]), helpers_[h].side});
                if (fresh)
                    at->second = addSpots(draft, helpers_[h]);
                std::tie(m.firstSpot, m.endSpot) = at->second;
                if (m.firstSpot == m.endSpot)
                    continue;
            }
            a.modes.push_back(m);
        }
        std::ranges::stable_sort(a.modes, {}, &Mode::seconds);
    }

    std::pair<int, int> addSpots(const TaskDraft& draft, const Helper& helper) {
        const QuiltPlan& quilt = quilts_[static_cast<std::size_t>(draft.job)];
        const Zone& zone = quilt.zones[static_cast<std::size_t>(draft.zone)];
        const Pass& pass = passOf(quilt, draft.pass);
        auto& spots = out_.problem.spots;
        const int first = static_cast<int>(spots.size());
        const Zone part{zone.id, zone.pass, zone.area, pointsOf(zone, draft.share)};
        const Rect box = workBox(part);
        for (const SideRange& r : sidesFor(box, pass.table, quilt.surface, helper)) {
            const Interval b = isAcross(r.side) ? box.x() : box.y();
            const Length room = elbowRoom(pass.table, r.side);
            spots.push_back(
                {.strip = stripOf(draft, pass, r.side),
                 .lo = r.start.lo.nm(),
                 .hi = r.start.hi.nm(),
                 .want = wanted(b.middle() - room / 2, r.start, extent(pass.table, r.side), room)
                             .nm()});
        }
        return {first, static_cast<int>(spots.size())};
    }

    /// As many people as fit stand side by side without gaps: the place in that row which is
    /// nearest to the middle of the zone, where it serves; else the nearest that does.
    static Length wanted(Length middle, Interval start, Interval edge, Length room) {
        const std::int64_t fit = std::max<std::int64_t>(1, edge.size().nm() / room.nm());
        const Length spare = edge.size() - fit * room;
        const Length pitch = fit > 1 ? room + spare / (fit - 1) : room;
        Length best = std::clamp(middle, start.lo, start.hi);
        bool found = false;
        for (std::int64_t k = 0; k < fit; ++k) {
            const Length at = fit > 1 ? edge.lo + k * pitch : best;
            if (!start.contains(at))
                continue;
            if (!found || abs(at - middle) < abs(best - middle))
                best = at;
            found = true;
        }
        return best;
    }

    static const Pass& passOf(const QuiltPlan& quilt, int number) {
        for (const Pass& p : quilt.passes)
            if (p.number == number)
                return p;
        return quilt.passes.front();
    }

    int stripOf(const TaskDraft& draft, const Pass& pass, Side side) {
        const auto [at, fresh] =
            strips_.try_emplace({draft.job, draft.pass, side}, static_cast<int>(out_.edges.size()));
        if (fresh) {
            const Interval edge = extent(pass.table, side);
            out_.edges.push_back({side});
            const std::int64_t w = pass.table.width().nm(), l = pass.table.length().nm();
            // Round the table: along the head to the right, down, along the foot to the left, up.
            const std::int64_t corner = side == Side::head    ? 0
                                        : side == Side::right ? w
                                        : side == Side::foot  ? 2 * w + l
                                                              : 2 * (w + l);
            out_.problem.strips.push_back(
                {.room = elbowRoom(pass.table, side).nm(),
                 .lo = edge.lo.nm(),
                 .hi = edge.hi.nm(),
                 .table = quilts_[static_cast<std::size_t>(draft.job)].surface.number,
                 .round = 2 * (w + l),
                 .at = corner,
                 .against = side == Side::foot || side == Side::left});
        }
        return at->second;
    }

    /// Who can work from two sides leaves the one to those who have no other.
    void leastCrowdedFirst() {
        Problem& p = out_.problem;
        std::vector<double> crowd(p.strips.size(), 0);
        const auto strip = [&](int spot) {
            return static_cast<std::size_t>(p.spots[static_cast<std::size_t>(spot)].strip);
        };
        for (const Activity& a : p.activities) {
            if (a.modes.empty())
                continue;
            const Mode& m = a.modes.front();
            for (int s = m.firstSpot; s < m.endSpot; ++s)
                crowd[strip(s)] += static_cast<double>(m.seconds) / (m.endSpot - m.firstSpot);
        }
        for (std::size_t k = 0; k < crowd.size(); ++k)
            crowd[k] /= static_cast<double>(peopleAt(p.strips[k]));
        for (const Activity& a : p.activities)
            for (const Mode& m : a.modes)
                std::stable_sort(p.spots.begin() + m.firstSpot, p.spots.begin() + m.endSpot,
                                 [&](const Spot& x, const Spot& y) {
                                     return crowd[static_cast<std::size_t>(x.strip)] <
                                            crowd[static_cast<std::size_t>(y.strip)];
                                 });
    }

    const std::vector<Helper>& helpers_;
    const std::vector<QuiltPlan>& quilts_;
    Model out_;
    std::map<std::tuple<int, int, Side>, int> strips_;
};

} // namespace

Person hoursOf(const Helper& helper, ClockTime start) {
    // Times are of the day the session begins on; who leaves before the start is never there.
    const auto sinceStart = [&](ClockTime t) {
        return std::max(0, seconds(t.sinceMidnight - start.sinceMidnight));
    };
    Person p;
    if (helper.from)
        p.from = sinceStart(*helper.from);
    if (helper.until)
        p.until = sinceStart(*helper.until);
    return p;
}

Model modelOf(const Session& session, const std::vector<Helper>& helpers,
              const std::vector<QuiltPlan>& quilts, const Drafts& drafts) {
    Modeller modeller{helpers, quilts};
    for (const TaskDraft& d : drafts.tasks)
        modeller.add(d);
    Model model = modeller.take();
    for (const Helper& h : helpers) {
        const int person = static_cast<int>(model.problem.people.size());
        model.problem.people.push_back(hoursOf(h, session.setting.start));
        for (const Break& rest : h.breaks) {
            const auto at = [&](ClockTime t) {
                return std::max(0, seconds(t.sinceMidnight - session.setting.start.sinceMidnight));
            };
            if (at(rest.from) < at(rest.until))
                model.problem.booked.push_back({.person = person,
                                                .demand = {},
                                                .start = at(rest.from),
                                                .end = at(rest.until)});
        }
    }
    model.problem.tools = {std::max(0, session.setting.room.irons)};
    honourHanded(session, helpers, quilts, drafts, model);
    return model;
}

} // namespace bastewright::crew
