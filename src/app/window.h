#pragma once

#include "app/focus_follower.h"
#include "page/phone_page.h"
#include "view/base/letters.h"
#include "view/base/surroundings.h"
#include "view/room/workroom.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include <memory>

namespace bastewright::app {

/// Before the QGuiApplication is made: the renderer and the style of the window.
void prepareWindow();

/// Makes what is compiled into this library findable; called by openRoom.
void loadResources();

/// A library, the workroom over it and the window that shows it.
struct OpenRoom {
    std::unique_ptr<Library> library;
    std::unique_ptr<Workroom> workroom;
    std::unique_ptr<Surroundings> surroundings;
    std::unique_ptr<Letters> letters;
    std::unique_ptr<PhonePage> phones;
    std::unique_ptr<QQmlApplicationEngine> engine;
    std::unique_ptr<FocusFollower> focus;
    QQuickWindow* window = nullptr; ///< owned by the engine; null where the screens did not load
};

struct RoomOptions {
    QString library;     ///< path of the library file
    QString comfortFile; ///< empty: reading comfort is not kept
    QString sheetsFolder;
    qreal density = 0; ///< pixels in a millimetre; 0: as the screen reports
    QSize size{};      ///< to open the window at; empty: its own
};

/// Opens the library and the window. Where the library cannot be used `problem` says why.
OpenRoom openRoom(const RoomOptions& options, QString& problem);

/// The program: the person's own library, where they were last, or the job file they named.
/// Needs a QGuiApplication; returns the exit code.
int runWindow(const QString& jobFile);

/// Loads every screen on a library of its own, goes through a whole small session, and quits; 1 on
/// any warning of QML or Qt.
int selfTest();

/// `--picture-screens FOLDER JOB [--size 1280x800] [--density 5.9] [--dark] [--high-contrast]
/// [--text 200] [--language de]`: a picture of every screen with this job, for the docs and for
/// looking at.
int pictureScreens(const QStringList& arguments);

} // namespace bastewright::app
