#include "planners/points/holes.h"
#include "property/points/made_tops.h"
#include "property/points/points_oracle.h"
#include "support/random.h"
#include "ways/point_words.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace bastewright {
namespace {

constexpr double kRounding = 1e-5; // inches; positions are whole nanometres
constexpr Seams kAllSeams[] = {Seams::none,   Seams::sashing,    Seams::every4,
                               Seams::every3, Seams::triangles6, Seams::triangles4};

Job harbourLights() {
    Job job;
    job.top.width = {88_in};
    job.top.length = {112_in};
    job.quilting.method = Quilting::Method::inTheDitch;
    BlockGrid g;
    g.columns = 7;
    g.rows = 9;
    g.block = 10_in;
    g.sashing = 2_in;
    g.border = 3_in;
    job.top.grid = g;
    return job;
}

PointsPlan inRows(const Job& job) {
    return planPoints(job, {.layout = Basting::Layout::rows});
}

double reach(const Job& job) {
    return job.basting.spacing.in() / std::sqrt(2.0) + 0.125;
}

/// What somebody has on the table: the two ribbons, and what the sentences say. The top lies before
/// them, so that they see its seams and edges.
struct Told {
    PinRows::Along along;
    Ribbons ribbons;
    bool beside = false;   ///< 'Where a pin at its mark would be nearer than …'
    bool leaveOut = false; ///< 'A mark is left out where its pin would come nearer'
    std::vector<Point> singles;
};

Told toldBy(const PinRows& rows, const Job& job) {
    Told out{rows.along, rows.ribbons, false, false, {}};
    for (const Sentence& s : rowsDetails(rows, job)) {
        const std::string text = s.english();
        out.beside |= text.starts_with("Where a pin at its mark would be nearer");
        out.leaveOut |= text.starts_with("A mark is left out");
        if (text.find(" single pin") == std::string::npos)
            continue;
        // "2 single pins more: 3 1/2 in from the left and 40 in from the head and …"
        const Sentence& places = s.values().back();
        const std::function<void(const Sentence&)> read = [&](const Sentence& part) {
            if (part.text() == "%1 from the left and %2 from the head") {
                const auto x = parseLength(part.values()[0].english(), job.unit);
                const auto y = parseLength(part.values()[1].english(), job.unit);
                ASSERT_TRUE(x && y);
                out.singles.push_back({*x, *y});
                return;
            }
            for (const Sentence& inner : part.values())
                read(inner);
        };
        read(places);
    }
    return out;
}

/// Lays the pins again as the ribbons and the sentences say, without the plan and without any of
/// the planner's code.
class Hands {
public:
    Hands(const Job& job, Told told)
        : job_{job}
        , seams_{seamsToKeepClearOf(job)}
        , told_{std::move(told)} {}

    std::vector<PlacedPoint> lay() {
        for (std::size_t row = 0; row < told_.ribbons.side.size(); ++row)
            for (const Length mark : row % 2 == 0 ? told_.ribbons.odd : told_.ribbons.even) {
                const Length side = told_.ribbons.side[row];
                put(told_.along == PinRows::Along::width ? Point{mark, side} : Point{side, mark});
            }
        for (const Point& at : told_.singles)
            if (const auto pin = fits(at))
                laid_.push_back(*pin);
            else
                laid_.push_back({at, 0});
        return laid_;
    }

private:
    std::optional<PlacedPoint> fits(Point at) const {
        for (const int angle : {0, 90, 45, 135, 30, 60, 120, 150}) {
            const PlacedPoint pin{at, angle};
            if (edgeRoomOf(job_, pin) >= job_.basting.edge.in() - kRounding &&
                roomOf(job_, seams_, pin) >= job_.basting.clear.in() - kRounding)
                return pin;
        }
        return {};
    }
    void put(Point mark) {
        std::optional<PlacedPoint> best = fits(mark);
        if (!best) {
            EXPECT_TRUE(told_.beside);
            double nearest = 1e9;
            // From left to right, and from the head: of places equally near the first stays.
            for (int i = -20; i <= 20; ++i)
                for (int j = -20; j <= 20; ++j) {
                    const double away = std::hypot(i, j) / 8;
                    const Point at{mark.x + i * Length::inch64ths(8),
                                   mark.y + j * Length::inch64ths(8)};
                    if (away >= nearest - 1e-9)
                        continue;
                    if (const auto pin = fits(at)) {
                        nearest = away;
                        best = pin;
                    }
                }
        }
        ASSERT_TRUE(best);
        for (const PlacedPoint& p : laid_)
            if (std::hypot((p.at.x - best->at.x).in(), (p.at.y - best->at.y).in()) <
                job_.basting.spacing.in() / 2 - kRounding) {
                EXPECT_TRUE(told_.leaveOut);
                return;
            }
        laid_.push_back(*best);
    }

    const Job& job_;
    std::vector<Segment> seams_;
    Told told_;
    std::vector<PlacedPoint> laid_;
};

void expectLaidByTheSentence(const Job& job) {
    const PointsPlan plan = inRows(job);
    ASSERT_TRUE(plan.rows);
    const std::vector<PlacedPoint> laid = Hands{job, toldBy(*plan.rows, job)}.lay();
    const Measured m = measured(job, seamsToKeepClearOf(job), laid);
    EXPECT_LE(m.farthest, reach(job));
    EXPECT_GE(m.closest, job.basting.spacing.in() / 2 - kRounding);
    EXPECT_GE(m.room, job.basting.clear.in() - kRounding);
    EXPECT_GE(m.edge, job.basting.edge.in() - kRounding);
    EXPECT_EQ(laid.size(), plan.points.size());
}

class Sentences : public testing::TestWithParam<Seams> {};

TEST_P(Sentences, AndRibbonsPlaceThePinsAgain) {
    for (const Length border : {2_in, 0_in}) {
        SCOPED_TRACE(format(border, Unit::inch));
        expectLaidByTheSentence(madeTop(GetParam(), 60_in, 72_in, border));
    }
}
INSTANTIATE_TEST_SUITE_P(Rows, Sentences, testing::ValuesIn(kAllSeams));

TEST(HarbourLights, IsLaidByItsSentence) {
    expectLaidByTheSentence(harbourLights());
}

// Every pin off by as much as the plan allows, in any direction, a thousand times: no hole.
TEST(Slack, HoldsForHandsThatAreOff) {
    int shaken = 0;
    for (const Job& job : {harbourLights(), madeTop(Seams::none, 60_in, 72_in, 2_in),
                           madeTop(Seams::every4, 60_in, 72_in, 2_in),
                           madeTop(Seams::triangles4, 60_in, 72_in, 2_in)}) {
        const PointsPlan plan = inRows(job);
        ASSERT_TRUE(plan.rows);
        const double slack = plan.rows->slack.in();
        Random r{17};
        const Rect top = topRect(job.top);
        for (int time = 0; slack > 0 && time < 1000; ++time) {
            std::vector<PlacedPoint> moved = plan.points;
            points::Spots spots;
            for (PlacedPoint& p : moved) {
                const double turn = r.real(0, 2 * std::numbers::pi);
                const double off = time % 2 == 0 ? slack : slack * std::sqrt(r.real(0, 1));
                p.at.x += Length::nearestInches(off * std::cos(turn));
                p.at.y += Length::nearestInches(off * std::sin(turn));
                spots.push_back({p.at.x.in(), p.at.y.in()});
            }
            ASSERT_TRUE(
                points::holes(spots, {0, 0, top.width().in(), top.length().in()}, reach(job) + 1e-5)
                    .empty());
            if (time < 3) {
                EXPECT_LE(measured(job, {}, moved).farthest, reach(job) + 1e-5);
            }
        }
        shaken += slack > 0 ? 1 : 0;
    }
    EXPECT_GE(shaken, 1);
}

// A row's pins and marks are found again from where they lie.
TEST(RowMarks, NameEveryPinOfTheRows) {
    const PointsPlan plan = inRows(madeTop(Seams::triangles6, 60_in, 72_in, 2_in));
    ASSERT_TRUE(plan.rows);
    const RowMarks marks{*plan.rows};
    std::size_t inRow = 0;
    for (const PlacedPoint& p : plan.points) {
        const auto mark = marks.of(p.at);
        if (!mark) {
            EXPECT_NE(std::ranges::find(plan.rows->singles, p.at), plan.rows->singles.end());
            continue;
        }
        ++inRow;
        const auto line = std::size_t(mark->row) - 1;
        const Length place = marksOf(*plan.rows, line)[std::size_t(mark->mark) - 1];
        const Point at = placeIn(plan.rows->along, place, plan.rows->lines[line].at);
        EXPECT_LE(std::hypot((at.x - p.at.x).in(), (at.y - p.at.y).in()), 0.6 * 4);
    }
    EXPECT_EQ(inRow + plan.rows->singles.size(), plan.points.size());
}

TEST(Rows, RunAsIsAskedFor) {
    for (const auto along : {PinRows::Along::width, PinRows::Along::length}) {
        const PointsPlan plan = planPoints(madeTop(Seams::every4, 60_in, 72_in, 2_in),
                                           {.layout = Basting::Layout::rows, .along = along});
        ASSERT_TRUE(plan.rows);
        EXPECT_EQ(plan.rows->along, along);
    }
}

// Marks are such as a tape has: eighths of an inch, quarters of a centimetre.
TEST(Rows, StandAtMarksOfATape) {
    for (const Unit unit : {Unit::inch, Unit::centimetre}) {
        Job job = madeTop(Seams::sashing, 60_in, 72_in, 2_in);
        job.unit = unit;
        const PointsPlan plan = inRows(job);
        ASSERT_TRUE(plan.rows);
        const std::int64_t step = unit == Unit::inch ? Length::inch64ths(8).nm() : 2'500'000;
        for (const auto* ribbon :
             {&plan.rows->ribbons.odd, &plan.rows->ribbons.even, &plan.rows->ribbons.side})
            for (const Length at : *ribbon)
                EXPECT_EQ(at.nm() % step, 0);
    }
}

// Seams that lean across the top, where the polish shifts marks and rows most: none of them, and no
// pin, comes nearer to the edge than is asked.
TEST(Rows, AndTheirPinsKeepTheEdgeAmongLeaningSeams) {
    const auto keepsTheEdge = [](const Job& job) {
        const PointsPlan plan = inRows(job);
        ASSERT_TRUE(plan.rows);
        const bool wide = plan.rows->along == PinRows::Along::width;
        const Rect top = topRect(job.top);
        const Length edge = job.basting.edge, across = wide ? top.width() : top.length(),
                     down = wide ? top.length() : top.width();
        const auto inside = [&](const std::vector<Length>& places, Length size) {
            return std::ranges::all_of(places,
                                       [&](Length at) { return at >= edge && at <= size - edge; });
        };
        EXPECT_TRUE(inside(plan.rows->ribbons.odd, across));
        EXPECT_TRUE(inside(plan.rows->ribbons.even, across));
        EXPECT_TRUE(inside(plan.rows->ribbons.side, down));
        for (const PlacedPoint& p : plan.points)
            EXPECT_GE(edgeRoomOf(job, p), edge.in() - kRounding)
                << format(p.at.x, job.unit) << ", " << format(p.at.y, job.unit);
        EXPECT_TRUE(std::ranges::none_of(
            plan.findings, [](const Finding& f) { return f.kind == Finding::Kind::pinsNearEdge; }));
    };
    Job job;
    job.top.width = {43.75_in};
    job.top.length = {63_in};
    job.quilting.method = Quilting::Method::inTheDitch;
    job.basting.spacing = 3_in;
    job.top.seams = {{{38_in, 0_in}, {15_in, 63_in}},
                     {{26_in, 0_in}, {14_in, 63_in}},
                     {{41_in, 0_in}, {26_in, 63_in}}};
    keepsTheEdge(job);
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        SCOPED_TRACE(seed);
        Random r{seed};
        const int width = r.count(24, 48);
        job.top.width = {Length::inches(width)};
        job.top.length = {Length::inches(r.count(24, 60))};
        job.top.seams.clear();
        for (int i = r.count(2, 8); i > 0; --i)
            job.top.seams.push_back({{Length::inches(r.count(0, width)), 0_in},
                                     {Length::inches(r.count(0, width)), job.top.length.front()}});
        keepsTheEdge(job);
    }
}

TEST(Rows, AreSaidInAPersonsOwnMeasure) {
    Job job = harbourLights();
    job.basting.measure = OwnMeasure{"fist", 3.5_in};
    const PointsPlan plan = inRows(job);
    ASSERT_TRUE(plan.rows);
    EXPECT_NE(rowsSentence(*plan.rows, job).english().find("fist"), std::string::npos);
}

} // namespace
} // namespace bastewright
