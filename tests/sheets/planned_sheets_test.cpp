#include "job/job_json.h"
#include "planners/whole/whole.h"
#include "promises.h"

namespace bastewright {
namespace {

Session demo(const std::string& name) {
    const auto read = readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/" + name + ".json");
    EXPECT_TRUE(read.session) << name;
    return read.session.value_or(fixture::harbourLights());
}

void expectAll(const Session& session, Paper paper) {
    const Written w{session, planWhole(session), {.paper = paper}};
    expectEverybodysTasks(w);
    expectLeadKnowsAll(w);
    expectGoodForm(w, paper);
}

TEST(PlannedSheets, harbourLights) {
    SKIP_WITHOUT_POPPLER();
    expectAll(demo("harbour-lights"), Paper::a4);
    // Five passes on front and back of one sheet.
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Session session = demo("harbour-lights");
        expectChecklistsWithin(Written{session, planWhole(session), {.paper = paper}}, 2);
    }
}

TEST(PlannedSheets, leftoverBatting) {
    SKIP_WITHOUT_POPPLER();
    expectAll(demo("leftover-batting"), Paper::letter);
}

TEST(PlannedSheets, threeQuiltsNinePeopleTwoTables) {
    SKIP_WITHOUT_POPPLER();
    const Session session = demo("winter-afternoon");
    const Plan plan = planWhole(session);
    const Written a4{session, plan, {.paper = Paper::a4}},
        letter{session, plan, {.paper = Paper::letter}};
    expectEverybodysTasks(a4);
    expectEverybodysTasks(letter);
    expectLeadKnowsAll(letter);
    expectGoodForm(letter, Paper::letter);
    // Even those who work at both tables in turn have front and back of one sheet; the shorter
    // paper is a page more for one of them.
    expectChecklistsWithin(a4, 2);
    expectChecklistsWithin(letter, 3);
}

TEST(PlannedSheets, breaksStandAtTheirTime) {
    SKIP_WITHOUT_POPPLER();
    Session session = demo("harbour-lights");
    const auto at = [](int hour, int minute) {
        return ClockTime{std::chrono::hours{hour} + std::chrono::minutes{minute}};
    };
    auto& helpers = session.setting.helpers;
    helpers[0].breaks = {{at(14, 0), at(14, 10)}, {at(13, 20), at(13, 30)}};
    helpers[1].breaks = {{at(12, 0), at(12, 30)}, {at(23, 0), at(23, 30)}}; // outside the session
    helpers[3].breaks = {{at(13, 0), at(13, 10)}};
    const Written w{session, planWhole(session), {.lead = true}};
    expectEverybodysTasks(w);
    QString text;
    for (const QString& page : pdf::pageTexts(w.path))
        text += page;
    EXPECT_EQ(text.count("13:20 break until 13:30"), 1);
    EXPECT_EQ(text.count("14:00 break until 14:10"), 1);
    EXPECT_FALSE(text.contains("23:00 break"));
}

TEST(PlannedSheets, aVeryLargeQuiltAndLongNames) {
    SKIP_WITHOUT_POPPLER();
    expectAll(fixture::manyPeople(), Paper::a4);
}

TEST(PlannedSheets, onTheFloor) {
    SKIP_WITHOUT_POPPLER();
    Session session = fixture::harbourLights();
    session.setting.room.tables.clear();
    expectAll(session, Paper::a4);
}

} // namespace
} // namespace bastewright
