#include "unit/passes/boards.h"

#include <gtest/gtest.h>

#include <tuple>

namespace bastewright {
namespace {

using namespace literals;
using testing::fewest;
using testing::rowsAcross;
using Start = Basting::Start;

// A deeper table, as long as its middle stays within reach and 12 in, never takes more passes.
TEST(MoreNeverHurts, ADeeperTable) {
    for (const auto& [width, length] : {std::pair{88_in, 112_in}, {60_in, 76_in}, {100_in, 100_in}})
        for (const Start start : {Start::centred, Start::besideMiddle}) {
            const Board board = rowsAcross(width, length);
            std::size_t before = 0;
            for (Length deep = 24_in; deep <= 72_in; deep += 1_in) {
                const std::size_t now = fewest(board, 72_in, deep, start);
                EXPECT_TRUE(before == 0 || (now > 0 && now <= before))
                    << width.in() << " x " << length.in() << ", " << deep.in() << " deep: " << now
                    << " after " << before;
                before = now == 0 ? before : now;
            }
        }
}

TEST(MoreNeverHurts, ALongerTable) {
    for (const auto& [width, length] : {std::pair{88_in, 112_in}, {70_in, 90_in}}) {
        const Board board = rowsAcross(width, length);
        std::size_t before = 0;
        for (Length long_ = 48_in; long_ <= 144_in; long_ += 4_in) {
            const std::size_t now = fewest(board, long_, 30_in, Start::besideMiddle);
            EXPECT_TRUE(before == 0 || (now > 0 && now <= before)) << long_.in();
            before = now == 0 ? before : now;
        }
    }
}

TEST(MoreNeverHurts, MoreReach) {
    const Board board = rowsAcross(88_in, 112_in);
    for (const Length deep : {48_in, 60_in, 66_in, 72_in}) {
        std::size_t before = 0;
        for (Length reach = 24_in; reach <= 40_in; reach += 1_in) {
            const std::size_t now = fewest(board, 72_in, deep, Start::besideMiddle, reach);
            EXPECT_TRUE(before == 0 || (now > 0 && now <= before)) << deep.in() << reach.in();
            before = now == 0 ? before : now;
        }
    }
}

} // namespace
} // namespace bastewright
