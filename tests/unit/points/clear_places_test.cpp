#include "planners/points/clear_places.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace points;

Rules rules(std::vector<Segment> seams, double spacing) {
    Rules out{PinRule{{0, 0, 20, 20}, seams, Basting{}}};
    out.spacing = spacing;
    return out;
}

TEST(ClearPlaces, AreTheMarkItselfOrTheNearestThatIsClear) {
    const Rules r = rules({{{10_in, 0_in}, {10_in, 20_in}}}, 4);
    ClearPlaces places{r};
    const auto own = places.nearest(5 * 8, 10 * 8);
    EXPECT_TRUE(own.clear);
    EXPECT_EQ(own.at, (Spot{5, 10}));
    const auto beside = places.nearest(10 * 8, 10 * 8);
    EXPECT_TRUE(beside.clear);
    EXPECT_EQ(beside.at, (Spot{9.5, 10}));
}

// Seams so dense that no place is clear: a pin may then lie nearer to one, but inside the edge as
// long as any place in reach is; also from marks in a corner or nearer to the edge than is asked.
TEST(ClearPlaces, KeepTheEdgeWhereNothingIsClear) {
    std::vector<Segment> seams;
    for (Length at; at <= 20_in; at += 0.75_in)
        seams.push_back({{at, 0_in}, {at, 20_in}});
    const Rules r = rules(seams, 3);
    ClearPlaces places{r};
    for (const Spot mark : {Spot{10, 0}, {10, 20}, {0, 10}, {1, 1}, {19, 19}, {1, 19}, {10, 10}}) {
        const auto found = places.nearest(int(mark.x * 8), int(mark.y * 8));
        EXPECT_FALSE(found.clear);
        EXPECT_GE(r.pin.mostRoom(found.at).room, 0) << mark.x << ", " << mark.y;
    }
}

} // namespace
} // namespace bastewright
