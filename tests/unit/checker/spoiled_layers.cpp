#include "unit/checker/spoiled.h"

namespace bastewright::testing {
namespace {

/// The backing turns out to be so long once it is made; the plan follows it.
void measureBacking(Good& g, Length length) {
    g.job().backing.length = length;
    g.quilt().layers.backing.length = length;
    g.quilt().backing.reset();
    g.lay();
}

} // namespace

std::vector<Spoiled> spoiledLayers() {
    return {
        {"AQuiltIsMissing",
         {{"plan.quilts"}, "/quilts"},
         [](Good& g) { g.session.jobs.push_back(g.job()); }},
        {"TheTopIsNotItsLargestReading",
         {{"layers.top"}, "/layers/top"},
         [](Good& g) { g.quilt().layers.top.width = 47_in; }},
        {"TheBattingHasLessThanItsOverage",
         {{"layers.sizes"}, "/layers/batting/width"},
         [](Good& g) { g.job().batting.overage = 3_in; }},
        {"TheBackingIsNotWhatWasMeasured",
         {{"layers.sizes", "backing.panels"}, "/layers/backing/width"},
         [](Good& g) { g.job().backing.width = 57_in; }},
        {"ABackingWithLittleToSpareIsNotWarnedOf",
         {{"layers.short", "passes.lift", "supplies.enough"}, "/layers/backing"},
         [](Good& g) { measureBacking(g, 43_in); }},
        {"ABackingShorterThanTheTopIsOnlyWarnedOf",
         {{"layers.short", "passes.lift", "supplies.enough"}, "/layers/backing"},
         [](Good& g) {
             measureBacking(g, 38_in);
             g.plan.findings = {{Finding::Kind::layerShort, Finding::Level::warn, "/backing/length",
                                 "Short.", "", "backing"}};
         }},
        {"TheSpareIsNotWhatTheSizesGive",
         {{"layers.spare"}, "/passes/1/spare/batting/left"},
         [](Good& g) { g.pass(2).battingSpare.left = 3_in; }},
        {"TheTopLeansAndThePlanDoesNotKnow",
         {{"layers.spare"}, "/layers/batting/width"},
         [](Good& g) {
             g.job().top.diagonals = {63_in, 62_in};
         }},
        {"TheBackingShrinksYetAndThePlanDoesNotKnow",
         {{"layers.sizes"}, "/layers/backing/length"},
         [](Good& g) {
             measureBacking(g, 48_in);
             g.job().backing.shrinkPercent = 5;
             g.job().backing.washed = false;
         }},
        {"TheBackingIsMeasuredAndWashed",
         {},
         [](Good& g) {
             measureBacking(g, 48_in);
             g.job().backing.shrinkPercent = 5;
         }},
        {"TheOverhangIsNotWhatThePlaceGives",
         {{"layers.overhang"}, "/passes/1/overhang/top/foot"},
         [](Good& g) { g.pass(2).topOverhang.foot = -2_in; }},
    };
}

std::vector<Spoiled> spoiledSurfaces() {
    return {
        {"TheTablesLeaveAHole",
         {{"surface.tables"}, "/surface/tables"},
         [](Good& g) {
             g.session.setting.room.tables = {{70_in, 30_in, 1}};
             g.quilt().surface.tables = {{0_in, 0_in, 70_in, 30_in}};
         }},
        {"TwoTablesOverlap",
         {{"surface.tables"}, "/surface/tables"},
         [](Good& g) {
             g.session.setting.room.tables = {{40_in, 30_in, 2}};
             g.quilt().surface.tables = {{0_in, 0_in, 40_in, 30_in}, {32_in, 0_in, 72_in, 30_in}};
         }},
        {"ATableIsCutUp",
         {{"surface.tables", "surface.group", "surface.stock"}, "/surface/tables/0"},
         [](Good& g) {
             g.quilt().surface.tables = {{0_in, 0_in, 36_in, 30_in}, {36_in, 0_in, 72_in, 30_in}};
         }},
        {"TheFloorIsMadeOfTables",
         {{"surface.tables", "surface.passes", "passes.field", "rolls.beyond"}, "/surface/tables"},
         [](Good& g) { g.quilt().surface.floor = true; }},
        {"MoreTablesThanThereAre",
         {{"surface.group", "surface.stock"}, "/surface/tables"},
         [](Good& g) {
             g.session.setting.room.tables = {{72_in, 15_in, 1}};
             g.quilt().surface.tables = {{0_in, 0_in, 72_in, 15_in}, {0_in, 15_in, 72_in, 30_in}};
         }},
        {"OneSurfaceIsMadeAnewForTheNextQuilt",
         {},
         [](Good& g) {
             g.session.setting.room.tables = {{72_in, 15_in, 2}, {72_in, 30_in, 1}};
             g.quilt().surface.tables = {{0_in, 0_in, 72_in, 15_in}, {0_in, 15_in, 72_in, 30_in}};
         },
         goodPair},
        {"TwoSurfacesTakeMoreTablesThanThereAre",
         {{"surface.stock"}, "/quilts"},
         [](Good& g) { g.plan.quilts.back().surface.number = 2; },
         goodPair},
        {"ASurfaceNumberIsLeftOut",
         {{"surface.stock"}, "/surface/number"},
         [](Good& g) { g.quilt().surface.number = 2; }},
        {"MoreSurfacesThanWereAskedFor",
         {{"surface.stock"}, "/quilts"},
         [](Good& g) {
             g.session.setting.room.surfaces = 1;
             g.session.setting.room.tables.front().count = 2;
             g.plan.quilts.back().surface.number = 2;
         },
         goodPair},
        {"AWallIsForgotten",
         {{"surface.closed"}, "/surface/closed"},
         [](Good& g) { g.session.setting.room.walls = {Side::left}; }},
        {"AWallIsAtTheWrongSide",
         {{"surface.closed"}, "/surface/closed"},
         [](Good& g) { // nothing is done from the left or the right in this plan
             g.session.setting.room.walls = {Side::left};
             g.quilt().surface.closed = {Side::right};
         }},
        {"TheQuiltLiesTheOtherWay",
         {{"surface.passes", "passes.alternatives"}, "/surface"},
         [](Good& g) { g.quilt().surface.quiltLengthAlongLength = true; }},
    };
}

} // namespace bastewright::testing
