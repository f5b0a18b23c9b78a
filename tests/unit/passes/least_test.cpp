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
    in.start = c.centred ? Basting::Start::centred : Basting::Start::fewestShifts;
    return in;
}

struct Comparison {
    int cases = 0, least = 0;
};

/// The planner's count beside the least of all dissections, for fields that need up to three by
/// three of them.
Comparison compare(bool centred) {
    Comparison out;
    for (const auto& [u, v] : {std::pair{2, 2}, {3, 2}, {3, 3}, {4, 3}, {4, 4}, {6, 2}, {7, 3}})
        for (int w = 2; w <= std::min(8, 3 * u - 2); ++w)
            for (int l = 2; l <= std::min(8, 3 * v - 2); ++l) {
                const Cells c{w, l, u, v, centred};
                const LayoutInput in = inInches(c);
                const int planned = int(layouts(in).front().areas.size());
                const int least = leastByEveryDissection(c, planned - 1);
                EXPECT_LE(planned, least + 1) << w << " x " << l << " cells on " << u << " x " << v;
                EXPECT_GE(least, leastPasses(in)) << "the bound holds for any dissection";
                ++out.cases;
                out.least += planned == least ? 1 : 0;
            }
    return out;
}

// Every cut into rectangles of whole cells and every order of them is tried. The planner's shapes
// are never more than one pass above the least, and are the least in nineteen cases of twenty.
TEST(LeastPasses, CentredStartIsTheLeastOfAllDissectionsNearlyAlways) {
    const Comparison c = compare(true);
    EXPECT_GE(c.least * 20, c.cases * 19) << c.least << " of " << c.cases;
}

TEST(LeastPasses, FewestShiftsIsTheLeastOfAllDissectionsInNineOfTen) {
    const Comparison c = compare(false);
    EXPECT_GE(c.least * 10, c.cases * 9) << c.least << " of " << c.cases;
}

} // namespace
} // namespace bastewright::testing
