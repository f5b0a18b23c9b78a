#include "job/job_json.h"
#include "plan/plan_json.h"
#include "unit/view/qt_application.h"
#include "unit/view/small_table.h"
#include "view/table/live_controller.h"
#include "view/table/table_board.h"

#include <QDateTime>
#include <QTemporaryDir>
#include <QTime>
#include <gtest/gtest.h>

using namespace bastewright;
using namespace bastewright::literals;

namespace {

using made::small;

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

TEST_F(AtTable, ASessionWhoseBeginningWasNotStoredBeginsWhenItIsTakenUp) {
    const Planned planned = small();
    const auto id =
        library->startSession(job, {writeSession(planned.session), writePlan(planned.plan)})
            .value();
    ASSERT_TRUE(live->resume(id)) << live->problem().toStdString();
    EXPECT_TRUE(live->live()->state().started);
    board->doStep();
    live->tick(0, "A1");
    EXPECT_EQ(stage("A1"), "open") << live->problem().toStdString();
}

TEST_F(AtTable, EveryTickShownIsInTheLibrary) {
    ASSERT_TRUE(live->start(job, small()));
    live->stepDone(0, "lay");
    live->tick(0, "A1");
    const auto id = live->id();
    const auto events = library->events(id);
    ASSERT_TRUE(events);
    ASSERT_EQ(events->size(), 3u);
    EXPECT_EQ(events->back().what, What{(happened::ZoneTick{Tick::opened, 0, "A1", "Ada"})});

    open(); // as after a crash
    ASSERT_TRUE(live->resume(id)) << live->problem().toStdString();
    EXPECT_EQ(stage("A1"), "open");
    EXPECT_EQ(stage("B1"), "waiting");
}

TEST_F(AtTable, WhatCannotBeStoredIsNotShown) {
    open(400); // pages the library may have: a small disk that fills up
    ASSERT_TRUE(live->start(job, small()));
    const happened::Note note{std::string(20'000, 'x')};
    int kept = 0;
    while (kept < 1'000 && live->report(note))
        ++kept;
    ASSERT_LT(kept, 1'000) << "the disk never filled up";
    EXPECT_FALSE(live->problem().isEmpty());
    EXPECT_EQ(live->live()->state().notes.size(), std::size_t(kept));
    EXPECT_EQ(library->events(live->id())->size(), std::size_t(kept) + 1);
}

TEST_F(AtTable, NotesAreKeptWithTheirTimeAndCanBeTakenBack) {
    ASSERT_TRUE(live->start(job, small()));
    const auto rows = [this] { return live->notes()->rows(); };
    const auto hour = [this] {
        return QDateTime::fromMSecsSinceEpoch(now).toString(QStringLiteral("HH:mm"));
    };
    EXPECT_FALSE(live->note(" \n "));
    EXPECT_EQ(live->problem(), "The note is empty.");
    EXPECT_TRUE(rows().isEmpty());

    ASSERT_TRUE(live->note("  A1: a seam\nhas opened %1 "));
    const QString first = hour();
    EXPECT_TRUE(live->problem().isEmpty());
    now += 3'600'000;
    ASSERT_TRUE(live->note("Bo's scissors"));
    const QString second = hour();
    ASSERT_EQ(rows().size(), 2);
    EXPECT_EQ(rows()[0].mid(1), (QVariantList{second, "Bo's scissors"}));
    EXPECT_EQ(rows()[1].mid(1), (QVariantList{first, "A1: a seam has opened %1"}));
    EXPECT_EQ(live->undoText(), "the note");

    live->end(true);
    ASSERT_TRUE(live->note("counted twice")) << "what is noticed while tidying up";
    live->takeBackNote(rows()[2][0].toString()); // the first, whatever came since
    const auto id = live->id();
    open(); // as after a crash
    ASSERT_TRUE(live->resume(id)) << live->problem().toStdString();
    ASSERT_EQ(rows().size(), 2);
    EXPECT_EQ(rows()[0][2], "counted twice");
    EXPECT_EQ(rows()[1][2], "Bo's scissors");
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
    live->stepDone(0, "lay");
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
    EXPECT_TRUE(board->pinsToCount());
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

struct TwoWindows : AtTable {
    std::optional<Library> otherLibrary;
    std::optional<LiveController> other;

    TwoWindows() {
        EXPECT_TRUE(live->start(job, small()));
        live->stepDone(0, "lay");
        otherLibrary.emplace(std::move(
            Library::open(folder.filePath("library.sqlite").toStdString()).value().library));
        other.emplace(&*otherLibrary, [this] { return now += 1000; });
        EXPECT_TRUE(other->resume(live->id()));
    }
    static ZoneState at(const LiveController& window, const char* zone) {
        return window.live()->state().zones.at({0, zone}).state;
    }
};

TEST_F(TwoWindows, ATickInOneIsSoonInTheOther) {
    QElapsedTimer timer;
    timer.start();
    live->tick(0, "A1");
    EXPECT_TRUE(comes([&] { return at(*other, "A1") == ZoneState::open; }));
    EXPECT_LT(timer.elapsed(), 1000);
    other->takeBack(0, "A1");
    EXPECT_TRUE(comes([&] { return at(*live, "A1") == ZoneState::waiting; }));
}

TEST_F(TwoWindows, BothShowTheLibrarysOrder) {
    live->tick(0, "A1");
    other->tick(0, "B1"); // before it has looked again by itself
    live->tick(0, "B1");  // sees that B1 is open, and that it is not closed yet
    EXPECT_EQ(live->problem(), "Not yet: first the smoothing (Ada).");
    other->undo(); // takes back the last one, whoever made it
    EXPECT_EQ(at(*live, "A1"), ZoneState::open);
    comes([&] { return live->live()->events().size() == other->live()->events().size(); });
    EXPECT_EQ(live->live()->events(), other->live()->events());
    EXPECT_EQ(live->live()->events(), library->events(live->id()).value());
    EXPECT_TRUE(live->live()->state() == other->live()->state());
}

TEST_F(TwoWindows, TheEndIsTheEndForBoth) {
    live->end(true);
    EXPECT_TRUE(comes([&] { return other->ended(); }));
}

TEST_F(AtTable, AnHourSetForwardOrBackMovesTheFinishWithTheClockOnTheWall) {
    const auto hourShown = [&] {
        const QString text = live->finishText(); // "Finishes about 13:20 (13:10–13:40)"
        return QTime::fromString(text.section(QLatin1Char(' '), 2, 2), QStringLiteral("HH:mm"));
    };
    now = 1'800'000'000'000;
    ASSERT_TRUE(live->start(job, small()));
    board->doStep();
    live->tick(0, "A1");
    for (const std::int64_t set : {3'600'000, -3'600'000, -3'600'000, 3'600'000}) {
        const auto before = hourShown();
        now += set;
        live->tick(0, live->live()->state().zones.at({0, "B1"}).state == ZoneState::waiting ? "B1"
                                                                                            : "A1");
        const auto moved = before.msecsTo(hourShown()) - set;
        EXPECT_LE(std::abs(moved), 8 * 60'000) << set << " set; the rest is a few minutes of work";
    }
}

} // namespace
