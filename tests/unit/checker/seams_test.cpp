#include "job/job.h"
#include "unit/checker/random.h"

#include <gmock/gmock.h>

#include <tuple>

// The checker takes the seams from the job's own `seamsOf`. That function is judged here against
// the patches of cloth themselves: a seam is where the cloth differs on both sides.
namespace bastewright {
namespace {

using testing::Random;

/// Where a coordinate lies along one direction of a grid: which block or strip of sashing, and in a
/// block how many inner lines lie before it. Border is -1 at the near end, -2 at the far end.
struct Strip {
    int number = -1;
    bool block = false;
    int inner = 0;
    auto operator<=>(const Strip&) const = default;
};

Strip strip(Length at, Length border, int count, Length block, Length sashing,
            const std::vector<Length>& inner) {
    Length from = border;
    if (at < from)
        return {-1, false, 0};
    for (int i = 0; i < count; ++i) {
        if (at < from + block) {
            int before = 0;
            for (const Length line : inner)
                before += at >= from + line ? 1 : 0;
            return {2 * i, true, before};
        }
        from += block;
        if (i + 1 < count && at < from + sashing)
            return {2 * i + 1, false, 0};
        from += sashing;
    }
    return {-2, false, 0};
}

/// The patch of cloth at a place that is on no seam. The border is one cloth all round; inner lines
/// cut blocks only, all other lines run on through the sashing.
using Patch = std::tuple<Strip, Strip>;

Patch patch(const Top& top, Length x, Length y) {
    const BlockGrid& g = *top.grid;
    const Rect area = topRect(top);
    const Length bx = (area.width() - g.width()) / 2 + g.border;
    const Length by = (area.length() - g.length()) / 2 + g.border;
    Strip column = strip(x, bx, g.columns, g.block, g.sashing, g.innerX);
    Strip row = strip(y, by, g.rows, g.blockHeight(), g.sashing, g.innerY);
    if (column.number < 0 || row.number < 0)
        return {};
    if (!column.block || !row.block)
        column.inner = row.inner = 0;
    return {column, row};
}

bool sewn(const std::vector<Segment>& seams, Segment along) {
    return std::ranges::any_of(seams, [&](const Segment& s) {
        return s.from.x <= along.from.x && s.from.y <= along.from.y && s.to.x >= along.to.x &&
               s.to.y >= along.to.y &&
               ((s.from.x == s.to.x && along.from.x == s.from.x) ||
                (s.from.y == s.to.y && along.from.y == s.from.y));
    });
}

Top randomTop(Random& random) {
    const auto quarters = [&](int lo, int hi) { return 0.25_in * random.whole(lo, hi); };
    BlockGrid g;
    g.columns = int(random.whole(1, 4));
    g.rows = int(random.whole(1, 4));
    g.block = quarters(8, 20);
    g.blockLength = random.chance(50) ? 0_in : quarters(8, 20);
    g.sashing = random.chance(40) ? 0_in : quarters(1, 6);
    g.border = random.chance(40) ? 0_in : quarters(1, 8);
    for (const auto inner : {&g.innerX, &g.innerY})
        for (std::int64_t i = random.whole(0, 2); i > 0; --i)
            inner->push_back(quarters(1, 7));
    Top top;
    top.grid = g;
    // Readings that differ from the nominal size are shared out by the borders.
    const Length more = 0.5_in * random.whole(0, g.border > 0_in ? 2 : 0);
    top.width = {g.width() + more};
    top.length = {g.length()};
    return top;
}

TEST(SeamsOfAGrid, LieWhereTheClothDiffersOnBothSides) {
    const Length step = 0.25_in, half = 0.125_in;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Random random{seed};
        const Top top = randomTop(random);
        const Rect area = topRect(top);
        const auto seams = seamsOf(top);
        for (Length x = area.x0; x < area.x1; x += step)
            for (Length y = area.y0; y < area.y1; y += step) {
                const Patch here = patch(top, x + half, y + half);
                if (x > area.x0) {
                    const Segment edge{{x, y}, {x, y + step}};
                    ASSERT_EQ(sewn(seams, edge), patch(top, x - half, y + half) != here)
                        << x.in() << ", " << y.in();
                }
                if (y > area.y0) {
                    const Segment edge{{x, y}, {x + step, y}};
                    ASSERT_EQ(sewn(seams, edge), patch(top, x + half, y - half) != here)
                        << x.in() << ", " << y.in();
                }
            }
    }
}

TEST(SeamsAreSewn, WhereTheNeedleFollowsThemOrMight) {
    Job job;
    const auto sewn = [&](Quilting::Method method) {
        job.quilting.method = method;
        return seamsAreSewn(job);
    };
    EXPECT_TRUE(sewn(Quilting::Method::inTheDitch));
    EXPECT_TRUE(sewn(Quilting::Method::undecided));
    EXPECT_FALSE(sewn(Quilting::Method::acrossSeams));
    EXPECT_FALSE(sewn(Quilting::Method::singleTacks));
    EXPECT_FALSE(sewn(Quilting::Method::freeMotion));
}

} // namespace
} // namespace bastewright
