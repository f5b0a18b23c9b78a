#include "planners/batting/batting.h"
#include "unit/batting/joining.h"

#include <gmock/gmock.h>

#include <random>

/// Small battings cut up so that nothing is to spare: every way to join them again, in every order,
/// says which joins are shortest and whether four corners must meet.
namespace bastewright {
namespace {

/// In whole inches, nothing lost at a join; the batting's own edges get half an overlap more.
struct Box {
    int x, y, w, l;
};
using Layout = std::vector<Box>;

struct EveryLayout {
    std::vector<Box> pieces; // x and y are not used

    /// All layouts of a set of pieces that are a rectangle without gaps, at the origin.
    std::vector<Layout> of(unsigned set) const {
        std::vector<Layout> out;
        for (std::size_t i = 0; i < pieces.size(); ++i)
            if (set == 1u << i)
                return {{{0, 0, pieces[i].w, pieces[i].l}}};
        for (unsigned part = (set - 1) & set; part != 0; part = (part - 1) & set)
            for (const Layout& a : of(part))
                for (const Layout& b : of(set ^ part))
                    for (const bool beside : {true, false})
                        if (const auto both = joined(a, b, beside))
                            out.push_back(*both);
        return out;
    }

    static Box bounds(const Layout& l) {
        Box b{0, 0, 0, 0};
        for (const Box& p : l)
            b = {0, 0, std::max(b.w, p.x + p.w), std::max(b.l, p.y + p.l)};
        return b;
    }

    static std::optional<Layout> joined(const Layout& a, Layout b, bool beside) {
        const Box ba = bounds(a), bb = bounds(b);
        if (beside ? ba.l != bb.l : ba.w != bb.w)
            return std::nullopt;
        for (Box& p : b)
            (beside ? p.x : p.y) += beside ? ba.w : ba.l;
        b.insert(b.end(), a.begin(), a.end());
        return b;
    }
};

/// Half the edges of all pieces, less half of the batting's: the length of all joins.
double stripOf(const Layout& l, Size needed, double overlap) {
    const double w = needed.width.in() - overlap, h = needed.length.in() - overlap;
    double sum = 0;
    for (const Box& p : l) {
        sum += p.w + p.l;
        sum += overlap / 2 * ((p.x == 0) + (p.y == 0) + (p.x + p.w == w) + (p.y + p.l == h));
    }
    return sum - needed.width.in() - needed.length.in();
}

bool meets(const Layout& l) {
    for (const Box& a : l)
        for (const Box& b : l)
            if (&a != &b && a.x + a.w == b.x && a.y + a.l == b.y)
                return true; // whole inches: nearer than one is none
    return false;
}

TEST(TightJoins, AreShortestAndMeetInFourCornersOnlyWhereTheyMust) {
    int must = 0, need_not = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        std::mt19937_64 random{seed};
        Job job;
        EveryLayout every;
        // Cuts at halves and thirds, so that corners often meet.
        const std::function<void(int, int, int)> cut = [&](int w, int l, int n) {
            if (n == 1) {
                every.pieces.push_back({0, 0, w, l});
                return;
            }
            const bool upright = random() % 2 == 0;
            const int first = n / 2, whole = upright ? w : l;
            const int at = random() % 5 == 0 ? whole / 3 : whole / 2;
            cut(upright ? at : w, upright ? l : at, first);
            cut(upright ? w - at : w, upright ? l : l - at, n - first);
        };
        cut(72, 96, 4 + int(seed % 2));
        const Batting& rules = job.batting;
        for (const Box& p : every.pieces)
            job.batting.pieces.push_back({std::to_string(job.batting.pieces.size()),
                                          Length::inches(p.w) + rules.overlap + 2 * rules.trim,
                                          Length::inches(p.l) + rules.overlap + 2 * rules.trim, 1});
        const Size needed{72_in + rules.overlap, 96_in + rules.overlap};

        double best = 1e9;
        bool free = false;
        for (const Layout& l : every.of((1u << every.pieces.size()) - 1)) {
            const Box b = EveryLayout::bounds(l);
            if (b.w != 72 || b.l != 96)
                continue;
            if (!meets(l) && !free) {
                free = true;
                best = 1e9;
            }
            if (!free || !meets(l))
                best = std::min(best, stripOf(l, needed, rules.overlap.in()));
        }
        const BattingOutcome out = planBatting(job, needed);
        ASSERT_TRUE(out.plan) << "seed " << seed;
        EXPECT_THAT(joining::faults(job, needed, *out.plan), testing::IsEmpty());
        ASSERT_EQ(out.plan->pieces.size(), every.pieces.size()) << "seed " << seed;
        EXPECT_EQ(joining::fourCorners(*out.plan) == 0, free) << "seed " << seed;
        const bool said = std::ranges::any_of(out.findings, [](const Finding& f) {
            return f.text.english().find("no layout of as few joins avoids it") !=
                   std::string::npos;
        });
        EXPECT_EQ(said, !free) << "seed " << seed;
        if (free) {
            EXPECT_NEAR(out.plan->strip.in(), best, 1e-6) << "seed " << seed;
        }
        (free ? need_not : must) += 1;
    }
    EXPECT_GT(must, 10);
    EXPECT_GT(need_not, 10);
}

} // namespace
} // namespace bastewright
