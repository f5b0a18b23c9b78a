#include "quick/whole_window.h"

#include "support/patience.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QQmlIncubationController>
#include <QTest>

namespace bastewright::app {

void needWindows() {
    static int argc = 1;
    static char name[] = "window";
    static char* argv[] = {name, nullptr};
    if (qApp)
        return;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    prepareWindow();
    // Left to the system at exit: fonts and platform must outlive whatever else is static.
    static const auto* const application = new QGuiApplication{argc, argv};
    Q_UNUSED(application)
}

QQuickItem* findVisible(QQuickItem* root, const QString& name) {
    if (root->objectName() == name && root->isVisible())
        return root;
    for (auto* child : root->childItems())
        if (auto* found = findVisible(child, name))
            return found;
    return nullptr;
}

void tapItem(QQuickWindow& window, QQuickItem* item, const QString& name) {
    ASSERT_TRUE(item && item->isEnabled()) << name.toStdString();
    for (QQuickItem* list = item->parentItem(); list; list = list->parentItem()) {
        if (!list->inherits("QQuickFlickable"))
            continue;
        const qreal y = item->mapToItem(list, {}).y(), below = y + item->height() - list->height();
        const qreal at = list->property("contentY").toReal();
        if (y < 0 || below > 0)
            list->setProperty("contentY", at + (y < 0 ? y : below));
    }
    live(350);
    const QPointF at = item->mapToScene({item->width() / 2, item->height() / 2});
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        const bool down = type == QEvent::MouseButtonPress;
        QMouseEvent event{type,
                          at,
                          window.mapToGlobal(at),
                          Qt::LeftButton,
                          down ? Qt::LeftButton : Qt::NoButton,
                          Qt::NoModifier};
        QCoreApplication::sendEvent(&window, &event);
        live(30);
    }
}

void settle(QQuickWindow& window) {
    constexpr int kFrames = 3, kMostMs = 30'000; // where none is painted
    int frames = 0;
    const auto counting =
        QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [&frames] { ++frames; });
    QElapsedTimer timer;
    timer.start();
    live(15);
    while (frames < kFrames && timer.elapsed() < kMostMs) {
        window.update();
        takeTurn(5);
        if (window.incubationController()->incubatingObjectCount() > 0)
            frames = 0; // rows of lists come one by one
    }
    QObject::disconnect(counting);
    EXPECT_GE(frames, kFrames) << "the window does not paint itself";
}

OpenRoom openIn(const QTemporaryDir& folder, QString& problem) {
    RoomOptions options;
    options.library = folder.filePath(QStringLiteral("library.sqlite"));
    options.sheetsFolder = folder.path();
    options.density = 4;
    return openRoom(options, problem);
}

void WholeWindow::SetUp() {
    needWindows();
    warnings.emplace();
    QString problem;
    room = openIn(folder, problem);
    ASSERT_TRUE(room.window) << problem.toStdString();
    room.window->resize(1280, 900);
    room.workroom->openJob(room.workroom->shelf()->addExample(0));
    ASSERT_TRUE(until([this] { return planned(); }));
}

void WholeWindow::TearDown() {
    EXPECT_TRUE(warnings->caught().isEmpty())
        << warnings->caught().join(QLatin1Char('\n')).toStdString();
}

namespace {

constexpr int kStillMs = 350; // until sheets and lists stand still

QPointF middleOf(const QQuickItem& item) {
    return item.mapToScene({item.width() / 2, item.height() / 2});
}

} // namespace

void WholeWindow::tapAt(QPointF at) {
    live(kStillMs);
    QTest::mousePress(room.window, Qt::LeftButton, {}, at.toPoint());
    live(30);
    QTest::mouseRelease(room.window, Qt::LeftButton, {}, at.toPoint());
    live(30);
}

QQuickItem* WholeWindow::usable(const QString& name) const {
    QQuickItem* item = nullptr;
    const bool came = until([&] {
        item = find(name);
        return item && item->isEnabled();
    });
    EXPECT_TRUE(came) << "there is no " << name.toStdString();
    return came ? item : nullptr;
}

void WholeWindow::tap(const QString& name) {
    const auto* item = usable(name);
    ASSERT_TRUE(item);
    live(kStillMs);
    tapAt(middleOf(*item));
}

void WholeWindow::drag(const QString& name, QPointF by) {
    live(kStillMs);
    const auto* item = find(name);
    ASSERT_TRUE(item) << "there is no " << name.toStdString();
    const QPointF from = middleOf(*item);
    constexpr int kSteps = 8;
    QTest::mousePress(room.window, Qt::LeftButton, {}, from.toPoint());
    for (int k = 1; k <= kSteps; ++k) {
        QTest::mouseMove(room.window, (from + by * k / kSteps).toPoint());
        live(20);
    }
    QTest::mouseRelease(room.window, Qt::LeftButton, {}, (from + by).toPoint());
    live(30);
}

void WholeWindow::key(Qt::Key key, const QString& text) {
    for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event{type, key, Qt::NoModifier, text};
        QCoreApplication::sendEvent(room.window, &event);
        live(20);
    }
}

void WholeWindow::pane(const char* name) {
    auto* panel = find(QStringLiteral("panel"));
    ASSERT_TRUE(panel);
    panel->setProperty("pane", QString::fromLatin1(name));
    live(100);
}

bool WholeWindow::until(const std::function<bool()>& so) {
    QElapsedTimer timer;
    timer.start();
    while (!so()) {
        if (timer.elapsed() > slowness() * 60'000)
            return false;
        takeTurn(20);
    }
    return true;
}

} // namespace bastewright::app
