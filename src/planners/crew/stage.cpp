#include "planners/crew/stage.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

} // namespace

Stage::Stage(const Problem& problem, std::span<const int> activities, std::span<const int> release)
    : problem_(problem)
    , activities_(activities.begin(), activities.end())
    , release_(release)
    , speed_(problem.people.size(), 0) {
    // Any weights give a bound; speeds relative to the fastest are the natural ones.
    std::vector<double> least(speed_.size(), 0), own(speed_.size(), 0);
    for (const int i : activities_) {
        const Activity& a = problem_.at(i);
        for (const Mode& m : a.modes) {
            least[ix(m.person)] += a.modes.front().seconds;
            own[ix(m.person)] += m.seconds;
        }
    }
    for (std::size_t p = 0; p < speed_.size(); ++p)
        if (own[p] > 0)
            speed_[p] = least[p] / own[p];
}

/// Weighed work an activity costs at the very least, whoever does it.
double Stage::need(int activity) const {
    const Activity& a = problem_.at(activity);
    if (a.team == 0)
        return 0;
    if (a.team == 1) {
        double least = 1e18;
        for (const Mode& m : a.modes)
            least = std::min(least, speed_[ix(m.person)] * m.seconds);
        return least;
    }
    // Whoever is the slowest of the team, the others are no slower: the least weights among those.
    std::vector<double> faster;
    double least = 1e18, others = 0;
    for (const Mode& m : a.modes) {
        if (static_cast<int>(faster.size()) == a.team - 1)
            least = std::min(least, (speed_[ix(m.person)] + others) * m.seconds);
        faster.insert(std::ranges::upper_bound(faster, speed_[ix(m.person)]), speed_[ix(m.person)]);
        others += speed_[ix(m.person)];
        if (static_cast<int>(faster.size()) == a.team) {
            others -= faster.back();
            faster.pop_back();
        }
    }
    return least;
}

double Stage::hoursBetween(int person, int from, int to) const {
    const Person& p = problem_.people[ix(person)];
    return std::max(0, std::min(to, p.until) - std::max(from, p.from));
}

/// Earliest moment, not before `atLeast`, by which so much weighed work fits into everybody's time
/// after `from`.
int Stage::fill(int from, double work, int atLeast) const {
    const auto fits = [&](int to) {
        double room = 0;
        for (std::size_t p = 0; p < speed_.size(); ++p)
            if (speed_[p] > 0)
                room += speed_[p] * hoursBetween(static_cast<int>(p), from, to);
        return room >= work - 1e-6;
    };
    int lo = std::max(from, atLeast), hi = kNever;
    if (fits(lo))
        return lo;
    if (!fits(hi))
        return kNever;
    while (lo < hi) {
        const int mid = lo + (hi - lo) / 2;
        if (fits(mid))
            hi = mid;
        else
            lo = mid + 1;
    }
    return lo;
}

int Stage::byWork(std::span<const int> tail, int leastTail, int atLeast) const {
    std::vector<int> late;
    for (const int i : activities_)
        if (tail.empty() || tail[ix(i)] >= leastTail)
            late.push_back(i);
    std::ranges::sort(late, [this](int a, int b) { return release_[ix(a)] > release_[ix(b)]; });
    int bound = atLeast;
    double work = 0;
    for (std::size_t k = 0; k < late.size() && bound < kNever; ++k) {
        work += need(late[k]);
        if (k + 1 == late.size() || release_[ix(late[k + 1])] != release_[ix(late[k])])
            bound = fill(release_[ix(late[k])], work, bound);
    }
    return bound;
}

int Stage::byCount() const {
    std::vector<int> longest;
    int from = kNever;
    for (const int i : activities_)
        if (problem_.at(i).team == 1) {
            longest.push_back(i);
            from = std::min(from, release_[ix(i)]);
        }
    if (longest.size() < 2)
        return 0;
    std::ranges::sort(longest, [this](int a, int b) {
        return shortest(problem_.at(a)) > shortest(problem_.at(b));
    });

    // Tasks of each person among the k longest, kept ascending as k grows.
    std::vector<std::vector<int>> own(problem_.people.size());
    int bound = 0;
    for (std::size_t k = 0; k < longest.size(); ++k) {
        for (const Mode& m : problem_.at(longest[k]).modes) {
            auto& list = own[ix(m.person)];
            list.insert(std::ranges::upper_bound(list, m.seconds), m.seconds);
        }
        const auto fits = [&](int to) {
            std::size_t done = 0;
            for (std::size_t p = 0; p < own.size() && done <= k; ++p) {
                double left = hoursBetween(static_cast<int>(p), from, to);
                for (const int seconds : own[p]) {
                    left -= seconds;
                    if (left < 0)
                        break;
                    ++done;
                }
            }
            return done > k;
        };
        int lo = std::max(from, bound), hi = kNever;
        if (fits(lo))
            continue;
        if (!fits(hi))
            return kNever;
        while (lo < hi) {
            const int mid = lo + (hi - lo) / 2;
            if (fits(mid))
                hi = mid;
            else
                lo = mid + 1;
        }
        bound = lo;
    }
    return bound;
}

int Stage::byTools() const {
    int from = kNever;
    std::vector<double> used(problem_.tools.size(), 0);
    for (const int i : activities_) {
        const Activity& a = problem_.at(i);
        from = std::min(from, release_[ix(i)]);
        for (std::size_t k = 0; k < a.demand.size(); ++k)
            used[k] += static_cast<double>(a.demand[k]) * shortest(a);
    }
    int bound = 0;
    for (std::size_t k = 0; k < used.size(); ++k)
        if (used[k] > 0)
            bound = std::max(
                bound, from + static_cast<int>(std::ceil(used[k] / problem_.tools[k] - 1e-9)));
    return bound;
}

namespace {

/// Depth-first over who does what, longest task first.
class HandOut {
public:
    HandOut(const Problem& problem, std::vector<int> tasks, int from, std::vector<double> speed,
            int& branches)
        : problem_(problem)
        , tasks_(std::move(tasks))
        , speed_(std::move(speed))
        , branches_(branches) {
        std::ranges::sort(tasks_, [&](int a, int b) {
            const int sa = shortest(problem.at(a)), sb = shortest(problem.at(b));
            return sa != sb ? sa > sb : a < b;
        });
        for (const Person& p : problem.people)
            end_.push_back(std::max(p.from, from));
        alike(problem);
        left_.assign(tasks_.size() + 1, 0);
        for (std::size_t k = tasks_.size(); k-- > 0;) {
            double need = 1e18;
            for (const Mode& m : problem.at(tasks_[k]).modes)
                need = std::min(need, speed_[ix(m.person)] * m.seconds);
            left_[k] = left_[k + 1] + need;
        }
    }

    /// The least moment at which all are done; nothing where the branches ran out. Never below
    /// `atLeast`, which is known to be a bound.
    int least(int atLeast) {
        atLeast_ = atLeast;
        best_ = kNever;
        branch(0, 0);
        return branches_ > 0 ? std::max(best_, atLeast) : atLeast;
    }

private:
    /// People who take equally long over everything here can stand in for one another.
    void alike(const Problem& problem) {
        std::map<std::vector<int>, int> kinds;
        for (std::size_t p = 0; p < end_.size(); ++p) {
            std::vector<int> own{problem.people[p].until};
            for (const int i : tasks_) {
                const auto& modes = problem.at(i).modes;
                const auto at = std::ranges::find(modes, static_cast<int>(p), &Mode::person);
                own.push_back(at == modes.end() ? -1 : at->seconds);
            }
            kind_.push_back(kinds.try_emplace(own, static_cast<int>(kinds.size())).first->second);
        }
    }

    void branch(std::size_t k, int latest) {
        if (branches_ <= 0 || best_ <= atLeast_)
            return;
        --branches_;
        if (k == tasks_.size()) {
            best_ = latest;
            return;
        }
        double room = 0;
        for (std::size_t p = 0; p < end_.size(); ++p)
            room +=
                speed_[p] * std::max(0, std::min(best_ - 1, problem_.people[p].until) - end_[p]);
        if (room < left_[k] - 1e-6)
            return;
        const Activity& a = problem_.at(tasks_[k]);
        std::vector<std::pair<int, const Mode*>> ways;
        for (const Mode& m : a.modes) {
            const int end = end_[ix(m.person)] + m.seconds;
            if (end < best_ && end <= problem_.people[ix(m.person)].until)
                ways.emplace_back(end, &m);
        }
        std::ranges::sort(ways); // by end; the modes lie in one row, so ties keep their order
        for (const auto& [end, mode] : ways) {
            if (end >= best_)
                break;
            int& own = end_[ix(mode->person)];
            const int before = own, kind = kind_[ix(mode->person)];
            const bool tried =
                std::any_of(ways.begin(), ways.end(), [&, end = end, mode = mode](const auto& w) {
                    const auto other = ix(w.second->person);
                    return w.second < mode && w.first == end && kind_[other] == kind &&
                           end_[other] == before;
                });
            if (tried)
                continue;
            own = end;
            branch(k + 1, std::max(latest, end));
            own = before;
        }
    }

    const Problem& problem_;
    std::vector<int> tasks_;
    std::vector<double> speed_;
    int& branches_;
    std::vector<int> end_, kind_; ///< by person
    std::vector<double> left_;    ///< weighed work from each task on
    int best_ = kNever, atLeast_ = 0;
};

} // namespace

int Stage::exact(int atLeast, int& branches) const {
    std::vector<int> tasks;
    int from = kNever;
    for (const int i : activities_)
        if (problem_.at(i).team == 1) {
            tasks.push_back(i);
            from = std::min(from, release_[ix(i)]);
        }
    if (tasks.size() < 2 || tasks.size() > kExact || branches <= 0)
        return atLeast;
    return HandOut{problem_, std::move(tasks), from, speed_, branches}.least(atLeast);
}

} // namespace bastewright::crew
