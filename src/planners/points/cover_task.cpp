#include "planners/points/cover_task.h"

#include "planners/points/holes.h"

#include <cmath>

namespace bastewright::points {
namespace {

Field around(const std::vector<Field>& fields, double margin) {
    Field all = fields.front();
    for (const Field& f : fields)
        all = {std::min(all.x0, f.x0), std::min(all.y0, f.y0), std::max(all.x1, f.x1),
               std::max(all.y1, f.y1)};
    return all.grown(margin);
}

class Solver {
public:
    explicit Solver(const CoverTask& task)
        : task_{task}
        , fixedBuckets_{around(task.fields, task.radius), task.radius}
        , search_{around(task.fields, task.radius), task.radius, task.gap} {
        for (std::size_t i = 0; i < task.fixed.size(); ++i)
            fixedBuckets_.add(static_cast<int>(i), task.fixed[i]);
        for (std::size_t i = 0; i < task.orbits.size(); ++i)
            add(task.orbits[i], task.costs.empty() ? 1 : task.costs[i]);
        for (const int c : task.start)
            if (const int id = idOf_[static_cast<std::size_t>(c)];
                id >= 0 && !search_.chosen(id) && !search_.clashes(id))
                search_.choose(id);
        for (const int c : task.kept)
            if (const int id = idOf_[static_cast<std::size_t>(c)]; id >= 0)
                search_.keep(id);
    }

    CoverAnswer run(std::stop_token stop) {
        for (const Field& f : task_.fields)
            raster(f);
        Dice dice{task_.seed};
        CoverSearch::Limits limits;
        limits.steps = task_.steps;
        limits.enough = task_.enough;
        limits.below = task_.below;
        if (task_.onFound) {
            limits.keepEqual = true;
            limits.onFound = [&](const std::vector<int>& choice, int cost) {
                return task_.onFound(named(choice), cost);
            };
        }
        const auto result = search_.search(
            limits, dice, [&](CoverSearch&) { return judge(); }, stop);
        CoverAnswer answer;
        answer.found = result.found;
        answer.cost = result.cost;
        answer.choice = named(result.found ? result.choice : search_.choice());
        answer.orbits = std::move(orbits_);
        answer.hopeless = std::move(hopeless_);
        for (const int c : answer.choice)
            answer.breaches += c >= static_cast<int>(task_.orbits.size());
        return answer;
    }

private:
    void add(const Spots& orbit, int cost) {
        const bool clash = std::any_of(orbit.begin(), orbit.end(), [&](Spot p) {
            return fixedBuckets_.anyNear(p, task_.gap - 1e-7, [](int, Spot) { return true; });
        });
        const int id = clash ? -1 : search_.addCandidate(orbit, cost);
        if (id >= 0)
            nameOf_.push_back(static_cast<int>(orbits_.size()));
        idOf_.push_back(id);
        orbits_.push_back(orbit);
    }

    std::vector<int> named(const std::vector<int>& ids) const {
        std::vector<int> out;
        for (const int id : ids)
            out.push_back(nameOf_[static_cast<std::size_t>(id)]);
        std::sort(out.begin(), out.end());
        return out;
    }

    /// True where the place is now a witness.
    bool require(Spot w) {
        if (search_.addWitness(w))
            return true;
        if (task_.relaxed)
            for (const Spots& orbit : task_.relaxed(w))
                add(orbit, task_.relaxedCost);
        if (search_.addWitness(w))
            return true;
        hopeless_.push_back(w);
        return false;
    }

    void raster(const Field& f) {
        const double pitch = task_.radius / 2.6;
        const auto steps = [&](double length) {
            return std::max(1, static_cast<int>(std::ceil(length / pitch)));
        };
        const int nx = steps(f.width()), ny = steps(f.length());
        for (int j = 0; j <= ny; ++j)
            for (int i = 0; i <= nx; ++i) {
                // Odd rows half a step aside: the same number of witnesses leaves
                // smaller gaps.
                const double u = j % 2 == 1 && i > 0 && i < nx ? i - 0.5 : i;
                const Spot w{f.x0 + f.width() * u / nx, f.y0 + f.length() * j / ny};
                if (!fixedBuckets_.anyNear(w, task_.radius - 2e-6, [](int, Spot) { return true; }))
                    require(w);
            }
    }

    bool judge() {
        bool missed = false;
        for (const Field& f : task_.fields) {
            Spots all;
            const Field near = f.grown(task_.radius);
            const auto take = [&](int, Spot p) { all.push_back(p); };
            fixedBuckets_.eachIn(near, take);
            search_.chosenBuckets().eachIn(near, take);
            Spots taken;
            for (const Spot w : holes(all, f, task_.radius)) {
                const bool again = std::any_of(taken.begin(), taken.end(), [&](Spot t) {
                    return distanceSquared(t, w) < squared(task_.radius / 20);
                });
                if (again)
                    continue;
                taken.push_back(w);
                if (std::none_of(hopeless_.begin(), hopeless_.end(),
                                 [&](Spot h) { return h == w; }))
                    missed |= require(w);
            }
        }
        return !missed;
    }

    const CoverTask& task_;
    Buckets fixedBuckets_;
    CoverSearch search_;
    std::vector<Spots> orbits_;
    std::vector<int> idOf_, nameOf_;
    Spots hopeless_;
};

} // namespace

CoverAnswer solve(const CoverTask& task, std::stop_token stop) {
    return Solver{task}.run(stop);
}

} // namespace bastewright::points
