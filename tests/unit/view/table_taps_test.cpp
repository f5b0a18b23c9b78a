#include "job/job_json.h"
#include "plan/plan_json.h"
#include "unit/session/table_cases.h"
#include "unit/view/qt_application.h"
#include "view/base/words.h"
#include "view/table/table_board.h"

#include <QTemporaryDir>
#include <gtest/gtest.h>

/// What the tablet does with taps: the table of situations, and taps that come twice.
using namespace bastewright;

namespace {

struct Tablet : testing::Test {
    QTemporaryDir folder;
    std::int64_t now = made::kStartMs + 86'400'000;
    std::optional<Library> library;
    std::optional<LiveController> live;
    std::optional<TableBoard> board;
    JobId job = 0;
    int taken = 0;

    Tablet() {
        needApplication();
        library.emplace(
            std::move(Library::open(folder.filePath("l.sqlite").toStdString()).value().library));
        job = library->addJob("Harbour Lights", "{}").value();
        live.emplace(&*library, [this] { return now; });
        board.emplace(&*live);
    }
    void take(const std::string& name) {
        live->close();
        now += 60'000;
        const auto at = made::renamed(made::situation(name), std::to_string(++taken) + "-");
        const auto id =
            library->startSession(job, {writeSession(at.session), writePlan(at.plan)}).value();
        for (const auto& event : at.events)
            ASSERT_TRUE(library->append(id, event));
        ASSERT_TRUE(live->resume(id)) << live->problem().toStdString();
    }
    std::size_t stored() const { return library->events(live->id())->size(); }
    /// As fingers do: by what the screen calls.
    void tap(const Tap& tap) {
        switch (tap.what) {
        case Tap::What::zone:
            return live->tick(tap.job, words::fromCore(tap.zone));
        case Tap::What::step:
            return live->stepDone(tap.job, words::fromCore(tap.task));
        case Tap::What::release:
            return live->release(tap.job, tap.pass);
        case Tap::What::end:
            return live->end(tap.otherwise);
        }
    }
};

TEST_F(Tablet, EveryTapOfTheTableDoesWhatItSays) {
    int asked = 0;
    for (const auto& c : made::cases()) {
        Tap at = made::tapOf(c.tap);
        // Phones have their own test; a session that is taken up begins.
        if (at.meant || c.why == TapAnswer::Why::notStarted)
            continue;
        ++asked;
        take(c.when);
        const auto before = stored();
        if (at.otherwise && at.what != Tap::What::end) {
            at.otherwise = false;
            tap(at);
            ASSERT_EQ(stored(), before) << c.when << ": " << c.tap;
            live->doneOtherwise();
        } else {
            tap(at);
        }
        const bool counts = c.why == TapAnswer::Why::counts;
        EXPECT_EQ(stored(), before + counts) << c.when << ": " << c.tap;
        EXPECT_EQ(live->problem().toStdString(), c.said) << c.when << ": " << c.tap;
        EXPECT_EQ(live->early(), c.why == TapAnswer::Why::early) << c.when << ": " << c.tap;
    }
    EXPECT_GE(asked, 120);
}

TEST_F(Tablet, TheBoardOffersWhatTheSessionLets) {
    for (const auto& name : made::situations()) {
        take(name);
        const auto turns = live->live()->turns();
        for (const auto& row : board->zones()->rows())
            EXPECT_EQ(row[9].toBool(),
                      turns.mayTick({.zone = row[0].toString().toStdString()}).counts())
                << name << ": " << row[0].toString().toStdString();
        const auto before = stored();
        const bool ready = board->stepReady();
        board->doStep();
        EXPECT_EQ(stored(), before + ready) << name << ": " << board->step().toStdString();
    }
}

TEST_F(Tablet, ASecondTapWithinHalfASecondIsTheSameTap) {
    for (const int between : {0, 40, 80, 120, 200, 300, 400, 499}) {
        take("begun");
        auto before = stored();
        board->doStep(); // set up
        now += between;
        board->doStep();
        EXPECT_EQ(stored(), before + 1) << between << " ms";
        now += 501;
        board->doStep(); // the backing
        EXPECT_EQ(stored(), before + 2) << between << " ms";

        take("held");
        before = stored();
        live->tick(0, QStringLiteral("p1.A1"));
        now += between;
        live->tick(0, QStringLiteral("p1.A1"));
        live->tick(0, QStringLiteral("p1.B1")); // somebody else's finger
        EXPECT_EQ(stored(), before + 2) << between << " ms";
        EXPECT_TRUE(live->problem().isEmpty()) << "the end of a tap is no mistake";

        take("all checked");
        before = stored();
        board->doStep(); // the release
        now += between;
        board->doStep(); // would be rolling up
        EXPECT_EQ(stored(), before + 1) << between << " ms";
    }
}

TEST_F(Tablet, WhatIsRefusedCanBeSaidToHaveBeenDoneOtherwise) {
    take("backing laid");
    live->tick(0, QStringLiteral("p1.A1"));
    EXPECT_TRUE(live->early());
    EXPECT_EQ(board->call(), QStringLiteral("Clamp"));
    live->doneUpTo(0, int(Call::pin), 5);
    EXPECT_EQ(board->call(), QStringLiteral("Hands off"));
    EXPECT_EQ(live->live()->state().zones.at({0, "p1.B2"}).state, ZoneState::open);
    EXPECT_TRUE(live->live()->state().cautions.empty());
}

TEST_F(Tablet, TheCallsThatAreAheadAreListedInTheirOrder) {
    take("A1 open");
    QStringList names;
    for (const auto& row : board->callsAhead()->rows())
        names << row[1].toString();
    EXPECT_EQ(names, (QStringList{"Pin", "Hands off", "Close", "Check"}));
    EXPECT_EQ(board->nextCall(), QStringLiteral("Hands off"));
    EXPECT_EQ(board->caution(), QStringLiteral("2 zones left: B1 and B2"));
}

TEST_F(Tablet, WhoWaitsIsToldForWhom) {
    take("A1 open");
    const auto rows = live->people()->rows();
    EXPECT_EQ(rows[0][3], QStringLiteral("waits for Bo: B1 and B2"));
    EXPECT_EQ(rows[0][6], true);
    EXPECT_EQ(rows[1][3], QStringLiteral("B1 pins in"));
    EXPECT_EQ(rows[1][6], false);
    EXPECT_EQ(rows[2][3], QStringLiteral("not here"));
}

} // namespace
