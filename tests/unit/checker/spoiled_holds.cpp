#include "unit/checker/spoiled.h"

#include <algorithm>

namespace bastewright::testing {

namespace {

auto supply(Good& g, Supply::Kind kind) {
    return std::ranges::find(g.plan.supplies, kind, &Supply::kind);
}

} // namespace

std::vector<Spoiled> spoiledHolds() {
    return {
        {"HangingBackingIsTaped",
         {{"holds.sides", "supplies.enough"}, "/passes/0/holds/0/kind"},
         [](Good& g) {
             Hold& head = g.pass(1).holds.front();
             head.kind = Hold::Kind::tape;
             head.length = 24_in;
         }},
        {"ASideIsNotHeld",
         {{"holds.sides"}, "/passes/0/holds"},
         [](Good& g) { g.pass(1).holds.pop_back(); }},
        {"ThreeClampsOnFiftySixInches",
         {{"holds.count", "holds.order"}, "/passes/0/holds/0/count"},
         [](Good& g) {
             Hold& head = g.pass(1).holds.front();
             head.count = 3;
             head.positions.pop_back();
             head.numbers.pop_back();
             head.apart = 19_in;
         }},
        {"TapeIsCutShort",
         {{"holds.count"}, "/passes/0/holds/3/length"},
         [](Good& g) { g.pass(1).holds.back().length = 17_in; }},
        {"HoldsGoFromOneEndToTheOther",
         {{"holds.order"}, "/passes/0/holds/0/positions"},
         [](Good& g) { std::ranges::sort(g.pass(1).holds.front().positions); }},
        {"AShortSideComesFirst",
         {{"holds.order"}, "/passes/0/holds/2/side"},
         [](Good& g) { std::ranges::rotate(g.pass(1).holds, g.pass(1).holds.begin() + 2); }},
        {"TheHoldsAreSaidToBeFartherApart",
         {{"holds.count"}, "/passes/0/holds/0/apart"},
         [](Good& g) { g.pass(1).holds.front().apart = 18_in; }},
        {"HoldsThatFaceEachOtherHaveDifferentNumbers",
         {{"holds.numbers"}, "/passes/0/holds/0/numbers/0"},
         [](Good& g) { ++g.pass(1).holds.front().numbers.front(); }},
        {"ALaterPassCountsItsHoldsWithoutGaps",
         {{"holds.numbers"}, "/passes/1/holds/0/numbers/3"},
         [](Good& g) {
             for (Hold& h : g.pass(2).holds) // it has two pieces of tape at each end and no 6
                 for (int& n : h.numbers)
                     n -= n > 6 ? 1 : 0;
         }},
        {"AClampHasNoPlace",
         {{"holds.order", "holds.numbers"}, "/passes/0/holds/0/positions"},
         [](Good& g) { g.pass(1).holds.front().positions.pop_back(); }},
        {"AClampIsBesideTheBacking",
         {{"holds.order"}, "/passes/0/holds/0/positions/3"},
         [](Good& g) { g.pass(1).holds.front().positions.back() = 53_in; }},
        {"ClampsAreFarApart",
         {{"holds.order"}, "/passes/0/holds/0/positions"},
         [](Good& g) {
             Hold& head = g.pass(1).holds.front();
             head.positions = {24_in, 24_in, 4_in, 44_in};
         }},
        {"ASideAgainstAWallIsClamped",
         {{"holds.sides"}, "/passes/0/holds/1"},
         [](Good& g) {
             const Hold foot = *std::ranges::find(g.pass(1).holds, Side::foot, &Hold::side);
             wallAtFoot(g);
             g.pass(1).holds.insert(g.pass(1).holds.begin() + 1, foot);
         }},
        {"WhatLiesRolledAgainstAWall", {}, wallAtFoot},
        {"RollingIsGivenNoTime",
         {{"crew.times"}, "/tasks/2/end"},
         [](Good& g) {
             wallAtFoot(g);
             Task& clamp = g.task("1.1 clamp");
             clamp.end = clamp.start + Seconds{100};
         }},
        {"WhatIsBeyondTheTableIsSaidToLieOnChairs",
         {{"rolls.beyond"}, "/passes/1/beyond/head"},
         [](Good& g) { g.pass(2).beyond.head = Beyond::chairs; }},
        {"NothingIsRolledAgainstTheWall",
         {{"passes.field", "rolls.needed"}, "/passes/2/rolls"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).rolls.clear();
         }},
        {"MoreIsRolledThanIsBeyondTheTable",
         {{"rolls.needed"}, "/passes/0/rolls/0/rolled"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(1).rolls = {goodRoll(Side::foot, 10_in, g.job().batting.thickness)};
         }},
        {"ASideThatHangsIsRolled",
         {{"rolls.needed"}, "/passes/1/rolls"},
         [](Good& g) {
             g.pass(2).rolls.push_back(goodRoll(Side::head, 4_in, g.job().batting.thickness));
         }},
        {"ARollIsLongerThanTheBacking",
         {{"rolls.needed"}, "/passes/2/rolls/0/along"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).rolls.front().along = 57_in;
         }},
        {"ARollIsThinnerThanItsQuilt",
         {{"rolls.diameter"}, "/passes/2/rolls/0/diameter"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).rolls.front().diameter -= 0.125_in;
         }},
        {"ARollForTheMachineIsThinnerThanItsQuilt",
         {{"rolls.diameter"}, "/machine_rolls/0/diameter"},
         [](Good& g) { g.quilt().machineRolls.front().diameter -= 0.125_in; }},
        {"AClipIsTooSmall",
         {{"rolls.clips"}, "/passes/2/rolls/0/clip_holds"},
         [](Good& g) {
             wallAtFoot(g);
             g.session.setting.stash.clips.push_back({1_in, 8});
             g.pass(3).rolls.front().clipHolds = 1_in;
         }},
        {"AClipIsNotOnHand",
         {{"rolls.clips"}, "/passes/2/rolls/0/clip_holds"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).rolls.front().clipHolds = 4_in;
         }},
        {"TooFewClips",
         {{"rolls.clips"}, "/passes/2/rolls/0/clips"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).rolls.front().clips = 3;
         }},
        {"ARollIsHeldByNothing",
         {{"rolls.clips"}, "/passes/2/rolls/0"},
         [](Good& g) {
             wallAtFoot(g);
             g.pass(3).rolls.front().clipHolds = 0_in;
         }},
        {"AFoldedRollNeedsNoClip",
         {},
         [](Good& g) {
             wallAtFoot(g);
             g.session.setting.stash.clips.clear();
             for (Pass& p : g.quilt().passes)
                 for (Roll& r : p.rolls) {
                     r.clipHolds = 0_in;
                     r.clips = 0;
                     r.folded = true;
                 }
             for (Roll& r : g.quilt().machineRolls)
                 r.clipHolds = 0_in; // to be brought
             supply(g, Supply::Kind::clips)->have = 0;
             supply(g, Supply::Kind::clips)->buy = supply(g, Supply::Kind::clips)->need;
         }},
    };
}

std::vector<Spoiled> spoiledSupplies() {
    return {
        {"TooFewPinsAreBought",
         {{"supplies.sums"}, "/supplies/0/buy"},
         [](Good& g) { g.plan.supplies.front().need = 210; }},
        {"APinForEachPointIsNotEnough",
         {{"supplies.enough"}, "/supplies/0/need"},
         [](Good& g) { g.plan.supplies.front().need = 169; }},
        {"PinsAreCountedOnThatAreNotThere",
         {{"supplies.enough"}, "/supplies/0/have"},
         [](Good& g) { g.session.setting.stash.pins = 199; }},
        {"ClampsAreForgotten",
         {{"supplies.enough"}, "/supplies"},
         [](Good& g) { g.plan.supplies.erase(supply(g, Supply::Kind::clamps)); }},
        {"ClipsAreForgotten",
         {{"supplies.enough"}, "/supplies"},
         [](Good& g) {
             wallAtFoot(g);
             g.plan.supplies.erase(supply(g, Supply::Kind::clips));
         }},
        {"TapeIsForgotten",
         {{"supplies.enough"}, "/supplies"},
         [](Good& g) { g.plan.supplies.erase(supply(g, Supply::Kind::tape)); }},
        {"TapeIsTooShort",
         {{"supplies.enough"}, "/supplies/4/need"},
         [](Good& g) {
             *supply(g, Supply::Kind::tape) = {Supply::Kind::tape, "tape", 80, 300, 0, "in"};
         }},
        {"TapeIsInCentimetres",
         {{"plan.unit"}, "/unit"},
         [](Good& g) {
             g.plan.unit = Unit::centimetre;
             *supply(g, Supply::Kind::tape) = {Supply::Kind::tape, "tape", 275, 762, 0, "cm"};
         }},
        {"ClampsOfTwoTablesAreNotAddedUp",
         {{"supplies.enough"}, "/supplies/2/need"},
         [](Good& g) { // both quilts are made in the same hour, by others
             g.session.setting.room.tables.front().count = 2;
             g.plan.quilts.back().surface.number = 2;
             const Seconds start = g.task("2.1 set-up").start;
             g.task("2.1 set-up").after.clear();
             for (const char* name : {"Cai", "Dot"})
                 g.session.setting.helpers.emplace_back().name = name;
             for (Task& t : g.plan.tasks)
                 if (t.job == 1) {
                     t.start -= start;
                     t.end -= start;
                     for (std::string& who : t.people)
                         who = who == "Ada" ? "Cai" : "Dot";
                 }
             g.plan.finishBound = {};
             g.reorder();
         },
         goodPair},
    };
}

} // namespace bastewright::testing
