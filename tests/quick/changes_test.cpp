#include "quick/whole_window.h"

#include <gtest/gtest.h>

namespace bastewright::app {
namespace {

struct Window : WholeWindow {
    void answered() {
        ASSERT_TRUE(until([this] { return room.workroom->desk()->isOpen(); }));
        ASSERT_TRUE(until([this] { return !room.workroom->desk()->busy(); }));
    }
};

TEST_F(Window, AZoneIsTappedInTheLanesAndHandedToSomebodyElse) {
    pane("lanes");
    auto& lanes = *room.workroom->lanes();
    auto* picture = find(QStringLiteral("lanes"));
    ASSERT_TRUE(picture);
    // Somewhere in a lane there is a zone's work: tapped from the left on.
    for (qreal x = 120; lanes.zone().isEmpty() && x < picture->width(); x += 14)
        tapAt(picture->mapToScene({x, picture->height() * 0.3}));
    ASSERT_FALSE(lanes.zone().isEmpty());
    const QString zone = lanes.zone();
    QString to;
    for (const auto& row : lanes.takers()->rows())
        if (row[3].toString().isEmpty() && !row[4].toBool())
            to = row[2].toString();
    ASSERT_FALSE(to.isEmpty());
    tap(QStringLiteral("handOver"));
    tap(QStringLiteral("taker-") + to);
    answered();
    ASSERT_EQ(room.workroom->desk()->refused(), QString{});
    tap(QStringLiteral("acceptChange"));
    ASSERT_EQ(room.workroom->editor()->job().handed.size(), 1u);
    ASSERT_TRUE(until([this] { return planned(); }));
    for (const auto& task : room.workroom->plan()->planned()->plan.tasks)
        EXPECT_TRUE(task.zone != zone.toStdString() ||
                    task.people == std::vector<std::string>{to.toStdString()})
            << task.id;
    room.workroom->editor()->undo();
    EXPECT_TRUE(room.workroom->editor()->job().handed.empty());
}

TEST_F(Window, AZoneTappedInThePictureIsHandedOverAndCanBeGivenBack) {
    room.workroom->pass()->stepZone(1);
    const QString zone = room.workroom->pass()->zone();
    tap(QStringLiteral("handZone"));
    QString to;
    for (const auto& row : room.workroom->lanes()->takers()->rows())
        if (row[3].toString().isEmpty() && !row[4].toBool())
            to = row[2].toString();
    tap(QStringLiteral("taker-") + to);
    answered();
    tap(QStringLiteral("acceptChange"));
    ASSERT_TRUE(until([this] { return planned(); }));
    ASSERT_EQ(room.workroom->editor()->job().handed.size(), 1u);
    pane("lanes");
    ASSERT_TRUE(room.workroom->lanes()->chooseZone(0, zone));
    EXPECT_TRUE(room.workroom->lanes()->handed());
    tap(QStringLiteral("giveBack"));
    answered();
    tap(QStringLiteral("acceptChange"));
    EXPECT_TRUE(room.workroom->editor()->job().handed.empty());
}

TEST_F(Window, TheSessionIsRehearsedByTapsAndKeys) {
    pane("rehearsal");
    auto& rehearsal = *room.workroom->rehearsal();
    tap(QStringLiteral("play"));
    live(500);
    EXPECT_TRUE(rehearsal.playing());
    EXPECT_GT(rehearsal.moment(), 0);
    tap(QStringLiteral("play"));
    EXPECT_FALSE(rehearsal.playing());
    const qreal before = rehearsal.moment();
    tap(QStringLiteral("stepForward"));
    EXPECT_GT(rehearsal.moment(), before);
    tap(QStringLiteral("stepBack"));
    tap(QStringLiteral("closeRehearsal"));
    EXPECT_FALSE(find(QStringLiteral("rehearsalPicture")));
}

TEST_F(Window, SomebodyLeavesAndComesAtTheTable) {
    room.workroom->goToTable();
    const auto& running = *room.workroom->live();
    tap(QStringLiteral("more"));
    tap(QStringLiteral("whatChanged"));
    tap(QStringLiteral("someGoes"));
    tap(QStringLiteral("person-Bo"));
    answered();
    ASSERT_EQ(room.workroom->desk()->refused(), QString{});
    EXPECT_TRUE(running.live()->state().present.contains("Bo")) << "shown before it is taken";
    tap(QStringLiteral("acceptChange"));
    EXPECT_FALSE(running.live()->state().present.contains("Bo"));
    for (const auto& task : running.live()->plan().tasks)
        EXPECT_EQ(std::count(task.people.begin(), task.people.end(), "Bo"), 0) << task.id;
    tap(QStringLiteral("more"));
    tap(QStringLiteral("whatChanged"));
    tap(QStringLiteral("someComes"));
    tap(QStringLiteral("person-Bo"));
    answered();
    tap(QStringLiteral("acceptChange"));
    EXPECT_TRUE(running.live()->state().present.contains("Bo"));
    tap(QStringLiteral("more"));
    tap(QStringLiteral("showLanes"));
    EXPECT_TRUE(find(QStringLiteral("tableLanes")));
}

} // namespace
} // namespace bastewright::app
