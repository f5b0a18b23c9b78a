#include "language/british.h"
#include "language/language.h"
#include "language/said.h"

#include <QCoreApplication>
#include <gtest/gtest.h>

namespace bastewright {
namespace {
using namespace std::chrono_literals;

/// A device that writes times with AM and PM; read once, before anything asks for the locale.
const bool kAmerican = qputenv("LC_ALL", "en_US.UTF-8");

class Said : public testing::Test {
protected:
    static void SetUpTestSuite() {
        ASSERT_TRUE(kAmerican);
        static int argc = 1;
        static char name[] = "language";
        static char* argv[] = {name, nullptr};
        static QCoreApplication application{argc, argv};
        language::speak(QStringLiteral("en"));
    }
};

QString figure(const char* printed) {
    return language::figure(QString::fromUtf8(printed));
}

TEST_F(Said, SignsForHalvesQuartersAndEighths) {
    const std::array<std::pair<const char*, const char*>, 18> cases{{
        {"1/2", "½"},
        {"12 1/2", "12½"},
        {"73 1/8 in", "73⅛\u00a0in"},
        {"5 3/8 yd", "5⅜\u00a0yd"},
        {"-1/4 in", "-¼\u00a0in"},
        {"54 1/2 × 72 3/4 in", "54½ × 72¾\u00a0in"},
        {"4 in", "4\u00a0in"},
        {"7 lb", "7\u00a0lb"},
        {"1/3", "1/3"},   // no eighth
        {"11/8", "11/8"}, // over one
        {"5 1/4–5 3/4", "5¼–5¾"},
        {"2/4", "2/4"},
        {"page 1/16", "page 1/16"},
        {"2026/1/2", "2026/1/2"},
        {"1/2/3", "1/2/3"}, // a date
        {"12/31", "12/31"}, // a day
        {"54 × 72 in", "54 × 72\u00a0in"},
        {"", ""},
    }};
    for (const auto& [printed, read] : cases)
        EXPECT_EQ(figure(printed).toStdString(), read) << printed;
}

TEST_F(Said, EveryEighthReadsBackAsTheSameLength) {
    for (int eighths = 0; eighths < 400; ++eighths) {
        const Length l = Length::inch64ths(8 * eighths);
        const auto shown = language::figure(QString::fromStdString(format(l, Unit::inch)));
        EXPECT_FALSE(shown.contains(QLatin1Char('/'))) << shown.toStdString();
        EXPECT_FALSE(shown.contains(QChar::Space)) << shown.toStdString();
        EXPECT_EQ(parseLength(shown.toStdString(), Unit::millimetre), l) << shown.toStdString();
    }
}

TEST_F(Said, AGermanDecimalMark) {
    language::speak(QStringLiteral("de"));
    EXPECT_EQ(figure("31.8 cm").toStdString(), "31,8\u00a0cm");
    language::speak(QStringLiteral("en"));
    EXPECT_EQ(figure("31.8 cm").toStdString(), "31.8\u00a0cm");
}

TEST_F(Said, BritishWordsWhereTheyDiffer) {
    using language::inBritish;
    EXPECT_EQ(inBritish("Lay the batting").toStdString(), "Lay the wadding");
    EXPECT_EQ(inBritish("Batting: from the center, in color").toStdString(),
              "Wadding: from the centre, in colour");
    EXPECT_EQ(inBritish("%1 toward the %2").toStdString(), "%1 towards the %2");
    EXPECT_TRUE(inBritish("Lay the top").isNull());
    EXPECT_TRUE(inBritish("combatting parameters").isNull()) << "only whole words";
    EXPECT_TRUE(inBritish("/batting/width and batting.width are fields").isNull());
    EXPECT_EQ(inBritish("Move the batting.").toStdString(), "Move the wadding.");

    language::speak(QStringLiteral("en-GB"));
    EXPECT_EQ(language::spoken(), "en-GB");
    EXPECT_EQ(language::said(core::says("The batting is %1 wide.", 3)).toStdString(),
              "The wadding is 3 wide.");
    EXPECT_EQ(language::said(core::says("The top is %1 wide.", 3)).toStdString(),
              "The top is 3 wide.");
    language::speak(QStringLiteral("en"));
    EXPECT_EQ(language::said(core::says("The batting is %1 wide.", 3)).toStdString(),
              "The batting is 3 wide.");
}

TEST_F(Said, TwelveHoursWhereTheDeviceHasThem) {
    EXPECT_EQ(language::clock({0min}).toStdString(), "12:00\u00a0AM");
    EXPECT_EQ(language::clock({9h + 5min}).toStdString(), "9:05\u00a0AM");
    EXPECT_EQ(language::clock({12h}).toStdString(), "12:00\u00a0PM");
    EXPECT_EQ(language::clock({14h + 35min}).toStdString(), "2:35\u00a0PM");
    EXPECT_EQ(language::said(core::says("at %1", ClockTime{14h})).toStdString(), "at 2:00\u00a0PM");
}

TEST_F(Said, TimesShownReadBackAsTheSameTime) {
    for (auto m = 0min; m < 24h; m += 7min) {
        const ClockTime time{m};
        EXPECT_EQ(parseTypedClock(language::clock(time).toStdString(), ClockTime{13h}), time);
    }
}

} // namespace
} // namespace bastewright
