// The live session measured in the program's own window, drawn in software without a display: from
// the tap on a zone to the frame that shows it, what of that is storing, and whether memory stands
// still over an afternoon of thousands of events. The quilt has a photo. Prints figures; fails on
// nothing.
#include "app/event_turn.h"
#include "app/window.h"
#include "support/quilt_photo.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QQuickItem>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <unistd.h>

using namespace bastewright;
using namespace bastewright::app;

namespace {

const QQuickItem* tileOf(const QQuickItem* item, const QString& name) {
    if (item->isVisible() && item->objectName() == name)
        return item;
    for (const auto* child : item->childItems())
        if (const auto* found = tileOf(child, name))
            return found;
    return nullptr;
}

double residentMiB() {
    std::ifstream status{"/proc/self/statm"};
    long all = 0, resident = 0;
    status >> all >> resident;
    return double(resident) * double(::sysconf(_SC_PAGESIZE)) / (1024 * 1024);
}

void print(const char* what, std::vector<double> ms) {
    std::ranges::sort(ms);
    std::printf("%-38s median %6.2f ms, 9 in 10 under %6.2f, slowest %6.2f (%zu)\n", what,
                ms[ms.size() / 2], ms[ms.size() * 9 / 10], ms.back(), ms.size());
}

// Taps a zone on, then takes that back, again and again: the board stays as it is.
void tapToVisible(OpenRoom& room, int times) {
    auto& controller = *room.workroom->live();
    const QString zone = room.workroom->board()->zones()->rows().front()[0].toString();
    // Looked for anew each time: tiles come and go as the pass goes on.
    const auto now = [&] {
        return tileOf(room.window->contentItem(), QStringLiteral("zone-") + zone);
    };
    const auto* tile = now();
    if (!tile) {
        std::printf("no zone to tap\n");
        return;
    }
    const auto at = tile->mapToScene({tile->width() / 2, tile->height() / 2}).toPoint();
    std::vector<double> whole, storing;
    bool swapped = false;
    const auto watch = QObject::connect(room.window, &QQuickWindow::frameSwapped, room.window,
                                        [&] { swapped = true; });
    for (int i = 0; i < times; ++i) {
        QTest::mousePress(room.window, Qt::LeftButton, {}, at);
        live(30); // the pressed look is drawn
        tile = now();
        const auto before = tile ? tile->property("stage").toString() : QString{};
        QElapsedTimer timer;
        timer.start();
        QTest::mouseRelease(room.window, Qt::LeftButton, {}, at);
        storing.push_back(double(timer.nsecsElapsed()) / 1e6);
        swapped = false;
        while (!swapped && timer.elapsed() < 2000)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
        tile = now();
        if (tile && tile->property("stage").toString() != before)
            whole.push_back(double(timer.nsecsElapsed()) / 1e6);
        controller.undo();
        live(LiveController::kOneTapMs + 100); // sooner it would be the same tap
    }
    QObject::disconnect(watch); // what it writes to ends here
    if (!whole.empty()) {
        print("release of the tap to frame shown", whole);
        print("  of which stored and folded", storing);
    }
}

// What the screen can be held up by while the rest is planned again: turns of its own thread.
void replanning(OpenRoom& room) {
    auto& desk = *room.workroom->desk();
    const auto person = room.workroom->live()->people()->rows().back()[2].toString();
    std::vector<double> turns, whole;
    for (int i = 0; i < 5; ++i) {
        QElapsedTimer turn, all;
        all.start();
        turn.start();
        desk.goes(person);
        turns.push_back(double(turn.nsecsElapsed()) / 1e6);
        while (desk.busy()) {
            turn.start();
            QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
            turns.push_back(double(turn.nsecsElapsed()) / 1e6);
            room.window->update(); // a frame as often as there can be one
        }
        whole.push_back(double(all.nsecsElapsed()) / 1e6);
        desk.cancel();
        live(50);
    }
    print("planned anew, drawing all the while", whole);
    print("a turn of the screen's thread, planning", turns);
}

// Six hours: a tick and its taking back, presence, notes, and the forecast that moves by itself.
void afternoon(OpenRoom& room, int events) {
    auto& controller = *room.workroom->live();
    const QString zone = room.workroom->board()->zones()->rows().front()[0].toString();
    const auto person = controller.people()->rows().front()[2].toString();
    const auto round = [&](int count) {
        for (int i = 0; i < count / 4; ++i) {
            controller.tick(0, zone);
            controller.undo();
            controller.setPresent(person, false);
            controller.setPresent(person, true);
            if (i % 25 == 0)
                live(20);
        }
        live(100);
    };
    round(200); // what is made once is made
    const double before = residentMiB();
    QElapsedTimer timer;
    timer.start();
    round(events);
    const double after = residentMiB();
    std::printf("memory: %.1f MiB, after %d events %.1f MiB (%.2f kB each); %.1f ms an event\n",
                before, events, after, (after - before) * 1024 / events,
                double(timer.elapsed()) / events);
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    prepareWindow();
    QGuiApplication application{argc, argv};
    const QTemporaryDir folder;
    RoomOptions options;
    options.library = folder.filePath(QStringLiteral("library.sqlite"));
    options.sheetsFolder = folder.path();
    options.density = 5.9;
    QString problem;
    auto room = openRoom(options, problem);
    if (!room.window)
        return 1;
    room.window->resize(1280, 800);
    auto& workroom = *room.workroom;
    workroom.openJob(workroom.shelf()->addExample(0));
    auto session = workroom.editor()->session();
    session.jobs.front().top.photo = quiltPhoto();
    workroom.editor()->apply(QStringLiteral("a photo"), std::move(session));
    do
        live(300);
    while (workroom.plan()->busy() || !workroom.plan()->isPlanned());
    workroom.goToTable();
    live(600);
    // Until pins may be put in.
    const auto mayPin = [&] {
        if (workroom.board()->zones()->rows().isEmpty())
            return false;
        const QString zone = workroom.board()->zones()->rows().front()[0].toString();
        const auto* tile = tileOf(room.window->contentItem(), QStringLiteral("zone-") + zone);
        return tile && tile->property("ready").toBool();
    };
    for (int i = 0; i < 20 && !mayPin(); ++i) {
        workroom.board()->doStep();
        live(200);
    }
    live(600);
    tapToVisible(room, 60);
    replanning(room);
    afternoon(room, argc > 1 ? std::atoi(argv[1]) : 3000);
    tapToVisible(room, 30);
    return 0;
}
