#include "job/job_json.h"
#include "planners/crew/crew.h"
#include "planners/crew/zone_points.h"
#include "session/checked_plan.h"
#include "sheets/exchange/csv.h"
#include "unit/view/qt_application.h"
#include "view/base/words.h"
#include "view/plan/rehearsal.h"
#include "view/table/change_desk.h"
#include "view/table/lanes_item.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <sstream>

using namespace bastewright;

namespace {

const Planned& harbourLights() {
    static const Planned planned = [] {
        auto read = readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/harbour-lights.json");
        auto plan = checkedPlan(*read.session);
        return Planned{*read.session, std::move(plan)};
    }();
    return planned;
}

struct Workshop : testing::Test {
    QTemporaryDir folder;
    std::int64_t now = 1'800'000'000'000;
    std::optional<Library> library;
    JobEditor editor;
    PlanPresenter plan;
    std::optional<LiveController> live;
    std::optional<ChangeDesk> desk;
    std::optional<LanesBoard> lanes;

    Workshop() {
        needApplication();
        auto opened = Library::open(folder.filePath("library.sqlite").toStdString(), {});
        library.emplace(std::move(opened.value().library));
        const auto clock = [this] { return now; };
        live.emplace(&*library, clock);
        desk.emplace(&editor, &plan, &*live, clock);
        lanes.emplace(&plan, &*live, clock);
        editor.open(harbourLights().session);
        plan.show(std::make_shared<Planned>(harbourLights()));
    }
    void startSession() {
        const auto job = library->addJob("Harbour Lights", "{}").value();
        ASSERT_TRUE(live->start(job, harbourLights())) << live->problem().toStdString();
        desk->setAtTable(true);
        lanes->setAtTable(true);
    }
    void answered() {
        QElapsedTimer timer;
        timer.start();
        while (desk->busy() && timer.elapsed() < 60'000)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        ASSERT_FALSE(desk->busy());
    }
    std::string firstZone() const { return harbourLights().plan.quilts[0].zones.front().id; }
    std::vector<std::string> handsOn(const Plan& p, const std::string& zone) const {
        std::vector<std::string> out;
        for (const auto& t : p.tasks)
            if (t.zone == zone)
                out.insert(out.end(), t.people.begin(), t.people.end());
        return out;
    }
};

TEST_F(Workshop, LanesHoldWhatTheListsOnPaperHold) {
    // person,start,end,… of everybody's list against the blocks of their lane.
    std::multiset<std::string> listed, drawn;
    std::istringstream lines{tasksCsv(harbourLights().session, harbourLights().plan)};
    std::string line;
    std::getline(lines, line); // the heading
    while (std::getline(lines, line))
        if (line.find(",break,") == std::string::npos) // a break is a gap between the blocks
            listed.insert(line.substr(0, line.find(',', line.find(',') + 1)));
    for (const auto& block : lanes->blocks())
        drawn.insert(words::toCore(lanes->names()[block.lane]) + "," +
                     words::toCore(lanes->clockAt(qreal(block.task->start.count()))));
    EXPECT_FALSE(listed.empty());
    EXPECT_EQ(drawn, listed);
}

TEST_F(Workshop, ABlockIsFoundWhereItIsDrawn) {
    LanesItem item;
    item.setSize({900, 500});
    item.setProperty("minute", 10.0); // setting up and laying take a good half hour
    item.setProperty("textSize", 11.0);
    const QColor open{0xfb, 0xee, 0xb0};
    item.setProperty("open", open);
    item.setBoard(&*lanes);
    int found = 0;
    for (const auto& block : lanes->blocks()) {
        const auto id = words::fromCore(block.task->id);
        const auto middle = item.placeOf(id).center();
        if (middle.x() < 100 || middle.x() > 900)
            continue;
        EXPECT_EQ(item.taskAt(middle.x(), middle.y()), id);
        ++found;
    }
    EXPECT_GT(found, 10);
    EXPECT_EQ(item.taskAt(5, 5), "") << "names and times are no work";
    QImage image{900, 500, QImage::Format_ARGB32_Premultiplied};
    image.fill(Qt::white);
    QPainter painter{&image};
    item.paint(&painter);
    int seen = 0;
    for (const auto& block : lanes->blocks()) {
        const auto r = item.placeOf(words::fromCore(block.task->id));
        if (block.task->kind != TaskKind::placeOpen || r.left() < 100 || r.right() > 900)
            continue;
        ++seen;
        int filled = 0;
        for (int x = int(r.left()) + 2; x < int(r.right()) - 2; ++x)
            filled += image.pixelColor(x, int(r.top()) + 6) == open;
        EXPECT_GT(filled, 0) << block.task->id;
    }
    EXPECT_GT(seen, 0);
    // From afar a pass is one stretch, and the work in it lies along its lower edge.
    item.setProperty("minute", 6.0);
    image.fill(Qt::white);
    item.paint(&painter);
    int seenFromAfar = 0;
    for (const auto& block : lanes->blocks()) {
        const auto r = item.placeOf(words::fromCore(block.task->id));
        if (block.task->kind != TaskKind::placeOpen || r.left() < 100 || r.right() > 900)
            continue;
        ++seenFromAfar;
        const int x = int(r.center().x());
        EXPECT_EQ(image.pixelColor(x, int(r.bottom()) - 6), open) << block.task->id;
        EXPECT_NE(image.pixelColor(x, int(r.top()) + 6), open) << block.task->id;
    }
    EXPECT_GT(seenFromAfar, 0);
}

TEST_F(Workshop, TappedWorkSaysWhatWhereAndWhy) {
    while (lanes->zone().isEmpty())
        lanes->step(1, 0);
    const QString called = words::zone(words::toCore(lanes->zone()));
    EXPECT_TRUE(lanes->title().contains(" " + called + " ") || lanes->title().endsWith(called))
        << lanes->title().toStdString();
    EXPECT_TRUE(lanes->what().contains("edge")) << lanes->what().toStdString();
    EXPECT_TRUE(lanes->what().contains("Waits until")) << lanes->what().toStdString();
    EXPECT_EQ(lanes->takers()->count(), 4);
}

TEST_F(Workshop, AZoneIsHandedOverBeforeTheSessionAndCanBeUndone) {
    const auto zone = firstZone();
    const auto old = handsOn(harbourLights().plan, zone);
    const std::string to = std::count(old.begin(), old.end(), "Bo") == 0 ? "Bo" : "Ada";
    desk->handOver(0, words::fromCore(zone), words::fromCore(to));
    answered();
    ASSERT_EQ(desk->refused(), "");
    EXPECT_NE(desk->finishText(), "");
    EXPECT_NE(desk->meaning(), "");
    desk->accept();
    EXPECT_FALSE(desk->isOpen());
    EXPECT_EQ(editor.job().handed, (std::vector<HandedZone>{{zone, to}}));
    auto quilts = harbourLights().plan.quilts;
    const auto again = planCrew(editor.session(), quilts, pointsOfZones(quilts));
    for (const auto& t : again.tasks)
        EXPECT_TRUE(t.zone != zone || t.people == std::vector<std::string>{to});
    editor.undo();
    EXPECT_TRUE(editor.job().handed.empty());
}

TEST_F(Workshop, WhatCannotBeIsRefusedAndChangesNothing) {
    auto planned = harbourLights();
    for (auto& h : planned.session.setting.helpers)
        h.closes = h.name != "Dot";
    editor.open(planned.session);
    plan.show(std::make_shared<Planned>(planned));
    desk->handOver(0, words::fromCore(firstZone()), "Dot");
    answered();
    EXPECT_EQ(desk->refused().toStdString(), "Dot does not close pins, and zone " +
                                                 std::string{zoneName(firstZone())} +
                                                 " has to be closed.");
    desk->accept();
    EXPECT_TRUE(editor.job().handed.empty());
    desk->keep();
    EXPECT_FALSE(desk->isOpen());
}

TEST_F(Workshop, SomebodyLeavesAndOneUndoTakesTheNewPlanBack) {
    startSession();
    desk->goes("Dot");
    EXPECT_TRUE(desk->busy());
    answered();
    ASSERT_EQ(desk->refused(), "");
    EXPECT_TRUE(desk->happened());
    EXPECT_EQ(desk->people()->count(), 4);
    EXPECT_TRUE(live->live()->state().present.contains("Dot")) << "nothing has happened yet";
    QElapsedTimer stall;
    stall.start();
    desk->accept();
    RecordProperty("milliseconds_on_the_screens_thread", int(stall.elapsed()));
    std::cout << "accepting took " << stall.elapsed() << " ms on the screen's thread\n";
    EXPECT_EQ(live->problem().toStdString(), "");
    EXPECT_FALSE(live->live()->state().present.contains("Dot"));
    for (const auto& t : live->live()->plan().tasks)
        EXPECT_EQ(std::count(t.people.begin(), t.people.end(), "Dot"), 0) << t.id;
    live->undo();
    EXPECT_EQ(live->live()->plan().tasks, harbourLights().plan.tasks);
    EXPECT_FALSE(live->live()->state().present.contains("Dot"));
}

TEST_F(Workshop, KeepingTheOldPlanReportsOnlyWhatHappened) {
    startSession();
    desk->irons(1);
    answered();
    desk->keep();
    EXPECT_EQ(live->live()->session().setting.room.irons,
              harbourLights().session.setting.room.irons + 1);
    EXPECT_EQ(live->live()->plan().tasks, harbourLights().plan.tasks);
    desk->goes("Bo");
    answered();
    desk->cancel();
    EXPECT_TRUE(live->live()->state().present.contains("Bo")) << "closed: nothing has happened";
}

TEST_F(Workshop, TheNewestQuestionWins) {
    startSession();
    desk->goes("Dot");
    desk->goes("Bo");
    answered();
    EXPECT_EQ(desk->title(), "Bo leaves");
    EXPECT_EQ(desk->people()->rows()[1][4], "nothing");
}

TEST_F(Workshop, ARehearsalGoesFromStartToEnd) {
    Rehearsal rehearsal{&plan};
    plan.show(std::make_shared<Planned>(harbourLights()));
    EXPECT_EQ(rehearsal.passes().size(), qsizetype(harbourLights().plan.quilts[0].passes.size()));
    EXPECT_TRUE(rehearsal.caption().contains("set up")) << rehearsal.caption().toStdString();
    QStringList captions; // as they change; zones of all passes share names
    for (int k = 0; rehearsal.moment() < rehearsal.span() && k < 1000; ++k) {
        if (captions.isEmpty() || captions.last() != rehearsal.caption())
            captions << rehearsal.caption();
        rehearsal.step(1);
    }
    EXPECT_GT(captions.size(), 20);
    EXPECT_TRUE(std::any_of(captions.begin(), captions.end(), [](const QString& caption) {
        return caption.contains("lay the backing");
    }));
    EXPECT_EQ(rehearsal.caption(), "Everything is basted.");
    rehearsal.setPlaying(true);
    EXPECT_EQ(rehearsal.moment(), 0) << "from the start again";
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < 400)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    EXPECT_GT(rehearsal.moment(), 0);
    rehearsal.setPlaying(false);
}

TEST_F(Workshop, WhereThePinsDoNotLastWhatHelpsIsShownSideBySide) {
    startSession();
    const auto before = library->events(live->id())->size();
    desk->pins(0); // the demo's box holds fewer than it takes
    answered();
    EXPECT_TRUE(desk->pinsShort());
    EXPECT_EQ(desk->sides()->count(), 0) << "nothing is other yet";

    desk->fewerZones();
    answered();
    EXPECT_EQ(desk->refused(), QString{});
    EXPECT_LT(live->live()->plan().finish, Seconds{4 * 3600});
    desk->widerRows();
    answered();
    ASSERT_EQ(desk->refused(), QString{});
    EXPECT_FALSE(desk->pinsShort());
    ASSERT_GT(desk->sides()->count(), 0);
    const auto pins = desk->sides()->rows().back();
    EXPECT_EQ(pins[0], QStringLiteral("Pins to place"));
    EXPECT_GT(pins[1].toInt(), 400);
    EXPECT_LE(pins[2].toInt(), 400);
    EXPECT_EQ(library->events(live->id())->size(), before) << "nothing has happened yet";
    desk->accept();
    EXPECT_EQ(library->events(live->id())->size(), before + 1) << "the plan, and no pins";
    EXPECT_TRUE(live->live()->state().ignored.empty());
    const auto& spacing = live->live()->session().jobs[0].basting.spacing;
    EXPECT_GT(spacing, harbourLights().session.jobs[0].basting.spacing);
}

TEST_F(Workshop, HelpThatCannotBeHadLeadsBackToHowManyThereAre) {
    startSession();
    live->doneUpTo(0, int(Call::lay), 0); // a pass is begun: its rows stay
    const auto before = library->events(live->id())->size();
    desk->pins(-20);
    answered();
    desk->widerRows();
    answered();
    EXPECT_TRUE(desk->refused().contains(QStringLiteral("Finish pass 1 first")));
    desk->keep();
    answered();
    EXPECT_TRUE(desk->isOpen());
    EXPECT_EQ(desk->refused(), QString{});
    EXPECT_EQ(library->events(live->id())->size(), before);
    desk->keep();
    EXPECT_FALSE(desk->isOpen());
    EXPECT_EQ(library->events(live->id())->size(), before + 1) << "20 pins less, the old plan";
}

TEST_F(Workshop, ATableLessIsShownBeforeAndAfterAndTaken) {
    startSession();
    desk->tables(-1);
    answered();
    ASSERT_EQ(desk->refused(), QString{});
    const auto rows = desk->sides()->rows();
    ASSERT_GT(rows.size(), 1);
    EXPECT_EQ(rows[1][0], QStringLiteral("Passes left"));
    EXPECT_GT(rows[1][2].toInt(), rows[1][1].toInt());
    desk->accept();
    EXPECT_EQ(live->live()->plan().quilts[0].surface.tables.size(), 1u);
    EXPECT_EQ(live->live()->session().setting.room.tables[0].count, 1);
    EXPECT_TRUE(live->live()->state().ignored.empty());
}

} // namespace
