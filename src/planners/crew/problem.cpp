#include "planners/crew/problem.h"

#include <queue>

#include <algorithm>
#include <cassert>
#include <cstdlib>

namespace bastewright::crew {

int shortest(const Activity& a) {
    if (a.team == 0)
        return a.seconds;
    // The fastest team that can be made has the team-th fastest person in it.
    assert(static_cast<int>(a.modes.size()) >= a.team);
    return a.modes[static_cast<std::size_t>(a.team - 1)].seconds;
}

std::vector<std::vector<int>> followers(const Problem& problem) {
    std::vector<std::vector<int>> next(problem.activities.size());
    for (int i = 0; i < problem.size(); ++i)
        for (const int before : problem.at(i).after)
            next[static_cast<std::size_t>(before)].push_back(i);
    return next;
}

std::int64_t onTheWay(const Strip& strip, std::int64_t place) {
    const std::int64_t along = place + strip.room / 2 - strip.lo;
    return strip.against ? strip.at - along : strip.at + along;
}

std::int64_t walk(const Strip& a, std::int64_t placeA, const Strip& b, std::int64_t placeB) {
    if (a.table != b.table)
        return kToAnotherTable;
    const std::int64_t d = std::abs(onTheWay(a, placeA) - onTheWay(b, placeB));
    return std::min(d, std::abs(a.round - d));
}

Problem mirrored(const Problem& problem, int horizon) {
    Problem back = problem;
    const auto next = followers(problem);
    for (std::size_t i = 0; i < next.size(); ++i)
        back.activities[i].after = next[i];
    back.from = 0;
    mirrorHours(problem, horizon, back);
    return back;
}

void mirrorHours(const Problem& problem, int horizon, Problem& back) {
    for (std::size_t p = 0; p < problem.people.size(); ++p) {
        const Person& h = problem.people[p];
        back.people[p] = {h.until == kNever ? 0 : std::max(0, horizon - h.until),
                          h.from > 0 ? std::max(0, horizon - h.from) : kNever};
    }
    back.booked.clear();
    for (const Booking& b : problem.booked)
        if (b.start < horizon)
            back.booked.push_back(
                {b.person, b.demand, std::max(0, horizon - b.end), horizon - b.start});
}

bool hasHours(const Problem& problem) {
    return !problem.booked.empty() || std::ranges::any_of(problem.people, [](const Person& p) {
        return p.from > 0 || p.until < kNever;
    });
}

std::vector<double> tails(const Problem& problem, double hands) {
    const auto next = followers(problem);
    std::vector<int> waiting(next.size());
    for (std::size_t i = 0; i < next.size(); ++i)
        waiting[i] = static_cast<int>(next[i].size());
    std::vector<int> open;
    for (int i = problem.size() - 1; i >= 0; --i)
        if (waiting[static_cast<std::size_t>(i)] == 0)
            open.push_back(i);

    std::vector<double> tail(next.size(), 0);
    while (!open.empty()) {
        const int i = open.back();
        open.pop_back();
        const Activity& a = problem.at(i);
        double work = 0;
        int longest = 0;
        for (const int b : a.after) {
            work += shortest(problem.at(b)) * std::max(1, problem.at(b).team);
            longest = std::max(longest, shortest(problem.at(b)));
        }
        const double own = tail[static_cast<std::size_t>(i)] + shortest(a);
        const double shared = std::max(0.0, work / hands - longest);
        for (const int b : a.after) {
            double& t = tail[static_cast<std::size_t>(b)];
            t = std::max(t, own + shared);
            if (--waiting[static_cast<std::size_t>(b)] == 0)
                open.push_back(b);
        }
    }
    return tail;
}

std::vector<int> orderByKey(const Problem& problem, const std::vector<std::vector<int>>& next,
                            std::span<const double> key) {
    const auto later = [key](int a, int b) {
        const double ka = key[static_cast<std::size_t>(a)], kb = key[static_cast<std::size_t>(b)];
        return ka != kb ? ka < kb : a > b;
    };
    std::priority_queue<int, std::vector<int>, decltype(later)> ready{later};
    std::vector<int> waiting(next.size());
    for (int i = 0; i < problem.size(); ++i) {
        waiting[static_cast<std::size_t>(i)] = static_cast<int>(problem.at(i).after.size());
        if (problem.at(i).after.empty())
            ready.push(i);
    }
    std::vector<int> order;
    order.reserve(next.size());
    while (!ready.empty()) {
        const int i = ready.top();
        ready.pop();
        order.push_back(i);
        for (const int n : next[static_cast<std::size_t>(i)])
            if (--waiting[static_cast<std::size_t>(n)] == 0)
                ready.push(n);
    }
    assert(order.size() == next.size() && "activities wait for one another in a circle");
    return order;
}

} // namespace bastewright::crew
