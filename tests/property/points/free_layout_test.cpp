#include "property/points/made_tops.h"
#include "property/points/points_oracle.h"
#include "support/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <ostream>
#include <thread>

namespace bastewright {
namespace {

constexpr double kRounding = 1e-5; // inches; positions are whole nanometres

Job plainTop(Length width, Length length) {
    Job job;
    job.top.width = {width};
    job.top.length = {length};
    job.quilting.method = Quilting::Method::inTheDitch;
    return job;
}

Point at(double x, double y) {
    return {Length::nearestInches(x), Length::nearestInches(y)};
}

/// A closed line of straight pieces, as a curve is given.
void addRing(Job& job, double x, double y, double radius, int pieces) {
    const auto on = [&](int i) {
        const double turn = 2 * std::numbers::pi * i / pieces;
        return at(x + radius * std::cos(turn), y + radius * std::sin(turn));
    };
    for (int i = 0; i < pieces; ++i)
        job.top.seams.push_back({on(i), on((i + 1) % pieces)});
}

/// A wavy line across the top, as along an appliqué vine.
void addWave(Job& job, double y, double height, double length) {
    const double width = topRect(job.top).width().in();
    const auto on = [&](double x) {
        return at(x, y + height * std::sin(2 * std::numbers::pi * x / length));
    };
    for (double x = 0; x < width - 1e-9; x += width / 48)
        job.top.seams.push_back({on(x), on(x + width / 48)});
}

/// Straight seams at an angle, `apart` from each other, from edge to edge.
void addDiagonals(Job& job, double apart, bool bothWays) {
    const Rect t = topRect(job.top);
    const double w = t.width().in(), h = t.length().in(), step = apart * std::numbers::sqrt2;
    for (double c = step / 2; c < w + h; c += step) {
        // x + y = c, and its mirror image.
        const double x0 = std::max(0.0, c - h), x1 = std::min(w, c);
        job.top.seams.push_back({at(x0, c - x0), at(x1, c - x1)});
        if (bothWays)
            job.top.seams.push_back({at(w - x0, c - x0), at(w - x1, c - x1)});
    }
}

double ratioToKershner(const Job& job, const PointsPlan& plan) {
    const double s = job.basting.spacing.in();
    return static_cast<double>(plan.points.size()) * s * s / 2 * 1.5 * std::sqrt(3.0) /
           areaSquareInches(topRect(job.top));
}

void expectEveryRule(const Job& job, const PointsPlan& plan) {
    EXPECT_TRUE(plan.findings.empty());
    const Measured m = measured(job, seamsToKeepClearOf(job), plan.points);
    const double s = job.basting.spacing.in();
    EXPECT_LE(m.farthest, s / std::sqrt(2.0) + 0.125);
    EXPECT_GE(m.closest, s / 2 - kRounding);
    EXPECT_GE(m.room, job.basting.clear.in() - kRounding);
    EXPECT_GE(m.edge, job.basting.edge.in() - kRounding);
}

struct Top {
    const char* name;
    double most; ///< ratio to Kershner's bound
    void (*draw)(Job&);
};

class SeamsAnywhere : public testing::TestWithParam<Top> {};

TEST_P(SeamsAnywhere, KeepEveryRuleWithFewPins) {
    Job job = plainTop(60_in, 72_in);
    GetParam().draw(job);
    const PointsPlan plan = planPoints(job, {.layout = Basting::Layout::fewest});
    expectEveryRule(job, plan);
    const double ratio = ratioToKershner(job, plan);
    const PointsPlan rows = planPoints(job, {.layout = Basting::Layout::rows});
    expectEveryRule(job, rows);
    std::printf("%s: %zu pins, %.3f of Kershner's bound; in rows %.3f, %zu of them single\n",
                GetParam().name, plan.points.size(), ratio, ratioToKershner(job, rows),
                rows.rows->singles.size());
    EXPECT_LE(ratio, GetParam().most);
    EXPECT_LE(ratioToKershner(job, rows), 1.1 * 1.25); // a small top, lines as dense as triangles
}
INSTANTIATE_TEST_SUITE_P(
    Points, SeamsAnywhere,
    testing::Values(
        Top{"one ring of 24 pieces", 1.13, [](Job& j) { addRing(j, 30, 36, 18, 24); }},
        Top{"rings within rings", 1.22,
            [](Job& j) {
                for (double radius = 4; radius <= 28; radius += 4)
                    addRing(j, 30, 36, radius, 48);
            }},
        Top{"scattered rings", 1.22,
            [](Job& j) {
                for (double x = 10; x < 60; x += 13)
                    for (double y = 9; y < 72; y += 17)
                        addRing(j, x, y + x / 7, 5, 24);
            }},
        Top{"waves", 1.13,
            [](Job& j) {
                for (double y = 9; y < 72; y += 11)
                    addWave(j, y, 2.5, 19);
            }},
        Top{"diagonals one way every 5 in", 1.13, [](Job& j) { addDiagonals(j, 5, false); }},
        Top{"diagonals both ways every 4 in", 1.22, [](Job& j) { addDiagonals(j, 4, true); }},
        Top{"diagonals both ways every 7 in", 1.13, [](Job& j) { addDiagonals(j, 7, true); }}),
    [](const auto& one) {
        std::string name = one.param.name;
        std::replace(name.begin(), name.end(), ' ', '_');
        return name;
    });

struct Target {
    Seams seams;
    double most;
    friend std::ostream& operator<<(std::ostream& out, const Target& t) {
        return out << name(t.seams);
    }
};

class FewestPins : public testing::TestWithParam<Target> {};

TEST_P(FewestPins, NearKershnersBound) {
    for (const Length border : {2_in, 0_in}) {
        const Job job = madeTop(GetParam().seams, 60_in, 72_in, border);
        SCOPED_TRACE(format(border, Unit::inch));
        const PointsPlan plan = planPoints(job, {.layout = Basting::Layout::fewest});
        expectEveryRule(job, plan);
        EXPECT_LE(ratioToKershner(job, plan), GetParam().most);
    }
}
INSTANTIATE_TEST_SUITE_P(Points, FewestPins,
                         testing::Values(Target{Seams::none, 1.13}, Target{Seams::sashing, 1.13},
                                         Target{Seams::every4, 1.13}, Target{Seams::every3, 1.22},
                                         Target{Seams::triangles6, 1.22},
                                         Target{Seams::triangles4, 1.22}));

/// Curves and straight lines anywhere, dense here and there.
Job randomLines(Random& r) {
    Job job = plainTop(r.length(14_in, 36_in), r.length(14_in, 36_in));
    job.basting.spacing = Length::inch64ths(8 * r.count(20, 48));
    job.basting.clear = Length::inch64ths(8 * r.count(0, 5));
    const double w = topRect(job.top).width().in(), h = topRect(job.top).length().in();
    for (int i = r.count(0, 3); i > 0; --i)
        addRing(job, r.real(0, w), r.real(0, h), r.real(1, 10), r.count(3, 32));
    for (int i = r.count(0, 2); i > 0; --i)
        addWave(job, r.real(0, h), r.real(0, 4), r.real(5, 40));
    if (r.chance(40))
        addDiagonals(job, r.real(3, 12), r.chance(50));
    return job;
}

class RandomLines : public testing::TestWithParam<int> {};

TEST_P(RandomLines, KeepEveryRuleOrSayWhichNot) {
    Random r{static_cast<std::uint64_t>(GetParam())};
    const Job job = randomLines(r);
    SCOPED_TRACE("seed " + std::to_string(GetParam()));
    const PointsPlan plan = planPoints(job);
    if (plan.findings.empty())
        return expectEveryRule(job, plan);
    // What could not be kept is said; nothing else is breached.
    const auto says = [&](const char* field) {
        return std::any_of(plan.findings.begin(), plan.findings.end(),
                           [&](const Finding& f) { return f.field == field; });
    };
    const Measured m = measured(job, seamsToKeepClearOf(job), plan.points);
    const double s = job.basting.spacing.in();
    if (!says("/basting/spacing")) {
        EXPECT_LE(m.farthest, s / std::sqrt(2.0) + 0.125);
        EXPECT_GE(m.closest, s / 2 - kRounding);
    }
    if (!says("/basting/clear")) {
        EXPECT_GE(m.room, job.basting.clear.in() - kRounding);
    }
    if (!says("/basting/edge")) {
        EXPECT_GE(m.edge, job.basting.edge.in() - kRounding);
    }
}
INSTANTIATE_TEST_SUITE_P(Points, RandomLines, testing::Range(1, 25));

TEST(FreePlacement, IsTheSameOnTwoThreads) {
    const Job job = madeTop(Seams::triangles6, 40_in, 52_in, 2_in);
    PointsPlan first, second;
    {
        std::jthread a{[&] { first = planPoints(job, {.layout = Basting::Layout::fewest}); }};
        std::jthread b{[&] { second = planPoints(job, {.layout = Basting::Layout::fewest}); }};
    }
    EXPECT_EQ(first.points, second.points);
    EXPECT_EQ(first.findings, second.findings);
}

TEST(FreePlacement, StoppedAnywhereIsComplete) {
    const Job job = madeTop(Seams::every3, 40_in, 52_in, 2_in);
    for (const int ms : {1, 20, 100, 300}) {
        std::stop_source stop;
        std::jthread clock{[&] {
            std::this_thread::sleep_for(std::chrono::milliseconds(ms));
            stop.request_stop();
        }};
        expectEveryRule(job,
                        planPoints(job, {.layout = Basting::Layout::fewest}, stop.get_token()));
    }
}

} // namespace
} // namespace bastewright
