#include "fixture.h"
#include "sheets/exchange/calendar.h"

#include <gtest/gtest.h>

#include <regex>
#include <set>

namespace bastewright {
namespace {

using namespace std::chrono_literals;
constexpr auto kDay = std::chrono::year{2026} / 1 / 17;
constexpr auto kNow = std::chrono::sys_days{std::chrono::year{2026} / 1 / 2} + 9h + 30min;

std::string unfolded(const std::string& text) {
    return std::regex_replace(text, std::regex{"\r\n[ \t]"}, "");
}

int count(const std::string& text, const std::string& what) {
    int n = 0;
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + 1))
        ++n;
    return n;
}

std::string made(const Session& session) {
    return calendar(session, fixture::planByHand(session), kDay, kNow);
}

TEST(Calendar, holdsTheSessionAndEverybodysHours) {
    Session session = fixture::harbourLights();
    session.setting.helpers[0].until = ClockTime{14h};
    const std::string text = unfolded(made(session));
    EXPECT_EQ(count(text, "BEGIN:VEVENT\r\n"), 5);
    EXPECT_EQ(count(text, "END:VEVENT\r\n"), 5);
    EXPECT_EQ(count(text, "DTSTAMP:20260102T093000Z\r\n"), 5);
    EXPECT_EQ(count(text, "DTSTART:20260117T130000\r\n"), 5);
    EXPECT_NE(text.find("DTEND:20260117T140000\r\nSUMMARY:Ada: basting Harbour Lights\r\n"),
              std::string::npos)
        << text;
    EXPECT_NE(text.find("DESCRIPTION:Ada\\, Bo\\, Cai\\, Dot\r\n"), std::string::npos);
}

TEST(Calendar, breaksAreEventsOfTheirOwn) {
    const Session session = fixture::harbourLights();
    Plan plan;
    plan.quilts.resize(1);
    plan.quilts[0].name = "Harbour Lights";
    plan.finish = Seconds{3600};
    plan.breaks = {{Seconds{1500}, Seconds{2100}, true, {}},
                   {Seconds{2400}, Seconds{2700}, false, {"Bo", "Dot"}}};
    const std::string text = calendar(session, plan, kDay, kNow);
    EXPECT_EQ(count(text, "SUMMARY:Break: Harbour Lights\r\n"), 2);
    EXPECT_EQ(count(text, "DTSTART:20260117T132500\r\nDTEND:20260117T133500\r\n"), 1);
    EXPECT_EQ(count(text, "DESCRIPTION:Bo\\, Dot\r\n"), 1);
}

TEST(Calendar, aQuiltWithoutANameLeavesNoHole) {
    Session session = fixture::harbourLights();
    session.jobs[0].name.clear();
    Plan plan = fixture::planByHand(session);
    plan.quilts[0].name.clear();
    EXPECT_EQ(count(calendar(session, plan, kDay, kNow), "SUMMARY:Basting: a quilt\r\n"), 1);
}

// RFC 5545, 3.1: lines of at most 75 octets without their break, characters never divided.
TEST(Calendar, linesAreFoldedAndNothingIsLost) {
    Session session = fixture::manyPeople();
    session.jobs[0].name = std::string(30, 'x') +
                           "\u05e9\u05dc\u05d5\u05dd\u79cb\u5b50; back\\slash\nnew line" +
                           std::string(80, 'y');
    const std::string text = made(session);
    std::size_t from = 0;
    for (auto to = text.find("\r\n"); to != std::string::npos; to = text.find("\r\n", from)) {
        EXPECT_LE(to - from, 75u);
        EXPECT_NE(static_cast<unsigned char>(text[from]) & 0xC0, 0x80)
            << "begins inside a character";
        if (text[from] == ' ') {
            EXPECT_NE(static_cast<unsigned char>(text[from + 1]) & 0xC0, 0x80);
        }
        from = to + 2;
    }
    EXPECT_EQ(from, text.size()) << "ends in CR LF";
    EXPECT_NE(
        unfolded(text).find("SUMMARY:Basting: " + std::string(30, 'x') +
                            "\u05e9\u05dc\u05d5\u05dd\u79cb\u5b50\\; back\\\\slash\\nnew line" +
                            std::string(80, 'y') + "\r\n"),
        std::string::npos);
}

TEST(Calendar, identifiersStayAndDiffer) {
    const Session session = fixture::harbourLights();
    EXPECT_EQ(made(session), made(session));
    const std::string text = made(session);
    const std::regex uid{"UID:([^\r]+)\r\n"};
    std::set<std::string> all;
    for (std::sregex_iterator it{text.begin(), text.end(), uid}, end; it != end; ++it)
        all.insert((*it)[1]);
    EXPECT_EQ(all.size(), 5u);
}

TEST(Calendar, aSessionMayRunPastMidnight) {
    Session session = fixture::harbourLights();
    session.setting.start = ClockTime{23h};
    EXPECT_NE(made(session).find("DTEND:20260118T"), std::string::npos);
}

} // namespace
} // namespace bastewright
