#include "sheets/pages/helper_rests.h"

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr Seconds kWait = std::chrono::minutes{8};

std::vector<Rest> breaksOf(const Session& session, const Plan& plan, const std::string& person) {
    std::vector<Rest> out;
    const auto start = session.setting.start.sinceMidnight;
    for (const auto& h : session.setting.helpers)
        for (const Break& b : h.breaks)
            if (h.name == person && b.until.sinceMidnight > start &&
                b.from.sinceMidnight - start < plan.finish)
                out.push_back({b.from.sinceMidnight - start, b.until.sinceMidnight - start, true});
    std::ranges::sort(out);
    return out;
}

} // namespace

std::vector<Rest> restsOf(const Session& session, const Plan& plan, const std::string& person) {
    const std::vector<Rest> breaks = breaksOf(session, plan, person);
    std::vector<Rest> out = breaks;
    const auto wait = [&](Seconds from, Seconds until) {
        for (const Rest& b : breaks) { // what lies before a break, and on from its end
            if (b.until <= from || b.from >= until)
                continue;
            if (b.from - from >= kWait)
                out.push_back({from, b.from, false});
            from = std::max(from, b.until);
        }
        if (until - from >= kWait)
            out.push_back({from, until, false});
    };
    std::optional<Seconds> free;
    for (const auto& t : plan.tasks) {
        if (std::ranges::count(t.people, person) == 0)
            continue;
        if (free)
            wait(*free, t.start);
        free = std::max(free.value_or(t.end), t.end);
    }
    std::ranges::sort(out);
    return out;
}

} // namespace bastewright::sheets
