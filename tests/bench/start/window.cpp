// The program's own window in a process of its own, measured from inside; run by bench_start.
//
//   prepare FILE      a library with three quilts that have photos
//   first-frame FILE  shows its shelf; the moment its first frame was drawn, of the clock that all
//                     processes share
//   maps          the same of an empty one, then what the process has mapped
//   planning      memory with the demo planned; then the longest turns of the screen's thread while
//                 120 x 120 in for nine people is planned from the start and after changes
#include "app/window.h"

#include "app/event_turn.h"
#include "job/job_json.h"
#include "support/quilt_photo.h"

#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <string>
#include <time.h>

using namespace bastewright;
using namespace bastewright::app;
using namespace bastewright::literals;

namespace {

double sharedMilliseconds() {
    timespec t{};
    clock_gettime(CLOCK_MONOTONIC, &t);
    return double(t.tv_sec) * 1e3 + double(t.tv_nsec) / 1e6;
}

/// A window on a library of its own.
struct Opened {
    /// Of its own where `library` is empty.
    Opened(int& argc, char** argv, const QString& library)
        : application{argc, argv} {
        RoomOptions options;
        options.library =
            library.isEmpty() ? folder.filePath(QStringLiteral("library.sqlite")) : library;
        options.sheetsFolder = folder.path();
        options.density = 5.9;
        QString problem;
        room = openRoom(options, problem);
        if (!room.window)
            qFatal("%s", qUtf8Printable(problem));
    }
    QGuiApplication application;
    QTemporaryDir folder;
    OpenRoom room;
};

/// Kibibytes of the process by kind: VmRSS, RssAnon, RssFile, VmHWM.
double status(const std::string& wanted) {
    std::ifstream file{"/proc/self/status"};
    for (std::string key; file >> key;) {
        double kib = 0;
        if (key == wanted + ":" && file >> kib)
            return kib;
        file.ignore(4096, '\n');
    }
    return 0;
}

/// Lets the screen draw as often as it can until `done`; the longest turn of its thread.
template <typename Done>
double longestTurn(OpenRoom& room, const Done& done) {
    double longest = 0;
    QElapsedTimer turn;
    do {
        room.window->update();
        turn.start();
        takeTurn(1);
        longest = std::max(longest, double(turn.nsecsElapsed()) / 1e6);
    } while (!done());
    return longest;
}

bool planned(OpenRoom& room) {
    return !room.workroom->plan()->busy() && room.workroom->plan()->isPlanned();
}

/// Nine people on two tables, 120 × 120 in of 10 in blocks.
Session large(Session session) {
    Job& job = session.jobs.front();
    job.top = {};
    job.top.width = {120_in};
    job.top.length = {120_in};
    BlockGrid grid;
    grid.columns = grid.rows = 12;
    grid.block = 10_in;
    job.top.grid = grid;
    for (const char* name : {"Ada", "Bo", "Cai", "Dot", "Eve", "Flo", "Gus", "Hal", "Ina"}) {
        auto& all = session.setting.helpers;
        if (std::ranges::none_of(all, [&](const Helper& h) { return h.name == name; }) &&
            all.size() < 9)
            all.emplace_back().name = name;
    }
    return session;
}

/// Until the first frame of the shelf was drawn.
double firstFrame(OpenRoom& room) {
    double drawn = 0;
    QObject::connect(room.window, &QQuickWindow::frameSwapped, [&] {
        if (drawn == 0)
            drawn = sharedMilliseconds();
    });
    while (drawn == 0)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
    return drawn;
}

/// A library of three quilts, each with a photo of its own.
void prepare(const std::string& path) {
    QFile demo{QStringLiteral(":/demo/harbour-lights.json")};
    if (!demo.open(QIODevice::ReadOnly))
        qFatal("no demo");
    Session session = *readSession(demo.readAll().toStdString()).session;
    Library library = std::move(Library::open(path).value().library);
    for (int i = 0; i < 3; ++i) {
        session.jobs.front().name += ' ' + std::to_string(i);
        session.jobs.front().top.photo = quiltPhoto();
        if (!library.addJob(session.jobs.front().name, writeSession(session)))
            qFatal("the library takes nothing");
    }
}

void planning(OpenRoom& room) {
    Workroom& work = *room.workroom;
    room.window->resize(1280, 800);
    work.openJob(work.shelf()->addExample(0));
    Session withPhoto = work.editor()->session();
    withPhoto.jobs.front().top.photo = quiltPhoto();
    work.editor()->apply(QStringLiteral("a photo"), std::move(withPhoto));
    bool started = false;
    longestTurn(room, [&] {
        started = started || work.plan()->busy();
        return started && planned(room);
    });
    QElapsedTimer rest;
    rest.start();
    while (rest.elapsed() < 1500)
        takeTurn(50);
    std::printf("%.1f %.1f %.1f\n", status("VmRSS") / 1024, status("RssAnon") / 1024,
                status("RssFile") / 1024);

    auto& editor = *work.editor();
    const auto change = [&](auto&& make) {
        auto next = editor.session();
        make(next);
        if (const QString refused = editor.apply(QStringLiteral("a change"), next);
            !refused.isEmpty())
            qFatal("%s", qUtf8Printable(refused));
        bool begun = false;
        return longestTurn(room, [&] {
            begun = begun || work.plan()->busy();
            return begun && planned(room);
        });
    };
    const double scratch = change([](Session& s) { s = large(s); });
    const double people = change([](Session& s) { s.setting.helpers.back().lifts = false; });
    const double table = change([](Session& s) { s.setting.room.tables.front().count += 1; });
    std::printf("%.1f %.1f %.1f\n", scratch, people, table);
    std::printf("%.1f\n", status("VmRSS") / 1024);
}

} // namespace

int main(int argc, char** argv) {
    prepareWindow();
    const std::string wanted = argc > 1 ? argv[1] : "", file = argc > 2 ? argv[2] : "";
    if (wanted == "prepare") {
        const QGuiApplication application{argc, argv};
        prepare(file);
        return 0;
    }
    Opened opened{argc, argv, QString::fromStdString(file)};
    if (wanted == "planning") {
        planning(opened.room);
        return 0;
    }
    const double drawn = firstFrame(opened.room);
    if (wanted == "maps")
        std::cout << std::ifstream{"/proc/self/maps"}.rdbuf();
    else
        std::printf("%.1f\n", drawn);
    return 0;
}
