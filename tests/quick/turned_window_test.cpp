#include "quick/text_of_item.h"
#include "quick/whole_window.h"

#include <QMap>
#include <QRegularExpression>

#include <cmath>
#include <functional>

namespace bastewright::app {
namespace {

// Where everything stands at one stop, by its path among the items.
using Places = QMap<QString, QRectF>;

void note(const QQuickItem& item, const QString& path, Places& places) {
    if (!item.isVisible() || item.opacity() == 0)
        return;
    // How far the lanes are scrolled and zoomed is the person's, whatever the window.
    if (item.objectName() == QLatin1String("lanesFlick"))
        return;
    const auto* list = item.parentItem();
    if (!list || !list->inherits("QQuickFlickable")) { // its own sheet is as large as it likes
        static const QRegularExpression figures{QStringLiteral("[0-9]")};
        QString what = describe(item).section(QLatin1String(" ("), 0, 0);
        what.replace(figures, QStringLiteral("0")); // the clock goes on between two walks
        places[path + QLatin1Char(' ') + what] =
            item.mapRectToScene({0, 0, item.width(), item.height()});
    }
    // Which rows a list has made depends on what was seen before.
    if (item.inherits("QQuickItemView"))
        return;
    const auto children = item.childItems();
    for (int i = 0; i < children.size(); ++i)
        note(*children[i], path + QLatin1Char('/') + QString::number(i), places);
}

struct Walked {
    QMap<QString, Places> at; ///< by stop
};

class TurnedWindow : public WholeWindow {
protected:
    /// Every stop as it lies at `size`, in a window that is opened at `first` and turned at the
    /// stop.
    Walked walk(QSize first, QSize size) {
        Walked out;
        const auto stop = [&](const char* name) {
            settle(*room.window);
            room.window->resize(size);
            settle(*room.window);
            note(*room.window->contentItem(), {}, out.at[QLatin1String(name)]);
            room.window->resize(first);
        };
        auto& work = *room.workroom;
        auto* panel = find(QStringLiteral("panel"));
        const auto pane = [&](const char* name) {
            panel->setProperty("pane", QLatin1String(name));
        };
        // What would help is listed below the ways, once it is found.
        EXPECT_TRUE(until([&] { return work.plan()->help()->count() > 0; }));
        room.surroundings->setStill(true);
        room.window->resize(first);
        live(60);
        stop("plan");
        for (const char* name :
             {"findings", "bring", "room", "people", "layers", "quilt", "lanes", "rehearsal"}) {
            pane(name);
            stop(name);
        }
        pane("ways");
        panel->setProperty("sideBySide", true);
        stop("side by side");
        pane("basting");
        work.rows()->step(1);
        stop("rows");
        work.rows()->close();
        pane("");
        sheet("comfort", [&] { stop("comfort"); });
        work.openSheets();
        EXPECT_TRUE(until([&] { return work.sheets()->preview()->isDrawn(); }));
        sheet("printSheet", [&] { stop("print"); });
        work.goToTable();
        live(60);
        stop("table");
        sheet("stepSheet", [&] { stop("step"); });
        work.comfort()->setFaceToFace(true);
        stop("face to face");
        work.comfort()->setFaceToFace(false);
        work.backToShelf();
        live(60);
        stop("shelf");
        // The example once more as it was, without the session that was begun.
        work.shelf()->remove(work.shelf()->addExample(0));
        work.shelf()->forgetRemoved();
        work.openJob(work.shelf()->addExample(0));
        EXPECT_TRUE(until([this] { return planned(); }));
        return out;
    }

private:
    void sheet(const char* name, const std::function<void()>& look) {
        auto* popup = room.window->findChild<QObject*>(QLatin1String(name));
        ASSERT_TRUE(popup) << name;
        QMetaObject::invokeMethod(popup, "open");
        look();
        QMetaObject::invokeMethod(popup, "close");
        live(30);
    }
};

void expectSame(const Walked& turned, const Walked& opened, const std::string& how) {
    ASSERT_GT(opened.at.size(), 14);
    ASSERT_EQ(turned.at.keys(), opened.at.keys());
    for (const auto& stop : opened.at.keys()) {
        const auto &is = turned.at[stop], &wanted = opened.at[stop];
        int told = 0;
        for (auto it = wanted.begin(); it != wanted.end() && told < 4; ++it) {
            const QRectF a = is.value(it.key()), b = it.value();
            const bool same = std::abs(a.x() - b.x()) < 2 && std::abs(a.y() - b.y()) < 2 &&
                              std::abs(a.width() - b.width()) < 2 &&
                              std::abs(a.height() - b.height()) < 2;
            if (same)
                continue;
            ++told;
            ADD_FAILURE() << how << ", " << stop.toStdString() << ": " << it.key().toStdString()
                          << " lies at " << a.x() << ' ' << a.y() << ' ' << a.width() << " × "
                          << a.height() << " instead of " << b.x() << ' ' << b.y() << ' '
                          << b.width() << " × " << b.height();
        }
    }
}

TEST_F(TurnedWindow, LiesAsOneThatWasOpenedAtThatSize) {
    const QSize wide{1280, 800}, upright{800, 1280}, low{1024, 600};
    const auto opened = walk(upright, upright);
    expectSame(walk(wide, upright), opened, "turned upright");
    if (qEnvironmentVariableIsSet("BASTEWRIGHT_ALL_SCREENS")) {
        const auto small = walk(low, low);
        expectSame(walk(wide, low), small, "made smaller");
        expectSame(walk(upright, low), small, "turned and made smaller");
    }
}

} // namespace
} // namespace bastewright::app
