#include "planners/batting/batting.h"
#include "planners/batting/pack_size.h"
#include "unit/batting/joining.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <random>
#include <tuple>

/// What is bought for a batting, against every pack, every pair of packs and every roll.
namespace bastewright {
namespace {

struct Way {
    int joins;
    double strip;
    bool unjoinedRoll;
    double area;
    auto rank(bool savings) const {
        return std::tuple(savings ? area : 0.0, joins, strip, unjoinedRoll, area);
    }
};

/// Every way by plain sums, in inches.
std::vector<Way> everyWay(const Batting& b, double width, double length) {
    std::vector<Way> out;
    const double keep = 1 - b.shrinkPercent / 100, overlap = b.overlap.in(), trim = b.trim.in();
    const auto sold = [&](double cut) { return std::ceil(cut / keep / 4.5 - 1e-9) * 4.5; };
    for (const batting::PackSize& p : batting::kPackSizes) {
        const double w = p.size.width.in() * keep, l = p.size.length.in() * keep;
        if ((width <= w && length <= l) || (width <= l && length <= w))
            out.push_back({0, 0, false, p.size.width.in() * p.size.length.in()});
    }
    const bool packHolds = !out.empty();
    for (const bool along : {true, false}) {
        const double across = along ? width : length, height = along ? length : width;
        for (const batting::PackSize& p : batting::kPackSizes) {
            const double w = p.size.width.in() * keep - 2 * trim;
            const double l = p.size.length.in() * keep - 2 * trim;
            for (const auto& [first, second] :
                 {std::pair{w, w}, std::pair{w, l}, std::pair{l, l}}) {
                const double tallFirst = first == w ? l : w, tallSecond = second == w ? l : w;
                if (!packHolds && first + second - overlap >= across && tallFirst >= height &&
                    tallSecond >= height)
                    out.push_back({1, height, false, 2 * p.size.width.in() * p.size.length.in()});
            }
        }
        for (const Length roll : b.rolls) {
            const double w = roll.in() * keep;
            int n = 1;
            while (n * w - (n - 1) * overlap < across)
                ++n;
            out.push_back({n - 1, (n - 1) * height, n == 1, roll.in() * sold(n * height)});
            if (n == 1 || !b.pieceStrip)
                continue;
            // One length fewer; a strip of at least 6 in, of as few lengths as reach.
            const int whole = n - 1;
            const double shown =
                std::max(6.0, across - (whole * w - whole * overlap + overlap / 2));
            int blocks = 1;
            while (blocks * w - (blocks - 1) * overlap < height)
                ++blocks;
            out.push_back({whole + blocks - 1, whole * height + (blocks - 1) * shown, false,
                           roll.in() * sold(whole * height + blocks * (shown + overlap / 2))});
        }
    }
    return out;
}

TEST(NewBatting, IsTheBestOfEveryWay) {
    for (std::uint64_t seed = 1; seed <= 600; ++seed) {
        std::mt19937_64 random{seed};
        const auto below = [&](std::uint64_t n) { return std::int64_t(random() % n); };
        Job job;
        Batting& b = job.batting;
        if (below(2) == 0) {
            b.rolls.clear();
            for (auto n = 1 + below(3); n > 0; --n)
                b.rolls.push_back(Length::inches(50 + below(80)));
        }
        b.shrinkPercent = below(3) == 0 ? double(below(6)) : 0;
        b.overlap = Length::inch64ths(32 * below(5));
        b.pieceStrip = below(2) == 0;
        const Size needed{Length::inches(40 + below(120)), Length::inches(40 + below(120))};
        const BattingOutcome out = planBatting(job, needed);
        ASSERT_TRUE(out.plan) << "seed " << seed;
        EXPECT_TRUE(out.findings.empty()) << "seed " << seed << ": " << out.findings.front().text;
        ASSERT_THAT(joining::faults(job, needed, *out.plan), testing::IsEmpty()) << "seed " << seed;
        EXPECT_EQ(joining::fourCorners(*out.plan), 0) << "seed " << seed;
        const std::vector<Way> all = everyWay(b, needed.width.in(), needed.length.in());
        const Way best =
            std::ranges::min(all, {}, [&](const Way& w) { return w.rank(b.pieceStrip); });
        double area = 0;
        for (const BattingPurchase& p : out.plan->buy)
            area += p.width.in() * p.length.in();
        ASSERT_NEAR(area, best.area, 1e-6)
            << "seed " << seed << ": " << needed.width.in() << " × " << needed.length.in() << ", "
            << out.plan->alternatives.front().text;
        EXPECT_EQ(int(out.plan->joins.size()), best.joins) << "seed " << seed;
        EXPECT_NEAR(out.plan->strip.in(), best.strip, 1e-6) << "seed " << seed;
    }
}

TEST(NewBatting, MoreRollsNeverTakeMoreJoins) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        std::mt19937_64 random{seed};
        Job job;
        job.batting.rolls = {Length::inches(50 + std::int64_t(random() % 60))};
        const Size needed{Length::inches(60 + std::int64_t(random() % 110)),
                          Length::inches(60 + std::int64_t(random() % 110))};
        const BattingOutcome before = planBatting(job, needed);
        job.batting.rolls.push_back(Length::inches(50 + std::int64_t(random() % 90)));
        const BattingOutcome after = planBatting(job, needed);
        ASSERT_TRUE(before.plan && after.plan) << "seed " << seed;
        EXPECT_LE(after.plan->joins.size(), before.plan->joins.size()) << "seed " << seed;
    }
}

} // namespace
} // namespace bastewright
