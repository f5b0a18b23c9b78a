#include "unit/checker/spoiled.h"

namespace bastewright::testing {
namespace {

BackingPlan& backing(Good& g) {
    return *g.quilt().backing;
}

BattingPlan& batting(Good& g) {
    return *g.quilt().batting;
}

/// Two equal panels, sewn down the middle.
void halve(Good& g) {
    backing(g).panels = {{"blue", {0_in, 0_in, 28_in, 48_in}, "A"},
                         {"blue", {28_in, 0_in, 56_in, 48_in}, "B"}};
    backing(g).cuts = {{"blue", {0_in, 0_in, 28.5_in, 48_in}, "A"},
                       {"blue", {0_in, 48_in, 28.5_in, 96_in}, "B"}};
}

/// The plan's own way, and one of fewer seams that buys more.
void offerWays(Good& g) {
    backing(g).alternatives = {{true, 99_in, 0, 100, 2, "Two seams.", "", true},
                               {true, 144_in, 0, 900, 1, "One seam.", "", false}};
}

/// Of so many leftovers of a kind one is cut in two, and a part lies across the cut.
void partAcrossTheCut(Good& g, int leftovers) {
    g.job().batting.pieces = {{"long", 56_in, 46_in, leftovers}};
    BattingPlan& b = batting(g);
    b.splits = {{"long", true, 29.5_in}};
    for (BattingPiecePlaced& p : b.pieces)
        p.name = "long";
    b.pieces.back().onPiece = b.pieces.back().onPiece.moved({10_in, 0_in});
}

/// Four leftovers of 26 by 22 in, joined in pairs.
void quarter(Good& g) {
    g.job().batting.pieces = {{"small", 30_in, 26_in, 4}};
    BattingPlan& b = batting(g);
    b.pieces.clear();
    for (const Length x : {0_in, 26_in})
        for (const Length y : {0_in, 22_in})
            b.pieces.push_back({"small",
                                {x, y, x + 26_in, y + 22_in},
                                false,
                                {0.5_in, 0.5_in, 27.25_in, 23.25_in}});
    b.joins = {{{0_in, 22_in}, {26_in, 22_in}},
               {{26_in, 22_in}, {52_in, 22_in}},
               {{26_in, 0_in}, {26_in, 44_in}}};
    b.strip = 96_in;
}

/// From one pack, turned.
void fromPack(Good& g, const std::string& name, Length width, Length length) {
    g.quilt().batting = BattingPlan{};
    batting(g).pack = name;
    batting(g).buy = {{name, width, length}};
    batting(g).pieces = {{"1", {0_in, 0_in, 52_in, 44_in}, true, {0_in, 0_in, 44_in, 52_in}, 0}};
}

/// A length off a roll, along the quilt.
void offRoll(Good& g, Length width, Length length) {
    g.quilt().batting = BattingPlan{};
    batting(g).buy = {{"", width, length}};
    batting(g).pieces = {{"1", {0_in, 0_in, 52_in, 44_in}, false, {0_in, 0_in, 52_in, 44_in}, 0}};
}

/// The first length comes from 50 in of cloth on hand; the plan follows it.
void haveSome(Good& g) {
    g.job().backing.fabrics.front().onHand = 50_in;
    for (ClothCut& c : backing(g).cuts)
        if (c.piece == "A")
            c.onHand = true;
        else
            c.onCloth = c.onCloth.moved({0_in, 2_in});
    backing(g).buy.front().length = backing(g).alternatives.front().bought = 49.5_in;
    backing(g).alternatives.front().waste = (48 + 49.5) * 40 - 56 * 48;
}

} // namespace

std::vector<Spoiled> spoiledCloth() {
    return {
        {"ThePanelsLeaveAHole",
         {{"backing.panels", "backing.pieces"}, "/backing/panels"},
         [](Good& g) { backing(g).panels.front().area.y1 = 47_in; }},
        {"ThePanelsMakeLessThanTheBacking",
         {{"backing.panels", "backing.pieces"}, "/backing/panels"},
         [](Good& g) {
             for (BackingPanel& p : backing(g).panels)
                 p.area.y1 = 47_in;
         }},
        {"TwoCutsShareCloth",
         {{"backing.cuts"}, "/backing/cuts"},
         [](Good& g) {
             backing(g).cuts.back().onCloth = {8_in, 48_in, 17_in, 96_in};
         }},
        {"ACutIsWiderThanTheCloth",
         {{"backing.cuts"}, "/backing/cuts/2"},
         [](Good& g) {
             backing(g).cuts.back().onCloth = {31.5_in, 48_in, 40.5_in, 96_in};
         }},
        {"ACutIsFromClothNobodyListed",
         {{"backing.cuts"}, "/backing/cuts/2/fabric"},
         [](Good& g) { backing(g).cuts.back().fabric = backing(g).panels.back().fabric = "red"; }},
        {"APrintWithOneWayUpIsTurned",
         {{"backing.cuts", "backing.pieces"}, "/backing/cuts/2/turned"},
         [](Good& g) {
             g.job().backing.oneWay = true;
             backing(g).cuts.back().turned = true;
         }},
        {"TheSeamAllowanceIsForgotten",
         {{"backing.pieces"}, "/backing/cuts/2"},
         [](Good& g) { backing(g).cuts.back().onCloth.x1 = 17.5_in; }},
        {"TheShrinkageIsForgotten",
         {{"backing.cuts", "backing.bought"}, "/backing/cuts/0"},
         [](Good& g) { g.job().backing.shrinkPercent = 4; }},
        {"APanelIsNotCut",
         {{"backing.pieces"}, "/backing/panels/2"},
         [](Good& g) { backing(g).cuts.pop_back(); }},
        {"ACutMakesNoPanel",
         {{"backing.pieces"}, "/backing/cuts/3/piece"},
         [](Good& g) {
             backing(g).cuts.push_back({"blue", {18_in, 48_in, 20_in, 50_in}, "D"});
         }},
        {"TooLittleClothIsBought",
         {{"backing.bought", "backing.ways"}, "/backing/cuts/1"},
         [](Good& g) { backing(g).buy.front().length = 94.5_in; }},
        {"ClothIsNotSoldByTheSixteenth",
         {{"backing.bought", "backing.ways"}, "/backing/buy/0/length"},
         [](Good& g) { backing(g).buy.front().length = 97_in; }},
        {"ClothThatCannotBeBoughtIs",
         {{"backing.bought"}, "/backing/buy/0/fabric"},
         [](Good& g) { g.job().backing.fabrics.front().buyable = false; }},
        {"ClothOnHandServes", {}, haveSome, [] { return goodPlan(); }, {"backing.listed"}},
        {"OfClothOnHandAllIsSaidToBeCutInto",
         {{"backing.listed"}, "/backing/alternatives/0/waste"},
         [](Good& g) {
             haveSome(g);
             backing(g).alternatives.front().waste += (50 - 48) * 40;
         }},
        {"ACutRunsFromOneClothIntoTheOther",
         {{"backing.bought"}, "/backing/cuts/0"},
         [](Good& g) {
             haveSome(g);
             g.job().backing.fabrics.front().onHand = 47_in;
         }},
        {"ASeamOnTheCentreLine", {{"backing.centre"}, "/backing/panels/0"}, halve},
        {"ASeamOnTheCentreLineThatIsAllowed",
         {},
         [](Good& g) {
             halve(g);
             g.job().backing.centreSeam = true;
         }},
        {"TheWayOfTheBackingIsOneOfThoseOffered", {}, offerWays},
        {"TwoWaysAreTheChosenOne",
         {{"backing.ways"}, "/backing/alternatives"},
         [](Good& g) {
             offerWays(g);
             backing(g).alternatives.back().chosen = true;
         }},
        {"TheChosenWayBuysSomethingElse",
         {{"backing.ways"}, "/backing/alternatives/0/bought"},
         [](Good& g) {
             offerWays(g);
             backing(g).alternatives.front().bought = 90_in;
         }},
        {"AWayThatBuysLessIsPassedOver",
         {{"backing.ways"}, "/backing/alternatives/1"},
         [](Good& g) {
             offerWays(g);
             backing(g).alternatives.back().bought = 90_in;
         }},
        {"AWayThatBuysLessForTooManySeamsIsNot",
         {},
         [](Good& g) {
             offerWays(g);
             backing(g).alternatives.back().bought = 90_in;
             backing(g).alternatives.back().seams = 3;
         }},
        {"ByPriceAnotherWayIsBetter",
         {{"backing.ways"}, "/backing/alternatives/1"},
         [](Good& g) {
             offerWays(g);
             g.job().backing.fabrics.front().price = 10;
             backing(g).alternatives.front().cost = 27.5;
             backing(g).alternatives.back().cost = 24;
         }},
        {"APanelIsNarrow",
         {{"backing.narrow"}, "/backing/panels/1"},
         [](Good& g) { g.job().backing.leastPiece = 9_in; }},
        {"NarrowPanelsAreSaid",
         {},
         [](Good& g) {
             g.job().backing.leastPiece = 9_in;
             g.plan.findings = {
                 {Finding::Kind::backingNarrow, Finding::Level::warn, "/backing", "Narrow.", ""}};
         }},
        {"APanelIsTrimmedAway",
         {{"backing.narrow", "layers.sizes", "layers.short"}, "/backing/panels/1"},
         [](Good& g) { g.job().backing.overage = 9_in; }},
        {"NothingIsLeftForSquaring",
         {{"backing.squared"}, "/backing/cuts/0"},
         [](Good& g) { g.job().backing.squaring = 4_in; }},
        {"TheWayThePersonChoseIsTaken",
         {},
         [](Good& g) {
             offerWays(g);
             backing(g).alternatives.back().bought = 90_in;
             g.job().backing.way = BackingWay{99_in, 2};
         }},
        {"TheWayThePersonChoseIsPassedOver",
         {{"backing.ways"}, "/backing/alternatives/0"},
         [](Good& g) {
             offerWays(g);
             g.job().backing.way = BackingWay{144_in, 1};
         }},
        {"TheWayThePersonChoseIsGoneAndThatIsSaid",
         {},
         [](Good& g) {
             offerWays(g);
             g.job().backing.way = BackingWay{150_in, 1};
             g.plan.findings = {{Finding::Kind::backingWayGone, Finding::Level::note,
                                 "/backing/way", "Gone.", ""}};
         }},
        {"APackIsTooSmall",
         {{"batting.fits"}, "/batting/pieces/0/on_piece"},
         [](Good& g) { fromPack(g, "craft", 36_in, 45_in); }},
        {"APackIsLargeEnoughOnceItIsTurned",
         {},
         [](Good& g) { fromPack(g, "crib", 45_in, 60_in); }},
        {"APackIsWashedAndShrinks",
         {{"batting.fits"}, "/batting/pieces/0/on_piece"},
         [](Good& g) {
             fromPack(g, "crib", 45_in, 60_in);
             g.job().batting.shrinkPercent = 5;
         }},
        {"APackIsKnownByItsSize", {}, [](Good& g) { fromPack(g, "50 x 55", 50_in, 55_in); }},
        {"APackIsUnknown",
         {{"batting.bought"}, "/batting/buy/0"},
         [](Good& g) { fromPack(g, "giant", 90_in, 90_in); }},
        {"APackIsNotSoLarge",
         {{"batting.bought"}, "/batting/buy/0"},
         [](Good& g) { fromPack(g, "crib", 46_in, 60_in); }},
        {"BattingOffTheRoll", {}, [](Good& g) { offRoll(g, 96_in, 45_in); }},
        {"NoRollIsSoWide",
         {{"batting.bought"}, "/batting/buy/0/width"},
         [](Good& g) { offRoll(g, 97_in, 45_in); }},
        {"ARollOfTheirOwn",
         {},
         [](Good& g) {
             offRoll(g, 97_in, 45_in);
             g.job().batting.roll = 97_in;
         }},
        {"BattingIsNotSoldByTheInch",
         {{"batting.bought"}, "/batting/buy/0/length"},
         [](Good& g) { offRoll(g, 96_in, 46_in); }},
        {"TooLittleIsBoughtOffTheRoll",
         {{"batting.fits"}, "/batting/pieces/0/on_piece"},
         [](Good& g) { offRoll(g, 96_in, 40.5_in); }},
        {"APieceIsOfNothingBought",
         {{"batting.fits"}, "/batting/pieces/0/bought"},
         [](Good& g) {
             offRoll(g, 96_in, 45_in);
             batting(g).pieces.front().bought = 1;
         }},
        {"ALeftoverIsOutOfSquare",
         {{"batting.fits"}, "/batting/pieces/0/on_piece"},
         [](Good& g) {
             g.job().batting.pieces.front().diagonals = {54_in, 56_in};
         }},
        {"ThePiecesLeaveAHole",
         {{"batting.fits", "batting.joins", "batting.pieces"}, "/batting/pieces"},
         [](Good& g) { batting(g).pieces.front().area.x1 = 27_in; }},
        {"FourCornersMeet", {{"batting.apart"}, "/batting/pieces"}, quarter},
        {"FourCornersMeetAndThePlanSaysSo",
         {},
         [](Good& g) {
             quarter(g);
             g.plan.findings.push_back({Finding::Kind::cornersMeet, Finding::Level::note,
                                        "/batting/pieces", "Four corners meet.", ""});
         }},
        {"AJoinRunsAlongASeam",
         {{"batting.apart"}, "/batting/joins/0"},
         [](Good& g) { // the batting ends 2 in inside the backing, whose seam is at 8.5 in
             g.job().batting.pieces = {{"wide", 48_in, 46_in}, {"narrow", 26_in, 46_in}};
             batting(g).pieces = {
                 {"narrow", {0_in, 0_in, 8_in, 44_in}, false, {0.5_in, 0.5_in, 9.25_in, 44.5_in}},
                 {"wide", {8_in, 0_in, 52_in, 44_in}, false, {0.5_in, 0.5_in, 45.25_in, 44.5_in}}};
             batting(g).joins = {{{8_in, 0_in}, {8_in, 44_in}}};
         }},
        {"AJoinIsForgotten",
         {{"batting.joins"}, "/batting/joins"},
         [](Good& g) { batting(g).joins.clear(); }},
        {"AJoinIsShorterThanItsEdge",
         {{"batting.joins"}, "/batting/joins/0"},
         [](Good& g) { batting(g).joins.front().to.y = 40_in; }},
        {"APieceIsNotAmongTheLeftovers",
         {{"batting.fits"}, "/batting/pieces/0/name"},
         [](Good& g) { batting(g).pieces.front().name = "new"; }},
        {"ALeftoverIsUsedTwice",
         {{"batting.fits"}, "/batting/pieces"},
         [](Good& g) { batting(g).pieces.back().name = "wide"; }},
        {"TwoHalvesOfALeftoverOverlap",
         {{"batting.fits"}, "/batting/pieces"},
         [](Good& g) {
             g.job().batting.pieces = {{"long", 56_in, 46_in}};
             BattingPlan& b = batting(g);
             b.splits = {{"long", true, 29.5_in}};
             for (BattingPiecePlaced& p : b.pieces)
                 p.name = "long";
             b.pieces.back().onPiece = b.pieces.back().onPiece.moved({28_in, 0_in});
         }},
        {"TwoHalvesOfALeftoverServe",
         {},
         [](Good& g) {
             g.job().batting.pieces = {{"long", 56_in, 46_in}};
             BattingPlan& b = batting(g);
             b.splits = {{"long", true, 29.5_in}};
             for (BattingPiecePlaced& p : b.pieces)
                 p.name = "long";
             b.pieces.back().onPiece = b.pieces.back().onPiece.moved({30_in, 0_in});
         }},
        {"ACutGoesThroughAPart",
         {{"batting.fits", "batting.listed"}, "/batting/splits/0"},
         [](Good& g) { partAcrossTheCut(g, 1); }},
        {"APartAcrossTheCutIsOfAnotherLeftoverOfTheKind",
         {},
         [](Good& g) { partAcrossTheCut(g, 2); }},
        {"ARawEdgeIsNotTrimmed",
         {{"batting.fits"}, "/batting/pieces/0/on_piece"},
         [](Good& g) { g.job().batting.trim = 0.75_in; }},
        {"TheOverlapIsForgotten",
         {{"batting.fits"}, "/batting/pieces/0/on_piece"},
         [](Good& g) { g.job().batting.overlap = 2_in; }},
        {"APieceIsTurnedThatMayNotBe",
         {{"batting.fits"}, "/batting/pieces/0/turned"},
         [](Good& g) {
             BattingPiecePlaced& p = batting(g).pieces.front();
             g.job().batting.pieces.front() = {"wide", 46_in, 30_in};
             p.turned = true;
             p.onPiece = {0.5_in, 0.5_in, 44.5_in, 29.25_in};
         }},
        {"APieceThatMayBeTurnedIs",
         {},
         [](Good& g) {
             BattingPiecePlaced& p = batting(g).pieces.front();
             g.job().batting.pieces.front() = {"wide", 46_in, 30_in};
             g.job().batting.mayTurn = true;
             p.turned = true;
             p.onPiece = {0.5_in, 0.5_in, 44.5_in, 29.25_in};
         }},
        {"TooLittleStrip",
         {{"batting.joins"}, "/batting/strip"},
         [](Good& g) { batting(g).strip = 40_in; }},
    };
}

} // namespace bastewright::testing
