#include "quick/whole_window.h"

#include <QElapsedTimer>
#include <QTest>
#include <gtest/gtest.h>

#include <set>

/// Two taps of one finger, 40 to 400 ms apart, at every button of the table screen, in every state
/// of a session: never two effects. An effect is something stored, a sheet or another view that has
/// opened or closed, or leaving the table.
namespace bastewright::app {
namespace {

constexpr const char* kSheets[] = {"moreSheet",  "changesSheet", "hintSheet",  "stepSheet",
                                   "whoSheet",   "endSheet",     "countSheet", "otherwiseSheet",
                                   "changeCard", "goOnSheet",    "phoneSheet", "comfort"};

struct DoubleTaps : WholeWindow {
    LiveController& table() { return *room.workroom->live(); }
    /// Null once the table is left: its sheets go with it.
    QObject* sheet(const char* name) {
        return room.window->findChild<QObject*>(QLatin1String(name));
    }
    std::size_t stored() { return table().live()->events().size(); }

    /// Every sheet that is seen, also while it opens or closes.
    std::set<std::string> opened() {
        std::set<std::string> out;
        for (const char* name : kSheets)
            if (auto* it = sheet(name); it && it->property("visible").toBool())
                out.insert(name);
        return out;
    }
    void closeAll() {
        for (const char* name : kSheets)
            if (auto* it = sheet(name))
                QMetaObject::invokeMethod(it, "close");
        table().forgetProblem();
        live(120);
    }

    /// What can be tapped on the table screen itself now, by name or by what it says.
    void collect(QQuickItem* item, std::vector<QQuickItem*>& out) {
        if (!item->isVisible())
            return;
        if (item->inherits("QQuickAbstractButton") && item->isEnabled() && item->width() > 0)
            out.push_back(item);
        for (auto* child : item->childItems())
            collect(child, out);
    }
    std::vector<QQuickItem*> buttons() {
        std::vector<QQuickItem*> out;
        collect(room.window->contentItem(), out);
        std::erase_if(out, [this](QQuickItem* item) {
            const QPointF at = item->mapToScene({item->width() / 2, item->height() / 2});
            return !QRectF(0, 0, room.window->width(), room.window->height()).contains(at);
        });
        return out;
    }

    void press(QPointF at) {
        for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
            const bool down = type == QEvent::MouseButtonPress;
            QMouseEvent event{type,
                              at,
                              room.window->mapToGlobal(at),
                              Qt::LeftButton,
                              down ? Qt::LeftButton : Qt::NoButton,
                              Qt::NoModifier};
            QCoreApplication::sendEvent(room.window, &event);
        }
    }

    /// Both taps at every button there is, each time in the same state again.
    void tryAll(const char* state) {
        const std::size_t all = buttons().size();
        ASSERT_GT(all, 4u) << state;
        for (std::size_t k = 0; k < all; ++k)
            for (const int between : {40, 80, 160, 250, 400}) {
                auto now = buttons();
                if (k >= now.size())
                    break;
                QQuickItem* button = now[k];
                const std::string name = button->objectName().toStdString() + " '" +
                                         button->property("text").toString().toStdString() + "'";
                const QPointF at = button->mapToScene({button->width() / 2, button->height() / 2});
                const auto events = stored();
                const auto before = seen();
                QElapsedTimer since;
                since.start();
                press(at);
                const auto first = seen();
                // From finger to finger: what the first tap takes is in it.
                QTest::qWait(std::max(0, between - int(since.elapsed())));
                press(at);
                QTest::qWait(450); // sheets have opened
                const bool left = room.workroom->screen() != Workroom::Screen::AtTable;
                const auto effects = (stored() - events) + changes(before, first) +
                                     changes(first, seen()) + (left ? 1 : 0);
                EXPECT_LE(effects, 1u) << state << ": " << name << ", " << between << " ms";
                EXPECT_LE(opened().size(), 1u) << state << ": " << name;
                ++tried;
                if (left)
                    room.workroom->goToTable();
                closeAll();
                clearOverlay();
                while (stored() > events && table().canUndo() &&
                       table().live()->state().undoable.size() > undoableAtFirst)
                    table().undo();
                QTest::qWait(60);
            }
    }

    QString overlay() {
        if (find(QStringLiteral("tableLanes")))
            return QStringLiteral("lanes");
        if (find(QStringLiteral("tableNotes")))
            return QStringLiteral("notes");
        return find(QStringLiteral("tableRecord")) ? QStringLiteral("record") : QString{};
    }
    /// What lies over the table screen: sheets, and the view in its place.
    struct Seen {
        std::set<std::string> sheets;
        QString over;
    };
    Seen seen() { return {opened(), overlay()}; }
    static std::size_t changes(const Seen& a, const Seen& b) {
        return (a.sheets != b.sheets ? 1u : 0u) + (a.over != b.over ? 1u : 0u);
    }
    void clearOverlay() {
        for (const char* name : {"tableLanes", "tableNotes", "tableRecord"})
            if (auto* item = find(QLatin1String(name)))
                item->parentItem()->setProperty("over", QString{});
    }

    std::size_t undoableAtFirst = 0;
    int tried = 0;
};

TEST_F(DoubleTaps, NeverHaveTwoEffects) {
    room.surroundings->setStill(true);
    room.workroom->goToTable();
    for (const char* name : kSheets)
        ASSERT_TRUE(sheet(name)) << name;
    auto* board = room.workroom->board();
    const auto at = [&](const char* state) {
        undoableAtFirst = table().live()->state().undoable.size();
        tryAll(state);
    };
    at("begun");
    const auto step = [&] {
        for (const auto& check : {"cautions", "palm-glides", "underside", "spare"})
            if (room.workroom->step()->asks())
                room.workroom->step()->answer(QLatin1String(check), true);
        board->doStep();
        QTest::qWait(510);
    };
    while (board->stepReady() && !board->stepHeld()) // up to the pins
        step();
    at("pinning");
    table().doneUpTo(0, int(Call::close), 0);
    QTest::qWait(510);
    while (board->stepReady() && !board->stepHeld())
        step();
    ASSERT_TRUE(board->stepHeld()) << "the pass is to be released";
    at("to be released");
    EXPECT_GT(tried, 100);
}

} // namespace
} // namespace bastewright::app
