#include "planners/passes/layout.h"

#include <gtest/gtest.h>

#include <set>

namespace bastewright {
namespace {

using namespace literals;

LayoutInput input(int quiltWidth, int quiltLength, int tableWidth, int tableLength,
                  Basting::Start start = Basting::Start::centred) {
    LayoutInput in;
    in.top = {Length::inches(quiltWidth), Length::inches(quiltLength)};
    in.surface.table = {Length::inches(tableWidth), Length::inches(tableLength)};
    in.surface.field = Rect{{}, {}, in.surface.table.width, in.surface.table.length}.grown(-2_in);
    in.anchor = 6_in;
    in.start = start;
    return in;
}

std::size_t fewest(const LayoutInput& in) {
    return layouts(in).front().areas.size();
}

const Layout* shaped(const std::vector<Layout>& all, Shape shape) {
    const auto found = std::ranges::find(all, shape, &Layout::shape);
    return found == all.end() ? nullptr : &*found;
}

TEST(Layouts, OnePassWhereTheQuiltFits) {
    EXPECT_EQ(fewest(input(40, 50, 60, 72)), 1u);
}

TEST(Layouts, PinwheelTakesFiveWhereACentredGridTakesNine) {
    const auto all = layouts(input(80, 80, 60, 60));
    ASSERT_NE(shaped(all, Shape::grid), nullptr);
    EXPECT_EQ(shaped(all, Shape::grid)->areas.size(), 9u);
    ASSERT_NE(shaped(all, Shape::pinwheel), nullptr);
    EXPECT_EQ(shaped(all, Shape::pinwheel)->areas.size(), 5u);
    EXPECT_EQ(all.front().areas.size(), 5u);
}

TEST(Layouts, BricksTakeSevenWhereACentredGridTakesNine) {
    const auto all = layouts(input(80, 80, 60, 60));
    ASSERT_NE(shaped(all, Shape::brickRows), nullptr);
    EXPECT_EQ(shaped(all, Shape::brickRows)->areas.size(), 7u) << "3 + 2·2";
}

// A free grid of f fields leaves no middle where f is even; one pass more gives it one.
TEST(Layouts, CentredStartCostsAtMostOnePassMoreThanAFreeGrid) {
    for (int w = 40; w <= 200; w += 8)
        for (int l = w; l <= 200; l += 8) {
            const LayoutInput in = input(w, l, 60, 60);
            const AxisRoom x{in.top.width, 56_in, 6_in}, y{in.top.length, 56_in, 6_in};
            const auto free = freeCount(x) * freeCount(y);
            ASSERT_GE(std::int64_t(fewest(in)), free) << w << " x " << l;
            // An arm has an anchor on its inner side, and a middle narrower than 12 in is a scrap.
            const auto leavesMiddle = [](const AxisRoom& r) {
                return freeCount(r) % 2 == 1 || r.quilt <= freeCount(r) * 50_in - 12_in;
            };
            if (leavesMiddle(x) && leavesMiddle(y)) {
                EXPECT_LE(std::int64_t(fewest(in)), free % 2 == 1 ? free : free + 1)
                    << w << " x " << l << " on 60 x 60";
            }
        }
}

TEST(Layouts, HarbourLightsOnSixtyBySeventyTwoTakesAtMostFive) {
    EXPECT_LE(fewest(input(88, 112, 60, 72)), 7u);
    EXPECT_LE(fewest(input(88, 112, 72, 60, Basting::Start::besideMiddle)), 6u);
    EXPECT_LE(std::min(fewest(input(88, 112, 60, 72, Basting::Start::besideMiddle)),
                       fewest(input(88, 112, 72, 60, Basting::Start::besideMiddle))),
              5u);
}

TEST(Layouts, NoneWhereTheFieldIsNoLargerThanTheAnchor) {
    EXPECT_TRUE(layouts(input(80, 80, 60, 10)).empty());
}

TEST(Layouts, NoneWhereNothingIsWorkable) {
    LayoutInput in = input(80, 80, 60, 40);
    in.surface.field = {};
    EXPECT_TRUE(layouts(in).empty());
}

TEST(Layouts, LeastPassesIsNeverAboveWhatIsFound) {
    for (int w = 36; w <= 120; w += 12)
        for (int l = 36; l <= 120; l += 12)
            for (const auto& [tw, tl] :
                 {std::pair{72, 30}, {30, 72}, {60, 72}, {144, 30}, {96, 60}})
                for (const auto start : {Basting::Start::centred, Basting::Start::besideMiddle}) {
                    const LayoutInput in = input(w, l, tw, tl, start);
                    ASSERT_LE(leastPasses(in), int(fewest(in)));
                }
}

/// All that must hold of any layout, whatever its shape.
void expectSound(const LayoutInput& in, const Layout& layout) {
    const Rect top{{}, {}, in.top.width, in.top.length};
    double area = 0;
    for (std::size_t i = 0; i < layout.areas.size(); ++i) {
        const FreshArea& a = layout.areas[i];
        area += areaSquareInches(a.fresh);
        EXPECT_TRUE(top.contains(a.fresh));
        EXPECT_TRUE(a.field.contains(a.fresh));
        EXPECT_EQ(a.needs.empty(), i == layout.first);
        for (std::size_t k = i + 1; k < layout.areas.size(); ++k)
            EXPECT_FALSE(a.fresh.overlaps(layout.areas[k].fresh));
        for (const std::size_t n : a.needs) {
            // The field holds the anchor beyond every area it continues from, as far as that
            // reaches.
            const Rect strip =
                intersection(intersection(a.fresh.grown(in.anchor), top), layout.areas[n].fresh);
            const Rect beside{std::max(strip.x0, a.fresh.x0 - in.anchor),
                              std::max(strip.y0, a.fresh.y0 - in.anchor),
                              std::min(strip.x1, a.fresh.x1 + in.anchor),
                              std::min(strip.y1, a.fresh.y1 + in.anchor)};
            EXPECT_FALSE(beside.empty()) << "they touch";
            const bool aside =
                layout.areas[n].fresh.x1 <= a.fresh.x0 || layout.areas[n].fresh.x0 >= a.fresh.x1;
            const Rect anchor = aside ? Rect{beside.x0, std::max(beside.y0, a.fresh.y0), beside.x1,
                                             std::min(beside.y1, a.fresh.y1)}
                                      : Rect{std::max(beside.x0, a.fresh.x0), beside.y0,
                                             std::min(beside.x1, a.fresh.x1), beside.y1};
            EXPECT_TRUE(a.field.contains(anchor));
        }
    }
    EXPECT_NEAR(area, in.top.width.in() * in.top.length.in(), 1e-6);
    if (in.start == Basting::Start::centred) {
        const Point middle = layout.areas[layout.first].fresh.middle();
        EXPECT_LE(abs(middle.x - in.top.width / 2), Length::nanometres(1));
        EXPECT_LE(abs(middle.y - in.top.length / 2), Length::nanometres(1));
    } else {
        const Rect& field = layout.areas[layout.first].field;
        const Length margin = Length::inches(12);
        const Rect held{in.top.width / 2 - std::min(margin, in.surface.field.width() / 2),
                        in.top.length / 2 - std::min(margin, in.surface.field.length() / 2),
                        in.top.width / 2 + std::min(margin, in.surface.field.width() / 2),
                        in.top.length / 2 + std::min(margin, in.surface.field.length() / 2)};
        EXPECT_TRUE(field.grown(Length::nanometres(2)).contains(intersection(held, top)));
    }
}

TEST(Layouts, OfEveryShapeAreSound) {
    std::set<Shape> seen;
    for (int w = 36; w <= 120; w += 12)
        for (int l = 36; l <= 120; l += 14)
            for (const auto& [tw, tl] :
                 {std::pair{72, 30}, {30, 72}, {60, 72}, {50, 50}, {96, 60}, {36, 24}, {68, 26}})
                for (const auto start : {Basting::Start::centred, Basting::Start::besideMiddle}) {
                    LayoutInput in = input(w, l, tw, tl, start);
                    // Seams at the middle too, where no boundary of the first area may go.
                    for (int at = w % 12; at < w; at += 12)
                        in.seamsX.push_back(Length::inches(at));
                    for (int at = l % 12; at < l; at += 12)
                        in.seamsY.push_back(Length::inches(at));
                    for (const Layout& layout : layouts(in)) {
                        SCOPED_TRACE(testing::Message()
                                     << w << " x " << l << " on " << tw << " x " << tl << ", start "
                                     << int(start) << ", shape " << int(layout.shape));
                        expectSound(in, layout);
                        seen.insert(layout.shape);
                    }
                }
    EXPECT_EQ(seen.size(), 5u) << "every shape is of use to some quilt";
}

} // namespace
} // namespace bastewright
