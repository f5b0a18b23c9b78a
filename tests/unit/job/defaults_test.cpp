#include "job/job_json.h"
#include "job/spacings.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

Session read(const std::string& text) {
    SessionRead out = readSession(text);
    for (const auto& f : out.problems)
        ADD_FAILURE() << f.field << ": " << f.text;
    return out.session.value_or(Session{});
}

TEST(Defaults, OnlyATopIsNeeded) {
    const Session s = read(R"({"top": {"width": 60, "length": 72}})");
    ASSERT_EQ(s.jobs.size(), 1u);
    Job plain;
    plain.top.width = {60_in};
    plain.top.length = {72_in};
    EXPECT_EQ(s.jobs.front(), plain);
    EXPECT_FALSE(s.severalQuilts);
    EXPECT_TRUE(s.setting.room.tables.empty());
    EXPECT_EQ(s.setting.start, *parseClock("13:00"));
    // Nobody named means the reader alone, with the trade's usual reach.
    ASSERT_EQ(s.setting.helpers.size(), 1u);
    EXPECT_EQ(s.setting.helpers.front().name, "You");
    EXPECT_EQ(s.setting.helpers.front().reach, 27_in);
}

TEST(Defaults, AnEmptyListOfHelpersIsNobody) {
    EXPECT_TRUE(
        read(R"({"top": {"width": 60, "length": 72}, "helpers": []})").setting.helpers.empty());
}

TEST(Defaults, NoTablesAreTheFloor) {
    for (const char* room : {R"({})", R"({"tables": []})", R"({"tables": [{"count": 0}]})"}) {
        const Session s =
            read(R"({"top": {"width": 60, "length": 72}, "room": )" + std::string{room} + "}");
        int tables = 0;
        for (const Table& t : s.setting.room.tables)
            tables += t.count;
        EXPECT_EQ(tables, 0) << room;
    }
}

TEST(Defaults, AReadingIsANumberATextOrAList) {
    EXPECT_EQ(read(R"({"top": {"width": "60 1/2 in", "length": [72, "2 yd"]}})").jobs[0].top,
              (Top{{60.5_in}, {72_in, 72_in}, {}, {}, {}}));
    EXPECT_EQ(read(R"({"unit": "cm", "top": {"width": 150, "length": "60 in"}})").jobs[0].top,
              (Top{{150_cm}, {60_in}, {}, {}, {}}));
}

TEST(Defaults, AGridGivesTheSizeThatWasNotMeasured) {
    const Session s = read(R"({"top": {"length": 112,
        "grid": {"columns": 7, "rows": 9, "block": 10, "sashing": 2, "border": 3}}})");
    EXPECT_EQ(s.jobs[0].top.width, std::vector{88_in});
    EXPECT_EQ(s.jobs[0].top.length, std::vector{112_in});
}

TEST(Defaults, TheUnitOfASessionServesItsQuiltsAndItsRoom) {
    const Session s = read(R"({"format": "bastewright-session", "unit": "cm",
        "jobs": [{"top": {"width": 150, "length": 180}},
                 {"unit": "in", "top": {"width": 60, "length": 72}}],
        "room": {"tables": [{"length": 180, "width": 75}]}})");
    EXPECT_EQ(s.jobs[0].unit, Unit::centimetre);
    EXPECT_EQ(s.jobs[0].top.width.front(), 150_cm);
    EXPECT_EQ(s.jobs[1].top.width.front(), 60_in);
    EXPECT_EQ(s.setting.room.tables.front().length, 180_cm);
    EXPECT_TRUE(s.severalQuilts);
}

TEST(Defaults, ASessionWithoutAUnitTakesThatOfItsFirstQuilt) {
    const Session s = read(R"({"jobs": [{"unit": "mm", "top": {"width": 1500, "length": 1800}}],
        "room": {"inset": 50}})");
    EXPECT_EQ(s.setting.room.inset, 50_mm);
}

TEST(Defaults, AQuiltOfASessionMaySayItIsAJob) {
    const Session s = read(R"({"jobs": [{"format": "bastewright-job", "version": 1,
        "top": {"width": 60, "length": 72}}]})");
    EXPECT_EQ(s.jobs.size(), 1u);
}

TEST(Defaults, TheTradesWordsAreRead) {
    const Session s = read(R"({"top": {"width": 60, "length": 72},
        "quilting": {"method": "in-the-ditch"}, "basting": {"with": "dots", "start": "fewest-shifts", "layout": "fewest"},
        "room": {"walls": ["head", "left"]}})");
    EXPECT_EQ(s.jobs[0].quilting.method, Quilting::Method::inTheDitch);
    EXPECT_EQ(s.jobs[0].basting.with, Basting::With::dots);
    EXPECT_EQ(s.jobs[0].basting.start, Basting::Start::besideMiddle);
    EXPECT_EQ(s.jobs[0].basting.layout, Basting::Layout::fewest);
    EXPECT_EQ(read(R"({"top": {"width": 60, "length": 72}, "basting": {"layout": "pattern"}})")
                  .jobs[0]
                  .basting.layout,
              Basting::Layout::rows); // the word of earlier versions
    EXPECT_EQ(s.setting.room.walls, (std::vector{Side::head, Side::left}));
}

// Common practice: bands of spray are 12 to 18 in deep, pins a palm apart.
TEST(Defaults, TheSpacingGoesWithTheWayOfBasting) {
    const auto basting = [](const char* with) {
        return read(R"({"top": {"width": 60, "length": 72}, "basting": {"with": ")" +
                    std::string{with} + R"("}})")
            .jobs[0]
            .basting;
    };
    EXPECT_EQ(basting("spray").spacing, 18_in);
    for (const char* with : {"pins", "dots", "thread"})
        EXPECT_EQ(basting(with).spacing, 4_in) << with;
    Basting fist;
    fist.measure = OwnMeasure{"my fist", 4_in};
    const Basting sprayed = bastedWith(fist, Basting::With::spray);
    EXPECT_EQ(sprayed.spacing, 18_in);
    EXPECT_FALSE(sprayed.measure);
    EXPECT_EQ(bastedWith(sprayed, Basting::With::pins).spacing, 4_in);
    EXPECT_EQ(bastedWith(fist, Basting::With::thread).measure, fist.measure);
}

} // namespace
} // namespace bastewright
