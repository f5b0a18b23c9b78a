#include "app/window.h"

#include "app/asked_to_end.h"
#include "app/device_look.h"
#include "app/keep_awake.h"
#include "app/log.h"
#include "app/places.h"
#include "app/refusal.h"
#include "app/tour.h"
#include "app/warnings.h"
#include "app/within_screen.h"
#include "language/language.h"
#include "session/checked_plan.h"
#include "sheets/print/printing.h"
#include "store/data_folder.h"
#include "view/base/words.h"

#include <QCommandLineParser>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QIcon>
#include <QQuickStyle>
#include <QScreen>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <cstdio>

namespace bastewright::app {
namespace {

constexpr QSize kUsualSize{1280, 800};

/// Screens without a display report nonsense; 96 dots per inch is what desktops assume.
qreal reportedDensity() {
    constexpr qreal kUsual = 96 / 25.4;
    const auto* screen = QGuiApplication::primaryScreen();
    const qreal reported = screen ? screen->physicalDotsPerInch() / 25.4 : kUsual;
    return reported > 2.5 && reported < 25 ? reported : kUsual;
}

void printError(const QString& text) {
    std::fprintf(stderr, "%s\n", qUtf8Printable(text));
}

QString inHome(QStandardPaths::StandardLocation place, const QString& name) {
    return QDir{QStandardPaths::writableLocation(place)}.filePath(name);
}

} // namespace

void prepareWindow() {
    QGuiApplication::setApplicationName(QStringLiteral("bastewright"));
    QGuiApplication::setDesktopFileName(QStringLiteral("bastewright"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    // The screen is one painted picture and calm tiles: drawn in software it starts at once on any
    // machine and looks the same on all.
    if (qEnvironmentVariableIsEmpty("QT_QUICK_BACKEND"))
        QQuickWindow::setGraphicsApi(QSGRendererInterface::Software);
}

OpenRoom openRoom(const RoomOptions& options, QString& problem) {
    loadResources();
    QGuiApplication::setWindowIcon(QIcon{QStringLiteral(":/icon/bastewright-128.png")});
    OpenRoom room;
    auto opened = Library::open(words::toCore(options.library));
    if (!opened) {
        problem = words::fromCore(opened.error());
        return room;
    }
    room.library = std::make_unique<Library>(std::move(opened->library));
    Workroom::Setup setup;
    setup.plan = [memory = std::make_shared<PointsMemory>()](const Session& session, bool help,
                                                             std::stop_token stop) {
        return checkedPlan(session, {.help = help, .memory = memory.get()}, stop);
    };
    setup.clock = [] { return QDateTime::currentMSecsSinceEpoch(); };
    setup.sheetsFolder = options.sheetsFolder;
    setup.comfortFile = options.comfortFile;
    setup.density = options.density > 0 ? options.density : reportedDensity();
    room.workroom = std::make_unique<Workroom>(room.library.get(), std::move(setup));
    QStringList toKnow;
    for (const auto& finding : opened->findings)
        for (const auto& sentence : {finding.text, finding.cure})
            if (!sentence.empty())
                toKnow << words::fromCore(sentence);
    room.workroom->say(toKnow.join(QLatin1Char(' ')));
    room.surroundings = std::make_unique<Surroundings>(options.comfortFile);
    room.letters = std::make_unique<Letters>(options.comfortFile);
    room.phones = std::make_unique<PhonePage>(room.workroom->live());
    room.engine = std::make_unique<QQmlApplicationEngine>();
    QObject::connect(room.workroom->comfort(), &Comfort::languageChanged, room.engine.get(),
                     &QQmlEngine::retranslate);
    room.engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    QVariantMap given{
        {QStringLiteral("room"), QVariant::fromValue(room.workroom.get())},
        {QStringLiteral("surroundings"), QVariant::fromValue(room.surroundings.get())},
        {QStringLiteral("letters"), QVariant::fromValue(room.letters.get())},
        {QStringLiteral("phones"), QVariant::fromValue(room.phones.get())}};
    if (!options.size.isEmpty()) {
        given.insert(QStringLiteral("width"), options.size.width());
        given.insert(QStringLiteral("height"), options.size.height());
    }
    room.engine->setInitialProperties(given);
    room.engine->load(QUrl{QStringLiteral("qrc:/qt/qml/Bastewright/Main/Main.qml")});
    if (!room.engine->rootObjects().isEmpty())
        room.window = qobject_cast<QQuickWindow*>(room.engine->rootObjects().front());
    if (room.window) {
        room.letters->follow(room.window);
        room.focus = std::make_unique<FocusFollower>(room.window);
    } else {
        problem = QStringLiteral("The screens could not be loaded.");
    }
    return room;
}

namespace {

// The screen stays on while people work: at the table, and not during a break or after the end.
void keepAwakeInSession(const OpenRoom& room, KeepAwake& awake) {
    auto& workroom = *room.workroom;
    const auto see = [&workroom, &awake] {
        const auto& live = *workroom.live();
        awake.setWanted(workroom.screen() == Workroom::Screen::AtTable && live.isOpen() &&
                        !live.paused() && !live.ended());
    };
    QObject::connect(&workroom, &Workroom::screenChanged, &awake, see);
    QObject::connect(workroom.live(), &LiveController::changed, &awake, see);
    see();
}

} // namespace

int runWindow(const QString& jobFile) {
    keepLog(logFolder());
    const auto path = libraryPath(processEnvironment());
    if (!path) {
        printError(words::fromCore(path.error()));
        return 2;
    }
    RoomOptions options;
    options.library = words::fromCore(*path);
    options.comfortFile =
        inHome(QStandardPaths::GenericConfigLocation, QStringLiteral("bastewright/comfort.ini"));
    options.sheetsFolder = inHome(QStandardPaths::DocumentsLocation, QStringLiteral("Bastewright"));
    options.size = openingSize(kUsualSize);
    // Before the workroom has one: how a refusal is said and drawn.
    Comfort comfort{options.comfortFile, reportedDensity()};
    QString problem;
    auto room = openRoom(options, problem);
    while (!room.window) {
        printError(problem);
        if (!askToTryAgain(comfort, problem))
            return 2;
        room = openRoom(options, problem);
    }
    keepWithinScreen(*room.window);
    const AskedToEnd askedToEnd;
    KeepAwake awake;
    keepAwakeInSession(room, awake);
    const DeviceLook look;
    QObject::connect(&look, &DeviceLook::told, room.surroundings.get(),
                     &Surroundings::setDeviceDark);
    QObject::connect(&look, &DeviceLook::contrastTold, room.surroundings.get(),
                     &Surroundings::setDeviceContrast);
    room.workroom->returnToLast();
    if (!jobFile.isEmpty()) {
        const auto job = room.workroom->shelf()->openFile(
            QUrl::fromLocalFile(QFileInfo{jobFile}.absoluteFilePath()));
        if (job != 0)
            room.workroom->openJob(job);
        else { // who has double-clicked a file reads no terminal: the shelf says it
            printError(room.workroom->shelf()->problem());
            room.workroom->backToShelf();
        }
    }
    std::unique_ptr<Places> places;
    if (const auto file = qEnvironmentVariable("BASTEWRIGHT_TELL_PLACES"); !file.isEmpty())
        places = std::make_unique<Places>(room.window, file);
    return QGuiApplication::exec();
}

int selfTest() {
    const QTemporaryDir folder;
    keepLog(folder.path());
    const WarningCatcher warnings;
    QString problem;
    {
        RoomOptions options;
        options.library = folder.filePath(QStringLiteral("library.sqlite"));
        options.sheetsFolder = folder.path();
        auto room = openRoom(options, problem);
        if (room.window)
            problem = Tour{room}.walk({});
    }
    for (const auto& warning : warnings.caught())
        printError(QStringLiteral("warning: %1").arg(warning));
    if (const auto printing = printing::service(); problem.isEmpty() && !printing)
        problem = words::fromCore(printing.error());
    if (!problem.isEmpty())
        printError(problem);
    return problem.isEmpty() && warnings.caught().isEmpty() ? 0 : 1;
}

int pictureScreens(const QStringList& arguments) {
    QCommandLineParser parser;
    parser.addOption({QStringLiteral("picture-screens"), {}, QStringLiteral("folder")});
    parser.addOption(
        {QStringLiteral("size"), {}, QStringLiteral("size"), QStringLiteral("1280x800")});
    parser.addOption(
        {QStringLiteral("density"), {}, QStringLiteral("px/mm"), QStringLiteral("5.9")});
    parser.addOption({QStringLiteral("dark"), {}});
    parser.addOption({QStringLiteral("high-contrast"), {}});
    parser.addOption(
        {QStringLiteral("text"), {}, QStringLiteral("percent"), QStringLiteral("100")});
    parser.addOption(
        {QStringLiteral("language"), {}, QStringLiteral("code"), QStringLiteral("en")});
    parser.addPositionalArgument(QStringLiteral("job"), {});
    const auto size = [&] { return parser.value(QStringLiteral("size")).split(QLatin1Char('x')); };
    if (!parser.parse(QStringList{QStringLiteral("bastewright")} + arguments) ||
        parser.positionalArguments().size() != 1 || size().size() != 2) {
        printError(QStringLiteral(
            "--picture-screens FOLDER JOB [--size 1280x800] [--density 5.9] [--dark] "
            "[--high-contrast] [--text 200] [--language de]"));
        return 2;
    }
    const QString into = parser.value(QStringLiteral("picture-screens"));
    const QTemporaryDir folder;
    keepLog(folder.path());
    RoomOptions options;
    options.library = folder.filePath(QStringLiteral("library.sqlite"));
    options.sheetsFolder = folder.path();
    options.density = parser.value(QStringLiteral("density")).toDouble();
    language::speak(parser.value(QStringLiteral("language")));
    QString problem;
    auto room = openRoom(options, problem);
    if (room.window && !QDir{}.mkpath(into)) {
        problem = QStringLiteral("The folder %1 cannot be made.").arg(into);
    } else if (room.window) {
        const QStringList sides = size();
        room.window->resize(sides[0].toInt(), sides[1].toInt());
        auto& comfort = *room.workroom->comfort();
        comfort.setDark(parser.isSet(QStringLiteral("dark")));
        comfort.setHighContrast(parser.isSet(QStringLiteral("high-contrast")));
        comfort.setTextScale(parser.value(QStringLiteral("text")).toDouble() / 100);
        Tour tour{room};
        tour.useJob(parser.positionalArguments().constFirst());
        QString unwritten;
        problem = tour.walk([&](const QString& stop) {
            const QString file = QDir{into}.filePath(stop + QStringLiteral(".png"));
            if (!room.window->grabWindow().save(file) && unwritten.isEmpty())
                unwritten = QStringLiteral("%1 cannot be written.").arg(file);
        });
        if (problem.isEmpty())
            problem = unwritten;
    }
    if (problem.isEmpty())
        return 0;
    printError(problem);
    return 2;
}

} // namespace bastewright::app
