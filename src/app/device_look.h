#pragma once

#include <QDBusConnection>
#include <QDBusMessage>
#include <QObject>

namespace bastewright::app {

/// Whether the device is set to dark: the desktop portal's org.freedesktop.appearance color-scheme
/// (1 is dark), followed as it changes. Says nothing where there is no portal.
class DeviceLook : public QObject {
    Q_OBJECT

public:
    explicit DeviceLook(QDBusConnection bus = QDBusConnection::sessionBus(),
                        QObject* parent = nullptr);

signals:
    void told(bool dark);

private slots:
    void settingChanged(const QDBusMessage& message);
};

} // namespace bastewright::app
