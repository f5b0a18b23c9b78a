#include "measures/sentence.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

TEST(Sentence, FillsItsPlacesInEnglish) {
    const Sentence s = core::says("Zone %1 of %2 wants %3.", "C4", "100 %1 cotton",
                                  core::length(4_in, Unit::inch));
    EXPECT_EQ(s.english(), "Zone C4 of 100 %1 cotton wants 4 in.");
    EXPECT_EQ(s.text(), "Zone %1 of %2 wants %3.");
    EXPECT_EQ(s.values()[2].kind(), Sentence::Kind::figure);
}

TEST(Sentence, KeepsPercentSignsThatAreNoPlaces) {
    EXPECT_EQ(core::says("Shrinkage is %1 %; less than 50 % is accepted.", 60).english(),
              "Shrinkage is 60 %; less than 50 % is accepted.");
    EXPECT_EQ(core::says("100 %").english(), "100 %");
}

TEST(Sentence, PutsValuesWhereTheFormWantsThem) {
    EXPECT_EQ(core::says("%2 before %1", 1, 2).english(), "2 before 1");
}

TEST(Sentence, SaysSpansAndTimes) {
    EXPECT_EQ(core::said(Seconds{20}).english(), "under a minute");
    EXPECT_EQ(core::said(Seconds{35 * 60}).english(), "35 min");
    EXPECT_EQ(core::said(Seconds{65 * 60}).english(), "1 h 05 min");
    EXPECT_EQ(core::said(ClockTime{std::chrono::minutes{545}}).english(), "09:05");
}

TEST(Sentence, ListsNames) {
    const std::vector<std::string> names{"A1", "B1", "C1", "D1"};
    EXPECT_EQ(core::listed(std::vector<std::string>{"A1"}).english(), "A1");
    EXPECT_EQ(core::listed(names).english(), "A1, B1, C1 and D1");
    EXPECT_EQ(core::listed(names, 2).english(), "A1, B1 and others");
    EXPECT_EQ(core::commaList(Sentences(names.begin(), names.end())).english(), "A1, B1, C1, D1");
    EXPECT_TRUE(core::commaList({}).empty());
}

TEST(Sentence, EqualsWhatReadsTheSame) {
    EXPECT_EQ(core::says("%1 pins", 3), Sentence{"3 pins"});
    EXPECT_NE(core::says("%1 pins", 3), core::says("%1 pins", 4));
}

} // namespace
} // namespace bastewright
