#include "session/checks.h"
#include "unit/session/table_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace bastewright {
namespace {

using made::Reporter;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

class Answers : public testing::Test {
protected:
    void answer(const std::string& about, std::int64_t yes, const std::string& task = "check-1") {
        add("answer", happened::Answer{.task = task, .check = about, .yes = yes});
    }
    void tick() { add("tick", happened::Step{.task = "check-1"}); }
    void takeBack(const std::string& target) { add("undo", happened::Undone{target}); }
    /// Pass 1 as far as the check of its underside, which is left open.
    void SetUp() override {
        Reporter r;
        r.start().open("A1", "Ada").open("B1", "Bo").step("smooth-1");
        r.close("A1", "Ada").close("B1", "Bo");
        events_ = r.events();
    }
    LiveState state() const { return fold(made::pinnedPlan(), made::smallSetting(), events_); }
    Task step() const {
        for (const auto& t : made::pinnedPlan().tasks)
            if (t.id == "check-1")
                return t;
        return {};
    }
    std::string last() const { return events_.back().id; }

private:
    void add(const char* id, What what) {
        const auto n = events_.size();
        events_.push_back(
            {id + std::to_string(n), made::kStartMs + 1000 * std::int64_t(n), std::move(what)});
    }
    std::vector<Event> events_;
};

TEST_F(Answers, ThreeThingsAreAskedBeforeAPassIsLetGoAndCautionsAreReadBeforeAnything) {
    EXPECT_THAT(checksOf(TaskKind::checkUnderside),
                ElementsAre(Check::palmGlides, Check::underside, Check::spare));
    for (const auto kind : {TaskKind::smooth, TaskKind::shift, TaskKind::layTop, TaskKind::cool})
        EXPECT_THAT(checksOf(kind), IsEmpty());
    EXPECT_THAT(checksOf(TaskKind::setUp), ElementsAre(Check::cautions));
    for (const Check c : {Check::cautions, Check::palmGlides, Check::underside, Check::spare})
        EXPECT_EQ(checkNamed(name(c)), c);
    EXPECT_FALSE(checkNamed("weather"));
}

TEST_F(Answers, AreKeptEachByItself) {
    EXPECT_FALSE(answerTo(state(), "check-1", Check::spare));
    answer("palm-glides", 1);
    answer("spare", 0);
    const auto s = state();
    EXPECT_THAT(s.ignored, IsEmpty());
    EXPECT_EQ(answerTo(s, "check-1", Check::palmGlides), true);
    EXPECT_EQ(answerTo(s, "check-1", Check::spare), false);
    EXPECT_FALSE(answerTo(s, "check-1", Check::underside));
    EXPECT_FALSE(allAnsweredYes(s, step()));
}

TEST_F(Answers, ANoHoldsTheStepUntilItIsPutRight) {
    answer("palm-glides", 1);
    answer("underside", 0);
    tick();
    auto s = state();
    EXPECT_FALSE(s.doneTasks.contains("check-1"));
    EXPECT_THAT(s.ignored, ElementsAre(HasSubstr("it does not lie flat underneath")));
    EXPECT_FALSE(releaseBlockedBy(made::pinnedPlan(), s, 0, 1).empty());
    answer("underside", 1);
    answer("spare", 1);
    EXPECT_TRUE(allAnsweredYes(state(), step()));
    tick();
    s = state();
    EXPECT_TRUE(s.doneTasks.contains("check-1"));
    EXPECT_TRUE(releaseBlockedBy(made::pinnedPlan(), s, 0, 1).empty());
}

TEST_F(Answers, AreTakenBackLikeAnythingElse) {
    answer("spare", 1);
    answer("spare", 0);
    takeBack(last());
    EXPECT_EQ(answerTo(state(), "check-1", Check::spare), true) << "the earlier one counts again";
}

TEST_F(Answers, WithoutAnyTheStepMayBeTickedFromPaper) {
    tick();
    EXPECT_TRUE(state().doneTasks.contains("check-1"));
}

TEST_F(Answers, WhatIsNotAskedChangesNothing) {
    answer("weather", 1);
    answer("spare", 2);
    answer("spare", 1, "smooth-1");
    answer("spare", 1, "sing");
    const auto s = state();
    EXPECT_TRUE(s.answers.empty());
    EXPECT_THAT(s.ignored,
                ElementsAre(HasSubstr("\"weather\" is not asked"),
                            HasSubstr("1 for yes or 0 for no, not 2"),
                            HasSubstr("is not asked at the smoothing"), HasSubstr("no task sing")));
}

} // namespace
} // namespace bastewright
