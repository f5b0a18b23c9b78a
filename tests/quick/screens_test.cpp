#include "app/tour.h"
#include "quick/whole_window.h"

#include <QGuiApplication>
#include <QQuickItem>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <optional>
#include <ostream>

namespace bastewright::app {
namespace {

struct Device {
    const char* name;
    int width, height;
    qreal density; ///< pixels in a millimetre
    friend std::ostream& operator<<(std::ostream& out, const Device& d) { return out << d.name; }
};

void visit(const QQuickItem& item, const std::function<void(const QQuickItem&)>& look) {
    if (!item.isVisible() || item.opacity() == 0)
        return;
    look(item);
    for (const auto* child : item.childItems())
        visit(*child, look);
}

bool scrolls(const QQuickItem& item) {
    for (const auto* above = item.parentItem(); above; above = above->parentItem())
        if (above->inherits("QQuickFlickable"))
            return true;
    return false;
}

std::string told(const QQuickItem& item, const QString& stop) {
    const QString text = item.property("text").toString();
    return QStringLiteral("at %1: %2 “%3” %4 × %5")
        .arg(stop, QString::fromLatin1(item.metaObject()->className()),
             text.isEmpty() ? item.objectName() : text)
        .arg(item.width())
        .arg(item.height())
        .toStdString();
}

/// Relative luminance and contrast as WCAG 2.2 defines them.
qreal luminance(const QColor& c) {
    const auto linear = [](qreal v) {
        return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

qreal contrast(const QColor& a, const QColor& b) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

/// What a text stands on: the nearest opaque ground among what it lies in, else the window's.
QColor groundOf(const QQuickItem& text, const QQuickWindow& window) {
    const auto opaque = [](const QQuickItem* item) -> std::optional<QColor> {
        if (!item || !item->inherits("QQuickRectangle") || !item->isVisible())
            return {};
        const auto color = item->property("color").value<QColor>();
        return color.alphaF() >= 1 ? std::optional{color} : std::nullopt;
    };
    for (const auto* item = &text; item; item = item->parentItem())
        for (const auto* ground : {item, qobject_cast<const QQuickItem*>(
                                             item->property("background").value<QObject*>())})
            if (const auto color = opaque(ground))
                return *color;
    return window.color();
}

class Screens : public testing::TestWithParam<Device> {
protected:
    void SetUp() override { needWindows(); }

    void lookAt(const QQuickWindow& window, const QString& stop) {
        const bool table = stop.startsWith(QLatin1String("table-"));
        const qreal least = (table ? 20 : 12) * GetParam().density;
        visit(*window.contentItem(), [&](const QQuickItem& item) {
            if (item.inherits("QQuickAbstractButton") && item.isEnabled()) {
                EXPECT_GE(item.width(), least - 1) << told(item, stop);
                EXPECT_GE(item.height(), least - 1) << told(item, stop);
                ++targets_;
            }
            if (item.inherits("QQuickText") && !item.property("text").toString().isEmpty())
                lookAtText(window, item, stop, table);
        });
    }

    void lookAtText(const QQuickWindow& window, const QQuickItem& item, const QString& stop,
                    bool table) {
        ++texts_;
        EXPECT_FALSE(item.property("truncated").toBool()) << told(item, stop);
        EXPECT_LE(item.property("contentWidth").toReal(), item.width() + 1.5) << told(item, stop);
        EXPECT_LE(item.property("contentHeight").toReal(), item.height() + 1.5) << told(item, stop);
        if (!scrolls(item)) {
            const auto lies = item.mapRectToScene(item.boundingRect());
            EXPECT_GE(lies.left(), -1) << told(item, stop);
            EXPECT_LE(lies.right(), window.width() + 1) << told(item, stop);
            EXPECT_LE(lies.bottom(), window.height() + 1) << told(item, stop);
        }
        if (table) {
            // 20 arc minutes at 1 m (ISO 9241-303), a capital being 0.714 of the size of the type.
            const auto font = item.property("font").value<QFont>();
            EXPECT_GE(font.pixelSize() * 0.714, 5.818 * GetParam().density - 1) << told(item, stop);
            // WCAG 2.2, 1.4.6; what cannot be used now is exempt.
            if (item.isEnabled()) {
                EXPECT_GE(contrast(item.property("color").value<QColor>(), groundOf(item, window)),
                          7)
                    << told(item, stop);
            }
        }
    }

    int targets_ = 0, texts_ = 0;
};

TEST_P(Screens, TargetsFitFingersAndTextIsWhole) {
    const auto& device = GetParam();
    const QTemporaryDir folder;
    const WarningCatcher warnings;
    RoomOptions options;
    options.library = folder.filePath(QStringLiteral("library.sqlite"));
    options.sheetsFolder = folder.path();
    options.density = device.density;
    QString problem;
    auto room = openRoom(options, problem);
    ASSERT_TRUE(room.window) << problem.toStdString();
    room.window->resize(device.width, device.height);
    problem = Tour{room}.walk([&](const QString& stop) { lookAt(*room.window, stop); });
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
    EXPECT_TRUE(room.workroom->live()->ended()) << "the tour did not reach the end of a session";
    EXPECT_GT(targets_, 200);
    EXPECT_GT(texts_, 400);
    EXPECT_TRUE(warnings.caught().isEmpty()) << warnings.caught().join('\n').toStdString();
}

INSTANTIATE_TEST_SUITE_P(Devices, Screens,
                         testing::Values(Device{"small laptop", 1024, 600, 4.0},
                                         Device{"tablet", 1280, 800, 5.9},
                                         Device{"tablet upright", 800, 1280, 5.9}),
                         [](const auto& about) {
                             std::string name = about.param.name;
                             std::erase(name, ' ');
                             return name;
                         });

} // namespace
} // namespace bastewright::app
