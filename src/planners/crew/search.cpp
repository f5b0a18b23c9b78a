#include "planners/crew/search.h"

#include "planners/crew/busy_hands.h"
#include "planners/crew/random.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// Size of each population for so many schedules.
int populationFor(int schedules) {
    const double root = std::sqrt(static_cast<double>(schedules));
    return std::clamp(static_cast<int>(0.5 * root), 6, 200);
}

/// From everybody at every piece of work to everybody at a piece of their own.
std::vector<double> guesses(const Problem& problem) {
    const double step = problem.size() > 500 ? 3 : 1.5; // large problems are built fewer times
    std::vector<double> hands;
    for (double h = std::max<double>(1.0, static_cast<double>(problem.people.size())); h >= 1;
         h /= step)
        hands.push_back(h);
    return hands;
}

std::vector<double> priorities(const Problem& problem, double hands) {
    auto key = tails(problem, hands);
    for (int i = 0; i < problem.size(); ++i)
        key[ix(i)] += shortest(problem.at(i));
    return key;
}

struct Individual {
    std::vector<int> order; ///< of the activities in the *other* direction's building
    int overtime = kNever, finish = kNever;
};

bool better(const Individual& a, const Individual& b) {
    return a.overtime != b.overtime ? a.overtime < b.overtime : a.finish < b.finish;
}

class Search {
public:
    Search(const Problem& problem, const SearchOptions& options, std::stop_token stop)
        : options_(options)
        , stop_(std::move(stop))
        , forward_{problem, followers(problem)}
        , back_(mirrored(problem, 0))
        , backward_{back_, followers(back_)}
        , decode_(problem)
        , decodeBack_(back_)
        , random_(options.seed)
        , anyHours_(hasHours(problem)) {}

    Found run(const Schedule& first) {
        best_ = first;
        const int n = forward_.problem.size();
        if (n == 0)
            return {best_, 0};
        population_ = populationFor(options_.schedules);
        begin(first);
        for (bool toBack = true; !done(); toBack = !toBack)
            generation(toBack);
        return {best_, built_};
    }

private:
    struct Direction {
        const Problem& problem;
        std::vector<std::vector<int>> next;
    };

    bool done() const {
        return built_ >= options_.schedules || stop_.stop_requested() ||
               (best_.overtime == 0 && best_.finish <= options_.bound);
    }

    /// Builds an order forwards (or backwards) and keeps the order of ends for the way back.
    Individual build(const std::vector<int>& order, bool backwards, int horizon) {
        Schedule& s = scratch_;
        if (backwards) {
            if (anyHours_) {
                mirrorHours(forward_.problem, horizon, back_);
                decodeBack_.readHours();
            }
            decodeBack_.build(order, {}, s);
        } else {
            decode_.build(order, {}, s);
        }
        ++built_;
        if (!backwards) {
            if (crew::better(s, best_))
                best_ = s;
        } else if (!anyHours_ && s.finish < best_.finish) {
            best_ = turned(s);
        }
        return {ordered(s), s.overtime, s.finish};
    }

    /// Latest end first: the order in which the other direction builds.
    std::vector<int> ordered(const Schedule& s) {
        // Activities of no length keep their order by index of precedence: the sort must never put
        // one before what it waits for in the other direction.
        std::vector<int> order = lastOrder_;
        std::ranges::reverse(order);
        std::ranges::stable_sort(order, [&](int a, int b) { return s.end[ix(a)] > s.end[ix(b)]; });
        return order;
    }

    static Schedule turned(const Schedule& s) {
        Schedule t = s;
        for (std::size_t i = 0; i < s.start.size(); ++i) {
            t.start[i] = s.finish - s.end[i];
            t.end[i] = s.finish - s.start[i];
        }
        return t;
    }

    Individual decode(const std::vector<int>& order, bool backwards, int horizon) {
        lastOrder_ = order;
        return build(order, backwards, horizon);
    }

    void begin(const Schedule& first) {
        pop_[0].clear();
        pop_[1].clear();
        std::vector<std::vector<double>> keys;
        for (const double hands : guesses(forward_.problem))
            keys.push_back(priorities(forward_.problem, hands));
        lastOrder_ = orderByKey(forward_.problem, forward_.next, keys.front());
        pop_[0].push_back({ordered(first), first.overtime, first.finish});
        std::vector<double> noisy;
        for (int k = 1; k < population_ && !done(); ++k) {
            noisy = keys[ix(k) % keys.size()];
            const double mean = std::accumulate(noisy.begin(), noisy.end(), 0.0) /
                                static_cast<double>(noisy.size());
            const double spread = mean * random_.unit();
            for (double& v : noisy)
                v += spread * random_.unit();
            pop_[0].push_back(decode(orderByKey(forward_.problem, forward_.next, noisy), false, 0));
        }
        // Their justifications are the other population.
        for (const Individual& one : pop_[0]) {
            if (done())
                return;
            pop_[1].push_back(decode(one.order, true, one.finish));
        }
    }

    const Individual& tournament(const std::vector<Individual>& from) {
        const Individual& a = from[ix(random_.below(static_cast<int>(from.size())))];
        const Individual& b = from[ix(random_.below(static_cast<int>(from.size())))];
        return better(a, b) ? a : b;
    }

    /// The middle of the child comes from the father, the rest in the mother's order.
    std::vector<int> cross(const std::vector<int>& father, const std::vector<int>& mother) {
        const int n = static_cast<int>(father.size());
        const int length = std::max(1, n / 4 + random_.below(std::max(1, n / 2)));
        const int from = random_.below(std::max(1, n - length + 1)),
                  to = std::min(n, from + length);
        taken_.assign(father.size(), 0);
        std::vector<int> child;
        child.reserve(father.size());
        const auto take = [&](const std::vector<int>& parent, int upTo) {
            for (const int i : parent) {
                if (static_cast<int>(child.size()) >= upTo)
                    break;
                if (!taken_[ix(i)]) {
                    taken_[ix(i)] = 1;
                    child.push_back(i);
                }
            }
        };
        take(mother, from);
        take(father, to);
        take(mother, n);
        return child;
    }

    /// Neighbours that do not wait for one another change places.
    void mutate(std::vector<int>& order, const Problem& problem, int times) {
        const int n = static_cast<int>(order.size());
        for (int k = 0; k < times && n > 1; ++k) {
            int at = random_.below(n);
            const int far = random_.below(n);
            const int step = far > at ? 1 : -1;
            // Moves one activity as far towards `far` as precedence lets it.
            while (at != far) {
                const int a = order[ix(at)], b = order[ix(at + step)];
                const auto& waits = step > 0 ? problem.at(b).after : problem.at(a).after;
                if (std::ranges::find(waits, step > 0 ? a : b) != waits.end())
                    break;
                std::swap(order[ix(at)], order[ix(at + step)]);
                at += step;
            }
        }
    }

    void generation(bool toBack) {
        auto& parents = pop_[toBack ? 0 : 1];
        auto& children = pop_[toBack ? 1 : 0];
        const Problem& problem = toBack ? backward_.problem : forward_.problem;
        std::size_t bestAt = 0;
        for (std::size_t i = 0; i < children.size(); ++i)
            if (better(children[i], children[bestAt]))
                bestAt = i;
        for (std::size_t i = 0; i < parents.size() && !done(); ++i) {
            const Individual& father = parents[i];
            const Individual& mother = tournament(parents);
            auto order = random_.below(2) ? cross(father.order, mother.order)
                                          : cross(mother.order, father.order);
            if (random_.unit() < (problem.size() <= 80 ? 0.7 : 0.4))
                mutate(order, problem, 1 + random_.below(3));
            Individual child = decode(order, toBack, father.finish);
            if (i >= children.size()) {
                children.push_back(std::move(child));
            } else if (i != bestAt || !better(children[i], child)) {
                if (better(child, children[bestAt]))
                    bestAt = i;
                children[i] = std::move(child);
            }
        }
    }

    const SearchOptions options_;
    std::stop_token stop_;
    Direction forward_;
    Problem back_;
    Direction backward_;
    Decoder decode_, decodeBack_;
    Random random_;
    const bool anyHours_;
    int population_ = 10, built_ = 0;
    std::vector<Individual> pop_[2]; ///< built forwards, built backwards
    Schedule best_, scratch_;
    std::vector<int> lastOrder_;
    std::vector<char> taken_;
};

} // namespace

Found search(const Problem& problem, const Schedule& first, const SearchOptions& options,
             std::stop_token stop) {
    return Search{problem, options, std::move(stop)}.run(first);
}

Schedule construct(const Problem& problem) {
    const auto next = followers(problem);
    Decoder decoder{problem};
    Schedule best, one;
    const auto keep = [&] {
        if (best.start.empty() || better(one, best))
            std::swap(best, one);
    };
    const auto hands = guesses(problem);
    for (const double h : hands) {
        decoder.build(orderByKey(problem, next, priorities(problem, h)), {}, one);
        keep();
    }
    if (problem.booked.empty()) {
        BusyHands{problem}.build(priorities(problem, hands[hands.size() / 2]), one);
        keep();
    }
    return best;
}

} // namespace bastewright::crew
