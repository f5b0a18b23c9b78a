#include "app/refusal.h"
#include "quick/whole_window.h"
#include "support/disk/failing.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QTimer>

#include <cerrno>

/// What a person sees when the disk or the library fails them.
namespace bastewright::app {
namespace {

using made::FailingDisk;

/// The visible text that holds these words; empty where there is none.
QString seen(const QQuickItem& root, const QString& words) {
    if (!root.isVisible() || root.opacity() == 0)
        return {};
    const QString text = root.property("text").toString();
    if (root.inherits("QQuickText") && text.contains(words))
        return text;
    for (const auto* child : root.childItems())
        if (const QString found = seen(*child, words); !found.isEmpty())
            return found;
    return {};
}

class FullDisk : public WholeWindow {
protected:
    QString seenHere(const char* words) const {
        return seen(*room.window->contentItem(), QString::fromLatin1(words));
    }
};

TEST_F(FullDisk, IsSaidWhereTheJobIsChangedAndTheNextChangeStoresAll) {
    auto& editor = *room.workroom->editor();
    const auto rename = [&](const char* name) {
        auto session = editor.session();
        session.jobs.front().name = name;
        EXPECT_EQ(editor.apply(QStringLiteral("Name"), session), QString{});
        live(100);
    };
    const auto stored = [this] { return room.library->jobs().value().front().name; };
    {
        const FailingDisk disk{folder.path().toStdString(), ENOSPC};
        rename("Ebb");
        EXPECT_EQ(seenHere("disk is full"),
                  "The quilt could not be saved: the disk is full. Free some space and try again.");
        EXPECT_EQ(editor.title(), "Ebb") << "what was typed stays";
        EXPECT_EQ(stored(), "Harbour Lights");
        // Nobody gets to another job, by which the change would be lost.
        room.workroom->backToShelf();
        room.workroom->openJob(room.library->jobs().value().front().id);
        EXPECT_EQ(editor.title(), "Ebb");
    }
    room.workroom->openJob(room.library->jobs().value().front().id);
    EXPECT_EQ(stored(), "Ebb") << "stored as soon as it could be";
    rename("Ebb and flow");
    EXPECT_EQ(seenHere("disk is full"), QString{});
    EXPECT_EQ(stored(), "Ebb and flow");
}

TEST_F(FullDisk, OpeningAJobStoresNothingAndLeavesWhatWasSaid) {
    const auto before = room.library->jobs().value().front();
    room.workroom->say(QStringLiteral("The library was damaged."));
    room.workroom->openJob(before.id);
    live(100);
    EXPECT_EQ(room.library->jobs().value().front().changedMs, before.changedMs);
    EXPECT_EQ(seenHere("was damaged"), "The library was damaged.");
}

TEST_F(FullDisk, IsSaidAtTheTableAndNoTickShowsThatIsNotStored) {
    tap(QStringLiteral("toTable"));
    tap(QStringLiteral("step"));
    tap(QStringLiteral("yes-cautions"));
    tap(QStringLiteral("stepSheetDone"));
    for (int steps = 0; steps < 20 && room.workroom->board()->stepReady(); ++steps)
        tap(QStringLiteral("step"));
    const QString zone = room.workroom->board()->zones()->rows().front()[0].toString();
    const auto& session = *room.workroom->live();
    const auto state = [&] {
        return session.live()->state().zones.at({0, zone.toStdString()}).state;
    };
    const auto before = room.library->events(session.id()).value().size();
    {
        const FailingDisk disk{folder.path().toStdString(), ENOSPC};
        tap(QStringLiteral("zone-") + zone);
        EXPECT_EQ(seenHere("disk is full"),
                  "The tick could not be stored: the disk is full. Free some space and try again.");
        EXPECT_EQ(state(), ZoneState::waiting);
        EXPECT_EQ(room.library->events(session.id()).value().size(), before);
    }
    tap(QStringLiteral("zone-") + zone);
    EXPECT_EQ(state(), ZoneState::open);
    EXPECT_EQ(room.library->events(session.id()).value().size(), before + 1);
    EXPECT_EQ(seenHere("disk is full"), QString{});
}

class TroubleAtTheStart : public testing::Test {
protected:
    void SetUp() override {
        needWindows();
        options.library = folder.filePath(QStringLiteral("library.sqlite"));
        options.sheetsFolder = folder.path();
        options.density = 4;
    }
    QTemporaryDir folder;
    RoomOptions options;
    QString problem;
};

TEST_F(TroubleAtTheStart, ADamagedLibraryIsToldAcrossTheFirstScreenWithWhatToDo) {
    QFile file{options.library};
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(5000, 'x'));
    file.close();
    const auto room = openRoom(options, problem);
    ASSERT_TRUE(room.window) << problem.toStdString();
    live(100);
    const QString told = seen(*room.window->contentItem(), QStringLiteral("damaged"));
    EXPECT_TRUE(told.contains(QStringLiteral("put aside as library.damaged-1.sqlite")))
        << told.toStdString();
    EXPECT_TRUE(
        told.endsWith(QStringLiteral("Compare the quilts and running sessions with what you "
                                     "remember before going on.")))
        << told.toStdString();
}

TEST_F(TroubleAtTheStart, ALibraryThatCannotBeOpenedIsToldInAWindowThatTriesAgain) {
    ASSERT_TRUE(QDir{}.mkpath(options.library)); // a folder in its place
    EXPECT_FALSE(openRoom(options, problem).window);
    EXPECT_TRUE(problem.contains(QStringLiteral("There is a folder where the library")));
    Comfort comfort{{}, options.density};
    const auto answer = [this](const char* press) {
        QTimer::singleShot(300, qApp, [this, press] {
            ASSERT_EQ(QGuiApplication::allWindows().size(), 1);
            auto* window = qobject_cast<QQuickWindow*>(QGuiApplication::allWindows().front());
            EXPECT_EQ(seen(*window->contentItem(), QStringLiteral("There is a folder")), problem);
            tapItem(*window, findVisible(window->contentItem(), QLatin1String(press)),
                    QLatin1String(press));
        });
    };
    answer("tryAgain");
    EXPECT_TRUE(askToTryAgain(comfort, problem));
    answer("closeProgram");
    EXPECT_FALSE(askToTryAgain(comfort, problem));
    // Once it is moved away, trying again opens it.
    ASSERT_TRUE(QDir{options.library}.removeRecursively());
    EXPECT_TRUE(openRoom(options, problem).window);
}

} // namespace
} // namespace bastewright::app
