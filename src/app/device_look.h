#pragma once

#include <QDBusConnection>
#include <QDBusMessage>
#include <QObject>

namespace bastewright::app {

/// Whether the device is set to dark, and to higher contrast: the desktop portal's
/// org.freedesktop.appearance color-scheme (1 is dark) and contrast (1 is higher), followed as they
/// change. Says nothing of what the portal does not serve.
class DeviceLook : public QObject {
    Q_OBJECT

public:
    explicit DeviceLook(QDBusConnection bus = QDBusConnection::sessionBus(),
                        QObject* parent = nullptr);

signals:
    void told(bool dark);
    void contrastTold(bool higher);

private slots:
    void settingChanged(const QDBusMessage& message);

private:
    void read(QDBusConnection& bus, const QString& name);
    void tell(const QString& name, uint value);
};

} // namespace bastewright::app
