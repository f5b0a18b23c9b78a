#include "checker/checker.h"
#include "job/job_json.h"
#include "planners/whole/whole.h"

#include <gtest/gtest.h>

#include <cmath>
#include <ostream>

namespace bastewright {
namespace {

using namespace literals;

struct Case {
    const char* name;
    int width, length; ///< of the top, inches
    std::vector<Table> tables;
    std::vector<Side> walls;
    int passes;       ///< zero: no plan at all
    const char* says; ///< part of a finding; empty where nothing of the kind may be said
    friend std::ostream& operator<<(std::ostream& out, const Case& c) { return out << c.name; }
};

Session sessionFor(const Case& c) {
    Session s;
    Job job;
    job.name = c.name;
    job.top.width = {Length::inches(c.width)};
    job.top.length = {Length::inches(c.length)};
    job.basting.spacing = 6_in;
    s.jobs = {job};
    s.setting.room.tables = c.tables;
    s.setting.room.walls = c.walls;
    for (const char* name : {"Ada", "Bo", "Cai"}) {
        Helper h;
        h.name = name;
        s.setting.helpers.push_back(h);
    }
    s.setting.stash.pins = 2000;
    return s;
}

std::string allText(const Plan& plan) {
    std::string out;
    for (const Finding& f : plan.findings)
        out += f.field + ": " + f.text.english() + " " + f.cure.english() + "\n";
    return out;
}

class UncommonCase : public ::testing::TestWithParam<Case> {};

TEST_P(UncommonCase, IsPlannedAndSaysWhatMatters) {
    const Case& c = GetParam();
    const Session session = sessionFor(c);
    const Plan plan = planWhole(session);
    const QuiltPlan& quilt = plan.quilts.front();
    EXPECT_EQ(int(quilt.passes.size()), c.passes);
    const std::string text = allText(plan);
    if (*c.says != 0) {
        EXPECT_NE(text.find(c.says), std::string::npos) << text;
    } else {
        EXPECT_EQ(text.find("hangs from the table"), std::string::npos) << text;
    }
    for (const Finding& f : checkPlan(session, plan))
        ADD_FAILURE() << f.field << ": " << f.text;
    for (const Pass& p : quilt.passes)
        for (const Hold& h : p.holds)
            EXPECT_EQ(h.kind == Hold::Kind::clamp,
                      p.backingOverhang[h.side] > Length{} && !quilt.surface.floor)
                << "clamps where it hangs over, tape where it ends on the table";
}

const std::vector<Case> kCases{
    {"a throw on one table, all of it at once", 26, 60, {{72_in, 30_in, 1}}, {}, 1, ""},
    {"a table longer than the quilt", 40, 26, {{96_in, 30_in, 1}}, {}, 1, ""},
    {"on the floor", 60, 72, {}, {}, 1, ""},
    {"it hangs more than it lies", 60, 72, {{48_in, 24_in, 1}}, {}, 6, "hangs from the table"},
    {"a table too narrow to shift along",
     60,
     72,
     {{48_in, 7_in, 1}},
     {},
     0,
     "None of the tables can hold"},
    {"walls on every side",
     60,
     72,
     {{72_in, 30_in, 1}},
     {Side::head, Side::foot, Side::left, Side::right},
     0,
     "no side of it is open"},
};

INSTANTIATE_TEST_SUITE_P(Plans, UncommonCase, ::testing::ValuesIn(kCases));

TEST(NobodyNamed, IsPlannedForOneAndKeepsTheRules) {
    Session session = sessionFor({"Nobody", 60, 60, {{72_in, 30_in, 1}}, {}, 0, ""});
    session.setting.helpers.clear();
    const Plan plan = planWhole(session);
    EXPECT_TRUE(checkPlan(session, plan).empty())
        << checkPlan(session, plan).front().text.english();
    EXPECT_FALSE(anyStop(plan.findings)) << allText(plan);
    EXPECT_NE(allText(plan).find("No helpers are named: planned for one"), std::string::npos)
        << allText(plan);
}

TEST(TooFewPins, SaysHowManyToBuyThatDotsWouldDoAndWhatSpacingTheyAllow) {
    Session session = sessionFor({"throw", 40, 50, {{72_in, 30_in, 1}}, {}, 0, ""});
    const Plan withoutABox = planWhole(session);
    std::size_t points = 0;
    for (const Zone& z : withoutABox.quilts.front().zones)
        points += z.points.size();
    session.setting.stash.pins = int(points) - 10;
    const Plan plan = planWhole(session);
    const std::string text = allText(plan);
    EXPECT_NE(text.find("Bring 10 more"), std::string::npos) << text;
    EXPECT_NE(text.find("Or use fuse dots, which are pressed"), std::string::npos) << text;
    // Points grow with the square of how near they lie; to the next 1/8 in.
    const double eighths = std::ceil(6 * 8 * std::sqrt(double(points) / double(points - 10)));
    ASSERT_GT(eighths, 6 * 8);
    const std::string spacing =
        core::length(Length::inch64ths(8 * std::int64_t(eighths)), Unit::inch).english();
    EXPECT_NE(text.find("widen the spacing from 6 in to about " + spacing + " if "),
              std::string::npos)
        << text;

    session.jobs[0].batting.meltable = true;
    session.jobs[0].quilting.gapLimit = 6_in;
    const Plan unpressed = planWhole(session);
    const std::string melting = allText(unpressed);
    EXPECT_EQ(melting.find("fuse dots"), std::string::npos) << melting;
    EXPECT_NE(melting.find("and the batting only 6 in"), std::string::npos) << melting;
}

TEST(NoStartAskedFor, IsNotSaidToBeTakenOtherwiseWhereOnlyFromAnEndWorks) {
    Session session = sessionFor({"throw", 36, 64, {{32_in, 32_in, 1}}, {}, 0, ""});
    session.setting.helpers.resize(1);
    session.setting.helpers.front().seated = true;
    const auto otherStart = [](const Finding& f) { return f.kind == Finding::Kind::otherStart; };
    const Plan plan = planWhole(session);
    EXPECT_EQ(plan.quilts.front().alternatives.front().start, Basting::Start::oneEnd);
    EXPECT_TRUE(std::ranges::none_of(plan.findings, otherStart)) << allText(plan);

    session.jobs.front().basting.start = Basting::Start::centred;
    const Plan asked = planWhole(session);
    EXPECT_TRUE(std::ranges::any_of(asked.findings, otherStart)) << allText(asked);
}

TEST(WiderThanTheBattingAllows, IsAWarning) {
    Session session = sessionFor({"throw", 40, 50, {{72_in, 30_in, 1}}, {}, 0, ""});
    session.jobs[0].quilting.gapLimit = 5_in;
    const Plan plan = planWhole(session);
    EXPECT_TRUE(std::ranges::any_of(plan.findings, [](const Finding& f) {
        return f.level == Finding::Level::warn && f.kind == Finding::Kind::spacingTooWide;
    })) << allText(plan);
}

// Zones are called by the way that is planned: in other hands they must not lead to another.
TEST(AHandedZone, KeepsTheWayAndGoesToWhoGetsThere) {
    const Session session =
        *readSessionFile(BASTEWRIGHT_SOURCE "/assets/demo/harbour-lights.json").session;
    const Plan before = planWhole(session);
    int given = 0;
    for (const char* who : {"Ada", "Bo", "Cai", "Dot"}) {
        Session handed = session;
        handed.jobs.front().handed = {{"p1.C1", who}};
        const Plan plan = planWhole(handed);
        const QuiltPlan& quilt = plan.quilts.front();
        EXPECT_EQ(quilt.surface, before.quilts.front().surface) << who;
        ASSERT_EQ(quilt.passes.size(), before.quilts.front().passes.size()) << who;
        for (std::size_t p = 0; p < quilt.passes.size(); ++p)
            EXPECT_EQ(quilt.passes[p].shift, before.quilts.front().passes[p].shift) << who;
        const bool elsewhere = std::ranges::any_of(plan.findings, [](const Finding& f) {
            return f.kind == Finding::Kind::handedElsewhere;
        });
        for (const Task& t : plan.tasks)
            if (t.zone == "p1.C1" && !elsewhere) {
                EXPECT_EQ(t.people, std::vector<std::string>{who});
            }
        given += elsewhere ? 0 : 1;
    }
    EXPECT_GE(given, 3) << "only who sits elsewhere does not get there";
}

} // namespace
} // namespace bastewright
