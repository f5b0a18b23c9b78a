#include "planners/whole/pins.h"

#include "planners/crew/dot_zones.h"
#include "ways/way.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace bastewright {

std::int64_t pinsTaken(const Session& session, const std::vector<QuiltPlan>& quilts) {
    std::int64_t out = 0;
    for (std::size_t i = 0; i < quilts.size(); ++i)
        for (const Zone& z : quilts[i].zones)
            out += wayOf(session.jobs[i], z).fromBox ? std::ssize(z.points) : 0;
    return out;
}

namespace {

/// Passes of which all that counts is basted so, and zones of others.
struct Places {
    std::vector<int> passes;
    std::vector<std::string> zones;
    std::int64_t points = 0;
};

Sentence said(const Places& at, const Sentence& dots) {
    Sentences numbers;
    for (const int pass : at.passes)
        numbers.emplace_back(std::to_string(pass));
    const Sentence passes = core::listed(numbers, numbers.size()), zones = zoneList(at.zones);
    if (at.zones.empty())
        return at.passes.size() == 1
                   ? core::says("Pins run short: all of pass %1 gets %2.", passes, dots)
                   : core::says("Pins run short: all of passes %1 gets %2.", passes, dots);
    if (at.passes.empty())
        return at.zones.size() == 1 ? core::says("Pins run short: zone %1 gets %2.", zones, dots)
                                    : core::says("Pins run short: zones %1 get %2.", zones, dots);
    return core::says("Pins run short: zones %1 and all of pass %2 get %3.", zones, passes, dots);
}

} // namespace

Findings adviceOnStandIns(const Session& session, const std::vector<QuiltPlan>& quilts,
                          std::int64_t have,
                          const std::function<bool(int quilt, const Zone&)>& counts) {
    std::int64_t pinned = 0, all = 0;
    std::vector<std::map<const Way*, Places>> instead(quilts.size());
    for (std::size_t q = 0; q < quilts.size(); ++q) {
        const Job& job = session.jobs[q];
        const Way& own = wayOf(job);
        std::map<int, std::set<const Way*>> ways; // by pass
        const auto ofQuilt = [&](const auto& take) {
            for (const Zone& z : quilts[q].zones)
                if (own.fromBox && !z.points.empty() && counts(static_cast<int>(q), z))
                    take(z, wayOf(job, z));
        };
        ofQuilt([&](const Zone& z, const Way& way) {
            ways[z.pass].insert(&way);
            all += std::ssize(z.points);
            pinned += &way == &own ? std::ssize(z.points) : 0;
        });
        ofQuilt([&](const Zone& z, const Way& way) {
            if (&way == &own)
                return;
            Places& at = instead[q][&way];
            at.points += std::ssize(z.points);
            if (ways[z.pass].size() > 1)
                at.zones.push_back(z.id);
            else if (at.passes.empty() || at.passes.back() != z.pass)
                at.passes.push_back(z.pass);
        });
    }
    const std::int64_t missing = all - std::max<std::int64_t>(0, have);
    Findings out;
    for (std::size_t q = 0; q < quilts.size(); ++q)
        for (const auto& [way, at] : instead[q])
            out.push_back(ofQuilt({Finding::Kind::dotsPlanned,
                                   Finding::Level::note,
                                   "/basting/where_short",
                                   said(at, way->words.count(at.points)),
                                   missing == 1 ? core::says("Or bring 1 pin more.")
                                                : core::says("Or bring %1 pins more.", missing),
                                   {},
                                   {static_cast<int>(at.points)}},
                                  static_cast<int>(q), session.severalQuilts));
    if (pinned <= have)
        return out;
    for (std::size_t q = 0; q < quilts.size(); ++q)
        for (Finding& f : againstStandIn(session.jobs[q], session)) {
            if (!isAboutPeople(f))
                f = ofQuilt(std::move(f), static_cast<int>(q), session.severalQuilts);
            if (std::ranges::find(out, f) == out.end())
                out.push_back(std::move(f));
        }
    return out;
}

Length spacingFor(Length spacing, std::int64_t taken, std::int64_t have) {
    const double factor = std::sqrt(double(taken) / double(have));
    return Length::nearestInches(std::ceil(spacing.in() * factor * 8) / 8);
}

} // namespace bastewright
