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
         {"passes.numbers", "passes.worth", "zones.pass", "crew.list", "crew.tasks"},
         [](Good& g) { g.pass(3).number = 4; }},
        {"TheNewAreasLeaveAHole",
         {"passes.fresh", "zones.pass"},
         [](Good& g) { g.pass(2).fresh.parts.front().y1 = 39_in; }},
        {"TheNewAreasOverlap",
         {"holds.order", "passes.fresh", "passes.smoothing", "passes.touch"},
         [](Good& g) { g.pass(2).fresh.parts.front().y0 = 28_in; }},
        {"ANewAreaDoesNotTouchABastedOne",
         {"passes.fresh", "passes.touch", "passes.outward", "passes.smoothing", "zones.pass",
          "holds.count", "holds.order"},
         [](Good& g) { g.pass(2).fresh.parts.front().y0 = 30.5_in; }},
        {"TheFieldIsLargerThanTheTable",
         {"passes.field"},
         [](Good& g) { g.pass(2).field.y0 = 12_in; }},
        {"TheFieldIsOnlyAStrip", {"passes.field"}, [](Good& g) { g.pass(2).field.y0 = 20_in; }},
        {"TheFieldBeginsWithinARollAgainstAWall",
         {"passes.field"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).field.y1 += 1_in;
         }},
        {"APointLiesBeyondTheField",
         {"passes.field", "passes.ways"},
         [](Good& g) { g.lay(2, 9_in); }},
        {"TheShiftPointsTheOtherWay", {"passes.shift"}, [](Good& g) { g.pass(2).shift.dy = 8_in; }},
        {"TheFirstPassIsShifted",
         {"passes.shift", "passes.ways"},
         [](Good& g) { g.pass(1).shift.dx = 1_in; }},
        {"TheAnchorIsNotOnTheTable",
         {"crew.times", "passes.anchor", "passes.ways", "supplies.enough"},
         [](Good& g) { g.lay(2, 26_in); }},
        {"APassHasNoPoints",
         {"passes.worth", "points.coverage", "crew.tasks"},
         [](Good& g) {
             g.zone("p2.A4").points.clear();
             g.zone("p2.B4").points.clear();
         }},
        {"TheStartIsNotCentred",
         {"crew.times", "passes.start", "passes.ways"},
         [](Good& g) { g.lay(1, 4_in); }},
        {"TheStartIsNotAtAnEnd",
         {"passes.start", "rolls.beyond"},
         [](Good& g) { g.quilt().alternatives.front().start = Basting::Start::oneEnd; }},
        {"TheCentreIsNotARowInsideTheFirstArea",
         {"passes.start", "crew.times", "holds.count", "holds.order"},
         [](Good& g) {
             g.quilt().alternatives.front().start = Basting::Start::besideMiddle;
             moveBoundary(g, 21_in);
             giveAnew(g);
         }},
        {"TwoWaysAreChosen",
         {"passes.alternatives"},
         [](Good& g) { g.quilt().alternatives.push_back(g.quilt().alternatives.front()); }},
        {"TheChosenWayHasOtherPasses",
         {"passes.alternatives"},
         [](Good& g) { g.quilt().alternatives.front().passes = 2; }},
        {"TheStartIsNotTheOneAskedFor",
         {"passes.alternatives"},
         [](Good& g) { g.job().basting.start = Basting::Start::besideMiddle; }},
        {"TheQuiltDoesNotLieAsAskedFor",
         {"passes.alternatives"},
         [](Good& g) {
             g.job().basting.along = g.quilt().surface.quiltLengthAlongLength
                                         ? Basting::Along::tableWidth
                                         : Basting::Along::tableLength;
         }},
        {"TheTablesDoNotStandAsAskedFor",
         {"passes.alternatives"},
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
         {"passes.ways"},
         [](Good& g) { g.quilt().alternatives.front().lifts = 1; }},
        {"TheLiftersAreNotAllCounted",
         {"passes.ways"},
         [](Good& g) { g.quilt().alternatives.front().liftPeople = 1; }},
        {"TheLiftIsSaidToBeLighter",
         {"passes.ways"},
         [](Good& g) { g.quilt().alternatives.front().liftKilograms = 1; }},
        {"TheShiftsAreSaidToBeShorter",
         {"passes.ways"},
         [](Good& g) { g.quilt().alternatives.front().shifted = 16_in; }},
        {"TheLargestShiftIsSaidToBeSmaller",
         {"passes.ways"},
         [](Good& g) { g.quilt().alternatives.front().largestShift = 8_in; }},
        {"ADeeperReachIsNeededThanIsSaid",
         {"passes.ways"},
         [](Good& g) { g.quilt().alternatives.front().reach = 12_in; }},
        {"TheStartIsSaidToLieBesideTheMiddleAndDoesNot",
         {"passes.ways"},
         [](Good& g) {
             g.quilt().alternatives.front().offCentre = {0_in, 2_in};
         }},
        {"APullIsCountedThatIsNotThere",
         {"passes.alternatives"},
         [](Good& g) { g.quilt().alternatives.front().pulls = 1; }},
        {"TheBoundIsMoreThanThePlan",
         {"passes.alternatives"},
         [](Good& g) { g.quilt().bounds.passes = 4; }},
        {"ItIsSmoothedTowardsTheBastedArea",
         {"passes.smoothing"},
         [](Good& g) { g.pass(2).smoothTowards.push_back(Side::head); }},
        {"ItIsNotSmoothedTowardsAnOpenSide",
         {"passes.smoothing"},
         [](Good& g) { g.pass(2).smoothTowards.pop_back(); }},
        {"TwoPeopleLiftFiftyKilograms",
         {"passes.lift", "passes.ways"},
         [](Good& g) { g.pass(2).liftKilograms = 50; }},
    };
}

std::vector<Spoiled> spoiledZones() {
    return {
        {"TheZonesLeaveAHole",
         {"zones.partition", "points.zone"},
         [](Good& g) { g.zone("p1.A2").area.x1 = 22_in; }},
        {"AZoneIsMisnamed", {"zones.names"}, [](Good& g) { rename(g, "p1.A2", "C2"); }},
        {"AZoneIsNotListedInItsPass",
         {"zones.pass"},
         [](Good& g) { std::erase(g.pass(1).zones, "p1.A2"); }},
        {"AZoneIsListedTwice", {"zones.pass"}, [](Good& g) { g.pass(2).zones.push_back("p1.A2"); }},
        {"APassListsAZoneThatIsNotThere",
         {"zones.pass"},
         [](Good& g) { g.pass(2).zones.push_back("A9"); }},
        {"NobodyReachesTheMiddle",
         {"zones.reach", "crew.reach"},
         [](Good& g) {
             for (Helper& h : g.session.setting.helpers) {
                 h.reach = 8_in;
                 h.lean = 1_in;
             }
         }},
        {"WallsAllRound",
         {"zones.reach", "rolls.beyond", "crew.places"},
         [](Good& g) {
             g.session.setting.room.walls = {kSides.begin(), kSides.end()};
             g.quilt().surface.closed = g.session.setting.room.walls;
         }},
    };
}

} // namespace bastewright::testing
