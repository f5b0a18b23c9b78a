#include "planners/crew/pass_day.h"

#include "plan/find.h"
#include "plan/trade_times.h"
#include "planners/crew/pass_steps.h"
#include "ways/way.h"

#include <algorithm>
#include <tuple>

namespace bastewright::crew {
namespace {

/// Zones with points that are not all done.
int undone(const PassPlan& p) {
    return p.unworked + static_cast<int>(std::ranges::count_if(p.crew.zones, [](const auto& z) {
               return !z.reached && !z.zone.points.empty();
           }));
}

/// Sooner, and nobody kept beyond their hours for it; no place is kept for who has left.
bool better(const PassPlan& a, const PassPlan& b) {
    const auto rank = [](const PassPlan& p) {
        return std::tuple{p.overtime, undone(p), p.deserted, p.end};
    };
    return rank(a) < rank(b);
}

bool mayHaveZones(const Helper& h) {
    return h.pins;
}

} // namespace

std::pair<int, int> howGood(std::span<const PassPlan> passes) {
    std::pair<int, int> out;
    for (const PassPlan& p : passes) {
        out.first += p.overtime;
        out.second += undone(p);
    }
    return out;
}

bool crewsDiffer(std::span<const PassPlan> passes) {
    const std::vector<int>* some = nullptr;
    for (const PassPlan& p : passes) {
        if (p.crew.zones.empty())
            continue;
        if (some != nullptr && *some != p.crew.asked)
            return true;
        some = &p.crew.asked;
    }
    return false;
}

std::string taskId(int job, int pass, std::string_view zone, TaskKind kind, bool fromBack) {
    std::string out = "q" + std::to_string(job + 1) + ".";
    if (zone.empty())
        out += "p" + std::to_string(pass);
    else
        out += zone;
    out += ".";
    out += name(kind);
    if (fromBack)
        out += ".back";
    return out;
}

PassPlan planPass(const Given& given, QuiltTable& table, Letters& letters, const PassStart& start) {
    const auto able = [&](int p) {
        return mayHaveZones(given.hands[static_cast<std::size_t>(p)].helper);
    };
    std::vector<int> pinners;
    for (const int p : start.team)
        if (able(p) && given.hands[static_cast<std::size_t>(p)].there(start.ready, start.ready + 1))
            pinners.push_back(p);
    std::optional<PassPlan> best;
    std::set<std::vector<int>> tried;
    const auto attempt = [&](const std::vector<int>& who) {
        if (who.empty() || !tried.insert(who).second)
            return;
        PassPlan one = PassSteps{given, table, letters, start, who}.run();
        if (!best || better(one, *best))
            best = std::move(one);
    };
    attempt(pinners);
    // Who will be there from the first pin to the last; with a break of their own in between others
    // may wait for them, or do without.
    for (int round = 0; round < 3 && best; ++round) {
        const int from = best->pinsFrom, until = best->pinsUntil;
        std::vector<int> all, unbroken;
        for (const int p : start.team) {
            const Hand& h = given.hands[static_cast<std::size_t>(p)];
            if (able(p) && h.from <= from && h.until >= until)
                all.push_back(p);
            if (able(p) && h.there(from, until))
                unbroken.push_back(p);
        }
        const std::size_t before = tried.size();
        attempt(unbroken);
        attempt(all);
        if (tried.size() == before)
            break;
    }
    if (!best) {
        // Nobody with zones is here yet: whoever comes first; else whoever stays.
        std::vector<int> all;
        for (const int p : start.team)
            if (able(p))
                all.push_back(p);
        std::vector<int> coming;
        for (const int p : all)
            if (given.hands[static_cast<std::size_t>(p)].firstTime(start.ready, 1) < kAlways)
                coming.push_back(p);
        best = PassSteps{given, table, letters, start, coming.empty() ? all : coming}.run();
    }
    return std::move(*best);
}

} // namespace bastewright::crew
