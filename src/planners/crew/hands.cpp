#include "planners/crew/hands.h"

#include "planners/surface/helper_order.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

int secondsAfter(ClockTime t, ClockTime start) {
    return static_cast<int>(
        std::chrono::duration_cast<Seconds>(t.sinceMidnight - start.sinceMidnight).count());
}

} // namespace

bool Hand::there(int a, int b) const {
    return from <= a && b <= until && std::ranges::none_of(away, [&](const auto& rest) {
               return rest.first < b && a < rest.second;
           });
}

int Hand::firstTime(int a, int seconds) const {
    int t = std::max(a, from);
    for (const auto& [start, end] : away)
        if (start < t + seconds && t < end)
            t = end;
    return t + seconds <= until ? t : kAlways;
}

Hand handOf(const Helper& helper, ClockTime start) {
    Hand out{.helper = helper};
    if (helper.from)
        out.from = std::max(0, secondsAfter(*helper.from, start));
    if (helper.until)
        out.until = secondsAfter(*helper.until, start);
    for (const Break& b : helper.breaks)
        if (const std::pair rest{std::max(0, secondsAfter(b.from, start)),
                                 secondsAfter(b.until, start)};
            rest.first < rest.second)
            out.away.push_back(rest);
    std::ranges::sort(out.away);
    return out;
}

std::vector<Hand> handsOf(const std::vector<Helper>& helpers, ClockTime start) {
    std::vector<Hand> out;
    for (const Helper& h : inOneOrder(helpers)) {
        out.push_back(handOf(h, start));
        const auto at = std::ranges::find(helpers, h.name, &Helper::name);
        out.back().listed = static_cast<std::size_t>(at - helpers.begin());
    }
    return out;
}

std::vector<PlannedBreak> toldBreaks(const Setting& setting) {
    std::vector<PlannedBreak> out;
    for (const Break& b : setting.breaks)
        if (const PlannedBreak rest{Seconds{std::max(0, secondsAfter(b.from, setting.start))},
                                    Seconds{secondsAfter(b.until, setting.start)}, false};
            rest.start < rest.end)
            out.push_back(rest);
    std::ranges::sort(out);
    return out;
}

bool lays(const Helper& h) {
    return h.lifts && !h.seated;
}

bool looksBelow(const Helper& h) {
    return h.bends && h.lifts && !h.seated;
}

bool walks(const Helper& h) {
    return !h.seated;
}

} // namespace bastewright::crew
