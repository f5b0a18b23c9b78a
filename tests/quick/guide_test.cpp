#include "quick/whole_window.h"

#include <QAccessible>
#include <QTest>
#include <gtest/gtest.h>

namespace bastewright::app {
namespace {

/// The guide for a new quilt, the cards of people and the handles of tables, by taps, drags and
/// keys.
struct Guided : WholeWindow {
    Workroom& work() { return *room.workroom; }
    const Session& session() { return work().editor()->session(); }
    void replanned() {
        live(200);
        ASSERT_TRUE(until([this] { return !work().plan()->busy(); }));
    }
    void begin() {
        work().backToShelf();
        tap(QStringLiteral("newQuilt"));
        ASSERT_TRUE(usable(QStringLiteral("guideNext")));
        ASSERT_EQ(work().screen(), Workroom::Screen::Guide);
    }
    void type(const QString& text) {
        for (const QChar letter : text)
            key(Qt::Key(letter.toUpper().unicode()), letter);
        key(Qt::Key_Return);
    }
};

TEST_F(Guided, PagesGoForthAndBackWithoutLoss) {
    begin();
    tap(QStringLiteral("answer3"));
    tap(QStringLiteral("guideNext"));
    tap(QStringLiteral("answer0"));
    tap(QStringLiteral("guideNext"));
    tap(QStringLiteral("guideNext"));
    tap(QStringLiteral("answer1"));
    tap(QStringLiteral("guideNext"));
    tap(QStringLiteral("addPerson"));
    const Session told = session();
    EXPECT_EQ(told.jobs[0].top.width.front(), Length::inches(84));
    EXPECT_EQ(told.jobs[0].quilting.method, Quilting::Method::inTheDitch);
    EXPECT_EQ(told.setting.room.tables.front().count, 2);
    EXPECT_EQ(told.setting.helpers.size(), 2U);
    for (int page = work().guide()->page(); page > 0; --page)
        tap(QStringLiteral("guideBack"));
    EXPECT_EQ(work().guide()->page(), GuideDesk::Size);
    EXPECT_EQ(session(), told);
    for (int page = 0; page < GuideDesk::Supplies; ++page)
        tap(QStringLiteral("guideNext"));
    EXPECT_EQ(session(), told) << "pages that are passed over change nothing";
    tap(QStringLiteral("guideNext"));
    EXPECT_EQ(work().screen(), Workroom::Screen::Planning);
    EXPECT_EQ(session(), told);
    replanned();
}

TEST_F(Guided, TheLengthIsAskedForOnceTheWidthIsTaken) {
    begin();
    tap(QStringLiteral("field-width0"));
    type(QStringLiteral("88"));
    EXPECT_EQ(session().jobs[0].top.width.front(), Length::inches(88));
    auto* editor = find(QStringLiteral("fieldEditor"));
    ASSERT_TRUE(editor) << "the length comes after the width";
    type(QStringLiteral("112"));
    EXPECT_EQ(session().jobs[0].top.length.front(), Length::inches(112));
    EXPECT_FALSE(find(QStringLiteral("fieldEditor")));
}

TEST_F(Guided, AQuiltThatWasBegunAndNeverTouchedIsGoneAgain) {
    const int before = work().shelf()->count();
    begin();
    EXPECT_EQ(work().shelf()->count(), before + 1);
    tap(QStringLiteral("guideNext"));
    tap(QStringLiteral("guideShelf"));
    EXPECT_EQ(work().shelf()->count(), before);
    begin();
    tap(QStringLiteral("answer0"));
    tap(QStringLiteral("guideShelf"));
    EXPECT_EQ(work().shelf()->count(), before + 1) << "what was answered is kept";
}

TEST_F(Guided, IsAnsweredByTheKeyboardAlone) {
    work().backToShelf();
    live(100);
    QTest::keyClick(room.window, Qt::Key_N, Qt::ControlModifier);
    ASSERT_TRUE(usable(QStringLiteral("guideNext")));
    auto* answer = find(QStringLiteral("answer4"));
    ASSERT_TRUE(answer);
    answer->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Space);
    EXPECT_EQ(session().jobs[0].top.width.front(), Length::inches(100));
    for (int page = 1; page <= GuideDesk::Supplies; ++page) {
        key(Qt::Key_PageDown);
        EXPECT_EQ(work().guide()->page(), page);
    }
    key(Qt::Key_Escape);
    EXPECT_EQ(work().guide()->page(), GuideDesk::People);
    key(Qt::Key_PageDown);
    key(Qt::Key_PageDown);
    EXPECT_EQ(work().screen(), Workroom::Screen::Planning);
}

TEST_F(Guided, KeepsPeopleOnlyWhereThatIsTicked) {
    begin();
    for (int page = 0; page < GuideDesk::People; ++page)
        tap(QStringLiteral("guideNext"));
    work().crew()->add(QStringLiteral("Ada"));
    tap(QStringLiteral("keepPeople"));
    tap(QStringLiteral("guideNext"));
    tap(QStringLiteral("guideNext"));
    EXPECT_EQ(work().kept()->people()->count(), 0);
    begin();
    for (int page = 0; page < GuideDesk::People; ++page)
        tap(QStringLiteral("guideNext"));
    work().crew()->add(QStringLiteral("Ada"));
    tap(QStringLiteral("keepPeople"));
    tap(QStringLiteral("guideNext"));
    tap(QStringLiteral("guideNext"));
    EXPECT_TRUE(work().kept()->isKept(KeptDesk::Person, QStringLiteral("Ada")));
}

TEST_F(Guided, HoursAreDraggedAndMovedByKeysAndTold) {
    pane("people");
    live(200);
    auto* until = find(QStringLiteral("until-Ada"));
    ASSERT_TRUE(until);
    drag(QStringLiteral("until-Ada"), {-120, 0});
    ASSERT_TRUE(session().setting.helpers[0].until);
    const auto at = session().setting.helpers[0].until->sinceMidnight;
    EXPECT_EQ(at.count() % PeopleDesk::kStep, 0);
    until = find(QStringLiteral("until-Ada"));
    until->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Left);
    EXPECT_EQ((at - session().setting.helpers[0].until->sinceMidnight).count(), PeopleDesk::kStep);
    auto* told = QAccessible::queryAccessibleInterface(until);
    ASSERT_TRUE(told);
    EXPECT_TRUE(told->text(QAccessible::Name).contains(QStringLiteral("Ada leaves at")));
    auto* from = find(QStringLiteral("from-Bo"));
    ASSERT_TRUE(from);
    from->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    EXPECT_EQ(format(*session().setting.helpers[1].from), "13:30");
    key(Qt::Key_Left);
    key(Qt::Key_Left);
    EXPECT_FALSE(session().setting.helpers[1].from) << "from the beginning again";
    replanned();
    tap(QStringLiteral("until-Bo")); // not dragged: typed
    ASSERT_TRUE(usable(QStringLiteral("fieldEditor")));
    type(QStringLiteral("1440"));
    ASSERT_TRUE(session().setting.helpers[1].until);
    EXPECT_EQ(format(*session().setting.helpers[1].until), "14:40");
    replanned();
}

TEST_F(Guided, SignsAreTappedAndAPersonsRestOpens) {
    pane("people");
    tap(QStringLiteral("lifts-Bo"));
    EXPECT_FALSE(session().setting.helpers[1].lifts);
    auto* told = QAccessible::queryAccessibleInterface(find(QStringLiteral("lifts-Bo")));
    ASSERT_TRUE(told);
    EXPECT_EQ(told->role(), QAccessible::CheckBox);
    EXPECT_FALSE(told->state().checked);
    told = QAccessible::queryAccessibleInterface(find(QStringLiteral("lifts-Ada")));
    ASSERT_TRUE(told);
    EXPECT_TRUE(told->state().checked);
    tap(QStringLiteral("card-Bo"));
    ASSERT_TRUE(usable(QStringLiteral("field-helper1/reach")));
    EXPECT_FALSE(find(QStringLiteral("field-helper0/reach"))) << "only of the one tapped";
    tap(QStringLiteral("keepPerson"));
    EXPECT_TRUE(work().kept()->isKept(KeptDesk::Person, QStringLiteral("Bo")));
    key(Qt::Key_Escape);
    EXPECT_TRUE(find(QStringLiteral("card-Ada"))) << "back at everybody's cards";
    replanned();
}

TEST_F(Guided, ATableInHandHasHandles) {
    pane("room");
    EXPECT_FALSE(find(QStringLiteral("handleAdd0")));
    tap(QStringLiteral("table0"));
    ASSERT_TRUE(usable(QStringLiteral("handleApart0")));
    tap(QStringLiteral("handleApart0"));
    ASSERT_TRUE(session().setting.room.together);
    EXPECT_EQ(session().setting.room.together->width, Length::inches(30)) << "one is left";
    replanned();
    tap(QStringLiteral("undo"));
    replanned();
    if (!find(QStringLiteral("handleAdd0")))
        tap(QStringLiteral("table0"));
    tap(QStringLiteral("handleAdd0"));
    EXPECT_EQ(session().setting.room.tables.front().count, 3);
    replanned();
    const auto before = session().setting.room.together;
    if (!find(QStringLiteral("handleTurn0")))
        tap(QStringLiteral("table0"));
    tap(QStringLiteral("handleTurn0"));
    EXPECT_NE(session().setting.room.together, before);
}

TEST_F(Guided, AnExampleIsTheSameCardUntilItIsChanged) {
    const int before = work().shelf()->count();
    const auto first = work().shelf()->addExample(1);
    EXPECT_EQ(work().shelf()->addExample(1), first);
    EXPECT_EQ(work().shelf()->count(), before + 1);
    work().openJob(first);
    work().crew()->flip(0, QStringLiteral("lifts"));
    EXPECT_NE(work().shelf()->addExample(1), first) << "one that was changed is one's own";
}

} // namespace
} // namespace bastewright::app
