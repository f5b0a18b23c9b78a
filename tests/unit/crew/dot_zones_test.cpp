#include "planners/crew/dot_zones.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

/// Four by four zones of 10 in, so many points in each.
std::vector<Zone> zones(std::size_t each) {
    std::vector<Zone> out;
    for (int row = 0; row < 4; ++row)
        for (int column = 0; column < 4; ++column) {
            Zone z;
            z.id = std::string(1, char('A' + column)) + std::to_string(row + 1);
            z.area = {10_in * column, 10_in * row, 10_in * (column + 1), 10_in * (row + 1)};
            z.points.resize(each);
            out.push_back(z);
        }
    return out;
}

TEST(ZonesForDots, OuterOnesFirstAndNoMoreThanAreMissing) {
    const auto all = zones(9);
    for (const std::int64_t missing : {1, 9, 10, 50, 107}) {
        const auto ids = zonesForDots(all, {40_in, 40_in}, missing);
        EXPECT_EQ(std::int64_t(ids.size()), (missing + 8) / 9) << missing;
        for (const auto& id : ids)
            EXPECT_TRUE(id[0] == 'A' || id[0] == 'D' || id[1] == '1' || id[1] == '4') << id;
    }
}

TEST(ZonesForDots, InnerOnesWhereTheOuterAreTooFewAndNoneWhereAllAre) {
    EXPECT_EQ(zonesForDots(zones(9), {40_in, 40_in}, 109).size(), 13u);
    EXPECT_EQ(zonesForDots(zones(9), {40_in, 40_in}, 144).size(), 16u);
    EXPECT_TRUE(zonesForDots(zones(9), {40_in, 40_in}, 145).empty());
    EXPECT_TRUE(zonesForDots({}, {40_in, 40_in}, 1).empty());
}

TEST(ZonesForDots, NoneThatTheOthersMakeNeedless) {
    auto all = zones(2);
    all[15].points.resize(40); // D4, the last of the outer ones
    EXPECT_EQ(zonesForDots(all, {40_in, 40_in}, 40), std::vector<std::string>{"D4"});
}

TEST(ZoneList, RunsDownAColumnTogether) {
    const std::vector<std::string> ids{"A1", "B1", "AA3", "A2", "A3", "B9", "B2"};
    EXPECT_EQ(zoneList(ids), "A1 to A3, B1, B2, B9, AA3");
    EXPECT_EQ(zoneList({}), "");
}

} // namespace
} // namespace bastewright
