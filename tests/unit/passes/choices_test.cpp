#include "planners/passes/passes.h"
#include "planners/surface/arrangement.h"
#include "planners/surface/reachable.h"
#include "unit/passes/boards.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

/// A top of this size with pins in rows, on tables of 30 × 72 in.
struct Demo {
    Job job;
    Setting setting;
    LayerSizes layers;
    std::vector<PlacedPoint> points;

    Demo(Length width, Length length, int tables) {
        job.top.width = {width};
        job.top.length = {length};
        layers = {{width, length}, {width + 4_in, length + 4_in}, {width + 8_in, length + 8_in}};
        setting.helpers.resize(4);
        setting.room.tables = {{72_in, 30_in, tables, {}}};
        for (const Point& p : testing::rowsAcross(width, length).points)
            points.push_back({p, 0});
    }
    PassRequest request() const { return {job, setting, layers, points}; }
    std::vector<PassChoice> choices() const {
        return passChoices(request(), arrangements(setting.room.tables));
    }
};

TEST(PassChoices, NothingIsWorkedBeyondWhatAnybodyReaches) {
    int deep = 0;
    for (const int tables : {2, 3, 4}) {
        const Demo demo{88_in, 112_in, tables};
        const Length reach = farthestReach(demo.setting.helpers, Basting::With::pins);
        for (const PassChoice& c : demo.choices()) {
            if (!c.summary.workable)
                continue;
            deep += c.summary.pulls > 0 ? 1 : 0;
            EXPECT_LE(c.summary.reach, reach + Length::inch64ths(1))
                << c.surface.name.english() << ", " << tables << " tables";
        }
    }
    EXPECT_GT(deep, 2) << "the middle 10 in of a surface 72 in deep are pulled across";
}

// Work lies along the open edge of a table whose other side is against a wall, however deep it is.
TEST(PassChoices, ADeeperTableAtAWallTakesNoLonger) {
    Seconds before{};
    for (const Length deep : {64_in, 66_in, 68_in, 72_in}) {
        Demo demo{64_in, 68_in, 1};
        demo.setting.room.tables = {{96_in, deep, 1, {}}};
        demo.setting.room.walls = {Side::foot};
        demo.setting.helpers.front().reach = 29_in;
        demo.setting.helpers.back().reach = 24_in;
        Seconds quickest{};
        for (const PassChoice& c : demo.choices())
            if (c.summary.workable && c.surface.width == deep &&
                (quickest == Seconds{} || c.summary.predicted < quickest))
                quickest = c.summary.predicted;
        ASSERT_GT(quickest, Seconds{}) << deep.in();
        if (before > Seconds{}) {
            EXPECT_LE(double(quickest.count()), 1.01 * double(before.count())) << deep.in();
        }
        before = quickest;
    }
}

// More table never gives more passes: all that fewer tables make is still there to choose from.
TEST(PassChoices, AnotherTableNeverTakesMorePasses) {
    const std::vector<Size> tops{{40_in, 50_in}, {70_in, 90_in}, {88_in, 112_in}, {100_in, 100_in}};
    for (const Size& top : tops) {
        int before = 100;
        for (const int tables : {1, 2, 3, 4}) {
            const Demo demo{top.width, top.length, tables};
            const auto choices = demo.choices();
            ASSERT_TRUE(choices.front().summary.workable);
            EXPECT_LE(choices.front().summary.passes, before) << tables;
            before = choices.front().summary.passes;
        }
    }
}

TEST(PassChoices, TablesOfDifferentGroupsStayApart) {
    Demo demo{88_in, 112_in, 1};
    demo.setting.room.tables.push_back({72_in, 30_in, 1, "by the stage"});
    for (const PassChoice& c : demo.choices())
        EXPECT_EQ(c.surface.tables.size(), 1u);
    demo.setting.room.tables.back().group = "";
    bool together = false;
    for (const PassChoice& c : demo.choices())
        together = together || c.surface.tables.size() == 2;
    EXPECT_TRUE(together);
}

TEST(DetailedPasses, OfEveryWayTileTheTopAndHoldTheirPoints) {
    for (const int tables : {1, 2, 3}) {
        const Demo demo{78_in, 94.5_in, tables};
        for (PassChoice& c : demo.choices()) {
            if (!c.summary.workable)
                continue;
            makeEven(demo.request(), c);
            const std::vector<Pass> passes = detailedPasses(demo.request(), c);
            double area = 0;
            std::size_t points = 0;
            for (const Pass& p : passes) {
                area += areaSquareInches(p.fresh);
                for (const PlacedPoint& at : demo.points)
                    if (p.fresh.contains(at.at)) {
                        ++points;
                        EXPECT_TRUE(p.field.contains(at.at));
                    }
            }
            EXPECT_NEAR(area, 78 * 94.5, 1e-6);
            EXPECT_EQ(points, demo.points.size());
            EXPECT_EQ(static_cast<int>(passes.size()), c.summary.passes + c.summary.pulls);
        }
    }
}

// Nothing hangs or is clamped over a side against a wall; a foot away it may.
TEST(DetailedPasses, NothingHangsAgainstAWall) {
    Demo demo{88_in, 112_in, 2};
    demo.setting.room.walls = {Side::head};
    for (const bool away : {false, true}) {
        demo.setting.room.wallGap = away ? 12_in : Length{};
        int onTable = 0;
        for (const PassChoice& c : demo.choices()) {
            if (!c.summary.workable)
                continue;
            ASSERT_EQ(c.lie.closed.size(), 1u);
            const Side wall = c.lie.closed.front();
            for (const Pass& p : detailedPasses(demo.request(), c)) {
                onTable += p.beyond[wall] == Beyond::onTable ? 1 : 0;
                for (const Hold& h : p.holds)
                    if (h.side == wall && !away) {
                        EXPECT_EQ(h.kind, Hold::Kind::tape);
                    }
            }
        }
        EXPECT_EQ(onTable == 0, away);
    }
}

} // namespace
} // namespace bastewright
