#include "planners/crew/edge_room.h"

#include "planners/crew/stage.h"

#include <algorithm>
#include <set>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

/// More sides than one table has are not looked at in every choice of them.
constexpr std::size_t kSides = 4;

/// The places along the edges as the people of a problem of its own.
struct Places {
    Problem problem;
    std::vector<int> release;
    std::vector<unsigned> sides; ///< of each activity: the set of edges it can be worked from
    std::size_t edges = 0;
};

Places placesOf(const Problem& whole, std::span<const int> activities,
                std::span<const int> release) {
    Places out;
    std::vector<int> edges; // strips of the whole, by number here
    std::vector<int> firstPlace;
    const auto edge = [&](int strip) {
        const auto at = std::ranges::find(edges, strip);
        const auto k = static_cast<std::size_t>(at - edges.begin());
        if (at == edges.end()) {
            edges.push_back(strip);
            firstPlace.push_back(static_cast<int>(out.problem.people.size()));
            const Strip& s = whole.strips[ix(strip)];
            for (std::int64_t p = 0; p < peopleAt(s); ++p)
                out.problem.people.emplace_back();
        }
        return k;
    };
    for (const int i : activities) {
        const Activity& a = whole.at(i);
        if (a.team != 1 || a.modes.front().firstSpot == a.modes.front().endSpot)
            continue;
        std::set<std::size_t> from;
        for (const Mode& m : a.modes)
            for (int s = m.firstSpot; s < m.endSpot; ++s)
                from.insert(edge(whole.spots[ix(s)].strip));
        if (edges.size() > kSides)
            return {};
        Activity here{.team = 1};
        unsigned sides = 0;
        for (const std::size_t e : from) {
            sides |= 1U << e;
            const Strip& s = whole.strips[ix(edges[e])];
            for (int p = 0; p < peopleAt(s); ++p)
                here.modes.push_back({.person = firstPlace[e] + p, .seconds = shortest(a)});
        }
        out.problem.activities.push_back(std::move(here));
        out.release.push_back(release[ix(i)]);
        out.sides.push_back(sides);
    }
    out.edges = edges.size();
    return out;
}

} // namespace

int endByEdges(const Problem& problem, std::span<const int> activities,
               std::span<const int> release, int atLeast, int& branches) {
    const Places places = placesOf(problem, activities, release);
    int bound = atLeast;
    for (unsigned choice = 1; choice < 1U << places.edges; ++choice) {
        std::vector<int> only;
        for (int i = 0; i < places.problem.size(); ++i)
            if ((places.sides[ix(i)] & ~choice) == 0)
                only.push_back(i);
        if (only.size() < 2)
            continue;
        const Stage stage{places.problem, only, places.release};
        bound = stage.byWork({}, 0, bound);
        bound = std::max(bound, stage.byCount());
        if (choice + 1 == 1U << places.edges)
            bound = stage.exact(bound, branches);
    }
    return bound;
}

} // namespace bastewright::crew
