#include "sheets/hold_order.h"

#include <gtest/gtest.h>

namespace bastewright::sheets {
namespace {

// Those with one number face each other and are set at the same moment.
TEST(HoldOrder, goesByTheNumbers) {
    Pass pass;
    pass.holds = {{Side::left, Hold::Kind::clamp, 3, {}, {50_in, 35_in, 65_in}, {1, 3, 5}, 15_in},
                  {Side::right, Hold::Kind::clamp, 1, {}, {50_in}, {1}, {}},
                  {Side::head, Hold::Kind::tape, 2, 12_in, {20_in, 30_in}, {2, 4}, 10_in}};
    const std::vector<HoldPoint> expected{
        {1, Side::left, Hold::Kind::clamp, 50_in}, {1, Side::right, Hold::Kind::clamp, 50_in},
        {2, Side::head, Hold::Kind::tape, 20_in},  {3, Side::left, Hold::Kind::clamp, 35_in},
        {4, Side::head, Hold::Kind::tape, 30_in},  {5, Side::left, Hold::Kind::clamp, 65_in}};
    EXPECT_EQ(holdOrder(pass), expected);
}

TEST(HoldOrder, noHoldsNoOrder) {
    EXPECT_TRUE(holdOrder({}).empty());
}

} // namespace
} // namespace bastewright::sheets
