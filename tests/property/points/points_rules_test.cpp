#include "property/points/made_tops.h"
#include "property/points/points_oracle.h"
#include "support/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <thread>

namespace bastewright {
namespace {

constexpr double kRounding = 1e-5; // inches; positions are whole nanometres

bool says(const PointsPlan& plan, const std::string& field) {
    for (const Finding& f : plan.findings)
        if (f.field == field)
            return true;
    return false;
}

/// All rules of a plan. What a plan says it could not keep may be breached, but nothing else.
void expectRules(const Job& job, const PointsPlan& plan) {
    const Measured m = measured(job, seamsToKeepClearOf(job), plan.points);
    const double s = job.basting.spacing.in();
    if (!says(plan, "/basting/spacing")) {
        EXPECT_LE(m.farthest, s / std::sqrt(2.0) + 0.125 + 1e-3);
        EXPECT_GE(m.closest, s / 2 - kRounding);
    }
    if (!says(plan, "/basting/edge")) {
        EXPECT_GE(m.edge, job.basting.edge.in() - kRounding);
    }
    if (!says(plan, "/basting/clear")) {
        EXPECT_GE(m.room, job.basting.clear.in() - kRounding);
    }
    EXPECT_GE(static_cast<int>(plan.points.size()), 1);
    if (plan.rows) { // every point by its row and mark, or single
        const RowMarks marks{*plan.rows};
        std::vector<Point> told = plan.rows->singles;
        for (const auto& [at, mark] : marks.all())
            told.push_back(at);
        std::vector<Point> laid;
        for (const PlacedPoint& p : plan.points)
            laid.push_back(p.at);
        std::ranges::sort(told);
        std::ranges::sort(laid);
        EXPECT_EQ(told, laid);
    }
    EXPECT_TRUE(std::is_sorted(plan.points.begin(), plan.points.end(), [](auto& a, auto& b) {
        return std::pair{a.at.y, a.at.x} < std::pair{b.at.y, b.at.x};
    }));
    const Rect top = topRect(job.top);
    for (const PlacedPoint& p : plan.points) {
        EXPECT_TRUE(top.contains(p.at));
        EXPECT_TRUE(p.angle >= 0 && p.angle < 180);
    }
}

Length eighths(Random& r, int lo, int hi) {
    return Length::inch64ths(8 * r.count(lo, hi));
}

Job randomTop(Random& r) {
    Job job;
    job.unit = r.chance(20) ? Unit::centimetre : Unit::inch;
    job.quilting.method =
        r.chance(20) ? Quilting::Method::freeMotion : Quilting::Method::inTheDitch;
    Basting& b = job.basting;
    b.with = r.chance(20)   ? Basting::With::dots
             : r.chance(20) ? Basting::With::thread
                            : Basting::With::pins;
    b.spacing = eighths(r, 20, 48);
    b.pinLength = eighths(r, 6, 12);
    b.clear = eighths(r, 0, 5);
    b.edge = eighths(r, 0, 12);
    if (r.chance(65)) {
        BlockGrid g;
        g.columns = r.count(1, 6);
        g.rows = r.count(1, 6);
        g.block = eighths(r, 24, 120);
        g.blockLength = r.chance(25) ? eighths(r, 24, 120) : Length{};
        g.sashing = r.chance(50) ? eighths(r, 4, 24) : Length{};
        g.border = r.chance(75) ? eighths(r, 4, 64) : Length{};
        if (r.chance(50))
            g.innerX = {g.block / 2};
        if (r.chance(50))
            g.innerY = {g.blockHeight() / 3, 2 * (g.blockHeight() / 3)};
        job.top.grid = g;
        job.top.width = {g.width() + (r.chance(30) ? eighths(r, 0, 6) : Length{})};
        job.top.length = {g.length()};
    } else {
        job.top.width = {r.length(8_in, 60_in)};
        job.top.length = {r.length(8_in, 60_in)};
    }
    for (int i = r.chance(50) ? r.count(1, 12) : 0; i > 0; --i) {
        const Rect t = topRect(job.top);
        const auto place = [&] { return Point{r.length({}, t.x1), r.length({}, t.y1)}; };
        job.top.seams.push_back({place(), place()});
    }
    return job;
}

class RandomTops : public testing::TestWithParam<int> {};

TEST_P(RandomTops, KeepEveryRule) {
    Random r{static_cast<std::uint64_t>(GetParam())};
    const Job job = randomTop(r);
    SCOPED_TRACE("seed " + std::to_string(GetParam()));
    using enum Basting::Layout;
    const auto layout =
        r.oneOf(std::vector<std::optional<Basting::Layout>>{rows, rows, blocks, fewest, {}});
    const PointsPlan plan =
        planPoints(job, {.effort = layout == fewest ? 0 : r.count(0, 1), .layout = layout});
    expectRules(job, plan);
}
INSTANTIATE_TEST_SUITE_P(Points, RandomTops, testing::Range(1, 81));

TEST(Points, GenerousSeamsNeedNoBreach) {
    for (const Seams seams : {Seams::none, Seams::sashing, Seams::every4, Seams::every3,
                              Seams::triangles6, Seams::triangles4}) {
        SCOPED_TRACE(name(seams));
        const Job job = madeTop(seams, 60_in, 72_in, 2_in);
        const PointsPlan plan = planPoints(job);
        expectRules(job, plan);
        EXPECT_TRUE(plan.findings.empty());
    }
}

TEST(Points, SeamsTooDenseAreSaidAndBreachedLeast) {
    Job job = madeTop(Seams::sashing, 40_in, 40_in, 2_in);
    job.top.grid->innerX = {};
    job.top.grid->innerY = {};
    for (Length at = 0.75_in; at < 12_in; at += 0.75_in)
        job.top.grid->innerX.push_back(
            at); // strips of 3/4 in: half an inch on both sides never fits
    const PointsPlan plan = planPoints(job);
    expectRules(job, plan);
    ASSERT_TRUE(says(plan, "/basting/clear"));
    // A pin along a strip's middle is 3/8 in from both seams; 1/8 in is lost by the raster.
    const Measured m = measured(job, seamsToKeepClearOf(job), plan.points);
    EXPECT_GE(m.room, 0.25 - kRounding);
    job.quilting.method = Quilting::Method::freeMotion;
    EXPECT_TRUE(planPoints(job).findings.empty());
}

TEST(Points, SamePlanOnAnyThreadWithOrWithoutMemory) {
    const Job job = madeTop(Seams::every4, 60_in, 72_in, 2_in);
    const PointsPlan plan = planPoints(job);
    PointsMemory memory;
    std::vector<PointsPlan> others(3);
    std::vector<std::jthread> threads;
    for (PointsPlan& other : others)
        threads.emplace_back([&] { other = planPoints(job, {.memory = &memory}); });
    threads.clear();
    others.push_back(planPoints(job, {.memory = &memory}));
    for (const PointsPlan& other : others) {
        EXPECT_EQ(other.points, plan.points);
        EXPECT_EQ(other.rows, plan.rows);
        EXPECT_EQ(other.findings, plan.findings);
    }
}

TEST(Points, AStopLeavesACompletePlan) {
    std::stop_source stop;
    stop.request_stop();
    for (const auto layout :
         {Basting::Layout::rows, Basting::Layout::blocks, Basting::Layout::fewest})
        for (const Seams seams : {Seams::none, Seams::triangles4}) {
            const Job job = madeTop(seams, 60_in, 72_in, 2_in);
            expectRules(job, planPoints(job, {.layout = layout}, stop.get_token()));
        }
}

TEST(Points, MoreEffortOrFreedomNeverNeedsMore) {
    const Job job = madeTop(Seams::triangles6, 40_in, 52_in, 2_in);
    const auto count = [&](PointsOptions o) { return planPoints(job, o).points.size(); };
    EXPECT_LE(count({.effort = 1}), count({.effort = 0}));
    EXPECT_LE(count({.effort = 1, .layout = Basting::Layout::fewest}), count({.effort = 1}));
}

} // namespace
} // namespace bastewright
