#include "planners/passes/axis.h"

#include <gtest/gtest.h>

#include <deque>
#include <map>

namespace bastewright {
namespace {

using namespace literals;

/// Least passes along an axis by breadth-first search over basted stretches, on whole inches: the
/// first field lays any stretch of at most U that `mayStart` allows; each further pass adds at most
/// U − v at one end. Shares nothing with the formulas.
template <class MayStart>
int leastByBruteForce(int quilt, int field, int anchor, MayStart mayStart) {
    std::map<std::pair<int, int>, int> passes;
    std::deque<std::pair<int, int>> queue;
    for (int lo = 0; lo < quilt; ++lo)
        for (int hi = lo + 1; hi <= quilt && hi - lo <= field; ++hi)
            if (mayStart(lo, hi)) {
                passes[{lo, hi}] = 1;
                queue.push_back({lo, hi});
            }
    while (!queue.empty()) {
        const auto [lo, hi] = queue.front();
        queue.pop_front();
        const int n = passes[{lo, hi}];
        if (lo == 0 && hi == quilt)
            return n;
        for (int add = 1; add <= field - anchor; ++add)
            for (const auto& next :
                 {std::pair{std::max(0, lo - add), hi}, std::pair{lo, std::min(quilt, hi + add)}})
                if (passes.try_emplace(next, n + 1).second)
                    queue.push_back(next);
    }
    return -1;
}

AxisRoom room(int quilt, int field, int anchor) {
    return {Length::inches(quilt), Length::inches(field), Length::inches(anchor)};
}

struct Case {
    int quilt, field, anchor;
};
std::vector<Case> everyCase() {
    std::vector<Case> out;
    for (int quilt = 6; quilt <= 120; quilt += 12)
        for (int field = 14; field <= 116; field += 10)
            for (const int anchor : {6, 8})
                out.push_back({quilt, field, anchor});
    return out;
}

TEST(AxisCounts, WithoutACentreEqualBruteForce) {
    for (const auto& [q, u, v] : everyCase())
        ASSERT_EQ(freeCount(room(q, u, v)),
                  leastByBruteForce(q, u, v, [](int, int) { return true; }))
            << "quilt " << q << ", field " << u << ", anchor " << v;
}

TEST(AxisCounts, CentredEqualBruteForce) {
    for (const auto& [q, u, v] : everyCase()) {
        // A stretch in whole inches is centred only where the parities agree: U even, Q even here.
        const auto centred = [q = q](int lo, int hi) { return lo + hi == q; };
        ASSERT_EQ(centredCount(room(q, u, v)), leastByBruteForce(q, u, v, centred))
            << "quilt " << q << ", field " << u << ", anchor " << v;
    }
}

TEST(AxisCounts, FewestShiftsEqualBruteForce) {
    for (const auto& [q, u, v] : everyCase()) {
        // Some position of the field holds the stretch and the margin on both sides of the middle.
        const int margin = std::min(12, u / 2);
        const auto holdsCentre = [&](int lo, int hi) {
            const int from = std::min(lo, std::max(0, q / 2 - margin));
            const int to = std::max(hi, std::min(q, q / 2 + margin));
            return to - from <= u;
        };
        ASSERT_EQ(int(fewestCuts(room(q, u, v)).runs()), leastByBruteForce(q, u, v, holdsCentre))
            << "quilt " << q << ", field " << u << ", anchor " << v;
    }
}

std::vector<Length> blockSeams(int quilt, int border, int block, int sashing) {
    std::vector<Length> out;
    for (int at = border; at < quilt; at += block + sashing) {
        out.push_back(Length::inches(at));
        if (sashing > 0 && at + block < quilt)
            out.push_back(Length::inches(at + block));
    }
    return out;
}

void expectSound(const AxisRoom& r, const AxisCuts& cuts) {
    ASSERT_GE(cuts.at.size(), 2u);
    EXPECT_EQ(cuts.at.front(), Length{});
    EXPECT_EQ(cuts.at.back(), r.quilt);
    for (std::size_t i = 0; i < cuts.runs(); ++i) {
        EXPECT_GT(cuts.run(i).size(), Length{});
        EXPECT_LE(cuts.run(i).size(), i == cuts.first ? r.field : r.field - r.anchor);
    }
    EXPECT_EQ(cuts.firstField.size(), r.field);
    EXPECT_TRUE(cuts.firstField.contains(cuts.run(cuts.first)));
}

TEST(AxisCuts, AreSoundAndSnappingCostsNoPass) {
    for (const auto& [q, u, v] : everyCase()) {
        SCOPED_TRACE(testing::Message() << "quilt " << q << ", field " << u << ", anchor " << v);
        const AxisRoom r = room(q, u, v);
        for (const auto& seams :
             {std::vector<Length>{}, blockSeams(q, 3, 10, 2), blockSeams(q, 0, 9, 0)}) {
            const AxisCuts centred = centredCuts(r, seams);
            expectSound(r, centred);
            EXPECT_EQ(std::int64_t(centred.runs()), centredCount(r));
            EXPECT_LE(abs(centred.run(centred.first).middle() - r.quilt / 2),
                      Length::nanometres(1));
            const AxisCuts free = freeCuts(r, seams);
            expectSound(r, free);
            EXPECT_EQ(std::int64_t(free.runs()), freeCount(r));
            const AxisCuts fewest = fewestCuts(r, seams);
            expectSound(r, fewest);
            EXPECT_EQ(fewest.runs(), fewestCuts(r).runs());
        }
    }
}

TEST(AxisCuts, StopAtSeamsWherePossible) {
    // Harbour Lights across two tables end to end: blocks of 10, sashing 2, border 3.
    const AxisCuts cuts = centredCuts(room(88, 26, 6), blockSeams(88, 3, 10, 2));
    ASSERT_EQ(cuts.runs(), 5u);
    EXPECT_EQ(cuts.at[2], 37_in);
    EXPECT_EQ(cuts.at[3], 51_in);
}

} // namespace
} // namespace bastewright
