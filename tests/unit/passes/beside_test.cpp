#include "planners/passes/passes.h"
#include "planners/surface/arrangement.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

using namespace literals;

AxisRoom room(int quilt, int field, int anchor) {
    return {Length::inches(quilt), Length::inches(field), Length::inches(anchor)};
}

// One run fewer, or none at all: found by trying every offset in eighths of an inch.
TEST(BesideCentre, LeastOffsetThatSavesAPassEqualsBruteForce) {
    for (int quilt = 20; quilt <= 120; quilt += 3)
        for (int field = 20; field <= 70; field += 7)
            for (const int most : {3, 6, 10}) {
                const AxisRoom r = room(quilt, field, 6);
                const auto runs = [&](int eighths) { // the field's middle so far from the quilt's
                    const int over = 4 * (quilt - field), step = 8 * (field - 6);
                    const auto side = [&](int left) {
                        return left <= 0 ? 0 : (left + step - 1) / step;
                    };
                    return 1 + side(over - eighths) + side(over + eighths);
                };
                int least = -1;
                for (int e = 1; e <= 8 * most && least < 0; ++e)
                    if (runs(e) < runs(0))
                        least = e;
                const auto cuts = besideCentreCuts(r, Length::inches(most));
                ASSERT_EQ(cuts.has_value(), least > 0)
                    << quilt << " on " << field << ", at most " << most;
                if (!cuts)
                    continue;
                EXPECT_EQ(int(cuts->runs()), runs(least));
                EXPECT_EQ(std::int64_t(cuts->runs()) + 1, centredCount(r));
                EXPECT_EQ(abs(cuts->firstField.middle() - r.quilt / 2),
                          Length::inches(1) * least / 8);
                EXPECT_TRUE(cuts->firstField.contains(cuts->run(cuts->first)));
                for (std::size_t i = 0; i < cuts->runs(); ++i) {
                    EXPECT_GT(cuts->run(i).size(), Length{});
                    EXPECT_LE(cuts->run(i).size(), i == cuts->first ? r.field : r.field - r.anchor);
                }
            }
}

// Boundaries move to seams, but never for a pass more.
TEST(BesideCentre, SnappingToSeamsCostsNoPass) {
    for (int quilt = 40; quilt <= 120; quilt += 4)
        for (int field = 20; field <= 70; field += 6) {
            const AxisRoom r = room(quilt, field, 6);
            std::vector<Length> seams;
            for (int at = 3; at < quilt; at += 12)
                seams.push_back(Length::inches(at));
            const auto bare = besideCentreCuts(r, 6_in), snapped = besideCentreCuts(r, 6_in, seams);
            ASSERT_EQ(bare.has_value(), snapped.has_value());
            if (bare) {
                EXPECT_EQ(bare->runs(), snapped->runs());
            }
        }
}

struct Choices {
    Job job;
    Setting setting;
    std::vector<PassChoice> all;
};

Choices choicesFor(int width, int length, Table table, Basting::Start start) {
    Choices c;
    c.job.top.width = {Length::inches(width)};
    c.job.top.length = {Length::inches(length)};
    c.job.basting.start = start;
    c.setting.room.tables = {table};
    const Size top{Length::inches(width), Length::inches(length)};
    const Size backing{top.width + 8_in, top.length + 8_in};
    const PassRequest request{c.job, c.setting, {top, top, backing}, 400};
    c.all = passChoices(request, arrangements(c.setting.room.tables));
    return c;
}

const PassChoice* beside(const Choices& c) {
    const auto at = std::ranges::find_if(c.all, [](const PassChoice& p) {
        return p.start == Basting::Start::centred && p.summary.offCentre != Vec{};
    });
    return at == c.all.end() ? nullptr : &*at;
}

// 72 in on a field of 68: centred takes three passes, two where the middle lies 2 in beside.
TEST(BesideCentre, IsAWayOfItsOwnThatSaysWhereTheMiddleLies) {
    const Choices c = choicesFor(72, 26, {72_in, 30_in, 1}, Basting::Start::best);
    const PassChoice* way = beside(c);
    ASSERT_NE(way, nullptr);
    EXPECT_EQ(way->summary.passes, 2);
    EXPECT_EQ(abs(way->summary.offCentre.dx), 2_in);
    EXPECT_NE(way->summary.why.english().find("beside the middle of the table: 2 in"), std::string::npos)
        << way->summary.why;
}

TEST(BesideCentre, IsShownButNotTakenWhereACentredStartWasAskedFor) {
    const Choices c = choicesFor(72, 26, {72_in, 30_in, 1}, Basting::Start::centred);
    ASSERT_NE(beside(c), nullptr);
    EXPECT_EQ(c.all.front().summary.offCentre, Vec{});
    EXPECT_EQ(c.all.front().summary.passes, 3);
}

TEST(BesideCentre, IsNotOfferedWhereItSavesNothing) {
    EXPECT_EQ(beside(choicesFor(40, 24, {72_in, 30_in, 1}, Basting::Start::best)), nullptr);
}

} // namespace
} // namespace bastewright
