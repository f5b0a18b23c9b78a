#include "app/device_look.h"
#include "app/keep_awake.h"
#include "unit/view/qt_application.h"

#include <QDBusVariant>
#include <QProcess>
#include <gtest/gtest.h>

#include <set>

// Stands in for the desktop, on a bus of the test's own.
class Desktop : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")

public:
    std::set<uint> wishes;
    QString reason;
    int asked = 0;

public slots:
    uint Inhibit(const QString&, const QString& why) {
        reason = why;
        wishes.insert(uint(++asked));
        return uint(asked);
    }
    void UnInhibit(uint cookie) { wishes.erase(cookie); }
};

class Portal : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")

public slots:
    QDBusVariant Read(const QString& group, const QString& name) {
        const bool known =
            group == "org.freedesktop.appearance" && (name == "color-scheme" || name == "contrast");
        return QDBusVariant{QVariant::fromValue(QDBusVariant{known ? 1u : 0u})};
    }

signals:
    void SettingChanged(const QString& group, const QString& name, const QDBusVariant& value);
};

namespace {

using bastewright::app::DeviceLook;
using bastewright::app::KeepAwake;

struct OnABus : testing::Test {
    QProcess daemon;
    QString address;

    OnABus() {
        needApplication();
        daemon.start("dbus-daemon", {"--session", "--nofork", "--print-address"});
        EXPECT_TRUE(daemon.waitForReadyRead(10'000)) << daemon.errorString().toStdString();
        address = QString::fromUtf8(daemon.readAllStandardOutput()).trimmed();
    }
    ~OnABus() override {
        for (const char* name : {"desktop", "program"})
            QDBusConnection::disconnectFromBus(name);
        daemon.terminate();
        daemon.waitForFinished(5'000);
    }
    QDBusConnection as(const char* name) { return QDBusConnection::connectToBus(address, name); }
};

TEST_F(OnABus, TheScreenStaysOnWhileWantedAndNoLonger) {
    Desktop desktop;
    auto bus = as("desktop");
    ASSERT_TRUE(bus.registerService("org.freedesktop.ScreenSaver"));
    ASSERT_TRUE(bus.registerObject("/org/freedesktop/ScreenSaver", &desktop,
                                   QDBusConnection::ExportAllSlots));
    {
        KeepAwake awake{as("program")};
        awake.setWanted(true);
        awake.setWanted(true);
        ASSERT_TRUE(comes([&] { return awake.holds(); }));
        EXPECT_EQ(desktop.wishes.size(), 1u);
        EXPECT_FALSE(desktop.reason.isEmpty());
        awake.setWanted(false);
        EXPECT_TRUE(comes([&] { return desktop.wishes.empty(); }));

        awake.setWanted(true); // and a change of mind before the desktop has answered
        awake.setWanted(false);
        EXPECT_TRUE(comes([&] { return desktop.asked == 2 && desktop.wishes.empty(); }));

        awake.setWanted(true);
        ASSERT_TRUE(comes([&] { return awake.holds(); }));
    }
    EXPECT_TRUE(comes([&] { return desktop.wishes.empty(); })) << "released at the end";
}

TEST_F(OnABus, WithoutSuchADesktopNothingHappens) {
    KeepAwake awake{as("program")};
    awake.setWanted(true);
    comes([] {
        static int turns = 0;
        return ++turns > 100;
    });
    EXPECT_FALSE(awake.holds());
    awake.setWanted(false);
}

TEST(KeepAwake, WithoutABusNothingHappens) {
    needApplication();
    KeepAwake awake{QDBusConnection{"nowhere"}};
    awake.setWanted(true);
    awake.setWanted(false);
    EXPECT_FALSE(awake.holds());
}

TEST_F(OnABus, TheDevicesOwnLookIsFollowed) {
    Portal portal;
    auto bus = as("desktop");
    ASSERT_TRUE(bus.registerService("org.freedesktop.portal.Desktop"));
    ASSERT_TRUE(
        bus.registerObject("/org/freedesktop/portal/desktop", &portal,
                           QDBusConnection::ExportAllSlots | QDBusConnection::ExportAllSignals));
    DeviceLook look{as("program")};
    std::optional<bool> dark, contrast;
    QObject::connect(&look, &DeviceLook::told, &look, [&](bool told) { dark = told; });
    QObject::connect(&look, &DeviceLook::contrastTold, &look, [&](bool told) { contrast = told; });
    EXPECT_TRUE(comes([&] { return dark == true && contrast == true; }));
    emit portal.SettingChanged("org.freedesktop.appearance", "contrast",
                               QDBusVariant{QVariant{0u}});
    EXPECT_TRUE(comes([&] { return contrast == false; }));
    EXPECT_EQ(dark, true);
    emit portal.SettingChanged("org.freedesktop.appearance", "color-scheme",
                               QDBusVariant{QVariant{2u}});
    EXPECT_TRUE(comes([&] { return dark == false; }));
}

} // namespace

#include "keep_awake_test.moc"
