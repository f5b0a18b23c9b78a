#include "planners/passes/cuts.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

std::vector<Length> placesOf(const AxisLines& lines) {
    std::vector<Length> out;
    for (const Cut& c : lines.cuts)
        out.push_back(c.at);
    return out;
}

TEST(Cuts, LieMidwayBetweenRows) {
    const AxisLines lines = axisLines({9_in, 1_in, 5_in, 5_in}, 10_in, 4_in, {});
    EXPECT_EQ(placesOf(lines), (std::vector{Length{}, 3_in, 7_in, 10_in}));
    EXPECT_EQ(lines.cuts[1].before, 1u);
    EXPECT_EQ(lines.cuts[3].before, 3u);
}

// Every second row half a step over: the marks of odd and even rows make cuts at half steps.
TEST(Cuts, OfMarksLieAtHalfSteps) {
    const AxisLines lines = axisLines({1_in, 3_in, 5_in, 7_in}, 8_in, 4_in, {});
    EXPECT_EQ(placesOf(lines), (std::vector{Length{}, 2_in, 4_in, 6_in, 8_in}));
}

TEST(Cuts, RunAlongASeamNearTheMiddle) {
    const std::vector<Length> seams{3.5_in, 8.75_in};
    const AxisLines lines = axisLines({1_in, 5_in, 9_in}, 10_in, 4_in, seams);
    EXPECT_EQ(placesOf(lines), (std::vector{Length{}, 3.5_in, 7_in, 10_in}))
        << "a seam hard by a row shows no boundary between rows";
}

TEST(Cuts, LieAtQuarterInchesWherePointsLieAnyhow) {
    std::vector<Length> anyhow;
    for (int i = 0; i < 200; ++i)
        anyhow.push_back(Length::inch64ths(64 + i * 13));
    const AxisLines lines = axisLines(anyhow, 42_in, 4_in, {});
    for (std::size_t i = 1; i < lines.cuts.size(); ++i) {
        EXPECT_GT(lines.cuts[i].at, lines.cuts[i - 1].at);
        EXPECT_LE(lines.cuts[i].at - lines.cuts[i - 1].at, 2_in);
    }
    for (const Cut& c : lines.cuts) {
        const auto before = std::ranges::count_if(anyhow, [&](Length at) { return at < c.at; });
        EXPECT_EQ(c.before, static_cast<std::size_t>(before));
    }
}

TEST(Cuts, WithoutPointsStandASpacingApart) {
    const AxisLines lines = axisLines({}, 20_in, 4_in, {});
    EXPECT_EQ(lines.cuts.size(), 6u);
}

TEST(CutBefore, IsTheLastAtOrBefore) {
    const AxisLines lines = axisLines({1_in, 5_in, 9_in}, 10_in, 4_in, {});
    EXPECT_EQ(cutBefore(lines, {}), 0u);
    EXPECT_EQ(cutBefore(lines, 3_in), 1u);
    EXPECT_EQ(cutBefore(lines, 6.99_in), 1u);
    EXPECT_EQ(cutBefore(lines, 10_in), 2u) << "the end belongs to the last stretch";
}

} // namespace
} // namespace bastewright
