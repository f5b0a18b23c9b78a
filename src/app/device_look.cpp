#include "app/device_look.h"

#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>

namespace bastewright::app {
namespace {

const QString kService = QStringLiteral("org.freedesktop.portal.Desktop"),
              kPath = QStringLiteral("/org/freedesktop/portal/desktop"),
              kInterface = QStringLiteral("org.freedesktop.portal.Settings"),
              kGroup = QStringLiteral("org.freedesktop.appearance"),
              kName = QStringLiteral("color-scheme");
constexpr uint kDark = 1;

} // namespace

DeviceLook::DeviceLook(QDBusConnection bus, QObject* parent)
    : QObject{parent} {
    if (!bus.isConnected())
        return;
    // From whoever owns the path: a wrong word about light or dark does no harm.
    bus.connect(QString{}, kPath, kInterface, QStringLiteral("SettingChanged"), this,
                SLOT(settingChanged(QDBusMessage)));
    auto read = QDBusMessage::createMethodCall(kService, kPath, kInterface, QStringLiteral("Read"));
    read << kGroup << kName;
    auto* watcher = new QDBusPendingCallWatcher{bus.asyncCall(read), this};
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher] {
        watcher->deleteLater();
        const QDBusPendingReply<QDBusVariant> reply = *watcher;
        if (reply.isError())
            return;
        auto value = reply.value().variant();
        // Read wraps the value in a variant of its own.
        if (value.canConvert<QDBusVariant>())
            value = value.value<QDBusVariant>().variant();
        emit told(value.toUInt() == kDark);
    });
}

void DeviceLook::settingChanged(const QDBusMessage& message) {
    const auto said = message.arguments();
    if (said.size() == 3 && said[0] == kGroup && said[1] == kName)
        emit told(said[2].value<QDBusVariant>().variant().toUInt() == kDark);
}

} // namespace bastewright::app
