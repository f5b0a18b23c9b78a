#include "planners/passes/passes.h"
#include "planners/surface/arrangement.h"

#include <gtest/gtest.h>

using namespace bastewright;

namespace {

/// Harbour Lights' size with sashing: 88 × 112 in, on tables of 30 × 72 in.
struct Demo {
    Job job;
    Setting setting;
    LayerSizes layers{{88_in, 112_in}, {92_in, 116_in}, {96_in, 120_in}};
    std::vector<PassChoice> choices;

    explicit Demo(int tables) {
        job.top.width = {88_in};
        job.top.length = {112_in};
        setting.helpers.resize(4);
        choices = passChoices({job, setting, layers, 540},
                              arrangements(std::vector<Table>{{72_in, 30_in, tables}}));
    }
};

// Where only a strip within reach is used, nothing that is worked lies deeper than that reach: rows
// that a later area takes over do not count for the earlier one.
TEST(PassChoices, AStripIsNeverWorkedDeeperThanItsReach) {
    int strips = 0;
    for (const int tables : {2, 3, 4}) {
        const Demo demo{tables};
        const Length reach = commonReach(demo.setting.helpers);
        for (const PassChoice& c : demo.choices) {
            if (!c.summary.workable || c.workable.whole)
                continue;
            ++strips;
            EXPECT_LE(c.summary.reach, reach) << c.summary.surface << ", " << tables << " tables";
        }
    }
    EXPECT_GT(strips, 10);
}

} // namespace
