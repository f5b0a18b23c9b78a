#include "job/job.h"
#include "support/field_count.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

// A field that is added to a job or its setting needs a line in the table of fields
// (src/job/fields) and in random_session.cpp; then its count here.
TEST(JobFields, AllHaveAPlaceInTheFile) {
    EXPECT_EQ(fieldCount<BlockGrid>(), 9u);
    EXPECT_EQ(fieldCount<Top>(), 8u);
    EXPECT_EQ(fieldCount<Colour>(), 3u);
    EXPECT_EQ(fieldCount<Quilting>(), 2u);
    EXPECT_EQ(fieldCount<Basting>(), 10u);
    EXPECT_EQ(fieldCount<OwnMeasure>(), 2u);
    EXPECT_EQ(fieldCount<BattingPiece>(), 5u);
    EXPECT_EQ(fieldCount<Batting>(), 15u);
    EXPECT_EQ(fieldCount<Fabric>(), 5u);
    EXPECT_EQ(fieldCount<Backing>(), 15u);
    EXPECT_EQ(fieldCount<BackingWay>(), 2u);
    EXPECT_EQ(fieldCount<Machine>(), 1u);
    EXPECT_EQ(fieldCount<HandedZone>(), 2u);
    EXPECT_EQ(fieldCount<Job>(), 10u);
    EXPECT_EQ(fieldCount<Table>(), 4u);
    EXPECT_EQ(fieldCount<PushedTogether>(), 2u);
    EXPECT_EQ(fieldCount<Room>(), 9u);
    EXPECT_EQ(fieldCount<Helper>(), 15u);
    EXPECT_EQ(fieldCount<Break>(), 2u);
    EXPECT_EQ(fieldCount<ClipStock>(), 2u);
    EXPECT_EQ(fieldCount<Stash>(), 5u);
    EXPECT_EQ(fieldCount<Setting>(), 6u);
    EXPECT_EQ(fieldCount<Session>(), 4u);
}

} // namespace
} // namespace bastewright
