#include "job/job_json.h"
#include "session/checked_plan.h"
#include "unit/view/qt_application.h"
#include "view/edit/field_model.h"
#include "view/edit/top_desk.h"
#include "view/plan/remedies.h"
#include "view/plan/room_board.h"
#include "view/plan/rows_desk.h"
#include "view/plan/way_desk.h"
#include "view/plan/why_desk.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace bastewright;
using namespace bastewright::literals;

namespace {

const Session& demoSession() {
    static const Session session =
        *readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/harbour-lights.json").session;
    return session;
}

Planned planned(const Session& session, bool help = false) {
    return {session, checkedPlan(session, {.effort = 0, .help = help})};
}

/// The demo on the planning screen; each change is planned at once.
struct Planning : testing::Test {
    JobEditor editor;
    PlanPresenter plan;
    RoomBoard room{&editor, &plan};
    TopDesk top{&editor};
    WayDesk ways{&editor, &plan};
    RowsDesk rows{&plan};
    WhyDesk why{&plan};
    Remedies remedies{&editor, &plan};

    Planning() {
        needApplication();
        open(demoSession());
    }
    void open(const Session& session) {
        editor.open(session);
        replan();
    }
    void replan(bool help = false) {
        plan.show(std::make_shared<Planned>(planned(editor.session(), help)));
    }
    const Room& given() const { return editor.session().setting.room; }
    QRectF table(int index) const {
        const auto& row = const_cast<RoomBoard&>(room).tables()->rows()[index];
        return {row[0].toReal(), row[1].toReal(), row[2].toReal(), row[3].toReal()};
    }
    bool apart(int index) const {
        return const_cast<RoomBoard&>(room).tables()->rows()[index][4].toBool();
    }
    int pushed() const {
        int n = 0;
        for (int i = 0; i < const_cast<RoomBoard&>(room).tables()->count(); ++i)
            n += !apart(i);
        return n;
    }
};

TEST_F(Planning, EveryTableOfTheRoomIsDrawnOnceToScale) {
    ASSERT_EQ(room.tables()->count(), 2);
    for (int i = 0; i < 2; ++i)
        EXPECT_EQ(table(i).width() * table(i).height(), 72 * 30);
    EXPECT_FALSE(room.onFloor());
    EXPECT_FALSE(room.asked());
    EXPECT_TRUE(room.extent().contains(room.surface()));
}

TEST_F(Planning, TablesDraggedApartAndTogetherBecomeTheRectangleThatIsPlannedOn) {
    // Whichever way they stand: one is dragged away, then back to an end and to a side.
    room.drop(1, 400, 400);
    EXPECT_EQ(given().together, (PushedTogether{72_in, 30_in}));
    replan();
    EXPECT_EQ(plan.quilt().plan()->surface.length, 72_in);
    ASSERT_EQ(pushed(), 1);
    const int loose = apart(0) ? 0 : 1;
    room.drop(loose, 75, 2); // near the right end
    EXPECT_EQ(room.problem(), "");
    EXPECT_EQ(given().together, (PushedTogether{144_in, 30_in}));
    replan();
    EXPECT_EQ(plan.quilt().plan()->surface.length, 144_in);
    EXPECT_EQ(pushed(), 2);
    room.drop(1, 3, 33); // below the first
    EXPECT_EQ(given().together, (PushedTogether{72_in, 60_in}));
    replan();
    EXPECT_EQ(plan.quilt().plan()->surface.width, 60_in);
    EXPECT_TRUE(room.asked());
    room.asIsQuickest();
    EXPECT_FALSE(room.asked());
    while (editor.canUndo())
        editor.undo();
    EXPECT_EQ(editor.session(), demoSession());
}

TEST_F(Planning, ATableDroppedInTheRoomGoesBackToWhereItStood) {
    room.addTable();
    replan();
    const auto before = editor.session();
    for (int i = 0; i < 3; ++i)
        if (apart(i))
            room.drop(i, 900, 900);
    EXPECT_EQ(editor.session(), before);
}

TEST_F(Planning, AnEdgeIsAWallAndOpenAgain) {
    const int before = room.walls();
    room.toggleWall(RoomBoard::Left);
    EXPECT_EQ(room.walls(), before ^ (1 << RoomBoard::Left));
    room.toggleWall(RoomBoard::Left);
    EXPECT_EQ(room.walls(), before);
}

TEST_F(Planning, TheLastTableTakenAwayLeavesTheFloor) {
    room.turnTables();
    EXPECT_TRUE(given().together);
    room.removeTable(0);
    replan();
    room.removeTable(0);
    EXPECT_TRUE(room.onFloor());
    EXPECT_FALSE(given().together) << "the floor has nothing to push together";
    replan();
    EXPECT_TRUE(plan.quilt().plan()->surface.floor);
    room.addTable();
    replan();
    EXPECT_EQ(room.tables()->count(), 1);
}

TEST_F(Planning, WhoIsSentToASideIsPlannedThere) {
    room.keepTo(0, RoomBoard::Foot);
    EXPECT_EQ(editor.session().setting.helpers[0].side, Side::foot);
    EXPECT_EQ(room.people()->rows()[0][3].toInt(), RoomBoard::Foot);
    replan();
    EXPECT_TRUE(plan.good()) << plan.findingsText().toStdString();
    room.keepTo(0, -1);
    EXPECT_EQ(editor.session(), demoSession());
}

TEST_F(Planning, NobodyIsSentToAWall) {
    room.toggleWall(RoomBoard::Left);
    const auto before = editor.session();
    room.keepTo(0, RoomBoard::Left);
    EXPECT_EQ(editor.session(), before);
    EXPECT_TRUE(room.problem().contains("left end")) << room.problem().toStdString();
}

TEST_F(Planning, EveryWayThatWorksIsThePlanOnceItIsTaken) {
    int taken = 0;
    for (int row = 0; row < plan.alternatives()->count(); ++row) {
        open(demoSession());
        const Alternative wanted = plan.quilt().plan()->alternatives[std::size_t(row)];
        if (!wanted.workable || wanted.chosen || ++taken > 4)
            continue;
        ways.take(row);
        EXPECT_EQ(ways.problem(), "");
        replan();
        const auto& all = plan.quilt().plan()->alternatives;
        const auto chosen = std::ranges::find_if(all, &Alternative::chosen);
        ASSERT_NE(chosen, all.end());
        EXPECT_EQ(chosen->surfaceLength, wanted.surfaceLength);
        EXPECT_EQ(chosen->quiltLengthAlongLength, wanted.quiltLengthAlongLength);
        EXPECT_EQ(chosen->start, wanted.start);
        EXPECT_EQ(chosen->passes, wanted.passes);
        EXPECT_TRUE(ways.asked());
        ways.takeQuickest();
        EXPECT_EQ(editor.session(), demoSession());
    }
    EXPECT_GT(taken, 3);
}

TEST_F(Planning, TheStartGoesToTheOneItIsDraggedNearest) {
    ASSERT_GT(ways.starts()->count(), 0);
    EXPECT_TRUE(ways.starts()->rows().front()[4].toBool());
    for (int i = 1; i < ways.starts()->count(); ++i) {
        const auto start = ways.starts()->rows()[i];
        const auto wanted = plan.quilt().plan()->alternatives[std::size_t(start[3].toInt())].start;
        ways.startNear(start[0].toReal(), start[1].toReal());
        replan();
        const auto& taken = ways.starts()->rows().front();
        const auto& all = plan.quilt().plan()->alternatives;
        EXPECT_EQ(std::ranges::find_if(all, &Alternative::chosen)->start, wanted);
        // Laid out in full it may lie better by what a finger cannot tell apart.
        EXPECT_LE(std::hypot(taken[0].toReal() - start[0].toReal(),
                             taken[1].toReal() - start[1].toReal()),
                  1);
        open(demoSession());
    }
    const auto& first = ways.starts()->rows().front();
    ways.startNear(first[0].toReal() + 0.2, first[1].toReal());
    EXPECT_EQ(editor.session(), demoSession()) << "dropped where it was";
}

TEST_F(Planning, ARowThatIsTappedIsTold) {
    const auto& told = plan.quilt().plan()->rows;
    ASSERT_TRUE(told);
    const double gap = told->gap.in();
    for (double x = 1; x < 88; x += 6)
        for (double y = 1; y < 112; y += 6) {
            rows.look(x, y);
            ASSERT_TRUE(rows.shown());
            const QRectF area = rows.area();
            const double off = told->along == PinRows::Along::width ? area.center().y() - y
                                                                    : area.center().x() - x;
            EXPECT_LE(std::abs(off), gap); // the nearest
        }
    EXPECT_FALSE(rows.title().isEmpty());
    rows.close();
    EXPECT_FALSE(rows.shown());
    QSet<QString> titles;
    for (std::size_t i = 0; i < told->lines.size(); ++i) {
        rows.step(1);
        EXPECT_TRUE(rows.shown());
        titles << rows.rowTitle();
        EXPECT_FALSE(rows.rowText().isEmpty());
    }
    EXPECT_EQ(titles.size(), int(told->lines.size()));
}

TEST_F(Planning, EveryFigureOpensToItsRuleInputsReasonAndSource) {
    EXPECT_GE(why.figures()->count(), 7);
    for (const auto& row : why.figures()->rows()) {
        ASSERT_TRUE(why.open(row[0].toString()));
        EXPECT_FALSE(why.value().isEmpty()) << row[0].toString().toStdString();
        EXPECT_FALSE(why.plain().isEmpty());
        EXPECT_LE(why.plain().size(), 125) << "one short sentence: " << why.plain().toStdString();
        EXPECT_EQ(why.plain().count(QLatin1Char('.')), 1) << why.plain().toStdString();
        EXPECT_FALSE(why.rule().isEmpty());
        EXPECT_FALSE(why.reason().isEmpty());
        EXPECT_FALSE(why.source().isEmpty());
        EXPECT_GT(why.inputs()->count(), 0);
    }
    EXPECT_FALSE(why.open("nothing of the kind"));
}

TEST_F(Planning, TheCureOfTooFewPinsCuresItAndCanBeTakenBack) {
    const auto lacking = [&] {
        for (int i = 0; i < remedies.findings()->count(); ++i)
            if (remedies.findings()->rows()[i][3].toString().contains("pins"))
                return i;
        return -1;
    };
    const int at = lacking();
    ASSERT_GE(at, 0) << "the demo has too few pins";
    remedies.cure(at, 0);
    EXPECT_TRUE(remedies.trying());
    EXPECT_EQ(remedies.after(), "");
    replan();
    EXPECT_FALSE(remedies.after().isEmpty());
    EXPECT_EQ(lacking(), -1);
    remedies.takeBack();
    EXPECT_FALSE(remedies.trying());
    EXPECT_EQ(editor.session(), demoSession());
    EXPECT_TRUE(editor.canRedo());
}

TEST_F(Planning, EveryCureIsAJobTheReaderAcceptsAndWhatWasNotHadCanBeLetGo) {
    Session asking = demoSession();
    asking.setting.room.together = {60_in, 50_in};
    asking.setting.stash.clips.clear();
    open(asking);
    int cures = 0;
    for (int i = 0; i < remedies.findings()->count(); ++i)
        for (int which = 0; which < 2; ++which) {
            if (remedies.findings()->rows()[i][3 + which].toString().isEmpty())
                continue;
            const QString cure = remedies.findings()->rows()[i][3 + which].toString();
            remedies.cure(i, which);
            EXPECT_NE(editor.session(), asking) << cure.toStdString();
            editor.undo();
            EXPECT_EQ(editor.session(), asking);
            ++cures;
        }
    EXPECT_GE(cures, 3);
}

TEST_F(Planning, ClipsThatCureAFoldedPartAreAsManyAsThePlanThenTakes) {
    Session bare = demoSession();
    bare.setting.stash.clips.clear();
    bare.jobs.front().basting.start = Basting::Start::oneEnd; // the layers are rolled
    open(bare);
    const auto& said = remedies.findings()->rows();
    const auto at = std::ranges::find_if(
        said, [](const QVariantList& row) { return row[3].toString().contains("clips"); });
    ASSERT_NE(at, said.end()) << "without a clip what hangs over has to be folded";
    remedies.cure(int(at - said.begin()), 0);
    replan();
    const auto& now = *plan.planned();
    ASSERT_EQ(now.session.setting.stash.clips.size(), 1u);
    const ClipStock& bought = now.session.setting.stash.clips.front();
    const auto supply = std::ranges::find_if(now.plan.supplies, [&](const Supply& s) {
        return s.kind == Supply::Kind::clips && s.size == bought.holds;
    });
    ASSERT_NE(supply, now.plan.supplies.end());
    EXPECT_EQ(supply->need, bought.count);
    for (const Pass& pass : now.plan.quilts.front().passes)
        for (const Roll& roll : pass.rolls)
            EXPECT_FALSE(roll.folded);
}

TEST_F(Planning, FabricIsToBringInEighthsOfAYardAsItIsCut) {
    Session wide = demoSession();
    wide.jobs.front().top.width = {120_in};
    wide.jobs.front().top.length = {130_in};
    wide.jobs.front().top.grid.reset();
    wide.jobs.front().backing.fabrics = {Fabric{}};
    open(wide);
    int yards = 0;
    for (const QVariantList& row : plan.supplies()->rows())
        if (row[4] == "yd") {
            ++yards;
            EXPECT_FALSE(row[1].toString().contains('.')) << row[1].toString().toStdString();
        }
    EXPECT_GT(yards, 0);
    const auto& all = plan.planned()->plan.supplies;
    const auto fabric = std::ranges::find(all, Supply::Kind::fabric, &Supply::kind);
    ASSERT_NE(fabric, all.end());
    EXPECT_NE(fabric->need * 2, std::round(fabric->need * 2)) << "a half would show nothing";
    const auto& row = plan.supplies()->rows()[qsizetype(fabric - all.begin())];
    EXPECT_TRUE(row[1].toString().contains(QRegularExpression{QStringLiteral("[⅛¼⅜½⅝¾⅞]$")}))
        << row[1].toString().toStdString();
}

TEST_F(Planning, WhatWouldHelpIsTriedAndShownBeforeAndAfter) {
    replan(true);
    ASSERT_GT(plan.help()->count(), 0);
    const QString promised = plan.help()->rows().front()[0].toString();
    const auto saved = plan.planned()->plan.help.front().saved;
    const auto finish = plan.planned()->plan.finish;
    remedies.tryHelp(0);
    EXPECT_EQ(remedies.tried(), promised);
    replan();
    EXPECT_EQ(finish - plan.planned()->plan.finish, saved);
    EXPECT_NE(remedies.before(), remedies.after());
    editor.undo();
    EXPECT_FALSE(remedies.trying()) << "an undo ends the trial";
}

TEST_F(Planning, ASeamIsDrawnByTwoTapsOnTheRaster) {
    top.tap(10.1, 20.2);
    EXPECT_EQ(top.begun(), QPointF(10, 20.25));
    top.tap(88.4, 20.2); // beyond the edge
    ASSERT_EQ(editor.job().top.seams.size(), 1u);
    EXPECT_EQ(editor.job().top.seams[0], (Segment{{10_in, 20.25_in}, {88_in, 20.25_in}}));
    EXPECT_EQ(top.begun(), QPointF(-1, -1));
    top.removeLastSeam();
    EXPECT_EQ(editor.session(), demoSession());
    Session metric = demoSession();
    metric.jobs.front().unit = Unit::centimetre;
    open(metric);
    top.tap(10, 20);
    top.tap(30, 20);
    EXPECT_EQ(editor.job().top.seams[0].from.x, Length::millimetres(255));
}

TEST_F(Planning, WhatIsTypedIsShownBeforeItIsTaken) {
    Session byBlocks = demoSession();
    byBlocks.jobs.front().top.sizeFromGrid = true;
    open(byBlocks);
    FieldModel fields;
    fields.setEditor(&editor);
    fields.preview("columns", "8");
    EXPECT_EQ(top.sizeText(), "100 × 112\u00a0in");
    EXPECT_EQ(editor.job().top.grid->columns, 7);
    fields.preview("columns", "80"); // far too large: nothing new
    fields.endPreview();
    EXPECT_EQ(top.sizeText(), "88 × 112\u00a0in");
    EXPECT_FALSE(editor.canUndo());
}

TEST_F(Planning, UnitsSwitchedTwentyTimesLeaveEveryLengthAsItWas) {
    FieldModel fields;
    fields.setEditor(&editor);
    const std::string before = writeSession(editor.session());
    for (int i = 0; i < 20; ++i) {
        EXPECT_EQ(fields.take("unit", QString::number((i + 1) % 3)), "");
        // Through a file each time, as when the program is closed in between.
        editor.open(*readSession(writeSession(editor.session())).session);
    }
    EXPECT_EQ(fields.take("unit", "0"), "");
    EXPECT_EQ(writeSession(editor.session()), before);
}

} // namespace
