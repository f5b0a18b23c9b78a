#include "checker/rules/rules.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <set>
#include <string>

namespace bastewright::check {

// What would help is ranked, each change once, saves a minute at least, and is one that the session
// leaves room for.
void planHelp(const PlanView& v, Report& report) {
    const Setting& s = v.session.setting;
    const auto can = [&](Help::Kind kind) {
        switch (kind) {
        case Help::Kind::offTheWall:
            return !s.room.walls.empty();
        case Help::Kind::iron:
            return std::ranges::any_of(v.quilts, [](const QuiltView& q) {
                const SeenWay* asked = askedWhereShort(q.job);
                return seenWay(q.job).irons || (asked != nullptr && asked->irons);
            });
        case Help::Kind::anyStart:
            return std::ranges::any_of(v.session.jobs, [](const Job& j) {
                return j.basting.start != Basting::Start::best;
            });
        case Help::Kind::fewestPoints:
            return std::ranges::any_of(v.session.jobs, [](const Job& j) {
                return j.basting.layout != Basting::Layout::fewest;
            });
        case Help::Kind::hourLonger:
            return std::ranges::any_of(s.helpers, [](const Helper& h) { return bool(h.until); });
        case Help::Kind::wholeTime:
            return std::ranges::any_of(s.helpers,
                                       [](const Helper& h) { return h.until || h.from; });
        default:
            return true;
        }
    };
    std::int64_t passes = 0, points = 0; // a way that is quicker may have more passes
    for (const QuiltView& q : v.quilts) {
        passes += std::ssize(q.quilt.passes);
        for (const Zone& z : q.quilt.zones)
            points += std::ssize(z.points);
    }
    std::set<Help::Kind> seen;
    const Help* last = nullptr;
    for (const Help& h : v.plan.help) {
        const std::string what = "Advice no. " + std::to_string(&h - v.plan.help.data() + 1);
        const Pointer there = Pointer{}.in("help", v.plan.help, h);
        if (!seen.insert(h.kind).second || !can(h.kind))
            report.add(there / "kind", what + " is said twice, or cannot be in this session.");
        if (h.saved < Seconds{60} || h.saved >= v.plan.finish)
            report.add(there / "saved",
                       what + " saves " + clock(h.saved) + " of " + clock(v.plan.finish) + ".");
        if (h.passesSaved >= passes || passes - h.passesSaved > points)
            report.add(there / "passes_saved", what + " saves " + std::to_string(h.passesSaved) +
                                                   " passes of " + std::to_string(passes) + ".");
        if (last != nullptr && h.saved > last->saved)
            report.add(there / "saved", what + " saves more than the one before it.");
        last = &h;
    }
}

} // namespace bastewright::check
