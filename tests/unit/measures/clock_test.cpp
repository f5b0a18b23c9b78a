#include "measures/clock.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace std::chrono_literals;

TEST(Clock, ReadsTwentyFourHours) {
    EXPECT_EQ(parseClock("00:00")->sinceMidnight, 0min);
    EXPECT_EQ(parseClock("9:05")->sinceMidnight, 545min);
    EXPECT_EQ(parseClock("13:00")->sinceMidnight, 780min);
    EXPECT_EQ(parseClock("23:59")->sinceMidnight, 1439min);
}

TEST(Clock, RefusesTheRestAndSaysWhatIsAccepted) {
    for (const char* bad :
         {"", ":", "13", "13:", ":30", "24:00", "12:60", "1:5", "013:00", "13:000", "13.00", "1 pm",
          "-1:00", "+1:00", " 9:00", "9:00 ", "９:00", "13:0x"}) {
        const auto read = parseClock(bad);
        ASSERT_FALSE(read) << bad;
        EXPECT_NE(read.error().find("is accepted"), std::string::npos);
    }
}

TEST(Clock, ReadsBackWhatItWrites) {
    for (int m = 0; m < 24 * 60; ++m) {
        const ClockTime t{std::chrono::minutes{m}};
        ASSERT_EQ(parseClock(format(t)), t);
    }
}

TEST(Clock, WrapsRoundMidnight) {
    EXPECT_EQ(format({25h}), "01:00");
    EXPECT_EQ(format({-30min}), "23:30");
}

TEST(Clock, CountsFromTheStartDownToTheMinute) {
    const ClockTime start{13h};
    EXPECT_EQ(format(after(start, 0s)), "13:00");
    EXPECT_EQ(format(after(start, 59s)), "13:00");
    EXPECT_EQ(format(after(start, 60s)), "13:01");
    EXPECT_EQ(format(after(start, 2h + 5min + 30s)), "15:05");
    EXPECT_EQ(formatSpan(wholeMinutes(2h + 5min + 30s)), "2 h 05 min") << "as the clock beside it";
}

TEST(Clock, TellsSpans) {
    EXPECT_EQ(formatSpan(0s), "under a minute");
    EXPECT_EQ(formatSpan(29s), "under a minute");
    EXPECT_EQ(formatSpan(31s), "1 min");
    EXPECT_EQ(formatSpan(35min), "35 min");
    EXPECT_EQ(formatSpan(59min + 31s), "1 h 00 min");
    EXPECT_EQ(formatSpan(65min), "1 h 05 min");
    EXPECT_EQ(formatSpan(26h), "26 h 00 min");
}

} // namespace
} // namespace bastewright
