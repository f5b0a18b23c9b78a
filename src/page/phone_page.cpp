#include "page/phone_page.h"

#include <QNetworkInterface>

#include <algorithm>

namespace {

QStringList reachable() {
    QStringList out;
    for (const auto& network : QNetworkInterface::allInterfaces()) {
        const auto flags = network.flags();
        if (!flags.testFlag(QNetworkInterface::IsUp) ||
            !flags.testFlag(QNetworkInterface::IsRunning) ||
            flags.testFlag(QNetworkInterface::IsLoopBack))
            continue;
        for (const auto& entry : network.addressEntries()) {
            const auto address = entry.ip();
            // A link-local address needs the name of the network behind it, which browsers refuse.
            if (!address.isLinkLocal())
                out << address.toString();
        }
    }
    // The older kind is shorter to type.
    std::stable_partition(out.begin(), out.end(),
                          [](const QString& a) { return !a.contains(QLatin1Char(':')); });
    return out << QHostAddress{QHostAddress::LocalHost}.toString();
}

} // namespace

PhonePage::PhonePage(LiveController* live, QObject* parent)
    : QObject{parent}
    , server_{live} {
    connect(&server_, &bastewright::page::PageServer::guestsChanged, this, &PhonePage::changed);
    look();
}

QString PhonePage::link() const {
    return isOn() ? QStringLiteral("http://%1/").arg(server_.host()) : QString{};
}

// After the "#": a browser keeps that to itself, so the code is in no request's first line.
QString PhonePage::scan() const {
    return isOn() ? link() + QLatin1Char('#') + code() : QString{};
}

void PhonePage::look() {
    addresses_ = reachable();
    if (!addresses_.contains(address_))
        address_ = addresses_.front();
    emit changed();
}

void PhonePage::setOn(bool on) {
    problem_.clear();
    if (on)
        problem_ = server_.open(QHostAddress{address_});
    else
        server_.close();
    emit changed();
}

void PhonePage::choose(const QString& address) {
    if (!addresses_.contains(address) || address == address_)
        return;
    address_ = address;
    if (isOn())
        setOn(true);
    emit changed();
}

void PhonePage::newCode() {
    server_.renewCode();
}
