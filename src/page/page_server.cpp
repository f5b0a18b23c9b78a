#include "page/page_server.h"

#include "page/page_words.h"
#include "page/ticks.h"
#include "page/what_guests_see.h"
#include "view/base/words.h"

#include <QDateTime>
#include <QElapsedTimer>
#include <QFile>
#include <QJsonDocument>
#include <QRandomGenerator>
#include <QUrlQuery>
#include <spdlog/spdlog.h>

#include <algorithm>

namespace bastewright::page {
namespace {

// Hands on the bare connection: those over the limit are never read from.
class Door : public QTcpServer {
public:
    Door(std::function<void(qintptr)> welcome, QObject* parent)
        : QTcpServer{parent}
        , welcome_{std::move(welcome)} {}

protected:
    void incomingConnection(qintptr descriptor) override { welcome_(descriptor); }

private:
    std::function<void(qintptr)> welcome_;
};

struct File {
    const char *path, *name, *type;
};
constexpr File kFiles[] = {
    {"/", ":/page/index.html", "text/html; charset=utf-8"},
    {"/page.css", ":/page/page.css", "text/css; charset=utf-8"},
    {"/page.js", ":/page/page.js", "text/javascript; charset=utf-8"},
    {"/icon.svg", ":/page/icon.svg", "image/svg+xml"},
};

QString hostOf(const QHostAddress& address, quint16 port) {
    const bool six = address.protocol() == QAbstractSocket::IPv6Protocol;
    return (six ? QStringLiteral("[%1]:%2") : QStringLiteral("%1:%2"))
        .arg(address.toString())
        .arg(port);
}

PageServer::SteadyClock steady() {
    QElapsedTimer timer;
    timer.start();
    return [timer] { return timer.elapsed(); };
}

QJsonObject told(const QString& sentence) {
    return {{QStringLiteral("told"), sentence}};
}

} // namespace

PageServer::PageServer(LiveController* live, SteadyClock clock, QObject* parent)
    : QObject{parent}
    , live_{live}
    , clock_{clock ? std::move(clock) : steady()} {
    soon_.setSingleShot(true);
    soon_.setInterval(0); // several changes in a row are told once
    connect(&soon_, &QTimer::timeout, this, &PageServer::publish);
    late_.setInterval(1000);
    connect(&late_, &QTimer::timeout, this, &PageServer::wakeLate);
    connect(live_, &LiveController::changed, this, [this] {
        if (door_)
            soon_.start();
    });
}

PageServer::~PageServer() {
    close();
}

QString PageServer::open(const QHostAddress& address, quint16 port) {
    close();
    auto* door = new Door{[this](qintptr descriptor) { welcome(descriptor); }, this};
    if (!door->listen(address, port) && !door->listen(address, 0)) {
        QString why =
            tr("The page cannot be opened at %1: %2.").arg(address.toString(), door->errorString());
        delete door;
        return why;
    }
    door_ = door;
    host_ = hostOf(address, door->serverPort());
    guests_.renew();
    late_.start();
    publish();
    spdlog::info("page: open at {}", host_.toStdString());
    emit guestsChanged();
    return {};
}

void PageServer::close() {
    if (!door_)
        return;
    spdlog::info("page: closed");
    delete door_; // with its connections
    door_ = nullptr;
    host_.clear();
    state_.clear();
    waiting_.clear();
    late_.stop();
    soon_.stop();
    guests_.renew();
    following_.clear();
    emit guestsChanged();
}

qsizetype PageServer::connections() const {
    return door_ ? door_->findChildren<Connection*>(Qt::FindDirectChildrenOnly).size() : 0;
}

void PageServer::renewCode() {
    guests_.renew();
    for (const auto& waiting : std::exchange(waiting_, {}))
        if (waiting.phone)
            waiting.phone->answer(401);
    emit guestsChanged();
}

void PageServer::welcome(qintptr descriptor) {
    auto* socket = new QTcpSocket;
    if (!socket->setSocketDescriptor(descriptor)) {
        delete socket;
        return;
    }
    const auto others = door_->findChildren<Connection*>(Qt::FindDirectChildrenOnly);
    auto* phone = new Connection{socket, door_};
    const auto same = std::ranges::count_if(
        others, [&](const auto* other) { return other->address() == phone->address(); });
    if (others.size() >= kMostConnections || same >= kMostFromOneAddress) {
        log(phone->address(), QStringLiteral("too many connections"));
        delete phone;
        return;
    }
    connect(phone, &Connection::requested, this,
            [this](Connection* by, const HttpRequest& request) { take(*by, request); });
    connect(phone, &Connection::refused, this, [this](Connection* by, int status) {
        log(by->address(), QStringLiteral("not a request of this page (%1)").arg(status));
    });
}

void PageServer::log(const std::string& address, const QString& what) {
    // Whoever hammers at the door must not fill the log.
    if (!logs_.take(address, clock_())) {
        ++unlogged_;
        return;
    }
    if (unlogged_ > 0)
        spdlog::warn("page: {} more refusals not listed", std::exchange(unlogged_, 0));
    spdlog::warn("page: refused {}: {}", address, what.toStdString());
}

void PageServer::refuse(Connection& phone, int status, const QString& sentence,
                        const QString& logged) {
    if (!logged.isEmpty())
        log(phone.address(), logged);
    phone.answerJson(status, told(sentence));
}

QByteArray PageServer::keyOf(const HttpRequest& request) const {
    constexpr std::string_view scheme = "Bearer "; // RFC 6750
    const auto field = request.field("authorization");
    if (!field.starts_with(scheme))
        return {};
    const auto key = QByteArray::fromStdString(field.substr(scheme.size()));
    return guests_.knows(key) ? key : QByteArray{};
}

void PageServer::take(Connection& phone, const HttpRequest& request) {
    if (!requests_.take(phone.address(), clock_())) {
        phone.closeAfter();
        log(phone.address(), QStringLiteral("too many requests"));
        return phone.answer(429, {}, {}, "Retry-After: 2\r\n");
    }
    // Another site's page cannot name this host, nor send this origin.
    const auto host = host_.toStdString(), origin = request.field("origin");
    if (request.field("host") != host || (!origin.empty() && origin != "http://" + host))
        return refuse(phone, 421, {}, QStringLiteral("asked under another name"));
    const bool get = request.method == "GET";
    for (const auto& file : kFiles) {
        if (request.path != file.path)
            continue;
        if (!get)
            return phone.answer(405, {}, {}, "Allow: GET\r\n");
        QFile content{QString::fromLatin1(file.name)};
        if (!content.open(QIODevice::ReadOnly))
            return phone.answer(500);
        const bool script = request.path == "/page.js";
        return phone.answer(200, file.type,
                            script || request.path == "/" ? inLanguage(content.readAll(), script)
                                                          : content.readAll());
    }
    const bool isTable = request.path == "/table", isCloth = request.path == "/cloth";
    const bool isShown = isTable || isCloth;
    if (!isShown && request.path != "/join" && request.path != "/tick" && request.path != "/undo")
        return refuse(phone, 404, {}, QStringLiteral("no such page"));
    if (get != isShown)
        return phone.answer(405, {}, {}, isShown ? "Allow: GET\r\n" : "Allow: POST\r\n");
    if (!get && request.field("content-type") != "application/json")
        return refuse(phone, 415, {}, QStringLiteral("a body that is not JSON"));
    if (request.path == "/join")
        return join(phone, request);
    if (keyOf(request).isEmpty())
        return refuse(phone, 401, tr("Scan the code on the tablet again."),
                      QStringLiteral("no key, or one that is not good any more"));
    if (isTable)
        return showTable(phone, request);
    if (isCloth)
        return showCloth(phone, request);
    request.path == "/tick" ? tick(phone, request) : undo(phone, request);
}

void PageServer::join(Connection& phone, const HttpRequest& request) {
    const auto now = clock_();
    if (!joins_.has(phone.address(), now) || !allJoins_.has({}, now))
        return refuse(phone, 429, tr("Too many wrong codes. Wait a little and try again."),
                      QStringLiteral("too many wrong codes"));
    const auto body = QJsonDocument::fromJson(QByteArray::fromStdString(request.body));
    const auto key = guests_.join(body[QStringLiteral("code")].toString());
    if (key.isEmpty()) {
        joins_.take(phone.address(), now);
        allJoins_.take({}, now);
        return refuse(phone, 403, tr("That is not the code on the tablet."),
                      QStringLiteral("a wrong code"));
    }
    spdlog::info("page: {} follows", phone.address());
    phone.answerJson(200, {{QStringLiteral("key"), QString::fromLatin1(key)}});
    emit guestsChanged();
}

void PageServer::showTable(Connection& phone, const HttpRequest& request) {
    const QUrlQuery query{QString::fromStdString(request.query)};
    const auto who = query.queryItemValue(QStringLiteral("who"), QUrl::FullyDecoded);
    const auto rows = live_->people()->rows();
    const bool isHelper =
        std::ranges::any_of(rows, [&who](const QVariantList& row) { return row[2] == who; });
    guests_.looked(keyOf(request), isHelper ? who : QString{}, clock_());
    lookWhoFollows();
    if (query.queryItemValue(QStringLiteral("after")).toLatin1() != at_)
        return phone.answer(200, "application/json", state_);
    const auto key = keyOf(request);
    // A device waits once; where it asks anew the earlier one is let go.
    for (auto& waiting : waiting_)
        if (waiting.key == key && waiting.phone)
            std::exchange(waiting.phone, nullptr)->answer(204);
    std::erase_if(waiting_, [](const Waiting& w) { return !w.phone; });
    waiting_.push_back({&phone, key, clock_() + kWaitMs});
}

void PageServer::showCloth(Connection& phone, const HttpRequest& request) {
    bool isNumber = false;
    const int quilt = QUrlQuery{QString::fromStdString(request.query)}
                          .queryItemValue(QStringLiteral("quilt"))
                          .toInt(&isNumber);
    const auto* live = live_->live();
    if (!isNumber || !live || quilt < 0 || std::size_t(quilt) >= live->session().jobs.size())
        return refuse(phone, 404, {}, QStringLiteral("no such quilt"));
    phone.answer(200, "image/jpeg",
                 cloth_.jpeg(quilt, live->session().jobs[std::size_t(quilt)].top));
}

void PageServer::tick(Connection& phone, const HttpRequest& request) {
    const auto answer = takeTick(*live_, request.body);
    if (!answer.logged.isEmpty())
        log(phone.address(), answer.logged);
    phone.answerJson(answer.status, told(answer.told));
}

void PageServer::undo(Connection& phone, const HttpRequest& request) {
    const auto answer = takeBack(*live_, request.body);
    if (!answer.logged.isEmpty())
        log(phone.address(), answer.logged);
    phone.answerJson(answer.status, told(answer.told));
}

void PageServer::publish() {
    auto now = whatGuestsSee(*live_);
    static const QString kAt = QStringLiteral("at");
    const auto before = QJsonDocument::fromJson(state_).object();
    now[kAt] = before[kAt];
    if (now == before)
        return;
    if (at_.isEmpty() || state_.isEmpty())
        changes_ = QRandomGenerator::system()->generate();
    at_ = QByteArray::number(++changes_);
    now[kAt] = QString::fromLatin1(at_);
    state_ = QJsonDocument{now}.toJson(QJsonDocument::Compact);
    for (const auto& waiting : std::exchange(waiting_, {}))
        if (waiting.phone)
            waiting.phone->answer(200, "application/json", state_);
}

void PageServer::wakeLate() {
    const auto now = clock_();
    for (auto& waiting : waiting_)
        if (waiting.phone && waiting.untilMs <= now)
            std::exchange(waiting.phone, nullptr)->answer(204);
    std::erase_if(waiting_, [](const Waiting& w) { return !w.phone; });
    lookWhoFollows();
}

void PageServer::lookWhoFollows() {
    auto now = guests_.following(clock_());
    if (now == following_)
        return;
    following_ = std::move(now);
    emit guestsChanged();
}

} // namespace bastewright::page
