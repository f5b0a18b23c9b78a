#include "quick/whole_window.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QMouseEvent>

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
        QMouseEvent event{type, at, window.mapToGlobal(at), Qt::LeftButton,
                          down ? Qt::LeftButton : Qt::NoButton, Qt::NoModifier};
        QCoreApplication::sendEvent(&window, &event);
        live(30);
    }
}

void live(int milliseconds) {
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < milliseconds)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
}

void WholeWindow::SetUp() {
    needWindows();
    warnings.emplace();
    RoomOptions options;
    options.library = folder.filePath(QStringLiteral("library.sqlite"));
    options.sheetsFolder = folder.path();
    options.density = 4;
    QString problem;
    room = openRoom(options, problem);
    ASSERT_TRUE(room.window) << problem.toStdString();
    room.window->resize(1280, 900);
    room.workroom->openJob(room.workroom->shelf()->addExample(0));
    ASSERT_TRUE(until([this] { return planned(); }));
}

void WholeWindow::TearDown() {
    EXPECT_TRUE(warnings->caught().isEmpty())
        << warnings->caught().join(QLatin1Char('\n')).toStdString();
}

bool WholeWindow::until(const std::function<bool()>& so) {
    QElapsedTimer timer;
    timer.start();
    while (!so()) {
        if (timer.elapsed() > 60'000)
            return false;
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    }
    return true;
}

} // namespace bastewright::app
