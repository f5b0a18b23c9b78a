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
    expectAll(demo("winter-afternoon"), Paper::letter);
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
