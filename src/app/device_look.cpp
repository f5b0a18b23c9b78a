#include "app/device_look.h"

#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>

namespace bastewright::app {
namespace {

constexpr QLatin1String kService{"org.freedesktop.portal.Desktop"},
    kPath{"/org/freedesktop/portal/desktop"}, kInterface{"org.freedesktop.portal.Settings"},
    kGroup{"org.freedesktop.appearance"}, kScheme{"color-scheme"}, kContrast{"contrast"};
constexpr uint kDark = 1, kHigher = 1;

} // namespace

DeviceLook::DeviceLook(QDBusConnection bus, QObject* parent)
    : QObject{parent} {
    if (!bus.isConnected())
        return;
    // From whoever owns the path: a wrong word about the light does no harm.
    bus.connect(QString{}, kPath, kInterface, QStringLiteral("SettingChanged"), this,
                SLOT(settingChanged(QDBusMessage)));
    read(bus, kScheme);
    read(bus, kContrast);
}

void DeviceLook::read(QDBusConnection& bus, const QString& name) {
    auto read = QDBusMessage::createMethodCall(kService, kPath, kInterface, QStringLiteral("Read"));
    read << QString{kGroup} << name;
    auto* watcher = new QDBusPendingCallWatcher{bus.asyncCall(read), this};
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher, name] {
        watcher->deleteLater();
        const QDBusPendingReply<QDBusVariant> reply = *watcher;
        if (reply.isError())
            return;
        auto value = reply.value().variant();
        // Read wraps the value in a variant of its own.
        if (value.canConvert<QDBusVariant>())
            value = value.value<QDBusVariant>().variant();
        tell(name, value.toUInt());
    });
}

void DeviceLook::tell(const QString& name, uint value) {
    if (name == kScheme)
        emit told(value == kDark);
    else if (name == kContrast)
        emit contrastTold(value == kHigher);
}

void DeviceLook::settingChanged(const QDBusMessage& message) {
    const auto said = message.arguments();
    if (said.size() == 3 && said[0] == kGroup)
        tell(said[1].toString(), said[2].value<QDBusVariant>().variant().toUInt());
}

} // namespace bastewright::app
