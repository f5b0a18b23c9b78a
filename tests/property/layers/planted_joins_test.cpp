#include "planners/batting/batting.h"
#include "unit/batting/joining.h"

#include <gmock/gmock.h>

#include <cmath>
#include <ostream>
#include <random>

/// Random jobs: those cut from a batting can be joined again; small ones agree with trying every
/// tree.
namespace bastewright {
namespace {

using testing::IsEmpty;

std::uint64_t below(std::mt19937_64& random, std::uint64_t n) {
    return random() % n;
}

struct Planted {
    Job job;
    Size needed;
};

/// Cuts a batting by straight cuts into n pieces and gives each what trim and overlap will eat, and
/// `spare` each way.
class Planter {
public:
    Planter(std::uint64_t seed, int n, Length spare, bool turn)
        : random_{seed} {
        made_.needed = {Length::inches(60 + std::int64_t(below(random_, 50))),
                        Length::inches(60 + std::int64_t(below(random_, 60)))};
        Batting& b = made_.job.batting;
        b.mayTurn = turn;
        cut(made_.needed.width - b.overlap, made_.needed.length - b.overlap, n);
        for (BattingPiece& p : b.pieces) {
            p.width += b.overlap + 2 * b.trim + spare;
            p.length += b.overlap + 2 * b.trim + spare;
            if (turn && below(random_, 2) == 0)
                std::swap(p.width, p.length);
        }
    }

    Planted made() && { return std::move(made_); }

private:
    void cut(Length w, Length l, int n) {
        auto& pieces = made_.job.batting.pieces;
        if (n == 1) {
            pieces.push_back({std::string(1, char('A' + pieces.size())), w, l, 1});
            return;
        }
        const int first = 1 + int(below(random_, std::uint64_t(n - 1)));
        const bool upright = (w > l) != (below(random_, 4) == 0);
        const Length whole = upright ? w : l;
        const auto quarters = whole.nm() / (Length::kInch / 4);
        const auto at =
            Length::inch64ths(16) * std::clamp<std::int64_t>(quarters * first / n, 1, quarters - 1);
        if (upright) {
            cut(at, l, first);
            cut(w - at, l, n - first);
        } else {
            cut(w, at, first);
            cut(w, l - at, n - first);
        }
    }

    std::mt19937_64 random_;
    Planted made_;
};

struct Kind {
    int pieces;
    Length spare;
    bool turn;
    friend void PrintTo(const Kind& k, std::ostream* out) {
        *out << k.pieces << " pieces, " << k.spare.in() << " in to spare"
             << (k.turn ? ", turned" : "");
    }
};
class PlantedJoin : public testing::TestWithParam<Kind> {};

TEST_P(PlantedJoin, IsFoundAgain) {
    const Kind kind = GetParam();
    for (std::uint64_t seed = 1; seed <= 25; ++seed) {
        const Planted p = Planter{seed, kind.pieces, kind.spare, kind.turn}.made();
        const BattingOutcome out = planBatting(p.job, p.needed);
        ASSERT_TRUE(out.plan) << "seed " << seed;
        EXPECT_THAT(joining::faults(p.job, p.needed, *out.plan), IsEmpty()) << "seed " << seed;
        EXPECT_LE(out.plan->pieces.size(), std::size_t(kind.pieces) + 2);
        // What it says of corners is true.
        const bool said = std::ranges::any_of(out.findings, [](const Finding& f) {
            return f.text.english().starts_with("Four corners");
        });
        if (joining::fourCorners(*out.plan) > 0) {
            EXPECT_TRUE(said) << "seed " << seed;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Kinds, PlantedJoin,
                         testing::Values(Kind{2, 0_in, false}, Kind{4, 0_in, false},
                                         Kind{6, 1_in, false}, Kind{7, 0_in, true},
                                         Kind{10, 0_in, false}, Kind{12, 0_in, false},
                                         Kind{12, 0_in, true}, Kind{18, 0_in, false}));

/// A piece whose longer side is an inch longer than it may be cut square to.
BattingPiece outOfSquare(BattingPiece p) {
    Length& longer = p.width < p.length ? p.length : p.width;
    longer += Length::inches(1) + Length::inch64ths(2);
    const double lean = 2 * longer.in(); // d² and e² differ by four times the side for an inch
    const double half = p.width.in() * p.width.in() + p.length.in() * p.length.in();
    p.diagonals = {Length::nearestInches(std::sqrt(half + lean)),
                   Length::nearestInches(std::sqrt(half - lean))};
    return p;
}

TEST(MadeSets, FortyEightAreJoined) {
    int joined = 0;
    for (int pieces = 3; pieces <= 14; ++pieces)
        for (const bool crooked : {false, true})
            for (const std::uint64_t seed : {101u, 102u}) {
                Planted p = Planter{seed + std::uint64_t(pieces), pieces, 0_in, false}.made();
                if (crooked)
                    for (BattingPiece& piece : p.job.batting.pieces)
                        piece = outOfSquare(piece);
                const BattingOutcome out = planBatting(p.job, p.needed);
                ASSERT_TRUE(out.plan) << pieces << " pieces, seed " << seed;
                EXPECT_THAT(joining::faults(p.job, p.needed, *out.plan), IsEmpty())
                    << pieces << " pieces, seed " << seed;
                ++joined;
            }
    EXPECT_EQ(joined, 48);
}

/// All rectangles some of the pieces give, by every tree, with nothing left out. A rectangle is a
/// pair of whole eighths.
struct EveryTree {
    struct Box {
        int w, l;
    };
    std::vector<Box> pieces;
    bool turn;

    std::vector<Box> of(unsigned set) const {
        std::vector<Box> out;
        for (unsigned part = (set - 1) & set; part != 0; part = (part - 1) & set)
            for (const Box a : of(part))
                for (const Box b : of(set ^ part)) {
                    out.push_back({a.w + b.w, std::min(a.l, b.l)});
                    out.push_back({std::min(a.w, b.w), a.l + b.l});
                }
        if (out.empty())
            for (std::size_t i = 0; i < pieces.size(); ++i)
                if (set == 1u << i) {
                    out.push_back(pieces[i]);
                    if (turn)
                        out.push_back({pieces[i].l, pieces[i].w});
                }
        return out;
    }

    /// Least number of pieces that hold w × l; 0 for none.
    int least(int w, int l) const {
        int best = 0;
        for (unsigned set = 1; set < 1u << pieces.size(); ++set) {
            const int n = std::popcount(set);
            if (best != 0 && n >= best)
                continue;
            for (const Box b : of(set))
                if (b.w >= w && b.l >= l) {
                    best = n;
                    break;
                }
        }
        return best;
    }
};

TEST(SmallJoins, AgreeWithEveryTree) {
    int possible = 0, impossible = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        std::mt19937_64 random{seed};
        Job job;
        job.batting.mayTurn = seed % 2 == 0;
        EveryTree oracle{{}, job.batting.mayTurn};
        const int n = 2 + int(below(random, 3));
        // In eighths of an inch: trim 4 a side, overlap 12.
        for (int i = 0; i < n; ++i) {
            const int w = 8 * (20 + int(below(random, 40))), l = 8 * (20 + int(below(random, 40)));
            job.batting.pieces.push_back({std::string(1, char('A' + i)), Length::inch64ths(8 * w),
                                          Length::inch64ths(8 * l), 1});
            oracle.pieces.push_back({w - 8 - 12, l - 8 - 12});
        }
        const int w = 8 * (30 + int(below(random, 50))), l = 8 * (30 + int(below(random, 50)));
        const Size needed{Length::inch64ths(8 * w), Length::inch64ths(8 * l)};
        const int least = oracle.least(w - 12, l - 12);
        const BattingOutcome out = planBatting(job, needed);
        if (least == 0) {
            ++impossible;
            // A split may still rescue it; whole pieces must not.
            EXPECT_TRUE(out.plan ? !out.plan->splits.empty() : anyStop(out.findings))
                << "seed " << seed;
            continue;
        }
        ++possible;
        ASSERT_TRUE(out.plan) << "seed " << seed;
        EXPECT_THAT(joining::faults(job, needed, *out.plan), IsEmpty()) << "seed " << seed;
        EXPECT_GE(int(out.plan->pieces.size()), least) << "seed " << seed;
        if (joining::fourCorners(*out.plan) == 0 && least < 4) {
            EXPECT_EQ(int(out.plan->pieces.size()), least) << "seed " << seed;
        }
    }
    EXPECT_GT(possible, 100);
    EXPECT_GT(impossible, 100);
}

/// Takes the size out of "One more piece of at least 36 × 117 in would do".
std::optional<Size> askedFor(const std::string& cure) {
    int w = 0, l = 0;
    const auto at = cure.find("at least ");
    if (at == std::string::npos ||
        std::sscanf(cure.c_str() + at, "at least %d × %d in", &w, &l) != 2)
        return std::nullopt;
    return Size{Length::inches(w), Length::inches(l)};
}

TEST(LeastToBuy, Suffices) {
    int asked = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Planted p = Planter{seed, 5, 0_in, false}.made();
        p.job.batting.pieces.erase(p.job.batting.pieces.begin() + int(seed % 5));
        const BattingOutcome out = planBatting(p.job, p.needed);
        if (out.plan)
            continue;
        const auto extra = askedFor(out.findings.back().cure.english());
        ASSERT_TRUE(extra) << out.findings.back().cure;
        ++asked;
        p.job.batting.pieces.push_back({"new", extra->width, extra->length, 1});
        const BattingOutcome cured = planBatting(p.job, p.needed);
        ASSERT_TRUE(cured.plan) << "seed " << seed << ": " << out.findings.back().cure;
        EXPECT_THAT(joining::faults(p.job, p.needed, *cured.plan), IsEmpty());
    }
    EXPECT_GT(asked, 20);
}

} // namespace
} // namespace bastewright
