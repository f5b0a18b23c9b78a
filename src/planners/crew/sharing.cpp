#include "planners/crew/sharing.h"

#include "planners/crew/cut.h"
#include "planners/crew/decoder.h"
#include "planners/crew/search.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// A stage has to end sooner by this much, and by this much for every zone shared.
constexpr double kWorthStage = 15, kWorthShare = 8;

/// What one person takes of another's zone.
struct Taken {
    int activity, giver, taker;
    Share share; ///< the taker's
};

/// The zones of one kind between two barriers, and who is free around them.
class StageShares {
public:
    StageShares(const Given& given, const Planned& plan, std::vector<int> zones)
        : given_(given)
        , plan_(plan)
        , zones_(std::move(zones)) {
        const Schedule& s = plan.schedule;
        for (const int i : zones_) {
            last_ = std::max(last_, s.end[ix(i)]);
            for (const int b : plan.model.problem.at(i).after)
                release_ = std::max(release_, s.end[ix(b)]);
        }
        for (const Person& p : plan.model.problem.people)
            free_.push_back(p.until < last_ ? kNever : std::max(release_, p.from));
        for (std::size_t i = 0; i < s.start.size(); ++i)
            for (const int p : s.crew[i])
                if (s.start[i] < last_)
                    free_[ix(p)] = std::max(free_[ix(p)], s.end[i] > last_ ? double{kNever}
                                                                           : double(s.end[i]));
        for (const Booking& b : plan.model.problem.booked)
            if (b.person >= 0 && b.start < last_ && b.end > release_)
                free_[ix(b.person)] = kNever;
    }

    /// The shares with which the stage ends soonest; none where that is not worth it.
    std::vector<Taken> best() const {
        double lo = release_, hi = last_;
        std::vector<Taken> out;
        while (hi - lo > 1) {
            const double mid = (lo + hi) / 2;
            if (auto taken = endingBy(mid)) {
                out = std::move(*taken);
                hi = mid;
            } else {
                lo = mid;
            }
        }
        const double saved = last_ - hi;
        if (saved < kWorthStage || saved < kWorthShare * static_cast<double>(out.size()))
            return {};
        return out;
    }

private:
    const TaskDraft& draft(int i) const { return plan_.drafts.tasks[ix(i)]; }
    const Helper& helper(int p) const { return given_.helpers[ix(p)]; }
    const Zone& zone(int i) const {
        return given_.quilts[ix(draft(i).job)].zones[ix(draft(i).zone)];
    }
    int points(int i) const { return static_cast<int>(zone(i).points.size()); }
    /// Seconds a point takes somebody.
    double each(int i, int person) const {
        const double pace = helper(person).pace > 0 ? helper(person).pace : 1;
        return draft(i).effort.byHand / points(i) / pace;
    }

    std::optional<std::vector<Taken>> endingBy(double time) const {
        std::vector<double> free = free_;
        std::vector<int> givers;
        std::vector<int> left = zones_; // that nobody shares
        std::erase_if(left, [&](int i) { // one that only one person may do cannot be shared
            return draft(i).share || plan_.model.problem.at(i).modes.size() < 2;
        });
        for (std::size_t p = 0; p < free.size(); ++p)
            if (free[p] > time && free[p] < kNever)
                givers.push_back(static_cast<int>(p));
        std::ranges::stable_sort(givers, std::greater{}, [&](int p) { return free[ix(p)]; });
        std::vector<Taken> out;
        for (const int p : givers)
            while (free[ix(p)] > time)
                if (!relieve(p, time, free, left, out))
                    return {};
        return out;
    }

    /// Somebody takes part of one of a person's zones; false where there is no such zone.
    bool relieve(int giver, double time, std::vector<double>& free, std::vector<int>& left,
                 std::vector<Taken>& out) const {
        std::vector<int> own;
        for (const int i : left)
            if (plan_.schedule.crew[ix(i)].front() == giver)
                own.push_back(i);
        // The last one first: those before it stay as they are.
        std::ranges::stable_sort(own, std::greater{},
                                 [&](int i) { return plan_.schedule.start[ix(i)]; });
        std::vector<int> takers;
        for (std::size_t q = 0; q < free.size(); ++q)
            if (static_cast<int>(q) != giver && free[q] < time)
                takers.push_back(static_cast<int>(q));
        std::ranges::stable_sort(takers, {}, [&](int q) { return free[ix(q)]; });
        for (const int i : own)
            for (const int q : takers) {
                const int fewest = 3;
                const double room = time - free[ix(q)] - draft(i).effort.fixed;
                const auto asked =
                    static_cast<int>(std::ceil((free[ix(giver)] - time) / each(i, giver)));
                const auto fits = static_cast<int>(std::floor(room / each(i, q)));
                const int n = std::min(std::max(asked, fewest), points(i) - fewest);
                if (n < fewest || fits < fewest || !may(helper(q), draft(i).needs))
                    continue;
                const auto cut = cutFor(given_, plan_, i, q, std::min(n, fits));
                if (!cut)
                    continue;
                out.push_back({i, giver, q, *cut});
                free[ix(giver)] -= cut->points * each(i, giver);
                free[ix(q)] += draft(i).effort.fixed + cut->points * each(i, q);
                std::erase(left, i);
                return true;
            }
        return false;
    }

    const Given& given_;
    const Planned& plan_;
    std::vector<int> zones_;
    int release_ = 0, last_ = 0;
    std::vector<double> free_; ///< by person: from when until the stage's end; kNever for not at all
};

std::vector<Taken> takenOf(const Given& given, const Planned& plan) {
    std::map<std::tuple<int, int, int, TaskKind>, std::vector<int>> stages;
    for (std::size_t i = 0; i < plan.drafts.tasks.size(); ++i) {
        const TaskDraft& d = plan.drafts.tasks[i];
        if (d.zone >= 0 && mayBeShared(d.kind))
            stages[{d.job, d.pass, d.wave, d.kind}].push_back(static_cast<int>(i));
    }
    std::vector<Taken> out;
    for (auto& [stage, zones] : stages)
        std::ranges::copy(StageShares{given, plan, std::move(zones)}.best(),
                          std::back_inserter(out));
    return out;
}

ZoneWork workOf(const TaskDraft& d) {
    return {d.job, d.zone, d.kind};
}

/// The old order, people and places of work, with the parts that are taken after what their people
/// did before.
Schedule asIntended(const Planned& before, const Planned& now, const std::vector<Taken>& taken) {
    using Key = std::tuple<int, int, int, int, TaskKind, std::optional<Share>>;
    const auto keyOf = [](const TaskDraft& d, std::optional<Share> share) {
        return Key{d.job, d.pass, d.wave, d.zone, d.kind, share};
    };
    std::map<Key, int> was;
    for (std::size_t i = 0; i < before.drafts.tasks.size(); ++i)
        was[keyOf(before.drafts.tasks[i], before.drafts.tasks[i].share)] = static_cast<int>(i);
    std::map<Key, int> takerOf;
    for (const Taken& t : taken)
        takerOf[keyOf(before.drafts.tasks[ix(t.activity)], t.share)] = t.taker;

    const Problem& problem = now.model.problem;
    std::vector<double> key;
    std::vector<int> who;
    for (const TaskDraft& d : now.drafts.tasks) {
        auto at = was.find(keyOf(d, d.share));
        if (at == was.end())
            at = was.find(keyOf(d, {}));
        const Schedule& s = before.schedule;
        const auto i = ix(at->second);
        const auto taker = takerOf.find(keyOf(d, d.share));
        if (taker != takerOf.end()) {
            key.push_back(-s.end[i]);
            who.push_back(taker->second);
        } else {
            key.push_back(-s.start[i]);
            who.push_back(d.zone >= 0 && d.team == 1 ? s.crew[i].front() : -1);
        }
    }
    Schedule out, free;
    Decoder decoder{problem};
    const auto order = orderByKey(problem, followers(problem), key);
    decoder.build(order, who, out);
    decoder.build(order, {}, free);
    return better(free, out) ? free : out;
}

/// Somebody else must be there for each of two shares, whoever has the other.
bool canBeApart(const Model& model) {
    return std::ranges::all_of(model.problem.activities, [](const Activity& a) {
        return a.apart < 0 || a.modes.size() > 1;
    });
}

} // namespace

std::optional<Planned> shared(const Given& given, const Planned& plan, DraftOptions& options) {
    const auto taken = takenOf(given, plan);
    if (taken.empty())
        return {};
    DraftOptions next = options;
    for (const Taken& t : taken)
        next.shares[workOf(plan.drafts.tasks[ix(t.activity)])] = t.share;
    Planned out;
    out.drafts = draftTasks(given.session, given.helpers, given.quilts, next);
    out.model = modelOf(given.session, given.helpers, given.quilts, out.drafts);
    if (!canBeApart(out.model))
        return {};
    out.schedule = asIntended(plan, out, taken);
    options = std::move(next);
    return out;
}

} // namespace bastewright::crew
