#include "planners/backing/backing.h"
#include "unit/backing/sewing.h"

#include <gmock/gmock.h>

#include <random>

/// Any cloth, any rules: what is planned can be cut and sewn, and more cloth never costs more.
namespace bastewright {
namespace {

using testing::IsEmpty;

struct Made {
    Job job;
    Size needed;
    BackingOptions options;
};

Made anyBacking(std::uint64_t seed) {
    std::mt19937_64 random{seed};
    const auto below = [&](std::uint64_t n) { return std::int64_t(random() % n); };
    Made m;
    Backing& b = m.job.backing;
    if (below(4) == 0)
        m.job.unit = Unit::centimetre;
    b.seam = Length::inch64ths(16 * below(4));
    b.shrinkPercent = below(3) == 0 ? double(below(60)) / 10 : 0;
    b.squaring = Length::inch64ths(64 * below(5));
    b.repeat = below(4) == 0 ? Length::inches(4 + below(24)) : Length{};
    b.oneWay = below(4) == 0;
    b.column = below(3) != 0;
    b.centreSeam = below(4) == 0;
    const int n = 1 + int(below(4));
    for (int i = 0; i < n; ++i)
        b.fabrics.push_back({.name = std::string(1, char('a' + i)),
                             .usableWidth = Length::inch64ths(16 * (4 * 30 + below(300))),
                             .onHand = below(2) ? Length::inches(below(200)) : Length{},
                             .buyable = below(3) != 0,
                             .price = below(2) ? double(below(20)) : 0});
    m.needed = {Length::inch64ths(8 * (8 * 40 + below(700))),
                Length::inch64ths(8 * (8 * 40 + below(800)))};
    for (int i = int(below(3)); i > 0; --i) {
        const Length x = Length::inches(below(100)), y = Length::inches(below(100));
        m.options.keepAway.push_back(below(2) ? Segment{{x, 0_in}, {x, 100_in}}
                                              : Segment{{0_in, y}, {100_in, y}});
    }
    m.options.nearestMiss = below(4) == 0;
    return m;
}

TEST(AnyBacking, CanBeCutAndSewn) {
    int planned = 0, impossible = 0;
    for (std::uint64_t seed = 1; seed <= 3000; ++seed) {
        const Made m = anyBacking(seed);
        const BackingOutcome out = planBacking(m.job, m.needed, m.options);
        if (!out.plan) {
            ++impossible;
            EXPECT_TRUE(anyStop(out.findings)) << "seed " << seed;
            EXPECT_FALSE(out.findings.back().cure.empty()) << "seed " << seed;
            continue;
        }
        ++planned;
        ASSERT_THAT(sewing::faults(m.job, m.needed, *out.plan), IsEmpty()) << "seed " << seed;
        EXPECT_EQ(out.plan, planBacking(m.job, m.needed, m.options).plan) << "seed " << seed;
    }
    EXPECT_GT(planned, 2000);
    EXPECT_GT(impossible, 50);
}

TEST(AnyBacking, MoreClothOnHandNeverBuysMore) {
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        Made m = anyBacking(seed);
        m.options.nearestMiss = false;
        for (Fabric& f : m.job.backing.fabrics)
            f.price = 0;
        const BackingOutcome before = planBacking(m.job, m.needed, m.options);
        if (!before.plan)
            continue;
        // A matching print that goes on in bought cloth loses up to a repeat.
        m.job.backing.repeat = {};
        const BackingOutcome plain = planBacking(m.job, m.needed, m.options);
        m.job.backing.fabrics[0].onHand += 30_in;
        const BackingOutcome after = planBacking(m.job, m.needed, m.options);
        ASSERT_TRUE(plain.plan && after.plan) << "seed " << seed;
        EXPECT_LE(sewing::boughtInAll(*after.plan), sewing::boughtInAll(*plain.plan))
            << "seed " << seed;
    }
}

} // namespace
} // namespace bastewright
