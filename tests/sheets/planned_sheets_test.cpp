#include "job/job_json.h"
#include "language/language.h"
#include "planners/whole/whole.h"
#include "promises.h"

namespace bastewright {
namespace {

Session demo(const std::string& name) {
    const auto read = readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/" + name + ".json");
    EXPECT_TRUE(read.session) << name;
    return read.session.value_or(fixture::harbourLights());
}

std::size_t pagesOf(const Written& w) {
    return pdf::pageSizes(w.path).size();
}

void expectAll(const Session& session, Paper paper) {
    const Written w{session, planWhole(session), {.paper = paper}};
    expectEverybodysPasses(w);
    expectLeadKnowsAll(w);
    expectGoodForm(w, paper);
}

/// Pages of the set for an afternoon, on both papers, in both languages.
void expectPages(const std::string& name, std::size_t most) {
    const Session session = demo(name);
    const Plan plan = planWhole(session);
    for (const char* language : {"en", "de"}) {
        language::speak(QString::fromLatin1(language));
        for (const Paper paper : {Paper::a4, Paper::letter})
            EXPECT_LE(pagesOf(Written{session, plan, {.paper = paper}}), most)
                << name << ", " << language << ", " << bastewright::name(paper);
    }
    language::speak(QStringLiteral("en"));
}

TEST(PlannedSheets, harbourLights) {
    SKIP_WITHOUT_POPPLER();
    const Session session = demo("harbour-lights");
    const Plan plan = planWhole(session);
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Written w{session, plan, {.paper = paper}};
        expectEverybodysPasses(w);
        expectLeadKnowsAll(w);
        expectGoodForm(w, paper);
        expectHelpersWithin(w, 1);
        EXPECT_EQ(pagesOf(w), 6U) << "as docs/sheets.md says: one for the lead, one to bring";
        const auto pages = pdf::pageTexts(w.path);
        EXPECT_EQ(std::ranges::count_if(pages,
                                        [](const QString& page) {
                                            return page.contains(
                                                QStringLiteral("From where you stand"));
                                        }),
                  std::ssize(session.setting.helpers))
            << "nobody's page is without the picture of their place";
    }
}

TEST(PlannedSheets, leftoverBatting) {
    SKIP_WITHOUT_POPPLER();
    expectAll(demo("leftover-batting"), Paper::letter);
}

// A page for whoever leads, one or two to bring and cut, one for every helper; nine people with
// three quilts have no more than 26.
TEST(PlannedSheets, areFew) {
    SKIP_WITHOUT_POPPLER();
    expectPages("harbour-lights", 8);
    expectPages("leftover-batting", 8);
    expectPages("winter-afternoon", 26);
}

TEST(PlannedSheets, threeQuiltsNinePeopleTwoTables) {
    SKIP_WITHOUT_POPPLER();
    const Session session = demo("winter-afternoon");
    const Plan plan = planWhole(session);
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Written w{session, plan, {.paper = paper}};
        expectEverybodysPasses(w);
        expectLeadKnowsAll(w);
        expectGoodForm(w, paper);
        expectHelpersWithin(w, 2);
    }
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
