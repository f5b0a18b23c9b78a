#include "unit/checker/spoiled.h"

#include <algorithm>

namespace bastewright::testing {
namespace {

/// The boundary between the first and the second pass lies elsewhere.
void moveBoundary(Good& g, Length y) {
    g.pass(1).fresh.parts.front().y1 = g.pass(2).fresh.parts.front().y0 = y;
    for (const char* id : {"p1.A3", "p1.B3"})
        g.zone(id).area.y1 = y;
    for (const char* id : {"p2.A4", "p2.B4"})
        g.zone(id).area.y0 = y;
}

/// Every point goes to the zone that it lies in.
void giveAnew(Good& g) {
    std::vector<PlacedPoint> all;
    for (Zone& z : g.quilt().zones) {
        all.insert(all.end(), z.points.begin(), z.points.end());
        z.points.clear();
    }
    for (const PlacedPoint& p : all)
        std::ranges::find_if(g.quilt().zones, [&](const Zone& z) {
            return z.area.contains(p.at);
        })->points.push_back(p);
}

void rename(Good& g, const std::string& zone, const std::string& to) {
    for (Pass& p : g.quilt().passes)
        std::ranges::replace(p.zones, zone, to);
    for (Task& t : g.plan.tasks)
        if (t.zone == zone)
            t.zone = to;
    g.zone(zone).id = to;
}

} // namespace

std::vector<Spoiled> spoiledPasses() {
    return {
        {"PassesAreMisnumbered",
         {{"passes.numbers", "passes.worth", "zones.pass", "crew.list", "crew.tasks"},
          "/passes/2/number"},
         [](Good& g) { g.pass(3).number = 4; }},
        {"TheNewAreasLeaveAHole",
         {{"passes.fresh", "zones.pass"}, "/passes"},
         [](Good& g) { g.pass(2).fresh.parts.front().y1 = 39_in; }},
        {"TheNewAreasOverlap",
         {{"holds.order", "passes.fresh", "passes.smoothing", "passes.touch"}, "/passes"},
         [](Good& g) { g.pass(2).fresh.parts.front().y0 = 28_in; }},
        {"ANewAreaDoesNotTouchABastedOne",
         {{"passes.fresh", "passes.touch", "passes.outward", "passes.smoothing", "zones.pass",
           "holds.count", "holds.order"},
          "/passes/2/fresh"},
         [](Good& g) { g.pass(2).fresh.parts.front().y0 = 30.5_in; }},
        {"TheFieldIsLargerThanTheTable",
         {{"passes.field"}, "/passes/1/field"},
         [](Good& g) { g.pass(2).field.y0 = 12_in; }},
        {"TheFieldIsOnlyAStrip",
         {{"passes.field"}, "/passes/1/field"},
         [](Good& g) { g.pass(2).field.y0 = 20_in; }},
        {"TheFieldBeginsWithinARollAgainstAWall",
         {{"passes.field"}, "/passes/2/field"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).field.y1 += 1_in;
         }},
        {"APointLiesBeyondTheField",
         {{"passes.field", "passes.ways"}, "/zones/4/points/14"},
         [](Good& g) { g.lay(2, 9_in); }},
        {"TheShiftPointsTheOtherWay",
         {{"passes.shift"}, "/passes/1/shift"},
         [](Good& g) { g.pass(2).shift.dy = 8_in; }},
        {"TheFirstPassIsShifted",
         {{"passes.shift", "passes.ways"}, "/passes/0/shift"},
         [](Good& g) { g.pass(1).shift.dx = 1_in; }},
        {"TheAnchorIsNotOnTheTable",
         {{"crew.times", "passes.anchor", "passes.ways", "supplies.enough"}, "/passes/1/table"},
         [](Good& g) { g.lay(2, 26_in); }},
        {"APassHasNoPoints",
         {{"passes.worth", "points.coverage", "crew.tasks"}, "/passes/1"},
         [](Good& g) {
             g.zone("p2.A4").points.clear();
             g.zone("p2.B4").points.clear();
         }},
        {"TheStartIsNotCentred",
         {{"crew.times", "passes.start", "passes.ways"}, "/passes/0/table"},
         [](Good& g) { g.lay(1, 4_in); }},
        {"TheStartIsNotAtAnEnd",
         {{"passes.start", "rolls.beyond"}, "/passes/0/fresh"},
         [](Good& g) { g.quilt().alternatives.front().start = Basting::Start::oneEnd; }},
        {"TheCentreIsNotARowInsideTheFirstArea",
         {{"passes.start", "crew.times", "holds.count", "holds.order"}, "/passes/0/fresh"},
         [](Good& g) {
             g.quilt().alternatives.front().start = Basting::Start::besideMiddle;
             moveBoundary(g, 21_in);
             giveAnew(g);
         }},
        {"TwoWaysAreChosen",
         {{"passes.alternatives"}, "/alternatives"},
         [](Good& g) { g.quilt().alternatives.push_back(g.quilt().alternatives.front()); }},
        {"TheChosenWayHasOtherPasses",
         {{"passes.alternatives"}, "/alternatives/0/passes"},
         [](Good& g) { g.quilt().alternatives.front().passes = 2; }},
        {"TheStartIsNotTheOneAskedFor",
         {{"passes.alternatives"}, "/alternatives/0/start"},
         [](Good& g) { g.job().basting.start = Basting::Start::besideMiddle; }},
        {"TheQuiltDoesNotLieAsAskedFor",
         {{"passes.alternatives"}, "/alternatives/0/quilt_length_along"},
         [](Good& g) {
             g.job().basting.along = g.quilt().surface.quiltLengthAlongLength
                                         ? Basting::Along::tableWidth
                                         : Basting::Along::tableLength;
         }},
        {"TheTablesDoNotStandAsAskedFor",
         {{"passes.alternatives"}, "/alternatives/0/surface"},
         [](Good& g) {
             g.session.setting.room.together = {g.quilt().surface.length,
                                                g.quilt().surface.width - 1_in};
         }},
        {"TheTablesDoNotStandAsAskedForAndAWarningSaysSo",
         {},
         [](Good& g) {
             g.session.setting.room.together = {g.quilt().surface.length,
                                                g.quilt().surface.width - 1_in};
             g.plan.findings.push_back(
                 {Finding::Kind::otherTables, Finding::Level::warn, "/room/together", "So.", ""});
         }},
        {"ALiftIsNotCounted",
         {{"passes.ways"}, "/alternatives/0/lifts"},
         [](Good& g) { g.quilt().alternatives.front().lifts = 1; }},
        {"TheLiftersAreNotAllCounted",
         {{"passes.ways"}, "/alternatives/0/lift_people"},
         [](Good& g) { g.quilt().alternatives.front().liftPeople = 1; }},
        {"TheLiftIsSaidToBeLighter",
         {{"passes.ways"}, "/alternatives/0/lift_kilograms"},
         [](Good& g) { g.quilt().alternatives.front().liftKilograms = 1; }},
        {"TheShiftsAreSaidToBeShorter",
         {{"passes.ways"}, "/alternatives/0/shifted"},
         [](Good& g) { g.quilt().alternatives.front().shifted = 16_in; }},
        {"TheLargestShiftIsSaidToBeSmaller",
         {{"passes.ways"}, "/alternatives/0/largest_shift"},
         [](Good& g) { g.quilt().alternatives.front().largestShift = 8_in; }},
        {"ADeeperReachIsNeededThanIsSaid",
         {{"passes.ways"}, "/alternatives/0/reach"},
         [](Good& g) { g.quilt().alternatives.front().reach = 12_in; }},
        {"TheStartIsSaidToLieBesideTheMiddleAndDoesNot",
         {{"passes.ways"}, "/alternatives/0/off_centre"},
         [](Good& g) {
             g.quilt().alternatives.front().offCentre = {0_in, 2_in};
         }},
        {"APullIsCountedThatIsNotThere",
         {{"passes.alternatives"}, "/alternatives/0/pulls"},
         [](Good& g) { g.quilt().alternatives.front().pulls = 1; }},
        {"TheBoundIsMoreThanThePlan",
         {{"passes.alternatives"}, "/bounds/passes"},
         [](Good& g) { g.quilt().bounds.passes = 4; }},
        {"ItIsSmoothedTowardsTheBastedArea",
         {{"passes.smoothing"}, "/passes/1/smooth_towards"},
         [](Good& g) { g.pass(2).smoothTowards.push_back(Side::head); }},
        {"ItIsNotSmoothedTowardsAnOpenSide",
         {{"passes.smoothing"}, "/passes/1/smooth_towards"},
         [](Good& g) { g.pass(2).smoothTowards.pop_back(); }},
        {"TwoPeopleLiftFiftyKilograms",
         {{"passes.lift", "passes.ways"}, "/passes/1/lift_kilograms"},
         [](Good& g) { g.pass(2).liftKilograms = 50; }},
    };
}

std::vector<Spoiled> spoiledZones() {
    return {
        {"TheZonesLeaveAHole",
         {{"zones.partition", "points.zone"}, "/zones"},
         [](Good& g) { g.zone("p1.A2").area.x1 = 22_in; }},
        {"AZoneIsMisnamed",
         {{"zones.names"}, "/zones/0/id"},
         [](Good& g) { rename(g, "p1.A2", "C2"); }},
        {"AZoneIsNotListedInItsPass",
         {{"zones.pass"}, "/passes/0/zones"},
         [](Good& g) { std::erase(g.pass(1).zones, "p1.A2"); }},
        {"AZoneIsListedTwice",
         {{"zones.pass"}, "/passes/1/zones"},
         [](Good& g) { g.pass(2).zones.push_back("p1.A2"); }},
        {"APassListsAZoneThatIsNotThere",
         {{"zones.pass"}, "/passes/1/zones/2"},
         [](Good& g) { g.pass(2).zones.push_back("A9"); }},
        {"NobodyReachesTheMiddle",
         {{"zones.reach", "crew.reach"}, "/zones/0"},
         [](Good& g) {
             for (Helper& h : g.session.setting.helpers) {
                 h.reach = 8_in;
                 h.lean = 1_in;
             }
         }},
        {"WallsAllRound",
         {{"zones.reach", "rolls.beyond", "crew.places"}, "/zones/0"},
         [](Good& g) {
             g.session.setting.room.walls = {kSides.begin(), kSides.end()};
             g.quilt().surface.closed = g.session.setting.room.walls;
         }},
        {"AZoneIsSaidToBeBastedAsItsQuiltIs",
         {{"zones.with"}, "/zones/0/with"},
         [](Good& g) { g.quilt().zones.front().with = Basting::With::pins; }},
        {"DotsThatNobodyAskedFor",
         {{"zones.with", "crew.tasks"}, "/zones/0/with"},
         [](Good& g) { g.quilt().zones.front().with = Basting::With::dots; }},
        {"PinsAreMissingThatDotsMayStandInFor",
         {{"zones.short", "plan.findings", "supplies.enough"}, "/zones"},
         [](Good& g) {
             g.job().basting.whereShort = Basting::With::dots;
             g.session.setting.room.irons = 1;
             g.session.setting.stash.pins = 100;
         }},
    };
}

} // namespace bastewright::testing
