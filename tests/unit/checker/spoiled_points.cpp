#include "unit/checker/spoiled.h"

#include <algorithm>

namespace bastewright::testing {
namespace {

PlacedPoint& pointAt(Good& g, Length x, Length y) {
    for (Zone& z : g.quilt().zones)
        for (PlacedPoint& p : z.points)
            if (p.at == Point{x, y})
                return p;
    throw std::out_of_range("no point there");
}

void exchange(Good& g, Point a, Point b) {
    std::swap(pointAt(g, a.x, a.y), pointAt(g, b.x, b.y));
}

PointPattern wholeTop(Good& g) {
    PointPattern p;
    p.name = "whole top";
    p.tile = {48_in, 40_in};
    p.times = 1;
    for (const Zone& z : g.quilt().zones)
        p.points.insert(p.points.end(), z.points.begin(), z.points.end());
    return p;
}

/// 46 pins of the border lie an inch from its seam.
void askForMoreClearance(Good& g) {
    g.job().basting.clear = 1.25_in;
}

void confess(Good& g, const std::string& text) {
    g.plan.findings.push_back({Finding::Level::warn, "/basting/clear", text, ""});
}

} // namespace

std::vector<Spoiled> spoiledPoints() {
    return {
        {"APinIsMissing",
         {"points.coverage"},
         [](Good& g) { g.zone("p1.A3").points.erase(g.zone("p1.A3").points.begin() + 3); }},
        {"ACornerIsBare",
         {"points.coverage"},
         [](Good& g) { std::erase(g.zone("p2.B4").points, pointAt(g, 46.5_in, 39_in)); }},
        {"APinIsTooNearTheEdge",
         {"points.edge"},
         [](Good& g) { pointAt(g, 1_in, 20_in).at.x = 0.75_in; }},
        {"APinReachesTowardsTheEdge",
         {"points.edge"},
         [](Good& g) { pointAt(g, 1_in, 20_in).angle = 0; }},
        {"ADotIsBesideTheTop",
         {"points.edge", "points.zone"},
         [](Good& g) { pointAt(g, 1_in, 20_in).at.x = -0.5_in; },
         goodDots},
        {"PinsAreTooNearASeam", {"points.clearance"}, askForMoreClearance},
        {"FewerPinsNearSeamsAreOwnedUpToThanThereAre",
         {"points.clearance"},
         [](Good& g) {
             askForMoreClearance(g);
             confess(g, "45 pins lie less than 1 1/4 in from a seam.");
         }},
        {"TheNumberOwnedUpToIsPartOfAnother",
         {"points.clearance"},
         [](Good& g) {
             askForMoreClearance(g);
             confess(g, "146 pins lie less than 1 1/4 in from a seam.");
         }},
        {"PinsNearSeamsAreOwnedUpTo",
         {},
         [](Good& g) {
             askForMoreClearance(g);
             confess(g, "46 pins lie less than 1 1/4 in from a seam.");
         }},
        {"SeamsThatAreNotSewnNeedNoClearance",
         {},
         [](Good& g) {
             askForMoreClearance(g);
             g.job().quilting.method = Quilting::Method::freeMotion;
         }},
        {"DotsNeedNoClearance", {}, askForMoreClearance, goodDots},
        {"TwoPinsAreTooClose",
         {"points.apart"},
         [](Good& g) { pointAt(g, 3.5_in, 1_in).at.x = 3.25_in; }},
        {"TwoPinsAreTooCloseAsThePlanSays",
         {},
         [](Good& g) {
             pointAt(g, 3.5_in, 1_in).at.x = 3.25_in;
             g.plan.findings.push_back(
                 {Finding::Level::warn, "/basting/spacing", "No other way.", ""});
         }},
        {"OneOfTwoPinsThatAreTooCloseCanBeLeftOut",
         {"points.apart"},
         [](Good& g) {
             g.zone("p1.B2").points.push_back(g.zone("p1.B2").points.back());
             g.zone("p1.B2").points.back().at.x -= 0.25_in;
             g.plan.supplies.front().need += 2;
             g.plan.findings.push_back(
                 {Finding::Level::warn, "/basting/spacing", "No other way.", ""});
         }},
        {"APinPointsHalfATurnRound",
         {"points.angle"},
         [](Good& g) { pointAt(g, 3.5_in, 1_in).angle = 180; }},
        {"ADotHasADirection",
         {"points.angle"},
         [](Good& g) { pointAt(g, 3.5_in, 1_in).angle = 45; },
         goodDots},
        {"APinIsInAZoneOfAnotherPass",
         {"points.zone"},
         [](Good& g) {
             exchange(g, {7.5_in, 32_in}, {7.5_in, 36_in});
         }},
        {"APinIsInTheWrongZoneOfItsPass",
         {"points.zone"},
         [](Good& g) {
             exchange(g, {22.5_in, 12_in}, {25.5_in, 12_in});
         }},
        {"APatternMayBeTheWholeTop", {}, [](Good& g) { g.quilt().patterns = {wholeTop(g)}; }},
        {"APatternOccursNowhere",
         {"points.patterns"},
         [](Good& g) {
             g.quilt().patterns = {wholeTop(g)};
             g.quilt().patterns.front().times = 0;
         }},
        {"APatternHasAPointOutsideItsTile",
         {"points.patterns"},
         [](Good& g) {
             g.quilt().patterns = {wholeTop(g)};
             g.quilt().patterns.front().tile.width = 46_in;
         }},
        {"ThePatternsTellOfMorePointsThanThereAre",
         {"points.patterns"},
         [](Good& g) {
             g.quilt().patterns = {wholeTop(g)};
             g.quilt().patterns.front().times = 2;
         }},
        {"APatternLeavesAPointOut",
         {"points.patterns"},
         [](Good& g) {
             g.quilt().patterns = {wholeTop(g)};
             g.quilt().patterns.front().points.pop_back();
         }},
        {"TheBoundOfPointsIsNotKershners",
         {"points.bound"},
         [](Good& g) { g.quilt().bounds.points = 94; }},
    };
}

} // namespace bastewright::testing
