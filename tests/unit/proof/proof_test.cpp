#include "planners/proof/proof.h"

#include <gmock/gmock.h>

#include <cmath>
#include <random>

namespace bastewright {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

/// A top of 88 × 112 in, batting asked for with 2 in over on every side, backing with 4.
Job harbour() {
    Job job;
    job.top.width = {88_in};
    job.top.length = {112_in};
    return job;
}

LayerSizes sizes(Size batting, Size backing) {
    return {{88_in, 112_in}, batting, backing};
}

TEST(Proof, AsAskedIsFine) {
    EXPECT_THAT(proveSizes(harbour(), sizes({92_in, 116_in}, {96_in, 120_in})), IsEmpty());
}

TEST(Proof, HalfOfTheOverageIsStillFine) {
    EXPECT_THAT(proveSizes(harbour(), sizes({90_in, 114_in}, {92_in, 116_in})), IsEmpty());
}

TEST(Proof, OverageIsPerSideAndNeverInTotal) {
    // 4 in more in all is 2 on each side: half of the 4 asked for, not all of it.
    const Findings out = proveSizes(harbour(), sizes({92_in, 116_in}, {91_in, 120_in}));
    ASSERT_EQ(out.size(), 1u);
    EXPECT_EQ(out[0].level, Finding::Level::warn);
    EXPECT_THAT(out[0].text, HasSubstr("1 1/2 in of overage on each side"));
    EXPECT_THAT(out[0].text, HasSubstr("4 in was asked for"));
}

TEST(Proof, JustUnderHalfWarnsAndNamesTheSmallestCure) {
    const Findings out =
        proveSizes(harbour(), sizes({92_in, 116_in}, {92_in - Length::inch64ths(8), 120_in}));
    ASSERT_EQ(out.size(), 1u);
    EXPECT_EQ(out[0].level, Finding::Level::warn);
    EXPECT_THAT(
        out[0].cure,
        HasSubstr("4 1/8 in wider (96 in). It just does with 1/8 in more, which leaves half "
                  "of the overage"));
}

TEST(Proof, JustAsLargeAsTheTopIsAWarning) {
    const Findings out = proveSizes(harbour(), sizes({88_in, 116_in}, {96_in, 120_in}));
    ASSERT_EQ(out.size(), 1u);
    EXPECT_EQ(out[0].level, Finding::Level::warn);
}

TEST(Proof, SmallerThanTheTopStops) {
    const Findings out = proveSizes(harbour(), sizes({92_in, 111_in}, {96_in, 120_in}));
    ASSERT_EQ(out.size(), 1u);
    EXPECT_EQ(out[0].level, Finding::Level::stop);
    EXPECT_THAT(out[0].text, HasSubstr("1 in too little"));
    EXPECT_THAT(out[0].cure, HasSubstr(" longer (116 in). It just does with 3 in more"));
}

TEST(Proof, NamesTheFieldThatWasMeasured) {
    Job job = harbour();
    job.backing.width = 87_in;
    const Findings out = proveSizes(job, sizes({92_in, 116_in}, {87_in, 119_in}));
    ASSERT_EQ(out.size(), 1u);
    EXPECT_EQ(out[0].field, "/backing/width");
}

TEST(Proof, ATopThatLeansTakesUpMore) {
    // A foot 3 in aside of the head: 1 1/2 in less on each side, and at the head and foot
    // 3 × 88 / 112 / 2.
    Job job = harbour();
    job.top.diagonals = {Length::nearestInches(std::sqrt(91. * 91 + 112 * 112 - 9)),
                         Length::nearestInches(std::sqrt(85. * 85 + 112 * 112 - 9))};
    EXPECT_THAT(proveSizes(harbour(), sizes({91_in, 116_in}, {96_in, 120_in})), IsEmpty());
    const Findings out = proveSizes(job, sizes({91_in, 116_in}, {96_in, 120_in}));
    ASSERT_EQ(out.size(), 2u);
    EXPECT_THAT(out[0].text,
                HasSubstr("the top, which is not square, takes up 91 in: only 0 in of overage"));
    EXPECT_THAT(out[1].text, HasSubstr("116 in long"));
    // Larger than the top, and yet too small.
    const Findings stop = proveSizes(job, sizes({90_in, 120_in}, {96_in, 120_in}));
    ASSERT_EQ(stop.size(), 1u);
    EXPECT_EQ(stop[0].level, Finding::Level::stop);
    EXPECT_THAT(stop[0].text, HasSubstr("1 in too little"));
    EXPECT_THAT(stop[0].cure, HasSubstr(" wider (95 in). It just does with 3 in more"));
}

TEST(Proof, WhatIsNotWashedYetIsCuredAsItIsMeasured) {
    Job job = harbour();
    job.backing.shrinkPercent = 5;
    job.backing.washed = false;
    job.backing.width = 94_in;
    job.backing.length = 130_in;
    const Size washed{Length::nearestInches(94 * 0.95), Length::nearestInches(130 * 0.95)};
    const Findings out = proveSizes(job, sizes({92_in, 116_in}, washed));
    ASSERT_EQ(out.size(), 1u);
    EXPECT_EQ(out[0].field, "/backing/width");
    EXPECT_EQ(out[0].level, Finding::Level::warn);
    EXPECT_THAT(out[0].text, HasSubstr("wide once it is washed"));
    // 92 in are left of 96.85: 2.85 more than the 94 measured, to the next eighth.
    EXPECT_THAT(
        out[0].cure,
        HasSubstr("in). It just does with 2 7/8 in more, which leaves half of the overage"));
    EXPECT_THAT(out[0].cure, HasSubstr(" wider ("));
}

TEST(Proof, EveryLayerAndDirectionIsJudgedByItself) {
    const Findings out = proveSizes(harbour(), sizes({80_in, 112_in}, {88_in, 100_in}));
    ASSERT_EQ(out.size(), 4u);
    EXPECT_EQ(std::ranges::count(out, Finding::Level::stop, &Finding::level), 2);
}

TEST(Proof, CureCures) {
    std::mt19937_64 random{7};
    for (int i = 0; i < 500; ++i) {
        const auto any = [&](Length about) {
            return about + Length::inch64ths(8 * (std::int64_t(random() % 160) - 80));
        };
        Job job = harbour();
        LayerSizes layers = sizes({any(90_in), any(114_in)}, {any(92_in), any(116_in)});
        for (const Finding& f : proveSizes(job, layers)) {
            // '… It just does with 3 in more, which leaves half of the overage.'
            const std::string cure = f.cure.english();
            const std::string_view before = "just does with ";
            const auto at = cure.find(before) + before.size();
            const auto more = parseLength(cure.substr(at, cure.find(" more, ") - at), Unit::inch);
            ASSERT_TRUE(more) << f.cure;
            Size& layer =
                f.text.english().starts_with("The backing") ? layers.backing : layers.batting;
            const bool wider = cure.find(" wider (") != std::string::npos;
            EXPECT_NE(wider, cure.find(" longer (") != std::string::npos) << f.cure;
            EXPECT_EQ(wider, f.text.english().find(" wide and ") != std::string::npos) << f.text;
            (wider ? layer.width : layer.length) += *more;
        }
        EXPECT_THAT(proveSizes(job, layers), IsEmpty());
    }
}

// Every layer lies with its middle under the top's: what it is larger is half on each side.
TEST(Spare, IsHalfOfWhatTheLayerIsLarger) {
    const Job job = harbour();
    const LayerSpare spare = spareOf(job.top, {96_in, 119_in});
    EXPECT_EQ(spare.sides.overage, 4_in);
    EXPECT_EQ(spare.ends.overage, Length::inch64ths(7 * 32));
    EXPECT_EQ(spare.sides.squaring, Length{});
    EXPECT_EQ(spare.ends.squaring, Length{});
    EXPECT_EQ(spare.sides.left(), 4_in - kCreep);
}

// A top that is no rectangle takes up more than its readings: what it leans goes off the spare, the
// overage stays what lies there.
TEST(Spare, LosesWhatTheTopLeans) {
    Job job = harbour();
    const LayerSpare straight = spareOf(job.top, {92_in, 116_in});
    // A parallelogram with sides of 88 and 112 in whose corners are 2 in aside: by the law of
    // cosines d² = 88² + 112² ± 2 · 88 · 2 (to the nearest 64th).
    const double sum = 88.0 * 88 + 112.0 * 112;
    job.top.diagonals = {Length::nearestInches(std::sqrt(sum + 352)),
                         Length::nearestInches(std::sqrt(sum - 352))};
    const LayerSpare leaning = spareOf(job.top, {92_in, 116_in});
    EXPECT_EQ(leaning.sides.overage, straight.sides.overage);
    EXPECT_EQ(leaning.ends.overage, straight.ends.overage);
    EXPECT_NEAR(leaning.sides.squaring.in(), 1, 0.1);
    EXPECT_LT(leaning.sides.left(), straight.sides.left());
    EXPECT_LE(leaning.ends.left(), straight.ends.left());
}

TEST(Spare, OfALayerThatIsTooSmallIsLessThanNothing) {
    const LayerSpare spare = spareOf(harbour().top, {87_in, 112_in});
    EXPECT_LT(spare.sides.overage, Length{});
    EXPECT_EQ(spare.ends.overage, Length{});
    EXPECT_EQ(spare.ends.left(), -kCreep);
}

} // namespace
} // namespace bastewright
