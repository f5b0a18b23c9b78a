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

TEST(Clock, ReadsWhatPeopleType) {
    const ClockTime afternoon{13h}, morning{9h};
    struct Case {
        const char* text;
        ClockTime begin;
        ClockTime read;
    };
    for (const Case& c :
         {Case{"13:00", morning, {13h}}, Case{"1:30", afternoon, {13h + 30min}},
          Case{"3", afternoon, {15h}}, Case{"3", morning, {15h}},
          Case{"9:30", morning, {9h + 30min}}, Case{"8:30", morning, {20h + 30min}},
          Case{"1:30 pm", morning, {13h + 30min}}, Case{"1:30 a.m.", afternoon, {1h + 30min}},
          Case{"1.30PM", afternoon, {13h + 30min}}, Case{"12 am", afternoon, {0h}},
          Case{"12 pm", morning, {12h}}, Case{"0:30", ClockTime{}, {30min}},
          Case{"2:35\u00a0PM", morning, {14h + 35min}}})
        EXPECT_EQ(parseTypedClock(c.text, c.begin), c.read) << c.text;
    for (const char* bad :
         {"", "pm", "25", "13 pm", "0:30 am", "12:60", "noon", "1:30 xm", "1:3:0"})
        EXPECT_EQ(parseTypedClock(bad, afternoon).error(),
                  "enter a time of day such as 13:00 or 1:00 pm")
            << bad;
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
