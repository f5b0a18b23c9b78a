#include "job/job_json.h"
#include "planners/points/points.h"
#include "planners/whole/remedy.h"
#include "planners/whole/whole.h"
#include "property/points/made_tops.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

/// A made top on two tables, with two people.
Session afternoon(Job job) {
    Session session;
    session.jobs = {std::move(job)};
    session.setting.room.tables = {{.length = 72_in, .width = 30_in, .count = 2}};
    for (const char* name : {"Ada", "Bo"}) {
        Helper h;
        h.name = name;
        session.setting.helpers.push_back(h);
    }
    return session;
}

const Help* offered(const Plan& plan, Help::Kind kind) {
    for (const Help& h : plan.help)
        if (h.kind == kind)
            return &h;
    return nullptr;
}

TEST(Help, SaysWhatFewestPinsWouldSave) {
    const Session session = afternoon(madeTop(Seams::triangles6, 90_in, 108_in, Length{}));
    const Plan plan = planWhole(session, {.help = true});
    ASSERT_FALSE(plan.tasks.empty());
    const Help* fewest = offered(plan, Help::Kind::fewestPoints);
    ASSERT_NE(fewest, nullptr);
    const auto rows = planPoints(session.jobs.front()).points.size();
    const auto free =
        planPoints(session.jobs.front(), {.layout = Basting::Layout::fewest}).points.size();
    const auto about =
        planPoints(session.jobs.front(), {.layout = Basting::Layout::fewest, .glance = true})
            .points.size();
    EXPECT_LT(about, rows);
    EXPECT_LE(free, about);
    EXPECT_EQ(fewest->change, "Fewest pins, in no rows: " + std::to_string(about) +
                                  " or fewer, not " + std::to_string(rows));
    EXPECT_GE(fewest->saved, Seconds{60});
    EXPECT_TRUE(std::ranges::is_sorted(plan.help, std::greater<>{}, &Help::saved));
}

TEST(Help, IsWhatTheChangedSessionItselfTakes) {
    Session session = afternoon(madeTop(Seams::every4, 60_in, 72_in, 2_in));
    session.jobs.front().basting.start = Basting::Start::centred;
    session.setting.helpers[1].until = ClockTime{std::chrono::minutes{13 * 60 + 40}};
    const Plan plan = planWhole(session, {.help = true});
    ASSERT_FALSE(plan.tasks.empty());
    Session longer = session;
    longer.setting.helpers[1].until = ClockTime{std::chrono::minutes{14 * 60 + 40}};
    const Help* hour = offered(plan, Help::Kind::hourLonger);
    ASSERT_NE(hour, nullptr);
    EXPECT_EQ(hour->saved, plan.finish - planWhole(longer).finish);
    const Help* helper = offered(plan, Help::Kind::helper);
    ASSERT_NE(helper, nullptr);
    Session more = session;
    more.setting.helpers.emplace_back().name = "Helper 3";
    EXPECT_EQ(helper->saved, plan.finish - planWhole(more).finish);
}

// One quilt and, on several tables, three.
TEST(Help, SavesWhatThePlanOfTheDemosWithTheChangeSaves) {
    int offers = 0;
    for (const char* demo :
         {"harbour-lights", "leftover-batting", "winter-afternoon", "winter-thread"}) {
        const std::string file = std::string{BASTEWRIGHT_SOURCE "/assets/demo/"} + demo + ".json";
        const Session session = *readSessionFile(file).session;
        const Plan plan = planWhole(session, {.help = true});
        for (const Help& h : plan.help)
            if (const auto remedy = remedyOf(h.kind, session);
                remedy && h.kind != Help::Kind::fewestPoints) {
                EXPECT_EQ(h.saved, plan.finish - planWhole(remedy->applied(session)).finish)
                    << demo << ": " << h.change.english();
                ++offers;
            }
    }
    EXPECT_GT(offers, 4);
}

TEST(Help, HasNoSuchOfferWhereTheyAreFewestAlready) {
    Job job = madeTop(Seams::none, 40_in, 48_in, 2_in);
    job.basting.layout = Basting::Layout::fewest;
    const Plan plan = planWhole(afternoon(job), {.help = true});
    ASSERT_FALSE(plan.tasks.empty());
    EXPECT_EQ(offered(plan, Help::Kind::fewestPoints), nullptr);
}

} // namespace
} // namespace bastewright
