#include "planners/backing/backing.h"
#include "unit/backing/sewing.h"

#include <gmock/gmock.h>

#include <bitset>
#include <map>
#include <optional>
#include <set>
#include <tuple>

/// The least length bought, against trying every layout on a grid of half inches.
namespace bastewright {
namespace {

constexpr int kSeam = 1; // half inches: the usual 1/2 in
constexpr std::int64_t kEighthYard = Length::inch64ths(288).nm();
constexpr std::int64_t kHalf = Length::kInch / 2;

/// One strip: how wide it can be cut.
using Strips = std::vector<int>;

/// Can strips in this order make the width, each at least 2 in, no seam within 2 in of the middle?
bool canBeSewn(const Strips& strips, int total) {
    using Places = std::bitset<700>;
    Places allowed;
    for (int x = 0; x <= total; ++x)
        allowed[std::size_t(x)] = std::abs(2 * x - total) >= 2 * 4;
    Places at;
    at[0] = true;
    for (std::size_t i = 0; i < strips.size(); ++i) {
        const int sides = (i > 0) + (i + 1 < strips.size());
        const int most = strips[i] - sides * kSeam;
        Places next;
        for (int w = std::min(4, most); w <= most; ++w)
            next |= at << std::size_t(w);
        at = i + 1 < strips.size() ? next & allowed : next;
    }
    return at[std::size_t(total)];
}

bool inSomeOrder(Strips strips, int total) {
    std::ranges::sort(strips);
    do {
        if (canBeSewn(strips, total))
            return true;
    } while (std::ranges::next_permutation(strips).found);
    return false;
}

std::int64_t roundedUp(std::int64_t nm) {
    return (nm + kEighthYard - 1) / kEighthYard * kEighthYard;
}

/// Least cloth (nm) beyond whole lengths for a column of at most five blocks, of which each way is
/// tried. Half inches.
std::set<std::int64_t> columnCloth(int width, int height, int usable) {
    std::set<std::int64_t> out;
    for (int k = 1; k <= 5; ++k) {
        const int raw = height + 2 * kSeam * (k - 1);
        if (k >= 2 && width * k <= usable) {
            // The middle join of an even number has to move by a seam allowance to clear the fold.
            const std::int64_t all = (raw + (k % 2 == 0 ? 2 * kSeam : 0)) * kHalf;
            out.insert((all + k - 1) / k);
        }
        // Turned: k rows, each at most the usable width long; joins free to clear the fold?
        std::bitset<700> at;
        at[0] = true;
        for (int i = 0; i < k; ++i) {
            const int most = usable - ((i > 0) + (i + 1 < k)) * kSeam;
            std::bitset<700> next;
            for (int w = std::min(4, most); w <= most; ++w)
                next |= at << std::size_t(w);
            if (i + 1 < k)
                for (int x = 0; x <= height; ++x)
                    if (std::abs(2 * x - height) < 2 * kSeam)
                        next[std::size_t(x)] = false;
            at = next;
        }
        if (at[std::size_t(height)])
            out.insert(std::int64_t(k) * width * kHalf);
    }
    return out;
}

/// Everything in half inches; the result in nanometres.
std::int64_t leastBought(int across, int height, int usable, bool column) {
    std::optional<std::int64_t> best;
    for (int n = 1; n <= 9; ++n) {
        const std::int64_t whole = std::int64_t(n) * height * kHalf;
        if (best && roundedUp(whole) >= *best)
            break;
        for (const bool split : {false, true}) {
            Strips strips(std::size_t(split ? n - 1 : n), usable);
            if (split)
                strips.insert(strips.end(), 2, usable / 2);
            if ((!best || roundedUp(whole) < *best) && inSomeOrder(strips, across))
                best = roundedUp(whole);
            if (!column)
                continue;
            const int all = n * usable - 2 * kSeam * int(strips.size());
            const int width = std::max(across - all, 4 + 2 * kSeam);
            for (const std::int64_t cloth : columnCloth(width, height, usable)) {
                const std::int64_t bought = roundedUp(whole + cloth);
                if (best && bought >= *best)
                    break;
                Strips with = strips;
                with.push_back(width);
                if (inSomeOrder(with, across))
                    best = bought;
            }
        }
    }
    return *best;
}

/// A quilt along is the turned quilt across, and every way is asked for more than once.
class Least {
public:
    explicit Least(int usable)
        : usable_{usable} {}
    std::int64_t operator()(int across, int height, bool column) {
        const auto [it, fresh] = known_.try_emplace({across, height, column}, 0);
        if (fresh)
            it->second = leastBought(across, height, usable_, column);
        return it->second;
    }

private:
    int usable_;
    std::map<std::tuple<int, int, bool>, std::int64_t> known_;
};

class EveryQuilt : public testing::TestWithParam<int> {};

TEST_P(EveryQuilt, BuysTheLeast) {
    const int usable = GetParam();
    Least leastBoughtFor{2 * usable};
    BackingOptions options;
    options.nearestMiss = false;
    Job job;
    job.backing.fabrics = {{.name = "cloth", .usableWidth = Length::inches(usable)}};
    for (int w = 36; w <= 120; w += 2)
        for (int l = 36; l <= 120; l += 2) {
            // Overage 4 a side.
            const Size needed{Length::inches(w + 8), Length::inches(l + 8)};
            for (const bool column : {false, true}) {
                job.backing.column = column;
                const auto along = leastBoughtFor(2 * (w + 8), 2 * (l + 8), column);
                const auto across = leastBoughtFor(2 * (l + 8), 2 * (w + 8), column);
                const BackingOutcome out = planBacking(job, needed, options);
                ASSERT_TRUE(out.plan) << w << " × " << l;
                ASSERT_EQ(sewing::boughtInAll(*out.plan).nm(), std::min(along, across))
                    << w << " × " << l << " column " << column;
                if (w % 8 == 0 && l % 12 == 0) {
                    ASSERT_THAT(sewing::faults(job, needed, *out.plan), testing::IsEmpty())
                        << w << " × " << l;
                }
            }
            job.backing.oneWay = true;
            job.backing.column = false;
            const BackingOutcome out = planBacking(job, needed, options);
            ASSERT_EQ(sewing::boughtInAll(*out.plan).nm(),
                      leastBoughtFor(2 * (w + 8), 2 * (l + 8), false))
                << w << " × " << l << " along only";
            job.backing.oneWay = false;
        }
}

INSTANTIATE_TEST_SUITE_P(Usable, EveryQuilt,
                         testing::Values(36, 37, 38, 39, 40, 41, 42, 43, 44, 104, 106, 108, 110,
                                         112, 114, 116, 118));

} // namespace
} // namespace bastewright
