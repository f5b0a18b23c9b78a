#include "planners/bring/bring.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

namespace bastewright {
namespace {

Session session(std::size_t quilts) {
    Session s;
    s.jobs.resize(quilts);
    s.severalQuilts = quilts > 1;
    return s;
}

QuiltPlan quilt(std::size_t points, int surface = 1) {
    QuiltPlan q;
    q.surface.number = surface;
    q.zones.resize(1);
    q.zones[0].points.resize(points);
    return q;
}

Pass pass(int clamps, Length tape, std::vector<Roll> rolls = {}) {
    Pass p;
    p.holds = {{Side::head, Hold::Kind::clamp, clamps, {}, {}},
               {Side::left, Hold::Kind::tape, 1, tape, {}}};
    p.rolls = std::move(rolls);
    return p;
}

Roll roll(Length holds, int clips) {
    Roll r;
    r.diameter = holds;
    r.clipHolds = holds;
    r.clips = clips;
    return r;
}

std::optional<Supply> find(const std::vector<Supply>& all, std::string_view item) {
    const auto it = std::ranges::find(all, item, &Supply::item);
    return it == all.end() ? std::nullopt : std::optional{*it};
}

void expectSupply(const std::vector<Supply>& all, std::string_view item, double need, double have,
                  double buy, std::string_view unit = "") {
    const auto s = find(all, item);
    ASSERT_TRUE(s) << item;
    EXPECT_DOUBLE_EQ(s->need, need) << item;
    EXPECT_DOUBLE_EQ(s->have, have) << item;
    EXPECT_DOUBLE_EQ(s->buy, buy) << item;
    EXPECT_EQ(s->unit, unit) << item;
}

TEST(Bring, PinsOfAllQuiltsAndATenthMore) {
    Session s = session(2);
    s.setting.stash.pins = 400;
    expectSupply(planSupplies(s, {quilt(300), quilt(151)}), "pins", 451 + 46, 400, 97, "1 in");
    s.setting.stash.pins = 600;
    expectSupply(planSupplies(s, {quilt(300), quilt(150)}), "pins", 495, 600, 0, "1 in");
}

TEST(Bring, PinsOfTwoLengthsAreCountedTogetherAndToldApart) {
    Session s = session(2);
    s.jobs[1].basting.pinLength = 1.5_in;
    s.setting.stash.pins = 400;
    expectSupply(planSupplies(s, {quilt(300), quilt(100)}), "pins", 440, 400, 40,
                 "330 of 1 in, 110 of 1 1/2 in");
}

TEST(Bring, DotsTakeASquareAtBothFacesAnIronAndPads) {
    Session s = session(2);
    s.jobs[1].basting.with = Basting::With::dots;
    QuiltPlan dotted = quilt(100, 2);
    dotted.surface.tables.resize(2);
    const auto all = planSupplies(s, {quilt(50), dotted});
    expectSupply(all, "fuse squares, 3/4 in", 220, 0, 220);
    expectSupply(all, "iron", 1, 0, 1);
    expectSupply(all, "heat-safe pads", 2, 0, 2);
    expectSupply(all, "pins", 55, 0, 55, "1 in");
    EXPECT_FALSE(find(planSupplies(session(1), {quilt(50)}), "iron"));
}

TEST(Bring, ClampsAreThoseOfTheBusiestPassOnEverySurface) {
    Session s = session(3);
    s.setting.stash.clamps = 12;
    QuiltPlan a = quilt(1, 1), b = quilt(1, 1), c = quilt(1, 2);
    a.passes = {pass(6, {}), pass(9, {})};
    b.passes = {pass(8, {})};
    c.passes = {pass(7, {})};
    expectSupply(planSupplies(s, {a, b, c}), "clamps", 16, 12, 4);
}

TEST(Bring, ClipsBySizeStayOnWhatIsRolledUp) {
    Session s = session(2);
    s.setting.stash.clips = {{3_in, 8}, {4_in, 2}};
    QuiltPlan a = quilt(1), b = quilt(1);
    a.passes = {pass(0, {}, {roll(3_in, 5), roll(3_in, 5)}), pass(0, {}, {roll(3_in, 5)})};
    a.machineRolls = {roll(3_in, 4), roll(3_in, 4)};
    b.passes = {pass(0, {}, {roll(3_in, 3), roll(4_in, 3)})};
    // While the second quilt lies there, the first is still rolled: 8 and 3.
    const auto all = planSupplies(s, {a, b});
    expectSupply(all, "clips that hold 3 in", 11, 8, 3);
    expectSupply(all, "clips that hold 4 in", 3, 2, 1);
    // On a surface of its own the second needs its clips beside those of the first.
    b.surface.number = 2;
    expectSupply(planSupplies(s, {a, b}), "clips that hold 3 in", 13, 8, 5);
}

TEST(Bring, FoldedQuiltTakesNoClipsAndARollNoneHoldsTakesALargerSize) {
    Session s = session(1);
    QuiltPlan q = quilt(1);
    Roll folded = roll({}, 0);
    folded.folded = true;
    q.passes = {pass(0, {}, {folded})};
    Roll wide = roll({}, 6);
    wide.diameter = 4.25_in;
    q.machineRolls = {wide};
    const auto all = planSupplies(s, {q});
    expectSupply(all, "clips that hold 4 1/2 in", 6, 0, 6);
    EXPECT_EQ(std::ranges::count_if(
                  all, [](const Supply& x) { return x.item.english().starts_with("clips"); }),
              1);
}

TEST(Bring, TapeIsUsedOnce) {
    Session s = session(1);
    s.setting.stash.tape = 30.5_in;
    QuiltPlan q = quilt(1);
    q.passes = {pass(1, 24_in), pass(1, 18_in)};
    expectSupply(planSupplies(s, {q}), "tape", 42, 30, 12, "in");
    s.jobs[0].unit = Unit::centimetre;
    expectSupply(planSupplies(s, {q}), "tape", 107, 77, 30, "cm"); // 106.68 and 77.47
}

TEST(Bring, MarksForEverySurfaceAndAToolForEveryCloser) {
    Session s = session(2);
    s.setting.helpers.resize(3);
    s.setting.helpers[1].closes = false;
    const auto all = planSupplies(s, {quilt(5, 1), quilt(5, 2)});
    expectSupply(all, "center marks", 8, 0, 8);
    expectSupply(all, "closing tools", 2, 0, 2);
}

TEST(Bring, ClothInYardsOrMetres) {
    Session s = session(2);
    s.jobs[0].backing.fabrics = {{"slate", 40_in, 54_in, true, 0},
                                 {"unused", 40_in, 90_in, true, 0}};
    s.jobs[1].backing.fabrics = {{"slate", 40_in, 180_in, true, 0}};
    QuiltPlan a = quilt(1), b = quilt(1);
    a.backing = BackingPlan{};
    a.backing->cuts = {{"slate", {{}, {}, 40_in, 120_in}, "A"}};
    a.backing->buy = {{"slate", 72_in}};
    // The second is cut from what is on hand; what is left of it is not counted for the first.
    b.backing = BackingPlan{};
    b.backing->cuts = {{"slate", {{}, {}, 40_in, 90_in}, "A"}};
    auto all = planSupplies(s, {a, b});
    expectSupply(all, "backing: slate", 3.5 + 2.5, 1.5 + 2.5, 2, "yd");
    EXPECT_FALSE(find(all, "backing: unused"));
    s.jobs[0].unit = Unit::centimetre;
    all = planSupplies(s, {a, b});
    expectSupply(all, "backing: slate", 5.486, 3.658, 1.828, "m");
}

TEST(Bring, BattingFromAPackOrFromLeftovers) {
    Session s = session(3);
    s.jobs[1].batting.width = 90_in; // it lies there already
    QuiltPlan a = quilt(1), b = quilt(1), c = quilt(1);
    a.batting = BattingPlan{};
    a.batting->pack = "queen";
    a.batting->buy = {{"queen", 90_in, 108_in}};
    a.batting->toBring = {"a queen pack, 90 × 108 in."};
    b.batting = a.batting;
    c.batting = BattingPlan{};
    c.batting->pieces.resize(4);
    c.batting->strip = 140.2_in;
    const auto all = planSupplies(s, {a, b, c});
    expectSupply(all, "batting: queen", 2, 1, 1);
    expectSupply(all, "leftover batting pieces", 4, 4, 0);
    expectSupply(all, "joining strip", 141, 0, 141, "in");
}

TEST(Bring, NothingForNoQuilts) {
    EXPECT_TRUE(planSupplies(session(0), {}).empty());
}

TEST(Bring, BuysWhatIsNeededAndNotThereAndNeverLess) {
    Session s = session(2);
    s.setting.stash = {100, 3, {{3_in, 1}}, 7_in};
    s.setting.helpers.resize(2);
    QuiltPlan a = quilt(133), b = quilt(77, 2);
    a.passes = {pass(6, 25_in, {roll(3_in, 5)})};
    b.passes = a.passes;
    const auto all = planSupplies(s, {a, b});
    EXPECT_EQ(all, planSupplies(s, {a, b}));
    for (const Supply& x : all) {
        EXPECT_DOUBLE_EQ(x.buy, std::max(0.0, x.need - x.have)) << x.item;
        EXPECT_GT(x.need, 0) << x.item;
        EXPECT_GE(x.have, 0) << x.item;
    }
}

} // namespace
} // namespace bastewright
