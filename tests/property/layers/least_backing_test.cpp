#include "planners/backing/backing.h"
#include "property/layers/backing_oracle.h"
#include "unit/backing/sewing.h"

#include <gmock/gmock.h>

#include <ostream>

/// The least bought and the way people would sew, against trying every layout on a grid of half
/// inches.
namespace bastewright {
namespace {

double costOf(const BackingAlternative& a) {
    return a.cost > 0 ? a.cost : a.bought.in();
}

/// Plans a backing and compares; `seamCost` in what the cost is in.
void compare(const Job& job, Size needed, every_way::Everything& everything, double seamCost,
             const std::string& what) {
    BackingOptions options;
    options.nearestMiss = false;
    const every_way::Least least = everything.of(needed);
    const BackingOutcome out = planBacking(job, needed, options);
    ASSERT_TRUE(out.plan) << what;
    double leastBought = 1e9;
    for (const BackingAlternative& a : out.plan->alternatives) {
        leastBought = std::min(leastBought, costOf(a));
        if (a.chosen) {
            ASSERT_NEAR(costOf(a) + a.seams * seamCost, least.score, 1e-6)
                << what << ": " << a.text;
            ASSERT_EQ(a.seams, int(out.plan->panels.size()) - 1) << what;
        }
    }
    ASSERT_NEAR(leastBought, least.bought, 1e-6) << what;
    ASSERT_THAT(sewing::faults(job, needed, *out.plan), testing::IsEmpty()) << what;
}

std::string sizeText(int w, int l) {
    return std::to_string(w) + " × " + std::to_string(l);
}

class EveryQuilt : public testing::TestWithParam<int> {};

TEST_P(EveryQuilt, BuysTheLeastAndSewsTheBest) {
    Job job;
    job.backing.fabrics = {{.name = "cloth", .usableWidth = Length::inches(GetParam())}};
    every_way::Everything everything{job};
    for (int i = 0; i < 20; ++i)
        for (int k = 0; k < 20; ++k) {
            const int w = 36 + 4 * i, l = 38 + 4 * k;
            const Size needed{Length::inches(w + 8), Length::inches(l + 8)};
            compare(job, needed, everything, 9, sizeText(w, l));
            if ((i + k) % 5 != 0)
                continue;
            for (const bool column : {false, true}) {
                Job other = job;
                other.backing.column = column;
                other.backing.oneWay = true;
                other.backing.squaring = {};
                other.backing.leastPiece = 2_in;
                other.backing.overage = 2_in;
                other.backing.centreSeam = i % 2 == 0;
                every_way::Everything looser{other};
                compare(other, needed, looser, 9, sizeText(w, l) + " one way up");
            }
        }
}

INSTANTIATE_TEST_SUITE_P(Usable, EveryQuilt, testing::Values(36, 40, 42, 44, 60, 90, 104, 108));

struct Mix {
    const char* what;
    std::vector<Fabric> fabrics;
    double seamCost; ///< nine inches, or what they cost of the cheapest fabric
    friend void PrintTo(const Mix& m, std::ostream* out) { *out << m.what; }
};
class Mixes : public testing::TestWithParam<Mix> {};

TEST_P(Mixes, BuyTheLeastAndSewTheBest) {
    Job job;
    job.backing.fabrics = GetParam().fabrics;
    every_way::Everything everything{job};
    for (int i = 0; i < 20; ++i)
        for (int k = 0; k < 20; ++k) {
            const int w = 36 + 4 * i, l = 38 + 4 * k;
            compare(job, {Length::inches(w + 8), Length::inches(l + 8)}, everything,
                    GetParam().seamCost, sizeText(w, l));
        }
}

INSTANTIATE_TEST_SUITE_P(
    Fabrics, Mixes,
    testing::Values(Mix{"some on hand, more of it to buy",
                        {{.name = "a", .usableWidth = 44_in, .onHand = 3_yd}},
                        9},
                    Mix{"a remnant beside cloth to buy",
                        {{.name = "a", .usableWidth = 42_in, .onHand = 84_in, .buyable = false},
                         {.name = "b", .usableWidth = 40_in}},
                        9},
                    Mix{"wide and narrow, by price",
                        {{.name = "wide", .usableWidth = 108_in, .price = 24},
                         {.name = "narrow", .usableWidth = 42_in, .price = 9}},
                        2.25},
                    Mix{"two remnants beside cloth to buy",
                        {{.name = "a", .usableWidth = 36_in, .onHand = 130_in, .buyable = false},
                         {.name = "b", .usableWidth = 44_in, .onHand = 95_in, .buyable = false},
                         {.name = "c", .usableWidth = 40_in}},
                        9},
                    Mix{"a short wide remnant, by price",
                        {{.name = "wide", .usableWidth = 104_in, .onHand = 60_in, .price = 20},
                         {.name = "narrow", .usableWidth = 44_in, .price = 10}},
                        2.5},
                    Mix{"three to buy",
                        {{.name = "a", .usableWidth = 36_in},
                         {.name = "b", .usableWidth = 44_in},
                         {.name = "c", .usableWidth = 60_in}},
                        9}));

TEST(LeastBacking, AColumnIsAsNarrowAsItsPlaceAllows) {
    // 122 × 119 in at 60 in usable, nothing for squaring: 7 yd. A strip of 4 in would do but for
    // the seam beside it, which has to keep off the middle; it is half an inch wider.
    Job job;
    job.backing.fabrics = {{.name = "cloth", .usableWidth = 60_in}};
    job.backing.overage = 2_in;
    job.backing.squaring = {};
    job.backing.leastPiece = 2_in;
    BackingOptions options;
    options.nearestMiss = false; // nor a strip of cloth that is not listed
    const BackingOutcome out = planBacking(job, {122_in, 119_in}, options);
    ASSERT_TRUE(out.plan);
    const auto least = std::ranges::min(out.plan->alternatives, {}, &BackingAlternative::bought);
    EXPECT_EQ(least.bought, 7_yd) << least.text;
}

} // namespace
} // namespace bastewright
