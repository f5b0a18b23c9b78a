#include "job/spacings.h"
#include "language/language.h"
#include "planners/whole/whole.h"
#include "promises.h"
#include "sheets/calls.h"
#include "ways/way.h"

#include <QRegularExpression>

namespace bastewright {
namespace {

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
void expectPages(const Session& session, std::size_t inEnglish, std::size_t inGerman) {
    const Plan plan = planWhole(session);
    for (const auto& [language, most] : {std::pair{"en", inEnglish}, {"de", inGerman}}) {
        language::speak(QString::fromLatin1(language));
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const std::size_t pages = pagesOf(Written{session, plan, {.paper = paper}});
            EXPECT_LE(pages, most) << language << ", " << bastewright::name(paper);
            EXPECT_GE(pages, session.setting.helpers.size() + 2) << "lead, bring, and everybody";
        }
    }
    language::speak(QStringLiteral("en"));
}

/// The page of somebody; the lead's is the first.
QString pageOf(const Written& w, const std::string& person) {
    const auto who = std::ranges::find(w.session.setting.helpers, person, &Helper::name) -
                     w.session.setting.helpers.begin();
    return pdf::pageTexts(w.path).at(2 + std::size_t(who));
}

TEST(PlannedSheets, harbourLights) {
    SKIP_WITHOUT_POPPLER();
    const Session session = fixture::demo("harbour-lights");
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
    expectAll(fixture::demo("leftover-batting"), Paper::letter);
}

// A page for whoever leads, one or two to bring and cut, one for every helper; nine people with
// three quilts have no more than 26. With three quilts of 120 × 130 in, names of sixty letters and
// everybody in all of eighteen passes, every helper has two pages.
TEST(PlannedSheets, areFew) {
    SKIP_WITHOUT_POPPLER();
    {
        SCOPED_TRACE("Harbour Lights");
        expectPages(fixture::demo("harbour-lights"), 6, 8);
    }
    {
        SCOPED_TRACE("leftover batting");
        expectPages(fixture::demo("leftover-batting"), 7, 8);
    }
    {
        SCOPED_TRACE("a winter afternoon");
        expectPages(fixture::demo("winter-afternoon"), 15, 16);
    }
    {
        SCOPED_TRACE("with thread");
        expectPages(fixture::demo("winter-thread"), 6, 8);
    }
    {
        SCOPED_TRACE("three large quilts");
        expectPages(fixture::threeLargeQuilts(), 27, 28);
    }
}

// At head and foot of the table nobody stands: who sets the tape there is said to the lead and to
// them. After the last pass nothing is moved: the clamps come off, and one of them rolls up.
TEST(PlannedSheets, sayWhoTapesAndWhoRollsUp) {
    SKIP_WITHOUT_POPPLER();
    const Session session = fixture::demo("harbour-lights");
    const Written w{session, planWhole(session)};
    const QString lead = pdf::pageTexts(w.path).front();
    static const QRegularExpression tape{
        QStringLiteral(R"(Where nobody stands: (\w+) \(head\), (\w+) \(foot\))")};
    const auto tapers = tape.match(lead);
    ASSERT_TRUE(tapers.hasMatch()) << lead.toStdString();
    const auto rolling = std::ranges::find(w.plan.tasks, TaskKind::handOver, &Task::kind);
    ASSERT_NE(rolling, w.plan.tasks.end());
    ASSERT_EQ(rolling->people.size(), 1U);
    const QString rolls = QString::fromStdString(rolling->people.front());
    EXPECT_TRUE(lead.contains(QStringLiteral("Clamps off. %1 rolls it up:").arg(rolls)));
    for (const Helper& helper : session.setting.helpers) {
        const QString page = pageOf(w, helper.name), name = QString::fromStdString(helper.name);
        for (const auto& [group, side] : {std::pair{1, "head"}, {2, "foot"}}) {
            const bool sets = tapers.captured(group) == name;
            EXPECT_EQ(page.contains(QStringLiteral("where nobody stands (%1): 2, 4 and 6")
                                        .arg(QLatin1String{side})),
                      sets)
                << helper.name << ", " << side;
            EXPECT_FALSE(sets && helper.seated) << "nobody who sits walks round the table";
        }
        EXPECT_FALSE(page.contains(QStringLiteral("(pass"))) << "one set of numbers for all passes";
        EXPECT_TRUE(page.contains(QStringLiteral("After the last Check:"))) << helper.name;
        EXPECT_EQ(page.contains(QStringLiteral("roll it up from both sides")), name == rolls);
        EXPECT_EQ(page.contains(QStringLiteral("Rolling up: %1.").arg(rolls)), name != rolls);
    }
}

// Whoever has left is told of no later break. Thread takes long enough for two breaks, and Cai goes
// before the second.
TEST(PlannedSheets, tellOfBreaksWhileSomebodyIsThere) {
    SKIP_WITHOUT_POPPLER();
    Session session = fixture::demo("harbour-lights");
    session.jobs.front().basting.with = Basting::With::thread;
    const Written w{session, planWhole(session)};
    const auto breaksOf = [&](const std::string& person) {
        return pageOf(w, person).count(QStringLiteral("Break, "));
    };
    ASSERT_EQ(w.plan.breaks.size(), 2u);
    const Helper& cai = session.setting.helpers.at(2);
    ASSERT_LT(cai.until.value().sinceMidnight - session.setting.start.sinceMidnight,
              w.plan.breaks.back().start);
    EXPECT_EQ(breaksOf("Ada"), 2);
    EXPECT_EQ(breaksOf("Cai"), 1);
}

// One page in both languages on both papers, and nothing of it dropped.
TEST(PlannedSheets, theLeadHasTheWordsOfEveryCall) {
    SKIP_WITHOUT_POPPLER();
    for (const auto with : {Basting::With::pins, Basting::With::spray}) {
        Session session = fixture::demo("harbour-lights");
        session.setting.room.ventilated = true;
        session.jobs.front().basting = bastedWith(session.jobs.front().basting, with);
        const Plan plan = planWhole(session);
        ASSERT_FALSE(anyStop(plan.findings));
        for (const char* language : {"en", "de"}) {
            language::speak(QString::fromLatin1(language));
            for (const Paper paper : {Paper::a4, Paper::letter}) {
                const QString lead =
                    pdf::pageTexts(Written{session, plan, {.paper = paper}}.path).front();
                for (const Call call : wayOf(with).calls) {
                    const QString words = sheets::callForLead(call, std::array{&wayOf(with)});
                    EXPECT_TRUE(lead.contains(pdf::normalised(words)))
                        << words.toStdString() << ", " << language << ", "
                        << bastewright::name(paper);
                }
            }
        }
        language::speak(QStringLiteral("en"));
    }
}

// Some passes have pins, the last ones dots: everybody is told which calls come in which.
TEST(PlannedSheets, wherePinsRunShortEveryCallSaysItsPasses) {
    SKIP_WITHOUT_POPPLER();
    Session session = fixture::demo("harbour-lights");
    session.jobs.front().basting.whereShort = Basting::With::dots;
    const Plan plan = planWhole(session);
    ASSERT_FALSE(anyStop(plan.findings));
    const QuiltPlan& quilt = plan.quilts.front();
    const int last = quilt.passes.back().number;
    const auto dots = pointsOf(session.jobs.front(), quilt.zones, wayOf(Basting::With::dots), last);
    ASSERT_GT(dots, 0);
    for (const char* language : {"en", "de"}) {
        language::speak(QString::fromLatin1(language));
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const Written w{session, plan, {.paper = paper}};
            if (language == std::string{"en"}) {
                expectEverybodysPasses(w);
                expectGoodForm(w, paper);
            }
            const QString lead = pdf::pageTexts(w.path).front();
            for (const auto with : {Basting::With::pins, Basting::With::dots})
                for (const Call call : wayOf(with).calls) {
                    const QString words = sheets::callForLead(call, std::array{&wayOf(with)});
                    EXPECT_TRUE(lead.contains(pdf::normalised(words))) << words.toStdString();
                }
        }
    }
    language::speak(QStringLiteral("en"));
    const Written w{session, plan, {}};
    const auto pages = pdf::pageTexts(w.path);
    const QString all = QStringList{pages.begin(), pages.end()}.join(QChar::Space);
    EXPECT_TRUE(all.contains(QStringLiteral("Pass %1: Lower the iron").arg(last)));
    EXPECT_TRUE(
        all.contains(QRegularExpression{QStringLiteral("Pass(es)? [^:]+: Close from the")}));
    EXPECT_TRUE(pages.front().contains(QStringLiteral("%1 dots").arg(dots)));
}

TEST(PlannedSheets, threeQuiltsNinePeopleTwoTables) {
    SKIP_WITHOUT_POPPLER();
    const Session session = fixture::demo("winter-afternoon");
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
