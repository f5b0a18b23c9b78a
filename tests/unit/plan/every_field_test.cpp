#include "plan/plan.h"
#include "support/field_count.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

// A field that is added to a plan needs a place in the file format (src/plan/quilt_plan_json.cpp
// and plan_json.cpp), in its schema (docs/schema) and in random_plan.cpp; then its count here.
TEST(PlanFields, AllHaveAPlaceInTheFile) {
    EXPECT_EQ(fieldCount<Size>(), 2u);
    EXPECT_EQ(fieldCount<LayerSizes>(), 3u);
    EXPECT_EQ(fieldCount<SurfacePlan>(), 8u);
    EXPECT_EQ(fieldCount<Hold>(), 7u);
    EXPECT_EQ(fieldCount<Roll>(), 7u);
    EXPECT_EQ(fieldCount<Pass>(), 19u);
    EXPECT_EQ(fieldCount<PlacedPoint>(), 2u);
    EXPECT_EQ(fieldCount<Zone>(), 5u);
    EXPECT_EQ(fieldCount<PinAside>(), 2u);
    EXPECT_EQ(fieldCount<PinRow>(), 3u);
    EXPECT_EQ(fieldCount<Ribbons>(), 3u);
    EXPECT_EQ(fieldCount<PinRows>(), 7u);
    EXPECT_EQ(fieldCount<EdgeLine>(), 3u);
    EXPECT_EQ(fieldCount<PinBlocks>(), 7u);
    EXPECT_EQ(fieldCount<BackingPurchase>(), 2u);
    EXPECT_EQ(fieldCount<BackingPanel>(), 3u);
    EXPECT_EQ(fieldCount<ClothCut>(), 5u);
    EXPECT_EQ(fieldCount<BackingAlternative>(), 8u);
    EXPECT_EQ(fieldCount<BackingPlan>(), 9u);
    EXPECT_EQ(fieldCount<BattingPurchase>(), 3u);
    EXPECT_EQ(fieldCount<BattingAlternative>(), 8u);
    EXPECT_EQ(fieldCount<BattingPiecePlaced>(), 5u);
    EXPECT_EQ(fieldCount<BattingSplit>(), 3u);
    EXPECT_EQ(fieldCount<BattingPlan>(), 10u);
    EXPECT_EQ(fieldCount<Alternative>(), 18u);
    EXPECT_EQ(fieldCount<QuiltBounds>(), 2u);
    EXPECT_EQ(fieldCount<QuiltPlan>(), 12u);
    EXPECT_EQ(fieldCount<StandingPlace>(), 2u);
    EXPECT_EQ(fieldCount<Stretch>(), 3u);
    EXPECT_EQ(fieldCount<PlannedBreak>(), 4u);
    EXPECT_EQ(fieldCount<FinishRange>(), 3u);
    EXPECT_EQ(fieldCount<Task>(), 10u);
    EXPECT_EQ(fieldCount<Supply>(), 8u);
    EXPECT_EQ(fieldCount<Help>(), 4u);
    EXPECT_EQ(fieldCount<Finding>(), 8u);
    EXPECT_EQ(fieldCount<Plan>(), 10u);
}

} // namespace
} // namespace bastewright
