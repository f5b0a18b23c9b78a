#include "unit/checker/spoiled.h"

#include <algorithm>
#include <map>
#include <set>

namespace bastewright::testing {
namespace {

/// Every point in one row of two ribbons, as far as the sides' rows go.
void tellByRows(Good& g) {
    PinRows rows;
    std::map<Length, std::vector<Length>> lines;
    for (const Zone& z : g.quilt().zones)
        for (const PlacedPoint& p : z.points)
            lines[p.at.y].push_back(p.at.x);
    std::set<Length> odd, even;
    for (auto& [at, places] : lines) {
        std::ranges::sort(places);
        (rows.lines.size() % 2 == 0 ? odd : even).insert(places.begin(), places.end());
        rows.ribbons.side.push_back(at);
        rows.lines.push_back({at, places, {}});
    }
    rows.ribbons.odd = {odd.begin(), odd.end()};
    rows.ribbons.even = {even.begin(), even.end()};
    rows.gap = 4_in;
    rows.step = 4_in;
    rows.slack = 0.125_in;
    g.quilt().rows = rows;
}

} // namespace

std::vector<Spoiled> spoiledFigures() {
    return {
        {"LengthsAreSaidToBeInAnotherUnit",
         {{"plan.unit", "supplies.enough"}, "/unit"},
         [](Good& g) { g.plan.unit = Unit::centimetre; }},
        {"TheQuiltHasAnotherName",
         {{"plan.names"}, "/name"},
         [](Good& g) { g.quilt().name = "Tide"; }},
        {"TheTopIsSaidToBeSmaller",
         {{"layers.top"}, "/layers/top"},
         [](Good& g) { g.quilt().layers.top.width = 47_in; }},
        {"JointsAreSaidOfOneTable",
         {{"plan.findings"}, "/findings/0"},
         [](Good& g) {
             g.plan.findings = {{Finding::Kind::tableJoints, Finding::Level::note, "/room/tables",
                                 "Cover the joints.", ""}};
             g.plan.findings.front().quilt = 0;
         }},
        {"MoreThanHalfLiesOnTheTableAndItIsSaidToHang",
         {{"plan.findings"}, "/findings/0"},
         [](Good& g) {
             g.plan.findings = {{Finding::Kind::hangs, Finding::Level::note, "/room/tables",
                                 "In pass 1, 60 % of the quilt hangs from the table.", ""}};
             g.plan.findings.front().quilt = 0;
         }},
        {"ThereIsABackingAndItsFabricIsSaidToBeShort",
         {{"plan.findings"}, "/findings/0"},
         [](Good& g) {
             g.plan.findings = {{Finding::Kind::fabricShort, Finding::Level::stop,
                                 "/backing/fabrics", "There is no way.", ""}};
             g.plan.findings.front().quilt = 0;
         }},
        {"AFindingIsGraverThanItsKind",
         {{"plan.findings"}, "/findings/0/level"},
         [](Good& g) {
             g.plan.findings = {{Finding::Kind::piecesUnused, Finding::Level::warn,
                                 "/batting/pieces", "One is left.", ""}};
             g.plan.findings.front().quilt = 0;
         }},
        {"OffTheWallHelpsWhereThereIsNone",
         {{"plan.help"}, "/help/0/kind"},
         [](Good& g) {
             g.plan.help = {{Help::Kind::offTheWall, "Move it.", Seconds{120}, 0}};
         }},
        {"HelpIsNotRanked",
         {{"plan.help"}, "/help/1/saved"},
         [](Good& g) {
             g.plan.help = {{Help::Kind::table, "A table.", Seconds{120}, 0},
                            {Help::Kind::helper, "A helper.", Seconds{180}, 0}};
         }},
        {"HelpIsRanked",
         {},
         [](Good& g) {
             g.plan.help = {{Help::Kind::helper, "A helper.", Seconds{180}, 0},
                            {Help::Kind::table, "A table.", Seconds{120}, 0}};
         },
         [] { return goodPlan(); },
         {"plan.help"}},
        {"AWayOfAnotherRoom",
         {{"passes.listed"}, "/alternatives/1"},
         [](Good& g) {
             Alternative other = g.quilt().alternatives.front();
             other.chosen = false;
             other.surfaceLength = 90_in;
             g.quilt().alternatives.push_back(other);
         }},
        {"AWayWithShiftsLongerThanAllOfThem",
         {{"passes.listed"}, "/alternatives/1"},
         [](Good& g) {
             Alternative other = g.quilt().alternatives.front();
             other.chosen = false;
             other.largestShift = 25_in;
             g.quilt().alternatives.push_back(other);
         }},
        {"AWayIsListedTwice",
         {{"passes.listed"}, "/alternatives/1"},
         [](Good& g) {
             Alternative again = g.quilt().alternatives.front();
             again.chosen = false;
             g.quilt().alternatives.push_back(again);
         }},
        {"NothingTellsWhereThePointsGo",
         {{"points.told"}, "/rows"},
         [](Good& g) { g.job().basting.layout.reset(); }},
        {"RowsAreTold", {}, tellByRows, [] { return goodPlan(); }, {"points.gaps", "points.told"}},
        {"RowsAreSaidToLieFartherApart",
         {{"points.gaps"}, "/rows/gap"},
         [](Good& g) {
             tellByRows(g);
             g.quilt().rows->gap = 5_in;
         }},
        {"ForTheMachineItIsRolledFromItsShorterSides",
         {{"rolls.machine"}, "/machine_rolls"},
         [](Good& g) { g.quilt().machineRolls.front().side = Side::left; }},
        {"TheBackingWastesNothing",
         {{"backing.listed"}, "/backing/alternatives/0/waste"},
         [](Good& g) { g.quilt().backing->alternatives.front().waste = 0; }},
        {"TheChosenBackingLiesTheOtherWay",
         {{"backing.listed"}, "/backing/alternatives/0/direction"},
         [](Good& g) { g.quilt().backing->alternatives.front().along = false; }},
        {"CutsAreOutOfTurn",
         {{"backing.order"}, "/backing/cuts/2"},
         [](Good& g) { std::swap(g.quilt().backing->cuts[1], g.quilt().backing->cuts[2]); }},
        {"TheBattingIsSaidToBeAPack",
         {{"batting.listed"}, "/batting/pack"},
         [](Good& g) { g.quilt().batting->pack = "crib"; }},
        {"SomebodyHasAPlaceTheyDoNotWorkFrom",
         {{"crew.letters"}, "/passes/0/stretches/0/edges"},
         [](Good& g) { g.pass(1).stretches.front().edges.front().along.lo = 1_in; }},
        {"TwoHaveTheLettersOfEachOthersPlaces",
         {{"crew.letters"}, "/passes/1/stretches/0"},
         [](Good& g) {
             auto& all = g.pass(2).stretches;
             std::swap(all[0].person, all[1].person);
         }},
        {"ATaskDoesNotWaitForAllOfTheCallBefore",
         {{"crew.waits"}, "/tasks/10/after"},
         [](Good& g) { g.task("1.1 smooth").after.pop_back(); }},
        {"ATaskLastsLongerThanItsWork",
         {{"crew.lengths"}, "/tasks/40/end"},
         [](Good& g) {
             g.task("1.3 hand-over").end += Seconds{30};
             g.reorder();
         }},
        {"SettingUpTakesTooLong",
         {{"crew.setup"}, "/tasks/0/end"},
         [](Good& g) {
             for (Task& t : g.plan.tasks) {
                 t.start += Seconds{t.kind == TaskKind::setUp ? 0 : 60};
                 t.end += Seconds{60};
             }
             g.reorder();
         }},
        {"TheFinishLiesOutsideItsRange",
         {{"crew.range"}, "/finish_range"},
         [](Good& g) { g.plan.range.early = g.plan.finish * 3; }},
        {"ABreakThatNobodyHasToldOf",
         {{"crew.pauses"}, "/breaks/0"},
         [](Good& g) {
             g.plan.breaks = {{g.plan.finish, g.plan.finish + Seconds{600}, false, {}}};
         }},
        {"ThingsAreBroughtThatNobodyUses",
         {{"supplies.needed"}, "/supplies/8"},
         [](Good& g) { ++g.plan.supplies.back().need, ++g.plan.supplies.back().buy; }},
    };
}

} // namespace bastewright::testing
