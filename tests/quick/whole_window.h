#pragma once

#include "app/event_turn.h"
#include "app/warnings.h"
#include "app/window.h"

#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <functional>
#include <optional>

namespace bastewright::app {

/// Makes the application once, without a display; left to the system at exit.
void needWindows();

/// The first visible item of this name, or null.
QQuickItem* findVisible(QQuickItem* root, const QString& name);

/// A press and a release of the mouse in the middle of an item, once it stands still; scrolls the
/// list it is in so far that it can be seen.
void tapItem(QQuickWindow& window, QQuickItem* item, const QString& name);

/// Lets the window live until it has painted itself three times after the last row of a list was
/// made: items that lie in each other are laid out one after the other.
void settle(QQuickWindow& window);

/// The window on a library of its own in the folder, for a device of 4 pixels a millimetre.
OpenRoom openIn(const QTemporaryDir& folder, QString& problem);

/// The demo, planned, in the whole window on a library of its own; any warning fails.
class WholeWindow : public testing::Test {
protected:
    void SetUp() override;
    void TearDown() override;

    bool planned() const { return !room.workroom->plan()->busy() && room.workroom->plan()->good(); }
    /// Waits a minute at most, ten where sanitized; false where it does not come.
    static bool until(const std::function<bool()>& so);
    QQuickItem* find(const QString& name) const {
        return findVisible(room.window->contentItem(), name);
    }

    /// The item once it is there and can be used; fails the test and is null where it does not
    /// come.
    QQuickItem* usable(const QString& name) const;
    /// A press and a release of the first button at a place of the window.
    void tapAt(QPointF at);
    /// The same in the middle of an item, once it is there and can be used.
    void tap(const QString& name);
    /// From the middle of an item by so many pixels.
    void drag(const QString& name, QPointF by);
    void key(Qt::Key key, const QString& text = {});
    /// Opens a pane of the planning screen.
    void pane(const char* name);

    QTemporaryDir folder;
    std::optional<WarningCatcher> warnings;
    OpenRoom room;
};

} // namespace bastewright::app
