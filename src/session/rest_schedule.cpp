#include "session/private/rest_schedule.h"

#include "planners/crew/sweep.h"

#include <algorithm>
#include <optional>

namespace bastewright {
using crew::Problem;
using crew::Schedule;

namespace {

// About as many schedules as a first plan gets.
int schedulesFor(const Problem& problem, int effort) {
    return std::max(1, effort) * std::clamp(100'000 / std::max(1, problem.size()), 40, 1'000);
}

// How an activity was planned before: when, by whom (people of the problem), and where.
struct Before {
    std::int64_t start = 0;
    std::vector<int> people{};
    std::optional<StandingPlace> place{};
};

// Builds a schedule in the order of an earlier one, with its people and places where those still
// do, and work in hand before everything: so that starts at once, its people, irons and standing
// room sure.
template <class Earlier>
Schedule inOrder(const Remaining& r, Earlier&& earlier) {
    crew::Model model = r.model;
    std::vector<double> key;
    for (std::size_t i = 0; i < r.tasks.size(); ++i) {
        const Before was = earlier(i);
        key.push_back(r.inHand.contains(i) ? 1 : -double(was.start));
        auto& a = model.problem.activities[i];
        std::vector<crew::Mode> modes;
        for (const auto& m : a.modes)
            if (std::ranges::find(was.people, m.person) != was.people.end())
                modes.push_back(m);
        if (a.team == 0 || modes.size() < static_cast<std::size_t>(a.team))
            continue;
        if (was.place)
            for (auto& m : modes)
                standAt(*was.place, m, model);
        a.modes = std::move(modes);
    }
    const auto& problem = model.problem;
    Schedule out;
    crew::Decoder{problem}.build(crew::orderByKey(problem, crew::followers(problem), key), {}, out);
    return out;
}

// The plan as it was, as far as it can still be kept; the rest with whoever ends it soonest.
Schedule asBefore(const Remaining& r, const std::vector<Hand>& hands) {
    return inOrder(r, [&](std::size_t i) {
        const Task& t = *r.tasks[i];
        Before was{.start = t.start.count()};
        for (std::size_t k = 0; k < hands.size(); ++k)
            if (std::ranges::find(t.people, hands[k].helper.name) != t.people.end())
                was.people.push_back(static_cast<int>(k));
        if (t.places.size() == 1)
            was.place = t.places.front();
        return was;
    });
}

// The search knows nothing of work in hand, and may have put something else before it.
Schedule handsFirst(const Remaining& r, Schedule found) {
    if (std::ranges::all_of(r.inHand, [&found](std::size_t i) { return found.start[i] == 0; }))
        return found;
    return inOrder(r, [&](std::size_t i) {
        Before was{.start = found.start[i], .people = found.crew[i]};
        if (found.strip[i] >= 0)
            was.place = placeOf(r, found, i);
        return was;
    });
}

// People dislike being sent elsewhere for nothing: the old hands are kept unless a new plan wins a
// minute and a fiftieth of what is left.
constexpr int kWorthSeconds = 60;
constexpr int kWorthShare = 50;

} // namespace

StandingPlace placeOf(const Remaining& r, const Schedule& s, std::size_t i) {
    const auto strip = static_cast<std::size_t>(s.strip[i]);
    const auto lo = Length::nanometres(s.place[i]);
    return {r.model.edges[strip].side,
            {lo, lo + Length::nanometres(r.model.problem.strips[strip].room)}};
}

Schedule scheduleOf(const Remaining& r, const std::vector<Hand>& hands, int bound, int effort,
                    std::stop_token stop) {
    const auto& problem = r.model.problem;
    const Schedule before = asBefore(r, hands);
    const Schedule constructed = crew::construct(problem);
    const Schedule found = handsFirst(
        r,
        crew::searchBySweeps(problem, crew::better(before, constructed) ? before : constructed,
                             {.schedules = schedulesFor(problem, effort), .bound = bound}, stop));
    const bool worth =
        found.overtime < before.overtime ||
        before.finish - found.finish >= std::max(kWorthSeconds, before.finish / kWorthShare);
    return worth ? found : before;
}

} // namespace bastewright
