#include "measures/region.h"
#include "plan/zone_words.h"
#include "ways/point_words.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace bastewright {
namespace {

Length inches(double v) {
    return Length::inch64ths(static_cast<std::int64_t>(v * 64));
}

/// Rows 4 in apart with marks 5 in apart, even rows half a step over.
PinRows made(int rows, int marks, PinRows::Along along = PinRows::Along::width) {
    PinRows out;
    out.along = along;
    out.gap = inches(4);
    out.step = inches(5);
    for (int k = 0; k < marks; ++k) {
        out.ribbons.odd.push_back(inches(2 + 5 * k));
        out.ribbons.even.push_back(inches(4.5 + 5 * k));
    }
    for (int i = 0; i < rows; ++i) {
        out.ribbons.side.push_back(inches(2 + 4 * i));
        out.lines.push_back({out.ribbons.side.back(), {}, {}});
        out.lines.back().places = marksOf(out, static_cast<std::size_t>(i));
    }
    return out;
}

/// Everything of the rows that lies in an area.
Zone zoneIn(const PinRows& rows, const Region& area) {
    Zone zone;
    zone.area = area.bounds();
    const RowMarks marks{rows};
    for (const auto& [at, mark] : marks.all())
        if (area.contains(at))
            zone.points.push_back({at, 0});
    for (const Point& p : rows.singles)
        if (area.contains(p))
            zone.points.push_back({p, 0});
    return zone;
}

Rect rect(double x0, double y0, double x1, double y1) {
    return {inches(x0), inches(y0), inches(x1), inches(y1)};
}

std::string words(const PinRows& rows, const Region& area, const Job& job = {}) {
    return zoneRowsWords(zoneIn(rows, area), rows, job).english();
}

TEST(ZoneWords, WholeRowsNeedNoMarks) {
    const PinRows rows = made(13, 19);
    EXPECT_EQ(words(rows, rect(0, 0, 200, 200)), "rows 1–13");
    EXPECT_EQ(words(rows, rect(0, 0, 200, 4)), "row 1");
    EXPECT_EQ(words(rows, rect(0, 28, 200, 200)), "rows 8–13");
}

TEST(ZoneWords, APartOfEveryRowIsSaidByItsMarks) {
    const PinRows rows = made(13, 19);
    // Between mark 11 of the even rows (54.5 in) and mark 12 of the odd ones (57 in).
    EXPECT_EQ(words(rows, rect(0, 0, 55.5, 32)), "rows 1–8 as far as mark 11");
    EXPECT_EQ(words(rows, rect(55.5, 0, 200, 32)), "rows 1–8 from mark 12 on");
    EXPECT_EQ(words(rows, rect(15.5, 0, 55.5, 32)), "rows 1–8, marks 4–11");
    EXPECT_EQ(words(rows, rect(50.5, 0, 55.5, 4)), "row 1, mark 11");
}

TEST(ZoneWords, HalfAStepOverEvenRowsAreSaidApart) {
    const PinRows rows = made(13, 19);
    EXPECT_EQ(words(rows, rect(0, 0, 53, 32)), "rows 1–8 as far as mark 11 (even rows: mark 10)");
    EXPECT_EQ(words(rows, rect(53, 0, 200, 32)),
              "rows 1–8 from mark 12 on (even rows: from mark 11)");
    EXPECT_EQ(words(rows, rect(13, 0, 55.5, 32)), "rows 1–8, marks 4–11 (even rows: 3–11)");
}

TEST(ZoneWords, AStepIsASecondPart) {
    const PinRows rows = made(13, 19);
    EXPECT_EQ(words(rows, Region{{rect(0, 0, 55.5, 32), rect(0, 32, 50.5, 60)}}),
              "rows 1–8 as far as mark 11, rows 9–13 as far as mark 10");
}

TEST(ZoneWords, TwoPartsOfOneRowAreBothSaid) {
    const PinRows rows = made(4, 9);
    EXPECT_EQ(words(rows, Region{{rect(0, 0, 15.5, 20), rect(30.5, 0, 60, 20)}}),
              "rows 1–4 as far as mark 3, rows 1–4 from mark 7 on");
}

TEST(ZoneWords, AMarkThatIsLeftOutMakesNoDifference) {
    PinRows rows = made(8, 19);
    std::erase(rows.lines[2].places, inches(52)); // mark 11
    EXPECT_EQ(words(rows, rect(0, 0, 55.5, 32)), "rows 1–8 as far as mark 11");
    std::erase(rows.lines[3].places, rows.ribbons.even.back());
    EXPECT_EQ(words(rows, rect(55.5, 0, 200, 32)), "rows 1–8 from mark 12 on");
}

TEST(ZoneWords, APinBesideItsMarkBelongsToItsMark) {
    PinRows rows = made(8, 19);
    rows.lines[4].aside.push_back({inches(52), {inches(56), rows.lines[4].at}});
    EXPECT_EQ(words(rows, rect(0, 0, 55.5, 32)),
              "rows 1–4 as far as mark 11, row 5 as far as mark 10, rows 6–8 as far as mark 11");
}

TEST(ZoneWords, SinglePinsAreCounted) {
    PinRows rows = made(3, 3);
    rows.singles = {{inches(1), inches(1)}, {inches(1), inches(9)}};
    EXPECT_EQ(words(rows, rect(0, 0, 40, 40)), "rows 1–3, 2 single pins");
    Job dots;
    dots.basting.with = Basting::With::dots;
    EXPECT_EQ(words(rows, rect(0, 0, 40, 4), dots), "row 1, 1 single dot");
    EXPECT_EQ(words(rows, rect(100, 100, 140, 140)), "");
}

/// A reader who has the ribbons and the parts, and nothing else.
std::set<Point> read(const std::vector<RowsPart>& parts, const PinRows& rows) {
    std::set<Point> out;
    const RowMarks marks{rows};
    for (const auto& [at, mark] : marks.all())
        for (const RowsPart& p : parts) {
            const MarkSpan& span = mark.row % 2 == 1 ? p.odd : p.even;
            if (mark.row >= p.first && mark.row <= p.last && mark.mark >= span.from.value_or(1) &&
                mark.mark <= span.to.value_or(mark.mark))
                out.insert(at);
        }
    return out;
}

TEST(ZoneWords, WhoeverHasTheRibbonsFindsEveryPointAndNoOther) {
    std::mt19937 engine{20261130}; // NOLINT: the same cases every time
    const auto below = [&](int n) { return static_cast<int>(engine() % static_cast<unsigned>(n)); };
    for (int round = 0; round < 500; ++round) {
        PinRows rows = made(3 + below(12), 3 + below(15),
                            below(2) == 0 ? PinRows::Along::width : PinRows::Along::length);
        for (auto& line : rows.lines) {
            for (int k = below(3); k > 0 && !line.places.empty(); --k)
                line.places.erase(line.places.begin() +
                                  below(static_cast<int>(line.places.size())));
            if (!line.places.empty() && below(2) == 0) {
                const Length mark = line.places[static_cast<std::size_t>(
                    below(static_cast<int>(line.places.size())))];
                line.aside = {{mark, placeIn(rows.along, mark + inches(below(5) - 2),
                                             line.at + inches(below(3) - 1))}};
            }
        }
        std::vector<Rect> area;
        for (int k = 1 + below(2); k > 0; --k) {
            const double x = below(60), y = below(40);
            area.push_back(rect(x, y, x + 1 + below(60), y + 1 + below(40)));
        }
        const Zone zone = zoneIn(rows, Region{area});
        std::set<Point> points;
        for (const PlacedPoint& p : zone.points)
            points.insert(p.at);
        EXPECT_EQ(read(rowsOf(zone, rows), rows), points) << "round " << round;
    }
}

} // namespace
} // namespace bastewright
