#include "planners/points/grid_layout.h"
#include "planners/points/repeat_images.h"
#include "property/points/made_tops.h"

#include <gmock/gmock.h>

#include <set>

namespace bastewright::points {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr Flip kHalfTurn{true, true}, kAcross{true, false}, kDown{false, true};

/// A top with its frame of single blocks and the places that each kind of place allows.
struct Given {
    explicit Given(const Job& job, int across = 1)
        : rules{rulesFor(job)}
        , frame{rules.top(), *frameOf(job), across, 1} {
        for (int place = 0; place < frame.count(); ++place) {
            const Field f = frame.field(place);
            Spots inside;
            for (const Spot p : rules.places(f, rules.step))
                if ((p.x > f.x0 + 1e-7 || f.x0 == rules.top().x0) && p.x < f.x1 - 1e-7 &&
                    (p.y > f.y0 + 1e-7 || f.y0 == rules.top().y0) && p.y < f.y1 - 1e-7)
                    inside.push_back(p);
            places.push_back(inside);
        }
    }
    RepeatImages images() const { return {rules.top(), frame, places, rules.radius}; }

    Rules rules;
    RepeatFrame frame;
    std::vector<Spots> places;
};

TilePattern pattern(Spots points) {
    TilePattern out;
    out.points = std::move(points);
    return out;
}

const Spots kOneCorner{{2, 2}};                             // of a 12 in block
const Spots kTwoTurned{{2, 3}, {10, 9}};                    // half turn
const Spots kFour{{2, 3}, {10, 3}, {2, 9}, {10, 9}};        // mirrored both ways

TEST(RepeatImages, AreTheFlipsThatBothTheTopAndThePatternHave) {
    const Given every4{madeTop(Seams::every4, 60_in, 72_in, 2_in)};
    const RepeatImages images = every4.images();
    EXPECT_THAT(images.flipsOf(pattern(kFour)), ElementsAre(kHalfTurn, kAcross, kDown));
    EXPECT_THAT(images.flipsOf(pattern(kTwoTurned)), ElementsAre(kHalfTurn));
    EXPECT_THAT(images.flipsOf(pattern(kOneCorner)), IsEmpty());
}

TEST(RepeatImages, DiagonalsOneWayAllowOnlyTheHalfTurn) {
    const Given triangles{madeTop(Seams::triangles6, 60_in, 72_in, 0_in)};
    EXPECT_THAT(triangles.images().flipsOf(pattern(kFour)), ElementsAre(kHalfTurn));
}

TEST(RepeatImages, SashingBelongsToTheBlockBeforeItSoThatThereIsNone) {
    const Given sashed{madeTop(Seams::sashing, 60_in, 72_in, 2_in)};
    EXPECT_THAT(sashed.images().flipsOf(pattern(kFour)), IsEmpty());
}

TEST(RepeatImages, TheFirstOfEachSetOfImagesIsSearchedItself) {
    const Given every4{madeTop(Seams::every4, 60_in, 72_in, 2_in)};
    const RepeatImages images = every4.images();
    // Kinds of place, row by row: 0 1 2 / 3 4 5 / 6 7 8.
    const auto sources = [&](const std::vector<Flip>& flips) {
        std::vector<int> out;
        for (int place = 0; place < 9; ++place) {
            const auto source = images.sourceOf(place, flips);
            out.push_back(source ? source->place : place);
        }
        return out;
    };
    EXPECT_THAT(sources({kHalfTurn}), ElementsAre(0, 1, 2, 3, 4, 3, 2, 1, 0));
    EXPECT_THAT(sources({kHalfTurn, kAcross, kDown}), ElementsAre(0, 1, 0, 3, 4, 3, 0, 1, 0));
    EXPECT_THAT(sources({}), ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8));
}

TEST(RepeatImages, NeighboursAreChosenTogether) {
    // Four blocks across make two tiles of two: the left side's stretch touches the right one's.
    const Given pairs{madeTop(Seams::every4, 60_in, 72_in, 2_in), 2};
    const RepeatImages images = pairs.images();
    // Kinds of place, row by row: 0 1 / 2 3 / 4 5.
    EXPECT_FALSE(images.sourceOf(3, {kHalfTurn, kAcross}));
    EXPECT_FALSE(images.sourceOf(1, {kAcross}));
    const auto foot = images.sourceOf(5, {kHalfTurn});
    ASSERT_TRUE(foot);
    EXPECT_EQ(foot->place, 0);
}

TEST(RepeatImages, FlippedTwiceAPointIsWhereItWas) {
    const Given every4{madeTop(Seams::every4, 60_in, 72_in, 2_in)};
    const RepeatImages images = every4.images();
    for (const Flip flip : {kHalfTurn, kAcross, kDown})
        for (int place = 0; place < 9; ++place) {
            const int image = (flip.y ? 2 - place / 3 : place / 3) * 3 +
                              (flip.x ? 2 - place % 3 : place % 3);
            const Spots& from = every4.places[static_cast<std::size_t>(place)];
            const Spots there = images.image(place, from, flip);
            const Spots back = images.image(image, there, flip);
            ASSERT_EQ(back.size(), from.size());
            for (std::size_t i = 0; i < from.size(); ++i) {
                EXPECT_TRUE(every4.frame.field(image).contains(there[i], 1e-6));
                EXPECT_LT(distanceSquared(back[i], from[i]), 1e-12);
            }
        }
}

/// What a person sees: turned half round, a top whose inside is its own image is the same top.
TEST(RepeatImages, ATopThatIsItsOwnImageInsideIsSoToItsEdges) {
    const Job job = madeTop(Seams::every3, 60_in, 72_in, 2_in);
    const Rules rules = rulesFor(job);
    const auto layout = gridLayout(rules, *frameOf(job), 1, nullptr, {});
    ASSERT_TRUE(layout && layout->regular);
    std::set<std::pair<long, long>> points, turned;
    for (const Spot p : layout->layout.spots()) {
        points.emplace(std::lround(p.x * 1e4), std::lround(p.y * 1e4));
        turned.emplace(std::lround((60 - p.x) * 1e4), std::lround((72 - p.y) * 1e4));
    }
    // With no place to differ in, the flips are those of the pattern.
    const RepeatImages images{rules.top(), layout->frame,
                              std::vector<Spots>(static_cast<std::size_t>(layout->frame.count())),
                              rules.radius};
    ASSERT_THAT(images.flipsOf(layout->repeat.tile), ::testing::Contains(kHalfTurn));
    EXPECT_EQ(points, turned);
}

} // namespace
} // namespace bastewright::points
