#include "app/tour.h"
#include "quick/whole_window.h"

#include <QAccessible>
#include <QImage>
#include <QSet>

#include <algorithm>
#include <cmath>

/// Every control of every screen is reached by Tab, seen when it is, and told by name and role; and
/// Escape leads back from everywhere.
namespace bastewright::app {
namespace {

void visit(QQuickItem& item, const std::function<void(QQuickItem&)>& look) {
    if (!item.isVisible() || item.opacity() == 0)
        return;
    look(item);
    for (auto* child : item.childItems())
        visit(*child, look);
}

/// Keys of the pads are for fingers alone: the field they write into takes a keyboard's own.
bool isKeyOfPad(const QQuickItem& item) {
    return item.objectName().startsWith(QLatin1String("key-")) ||
           item.objectName().startsWith(QLatin1String("letter-"));
}

bool isControl(const QQuickItem& item) {
    return (item.inherits("QQuickAbstractButton") || item.inherits("QQuickTextInput") ||
            item.inherits("QQuickSlider")) &&
           item.isEnabled() && !isKeyOfPad(item);
}

/// The frame that is drawn for this item and no other.
QQuickItem* frameOf(QQuickItem& item) {
    QQuickItem* found = nullptr;
    const std::function<void(QQuickItem&)> look = [&](QQuickItem& at) {
        if (at.objectName() == QLatin1String("focusFrame") && at.isVisible())
            found = &at;
        for (auto* child : at.childItems())
            if (!child->activeFocusOnTab())
                look(*child);
    };
    look(item);
    if (!found && item.parentItem()) // a picture's frame lies over it
        for (auto* beside : item.parentItem()->childItems())
            if (beside->objectName() == QLatin1String("focusFrame") && beside->isVisible())
                found = beside;
    return found;
}

/// Relative luminance and contrast as WCAG 2.2 defines them.
qreal luminance(QRgb rgb) {
    const QColor c{rgb};
    const auto linear = [](qreal v) {
        return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

bool standsOut(QRgb a, QRgb b) {
    if (a == b)
        return false;
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05) >= 3;
}

class Keyboard : public WholeWindow {
protected:
    void SetUp() override {
        WholeWindow::SetUp();
        QAccessible::setActive(true);
        room.window->requestActivate();
        room.surroundings->setStill(true);
        live(50);
    }

    /// What can be come to now: the sheet that is open, else the window.
    QQuickItem& ground() {
        QQuickItem* top = nullptr;
        for (auto* item = room.window->activeFocusItem(); item; item = item->parentItem())
            if (item->inherits("QQuickPopupItem"))
                top = item;
        return top ? *top : *room.window->contentItem();
    }
    QQuickItem* tab() {
        key(Qt::Key_Tab, QStringLiteral("\t"));
        return room.window->activeFocusItem();
    }
    void key(Qt::Key code, const QString& text) {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease})
            send(type, code, text, false);
        for (int i = 0; i < 3; ++i)
            takeTurn();
    }
    /// Held until it has repeated itself once.
    void hold(Qt::Key code, const QString& text) {
        send(QEvent::KeyPress, code, text, false);
        send(QEvent::KeyPress, code, text, true);
        send(QEvent::KeyRelease, code, text, false);
        for (int i = 0; i < 3; ++i)
            takeTurn();
    }

    std::string told(const QQuickItem& item, const QString& stop) const {
        const auto lies = item.mapRectToScene(item.boundingRect());
        return QStringLiteral("at %1: %2 “%3” %4 at %5, %6, %7 × %8")
            .arg(stop, QString::fromLatin1(item.metaObject()->className()),
                 item.property("text").toString(), item.objectName())
            .arg(lies.x())
            .arg(lies.y())
            .arg(lies.width())
            .arg(lies.height())
            .toStdString();
    }

    void expectInSight(const QQuickItem& item, const QQuickItem& frame, const QString& stop) {
        const auto lies = frame.mapRectToScene(frame.boundingRect());
        EXPECT_TRUE(
            room.window->contentItem()->boundingRect().adjusted(-1, -1, 1, 1).intersects(lies))
            << told(item, stop);
        for (const auto* above = frame.parentItem(); above; above = above->parentItem()) {
            if (!above->clip())
                continue;
            // What is larger than its list is seen from its start.
            const auto sight = above->mapRectToScene(above->boundingRect());
            EXPECT_GE(lies.left(), sight.left() - 1.5) << told(item, stop);
            EXPECT_GE(lies.top(), sight.top() - 1.5) << told(item, stop);
            EXPECT_LE(lies.left() + std::min(lies.width(), sight.width()), sight.right() + 1.5)
                << told(item, stop);
            EXPECT_LE(lies.top() + std::min(lies.height(), sight.height()), sight.bottom() + 1.5)
                << told(item, stop);
        }
    }

    /// WCAG 2.2, 2.4.13: as large as a line of 2 px round it, 3 : 1 between the same pixels with
    /// the focus and without. A fifth is left to pixels that are blended where the line is round.
    void expectFrameStandsOut(const QQuickItem& item, QQuickItem& frame, const QString& stop) {
        const QImage with = room.window->grabWindow();
        frame.setOpacity(0);
        const QImage without = room.window->grabWindow();
        frame.setOpacity(1);
        const QRect lies = frame.mapRectToScene(frame.boundingRect()).toAlignedRect() & with.rect();
        int changed = 0;
        for (int y = lies.top(); y <= lies.bottom(); ++y)
            for (int x = lies.left(); x <= lies.right(); ++x)
                changed += standsOut(with.pixel(x, y), without.pixel(x, y));
        const qreal radius =
            std::min({frame.property("radius").toReal(), frame.width() / 2, frame.height() / 2});
        const qreal round = 2 * (frame.width() + frame.height()) - (8 - 2 * M_PI) * radius;
        EXPECT_GE(changed, 0.8 * 2 * round) << told(item, stop);
    }

    void expectTold(QQuickItem& item, const QString& stop) {
        auto* own = QAccessible::queryAccessibleInterface(&item);
        ASSERT_TRUE(own) << told(item, stop);
        EXPECT_FALSE(own->text(QAccessible::Name).trimmed().isEmpty()) << told(item, stop);
        EXPECT_NE(own->role(), QAccessible::NoRole) << told(item, stop);
        EXPECT_NE(own->role(), QAccessible::Client) << told(item, stop);
        if (item.inherits("QQuickAbstractButton")) {
            ASSERT_TRUE(own->actionInterface()) << told(item, stop);
            EXPECT_TRUE(own->actionInterface()->actionNames().contains(
                QAccessibleActionInterface::pressAction()))
                << told(item, stop);
        }
    }

    /// Comes to every control by Tab. What appears meanwhile (a printer that is found, a row of a
    /// long list) is come to by going round again.
    void goRound(const QString& stop) {
        constexpr int kRounds = 3;
        // A plan that comes while the keyboard goes round brings lists of its own.
        EXPECT_TRUE(until([this] { return !room.workroom->plan()->busy(); })) << stop.toStdString();
        for (int round = 1; round <= kRounds; ++round) {
            const auto reached = onceRound(stop);
            if (HasFatalFailure())
                return;
            const auto controls = controlsHere();
            const auto missed = controls - reached;
            if (missed.isEmpty() || round == kRounds)
                controls_ += int(controls.size());
            if (missed.isEmpty())
                return;
            if (round == kRounds)
                for (auto* item : missed)
                    ADD_FAILURE() << "never come to " << told(*item, stop);
        }
    }

    QSet<QQuickItem*> controlsHere() {
        QSet<QQuickItem*> out;
        visit(ground(), [&](QQuickItem& item) {
            if (isControl(item))
                out.insert(&item);
        });
        return out;
    }

    /// Once round by Tab; what was come to, each seen and told.
    QSet<QQuickItem*> onceRound(const QString& stop) {
        QSet<QQuickItem*> reached;
        QQuickItem* first = nullptr;
        for (int tabs = 0; tabs < 400; ++tabs) {
            auto* item = tab();
            EXPECT_TRUE(item) << stop.toStdString();
            // Round, or an open end: not all lists stand as they did.
            if (!item || item == first || reached.contains(item))
                break;
            if (!first)
                first = item;
            reached.insert(item);
            ++stops_;
            auto* frame = frameOf(*item);
            EXPECT_TRUE(frame) << "no frame " << told(*item, stop);
            expectTold(*item, stop);
            if (!frame)
                continue;
            expectInSight(*item, *frame, stop);
            const QString kind = QString::fromLatin1(item->metaObject()->className()) +
                                 item->property("main").toString() +
                                 item->property("chosen").toString() +
                                 item->property("checked").toString();
            if (!looked_.contains(kind)) {
                looked_.insert(kind);
                expectFrameStandsOut(*item, *frame, stop);
            }
        }
        return reached;
    }

    void send(QEvent::Type type, Qt::Key code, const QString& text, bool again) {
        QKeyEvent event{type, code, Qt::NoModifier, text, again};
        QCoreApplication::sendEvent(room.window, &event);
    }

    QSet<QString> looked_; ///< kinds of controls whose frame was looked at
    int stops_ = 0, controls_ = 0;
};

TEST_F(Keyboard, ComesToEveryControlOfEveryScreenAndIsSeenThere) {
    room.workroom->backToShelf();
    live(50);
    Tour tour{room, 30};
    EXPECT_EQ(tour.walk([&](const QString& stop) { goRound(stop); }), QString{});
    EXPECT_GT(stops_, 500);
    EXPECT_GT(controls_, 500);
    EXPECT_GT(looked_.size(), 10);
}

TEST_F(Keyboard, EscapeLeadsBackFromEverywhere) {
    auto* panel = find(QStringLiteral("panel"));
    ASSERT_TRUE(panel);
    const auto escape = [this] {
        key(Qt::Key_Escape, QStringLiteral("\u001b"));
        live(30);
    };
    for (const char* name :
         {"pass", "findings", "figures", "ways", "bring", "who", "quilt", "basting", "layers",
          "room", "people", "boxes", "lanes", "rehearsal"}) {
        pane(name);
        ASSERT_EQ(panel->property("pane").toString(), QLatin1String(name));
        tab();
        escape();
        EXPECT_EQ(panel->property("pane").toString(), QString{}) << name;
    }
    pane("quilt");
    auto* tile = find(QStringLiteral("field-width0"));
    ASSERT_TRUE(tile);
    tile->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return, QStringLiteral("\r"));
    ASSERT_TRUE(find(QStringLiteral("pad")));
    EXPECT_EQ(room.window->activeFocusItem(), find(QStringLiteral("pad")));
    escape();
    EXPECT_FALSE(find(QStringLiteral("pad")));
    EXPECT_EQ(panel->property("pane").toString(), QStringLiteral("quilt"));
    EXPECT_EQ(room.window->activeFocusItem(), tile) << "back where the keyboard was";
    escape();

    const auto closes = [&](const char* name) {
        auto* sheet = room.window->findChild<QObject*>(QLatin1String(name));
        ASSERT_TRUE(sheet) << name;
        QMetaObject::invokeMethod(sheet, "open");
        live(30);
        ASSERT_TRUE(sheet->property("opened").toBool()) << name;
        tab();
        escape();
        EXPECT_FALSE(sheet->property("opened").toBool()) << name;
    };
    for (const char* name : {"comfort", "printSheet", "whySheet"})
        closes(name);

    room.workroom->goToTable();
    ASSERT_TRUE(until([this] { return find(QStringLiteral("more")) != nullptr; }));
    for (const char* name :
         {"moreSheet", "countSheet", "changesSheet", "stepSheet", "phoneSheet"}) {
        closes(name);
        EXPECT_EQ(room.workroom->screen(), Workroom::Screen::AtTable) << name;
    }
    auto* lanes = room.window->findChild<QObject*>(QStringLiteral("tableLanes"));
    ASSERT_TRUE(lanes);
    auto* screen = lanes->parent();
    for (const char* over : {"lanes", "notes"}) {
        screen->setProperty("over", QLatin1String(over));
        live(30);
        escape();
        EXPECT_EQ(screen->property("over").toString(), QString{}) << over;
        EXPECT_EQ(room.workroom->screen(), Workroom::Screen::AtTable) << over;
    }
    escape();
    EXPECT_EQ(room.workroom->screen(), Workroom::Screen::Planning);
}

TEST_F(Keyboard, WritesAFractionThatIsTaken) {
    pane("quilt");
    auto* tile = find(QStringLiteral("field-width0"));
    ASSERT_TRUE(tile);
    tile->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return, QStringLiteral("\r"));
    auto* pad = find(QStringLiteral("pad"));
    ASSERT_TRUE(pad);
    for (const QChar c : QStringLiteral("88 1/2"))
        key(Qt::Key(c.unicode()), c);
    EXPECT_EQ(pad->property("text").toString(), QStringLiteral("88 1/2"));
    key(Qt::Key_Return, QStringLiteral("\r"));
    EXPECT_FALSE(find(QStringLiteral("pad"))) << "it was not taken";
    EXPECT_EQ(room.workroom->editor()->job().top.width.front(), Length::nearestInches(88.5));
}

TEST_F(Keyboard, TakesAHeldKeyForOnePress) {
    const auto heldAt = [this](const char* name) {
        auto* item = find(QLatin1String(name));
        ASSERT_TRUE(item) << name;
        item->forceActiveFocus(Qt::TabFocusReason);
        hold(Qt::Key_Return, QStringLiteral("\r"));
    };
    const auto setting = [this]() -> const Setting& {
        return room.workroom->editor()->session().setting;
    };
    pane("people");
    const bool lifts = setting().helpers[1].lifts;
    heldAt("lifts-Bo");
    EXPECT_NE(setting().helpers[1].lifts, lifts);
    ASSERT_TRUE(until([this] { return planned(); }));
    pane("ways");
    heldAt("wayCard0");
    EXPECT_TRUE(find(QStringLiteral("wayCard0"))->property("open").toBool());
    pane("room");
    const auto tables = setting().room.tables.front().count;
    tap(QStringLiteral("table0"));
    heldAt("handleAdd0");
    EXPECT_EQ(setting().room.tables.front().count, tables + 1);
}

TEST_F(Keyboard, IsNeverLostWhereSomethingOpens) {
    for (const char* name :
         {"tile-findings", "tile-quilt", "tile-room", "tile-ways", "tile-lanes"}) {
        auto* tile = find(QLatin1String(name));
        ASSERT_TRUE(tile) << name;
        tile->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_Return, QStringLiteral("\r"));
        live(30);
        auto* at = room.window->activeFocusItem();
        ASSERT_TRUE(at) << name;
        EXPECT_TRUE(at->activeFocusOnTab()) << name << " leaves the keyboard nowhere";
        EXPECT_TRUE(frameOf(*at)) << name << " does not show where the keyboard is";
        key(Qt::Key_Escape, QStringLiteral("\u001b"));
        live(30);
    }
}

} // namespace
} // namespace bastewright::app
