#include "quick/whole_window.h"

#include <QAccessible>
#include <QKeyEvent>

/// The demo's whole session without a finger: by what assistive technology is told and may do, and
/// by the keyboard alone.
namespace bastewright::app {
namespace {

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

class WholeSession : public WholeWindow {
protected:
    using Press = std::function<void(const QString& objectName)>;
    /// What is pressed sooner on the same thing is the same press.
    static constexpr int kApart = LiveController::kOneTapMs + 20;

    void SetUp() override {
        WholeWindow::SetUp();
        room.window->requestActivate();
        room.workroom->goToTable();
        live(200);
    }

    TableBoard& board() { return *room.workroom->board(); }

    /// Step by step in the trade's order until the session has ended.
    void play(const Press& press) {
        std::vector<QString> queue;
        int pass = 0;
        for (int i = 0; i < 400 && !room.workroom->live()->ended(); ++i) {
            if (board().stepReady() && board().stepHeld()) { // pressed twice, slowly, for held
                press(QStringLiteral("holdStep"));
                live(700);
                press(QStringLiteral("holdStep"));
                live(kApart);
            } else if (board().stepReady()) {
                const bool asks = room.workroom->step()->asks();
                press(QStringLiteral("step"));
                if (asks) {
                    live(350); // until the sheet stands still
                    QStringList asked;
                    for (const auto& row : room.workroom->step()->checks()->rows())
                        asked << row[0].toString();
                    for (const QString& check : asked)
                        press(QStringLiteral("yes-") + check);
                    press(QStringLiteral("stepSheetDone"));
                }
                live(kApart);
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
        EXPECT_TRUE(room.workroom->live()->ended());
        EXPECT_DOUBLE_EQ(room.workroom->live()->progress(), 1);
    }

    void key(int code) {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event{type, code, Qt::NoModifier};
            QCoreApplication::sendEvent(room.window, &event);
        }
        takeTurn();
    }
};

TEST_F(WholeSession, IsPlayedByNamesAlone) {
    QAccessible::setActive(true);
    play([this](const QString& wanted) {
        auto* item = find(wanted);
        ASSERT_TRUE(item && item->isEnabled()) << wanted.toStdString();
        auto* own = QAccessible::queryAccessibleInterface(item);
        ASSERT_TRUE(own) << wanted.toStdString();
        const QString name = own->text(QAccessible::Name);
        ASSERT_FALSE(name.isEmpty()) << wanted.toStdString();
        auto* found = told(QAccessible::queryAccessibleInterface(room.window), name);
        ASSERT_TRUE(found) << name.toStdString();
        found->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        live(10);
    });
}

TEST_F(WholeSession, IsPlayedByTheKeyboardAlone) {
    play([this](const QString& wanted) {
        for (int tabs = 0; tabs < 120; ++tabs) {
            const auto* focus = room.window->activeFocusItem();
            if (focus && focus->objectName() == wanted)
                return key(Qt::Key_Return);
            key(Qt::Key_Tab);
        }
        FAIL() << "Tab never comes to " << wanted.toStdString();
    });
}

} // namespace
} // namespace bastewright::app
