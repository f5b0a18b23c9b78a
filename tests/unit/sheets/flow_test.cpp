#include "sheets/flow.h"
#include "sheets/two_columns.h"

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace bastewright::sheets {
namespace {

Block block(double height, bool keep = false, double before = 0) {
    return {.height = height, .before = before, .keepWithNext = keep};
}

std::vector<std::size_t> sizes(const std::vector<PlacedPage>& pages) {
    std::vector<std::size_t> out;
    for (const auto& p : pages)
        out.push_back(p.size());
    return out;
}

TEST(Flow, fillsAPageBeforeTurningIt) {
    const auto pages = paginate({block(40), block(60), block(10)}, 100);
    EXPECT_EQ(sizes(pages), (std::vector<std::size_t>{2, 1}));
    EXPECT_EQ(pages[0][1].y, 40);
    EXPECT_EQ(pages[1][0].y, 0);
}

TEST(Flow, aHeadingNeverEndsAPage) {
    const auto pages = paginate({block(70), block(10, true), block(30)}, 100);
    EXPECT_EQ(sizes(pages), (std::vector<std::size_t>{1, 2}));
}

TEST(Flow, whiteAboveABlockIsLeftOutAtTheTop) {
    const auto pages = paginate({block(90, false, 20), block(50, false, 20)}, 100);
    EXPECT_EQ(pages[0][0].y, 0);
    EXPECT_EQ(pages[1][0].y, 0);
}

TEST(Flow, headingsOfATableAreRepeatedWhereItRunsOver) {
    const auto head = std::make_shared<Block>(block(10, true));
    Flow flow{*head};
    for (int i = 0; i < 12; ++i) {
        flow.push_back(block(10));
        flow.back().repeat = head;
    }
    const auto pages = paginate(flow, 100);
    EXPECT_EQ(sizes(pages), (std::vector<std::size_t>{10, 4})); // 1 + 9 rows, then 1 + 3
}

TEST(Flow, aBlockMayAskForANewPage) {
    Flow flow{block(10), block(10)};
    flow[1].newPage = true;
    EXPECT_EQ(sizes(paginate(flow, 100)), (std::vector<std::size_t>{1, 1}));
    flow[0].newPage = true;
    EXPECT_EQ(paginate(flow, 100).size(), 2u) << "no empty page in front";
}

TEST(Flow, aChainLongerThanAPageBreaksButLosesNothing) {
    Flow flow(15, block(10, true));
    EXPECT_EQ(sizes(paginate(flow, 100)), (std::vector<std::size_t>{10, 5}));
}

TEST(Flow, whateverTheBlocksNothingIsLostAndNothingStandsBelowThePage) {
    std::mt19937_64 random{20240611};
    RecordProperty("seed", 20240611);
    for (int round = 0; round < 300; ++round) {
        Flow flow;
        const auto n = 1 + random() % 60;
        for (std::size_t i = 0; i < n; ++i) {
            flow.push_back(
                block(1 + double(random() % 99), random() % 4 == 0, double(random() % 20)));
            flow.back().newPage = random() % 15 == 0;
        }
        std::size_t next = 0;
        for (const auto& page : paginate(flow, 100)) {
            double y = 0;
            EXPECT_FALSE(page.empty());
            for (const auto& placed : page) {
                ASSERT_LT(next, flow.size());
                EXPECT_EQ(placed.block.height, flow[next].height) << "order kept";
                EXPECT_GE(placed.y, y - 1e-9) << "no overlap";
                y = placed.y + placed.block.height;
                EXPECT_LE(y, 100 + 1e-6);
                ++next;
            }
        }
        EXPECT_EQ(next, flow.size());
    }
}

/// Blocks that note where they were drawn.
Flow noting(std::size_t n, std::mt19937_64& random,
            std::vector<std::pair<std::size_t, QRectF>>& seen) {
    Flow flow;
    for (std::size_t i = 0; i < n; ++i) {
        flow.push_back(block(5 + double(random() % 40), random() % 5 == 0, double(random() % 6)));
        flow.back().draw = [i, &seen](QPainter&, QRectF at) { seen.emplace_back(i, at); };
    }
    return flow;
}

// Down the left column, then down the right one, then on the next page: all in order, none lost,
// nothing below the page or across the gutter, and a heading ends no column.
TEST(Flow, twoColumnsLoseNothingAndStayInTheirPlaces) {
    constexpr double kHeight = 200, kWidth = 300;
    std::mt19937_64 random{20260211};
    RecordProperty("seed", 20260211);
    QImage image{8, 8, QImage::Format_Grayscale8};
    QPainter painter{&image};
    for (int round = 0; round < 200; ++round) {
        std::vector<std::pair<std::size_t, QRectF>> seen;
        const Flow inner = noting(1 + random() % 50, random, seen);
        Flow flow{block(double(random() % 190)), inTwoColumns(inner)};
        for (const auto& page : paginate(flow, kHeight)) {
            const std::size_t before = seen.size();
            for (const auto& placed : page) {
                EXPECT_LE(placed.y + placed.block.height, kHeight + 1e-6);
                if (placed.block.draw)
                    placed.block.draw(painter, {0, placed.y, kWidth, placed.block.height});
            }
            for (std::size_t i = before; i < seen.size(); ++i) {
                const QRectF at = seen[i].second;
                EXPECT_LE(at.bottom(), kHeight + 1e-6);
                EXPECT_NEAR(at.width(), columnWidth(kWidth), 1e-9);
                EXPECT_TRUE(at.left() == 0 || std::abs(at.right() - kWidth) < 1e-9);
                const bool endsColumn =
                    i + 1 == seen.size() || seen[i + 1].second.left() != at.left();
                if (endsColumn && seen[i].first + 1 < inner.size()) {
                    EXPECT_FALSE(inner[seen[i].first].keepWithNext) << "a heading left alone";
                }
            }
        }
        ASSERT_EQ(seen.size(), inner.size());
        for (std::size_t i = 0; i < seen.size(); ++i)
            EXPECT_EQ(seen[i].first, i);
    }
}

TEST(Flow, whatFitsInTwoColumnsIsOfEvenHeight) {
    const auto pages = paginate({inTwoColumns(Flow(10, block(10)))}, 100);
    ASSERT_EQ(pages.size(), 1u);
    EXPECT_NEAR(pages[0][0].block.height, 50, 3);
}

} // namespace
} // namespace bastewright::sheets
