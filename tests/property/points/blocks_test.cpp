#include "planners/points/block_figure.h"
#include "property/points/points_oracle.h"
#include "ways/point_words.h"

#include <gtest/gtest.h>

#include <bitset>
#include <cmath>

namespace bastewright {
namespace {

Job topOfBlocks(double block, double sashing, double spacing) {
    Job job;
    job.quilting.method = Quilting::Method::inTheDitch;
    BlockGrid g;
    g.columns = 4;
    g.rows = 5;
    g.block = Length::nearestInches(block);
    g.sashing = Length::nearestInches(sashing);
    g.border = 3_in;
    job.top.grid = g;
    job.top.width = {g.width()};
    job.top.length = {g.length()};
    job.basting.spacing = Length::nearestInches(spacing);
    job.basting.layout = Basting::Layout::blocks;
    return job;
}

struct Place {
    double x, y;
};

/// A second implementation, written from the rule alone: every choice of at most three kinds of
/// places in a block, with and without points in the sashing, that has fewer points than `count`
/// leaves a place of the cell bare: one of a raster, or one found by halving squares.
class Refuter {
public:
    Refuter(const Job& job, int count)
        : job_{job}
        , seams_{seamsToKeepClearOf(job)}
        , count_{count}
        , block_{job.top.grid->block.in()}
        , sashing_{job.top.grid->sashing.in()}
        , pitch_{block_ + sashing_}
        , reach_{job.basting.spacing.in() / std::sqrt(2.0) + 0.125} {
        const Point first = job.top.grid->firstBlock(topRect(job.top));
        middle_ = {first.x.in() + 2 * pitch_ + block_ / 2, first.y.in() + 2 * pitch_ + block_ / 2};
        for (int i = 0; i < kSide; ++i)
            for (int j = 0; j < kSide; ++j)
                places_.push_back({pitch_ * (i + 0.37) / kSide, pitch_ * (j + 0.61) / kSide});
    }

    bool noneWithFewer() {
        std::vector<Kind> kinds;
        const double coarse =
            std::max(1.0, std::round(job_.basting.spacing.in() / 8 / 0.125)) * 0.125;
        for (int i = 0; i * coarse / 2 <= block_ / 2 + 1e-9; ++i) {
            const double a = i * coarse / 2;
            add(kinds, {{a, a}, {-a, a}, {a, -a}, {-a, -a}});
            if (i > 0)
                add(kinds, {{a, 0}, {-a, 0}, {0, a}, {0, -a}});
        }
        for (int i = 1; i * coarse <= block_ / 2 + 1e-9; ++i)
            for (int k = 1; k < i; ++k) {
                const double a = i * coarse, b = k * coarse;
                add(kinds,
                    {{a, b}, {-a, b}, {a, -b}, {-a, -b}, {b, a}, {-b, a}, {b, -a}, {-b, -a}});
            }
        std::vector<Kind> sashings{{0, {}, {}}};
        if (sashing_ > 0)
            for (int n = 0; n <= 3; ++n)
                for (const bool post : {false, true}) {
                    std::vector<Place> all;
                    const double m = (block_ + sashing_) / 2;
                    for (int i = 0; i < n; ++i) {
                        const double t = -block_ / 2 + block_ * (2 * i + 1) / (2 * n);
                        all.push_back({m, t});
                        all.push_back({t, m});
                    }
                    if (post)
                        all.push_back({m, m});
                    if (!all.empty())
                        add(sashings, all);
                }
        for (const Kind& s : sashings)
            for (std::size_t a = 0; a < kinds.size(); ++a) {
                if (covers({&s, &kinds[a]}))
                    return false;
                for (std::size_t b = a + 1; b < kinds.size(); ++b) {
                    if (s.count + kinds[a].count + kinds[b].count >= count_)
                        continue;
                    if (covers({&s, &kinds[a], &kinds[b]}))
                        return false;
                    for (std::size_t c = b + 1; c < kinds.size(); ++c)
                        if (s.count + kinds[a].count + kinds[b].count + kinds[c].count < count_ &&
                            covers({&s, &kinds[a], &kinds[b], &kinds[c]}))
                            return false;
                }
            }
        return true;
    }

private:
    static constexpr int kSide = 48;
    using Held = std::bitset<kSide * kSide>;
    struct Kind {
        int count;
        Held held;
        std::vector<Place> at;
    };

    double around(double d) const {
        d = std::abs(std::remainder(d, pitch_));
        return d;
    }
    void add(std::vector<Kind>& to, const std::vector<Place>& all) const {
        Kind kind{0, {}, {}};
        for (const Place p : all) {
            bool known = false;
            for (const Place q : kind.at)
                known |= std::hypot(p.x - q.x, p.y - q.y) < 1e-9;
            if (known)
                continue;
            bool room = false;
            for (const int angle : {0, 90, 45, 135, 30, 60, 120, 150})
                room |= roomOf(job_, seams_,
                               {{Length::nearestInches(middle_.x + p.x),
                                 Length::nearestInches(middle_.y + p.y)},
                                angle}) >= job_.basting.clear.in() - 1e-6;
            if (!room)
                return;
            kind.at.push_back(p);
        }
        for (std::size_t i = 0; i < kind.at.size(); ++i)
            for (std::size_t k = i + 1; k < kind.at.size(); ++k)
                if (near(kind.at[i], kind.at[k]))
                    return;
        kind.count = int(kind.at.size());
        for (std::size_t i = 0; i < places_.size(); ++i)
            for (const Place p : kind.at)
                if (std::hypot(around(p.x - places_[i].x), around(p.y - places_[i].y)) <= reach_)
                    kind.held.set(i);
        to.push_back(std::move(kind));
    }
    bool near(Place a, Place b) const {
        return std::hypot(around(a.x - b.x), around(a.y - b.y)) <
               job_.basting.spacing.in() / 2 - 1e-6;
    }
    bool covers(std::initializer_list<const Kind*> kinds) const {
        int n = 0;
        Held held;
        for (const Kind* k : kinds) {
            n += k->count;
            held |= k->held;
        }
        if (n >= count_ || !held.all())
            return false;
        std::vector<Place> all;
        for (const Kind* k : kinds)
            all.insert(all.end(), k->at.begin(), k->at.end());
        if (isBare(all, pitch_ / 2, pitch_ / 2, pitch_ / 2))
            return false;
        for (const Kind* a : kinds)
            for (const Kind* b : kinds)
                for (const Place p : a->at)
                    for (const Place q : b->at)
                        if (a < b && near(p, q))
                            return false;
        return true;
    }

    /// True where a square of the cell has a place out of reach, looked for by halving: no place in
    /// it is farther from its nearest point than its middle is by half a diagonal.
    bool isBare(const std::vector<Place>& all, double x, double y, double half) const {
        double nearest = 1e9;
        for (const Place p : all)
            nearest = std::min(nearest, std::hypot(around(p.x - x), around(p.y - y)));
        if (nearest > reach_ - kLess)
            return true;
        if (nearest + half * std::sqrt(2.0) <= reach_ - kLess || half < 1e-3)
            return false;
        for (const double dx : {-half / 2, half / 2})
            for (const double dy : {-half / 2, half / 2})
                if (isBare(all, x + dx, y + dy, half / 2))
                    return true;
        return false;
    }

    static constexpr double kLess = 1e-3; // inches: figures that cover by less are left to rounding
    const Job& job_;
    std::vector<Segment> seams_;
    int count_;
    double block_, sashing_, pitch_, reach_;
    Place middle_{};
    std::vector<Place> places_;
};

class ByTheBlocks : public testing::TestWithParam<double> {};

// Blocks of 6 to 14 in by halves, sashing of 0, 1, 1 1/2 and 2 in, spacings of 3, 4 and 5 in.
TEST_P(ByTheBlocks, IsTheLeastOfItsKindAndCoversTheWholeTop) {
    const double sashing = GetParam();
    int found = 0;
    for (const double spacing : {3.0, 4.0, 5.0})
        for (double block = 6; block <= 14; block += 0.5) {
            SCOPED_TRACE(std::to_string(block) + " in, " + std::to_string(sashing) +
                         " in sashing, every " + std::to_string(spacing) + " in");
            const Job job = topOfBlocks(block, sashing, spacing);
            const auto cell = points::blockCellOf(job);
            ASSERT_TRUE(cell);
            // What by the blocks is offered for, and a little beyond.
            const int below =
                1 + int(1.45 * leastPoints(cell->pitch() * cell->pitch(), job.basting.spacing));
            const auto figure = points::leastFigure(points::rulesFor(job), *cell, below);
            if (figure) {
                EXPECT_TRUE((Refuter{job, figure->count}.noneWithFewer()));
                ++found;
            }
            const PointsPlan plan = planPoints(job);
            const Measured m = measured(job, seamsToKeepClearOf(job), plan.points);
            EXPECT_LE(m.farthest, spacing / std::sqrt(2.0) + 0.125 + 1e-3);
            EXPECT_GE(m.closest, spacing / 2 - 1e-5);
            EXPECT_GE(m.room, job.basting.clear.in() - 1e-5);
            for (const Finding& f : plan.findings)
                EXPECT_EQ(f.level, Finding::Level::note) << f.text;
            if (plan.blocks)
                EXPECT_LE(double(plan.points.size()), 1.4 * plan.bound + 1);
            else
                EXPECT_TRUE(plan.rows);
        }
    EXPECT_GE(found, 5);
}
INSTANTIATE_TEST_SUITE_P(Points, ByTheBlocks, testing::Values(0.0, 1.0, 1.5, 2.0));

TEST(ByTheBlocks, IsSaidInABreath) {
    const Job job = topOfBlocks(9, 2, 4);
    const PointsPlan plan = planPoints(job);
    ASSERT_TRUE(plan.blocks);
    // A die's five and one in every strip: 7 in a block with its sashing.
    EXPECT_EQ(plan.blocks->inBlock.size() + 2u * std::size_t(plan.blocks->perStrip) +
                  (plan.blocks->posts ? 1 : 0),
              7u);
    std::printf("%s\n", blocksSentence(*plan.blocks, job).english().c_str());
}

} // namespace
} // namespace bastewright
