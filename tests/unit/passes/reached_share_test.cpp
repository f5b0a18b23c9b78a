#include "planners/passes/reached_share.h"
#include "unit/passes/boards.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

std::vector<Helper> people(std::initializer_list<Length> reaches) {
    std::vector<Helper> out;
    for (const Length reach : reaches) {
        out.emplace_back().reach = reach;
        out.back().lean = 4_in;
    }
    return out;
}

class ReachedShares : public ::testing::Test {
protected:
    double points(const std::vector<Helper>& helpers, std::vector<Point> worked) const {
        return ReachedShare{helpers, lie, false}.points(table, worked);
    }
    Lie lie = testing::tableOf(72_in, 60_in, 31_in);
    Rect table{{}, {}, 72_in, 60_in};
};

TEST_F(ReachedShares, CountsAPointOnceWhereEverybodyReachesIt) {
    EXPECT_DOUBLE_EQ(points(people({27_in, 25_in}), {{10_in, 10_in}, {60_in, 50_in}}), 2);
}

TEST_F(ReachedShares, CountsHalfAsMuchAgainWhereAllLean) {
    EXPECT_DOUBLE_EQ(points(people({27_in, 27_in}), {{36_in, 30_in}}), 1.5);
}

TEST_F(ReachedShares, IsDoubleWhereOneOfTwoReaches) {
    EXPECT_DOUBLE_EQ(points(people({27_in, 20_in}), {{36_in, 26_in}}), 2);
    // Who leans for it does two thirds of what the other does.
    EXPECT_DOUBLE_EQ(points(people({27_in, 23_in}), {{36_in, 26_in}}), 1.2);
}

TEST_F(ReachedShares, IsSharedByNoMoreThanFindRoomAtTheOnlySide) {
    lie.closed = {Side::head, Side::left, Side::right};
    // Three stand at 72 in; of five people they have the work of all.
    EXPECT_NEAR(points(people({27_in, 27_in, 27_in, 27_in, 27_in}), {{36_in, 50_in}}), 5.0 / 3,
                1e-12);
}

TEST_F(ReachedShares, CountsNobodysReachOnTheFloor) {
    lie.floor = true;
    EXPECT_DOUBLE_EQ(points(people({5_in}), {{36_in, 30_in}}), 1);
}

} // namespace
} // namespace bastewright
