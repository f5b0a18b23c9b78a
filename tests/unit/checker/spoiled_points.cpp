#include "unit/checker/spoiled.h"

#include <algorithm>
#include <map>
#include <set>

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

/// The good plan's pins, told by their rows.
PinRows inRows(Good& g) {
    std::map<Length, std::set<Length>> rows;
    for (const Zone& z : g.quilt().zones)
        for (const PlacedPoint& p : z.points)
            rows[p.at.y].insert(p.at.x);
    PinRows out;
    std::set<Length> marks[2];
    for (const auto& [y, xs] : rows)
        marks[out.lines.size() % 2].insert(xs.begin(), xs.end()),
            out.lines.push_back({y, {xs.begin(), xs.end()}, {}});
    out.ribbons.odd.assign(marks[0].begin(), marks[0].end());
    out.ribbons.even.assign(marks[1].begin(), marks[1].end());
    for (const PinRow& row : out.lines)
        out.ribbons.side.push_back(row.at);
    out.gap = out.step = 4_in;
    // No place is farther than 2 in across and along from a pin: √8 in, where 4/√2 + 1/8 are asked.
    out.slack = 0.125_in;
    return out;
}

/// Told by rows, and something changed.
template <class Change>
auto told(Change change) {
    return [change](Good& g) {
        g.quilt().rows = inRows(g);
        change(*g.quilt().rows);
    };
}

/// 46 pins of the border lie an inch from its seam.
void askForMoreClearance(Good& g) {
    g.job().basting.clear = 1.25_in;
}

void confess(Good& g, int pins) {
    g.plan.findings.push_back({Finding::Kind::pinsNearSeams,
                               Finding::Level::warn,
                               "/basting/clear",
                               "Seams leave no room.",
                               "",
                               {},
                               {pins}});
}

} // namespace

std::vector<Spoiled> spoiledPoints() {
    return {
        {"NothingTellsOfTheBandsThatAreSprayed",
         {{"points.sprayed"}, "/rows"},
         [](Good& g) { g.quilt().rows.reset(); },
         goodSpray},
        {"BandsAreTooNarrowToMeet",
         {{"points.sprayed", "points.slack", "points.bound", "passes.field"},
          "/rows/lines/0/places"},
         [](Good& g) { g.job().basting.spacing = 11.5_in; },
         goodSpray},
        {"NothingIsSaidOfARoomWithoutAir",
         {{"plan.findings"}, "/findings"},
         [](Good& g) { g.session.setting.room.ventilated = false; },
         goodSpray},
        {"NothingIsSaidOfTroubleBreathing",
         {{"plan.findings"}, "/findings"},
         [](Good& g) { g.session.setting.helpers.front().troubleBreathing = true; },
         goodSpray},
        {"PinsAreSaidToWantAir",
         {{"plan.findings"}, "/findings/0"},
         [](Good& g) {
             g.plan.findings = {{Finding::Kind::notVentilated, Finding::Level::stop,
                                 "/room/ventilated", "Open.", ""}};
             g.plan.findings.front().quilt = 0;
         }},
        {"OneCanTooFew",
         {{"supplies.needed"}, "/supplies"},
         [](Good& g) {
             std::erase_if(g.plan.supplies,
                           [](const Supply& s) { return s.kind == Supply::Kind::sprayCans; });
         },
         goodSpray},
        {"NobodyWaitsForTheSprayToSet",
         {{"crew.cooled", "crew.lengths", "crew.times"}, "/tasks/11/end"},
         [](Good& g) {
             for (Task& t : g.plan.tasks)
                 if (t.kind == TaskKind::settle && t.pass == 1)
                     t.end = t.start + Seconds{30};
         },
         goodSpray},
        {"AStitchLiesAcrossItsRow",
         {{"points.sewn"}, "/zones/2/points/7/angle"},
         [](Good& g) { pointAt(g, 22.75_in, 20_in).angle = 90; },
         goodThread},
        {"AStitchLiesAslant",
         {{"points.angle", "points.sewn"}, "/zones/2/points/7/angle"},
         [](Good& g) { pointAt(g, 22.75_in, 20_in).angle = 45; },
         goodThread},
        {"AStitchReachesTowardsTheEdge",
         {{"points.edge", "points.rows"}, "/zones/2/points/0"},
         [](Good& g) { pointAt(g, 1.75_in, 20_in).at.x = 1.5_in; },
         goodThread},
        {"NothingTellsOfTheRowsThatAreSewn",
         {{"points.sewn"}, "/rows"},
         [](Good& g) { g.quilt().rows.reset(); },
         goodThread},
        {"RowsAreSewnTooFarApart",
         {{"points.sewn", "points.slack", "points.bound"}, "/rows/lines"},
         [](Good& g) { g.job().basting.spacing = 3.75_in; },
         goodThread},
        {"APinIsMissing",
         {{"points.coverage"}, "/zones"},
         [](Good& g) { g.zone("p1.A3").points.erase(g.zone("p1.A3").points.begin() + 3); }},
        {"ACornerIsBare",
         {{"points.coverage"}, "/zones"},
         [](Good& g) { std::erase(g.zone("p2.B4").points, pointAt(g, 46.5_in, 39_in)); }},
        {"APinIsTooNearTheEdge",
         {{"points.edge"}, "/zones/2/points/0"},
         [](Good& g) { pointAt(g, 1_in, 20_in).at.x = 0.75_in; }},
        {"APinReachesTowardsTheEdge",
         {{"points.edge"}, "/zones/2/points/0"},
         [](Good& g) { pointAt(g, 1_in, 20_in).angle = 0; }},
        {"ADotIsBesideTheTop",
         {{"points.edge", "points.zone", "passes.field"}, "/zones/2/points/0"},
         [](Good& g) { pointAt(g, 1_in, 20_in).at.x = -0.5_in; },
         goodDots},
        {"PinsAreTooNearASeam", {{"points.clearance"}, "/zones/0/points/0"}, askForMoreClearance},
        {"FewerPinsNearSeamsAreOwnedUpToThanThereAre",
         {{"points.clearance"}, "/zones/0/points/0"},
         [](Good& g) {
             askForMoreClearance(g);
             confess(g, 45);
         }},
        {"MorePinsNearSeamsAreOwnedUpToThanThereAre",
         {{"points.clearance"}, "/zones/0/points/0"},
         [](Good& g) {
             askForMoreClearance(g);
             confess(g, 47);
         }},
        {"PinsNearSeamsAreOwnedUpTo",
         {},
         [](Good& g) {
             askForMoreClearance(g);
             confess(g, 46);
         }},
        {"SeamsThatAreNotSewnNeedNoClearance",
         {},
         [](Good& g) {
             askForMoreClearance(g);
             g.job().quilting.method = Quilting::Method::freeMotion;
         }},
        {"DotsNeedNoClearance", {}, askForMoreClearance, goodDots},
        {"TwoPinsAreTooClose",
         {{"points.apart"}, "/zones/6/points/1"},
         [](Good& g) { pointAt(g, 3.5_in, 1_in).at.x = 3.25_in; }},
        {"TwoPinsAreTooCloseAsThePlanSays",
         {},
         [](Good& g) {
             pointAt(g, 3.5_in, 1_in).at.x = 3.25_in;
             g.plan.findings.push_back({Finding::Kind::pinsCrowded, Finding::Level::warn,
                                        "/basting/spacing", "No other way.", ""});
         }},
        {"OneOfTwoPinsThatAreTooCloseCanBeLeftOut",
         {{"crew.times", "points.apart", "points.zone"}, "/zones/1/points/13"},
         [](Good& g) {
             g.zone("p1.B2").points.push_back(g.zone("p1.B2").points.back());
             g.zone("p1.B2").points.back().at.x -= 0.25_in;
             g.plan.supplies.front().need += 2;
             g.plan.findings.push_back({Finding::Kind::pinsCrowded, Finding::Level::warn,
                                        "/basting/spacing", "No other way.", ""});
         }},
        {"APinPointsHalfATurnRound",
         {{"points.angle"}, "/zones/6/points/1/angle"},
         [](Good& g) { pointAt(g, 3.5_in, 1_in).angle = 180; }},
        {"ADotHasADirection",
         {{"points.angle"}, "/zones/6/points/1/angle"},
         [](Good& g) { pointAt(g, 3.5_in, 1_in).angle = 45; },
         goodDots},
        {"APinIsInAZoneOfAnotherPass",
         {{"points.zone"}, "/zones/4/points/2"},
         [](Good& g) {
             exchange(g, {7.5_in, 28_in}, {7.5_in, 32_in});
         }},
        {"APinIsInTheWrongZoneOfItsPass",
         {{"points.zone"}, "/zones/0/points/6"},
         [](Good& g) {
             exchange(g, {22.5_in, 12_in}, {25.5_in, 12_in});
         }},
        {"PinsMayBeToldByTheirRows",
         {},
         told([](PinRows&) {}),
         [] { return goodPlan(); },
         {"points.gaps", "points.told"}},
        {"APinMayLieBesideItsMark", {}, told([](PinRows& r) {
             PinRow& row = r.lines[2];
             row.aside = {{row.places[3], {row.places[3], row.at}}};
         })},
        {"APinBesideItsMarkIsElsewhere", {{"points.rows"}, "/rows"}, told([](PinRows& r) {
             PinRow& row = r.lines[2];
             row.aside = {{row.places[3], {row.places[3] + 0.5_in, row.at}}};
         })},
        {"PointsGoByBlocksOfAnotherSize",
         {{"points.blocks"}, "/blocks/block"},
         [](Good& g) { g.quilt().blocks.emplace().block = 3_in; }},
        {"ARowLeavesAPinOut", {{"points.rows"}, "/rows"}, told([](PinRows& r) {
             r.lines[1].places.pop_back();
         })},
        {"ASinglePinMakesUpForIt", {}, told([](PinRows& r) {
             r.singles = {{r.lines[1].places.back(), r.lines[1].at}};
             r.lines[1].places.pop_back();
         })},
        {"ASinglePinIsToldThatNoZoneHas", {{"points.rows"}, "/rows"}, told([](PinRows& r) {
             r.singles = {{20_in, 20.125_in}};
         })},
        {"ARowLiesBesideItsMark", {{"points.rows"}, "/rows/lines/1/at"}, told([](PinRows& r) {
             r.ribbons.side[1] += 0.125_in;
         })},
        {"ARibbonLacksAMark", {{"points.rows"}, "/rows/lines/2/places/13"}, told([](PinRows& r) {
             r.ribbons.odd.pop_back();
         })},
        {"ARibbonRunsBackwards", {{"points.rows"}, "/rows/ribbons/even/1"}, told([](PinRows& r) {
             std::swap(r.ribbons.even[0], r.ribbons.even[1]);
         })},
        {"HandsMayNotBeOffSoFar", {{"points.slack"}, "/rows/slack"}, told([](PinRows& r) {
             r.slack = 2_in;
         })},
        {"TheBoundOfPointsIsNotKershners",
         {{"points.bound"}, "/bounds/points"},
         [](Good& g) { g.quilt().bounds.points = 94; }},
    };
}

} // namespace bastewright::testing
