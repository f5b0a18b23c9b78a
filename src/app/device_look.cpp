#include "app/device_look.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

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
    bus.connect(kService, kPath, kInterface, QStringLiteral("SettingChanged"), this,
                SLOT(settingChanged(QString, QString, QDBusVariant)));
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

void DeviceLook::settingChanged(const QString& group, const QString& name,
                                const QDBusVariant& value) {
    if (group == kGroup && name == kName)
        emit told(value.variant().toUInt() == kDark);
}

} // namespace bastewright::app
