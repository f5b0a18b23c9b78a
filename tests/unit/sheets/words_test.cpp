#include "fixture.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <gtest/gtest.h>

namespace bastewright::sheets {
namespace {

/// No-break spaces read as spaces.
std::string plain(QString text) {
    return text.replace(QChar{0x00A0}, QChar{' '}).toStdString();
}

TEST(Words, lengthsKeepTheirUnitOnTheLine) {
    EXPECT_EQ(length(Length::inch64ths(800), Unit::inch), QStringLiteral("12½\u00A0in"));
    EXPECT_EQ(plain(size({88_in, 112_in}, Unit::inch)), "88 × 112 in");
}

TEST(Words, whatHangsIsSaidToTheHalfInch) {
    EXPECT_EQ(plain(halves(33_in, Unit::inch)), "33 in");
    EXPECT_EQ(plain(halves(Length::inch64ths(33 * 64 + 15), Unit::inch)), "33 in");
    EXPECT_EQ(plain(halves(Length::inch64ths(33 * 64 + 16), Unit::inch)), "33½ in");
    EXPECT_EQ(plain(halves(Length::inch64ths(33 * 64 + 47), Unit::inch, false)), "33½");
    EXPECT_EQ(plain(halves(Length::millimetres(334), Unit::centimetre)), "33 cm");
    EXPECT_EQ(plain(halves(Length::millimetres(336), Unit::centimetre)), "34 cm");
}

TEST(Words, sidesOfTheTableAreCalledByWhoStandsThere) {
    const std::vector<Stretch> standing{{"B", "Bo", {{Side::right, {60_in, 100_in}}}},
                                        {"A", "Ada", {{Side::right, {0_in, 60_in}}}},
                                        {"C", "Cai", {{Side::foot, {0_in, 30_in}}}}};
    EXPECT_EQ(tableSide(standing, Side::right), QStringLiteral("A and B"));
    EXPECT_EQ(tableSide(standing, Side::foot), QStringLiteral("C"));
    EXPECT_EQ(tableSide(standing, Side::head), QStringLiteral("the head"));
}

TEST(Words, spansRoundToTheMinute) {
    EXPECT_EQ(plain(span(Seconds{20})), "under a minute");
    EXPECT_EQ(plain(span(Seconds{35 * 60})), "35 min");
    EXPECT_EQ(plain(span(Seconds{3600 + 5 * 60})), "1 h 05 min");
}

TEST(Words, clockRunsPastMidnight) {
    EXPECT_EQ(clock(ClockTime{std::chrono::hours{23}}, Seconds{5400}), QStringLiteral("00:30"));
}

TEST(Words, shiftsNameTheLargerWayFirst) {
    const std::vector<std::pair<Vec, std::string>> rows{
        {{}, "no shift"},
        {{0_in, -54_in}, "54 in toward the head"},
        {{0_in, 54_in}, "54 in toward the foot"},
        {{-3_in, 0_in}, "3 in toward the left"},
        {{3_in, -54_in}, "54 in toward the head and 3 in toward the right"},
        {{-54_in, 3_in}, "54 in toward the left and 3 in toward the foot"}};
    for (const auto& [shift, words] : rows)
        EXPECT_EQ(plain(shiftWords(shift, Unit::inch)), words);
}

TEST(Words, listsReadAsSentences) {
    EXPECT_EQ(listed({}), QString{});
    EXPECT_EQ(listed({"a"}), QStringLiteral("a"));
    EXPECT_EQ(listed({"a", "b"}), QStringLiteral("a and b"));
    EXPECT_EQ(listed({"a", "b", "c"}), QStringLiteral("a, b and c"));
    EXPECT_EQ(sidesList({Side::head, Side::foot, Side::left, Side::right}),
              QStringLiteral("all four sides"));
}

TEST(TaskWords, nameZoneCountAndWork) {
    const Plan plan = fixture::planByHand(fixture::harbourLights());
    const QuiltPlan& quilt = plan.quilts[0];
    const auto line = [&](TaskKind kind, const std::string& zone, Basting::With with) {
        Task t;
        t.kind = kind;
        t.zone = zone;
        return plain(taskLine(t, quilt, with, Unit::inch));
    };
    const auto zone =
        std::ranges::find(quilt.zones, "B2", [](const Zone& z) { return zoneName(z.id); });
    ASSERT_NE(zone, quilt.zones.end());
    const auto n = std::to_string(zone->points.size());
    EXPECT_EQ(line(TaskKind::placeOpen, zone->id, Basting::With::pins),
              "B2: place " + n + " pins, open");
    EXPECT_EQ(line(TaskKind::closePins, zone->id, Basting::With::pins), "B2: close " + n + " pins");
    EXPECT_EQ(line(TaskKind::press, zone->id, Basting::With::dots), "B2: press " + n + " dots");
    EXPECT_EQ(line(TaskKind::placeOpen, "p1.Z9", Basting::With::pins), "Z9: place 0 pins, open");
}

TEST(TaskWords, everyKindHasANameAndACheck) {
    for (int k = 0; k <= int(TaskKind::handOver); ++k)
        for (const auto with : {Basting::With::pins, Basting::With::dots}) {
            EXPECT_FALSE(taskName(TaskKind(k)).isEmpty()) << k;
            EXPECT_FALSE(taskCheck(TaskKind(k), std::array{&wayOf(with)}, Unit::inch).isEmpty())
                << k;
        }
}

TEST(Words, aSinglePointIsNotPlural) {
    EXPECT_EQ(plain(pointCount(1, Basting::With::pins)), "1 pin");
    EXPECT_EQ(plain(pointCount(2, Basting::With::dots)), "2 dots");
}

} // namespace
} // namespace bastewright::sheets
