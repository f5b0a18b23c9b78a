#include "unit/passes/boards.h"
#include "unit/passes/every_sequence.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;
using testing::leastByEverySequence;
using testing::squares;
using testing::tableOf;

// On small boards every sequence of windows of any size and place is looked through: what the
// planner finds from the middle and beside it is the least.
TEST(Layout, FindsTheLeastOfEverySequenceOnSmallBoards) {
    int searched = 0;
    for (const int columns : {3, 4, 5})
        for (const int rows : {3, 4, 5})
            for (const Length side : {20_in, 24_in, 28_in, 36_in}) {
                SCOPED_TRACE(std::to_string(columns) + " x " + std::to_string(rows) + " on " +
                             std::to_string(side.in()));
                const Board board = squares(8_in * columns, 8_in * rows, 8_in);
                Lie lie = tableOf(side, 28_in);
                lie.x.row = lie.y.row = {};
                for (const auto start : {Basting::Start::centred, Basting::Start::besideMiddle}) {
                    const auto layout = layOut({board, lie, start, 4_in});
                    if (!layout)
                        continue;
                    const auto& windows = layout->sequence.windows;
                    FirstPass first{areaOf(board, windows.front()), {}};
                    if (start == Basting::Start::centred) {
                        const Step& step = layout->sequence.steps.front();
                        first.fixed = step.at;
                    } else {
                        const Point m{board.x.quilt / 2, board.y.quilt / 2};
                        first.held = {m.x - 4_in, m.y - 4_in, m.x + 4_in, m.y + 4_in};
                    }
                    const std::size_t least =
                        leastByEverySequence(board, lie, first, windows.size());
                    EXPECT_EQ(windows.size(), least);
                    ++searched;
                }
            }
    EXPECT_GT(searched, 40);
}

} // namespace
} // namespace bastewright
