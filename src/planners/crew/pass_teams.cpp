#include "planners/crew/pass_steps.h"
#include "planners/crew/step_times.h"

#include <algorithm>

/// Who takes part in a step of a team, and from when.
namespace bastewright::crew {

std::vector<int> PassSteps::those(bool (*may)(const Helper&)) const {
    std::vector<int> out;
    for (const int p : start_.team)
        if (may(hand(p).helper))
            out.push_back(p);
    // Where nobody is as able as that, who walks does it; else anybody.
    if (out.empty())
        for (const int p : start_.team)
            if (walks(hand(p).helper))
                out.push_back(p);
    return out.empty() ? start_.team : out;
}

int PassSteps::clearOfBreaks(int t, int seconds) const {
    for (const PlannedBreak& b : given_.told) {
        const auto from = static_cast<int>(b.start.count()),
                   until = static_cast<int>(b.end.count());
        if (from < t + seconds && t < until)
            t = until;
    }
    return t;
}

std::vector<int> PassSteps::times(const std::vector<int>& who) const {
    std::vector<int> out{now_};
    const auto add = [&](int t) {
        if (t > now_ && t < kAlways)
            out.push_back(t);
    };
    for (const int p : who) {
        add(hand(p).from);
        for (const auto& rest : hand(p).away)
            add(rest.second);
    }
    for (const PlannedBreak& b : given_.told)
        add(static_cast<int>(b.end.count()));
    std::ranges::sort(out);
    return out;
}

std::optional<PassSteps::Team> PassSteps::chooseAt(const std::vector<int>& who, std::size_t n,
                                                   const Takes& takes, int t, bool overtime) const {
    std::vector<int> order = who;
    const auto load = [&](int p) {
        const auto at = out_.work.find(p);
        return at == out_.work.end() ? 0 : at->second;
    };
    // The quickest; of equals who has had least to do. Beyond everybody's hours: who is there
    // longest.
    std::ranges::stable_sort(order, {}, [&](int p) {
        return std::tuple{overtime ? -hand(p).until : 0, -pace(p), load(p), p};
    });
    std::erase_if(order, [&](int p) { return !overtime && !hand(p).there(t, t + 1); });
    while (order.size() >= n) {
        Team team{{order.begin(), order.begin() + static_cast<std::ptrdiff_t>(n)}, t, 0};
        std::vector<double> paces;
        for (const int p : team.people)
            paces.push_back(pace(p));
        team.seconds = std::max(1, wholeSeconds(takes(paces)));
        if (overtime)
            return team;
        if (clearOfBreaks(t, team.seconds) != t)
            return {};
        const auto gone = std::ranges::find_if(
            team.people, [&](int p) { return !hand(p).there(t, t + team.seconds); });
        if (gone == team.people.end()) {
            std::ranges::sort(team.people);
            return team;
        }
        std::erase(order, *gone);
    }
    return {};
}

PassSteps::Team PassSteps::choose(const std::vector<int>& who, std::size_t least, std::size_t most,
                                  const Takes& takes) const {
    std::optional<Team> best;
    for (const int t : times(who)) {
        if (best && t >= best->start + best->seconds)
            break;
        for (std::size_t n = std::min(most, who.size()); n >= least && n > 0; --n)
            if (auto team = chooseAt(who, n, takes, t, false);
                team && (!best || team->start + team->seconds < best->start + best->seconds))
                best = std::move(team);
    }
    if (best)
        return *best;
    const std::size_t n = std::clamp<std::size_t>(least, 1, std::max<std::size_t>(1, who.size()));
    if (auto team = chooseAt(who, n, takes, now_, true)) {
        team->start = clearOfBreaks(now_, team->seconds);
        return *team;
    }
    return {{}, now_, std::max(1, wholeSeconds(takes({})))};
}

PassSteps::Team PassSteps::chooseAll(const std::vector<int>& who, std::size_t least,
                                     const Takes& takes) const {
    for (const int t : times(who))
        for (std::size_t n = who.size(); n >= least && n > 0; --n)
            if (auto team = chooseAt(who, n, takes, t, false))
                return *team;
    return choose(who, least, who.size(), takes);
}

std::size_t PassSteps::liftersEver(const std::vector<int>& who, std::size_t people) const {
    std::size_t ever = 0;
    for (const int p : who)
        ever += hand(p).firstTime(now_, 1) < kAlways ? 1 : 0;
    if (ever == 0) // beyond everybody's hours
        ever = who.size();
    return std::clamp<std::size_t>(std::min(people, ever), 1, std::max<std::size_t>(1, who.size()));
}

} // namespace bastewright::crew
