#include "job/job_json.h"
#include "page/page_server.h"
#include "page/what_guests_see.h"
#include "plan/plan_json.h"
#include "unit/session/table_cases.h"
#include "unit/view/qt_application.h"
#include "unit/view/small_table.h"
#include "view/base/words.h"

#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QTemporaryDir>
#include <QUuid>
#include <gtest/gtest.h>
#include <spdlog/sinks/ostream_sink.h>
#include <spdlog/spdlog.h>

#include <random>
#include <sstream>

namespace bastewright::page {
namespace {

struct Reply {
    int status = 0; ///< 0: the connection ended without an answer
    QByteArray head, body;
    QJsonObject json() const { return QJsonDocument::fromJson(body).object(); }
    QString told() const { return json()[QStringLiteral("told")].toString(); }
};

/// A guest's browser, as raw bytes on a connection of its own.
class Phone {
public:
    explicit Phone(const QString& host) {
        const auto parts = host.split(QLatin1Char(':'));
        socket_.connectToHost(parts[0], parts[1].toUShort());
        host_ = host.toLatin1();
    }
    void send(const QByteArray& bytes) { socket_.write(bytes); }
    void get(const QByteArray& path) {
        send("GET " + path + " HTTP/1.1\r\nHost: " + host_ + "\r\n" + keyField() + "\r\n");
    }
    void post(const QByteArray& path, const QByteArray& body,
              const QByteArray& more = "Content-Type: application/json\r\n") {
        send("POST " + path + " HTTP/1.1\r\nHost: " + host_ + "\r\n" + keyField() + more +
             "Content-Length: " + QByteArray::number(body.size()) + "\r\n\r\n" + body);
    }
    /// The next answer.
    Reply hear() {
        Reply reply;
        comes([&] {
            got_ += socket_.readAll();
            return take(reply) || (socket_.state() == QAbstractSocket::UnconnectedState &&
                                   socket_.bytesAvailable() == 0);
        });
        return reply;
    }
    bool heard() {
        QCoreApplication::processEvents();
        got_ += socket_.readAll();
        return !got_.isEmpty();
    }
    Reply ask(const QByteArray& path) {
        get(path);
        return hear();
    }
    Reply tell(const QByteArray& path, const QJsonObject& body) {
        post(path, QJsonDocument{body}.toJson(QJsonDocument::Compact));
        return hear();
    }
    bool join(const QString& code) {
        key_ = tell("/join", {{QStringLiteral("code"), code}})
                   .json()[QStringLiteral("key")]
                   .toString()
                   .toLatin1();
        return !key_.isEmpty();
    }

private:
    QByteArray keyField() const {
        return key_.isEmpty() ? QByteArray{} : "Authorization: Bearer " + key_ + "\r\n";
    }
    bool take(Reply& reply) {
        const auto end = got_.indexOf("\r\n\r\n");
        if (end < 0)
            return false;
        const auto head = got_.left(end);
        const auto at = head.indexOf("Content-Length: ");
        const auto size = at < 0 ? 0 : head.mid(at + 16, head.indexOf('\r', at) - at - 16).toInt();
        const auto whole = at >= 0 && head.indexOf('\r', at) < 0 ? head.mid(at + 16).toInt() : size;
        if (got_.size() < end + 4 + whole)
            return false;
        reply = {head.mid(9, 3).toInt(), head, got_.mid(end + 4, whole)};
        got_.remove(0, end + 4 + whole);
        return true;
    }

    QTcpSocket socket_;
    QByteArray host_, key_, got_;
};

struct AtThePage : testing::Test {
    QTemporaryDir folder;
    std::ostringstream log;
    std::shared_ptr<spdlog::logger> usual = spdlog::default_logger();
    std::int64_t steady = 0, wall = 1'000'000;
    std::optional<Library> library;
    std::optional<LiveController> live;
    std::optional<PageServer> server;
    int taken = 0;

    AtThePage() {
        needApplication();
        spdlog::set_default_logger(std::make_shared<spdlog::logger>(
            "test", std::make_shared<spdlog::sinks::ostream_sink_st>(log)));
        library.emplace(
            std::move(Library::open(folder.filePath("l.sqlite").toStdString()).value().library));
        live.emplace(&*library, [this] { return wall += 1000; });
        const auto job = library->addJob("Knots", "{}").value();
        EXPECT_TRUE(live->start(job, made::small()));
        live->stepDone(0, "lay");
        server.emplace(&*live, [this] { return steady; });
        const QString why = server->open(QHostAddress::LocalHost, 0);
        EXPECT_TRUE(why.isEmpty()) << why.toStdString();
    }
    ~AtThePage() override {
        server.reset();
        spdlog::set_default_logger(usual);
    }
    /// A session in one of the situations of the table.
    void take(const made::Situation& situation) {
        const auto at = made::renamed(situation, std::to_string(++taken) + "-");
        const auto job = library->addJob("Harbour Lights", "{}").value();
        const auto id =
            library->startSession(job, {writeSession(at.session), writePlan(at.plan)}).value();
        for (const auto& event : at.events)
            ASSERT_TRUE(library->append(id, event));
        EXPECT_TRUE(live->resume(id)) << live->problem().toStdString();
    }
    Phone phone() { return Phone{server->host()}; }
    std::size_t stored() const { return library->events(live->id())->size(); }
    static QJsonObject tickOf(const QString& zone, const QString& person,
                              const QString& kind = QStringLiteral("zone-opened")) {
        return {{"id", QUuid::createUuid().toString(QUuid::WithoutBraces)},
                {"quilt", 0},
                {"zone", zone},
                {"kind", kind},
                {"person", person}};
    }
    static QString stageOf(const QJsonObject& table, const QString& zone) {
        for (const auto z : table["quilts"][0]["zones"].toArray())
            if (z.toObject()["zone"] == zone)
                return z.toObject()["stage"].toString();
        return {};
    }
};

TEST_F(AtThePage, ItsFilesComeWithStrictRulesForTheBrowser) {
    auto guest = phone();
    for (const char* file : {"/", "/page.css", "/page.js", "/icon.svg"}) {
        const auto reply = guest.ask(file);
        EXPECT_EQ(reply.status, 200) << file;
        EXPECT_GT(reply.body.size(), 100) << file;
        EXPECT_TRUE(reply.head.contains("default-src 'none'")) << file;
        EXPECT_TRUE(reply.head.contains("frame-ancestors 'none'")) << file;
        EXPECT_TRUE(reply.head.contains("nosniff")) << file;
        EXPECT_FALSE(reply.head.contains("Access-Control")) << file;
        if (!file[1]) {
            EXPECT_FALSE(reply.body.contains("style=")) << "no style within the page";
            EXPECT_FALSE(reply.body.contains("http")) << "nothing from elsewhere";
        }
    }
}

TEST_F(AtThePage, NothingIsSeenOrTickedWithoutTheCode) {
    auto guest = phone();
    EXPECT_EQ(guest.ask("/table").status, 401);
    EXPECT_EQ(guest.tell("/tick", tickOf("A1", "Ada")).status, 401);
    EXPECT_FALSE(guest.join("2222-2222"));
    const auto before = stored();
    EXPECT_TRUE(guest.join(server->guests().code()));
    const auto table = guest.ask("/table").json();
    EXPECT_EQ(table["title"], "Knots");
    EXPECT_EQ(stageOf(table, "A1"), "waiting");
    EXPECT_EQ(stored(), before);
    EXPECT_NE(log.str().find("a wrong code"), std::string::npos) << log.str();
}

TEST_F(AtThePage, TheTopIsShownToWhoHasTheCode) {
    auto guest = phone();
    EXPECT_EQ(guest.ask("/cloth?quilt=0").status, 401);
    ASSERT_TRUE(guest.join(server->guests().code()));
    const auto cloth = guest.ask("/cloth?quilt=0");
    ASSERT_EQ(cloth.status, 200);
    EXPECT_TRUE(cloth.head.contains("image/jpeg"));
    EXPECT_TRUE(cloth.head.contains("nosniff"));
    EXPECT_LT(cloth.body.size(), 200'000);
    const auto image = QImage::fromData(cloth.body, "jpeg");
    EXPECT_EQ(std::max(image.width(), image.height()), QuiltCloth::kSide);
    const Rect top = topRect(live->live()->session().jobs.front().top);
    EXPECT_NEAR(double(image.width()) / image.height(), top.width().in() / top.length().in(), 0.01);
    for (const char* none : {"/cloth", "/cloth?quilt=1", "/cloth?quilt=-1", "/cloth?quilt=x"})
        EXPECT_EQ(guest.ask(none).status, 404) << none;
    guest.post("/cloth?quilt=0", "{}");
    EXPECT_EQ(guest.hear().status, 405);
    // The zones of the pass are parts of it and cover no place twice.
    double covered = 0;
    const auto quilt = guest.ask("/table").json()["quilts"][0].toObject();
    EXPECT_FALSE(quilt["cloth"].toString().isEmpty());
    for (const auto zone : quilt["zones"].toArray()) {
        const auto area = zone.toObject()["area"].toArray();
        ASSERT_EQ(area.size(), 4);
        EXPECT_GE(area[0].toDouble(), 0);
        EXPECT_LE(area[0].toDouble() + area[2].toDouble(), 1.0001);
        EXPECT_LE(area[1].toDouble() + area[3].toDouble(), 1.0001);
        covered += area[2].toDouble() * area[3].toDouble();
    }
    EXPECT_GT(covered, 0);
    EXPECT_LE(covered, 1.0001);
}

TEST_F(AtThePage, ATickShowsOnTheTabletAndOneThereOnThePhone) {
    auto guest = phone(), other = phone();
    ASSERT_TRUE(guest.join(server->guests().code()));
    ASSERT_TRUE(other.join(server->guests().code()));
    const auto at = other.ask("/table").json()["at"].toString().toLatin1();
    QElapsedTimer timer;
    timer.start();
    other.get("/table?after=" + at); // waits
    EXPECT_EQ(guest.tell("/tick", tickOf("A1", "Ada")).status, 200);
    EXPECT_EQ(live->live()->state().zones.at({0, "A1"}).state, ZoneState::open);
    EXPECT_EQ(live->live()->state().zones.at({0, "A1"}).openedBy, "Ada");
    const auto seen = other.hear();
    EXPECT_EQ(stageOf(seen.json(), "A1"), "open");
    other.get("/table?after=" + seen.json()["at"].toString().toLatin1());
    EXPECT_FALSE(other.heard()) << "nothing new, so it waits";
    live->tick(0, "B1"); // on the tablet
    EXPECT_EQ(stageOf(other.hear().json(), "B1"), "open");
    EXPECT_LT(timer.elapsed(), 1000);
}

TEST_F(AtThePage, TheSameTickTwiceCountsOnce) {
    auto guest = phone();
    ASSERT_TRUE(guest.join(server->guests().code()));
    const auto tick = tickOf("A1", "Ada");
    const auto before = stored();
    EXPECT_EQ(guest.tell("/tick", tick).status, 200);
    EXPECT_EQ(guest.tell("/tick", tick).status, 200);
    EXPECT_EQ(stored(), before + 1);
    auto another = tick;
    another["zone"] = "B1";
    another["person"] = "Bo";
    EXPECT_EQ(guest.tell("/tick", another).status, 409) << "the same id for something else";
    EXPECT_EQ(stored(), before + 1);
}

TEST_F(AtThePage, TwoDevicesAtOneZoneConverge) {
    auto one = phone(), two = phone();
    ASSERT_TRUE(one.join(server->guests().code()));
    ASSERT_TRUE(two.join(server->guests().code()));
    const auto body = [](const QJsonObject& tick) {
        return QJsonDocument{tick}.toJson(QJsonDocument::Compact);
    };
    one.post("/tick", body(tickOf("A1", "Ada")));
    two.post("/tick", body(tickOf("A1", "Ada")));
    live->tick(0, "B1");
    const auto a = one.hear().status, b = two.hear().status;
    EXPECT_EQ(std::min(a, b), 200);
    EXPECT_EQ(std::max(a, b), 409) << "the second one hears that it is ticked already";
    EXPECT_EQ(live->live()->state().zones.at({0, "A1"}).state, ZoneState::open);
    EXPECT_EQ(stageOf(one.ask("/table").json(), "A1"), "open");
    EXPECT_EQ(one.ask("/table").body, two.ask("/table").body);
}

TEST_F(AtThePage, EveryTickOfTheTableOfSituationsIsAnsweredAsOnTheTablet) {
    int asked = 0;
    for (const auto& c : made::cases()) {
        const auto tap = made::tapOf(c.tap);
        // Only those made on a phone; a session that is taken up begins.
        if (!tap.meant || c.why == TapAnswer::Why::notStarted)
            continue;
        ++asked;
        server.reset();
        live->close();
        take(made::situation(c.when));
        server.emplace(&*live, [this] { return steady += 1000; });
        ASSERT_TRUE(server->open(QHostAddress::LocalHost, 0).isEmpty());
        auto guest = phone();
        ASSERT_TRUE(guest.join(server->guests().code()));
        const auto before = stored();
        const auto reply =
            guest.tell("/tick", tickOf(words::fromCore(tap.zone), words::fromCore(tap.person),
                                       words::fromCore(name(*tap.meant))));
        using Why = TapAnswer::Why;
        const int status = c.why == Why::counts      ? 200
                           : c.why == Why::unknown   ? 404
                           : c.why == Why::notTheirs ? 403
                                                     : 409;
        EXPECT_EQ(reply.status, status) << c.when << ": " << c.tap;
        EXPECT_EQ(reply.told().toStdString(), c.said) << c.when << ": " << c.tap;
        EXPECT_EQ(stored(), before + (c.why == Why::counts)) << c.when << ": " << c.tap;
    }
    EXPECT_GE(asked, 20);
}

TEST_F(AtThePage, WhatIsShownReadyIsWhatTheSessionLets) {
    for (const auto& name : made::situations()) {
        if (name == "not begun") // begins where it is taken up
            continue;
        live->close();
        take(made::situation(name));
        const auto seen = whatGuestsSee(*live);
        const auto turns = live->live()->turns();
        const auto quilt = seen["quilts"][0].toObject();
        for (const auto z : quilt["zones"].toArray()) {
            const auto zone = z.toObject();
            EXPECT_EQ(zone["ready"].toBool(),
                      turns.mayTick({.zone = zone["zone"].toString().toStdString()}).counts())
                << name << ": " << zone["zone"].toString().toStdString();
        }
        EXPECT_FALSE(quilt["call"].toString().isEmpty()) << name;
        for (const auto p : seen["people"].toArray())
            EXPECT_FALSE(p.toObject()["now"].toString().isEmpty()) << name;
    }
}

TEST_F(AtThePage, OnesOwnLastTickCanBeTakenBackWhileItsCallIsInForce) {
    auto guest = phone();
    ASSERT_TRUE(guest.join(server->guests().code()));
    const auto backOf = [](const QString& person) {
        return QJsonObject{{"id", QUuid::createUuid().toString(QUuid::WithoutBraces)},
                           {"person", person}};
    };
    EXPECT_EQ(guest.tell("/undo", backOf("Ada")).status, 409) << "there is no tick yet";
    ASSERT_EQ(guest.tell("/tick", tickOf("A1", "Ada")).status, 200);
    live->tick(0, "B1"); // Bo's, on the tablet
    live->takeBack(0, "B1");
    const auto back = backOf("Ada");
    EXPECT_EQ(guest.tell("/undo", back).status, 200);
    EXPECT_EQ(guest.tell("/undo", back).status, 200) << "the same once more is harmless";
    EXPECT_EQ(live->live()->state().zones.at({0, "A1"}).state, ZoneState::waiting);
    ASSERT_EQ(guest.tell("/tick", tickOf("A1", "Ada")).status, 200);
    live->tick(0, "B1");
    const auto late = guest.tell("/undo", backOf("Ada"));
    EXPECT_EQ(late.status, 409) << "hands are off: closing comes next";
    EXPECT_EQ(late.told(), "The next call has come. Tell the person at the tablet.");
    EXPECT_EQ(guest.tell("/undo", backOf("Mallory")).status, 403);
    EXPECT_EQ(guest.tell("/undo", {}).status, 400);
}

TEST_F(AtThePage, TheTabletKnowsWhoFollows) {
    auto guest = phone();
    ASSERT_TRUE(guest.join(server->guests().code()));
    guest.ask("/table");
    EXPECT_TRUE(server->following().isEmpty()) << "nobody is chosen yet";
    guest.ask("/table?who=Ada");
    EXPECT_EQ(server->following(), QStringList{"Ada"});
    guest.ask("/table?who=Mallory");
    EXPECT_TRUE(server->following().isEmpty()) << "no helper of that name";
    guest.ask("/table?who=Bo");
    steady += Guests::kFollowsMs + 1;
    EXPECT_TRUE(comes([&] { return server->following().isEmpty(); })) << "gone for long enough";
}

TEST_F(AtThePage, WhatIsNotOnesOwnWorkIsRefused) {
    auto guest = phone();
    ASSERT_TRUE(guest.join(server->guests().code()));
    const auto before = stored();
    const auto with = [](const char* field, const QJsonValue& value) {
        auto tick = tickOf("A1", "Ada");
        tick[QLatin1String(field)] = value;
        return tick;
    };
    const std::pair<QJsonObject, int> refused[] = {
        {tickOf("A1", "Bo"), 403},
        {tickOf("A1", "Mallory"), 403},
        {tickOf("Z9", "Ada"), 404},
        {tickOf("A1", "Ada", "zone-closed"), 409},
        {tickOf("A1", "Ada", "session-ended"), 400},
        {tickOf("A1", "Ada", "undone"), 400},
        {with("quilt", 7), 404},
        {with("quilt", -1), 400},
        {with("quilt", 0.5), 400},
        {with("quilt", 1e18), 400},
        {with("id", "1"), 400},
        {with("id", 1), 400},
        {with("zone", QJsonArray{}), 400},
        {with("zone", QString(300, 'x')), 400},
        {with("person", QJsonValue::Null), 400},
        {{}, 400},
    };
    for (const auto& [tick, status] : refused) {
        const auto reply = guest.tell("/tick", tick);
        EXPECT_EQ(reply.status, status) << QJsonDocument{tick}.toJson().toStdString();
        EXPECT_FALSE(reply.told().isEmpty());
        steady += 1000;
    }
    EXPECT_EQ(stored(), before);
    EXPECT_NE(log.str().find("another's zone"), std::string::npos);
}

TEST_F(AtThePage, OtherMethodsPathsNamesAndBodiesAreRefused) {
    const auto once = [&](const QByteArray& bytes) {
        auto guest = phone();
        guest.send(bytes);
        steady += 1000;
        return guest.hear().status;
    };
    const QByteArray host = "Host: " + server->host().toLatin1() + "\r\n";
    EXPECT_EQ(once("POST / HTTP/1.1\r\n" + host + "Content-Length: 0\r\n\r\n"), 405);
    EXPECT_EQ(once("GET /tick HTTP/1.1\r\n" + host + "\r\n"), 405);
    EXPECT_EQ(once("DELETE /table HTTP/1.1\r\n" + host + "\r\n"), 405);
    EXPECT_EQ(once("GET /../../etc/passwd HTTP/1.1\r\n" + host + "\r\n"), 404);
    EXPECT_EQ(once("GET /events HTTP/1.1\r\n" + host + "\r\n"), 404);
    EXPECT_EQ(once("GET / HTTP/1.1\r\nHost: elsewhere.example\r\n\r\n"), 421);
    EXPECT_EQ(once("GET / HTTP/1.1\r\n" + host + "Origin: http://elsewhere.example\r\n\r\n"), 421);
    EXPECT_EQ(once("POST /join HTTP/1.1\r\n" + host + "Content-Length: 2\r\n\r\n{}"), 415);
    EXPECT_EQ(once("POST /join HTTP/1.1\r\n" + host + "Content-Length: 1000000\r\n\r\n"), 413);
}

TEST_F(AtThePage, GuessingTheCodeComesToNothing) {
    auto guest = phone();
    for (int i = 0; i < 5; ++i)
        EXPECT_EQ(guest.tell("/join", {{"code", "AAAA-AAAA"}}).status, 403) << i;
    EXPECT_EQ(guest.tell("/join", {{"code", "AAAA-AAAA"}}).status, 429);
    EXPECT_FALSE(guest.join(server->guests().code())) << "even the right one has to wait now";
    steady += 10'001;
    EXPECT_TRUE(guest.join(server->guests().code()));
}

TEST_F(AtThePage, ANewCodeSendsEverybodyToTheTabletAgain) {
    auto guest = phone();
    ASSERT_TRUE(guest.join(server->guests().code()));
    const auto at = guest.ask("/table").json()["at"].toString().toLatin1();
    guest.get("/table?after=" + at);
    EXPECT_FALSE(guest.heard());
    server->renewCode();
    EXPECT_EQ(guest.hear().status, 401);
    EXPECT_EQ(guest.ask("/table").status, 401);
}

TEST_F(AtThePage, AWaitingPhoneThatGoesAwayDoesNoHarm) {
    for (int i = 0; i < 20; ++i) {
        auto guest = phone();
        steady += 1000;
        ASSERT_TRUE(guest.join(server->guests().code()));
        guest.get("/table?after=" + guest.ask("/table").json()["at"].toString().toLatin1());
        EXPECT_FALSE(guest.heard());
    }
    live->tick(0, "A1");
    live->tick(0, "B1");
    auto last = phone();
    ASSERT_TRUE(last.join(server->guests().code()));
    EXPECT_EQ(stageOf(last.ask("/table").json(), "A1"), "open");
}

TEST_F(AtThePage, ConnectionsAreLimited) {
    std::vector<std::unique_ptr<Phone>> many;
    for (int i = 0; i < 40; ++i)
        many.push_back(std::make_unique<Phone>(server->host()));
    int answered = 0;
    for (auto& guest : many) {
        guest->get("/icon.svg");
        answered += guest->hear().status == 200;
    }
    EXPECT_EQ(answered, PageServer::kMostFromOneAddress);
    many.clear();
    EXPECT_TRUE(comes([&] {
        steady += 1000;
        auto guest = phone();
        return guest.ask("/icon.svg").status == 200;
    })) << "places are free again";
}

TEST_F(AtThePage, WhoeverTakesNoAnswersIsSentAway) {
    QTcpSocket deaf;
    deaf.setReadBufferSize(1); // asks and never reads
    const auto parts = server->host().split(QLatin1Char(':'));
    deaf.connectToHost(parts[0], parts[1].toUShort());
    const QByteArray request =
        "GET /page.js HTTP/1.1\r\nHost: " + server->host().toLatin1() + "\r\n\r\n";
    bool ended = false;
    for (int n = 0; n < 5000 && !ended; ++n) {
        steady += 1000; // slowly enough for the limit of requests
        deaf.write(request);
        QCoreApplication::processEvents();
        ended = deaf.state() == QAbstractSocket::UnconnectedState;
    }
    EXPECT_TRUE(ended);
    EXPECT_TRUE(comes([&] { return server->connections() == 0; }));
    EXPECT_EQ(phone().ask("/icon.svg").status, 200) << "others are served";
}

TEST_F(AtThePage, TenThousandBadRequestsLeaveTheSessionAsItWas) {
    const auto seed = std::random_device{}();
    std::mt19937 dice{seed};
    const auto before = live->live()->state();
    const auto events = stored();
    const QByteArray key(32, 'a'), host = server->host().toLatin1();
    const QByteArray good = "POST /tick HTTP/1.1\r\nHost: " + host + "\r\nAuthorization: Bearer " +
                            key +
                            "\r\nContent-Type: application/json\r\nContent-Length: 2\r\n\r\n{}";
    std::map<int, int> statuses;
    for (int n = 0; n < 10'000; n += 10) {
        std::vector<std::unique_ptr<Phone>> crowd;
        for (int i = n; i < n + 10; ++i) {
            QByteArray bytes = good;
            for (auto spoils = dice() % 6; spoils > 0; --spoils)
                bytes[qsizetype(dice() % std::size_t(bytes.size()))] = char(dice());
            if (i % 7 == 0)
                bytes = QByteArray(qsizetype(dice() % 20'000), char(dice()));
            crowd.push_back(std::make_unique<Phone>(server->host()));
            crowd.back()->send(bytes + "\r\n\r\n");
        }
        for (auto& guest : crowd)
            ++statuses[guest->hear().status];
        steady += 90; // at the limit, so that some of both kinds of refusal are seen
        crowd.clear();
        comes([&] { return server->connections() == 0; });
    }
    EXPECT_EQ(statuses[200], 0) << "seed " << seed;
    EXPECT_GT(statuses[429], 0);
    EXPECT_GT(statuses[401], 0);
    EXPECT_GT(statuses[400], 0);
    EXPECT_EQ(stored(), events);
    EXPECT_TRUE(live->live()->state() == before) << "seed " << seed;
    EXPECT_LT(log.str().size(), 200'000u) << "the log is not flooded";
    steady += 100'000;
    auto guest = phone();
    EXPECT_TRUE(guest.join(server->guests().code())) << "and the page still answers";
    for (const auto& [status, count] : statuses)
        std::printf("%d × %d  ", status, count);
    std::printf("(0: ended without an answer)\n");
}

TEST_F(AtThePage, SwitchedOffNobodyIsAnswered) {
    const auto host = server->host();
    server->close();
    Phone guest{host};
    EXPECT_EQ(guest.ask("/").status, 0);
}

} // namespace
} // namespace bastewright::page
