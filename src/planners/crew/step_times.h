#pragma once

#include "plan/plan.h"
#include "planners/crew/hands.h"
#include "ways/way.h"

#include <map>
#include <span>
#include <vector>

/// How long the steps of a pass take (docs/computation/crew.md, "Times"); src/plan/trade_times.h
/// has the figures. All in whole seconds, rounded up.
namespace bastewright::crew {

int wholeSeconds(double seconds);

/// By everybody who is there: the tables by the quickest, pins opened by all.
double setUpSeconds(std::span<const double> paces, std::size_t points, bool firstOnTheTable);
/// One of the three layers, by a team at the pace of its slowest.
double laySeconds(const Pass& pass, bool first, std::span<const double> paces);
/// One round of holds, shared by paces; lasts as long as the middle of the slowest. Of the people
/// given (quickest first) as many take part as make it shortest: `hands` says how many.
double holdSeconds(int holds, std::span<const double> paces, std::size_t& hands);
/// The same, asked again and again for people of whom the first are the same: remembers.
class HoldSeconds {
public:
    explicit HoldSeconds(int holds)
        : holds_{holds} {}
    double operator()(std::span<const double> paces, std::size_t& hands);

private:
    int holds_;
    std::map<std::vector<double>, double> known_; ///< by those who take part
};
double shiftSeconds(const Pass& into, std::span<const double> paces);
/// A step of a way of basting that is not of zones, at the pace of the slowest of a team.
double stepSeconds(const WayStep& step, const Pass& pass, std::span<const double> paces);
/// Turning over, and the slides home that follow it.
double turnSeconds(const QuiltPlan& quilt, std::span<const double> paces);
/// At the pace of the slowest of a team.
double together(double seconds, std::span<const double> paces);

/// Of one point of a zone.
double secondsAPoint(TaskKind kind);
/// Seconds of stepping up for each second of a call at pace 1, where every zone has as many points
/// as a zone may have.
double leastSteppingUp(TaskKind kind);

/// A zone by one person: so many points, of them so many reached by leaning.
double zoneSeconds(TaskKind kind, int points, int leaning, double pace);

/// Clamps and pieces of tape that hold the backing, and what is rolled beside them (a foot of a
/// roll takes as long as a clamp does in both rounds); only the clamps are moved to all three
/// layers.
int holdsOf(const Pass& pass);
int clampsOf(const Pass& pass);

} // namespace bastewright::crew
