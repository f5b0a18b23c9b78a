#pragma once

#include "page/allowance.h"
#include "page/connection.h"
#include "page/guests.h"
#include "page/quilt_cloth.h"
#include "view/table/live_controller.h"

#include <QHostAddress>
#include <QTcpServer>

#include <functional>
#include <vector>

namespace bastewright::page {

/// The page for guests' phones: what the tablet shows, and ticks of one's own zones; nothing else
/// can be asked of it (docs/page.md). Lives on the screen's thread; every answer is short.
class PageServer : public QObject {
    Q_OBJECT

public:
    using SteadyClock = std::function<std::int64_t()>; ///< milliseconds, never backwards

    static constexpr quint16 kUsualPort = 52470; ///< from the dynamic range (RFC 6335)
    static constexpr int kMostConnections = 64, kMostFromOneAddress = 16;
    static constexpr int kWaitMs = 20'000; ///< how long a phone may wait for something new

    explicit PageServer(LiveController* live, SteadyClock clock = {}, QObject* parent = nullptr);
    ~PageServer() override;

    /// Answers at this address and no other; another port where the given one is taken. Returns why
    /// not, else nothing.
    QString open(const QHostAddress& address, quint16 port = kUsualPort);
    void close();
    bool isOpen() const { return door_ != nullptr; }
    /// "192.168.1.20:52470"
    const QString& host() const { return host_; }
    qsizetype connections() const;
    const Guests& guests() const { return guests_; }
    void renewCode();
    /// Names of those who follow on a phone at this moment.
    const QStringList& following() const { return following_; }

signals:
    void guestsChanged();

private:
    struct Waiting {
        QPointer<Connection> phone;
        QByteArray key;
        std::int64_t untilMs = 0;
    };

    void welcome(qintptr descriptor);
    void take(Connection& phone, const HttpRequest& request);
    void join(Connection& phone, const HttpRequest& request);
    void showTable(Connection& phone, const HttpRequest& request);
    void showCloth(Connection& phone, const HttpRequest& request);
    void tick(Connection& phone, const HttpRequest& request);
    void undo(Connection& phone, const HttpRequest& request);
    void refuse(Connection& phone, int status, const QString& told, const QString& logged);
    void log(const std::string& address, const QString& what);
    /// Tells everybody who waits, where there is something new.
    void publish();
    void wakeLate();
    void lookWhoFollows();
    QByteArray keyOf(const HttpRequest& request) const;

    LiveController* live_;
    SteadyClock clock_;
    Guests guests_;
    QTcpServer* door_ = nullptr;
    QString host_;
    QByteArray state_; ///< as JSON
    QByteArray at_;    ///< names the state: another after each change and each opening
    quint64 changes_ = 0;
    QuiltCloth cloth_;
    std::vector<Waiting> waiting_;
    QStringList following_;
    QTimer soon_, late_;
    Allowance requests_{40, 100}, joins_{5, 10'000}, allJoins_{30, 2'000}, logs_{20, 3'000};
    quint64 unlogged_ = 0;
};

} // namespace bastewright::page
