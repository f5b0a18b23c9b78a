#include "planners/passes/nearby.h"
#include "planners/passes/passes.h"
#include "unit/passes/boards.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>

namespace bastewright {
namespace {

using namespace literals;
using testing::squares;
using testing::tableOf;
using Start = Basting::Start;

constexpr Length kSquare = 4_in;

/// The rows of squares that each pass bastes: "0-7 7-10". All of them reach from side to side.
std::string rowsOf(const Board& board, const Sequence& s) {
    std::string out;
    for (const Step& step : s.steps) {
        const Rect fresh = regionOf(board, s.cells, step.fresh).bounds();
        const auto row = [](Length at) { return std::to_string(std::lround(ratio(at, kSquare))); };
        out += (out.empty() ? "" : " ") + row(fresh.y0) + "-" + row(fresh.y1);
    }
    return out;
}

struct Strip {
    Start start;
    Length length;
    std::string from;
    std::set<std::string> near;
};

// Squares of 4 in, five across, on a table of 30 × 30 in: it holds seven rows, for points lie 2 in
// inside its edge. A boundary moves by a row or two as long as the points stay on the table and the
// rows next to the middle in the first pass; what is not first may come in any order; from one end
// the rows of passes stay as they are.
const std::vector<Strip> kStrips{
    {Start::centred,
     60_in,
     "4-11 11-15 0-4",
     {"4-11 11-15 0-4", "4-11 0-4 11-15", "4-10 10-15 0-4", "4-9 9-15 0-4", "5-11 11-15 0-5",
      "6-11 11-15 0-6"}},
    {Start::besideMiddle,
     60_in,
     "4-11 0-4 11-15",
     {"4-11 0-4 11-15", "4-11 11-15 0-4", "4-10 0-4 10-15", "4-9 0-4 9-15", "5-11 0-5 11-15",
      "6-11 0-6 11-15"}},
    {Start::besideMiddle, 40_in, "0-7 7-10", {"0-7 7-10", "0-6 6-10", "3-10 0-3"}},
    {Start::oneEnd, 40_in, "0-7 7-10", {"0-7 7-10", "0-6 6-10", "0-5 5-10"}},
    {Start::oneEnd,
     60_in,
     "0-7 7-13 13-15",
     {"0-7 7-13 13-15", "0-7 7-12 12-15", "0-7 7-11 11-15"}},
};

TEST(NearWays, OfAStripAreItsOrdersAndBoundariesARowOrTwoFartherOn) {
    for (const Strip& c : kStrips) {
        const Board board = squares(5 * kSquare, c.length, kSquare);
        const Lie lie = tableOf(30_in, 30_in);
        const LayoutInput in{board, lie, c.start, 2_in};
        const auto layout = layOut(in);
        ASSERT_TRUE(layout);
        ASSERT_EQ(rowsOf(board, layout->sequence), c.from);
        std::set<std::string> found;
        for (const Sequence& s : nearby(in, layout->sequence, {}))
            found.insert(rowsOf(board, s));
        EXPECT_EQ(found, c.near) << c.from;
    }
}

// Whichever corner the rows of passes begin in.
TEST(NearWays, FromTheOtherEndMirrorThoseFromTheOne) {
    const Board board = squares(5 * kSquare, 40_in, kSquare);
    const Lie lie = tableOf(30_in, 30_in);
    const LayoutInput in{board, lie, Start::oneEnd, 2_in};
    const std::vector<Window> windows{{0, 5, 3, 10}, {0, 5, 0, 7}};
    const auto from = inOrder(board, lie, {areaOf(board, windows.front()), {}}, windows);
    ASSERT_TRUE(from);
    ASSERT_EQ(rowsOf(board, *from), "3-10 0-3");
    std::set<std::string> found;
    for (const Sequence& s : nearby(in, *from, {}))
        found.insert(rowsOf(board, s));
    EXPECT_EQ(found, (std::set<std::string>{"3-10 0-3", "4-10 0-4", "5-10 0-5"}));
}

// 20 in lie on 30 in whole: the table may lie anywhere from -10 in on, and is tried at both ends
// and 6 in from each, and 1, 2 and 3 in to either side of where it was (6 in are too far). Along
// the other axis a start from the middle keeps it.
TEST(NearWays, PutTheTableElsewhereWhereTheTopLiesOnItWhole) {
    for (const Start start : {Start::centred, Start::besideMiddle}) {
        const Board board = squares(5 * kSquare, 60_in, kSquare);
        const Lie lie = tableOf(30_in, 30_in);
        const LayoutInput in{board, lie, start, 2_in};
        const auto layout = layOut(in);
        ASSERT_TRUE(layout);
        ASSERT_EQ(layout->sequence.steps.front().at, (Point{-5_in, 15_in}));
        std::set<Length> x, y;
        for (const Sequence& s : nearby(in, layout->sequence, {})) {
            if (rowsOf(board, s) != rowsOf(board, layout->sequence))
                continue;
            x.insert(s.steps.front().at.x);
            y.insert(s.steps.front().at.y);
        }
        EXPECT_EQ(x, (std::set{-10_in, -8_in, -7_in, -6_in, -5_in, -4_in, -3_in, -2_in, 0_in}));
        EXPECT_EQ(y.size() == 1, start == Start::centred);
        EXPECT_TRUE(y.contains(15_in));
    }
}

/// From which pass on a table lies elsewhere than it did; −1 where nowhere.
int elsewhere(const Sequence& a, const Sequence& b) {
    int passes = 0;
    for (std::size_t k = 0; k < a.steps.size(); ++k)
        passes += a.steps[k].at != b.steps[k].at ? 1 : 0;
    return passes;
}

bool sameFields(const Sequence& a, const Sequence& b) {
    return std::ranges::equal(a.windows, b.windows);
}

bool sameFieldsInAnyOrder(Sequence a, Sequence b) {
    std::ranges::sort(a.windows);
    std::ranges::sort(b.windows);
    return sameFields(a, b);
}

// Every start, tables of which the top hangs on one side, on both, on none: all that is near can be
// worked, in no more passes, and begins as the start asks.
TEST(NearWays, AreSoundForEveryStart) {
    struct OnTable {
        Length width, length, tableWidth, tableLength;
    };
    std::map<std::string, int> kinds;
    for (const OnTable& c : {OnTable{40_in, 50_in, 30_in, 72_in},
                             {60_in, 76_in, 60_in, 60_in},
                             {70_in, 90_in, 60_in, 72_in},
                             {78_in, 94.5_in, 60_in, 96_in},
                             {88_in, 112_in, 30_in, 144_in}})
        for (const Start start : {Start::centred, Start::besideMiddle, Start::oneEnd}) {
            const Board board = testing::rowsAcross(c.width, c.length);
            const Lie lie = tableOf(c.tableWidth, c.tableLength);
            const LayoutInput in{board, lie, start, 2_in};
            const auto layout = layOut(in);
            ASSERT_TRUE(layout);
            const Sequence& from = layout->sequence;
            for (const Sequence& s : nearby(in, from, {})) {
                EXPECT_EQ(testing::faults(board, lie, s), "");
                EXPECT_LE(s.steps.size(), from.steps.size());
                const Rect first = areaOf(board, s.windows.front());
                const Point middle{board.x.quilt / 2, board.y.quilt / 2};
                const Rect table = Rect{{}, {}, lie.x.size, lie.y.size}.moved(
                    {s.steps.front().at.x, s.steps.front().at.y});
                if (start == Start::oneEnd)
                    EXPECT_TRUE((first.x0 == 0_in || first.x1 == board.x.quilt) &&
                                (first.y0 == 0_in || first.y1 == board.y.quilt));
                else
                    EXPECT_TRUE(first.contains(middle));
                if (start == Start::centred) {
                    EXPECT_TRUE(fits(board.x, lie.x) ||
                                abs(table.middle().x - middle.x) < 0.125_in);
                    EXPECT_TRUE(fits(board.y, lie.y) ||
                                abs(table.middle().y - middle.y) < 0.125_in);
                }
                const std::string of = std::to_string(static_cast<int>(start));
                if (!sameFieldsInAnyOrder(s, from))
                    ++kinds["boundary " + of];
                else if (!sameFields(s, from))
                    ++kinds["order " + of];
                else if (const int moved = elsewhere(s, from); moved > 0)
                    ++kinds[(moved == 1 ? "one table " : "tables ") + of];
            }
        }
    // No other order from one end; each of the others of every start.
    EXPECT_EQ(kinds.size(), 11u);
    for (const auto& [kind, times] : kinds)
        EXPECT_GT(times, 4) << kind;
    EXPECT_FALSE(kinds.contains("order " + std::to_string(static_cast<int>(Start::oneEnd))));
}

/// A top of this size with pins in rows and four people at tables of 72 × 30 in.
struct FourAtTables {
    Job job;
    Setting setting;
    LayerSizes layers;
    std::vector<PlacedPoint> points;

    FourAtTables(Length width, Length length, int tables, Length reach) {
        job.top.width = {width};
        job.top.length = {length};
        layers = {{width, length}, {width + 4_in, length + 4_in}, {width + 8_in, length + 8_in}};
        setting.helpers.resize(4);
        for (Helper& h : setting.helpers)
            h.reach = reach;
        setting.room.tables = {{72_in, 30_in, tables, {}}};
        for (const Point& p : testing::rowsAcross(width, length).points)
            points.push_back({p, 0});
    }
    PassRequest request() const { return {job, setting, layers, points}; }
};

/// Hands and shifts of a way are those of its passes.
void expectSummedUp(const PassChoice& way) {
    const Alternative& a = way.summary;
    const int moves = a.passes + a.pulls - 1;
    EXPECT_EQ(a.lifts, a.liftPeople > 1 ? moves : 0);
    EXPECT_EQ(a.liftKilograms > 0, moves > 0);
    EXPECT_EQ(a.shifted > Length{}, moves > 0);
}

TEST(NearWays, AreEachListedOnceTakeNoMorePullsAndAreSummedUpAnew) {
    int near = 0, far = 0, fewerPulls = 0;
    for (const auto& [width, length, tables, reach] : {std::tuple{40_in, 50_in, 2, 27_in},
                                                       {40_in, 50_in, 2, 25_in},
                                                       {60_in, 76_in, 2, 27_in},
                                                       {70_in, 90_in, 3, 27_in},
                                                       {88_in, 112_in, 1, 27_in}}) {
        const FourAtTables hall{width, length, tables, reach};
        for (PassChoice& way :
             passChoices(hall.request(), arrangements(hall.setting.room.tables))) {
            if (!way.summary.workable)
                continue;
            const int pulls = way.summary.pulls;
            makeEven(hall.request(), way);
            expectSummedUp(way);
            fewerPulls += way.summary.pulls < pulls ? 1 : 0;
            const std::vector<PassChoice> others = nearWays(hall.request(), way);
            if (way.summary.passes > 6) {
                EXPECT_TRUE(others.empty());
                ++far;
                continue;
            }
            std::set<std::pair<std::vector<Window>, std::vector<Point>>> known;
            const auto add = [&](const PassChoice& c) {
                std::vector<Point> places;
                for (const Step& s : c.sequence.steps)
                    places.push_back(s.at);
                return known.emplace(c.sequence.windows, places).second;
            };
            add(way);
            for (const PassChoice& other : others) {
                ++near;
                EXPECT_TRUE(add(other)) << "listed twice";
                EXPECT_TRUE(other.summary.workable);
                EXPECT_LE(other.summary.passes, way.summary.passes);
                EXPECT_LE(other.summary.pulls, way.summary.pulls);
                expectSummedUp(other);
            }
        }
    }
    EXPECT_GT(near, 100);
    EXPECT_GT(far, 0);
    EXPECT_GT(fewerPulls, 0) << "no case in which a pull falls away";
}

} // namespace
} // namespace bastewright
