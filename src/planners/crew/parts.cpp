#include "planners/crew/parts.h"

#include <algorithm>
#include <numeric>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

} // namespace

std::vector<std::vector<int>> strandsOf(const Problem& problem) {
    // Union by smallest member: activities first, then strips.
    const std::size_t n = problem.activities.size();
    std::vector<int> root(n + problem.strips.size());
    std::iota(root.begin(), root.end(), 0);
    const auto find = [&](int i) {
        while (root[ix(i)] != i)
            i = root[ix(i)] = root[ix(root[ix(i)])];
        return i;
    };
    const auto join = [&](int a, int b) {
        a = find(a);
        b = find(b);
        root[ix(std::max(a, b))] = std::min(a, b);
    };
    for (std::size_t i = 0; i < n; ++i) {
        for (const int b : problem.activities[i].after)
            join(static_cast<int>(i), b);
        for (const Mode& m : problem.activities[i].modes)
            for (int s = m.firstSpot; s < m.endSpot; ++s)
                join(static_cast<int>(i), static_cast<int>(n) + problem.spots[ix(s)].strip);
    }
    std::vector<std::vector<int>> strands;
    std::vector<int> number(n, -1);
    for (std::size_t i = 0; i < n; ++i) {
        int& at = number[ix(find(static_cast<int>(i)))];
        if (at < 0) {
            at = static_cast<int>(strands.size());
            strands.emplace_back();
        }
        strands[ix(at)].push_back(static_cast<int>(i));
    }
    return strands;
}

std::vector<std::vector<int>> sectionsOf(const Problem& problem, const std::vector<int>& strand) {
    const auto next = followers(problem);
    std::vector<int> waits(problem.activities.size(), 0);
    std::vector<int> ready;
    for (const int i : strand) {
        waits[ix(i)] = static_cast<int>(problem.at(i).after.size());
        if (waits[ix(i)] == 0)
            ready.push_back(i);
    }
    std::vector<std::vector<int>> sections(1);
    std::vector<char> led(problem.activities.size(), 0); // has a follower among those passed
    std::size_t ends = 0; // passed activities without such a follower
    for (std::size_t passed = 0; passed < strand.size(); ++passed) {
        const auto least = std::ranges::min_element(ready);
        const int i = *least;
        ready.erase(least);
        ++ends;
        for (const int b : problem.at(i).after)
            if (!led[ix(b)]) {
                led[ix(b)] = 1;
                --ends;
            }
        sections.back().push_back(i);
        const bool alone = ready.empty();
        for (const int n : next[ix(i)])
            if (--waits[ix(n)] == 0)
                ready.push_back(n);
        // Everything before led here, and nothing but its followers can begin now.
        if (alone && ends == 1 && passed + 1 < strand.size())
            sections.emplace_back();
    }
    return sections;
}

Extract extract(const Problem& whole, std::vector<int> activities) {
    Extract s{std::move(activities), {}, {}};
    std::vector<int> own(whole.activities.size(), -1), strip(whole.strips.size(), -1);
    for (std::size_t k = 0; k < s.activities.size(); ++k)
        own[ix(s.activities[k])] = static_cast<int>(k);
    s.problem.people = whole.people;
    s.problem.tools = whole.tools;
    for (const int i : s.activities) {
        Activity a = whole.at(i);
        std::erase_if(a.after, [&](int b) { return own[ix(b)] < 0; });
        for (int& b : a.after)
            b = own[ix(b)];
        if (a.apart >= 0)
            a.apart = own[ix(a.apart)];
        for (Mode& m : a.modes) {
            const int first = static_cast<int>(s.problem.spots.size());
            for (int k = m.firstSpot; k < m.endSpot; ++k) {
                Spot spot = whole.spots[ix(k)];
                int& mine = strip[ix(spot.strip)];
                if (mine < 0) {
                    mine = static_cast<int>(s.strips.size());
                    s.strips.push_back(spot.strip);
                    s.problem.strips.push_back(whole.strips[ix(spot.strip)]);
                }
                spot.strip = mine;
                s.problem.spots.push_back(spot);
            }
            m.firstSpot = first;
            m.endSpot = static_cast<int>(s.problem.spots.size());
        }
        s.problem.activities.push_back(std::move(a));
    }
    return s;
}

} // namespace bastewright::crew
