#include "planners/crew/earliest.h"

#include "plan/trade_times.h"
#include "planners/crew/rests.h"
#include "planners/crew/slowest.h"
#include "planners/crew/step_times.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace bastewright::crew {
namespace {

using namespace trade_times;

/// Sets of people are looked at one by one up to so many.
constexpr std::size_t kEverySet = 8;

/// One quilt after another at one table.
class OneTable {
public:
    explicit OneTable(const Given& given)
        : given_{given} {}

    double pass(const Block& b, const PassPlan& plan) {
        const QuiltPlan& quilt = given_.quilts[static_cast<std::size_t>(b.job)];
        const Pass& p = quilt.passes[b.pass];
        std::vector<double> paces;
        for (const int h : b.team)
            paces.push_back(given_.hands[static_cast<std::size_t>(h)].helper.pace);
        std::ranges::sort(paces, std::greater{});
        double sum = 0;
        // The tasks themselves say what steps there are; how long they take at least is worked out.
        std::map<TaskKind, double> calls;
        for (const Task& t : plan.tasks) {
            if (given_.situation.inHand.contains(t.id))
                continue;
            if (isOfZone(t.kind)) {
                if (zoneStep(t.kind).by == WayStep::By::zones && t.pass == p.number)
                    calls[t.kind] = 0;
                continue;
            }
            switch (t.kind) {
            case TaskKind::clamp:
            case TaskKind::reclamp: {
                std::size_t hands = 0;
                sum +=
                    holdSeconds(t.kind == TaskKind::clamp ? holdsOf(p) : clampsOf(p), paces, hands);
                break;
            }
            default:
                sum += double((t.end - t.start).count()) - 1;
            }
        }
        for (const auto& [kind, nothing] : calls)
            sum += call(kind, plan);
        return std::max(0.0, sum + pressing(plan, paces));
    }

private:
    /// One iron is in one person's hands: by as many of the quickest as there are irons, each of
    /// whom steps up to a zone once. `paces` from the quickest on.
    double pressing(const PassPlan& plan, const std::vector<double>& paces) const {
        double work = 0, all = 0;
        for (const Task& t : plan.tasks)
            if (isOfZone(t.kind) && zoneStep(t.kind).by == WayStep::By::irons &&
                !given_.situation.inHand.contains(t.id))
                for (const OwnedZone& z : plan.crew.zones)
                    if (z.zone.id == t.zone)
                        work += secondsAPoint(t.kind) * double(z.zone.points.size());
        const auto irons = static_cast<std::size_t>(std::max(1, given_.session.setting.room.irons));
        for (std::size_t k = 0; k < std::min(irons, paces.size()); ++k)
            all += paces[k];
        return work > 0 && all > 0 ? work / all + kStepUpToZone : 0;
    }

    /// Everybody can reach so much from where they belong: no set of people is through before it
    /// has done what nobody else reaches.
    double call(TaskKind kind, const PassPlan& plan) const {
        const PassCrew& crew = plan.crew;
        double work = 0;
        std::map<unsigned, double> only; // by the people who reach it
        std::vector<double> paces;
        for (const int h : crew.people)
            paces.push_back(given_.hands[static_cast<std::size_t>(h)].helper.pace);
        const unsigned others = addOthers(kind, plan, paces);
        const std::size_t n = paces.size();
        for (const Task& t : plan.tasks)
            if (t.kind == kind)
                for (const OwnedZone& z : crew.zones)
                    if (z.zone.id == t.zone) {
                        work += secondsAPoint(kind) * double(z.zone.points.size());
                        if (n <= kEverySet)
                            for (const PlacedPoint& q : z.zone.points)
                                only[reachOf(crew, q) | others] += secondsAPoint(kind);
                    }
        const double steppingUp = fullZones(crew, wayWith(kind)) ? leastSteppingUp(kind) : 0;
        double best = least(work, paces, steppingUp);
        if (n > kEverySet || n == 0)
            return best;
        for (unsigned set = 1; set + 1 < (1U << n); ++set) {
            double inside = 0;
            for (const auto& [who, seconds] : only)
                if ((who & ~set) == 0)
                    inside += seconds;
            if (inside <= 0)
                continue;
            std::vector<double> some;
            double all = 0;
            for (std::size_t k = 0; k < n; ++k)
                if ((set >> k & 1U) != 0) {
                    some.push_back(paces[k]);
                    all += paces[k];
                }
            // Twice the even share is more than it can come to.
            if (2 * inside / all + 2 * kStepUpToZone > best)
                best = std::max(best, least(inside, some, steppingUp));
        }
        return best;
    }

    /// Whoever works at zones of this call without a place of their own gets everywhere.
    unsigned addOthers(TaskKind kind, const PassPlan& plan, std::vector<double>& paces) const {
        unsigned out = 0;
        for (std::size_t h = 0; h < given_.hands.size(); ++h)
            if (std::ranges::find(plan.crew.people, static_cast<int>(h)) ==
                    plan.crew.people.end() &&
                std::ranges::any_of(plan.tasks, [&](const Task& t) {
                    return t.kind == kind && t.people.front() == given_.hands[h].helper.name;
                })) {
                out |= paces.size() < kEverySet ? 1U << paces.size() : 0U;
                paces.push_back(given_.hands[h].helper.pace);
            }
        return out;
    }

    double rateOf(const std::vector<double>& paces) const {
        auto known = rates_.find(paces);
        if (known == rates_.end())
            known = rates_.emplace(paces, mostWorkInASecond(paces)).first;
        return known->second;
    }

    /// The least over the ways to choose who takes part, of one call: everybody steps up once at
    /// least, and for every so many points.
    double least(double work, std::vector<double> paces, double steppingUp) const {
        std::ranges::sort(paces, std::greater{});
        double best = 0, all = 0;
        std::vector<double> who, turns;
        for (std::size_t n = 1; n <= paces.size(); ++n) {
            all += paces[n - 1];
            who.push_back(paces[n - 1]);
            turns.push_back(withSteppingUp(paces[n - 1], steppingUp));
            const double t =
                std::max((work + kStepUpToZone * all) / rateOf(who), work / rateOf(turns));
            best = n == 1 ? t : std::min(best, t);
        }
        return best;
    }

    static unsigned reachOf(const PassCrew& crew, const PlacedPoint& point) {
        unsigned out = 0;
        for (std::size_t k = 0; k < crew.posts.size(); ++k)
            if (crew.posts[k].helper &&
                (!crew.limited ||
                 reaching(*crew.posts[k].helper, crew.table, crew.posts[k].edges, point.at)))
                out |= 1U << k;
        return out == 0 ? ~0U : out;
    }

    const Given& given_;
    mutable std::map<std::vector<double>, double> rates_;
};

/// The longest step that cannot be broken off.
int longestStep(const std::vector<PassPlan>& passes) {
    int out = 0;
    for (const PassPlan& pass : passes)
        for (const Task& t : pass.tasks)
            out = std::max(out, static_cast<int>((t.end - t.start).count()));
    return out;
}

/// How long people work on where breaks are proposed; 0: as long as there is work.
int mostWithoutRest(const Given& given, const std::vector<PassPlan>& passes) {
    return given.session.setting.proposeBreaks && given.told.empty()
               ? std::max(kBreakAtLast, longestStep(passes))
               : 0;
}

/// Where hours are too short people stay, and the bound knows none.
bool hoursKept(const std::vector<PassPlan>& passes) {
    return std::ranges::all_of(passes, [](const PassPlan& p) { return p.overtime == 0; });
}

/// Told breaks are nobody's working time; where breaks are proposed, work beyond an hour and a half
/// has one, and more of it one at least every 105 minutes.
int withBreaks(const Given& given, const std::vector<PassPlan>& passes, double from, double work) {
    double t = from;
    if (mostWithoutRest(given, passes) > 0) {
        const double since = from - double(given.situation.lastRest.count());
        work += leastRests(since, work, mostWithoutRest(given, passes));
    }
    for (const PlannedBreak& b : given.told) {
        const auto start = double(b.start.count()), end = double(b.end.count());
        if (end <= t)
            continue;
        if (t + work <= start)
            break;
        work -= std::max(0.0, start - t);
        t = end;
    }
    return static_cast<int>(std::floor(t + work + 1e-9));
}

} // namespace

Seconds earliestFinish(const Given& given, std::vector<QuiltTable>& tables,
                       const std::vector<Block>& blocks, const std::vector<PassPlan>& passes) {
    const auto now = static_cast<int>(given.situation.now.count());
    const bool several = std::ranges::any_of(
        blocks, [&](const Block& b) { return b.surface != blocks.front().surface; });
    if (!several) {
        double from = now, sum = 0;
        OneTable one{given};
        for (std::size_t k = 0; k < blocks.size(); ++k)
            sum += one.pass(blocks[k], passes[k]);
        if (!blocks.empty() && hoursKept(passes)) {
            int first = kAlways;
            for (const int p : blocks.front().team)
                first = std::min(first, given.hands[static_cast<std::size_t>(p)].from);
            from = std::max<double>(from, first < kAlways ? first : 0);
        }
        return Seconds{withBreaks(given, passes, from, sum)};
    }
    std::vector<Hand> hands = given.hands;
    if (!hoursKept(passes))
        for (Hand& h : hands)
            if (h.from < kAlways)
                h = {h.helper};
    return Seconds{
        earliestOfSeveral(given, hands, tables, blocks, passes, mostWithoutRest(given, passes))};
}

} // namespace bastewright::crew
