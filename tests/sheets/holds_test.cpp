#include "planners/whole/whole.h"
#include "property/checked_plans/random_session.h"
#include "sheets/pages/helper_calls.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace bastewright {
namespace {

using sheets::HoldPoint;
using sheets::Part;

std::set<int> numbersIn(const std::vector<HoldPoint>& holds) {
    std::set<int> out;
    for (const HoldPoint& hold : holds)
        out.insert(hold.number);
    return out;
}

/// What somebody's page, which names their holds once, tells them to set in a pass: of all numbers
/// that are theirs those that are called.
std::set<int> readFor(const sheets::UsualHolds& usual, const Part& part) {
    if (usual.other && usual.other->pass == part.pass)
        return numbersIn(usual.other->holds);
    std::set<int> own{usual.own.begin(), usual.own.end()};
    for (const auto& [side, rounds] : usual.beside)
        own.insert(rounds.begin(), rounds.end());
    const std::set<int> called = numbersIn(sheets::holdOrder(*part.pass));
    std::set<int> out;
    std::ranges::set_intersection(own, called, std::inserter(out, out.end()));
    return out;
}

/// The n-th hold of a long or of a short side has one number in all passes.
void expectOneNumber(const QuiltPlan& quilt) {
    std::map<std::pair<bool, std::size_t>, std::set<int>> numbers;
    for (const Pass& pass : quilt.passes)
        for (const Hold& hold : pass.holds)
            for (std::size_t k = 0; k < hold.numbers.size(); ++k)
                numbers[{isAcross(hold.side), k}].insert(hold.numbers[k]);
    for (const auto& [turn, all] : numbers)
        EXPECT_EQ(all.size(), 1U) << (turn.first ? "head and foot, " : "left and right, ")
                                  << turn.second << " from the middle";
}

// Whoever reads their numbers once sets, in every pass, what the plan has for them; and every hold
// is somebody's.
TEST(HoldsOnPaper, KeepTheirNumbersThroughManySessions) {
    constexpr std::uint64_t kSeeds = 30;
    int once = 0, onceButForOne = 0, passByPass = 0;
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const Session session = testing::randomSession(seed);
        const Plan plan = planWhole(session);
        std::map<std::pair<std::size_t, int>, std::vector<HoldPoint>> set;
        std::set<std::pair<std::size_t, int>> attended; ///< somebody stands at the table
        for (const Helper& helper : session.setting.helpers) {
            const auto parts = sheets::partsOf(plan, session, helper.name);
            const auto usual = sheets::usualHolds(parts);
            std::set<std::size_t> quilts;
            for (const Part& part : parts) {
                quilts.insert(part.quilt);
                auto& all = set[{part.quilt, part.pass->number}];
                all.insert(all.end(), part.holds.begin(), part.holds.end());
                if (!part.edges.empty())
                    attended.insert({part.quilt, part.pass->number});
                if (usual) {
                    EXPECT_EQ(readFor(*usual, part), numbersIn(part.holds))
                        << helper.name << ", pass " << part.pass->number;
                }
            }
            if (usual)
                ++(usual->other ? onceButForOne : once);
            else
                passByPass += quilts.size() == 1 ? 1 : 0;
        }
        for (std::size_t q = 0; q < plan.quilts.size(); ++q) {
            expectOneNumber(plan.quilts[q]);
            for (const Pass& pass : plan.quilts[q].passes) {
                if (!attended.contains({q, pass.number}))
                    continue;
                auto expected = sheets::holdOrder(pass), found = set[{q, pass.number}];
                std::ranges::sort(expected);
                std::ranges::sort(found);
                EXPECT_EQ(found, expected) << "quilt " << q << ", pass " << pass.number;
            }
        }
    }
    std::printf("said once: %d, but for one pass: %d, pass by pass: %d\n", once, onceButForOne,
                passByPass);
    EXPECT_GT(once, 2 * (onceButForOne + passByPass));
}

} // namespace
} // namespace bastewright
