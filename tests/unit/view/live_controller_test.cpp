#include "unit/view/qt_application.h"
#include "view/live_controller.h"
#include "view/table_board.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

using namespace bastewright;
using namespace bastewright::literals;

namespace {

/// Two zones side by side in one pass, two people.
Planned small() {
    Planned made;
    auto& session = made.session;
    Job job;
    job.name = "Knots";
    job.top.width = {40_in};
    job.top.length = {20_in};
    session.jobs = {job};
    session.setting.room.tables = {Table{}};
    for (const char* name : {"Ada", "Bo"})
        session.setting.helpers.emplace_back().name = name;
    session.setting.stash.pins = 100;

    QuiltPlan quilt;
    quilt.name = job.name;
    quilt.layers = {.top = {40_in, 20_in}, .batting = {44_in, 24_in}, .backing = {48_in, 28_in}};
    quilt.surface.length = 72_in;
    quilt.surface.width = 30_in;
    Pass pass;
    pass.field = pass.fresh = Rect{0_in, 0_in, 40_in, 20_in};
    pass.table = Rect{Length{} - 16_in, Length{} - 5_in, 56_in, 25_in};
    pass.zones = {"A1", "B1"};
    quilt.passes = {pass};
    Zone a, b;
    a.id = "A1";
    a.area = {0_in, 0_in, 20_in, 20_in};
    a.points = {{{5_in, 5_in}}, {{15_in, 15_in}}};
    b.id = "B1";
    b.area = {20_in, 0_in, 40_in, 20_in};
    b.points = {{{25_in, 5_in}}};
    quilt.zones = {a, b};
    made.plan.quilts = {quilt};

    const auto task = [&](const char* id, TaskKind kind, const char* zone, const char* person,
                          std::vector<std::string> after) {
        Task t;
        t.id = id;
        t.kind = kind;
        t.zone = zone;
        t.people = {person};
        t.after = std::move(after);
        const int n = int(made.plan.tasks.size());
        t.start = Seconds{n * 60};
        t.end = Seconds{n * 60 + 60};
        made.plan.tasks.push_back(t);
    };
    task("lay", TaskKind::layBacking, "", "Ada", {});
    task("oA", TaskKind::placeOpen, "A1", "Ada", {"lay"});
    task("oB", TaskKind::placeOpen, "B1", "Bo", {"lay"});
    task("smooth", TaskKind::smooth, "", "Ada", {"oA", "oB"});
    task("cA", TaskKind::closePins, "A1", "Bo", {"smooth"});
    task("cB", TaskKind::closePins, "B1", "Bo", {"smooth"});
    task("under", TaskKind::checkUnderside, "", "Ada", {"cA", "cB"});
    task("over", TaskKind::handOver, "", "Ada", {"under"});
    made.plan.finish = made.plan.tasks.back().end;
    return made;
}

struct AtTable : testing::Test {
    QTemporaryDir folder;
    std::int64_t now = 1'000'000;
    std::optional<Library> library;
    std::optional<LiveController> live;
    std::optional<TableBoard> board;
    JobId job = 0;

    AtTable() {
        needApplication();
        open();
        job = library->addJob("Knots", "{}").value();
    }
    void open(std::int64_t pages = 0) {
        board.reset();
        live.reset();
        library.reset();
        LibraryOptions options;
        options.pageLimit = pages;
        auto opened = Library::open(folder.filePath("library.sqlite").toStdString(), options);
        library.emplace(std::move(opened.value().library));
        live.emplace(&*library, [this] { return now += 1000; });
        board.emplace(&*live);
    }
    QString stage(const QString& zone) {
        for (const auto& row : board->zones()->rows())
            if (row[0] == zone)
                return row[4].toString();
        return {};
    }
};

TEST_F(AtTable, ATapGoesFromWaitingToOpenToClosed) {
    ASSERT_TRUE(live->start(job, small())) << live->problem().toStdString();
    board->doStep();
    EXPECT_EQ(stage("A1"), "waiting");
    live->tick(0, "A1");
    EXPECT_EQ(stage("A1"), "open");
    live->tick(0, "B1");
    board->doStep();
    live->tick(0, "A1");
    EXPECT_EQ(stage("A1"), "closed");
    EXPECT_EQ(live->progressText(), "1/2 zones");
}

TEST_F(AtTable, ALongNameDoesNotCrowdOutTheTable) {
    auto planned = small();
    const std::string longName = "Wilhelmina-Alexandrina of the Long Saltmarsh Causeway House";
    planned.session.setting.helpers[0].name = longName;
    for (auto& task : planned.plan.tasks)
        for (auto& person : task.people)
            if (person == "Ada")
                person = longName;
    ASSERT_TRUE(live->start(job, planned)) << live->problem().toStdString();
    EXPECT_EQ(board->stepWho(), "W");
}

TEST_F(AtTable, ShortNamesAreSaidInFull) {
    ASSERT_TRUE(live->start(job, small())) << live->problem().toStdString();
    EXPECT_EQ(board->stepWho(), "Ada");
}

TEST_F(AtTable, EveryTickShownIsInTheLibrary) {
    ASSERT_TRUE(live->start(job, small()));
    live->tick(0, "A1");
    const auto id = live->id();
    const auto events = library->events(id);
    ASSERT_TRUE(events);
    ASSERT_EQ(events->size(), 2u);
    EXPECT_EQ(events->back().kind, EventKind::zoneOpened);
    EXPECT_EQ(events->back().zone, "A1");
    EXPECT_EQ(events->back().person, "Ada");

    open(); // as after a crash
    ASSERT_TRUE(live->resume(id)) << live->problem().toStdString();
    EXPECT_EQ(stage("A1"), "open");
    EXPECT_EQ(stage("B1"), "waiting");
}

TEST_F(AtTable, WhatCannotBeStoredIsNotShown) {
    open(400); // pages the library may have: a small disk that fills up
    ASSERT_TRUE(live->start(job, small()));
    Event note;
    note.text = std::string(20'000, 'x');
    int kept = 0;
    while (kept < 1'000 && live->report(EventKind::note, note))
        ++kept;
    ASSERT_LT(kept, 1'000) << "the disk never filled up";
    EXPECT_FALSE(live->problem().isEmpty());
    EXPECT_EQ(live->live()->state().notes.size(), std::size_t(kept));
    EXPECT_EQ(library->events(live->id())->size(), std::size_t(kept) + 1);
}

TEST_F(AtTable, ALongPressTakesTheLastTickOfThatZoneBack) {
    ASSERT_TRUE(live->start(job, small()));
    board->doStep();
    live->tick(0, "A1");
    live->tick(0, "B1");
    live->takeBack(0, "A1");
    EXPECT_EQ(stage("A1"), "waiting");
    EXPECT_EQ(stage("B1"), "open");
    live->takeBack(0, "A1");
    EXPECT_FALSE(live->problem().isEmpty()) << "there is nothing left to take back";
}

TEST_F(AtTable, UndoAndRedoGoBackAndForth) {
    ASSERT_TRUE(live->start(job, small()));
    live->tick(0, "A1");
    EXPECT_EQ(live->undoText(), "A1");
    live->undo();
    EXPECT_EQ(stage("A1"), "waiting");
    ASSERT_TRUE(live->canRedo());
    live->redo();
    EXPECT_EQ(stage("A1"), "open");
}

TEST_F(AtTable, StepsComeInOrderAndWaitForTheirZones) {
    ASSERT_TRUE(live->start(job, small()));
    EXPECT_EQ(board->step(), "lay");
    EXPECT_TRUE(board->stepReady());
    board->doStep();
    EXPECT_EQ(board->step(), "smooth");
    EXPECT_FALSE(board->stepReady());
    live->tick(0, "A1");
    live->tick(0, "B1");
    EXPECT_TRUE(board->stepReady());
    board->doStep();
    live->tick(0, "A1");
    live->tick(0, "B1");
    EXPECT_EQ(board->step(), "under");
    board->doStep();
    EXPECT_EQ(board->step(), "release");
    board->doStep();
    EXPECT_EQ(board->step(), "over");
    board->doStep();
    EXPECT_EQ(board->step(), "end");
    EXPECT_TRUE(board->finished());
    board->doStep();
    EXPECT_TRUE(live->ended());
}

TEST_F(AtTable, TurningTheTableTurnsTheTiles) {
    ASSERT_TRUE(live->start(job, small()));
    EXPECT_EQ(board->columns(), 2);
    EXPECT_EQ(board->edges().front(), "head");
    board->setTurn(1);
    EXPECT_EQ(board->columns(), 1);
    EXPECT_EQ(board->rowsOfTiles(), 2);
    EXPECT_EQ(board->edges()[1], "head");
}

TEST_F(AtTable, SomebodyWhoLeavesHasNothingToDo) {
    ASSERT_TRUE(live->start(job, small()));
    live->setPresent("Bo", false);
    EXPECT_EQ(live->people()->rows()[1][3], "not here");
    EXPECT_EQ(live->people()->rows()[1][5], false);
}

} // namespace
