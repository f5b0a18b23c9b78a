#include "planners/whole/quilt.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

/// Ways as the choice of passes hands them on: those that differ in nothing that is told are told
/// once, and counted once.
class WaysTold : public ::testing::Test {
protected:
    WaysTold() {
        Job job;
        job.name = "Harbour Lights";
        job.top.width = {88_in};
        job.top.length = {112_in};
        job.batting.width = 92_in;
        job.batting.length = 116_in;
        job.backing.width = 96_in;
        job.backing.length = 120_in;
        session_.jobs = {job};
    }

    /// One that takes so many minutes.
    void offer(int minutes, bool workable = true, Sentence why = {}) {
        PassChoice& c = choices_.emplace_back();
        c.summary.surface = core::says("2 tables end to end");
        c.summary.passes = 5;
        c.summary.predicted = Seconds{minutes * 60};
        c.summary.workable = workable;
        c.summary.why = std::move(why);
    }

    std::vector<Alternative> told() const {
        const Shared shared{0, 1, choices_};
        QuiltPlan lying;
        lying.layers = layerSizes(session_).front();
        Findings findings;
        return planQuilt(session_, shared, std::move(lying), {}, findings).alternatives;
    }

    Session session_;
    std::vector<PassChoice> choices_;
};

TEST_F(WaysTold, TwoThatDifferInNothingToldAreOneAndCountAsOne) {
    offer(100);
    offer(120);
    offer(120);
    const std::vector<Alternative> ways = told();
    ASSERT_EQ(ways.size(), 2U);
    EXPECT_TRUE(ways[0].chosen);
    EXPECT_EQ(ways[0].why.english(), "quickest of 2 that work");
    EXPECT_FALSE(ways[1].chosen);
    EXPECT_NE(ways[1].why.english().find("longer"), std::string::npos) << ways[1].why;
}

TEST_F(WaysTold, TheSecondOfTwoAlikeDoesNotMakeTheOnlyOneTheQuickestOfTwo) {
    offer(100);
    offer(100, true, core::says("the tables are turned"));
    offer(0, false, core::says("nobody reaches the middle"));
    const std::vector<Alternative> ways = told();
    ASSERT_EQ(ways.size(), 2U);
    EXPECT_EQ(ways[0].why.english(), "the only one that works");
    EXPECT_EQ(ways[1].why.english(), "nobody reaches the middle");
}

TEST_F(WaysTold, WaysThatDoNotWorkForDifferentReasonsAreBothTold) {
    offer(0, false, core::says("nobody reaches the middle"));
    offer(0, false, core::says("the field is narrower than 16 in"));
    offer(0, false, core::says("nobody reaches the middle"));
    const std::vector<Alternative> ways = told();
    ASSERT_EQ(ways.size(), 2U);
    EXPECT_FALSE(ways[0].chosen);
    EXPECT_EQ(ways[1].why.english(), "the field is narrower than 16 in");
}

TEST_F(WaysTold, AllThatWorkAreCountedThoughOnlyTheFirstAreListed) {
    for (int k = 0; k < 30; ++k)
        offer(100 + k);
    const std::vector<Alternative> ways = told();
    EXPECT_EQ(ways.size(), 24U);
    EXPECT_EQ(ways[0].why.english(), "quickest of 30 that work");
}

} // namespace
} // namespace bastewright
