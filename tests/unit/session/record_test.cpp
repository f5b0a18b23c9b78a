#include "session/record.h"
#include "unit/session/table_cases.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

Record of(const made::Situation& at) {
    return recordOf(at.session, at.plan, at.events);
}

const PersonRecord& person(const Record& record, const std::string& name) {
    return *std::ranges::find(record.people, name, &PersonRecord::name);
}

bool isOpening(const RecordLine& line) {
    const auto* tick = std::get_if<happened::ZoneTick>(&line.what);
    return tick && tick->kind == Tick::opened;
}

TEST(Record, SaysWhoDidWhatWhenAndForHowLong) {
    const auto record = of(made::situation("ended"));
    // A minute between reports: the opening of A1 is the seventh after the start.
    const auto opened = std::ranges::find_if(record.lines, isOpening);
    EXPECT_EQ(std::get<happened::ZoneTick>(opened->what),
              (happened::ZoneTick{Tick::opened, 0, "p1.A1", "Ada"}));
    EXPECT_EQ(opened->since, Seconds{7 * 60});
    EXPECT_EQ(opened->took, Seconds{60});
    EXPECT_EQ(opened->points, 10);
    EXPECT_EQ(opened->call, Call::pin);
    EXPECT_EQ(record.lines.size(), made::situation("ended").events.size());
    EXPECT_EQ(record.startedMs, made::kStartMs);
    EXPECT_EQ(record.endedMs, made::situation("ended").events.back().atMs);
    EXPECT_EQ(record.zonesDone, 5);
    EXPECT_EQ(record.zones, 5);
    EXPECT_EQ(person(record, "Ada").zonesOpened, 2);
    EXPECT_EQ(person(record, "Ada").points, 40);
    EXPECT_EQ(person(record, "Bo").zonesClosed, 3);
    EXPECT_EQ(person(record, "Ada").here, record.worked);
    EXPECT_TRUE(person(record, "Ada").pace);
    EXPECT_EQ(record.people.size(), 2u) << "Cai was never there";
    EXPECT_EQ(record.pins.out, 50);
    EXPECT_EQ(record.rested, Seconds{});
}

TEST(Record, TheCallsAddUpToTheWorkingTime) {
    for (const char* name : {"checked", "all checked", "resumed", "A1 taken back"}) {
        const auto record = of(made::situation(name));
        Seconds sum{};
        for (const auto& call : record.calls)
            sum += call.took;
        EXPECT_EQ(sum, record.worked) << name;
    }
    const auto ended = of(made::situation("ended"));
    Seconds sum{};
    for (const auto& call : ended.calls)
        sum += call.took;
    EXPECT_EQ(sum, ended.worked - Seconds{60}) << "from rolling up to the end there was no call";
    const auto record = of(made::situation("checked"));
    const auto pin =
        std::ranges::find_if(record.calls, [](const CallRecord& c) { return c.call == Call::pin; });
    EXPECT_EQ(pin->took, Seconds{180}) << "three zones, a minute each";
    EXPECT_EQ(pin->planned, Seconds{120}) << "two people at once";
}

TEST(Record, WhatWasTakenBackIsNotInItAndABreakIsNoWork) {
    const auto back = of(made::situation("A1 taken back"));
    EXPECT_TRUE(std::ranges::none_of(back.lines, isOpening));
    EXPECT_EQ(person(back, "Ada").points, 0);
    const auto rested = of(made::situation("resumed"));
    EXPECT_EQ(rested.rested, Seconds{60});
    EXPECT_EQ(rested.worked, Seconds{7 * 60});
}

TEST(Record, TheTableForOtherProgramsKeepsEveryLineInItsRow) {
    auto at = made::situation("held");
    made::Reporter reporter;
    const auto now = at.events.back().atMs;
    at.events.push_back({"note", now, happened::Note{"A1: \"a seam\", open\nmended"}});
    at.events.push_back({"formula", now, happened::Note{"=1+1"}});
    const auto csv = recordCsv(of(at), at.session);
    EXPECT_TRUE(
        csv.starts_with("time,minute,quilt,pass,call,what,zone,person,seconds,count,text\r\n"
                        "2027-01-15T08:00:00Z,0,,,,session-started,,,,,\r\n"
                        "2027-01-15T08:01:00Z,1,Harbour Lights,1,set-up,set-up,,,60,,\r\n"))
        << csv;
    EXPECT_NE(csv.find(",note,,,,,\"A1: \"\"a seam\"\", open\nmended\"\r\n"), std::string::npos)
        << csv;
    EXPECT_NE(csv.find(",'=1+1\r\n"), std::string::npos) << "no formula comes of a note";
}

TEST(Record, IsEmptyBeforeTheStart) {
    const auto record = of(made::situation("not begun"));
    EXPECT_TRUE(record.lines.empty());
    EXPECT_TRUE(record.calls.empty());
    EXPECT_EQ(record.worked, Seconds{});
}

} // namespace
} // namespace bastewright
