#pragma once

#include <QDBusConnection>
#include <QObject>

#include <optional>

namespace bastewright::app {

/// Asks the desktop not to blank or lock the screen (org.freedesktop.ScreenSaver, Inhibit and
/// UnInhibit) and takes the wish back. Where no such service answers, nothing happens. Never waits
/// for an answer; the desktop itself drops the wish when the program ends.
class KeepAwake : public QObject {
    Q_OBJECT

public:
    explicit KeepAwake(QDBusConnection bus = QDBusConnection::sessionBus(),
                       QObject* parent = nullptr);
    ~KeepAwake() override;

    void setWanted(bool wanted);
    /// The desktop has agreed.
    bool holds() const { return cookie_.has_value(); }

private:
    void ask();
    void release();

    QDBusConnection bus_;
    std::optional<uint> cookie_;
    bool wanted_ = false, asking_ = false;
};

} // namespace bastewright::app
