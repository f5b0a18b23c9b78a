#include "app/keep_awake.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

#include <utility>

namespace bastewright::app {
namespace {

QDBusMessage call(const char* method) {
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"),
                                          QStringLiteral("/org/freedesktop/ScreenSaver"),
                                          QStringLiteral("org.freedesktop.ScreenSaver"),
                                          QLatin1String(method));
}

} // namespace

KeepAwake::KeepAwake(QDBusConnection bus, QObject* parent)
    : QObject{parent}
    , bus_{std::move(bus)} {}

KeepAwake::~KeepAwake() {
    release();
}

void KeepAwake::setWanted(bool wanted) {
    if (wanted == wanted_)
        return;
    wanted_ = wanted;
    if (wanted_)
        ask();
    else
        release();
}

void KeepAwake::ask() {
    if (asking_ || cookie_ || !bus_.isConnected())
        return;
    asking_ = true;
    auto message = call("Inhibit");
    message << QStringLiteral("Bastewright") << tr("A session is running at the table.");
    auto* watcher = new QDBusPendingCallWatcher{bus_.asyncCall(message), this};
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher] {
        watcher->deleteLater();
        asking_ = false;
        const QDBusPendingReply<uint> reply = *watcher;
        if (reply.isError())
            return; // no desktop that could blank the screen
        cookie_ = reply.value();
        if (!wanted_)
            release(); // thought better of it meanwhile
    });
}

void KeepAwake::release() {
    if (!cookie_)
        return;
    auto message = call("UnInhibit");
    message << *std::exchange(cookie_, std::nullopt);
    bus_.send(message);
}

} // namespace bastewright::app
