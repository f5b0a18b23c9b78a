#include "planners/batting/batting.h"
#include "planners/batting/pack_size.h"
#include "unit/batting/joining.h"

#include <gmock/gmock.h>

#include <cmath>
#include <ostream>

namespace bastewright {
namespace {

using joining::faults;
using joining::fourCorners;
using testing::HasSubstr;
using testing::IsEmpty;

Job jobWith(std::vector<BattingPiece> pieces, bool mayTurn = false) {
    Job job;
    job.batting.pieces = std::move(pieces);
    job.batting.mayTurn = mayTurn;
    return job;
}

Job jobWithPack(const std::string& pack, std::vector<BattingPiece> pieces = {}) {
    Job job = jobWith(std::move(pieces));
    job.batting.pack.emplace(pack);
    return job;
}

BattingPlan joined(const Job& job, Size needed, const std::vector<Segment>& seams = {}) {
    const BattingOutcome out = planBatting(job, needed, seams);
    EXPECT_TRUE(out.plan.has_value())
        << (out.findings.empty() ? "" : out.findings[0].text.english());
    if (!out.plan)
        return {};
    EXPECT_THAT(faults(job, needed, *out.plan), IsEmpty());
    return *out.plan;
}

TEST(BattingPack, SmallestThatHolds) {
    // Generic sizes: docs/computation/batting.md (common practice).
    EXPECT_EQ(planBatting(Job{}, {36_in, 45_in}).plan->pack, "craft");
    EXPECT_EQ(planBatting(Job{}, {37_in, 45_in}).plan->pack, "crib");
    EXPECT_EQ(planBatting(Job{}, {76_in, 94_in}).plan->pack, "full");
    EXPECT_EQ(planBatting(Job{}, {92_in, 108_in}).plan->pack, "king");
    EXPECT_TRUE(planBatting(Job{}, {92_in, 116_in}).plan->joins.empty());
}

TEST(BattingPack, MayBeTurned) {
    const BattingOutcome out = planBatting(Job{}, {90_in, 72_in});
    EXPECT_EQ(out.plan->pack, "twin");
    EXPECT_TRUE(out.plan->pieces[0].turned);
    EXPECT_EQ(out.plan->pieces[0].onPiece, (Rect{0_in, 0_in, 72_in, 90_in}));
}

TEST(BattingPack, NamedAndTooSmallIsPlannedOtherwiseAndThatIsSaid) {
    // Two twin packs do not make it either; a king pack holds it.
    const BattingOutcome out = planBatting(jobWithPack("twin"), {92_in, 100_in});
    ASSERT_TRUE(out.plan);
    EXPECT_EQ(out.plan->pack, "king");
    ASSERT_EQ(out.findings.size(), 1u);
    EXPECT_EQ(out.findings[0].level, Finding::Level::warn);
    EXPECT_EQ(out.findings[0].field, "/batting/pack");
}

TEST(BattingPack, TwoOfTheNamedPackAreJoined) {
    // 71 + 71 less an overlap of 1 1/2 are 140 1/2; 89 long once trimmed.
    const Job job = jobWithPack("twin");
    const BattingPlan plan = joined(job, {100_in, 88_in});
    EXPECT_EQ(plan.buy.size(), 2u);
    EXPECT_EQ(plan.strip, 88_in);
    EXPECT_EQ(plan.toBring.front(), "2 of these: a twin pack, 72 × 90 in.");
    EXPECT_EQ(plan.joinCost, "The join takes 88 in of joining strip and about 15 min.");
}

TEST(BattingPack, KnownByItsSize) {
    for (const char* size : {"90 x 108", "90 × 108 in", "90 by 108", "Queen"}) {
        const BattingPlan plan = joined(jobWithPack(size), {86_in, 100_in});
        EXPECT_TRUE(plan.joins.empty()) << size;
        ASSERT_EQ(plan.buy.size(), 1u);
        EXPECT_EQ(plan.buy[0].width, 90_in);
        EXPECT_EQ(plan.buy[0].length, 108_in);
    }
}

TEST(BattingPack, ShrinksWhereItIsWashed) {
    Job job;
    EXPECT_EQ(joined(job, {90_in, 108_in}).pack, "queen");
    job.batting.shrinkPercent = 3;
    EXPECT_EQ(joined(job, {90_in, 108_in}).pack, "king");
}

TEST(BattingOffTheRoll, ALengthWithoutAJoin) {
    // 104 in a pack of 120 × 120 is the usual; asked for, 3 3/8 yd off a roll 108 in wide.
    Job job;
    job.batting.roll = 108_in;
    const BattingPlan plan = joined(job, {108_in, 120_in});
    EXPECT_TRUE(plan.joins.empty());
    ASSERT_EQ(plan.buy.size(), 1u);
    EXPECT_EQ(plan.buy[0].width, 108_in);
    EXPECT_NEAR(plan.buy[0].length.in() / 36, 3.375, 1e-9);
    EXPECT_EQ(plan.toBring.front(), "3 3/8 yd off a roll 108 in wide.");
}

TEST(BattingOffTheRoll, AQuiltWiderThanAnythingIsJoined) {
    // 120 × 120 and 130 × 130 in with 2 in over.
    for (const Length side : {124_in, 134_in}) {
        const BattingPlan plan = joined(Job{}, {side, side});
        EXPECT_EQ(plan.joins.size(), 1u);
        EXPECT_EQ(plan.strip, side);
        EXPECT_EQ(plan.buy[0].width, 90_in) << "two lengths of any roll do it";
        EXPECT_EQ(plan.buy[0].length,
                  Length::inch64ths(288) * ceilDiv(2 * side, Length::inch64ths(288)));
        EXPECT_FALSE(plan.joinCost.empty());
        // What buys least is offered: a strip along one side.
        EXPECT_TRUE(std::ranges::any_of(plan.alternatives, &BattingAlternative::pieceStrip));
    }
}

TEST(BattingOffTheRoll, AStripMayBePiecedToBuyLess) {
    Job job;
    job.batting.pieceStrip = true;
    const BattingPlan plan = joined(job, {124_in, 124_in});
    // One length of 124 off the 120, and two of 6 + 3/4 in across it.
    EXPECT_EQ(plan.buy[0].width, 120_in);
    EXPECT_NEAR(plan.buy[0].length.in(), 139.5, 1e-9);
    ASSERT_EQ(plan.pieces.size(), 3u);
    EXPECT_EQ(plan.pieces[1].name, "2a");
    EXPECT_EQ(plan.joins.size(), 2u);
    EXPECT_EQ(fourCorners(plan), 0);
}

TEST(BattingOffTheRoll, JoinsKeepOffBackingSeams) {
    const BattingPlan free = joined(Job{}, {124_in, 130_in});
    ASSERT_EQ(free.joins.size(), 1u);
    const bool upright = free.joins[0].from.x == free.joins[0].to.x;
    ASSERT_FALSE(upright) << "124 in is the shorter join";
    const Length at = free.joins[0].from.y;
    const BattingPlan moved = joined(Job{}, {124_in, 130_in}, {{{0_in, at}, {124_in, at}}});
    EXPECT_GE(abs(moved.joins[0].from.y - at), 2_in);
    EXPECT_EQ(moved.strip, free.strip);
}

TEST(BattingOffTheRoll, TheirOwnWidths) {
    Job job;
    job.batting.rolls = {60_in};
    EXPECT_EQ(joined(job, {150_in, 150_in}).joins.size(), 2u);
    job.batting.roll = 80_in;
    EXPECT_EQ(joined(job, {150_in, 150_in}).joins.size(), 1u);
}

TEST(BattingPack, NamedAndTooSmallIsJoinedWithPieces) {
    const Job job = jobWithPack("Twin", {{"A", 30_in, 110_in, 1}});
    const BattingOutcome out = planBatting(job, {96_in, 89_in});
    ASSERT_TRUE(out.plan);
    EXPECT_EQ(out.plan->pieces.size(), 2u);
    EXPECT_THAT(faults(job, {96_in, 89_in}, *out.plan), IsEmpty());
    ASSERT_EQ(out.plan->buy.size(), 1u);
    EXPECT_EQ(out.plan->buy[0].pack, "twin");
    ASSERT_EQ(out.findings.size(), 1u);
    EXPECT_EQ(out.findings[0].kind, Finding::Kind::packJoined);
}

TEST(BattingPack, NamedAndTooSmallIsNotSaidToBeJoinedWhereAPieceDoes) {
    const BattingOutcome out =
        planBatting(jobWithPack("twin", {{"A", 100_in, 95_in, 1}}), {96_in, 89_in});
    ASSERT_TRUE(out.plan);
    EXPECT_EQ(out.plan->pieces.front().name, "A");
    EXPECT_TRUE(out.plan->buy.empty());
    EXPECT_THAT(out.findings, IsEmpty());
}

TEST(BattingPack, UnknownNameListsThoseAccepted) {
    const Job job = jobWithPack("enormous");
    const BattingOutcome out = planBatting(job, {92_in, 100_in});
    ASSERT_EQ(out.findings.size(), 1u);
    EXPECT_THAT(out.findings[0].text, HasSubstr("craft, crib, throw, twin, full, queen, king"));
}

TEST(BattingJoins, OnePieceThatHoldsNeedsNoJoin) {
    const BattingPlan plan =
        joined(jobWith({{"A", 40_in, 60_in, 1}, {"B", 80_in, 80_in, 1}}), {70_in, 79_in});
    EXPECT_TRUE(plan.joins.empty());
    EXPECT_EQ(plan.pieces[0].name, "B");
    EXPECT_EQ(plan.strip, 0_in);
    EXPECT_THAT(plan.leftOver, testing::Contains("A, 40 × 60 in"));
}

TEST(BattingJoins, TrimAndOverlapAreEaten) {
    // 40 + 40 less 4 trims of 1/2 and one overlap of 1 1/2 = 76 1/2.
    const Length exact = Length::inch64ths(76 * 64 + 32);
    EXPECT_EQ(joined(jobWith({{"A", 40_in, 60_in, 2}}), {exact, 59_in}).joins.size(), 1u);
    EXPECT_FALSE(
        planBatting(jobWith({{"A", 40_in, 60_in, 2}}), {exact + Length::inch64ths(1), 59_in}).plan);
    EXPECT_FALSE(
        planBatting(jobWith({{"A", 40_in, 60_in, 2}}), {exact, 59_in + Length::inch64ths(1)}).plan);
}

TEST(BattingJoins, FourLeftovers) {
    // The demo's kind of job: four leftovers for an 88 × 112 top with 2 in over on every side.
    const BattingPlan plan = joined(jobWith({{"A", 60_in, 72_in, 1},
                                             {"B", 60_in, 48_in, 1},
                                             {"C", 36_in, 84_in, 1},
                                             {"D", 37_in, 40_in, 1}}),
                                    {92_in, 116_in});
    EXPECT_EQ(plan.joins.size(), 3u);
    EXPECT_EQ(fourCorners(plan), 0);
}

TEST(BattingJoins, FewestThenShortest) {
    // Two ways with one join: across the short side is shorter.
    const BattingPlan plan =
        joined(jobWith({{"A", 62_in, 50_in, 2}, {"B", 35_in, 100_in, 2}}), {60_in, 90_in});
    EXPECT_EQ(plan.joins.size(), 1u);
    EXPECT_EQ(plan.strip, 60_in);
}

TEST(BattingJoins, OfEquallyShortJoinsTheSmallestPieces) {
    // Any two do it with one join of 60 in; the largest two are kept for another quilt.
    const BattingPlan plan = joined(jobWith({{"large", 62_in, 70_in, 1},
                                             {"small", 47_in, 62_in, 1},
                                             {"larger", 66_in, 70_in, 1},
                                             {"middle", 50_in, 63_in, 1}}),
                                    {90_in, 60_in});
    EXPECT_EQ(plan.strip, 60_in);
    EXPECT_THAT(plan.leftOver, testing::Contains(HasSubstr("large, 62 × 70 in")));
    EXPECT_THAT(plan.leftOver, testing::Contains(HasSubstr("larger, 66 × 70 in")));
}

TEST(BattingJoins, APieceOutOfSquareIsCutSquare) {
    // A parallelogram of 40 × 60 whose corners are an inch off: d² − e² = 4 · 60 · 1.
    const double half = std::hypot(40.0, 60.0);
    const std::vector<Length> diagonals{Length::nearestInches(std::sqrt(half * half + 120)),
                                        Length::nearestInches(std::sqrt(half * half - 120))};
    const BattingPiece crooked{"A", 40_in, 60_in, 2, diagonals};
    EXPECT_NEAR(squared(crooked).length().in(), 59, 1.0 / 32);
    EXPECT_EQ(squared(crooked).width(), 40_in);
    EXPECT_FALSE(planBatting(jobWith({crooked}), {76_in, 58.5_in}).plan);
    joined(jobWith({crooked}), {76_in, 57.75_in});
    EXPECT_TRUE(planBatting(jobWith({{"A", 40_in, 60_in, 2}}), {76_in, 58.5_in}).plan);
}

TEST(BattingJoins, TurnsOnlyWhereAllowed) {
    const std::vector<BattingPiece> pieces{{"A", 50_in, 62_in, 1}, {"B", 62_in, 50_in, 1}};
    const BattingOutcome no = planBatting(jobWith(pieces), {60_in, 96_in});
    EXPECT_FALSE(no.plan);
    EXPECT_THAT(no.findings.back().cure, HasSubstr("turned a quarter"));
    const BattingPlan plan = joined(jobWith(pieces, true), {60_in, 96_in});
    EXPECT_EQ(std::ranges::count(plan.pieces, true, &BattingPiecePlaced::turned), 1);
}

TEST(BattingJoins, StaggersCornersWhereThereIsRoom) {
    // Four like pieces could meet in the middle; there are inches to spare.
    const BattingPlan plan = joined(jobWith({{"A", 50_in, 52_in, 4}}), {90_in, 90_in});
    EXPECT_EQ(plan.joins.size(), 3u);
    EXPECT_EQ(fourCorners(plan), 0);
}

TEST(BattingJoins, SaysWhereFourCornersMustMeet) {
    // 46 + 46 less trims and overlap is 88 1/2 exactly, both ways.
    const Length exact = Length::inch64ths(88 * 64 + 32);
    const BattingOutcome out = planBatting(jobWith({{"A", 46_in, 46_in, 4}}), {exact, exact});
    ASSERT_TRUE(out.plan);
    EXPECT_EQ(fourCorners(*out.plan), 1);
    ASSERT_EQ(out.findings.size(), 1u);
    EXPECT_EQ(out.findings[0].level, Finding::Level::warn);
    EXPECT_THAT(out.findings[0].text, HasSubstr("Four corners meet at 1 place"));
}

TEST(BattingJoins, MakesAJoinMoreToAvoidFourCorners) {
    const Length exact = Length::inch64ths(88 * 64 + 32);
    const BattingPlan plan =
        joined(jobWith({{"A", 46_in, 46_in, 4}, {"B", 46_in, 30_in, 1}, {"C", 46_in, 64_in, 1}}),
               {exact, exact});
    EXPECT_EQ(fourCorners(plan), 0);
}

TEST(BattingJoins, KeepOffBackingSeams) {
    const Job job = jobWith({{"A", 50_in, 62_in, 2}});
    const BattingPlan free = joined(job, {90_in, 60_in});
    const Length at = free.joins[0].from.x;
    const std::vector<Segment> seams{{{at, 0_in}, {at, 60_in}}};
    const BattingPlan moved = joined(job, {90_in, 60_in}, seams);
    EXPECT_GE(abs(moved.joins[0].from.x - at), 2_in);
    EXPECT_EQ(moved.strip, free.strip);
    // A seam across the join is no matter.
    EXPECT_EQ(joined(job, {90_in, 60_in}, {{{0_in, 30_in}, {90_in, 30_in}}}).joins, free.joins);
}

TEST(BattingJoins, SplitsOnePieceWhereThatRescues) {
    // A is long enough for two of the three columns the batting needs.
    const Job job = jobWith({{"A", 40_in, 130_in, 1}, {"B", 30_in, 62_in, 1}});
    const BattingOutcome out = planBatting(job, {100_in, 60_in});
    ASSERT_TRUE(out.plan) << out.findings.back().cure;
    EXPECT_THAT(faults(job, {100_in, 60_in}, *out.plan), IsEmpty());
    ASSERT_EQ(out.plan->splits.size(), 1u);
    EXPECT_EQ(out.plan->splits[0].name, "A");
    EXPECT_EQ(out.findings[0].level, Finding::Level::note);
}

TEST(BattingJoins, UsesAnOffcutAgainWhereThatRescues) {
    // A is longer than needed; what is cut off its end and B make the missing column.
    const Job job = jobWith({{"A", 72_in, 100_in, 1}, {"B", 34_in, 27_in, 1}});
    const BattingOutcome out = planBatting(job, {100_in, 60_in});
    ASSERT_TRUE(out.plan);
    EXPECT_THAT(faults(job, {100_in, 60_in}, *out.plan), IsEmpty());
    ASSERT_EQ(out.plan->splits.size(), 1u);
    EXPECT_EQ(out.plan->splits[0].name, "A");
    EXPECT_FALSE(out.plan->splits[0].acrossWidth);
    EXPECT_EQ(std::ranges::count(out.plan->pieces, "A", &BattingPiecePlaced::name), 2);
}

TEST(BattingJoins, NothingIsSplitWhereWholePiecesDo) {
    EXPECT_THAT(
        joined(jobWith({{"A", 72_in, 100_in, 1}, {"B", 34_in, 62_in, 1}}), {100_in, 60_in}).splits,
        IsEmpty());
}

TEST(BattingJoins, NamesTheLeastToBuy) {
    const Job job = jobWith({{"A", 60_in, 118_in, 1}});
    const BattingOutcome out = planBatting(job, {92_in, 116_in});
    EXPECT_FALSE(out.plan);
    ASSERT_EQ(out.findings.size(), 1u);
    EXPECT_EQ(out.findings[0].level, Finding::Level::stop);
    // 92 + 1 1/2 − 59 + 1 = 35 1/2, in whole inches.
    EXPECT_THAT(out.findings[0].cure, HasSubstr("36 × 117 in"));
    // With just that piece it can be made.
    joined(jobWith({{"A", 60_in, 118_in, 1}, {"new", 36_in, 117_in, 1}}), {92_in, 116_in});
}

TEST(BattingJoins, PieceUsedUpByTrimmingIsLeftOutWithAWarning) {
    const BattingOutcome out =
        planBatting(jobWith({{"scrap", 2_in, 40_in, 1}, {"A", 80_in, 80_in, 1}}), {70_in, 70_in});
    ASSERT_TRUE(out.plan);
    ASSERT_EQ(out.findings.size(), 1u);
    EXPECT_EQ(out.findings[0].field, "/batting/pieces/0");
    EXPECT_THAT(out.findings[0].text, HasSubstr("scrap"));
}

TEST(BattingJoins, OnlyScrapsStillNameTheLeastToBuy) {
    const BattingOutcome out = planBatting(jobWith({{"scrap", 2_in, 40_in, 1}}), {70_in, 70_in});
    EXPECT_FALSE(out.plan);
    EXPECT_TRUE(anyStop(out.findings));
    EXPECT_THAT(out.findings.back().cure, HasSubstr("71 × 71 in"));
}

struct Bad {
    const char* field;
    void (*spoil)(Job&);
    friend void PrintTo(const Bad& b, std::ostream* out) { *out << b.field; }
};
class BadBatting : public testing::TestWithParam<Bad> {};

TEST_P(BadBatting, IsOneClearSentenceThatNamesTheField) {
    Job job = jobWith({{"A", 80_in, 80_in, 1}});
    GetParam().spoil(job);
    const BattingOutcome out = planBatting(job, {70_in, 70_in});
    EXPECT_FALSE(out.plan);
    ASSERT_EQ(out.findings.size(), 1u);
    EXPECT_EQ(out.findings[0].field, GetParam().field);
    EXPECT_THAT(out.findings[0].text, HasSubstr("accepted"));
}

INSTANTIATE_TEST_SUITE_P(
    Fields, BadBatting,
    testing::Values(Bad{"/batting/trim", [](Job& j) { j.batting.trim = -1_in; }},
                    Bad{"/batting/overlap", [](Job& j) { j.batting.overlap = -1_in; }},
                    Bad{"/batting/overlap", [](Job& j) { j.batting.overlap = 70_in; }},
                    Bad{"/batting/pieces/0", [](Job& j) { j.batting.pieces[0].width = {}; }},
                    Bad{"/batting/pieces/0", [](Job& j) { j.batting.pieces[0].length = -1_in; }}));

TEST(BattingJoins, SamePlanTwice) {
    const Job job =
        jobWith({{"A", 60_in, 72_in, 2}, {"B", 45_in, 62_in, 2}, {"C", 40_in, 100_in, 1}});
    EXPECT_EQ(planBatting(job, {92_in, 116_in}).plan, planBatting(job, {92_in, 116_in}).plan);
}

} // namespace
} // namespace bastewright
