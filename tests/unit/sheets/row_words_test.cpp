#include "sheets/row_words.h"

#include <gtest/gtest.h>

namespace bastewright::sheets {
namespace {

/// Six rows across, four marks each, every second one half a step over.
QuiltPlan inRows() {
    QuiltPlan quilt;
    PinRows rows;
    rows.gap = rows.step = 4_in;
    rows.ribbons.odd = {2_in, 6_in, 10_in, 14_in};
    rows.ribbons.even = {4_in, 8_in, 12_in, 16_in};
    for (int i = 0; i < 6; ++i) {
        const Length at = 2_in + 4_in * i;
        rows.ribbons.side.push_back(at);
        rows.lines.push_back({at, i % 2 == 0 ? rows.ribbons.odd : rows.ribbons.even, {}});
    }
    quilt.rows = rows;
    return quilt;
}

/// A zone with the points of these rows at these marks.
Zone zone(const QuiltPlan& quilt, std::initializer_list<int> rows,
          std::initializer_list<int> marks) {
    Zone out;
    for (const int row : rows)
        for (const int mark : marks) {
            const auto& line = quilt.rows->lines[std::size_t(row - 1)];
            out.points.push_back({{line.places[std::size_t(mark - 1)], line.at}, 0});
        }
    return out;
}

TEST(RowWords, RowsAndMarksThatFollowOneAnotherAreRuns) {
    const QuiltPlan quilt = inRows();
    const Zone one = zone(quilt, {3}, {2}), some = zone(quilt, {2, 3, 4}, {1, 2}),
               apart = zone(quilt, {1, 2, 5}, {1, 4});
    EXPECT_EQ(rowWords(quilt, {&one}), QStringLiteral("row 3, mark 2"));
    EXPECT_EQ(rowWords(quilt, {&some}), QStringLiteral("rows 2–4, marks 1–2"));
    EXPECT_EQ(rowWords(quilt, {&apart}), QStringLiteral("rows 1–2, 5, marks 1, 4"));
}

TEST(RowWords, RowsThatReachFurtherAreSaidApart) {
    const QuiltPlan quilt = inRows();
    const Zone far = zone(quilt, {1, 2}, {1, 2, 3}), near = zone(quilt, {3, 4}, {1, 2});
    EXPECT_EQ(rowWords(quilt, {&near, &far}),
              QStringLiteral("rows 1–2, marks 1–3; rows 3–4, marks 1–2"));
}

TEST(RowWords, OddAndEvenRowsWithTheirOwnMarksAreSaidTogether) {
    const QuiltPlan quilt = inRows();
    const Zone odd = zone(quilt, {1, 3, 5}, {2, 3}), even = zone(quilt, {2, 4, 6}, {1, 2, 3});
    EXPECT_EQ(rowWords(quilt, {&odd, &even}),
              QStringLiteral("rows 1–6, marks 2–3 (even rows 1–3)"));
}

TEST(RowWords, WithoutRowsThereIsNothingToSay) {
    QuiltPlan quilt = inRows();
    const Zone one = zone(quilt, {1}, {1});
    quilt.rows.reset();
    EXPECT_EQ(rowWords(quilt, {&one}), QString{});
}

} // namespace
} // namespace bastewright::sheets
