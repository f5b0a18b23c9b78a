#include "planners/points/report.h"

#include "planners/points/buckets.h"
#include "planners/points/holes.h"
#include "ways/way.h"

#include <cmath>

namespace bastewright::points {
namespace {

Sentence place(Spot at, Unit unit) {
    return core::says("%1 across and %2 down", core::length(Length::nearestInches(at.x), unit),
                      core::length(Length::nearestInches(at.y), unit));
}

/// The first three places.
Sentence places(const Spots& at, Unit unit) {
    Sentence out = place(at[0], unit);
    for (std::size_t i = 1; i < std::min<std::size_t>(3, at.size()); ++i)
        out = core::says("%1; %2", std::move(out), place(at[i], unit));
    return at.size() > 3 ? core::says("%1 and others", std::move(out)) : out;
}

} // namespace

void report(PointsPlan& plan, const Job& job, const Rules& rules, const Spots& spots) {
    const Way& way = wayOf(job);
    Spots crowded, outside;
    double least = rules.pin.clear();
    for (const Spot s : spots) {
        if (rules.pin.angleAt(s))
            continue;
        const auto room = rules.pin.mostRoom(s);
        if (room.room < 0) {
            outside.push_back(s);
            continue;
        }
        crowded.push_back(s);
        least = std::min(least, room.room);
    }
    const auto length = [&](Length l) { return core::length(l, job.unit); };
    const Sentence nearest = length(Length::nearestInches(std::floor(least * 8 + 1e-6) / 8));
    if (!crowded.empty())
        plan.findings.push_back(
            {Finding::Kind::pinsNearSeams,
             Finding::Level::warn,
             "/basting/clear",
             crowded.size() == 1
                 ? core::says("1 pin lies nearer than %1 to a seam that is quilted along, for want "
                              "of room: %2. It is %3 from the seam.",
                              length(job.basting.clear), places(crowded, job.unit), nearest)
                 : core::says(
                       "%4 pins lie nearer than %1 to a seam that is quilted along, for want of "
                       "room: %2. The nearest is %3 from a seam.",
                       length(job.basting.clear), places(crowded, job.unit), nearest,
                       crowded.size()),
             core::says("Remove these pins before the needle comes to them, or use shorter "
                        "pins."),
             {},
             {int(crowded.size())}});
    if (!outside.empty())
        plan.findings.push_back(
            {Finding::Kind::pinsNearEdge,
             Finding::Level::warn,
             "/basting/edge",
             outside.size() == 1
                 ? core::says("The edge of the top cannot be held from %1 inside it; %2 lies "
                              "nearer: %3.",
                              length(job.basting.edge), way.words.count(1),
                              places(outside, job.unit))
                 : core::says("The edge of the top cannot be held from %1 inside it; %2 lie "
                              "nearer: %3.",
                              length(job.basting.edge),
                              way.words.count(std::int64_t(outside.size())),
                              places(outside, job.unit)),
             way.fromBox ? core::says("Allow pins nearer to the edge, or a shorter pin.")
                         : core::says("Allow them nearer to the edge."),
             {},
             {int(outside.size())}});
    if (rules.pin.edge() < job.basting.edge.in() - 1e-6 && !way.point.isPatch())
        plan.findings.push_back(
            {Finding::Kind::edgeGivesWay, Finding::Level::warn, "/basting/edge",
             core::says(
                 "%1 lying %2 inside the edge cannot hold the corners at a spacing of %3; they "
                 "lie from %4 inside it.",
                 way.words.heading, length(job.basting.edge), length(job.basting.spacing),
                 length(Length::nearestInches(rules.pin.edge()))),
             core::says("Allow them nearer to the edge, or a wider spacing.")});
    Spots crowd;
    Buckets near{rules.top(), rules.spacing};
    for (std::size_t i = 0; i < spots.size(); ++i) {
        if (near.anyNear(spots[i], rules.gap - 1e-6, [](int, Spot) { return true; }))
            crowd.push_back(spots[i]);
        near.add(static_cast<int>(i), spots[i]);
    }
    if (!crowd.empty())
        plan.findings.push_back(
            {Finding::Kind::pinsCrowded, Finding::Level::warn, "/basting/spacing",
             core::says("There is little room between seams, so some pins or dots stand closer "
                        "together than half the spacing: %1. It does no harm.",
                        places(crowd, job.unit)),
             core::says("Leave one out by eye, or allow pins nearer to seams.")});
    if (const Spots open = holes(spots, rules.top(), rules.radius + 1.0 / 64); !open.empty())
        plan.findings.push_back(
            {Finding::Kind::placesOpen, Finding::Level::warn, "/basting/spacing",
             core::says("Some places are farther from a pin or dot than the spacing allows: %1.",
                        places(open, job.unit)),
             core::says("Add one there by eye.")});
}

} // namespace bastewright::points
