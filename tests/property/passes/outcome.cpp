#include "property/passes/outcome.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <ostream>

namespace bastewright::testing {

std::ostream& operator<<(std::ostream& out, const Outcome& o) {
    out << o.surface << ": " << o.passes << " passes, " << o.pulls << " pulls, " << o.points
        << " points, " << o.yards << " yards, " << o.finish.count() << " s, " << o.stops
        << " stops (" << o.holds << " holds";
    for (const auto& [kind, seconds] : o.byKind)
        out << ", " << name(kind) << " " << seconds.count();
    return out << ")";
}

Outcome outcomeOf(const Plan& plan) {
    Outcome out;
    out.stops =
        static_cast<int>(std::ranges::count(plan.findings, Finding::Level::stop, &Finding::level));
    out.finish = plan.finish;
    std::map<int, std::pair<Seconds, Seconds>> spans;
    for (const Task& t : plan.tasks) {
        auto& span = spans.try_emplace(t.pass, t.start, t.end).first->second;
        span = {std::min(span.first, t.start), std::max(span.second, t.end)};
    }
    std::map<std::pair<TaskKind, int>, std::pair<Seconds, Seconds>> calls;
    for (const Task& t : plan.tasks) {
        auto& span = calls.try_emplace({t.kind, t.pass}, t.start, t.end).first->second;
        span = {std::min(span.first, t.start), std::max(span.second, t.end)};
    }
    for (const auto& [call, span] : calls)
        out.byKind[call.first] += span.second - span.first;
    for (const auto& [pass, span] : spans)
        out.longestPass = std::max(out.longestPass, span.second - span.first);
    for (const QuiltPlan& q : plan.quilts) {
        for (const Pass& p : q.passes) {
            ++(p.pulled ? out.pulls : out.passes);
            for (const Hold& h : p.holds)
                out.holds += h.count;
        }
        out.surface = q.surface.name.text() + " " + std::to_string(q.surface.length.in()) + " by " +
                      std::to_string(q.surface.width.in()) +
                      (q.surface.quiltLengthAlongLength ? ", along" : ", across");
        for (const Zone& z : q.zones)
            out.points += static_cast<int>(z.points.size());
        if (q.backing)
            for (const BackingPurchase& b : q.backing->buy)
                out.yards += b.length.in() / 36;
        out.quiltLengthAlongLength = q.surface.quiltLengthAlongLength;
    }
    return out;
}

std::uint64_t number(const char* variable, std::uint64_t otherwise) {
    const char* text = std::getenv(variable);
    return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

} // namespace bastewright::testing
