#include "job/job_json.h"
#include "unit/view/qt_application.h"
#include "view/edit/guide_desk.h"
#include "view/edit/kept_desk.h"
#include "view/edit/summaries.h"
#include "view/plan/people_desk.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

using namespace bastewright;
using namespace bastewright::literals;

namespace {

/// A quilt in hand over a library of its own.
struct Guide : testing::Test {
    QTemporaryDir folder;
    std::optional<Library> library;
    JobEditor editor;
    PlanPresenter plan;
    std::optional<KeptDesk> kept;
    std::optional<GuideDesk> guide;
    std::optional<PeopleDesk> people;

    Guide() {
        needApplication();
        auto opened = Library::open(folder.filePath("library.sqlite").toStdString());
        library.emplace(std::move(opened.value().library));
        kept.emplace(&*library, &editor);
        guide.emplace(&editor);
        people.emplace(&editor, &plan);
        begin();
    }
    void begin() {
        Session session;
        session.jobs.emplace_back();
        session.jobs.front().top.width = {60_in};
        session.jobs.front().top.length = {72_in};
        session.setting = kept->usual();
        editor.open(session);
        guide->begin();
    }
    const Job& job() const { return editor.job(); }
    const Setting& setting() const { return editor.session().setting; }
    static QStringList names(TableRows* rows) {
        QStringList out;
        for (const auto& row : rows->rows())
            out << row[0].toString();
        return out;
    }
    int chosen() const {
        const auto& rows = const_cast<GuideDesk&>(*guide).choices()->rows();
        for (int i = 0; i < rows.size(); ++i)
            if (rows[i][2].toBool())
                return i;
        return -1;
    }
};

TEST_F(Guide, EveryPageHasAnAnswerAlready) {
    for (int page = GuideDesk::Size; page <= GuideDesk::Supplies; ++page) {
        guide->setPage(GuideDesk::Page(page));
        EXPECT_FALSE(guide->question().isEmpty());
        EXPECT_FALSE(guide->help().isEmpty());
        if (guide->choices()->count() > 0) {
            EXPECT_GE(chosen(), 0) << page;
        }
    }
    EXPECT_EQ(people->people()->count(), 1);
    EXPECT_FALSE(editor.canUndo()) << "looking at a page changes nothing";
}

TEST_F(Guide, ATappedSizeIsTheTopsAndATypedOneToo) {
    guide->choose(4);
    EXPECT_EQ(job().top.width, (std::vector{100_in}));
    EXPECT_EQ(job().top.length, (std::vector{108_in}));
    EXPECT_EQ(chosen(), 4);
    EXPECT_EQ(guide->take("width0", "88"), "");
    EXPECT_EQ(guide->take("length0", "112 1/2"), "");
    EXPECT_EQ(job().top.width, (std::vector{88_in}));
    EXPECT_EQ(chosen(), -1) << "a size of one's own is none of those shown";
    EXPECT_NE(guide->take("width0", "0"), "");
    EXPECT_EQ(job().top.width, (std::vector{88_in})) << "what is refused changes nothing";
}

TEST_F(Guide, UsualSizesAreWholeInTheUnitOfTheQuilt) {
    EXPECT_EQ(guide->take("unit", "1"), "");
    guide->choose(2);
    EXPECT_EQ(job().top.width, (std::vector{Length::millimetres(1550)}));
    EXPECT_EQ(guide->choices()->rows()[2][1].toString(), "155 × 220\u00a0cm");
}

TEST_F(Guide, WhatIsTypedIsShownBeforeItIsTaken) {
    guide->preview("width0", "88");
    EXPECT_EQ(guide->top(), QSizeF(88, 72));
    EXPECT_EQ(job().top.width, (std::vector{60_in}));
    guide->preview("width0", "many");
    EXPECT_EQ(guide->top(), QSizeF(88, 72)) << "what does not fit shows nothing new";
    guide->endPreview();
    EXPECT_EQ(guide->top(), QSizeF(60, 72));
}

TEST_F(Guide, PinsAreAHandApartAndAsWideAsThatHand) {
    guide->setPage(GuideDesk::Closely);
    guide->choose(1);
    ASSERT_TRUE(job().basting.measure);
    EXPECT_EQ(job().basting.measure->length, 3_in);
    EXPECT_EQ(job().basting.spacing, 3_in);
    EXPECT_EQ(guide->take("spacing", "3 1/4"), "");
    EXPECT_EQ(job().basting.measure->length, job().basting.spacing);
    guide->choose(1); // the same hand again
    EXPECT_EQ(job().basting.spacing, Length::inch64ths(208)) << "as it was measured";
    guide->choose(2);
    EXPECT_FALSE(job().basting.measure);
    EXPECT_EQ(job().basting.spacing, Length::inch64ths(208));
}

// Common practice: bands of spray are 12 to 18 in deep; no hand measures them.
TEST_F(Guide, SprayAsksForTheDepthOfItsBands) {
    guide->setPage(GuideDesk::Closely);
    guide->choose(0);
    ASSERT_TRUE(job().basting.measure);
    EXPECT_FALSE(people->sprays());
    EXPECT_EQ(guide->take("with", QString::number(int(Basting::With::spray))), "");
    EXPECT_TRUE(people->sprays());
    EXPECT_EQ(job().basting.spacing, 18_in);
    EXPECT_FALSE(job().basting.measure);
    EXPECT_EQ(guide->choices()->count(), 2);
    EXPECT_EQ(chosen(), 1);
    guide->choose(0);
    EXPECT_EQ(job().basting.spacing, 12_in);
    EXPECT_NE(guide->take("spacing", "4"), "");
    EXPECT_EQ(guide->take("with", QString::number(int(Basting::With::pins))), "");
    EXPECT_EQ(job().basting.spacing, 4_in) << "pins are not as far apart as bands are deep";
    people->flip(0, "breath");
    EXPECT_TRUE(setting().helpers[0].troubleBreathing);
}

TEST_F(Guide, TablesAreCountedByOneTapAndTheFloorIsAnAnswer) {
    guide->setPage(GuideDesk::Tables);
    guide->choose(2);
    ASSERT_EQ(setting().room.tables.size(), 1U);
    EXPECT_EQ(setting().room.tables.front().count, 3);
    EXPECT_EQ(guide->take("table0/length", "60"), "");
    guide->choose(4);
    EXPECT_TRUE(setting().room.tables.empty());
    EXPECT_EQ(chosen(), 4);
    EXPECT_EQ(guide->values()->count(), 1) << "only the room's name is left to type";
    guide->choose(0);
    EXPECT_EQ(setting().room.tables.front().count, 1);
}

TEST_F(Guide, ClipsComeToBeWithTheirCount) {
    guide->setPage(GuideDesk::Supplies);
    EXPECT_EQ(guide->values()->rows()[2][3].toString(), "0");
    EXPECT_TRUE(setting().stash.clips.empty()) << "looking makes none";
    EXPECT_EQ(guide->take("clips", "8"), "");
    ASSERT_EQ(setting().stash.clips.size(), 1U);
    EXPECT_EQ(setting().stash.clips.front(), (ClipStock{3_in, 8}));
    EXPECT_EQ(guide->take("clips", "9"), "");
    EXPECT_EQ(setting().stash.clips.size(), 1U);
}

TEST_F(Guide, SeveralPeopleComeByOneLine) {
    EXPECT_TRUE(people->add("Bo,  Cai ,,"));
    EXPECT_EQ(setting().helpers.size(), 3U);
    EXPECT_EQ(setting().helpers.back().name, "Cai");
    EXPECT_FALSE(people->add("Bo")) << "two of one name";
    EXPECT_FALSE(people->problem().isEmpty());
    EXPECT_TRUE(people->add(""));
    EXPECT_TRUE(summaries::isNumbered(people->nameOf(3)));
    EXPECT_FALSE(summaries::isNumbered("Bo"));
    people->remove(3);
    EXPECT_EQ(setting().helpers.size(), 3U);
}

TEST_F(Guide, WhoSitsReachesLessUnlessThatWasMeasured) {
    people->flip(0, "sits");
    EXPECT_TRUE(setting().helpers[0].seated);
    EXPECT_EQ(setting().helpers[0].reach, 25_in);
    people->flip(0, "sits");
    EXPECT_EQ(setting().helpers[0].reach, 27_in);
    Session own = editor.session();
    own.setting.helpers[0].reach = 22_in;
    editor.apply("reach", own);
    people->flip(0, "sits");
    EXPECT_EQ(setting().helpers[0].reach, 22_in);
    people->flip(0, "lifts");
    people->flip(0, "irons");
    people->flip(0, "pins");
    EXPECT_FALSE(setting().helpers[0].lifts || setting().helpers[0].irons ||
                 setting().helpers[0].pins);
}

TEST_F(Guide, HoursMoveByQuartersAndTheEndsMeanAllTheTime) {
    EXPECT_EQ(people->dayFrom(), 13 * 60);
    EXPECT_EQ(people->dayUntil(), 17 * 60);
    people->setHours(0, 13 * 60 + 22, 15 * 60 + 8);
    EXPECT_EQ(format(*setting().helpers[0].from), "13:15");
    EXPECT_EQ(format(*setting().helpers[0].until), "15:15");
    people->setHours(0, 13 * 60, 17 * 60);
    EXPECT_FALSE(setting().helpers[0].from);
    EXPECT_FALSE(setting().helpers[0].until);
    Session typed = editor.session();
    typed.setting.helpers[0].until = ClockTime{std::chrono::minutes{15 * 60 + 7}};
    editor.apply("hours", typed);
    people->setHours(0, 14 * 60, 15 * 60 + 7);
    EXPECT_EQ(format(*setting().helpers[0].until), "15:07") << "what is not moved stays";
}

TEST_F(Guide, TheDayShownReachesAsFarAsSomebodyStays) {
    Session late = editor.session();
    late.setting.helpers[0].until = ClockTime{std::chrono::minutes{19 * 60}};
    editor.apply("hours", late);
    EXPECT_EQ(people->dayUntil(), 20 * 60) << "one may still stay longer";
}

TEST_F(Guide, ANamedRoomIsKeptAndOffered) {
    guide->setPage(GuideDesk::Tables);
    guide->choose(1);
    EXPECT_EQ(kept->rooms()->count(), 0);
    EXPECT_EQ(guide->take("name", "Saltmarsh Hall"), "");
    EXPECT_EQ(names(kept->rooms()), QStringList{"Saltmarsh Hall"});
    guide->choose(2); // what is kept follows
    begin();
    EXPECT_EQ(setting().room.tables.front().count, 3) << "a new quilt begins in it";
    guide->choose(0);
    guide->take("name", "");
    EXPECT_EQ(names(kept->rooms()), QStringList{"Saltmarsh Hall"});
    kept->use(KeptDesk::Room, "Saltmarsh Hall");
    EXPECT_EQ(setting().room.tables.front().count, 3);
}

TEST_F(Guide, OpeningAQuiltChangesNothingThatIsKept) {
    guide->setPage(GuideDesk::Tables);
    guide->take("name", "Saltmarsh Hall");
    Session other = editor.session();
    other.setting.room.tables.front().count = 6;
    editor.open(other);
    begin();
    EXPECT_EQ(setting().room.tables.front().count, 1);
}

TEST_F(Guide, PeopleAreKeptOnlyWhereThatIsSaid) {
    people->add("Ada");
    people->flip(1, "lifts");
    EXPECT_EQ(kept->people()->count(), 0);
    kept->setKeepsPeople(false);
    kept->keepEverybody();
    EXPECT_EQ(kept->people()->count(), 0);
    kept->setKeepsPeople(true);
    people->add("");
    kept->keepEverybody();
    EXPECT_EQ(names(kept->people()), (QStringList{"Ada", "Me"})) << "nobody by a number";
    people->flip(1, "sits");
    begin();
    kept->use(KeptDesk::Person, "Ada");
    ASSERT_EQ(setting().helpers.size(), 2U);
    EXPECT_TRUE(setting().helpers[1].seated) << "what was changed since is kept, too";
    EXPECT_FALSE(setting().helpers[1].lifts);
    kept->use(KeptDesk::Person, "Ada");
    EXPECT_EQ(setting().helpers.size(), 1U) << "a second tap: she does not come";
}

TEST_F(Guide, HoursAndPlacesOfADayAreNotKept) {
    people->add("Ada");
    Session today = editor.session();
    today.setting.helpers[1].until = ClockTime{std::chrono::hours{15}};
    today.setting.helpers[1].side = Side::head;
    editor.apply("today", today);
    kept->keepPerson("Ada");
    begin();
    kept->use(KeptDesk::Person, "Ada");
    EXPECT_FALSE(setting().helpers[1].until);
    EXPECT_FALSE(setting().helpers[1].side);
}

TEST_F(Guide, WhatIsKeptIsRenamedHereAndInTheQuiltInHand) {
    people->add("Ada");
    kept->keepEverybody();
    EXPECT_FALSE(kept->rename(KeptDesk::Person, "Ada", "Me")) << "taken";
    EXPECT_FALSE(kept->problem().isEmpty());
    EXPECT_FALSE(kept->rename(KeptDesk::Person, "Ada", "  "));
    EXPECT_TRUE(kept->rename(KeptDesk::Person, "Ada", "Ada M"));
    EXPECT_EQ(setting().helpers[1].name, "Ada M");
    EXPECT_TRUE(kept->isKept(KeptDesk::Person, "Ada M"));
    EXPECT_FALSE(kept->isKept(KeptDesk::Person, "Ada"));
}

TEST_F(Guide, SomebodyIsForgottenEverywhere) {
    people->add("Gwen");
    kept->keepEverybody();
    Session alone = editor.session();
    alone.setting.helpers.erase(alone.setting.helpers.begin());
    const auto both = library->addJob("both", writeSession(editor.session())).value();
    const auto only = library->addJob("only", writeSession(alone)).value();
    const auto gone = library->addJob("removed", writeSession(editor.session())).value();
    ASSERT_TRUE(library->removeJob(gone));
    EXPECT_EQ(kept->forgetEverywhere("Gwen"), 3);
    EXPECT_FALSE(kept->isKept(KeptDesk::Person, "Gwen"));
    EXPECT_EQ(setting().helpers.size(), 1U);
    for (const auto id : {both, only, gone}) {
        const auto session = *readSession(library->loadJob(id).value()).session;
        ASSERT_EQ(session.setting.helpers.size(), 1U);
        EXPECT_NE(session.setting.helpers.front().name, "Gwen");
    }
}

TEST_F(Guide, AKeptTextThatCannotBeReadIsPassedOver) {
    ASSERT_TRUE(library->keep(KeptKind::room, "Attic", "not a file"));
    ASSERT_TRUE(library->keep(KeptKind::person, "Ada", "{}"));
    kept->refresh();
    EXPECT_EQ(kept->rooms()->count(), 0);
    EXPECT_EQ(kept->people()->count(), 0);
    begin();
}

} // namespace
