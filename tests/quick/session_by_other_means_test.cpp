#include "app/tour.h"
#include "app/warnings.h"
#include "app/window.h"
#include "session/checks.h"

#include <QAccessible>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QQuickItem>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <functional>
#include <set>

/// The demo's whole session without a finger: by what assistive technology is told and may do, and
/// by the keyboard alone.
namespace bastewright::app {
namespace {

QGuiApplication& application() {
    static int argc = 1;
    static char name[] = "session";
    static char* argv[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    prepareWindow();
    // Left to the system at exit: fonts and platform must outlive whatever else is static.
    static auto* const app = new QGuiApplication{argc, argv};
    return *app;
}

QQuickItem* find(QQuickItem* root, const QString& name) {
    if (root->objectName() == name && root->isVisible() && root->isEnabled())
        return root;
    for (auto* child : root->childItems())
        if (auto* found = find(child, name))
            return found;
    return nullptr;
}

/// The first thing of this name that may be pressed, among all that is told of the window.
QAccessibleInterface* told(QAccessibleInterface* root, const QString& name) {
    if (!root || root->state().invisible)
        return nullptr;
    if (root->text(QAccessible::Name) == name && root->actionInterface() &&
        root->actionInterface()->actionNames().contains(QAccessibleActionInterface::pressAction()))
        return root;
    for (int i = 0; i < root->childCount(); ++i)
        if (auto* found = told(root->child(i), name))
            return found;
    return nullptr;
}

class WholeSession : public testing::Test {
protected:
    using Press = std::function<void(const QString& objectName)>;

    void SetUp() override {
        application();
        warnings_.emplace();
        RoomOptions options;
        options.library = folder_.filePath(QStringLiteral("library.sqlite"));
        options.sheetsFolder = folder_.path();
        options.density = 4;
        QString problem;
        room_ = openRoom(options, problem);
        ASSERT_TRUE(room_.window) << problem.toStdString();
        room_.window->resize(1280, 900);
        room_.window->requestActivate();
        auto& work = *room_.workroom;
        work.openJob(work.shelf()->addExample(0));
        ASSERT_TRUE(until([&] { return !work.plan()->busy() && work.plan()->good(); }));
        work.goToTable();
        live(200);
    }
    void TearDown() override {
        EXPECT_TRUE(warnings_->caught().isEmpty())
            << warnings_->caught().join(QLatin1Char('\n')).toStdString();
    }

    static bool until(const std::function<bool()>& so) {
        QElapsedTimer timer;
        timer.start();
        while (!so()) {
            if (timer.elapsed() > 60'000)
                return false;
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        }
        return true;
    }
    static void live(int milliseconds) {
        QElapsedTimer timer;
        timer.start();
        while (timer.elapsed() < milliseconds)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    }
    QQuickItem* there(const QString& name) const { return find(room_.window->contentItem(), name); }
    TableBoard& board() { return *room_.workroom->board(); }

    /// Step by step in the trade's order until the session has ended.
    void play(const Press& press) {
        std::vector<QString> queue;
        int pass = 0;
        for (int i = 0; i < 400 && !room_.workroom->live()->ended(); ++i) {
            if (board().stepReady()) {
                const bool asks = room_.workroom->step()->asks();
                press(QStringLiteral("step"));
                if (asks) {
                    live(350); // until the sheet stands still
                    for (const Check check : checksOf(TaskKind::checkUnderside))
                        press(QStringLiteral("yes-") +
                              QString::fromStdString(std::string{name(check)}));
                    press(QStringLiteral("stepSheetDone"));
                    live(350);
                }
            } else {
                if (board().pass() != pass) {
                    pass = board().pass();
                    for (int turn = 0; turn < 2; ++turn) // all open, then all closed
                        for (const auto& row : board().zones()->rows())
                            queue.push_back(QStringLiteral("zone-") + row[0].toString());
                }
                ASSERT_FALSE(queue.empty());
                press(queue.front());
                queue.erase(queue.begin());
            }
            if (HasFatalFailure())
                return;
        }
        EXPECT_TRUE(room_.workroom->live()->ended());
        EXPECT_DOUBLE_EQ(room_.workroom->live()->progress(), 1);
    }

    void key(int code) {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event{type, code, Qt::NoModifier};
            QCoreApplication::sendEvent(room_.window, &event);
        }
        QCoreApplication::processEvents();
    }

    QTemporaryDir folder_;
    std::optional<WarningCatcher> warnings_;
    OpenRoom room_;
};

TEST_F(WholeSession, IsPlayedByNamesAlone) {
    QAccessible::setActive(true);
    play([this](const QString& wanted) {
        auto* item = there(wanted);
        ASSERT_TRUE(item) << wanted.toStdString();
        auto* own = QAccessible::queryAccessibleInterface(item);
        ASSERT_TRUE(own) << wanted.toStdString();
        const QString name = own->text(QAccessible::Name);
        ASSERT_FALSE(name.isEmpty()) << wanted.toStdString();
        auto* found = told(QAccessible::queryAccessibleInterface(room_.window), name);
        ASSERT_TRUE(found) << name.toStdString();
        found->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        live(10);
    });
}

TEST_F(WholeSession, IsPlayedByTheKeyboardAlone) {
    play([this](const QString& wanted) {
        for (int tabs = 0; tabs < 120; ++tabs) {
            const auto* focus = room_.window->activeFocusItem();
            if (focus && focus->objectName() == wanted)
                return key(Qt::Key_Return);
            key(Qt::Key_Tab);
        }
        FAIL() << "Tab never comes to " << wanted.toStdString();
    });
}

} // namespace
} // namespace bastewright::app
