#include "checker/rule.h"
#include "unit/checker/good_plan.h"

#include <gmock/gmock.h>

namespace bastewright::testing {
namespace {

using ::testing::IsEmpty;

std::string sentences(const Findings& findings) {
    std::string out;
    for (const Finding& f : findings)
        out += f.subject + " " + f.field + ": " + f.text.english() + "\n";
    return out;
}

TEST(GoodPlan, WithPinsHasNoFindings) {
    const Good good = goodPlan();
    EXPECT_EQ(sentences(checkPlan(good.session, good.plan)), "");
}

TEST(GoodPlan, WithDotsHasNoFindings) {
    const Good good = goodPlan(Basting::With::dots);
    EXPECT_EQ(sentences(checkPlan(good.session, good.plan)), "");
}

TEST(GoodPlan, WithDotsAndThickBattingHasNoFindings) {
    const Good good = goodPlan(Basting::With::dots, 13_mm);
    EXPECT_EQ(sentences(checkPlan(good.session, good.plan)), "");
}

TEST(GoodPlan, WithThreadHasNoFindings) {
    const Good good = goodPlan(Basting::With::thread);
    EXPECT_EQ(sentences(checkPlan(good.session, good.plan)), "");
}

TEST(GoodPlan, WithSprayHasNoFindings) {
    const Good good = goodPlan(Basting::With::spray);
    EXPECT_EQ(sentences(checkPlan(good.session, good.plan)), "");
}

TEST(GoodPlan, OfTwoQuiltsHasNoFindings) {
    const Good good = goodPair();
    EXPECT_EQ(sentences(checkPlan(good.session, good.plan)), "");
}

} // namespace
} // namespace bastewright::testing
