#include "planners/passes/layout.h"
#include "unit/passes/every_dissection.h"

#include <gtest/gtest.h>

namespace bastewright::testing {
namespace {

LayoutInput inInches(const Cells& c) {
    const Length cell = Length::inches(6);
    LayoutInput in;
    in.top = {cell * c.width, cell * c.length};
    in.surface.table = {cell * c.fieldWidth, cell * c.fieldLength};
    in.surface.field = {{}, {}, cell * c.fieldWidth, cell * c.fieldLength};
    in.anchor = cell;
    in.start = c.centred ? Basting::Start::centred : Basting::Start::besideMiddle;
    return in;
}

/// The planner takes no more passes than the least of all dissections, for fields that need up to
/// three by three of them; fewer where a boundary between two cells spares one. That what it finds
/// is sound is shown in layout_test.cpp.
void compare(bool centred) {
    for (const auto& [u, v] : {std::pair{2, 2}, {3, 2}, {3, 3}, {4, 3}, {4, 4}, {6, 2}, {7, 3}})
        for (int w = 2; w <= std::min(8, 3 * u - 2); ++w)
            for (int l = 2; l <= std::min(8, 3 * v - 2); ++l) {
                const Cells c{w, l, u, v, centred};
                const LayoutInput in = inInches(c);
                const int planned = int(layouts(in).front().areas.size());
                EXPECT_EQ(planned, leastByEveryDissection(c, planned - 1))
                    << w << " x " << l << " cells on " << u << " x " << v;
                EXPECT_GE(leastByEveryDissection(c, planned), leastPasses(in)) << "a bound of any";
            }
}

// Every cut into rectangles of whole cells and every order of them is tried.
TEST(LeastPasses, CentredStartIsTheLeastOfAllDissections) {
    compare(true);
}

TEST(LeastPasses, FewestShiftsIsTheLeastOfAllDissections) {
    compare(false);
}

} // namespace
} // namespace bastewright::testing
