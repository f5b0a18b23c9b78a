#include "session/live_session.h"
#include "unit/session/table_cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

struct At {
    explicit At(const std::string& name)
        : at{made::situation(name)}
        , live{at.session, at.plan, at.events} {}
    made::Situation at;
    LiveSession live;
};

std::vector<std::string> told(const At& at) {
    std::vector<std::string> out;
    const auto turns = at.live.turns();
    for (const auto& p : turns.whoWaitsForWhat()) {
        using Doing = PersonNow::Doing;
        const std::string next = p.task ? p.task->id : "";
        switch (p.doing) {
        case Doing::away:
            out.push_back(p.person + " is away");
            break;
        case Doing::onBreak:
            out.push_back(p.person + " has a break, then " + next);
            break;
        case Doing::works:
            out.push_back(p.person + " does " + next + (p.next ? ", then " + p.next->id : ""));
            break;
        case Doing::waits:
            out.push_back(p.person + " " + p.waitsFor.english() + ", then " + next);
            break;
        case Doing::done:
            out.push_back(p.person + " is done");
            break;
        }
    }
    return out;
}

TEST(Turns, EveryTapOfTheTableIsAnsweredAsItSays) {
    EXPECT_GE(made::cases().size(), 120u);
    std::set<std::string> seen;
    for (const auto& c : made::cases()) {
        const At at{c.when};
        const auto answer = at.live.turns().mayTick(made::tapOf(c.tap));
        EXPECT_EQ(answer.why, c.why) << c.when << ": " << c.tap;
        EXPECT_EQ(answer.said.english(), c.said) << c.when << ": " << c.tap;
        seen.insert(c.when);
    }
    for (const auto& name : made::situations())
        EXPECT_TRUE(seen.contains(name)) << "nobody taps at '" << name << "'";
}

TEST(Turns, WhatCountsFitsTheFoldAndLeavesNoCaution) {
    for (const auto& c : made::cases()) {
        At at{c.when};
        const auto tap = made::tapOf(c.tap);
        const auto answer = at.live.turns().mayTick(tap);
        if (!answer.counts())
            continue;
        const auto cautions = at.live.state().cautions.size();
        const auto then = at.at.events.back().atMs + 1000;
        EXPECT_EQ(at.live.add({"tapped", then, answer.what}).english(), "")
            << c.when << ": " << c.tap;
        if (!tap.otherwise) {
            EXPECT_EQ(at.live.state().cautions.size(), cautions) << c.when << ": " << c.tap;
        }
        const auto again = at.live.turns().mayTick(tap);
        if (tap.what != Tap::What::zone || tap.meant) {
            EXPECT_FALSE(again.counts()) << "twice at " << c.when << ": " << c.tap;
        }
    }
}

TEST(Turns, WhatIsOfferedNextIsWhatMayBeTicked) {
    for (const auto& name : made::situations()) {
        const At at{name};
        const auto turns = at.live.turns();
        std::set<std::pair<std::string, std::string>> offered;
        for (const auto& next : turns.nextSteps(0)) {
            if (!next.ready)
                continue;
            offered.emplace(next.zone, next.task);
            Tap tap{.zone = next.zone, .task = next.task, .pass = next.pass};
            tap.what = next.kind == NextStep::Kind::zone      ? Tap::What::zone
                       : next.kind == NextStep::Kind::step    ? Tap::What::step
                       : next.kind == NextStep::Kind::release ? Tap::What::release
                                                              : Tap::What::end;
            EXPECT_TRUE(turns.mayTick(tap).counts()) << name << ": " << next.zone << next.task;
        }
        // And nothing else.
        for (const auto& zone : at.at.plan.quilts.front().zones)
            EXPECT_EQ(turns.mayTick({.zone = zone.id}).counts(), offered.contains({zone.id, ""}))
                << name << ": " << zone.id;
        for (const auto& task : at.at.plan.tasks)
            if (task.zone.empty()) {
                EXPECT_EQ(turns.mayTick({.what = Tap::What::step, .task = task.id}).counts(),
                          offered.contains({"", task.id}))
                    << name << ": " << task.id;
            }
    }
}

TEST(Turns, EverybodyDoesSomethingOrWaitsForSomethingThatIsNamed) {
    using Told = std::vector<std::string>;
    const std::string cai = "Cai is away";
    EXPECT_EQ(told(At{"begun"}),
              (Told{"Ada does set-up, then backing-1", "Bo does set-up, then backing-1", cai}));
    EXPECT_EQ(told(At{"held"}), (Told{"Ada does open-p1.A1, then close-p1.A1",
                                      "Bo does open-p1.B1, then open-p1.B2", cai}));
    EXPECT_EQ(told(At{"A1 open"}), (Told{"Ada waits for Bo: B1 and B2, then close-p1.A1",
                                         "Bo does open-p1.B1, then open-p1.B2", cai}));
    EXPECT_EQ(told(At{"all open"}), (Told{"Ada waits for Bo: the smoothing, then close-p1.A1",
                                          "Bo does smooth-1, then close-p1.B1", cai}));
    EXPECT_EQ(told(At{"A1 closed"}), (Told{"Ada waits for Bo: B1 and B2, then check-1",
                                           "Bo does close-p1.B1, then close-p1.B2", cai}));
    EXPECT_EQ(told(At{"all closed"}),
              (Told{"Ada does check-1, then move-2",
                    "Bo waits for Ada: the check underneath, then move-2", cai}));
    EXPECT_EQ(told(At{"checked"}), (Told{"Ada waits until pass 1 is released, then move-2",
                                         "Bo waits until pass 1 is released, then move-2", cai}));
    EXPECT_EQ(told(At{"break"}),
              (Told{"Ada has a break, then open-p1.A1", "Bo has a break, then open-p1.B1", cai}));
    EXPECT_EQ(told(At{"Bo away"})[1], "Bo is away");
    EXPECT_EQ(told(At{"rolled up"}), (Told{"Ada is done", "Bo is done", cai}));
    EXPECT_EQ(told(At{"dots pressed"}), (Told{"Ada waits for the cooling, then turn",
                                              "Bo waits for the cooling, then check", cai}));
}

TEST(Turns, TheCallGoesRoundAndNamesTheNext) {
    const struct {
        const char* when;
        Call now;
        std::optional<Call> next;
    } all[] = {{"begun", Call::setUp, Call::lay},
               {"set up", Call::lay, Call::clamp},
               {"backing laid", Call::clamp, Call::lay},
               {"backing held", Call::lay, Call::clamp},
               {"top laid", Call::clamp, Call::pin},
               {"held", Call::pin, Call::handsOff},
               {"A1 open", Call::pin, Call::handsOff},
               {"all open", Call::handsOff, Call::close},
               {"smoothed", Call::close, Call::check},
               {"all closed", Call::check, Call::move},
               {"released", Call::move, Call::lay},
               {"all released", Call::rollUp, {}},
               {"dots laid", Call::dotBelow, Call::dotAbove},
               {"dots below", Call::dotAbove, Call::press},
               {"dots above", Call::press, Call::cool},
               {"dots pressed", Call::cool, Call::check},
               {"dots released", Call::move, Call::press}};
    for (const auto& c : all) {
        const auto call = At{c.when}.live.turns().call(0);
        EXPECT_EQ(call.now, c.now) << c.when;
        EXPECT_EQ(call.next, c.next) << c.when;
        EXPECT_FALSE(call.finished) << c.when;
    }
    EXPECT_TRUE(At{"checked"}.live.turns().call(0).toRelease);
    EXPECT_TRUE(At{"all checked"}.live.turns().call(0).toRelease);
    EXPECT_TRUE(At{"rolled up"}.live.turns().call(0).finished);
    EXPECT_EQ(At{"A1 open"}.live.turns().call(0).zones,
              (std::vector<std::string>{"p1.B1", "p1.B2"}));
}

TEST(Turns, TheMainStepSaysWhatIsLeft) {
    const auto main = [](const char* when) { return At{when}.live.turns().mainStep(0).value(); };
    EXPECT_EQ(main("A1 open").task, "smooth-1");
    EXPECT_EQ(main("A1 open").waits.english(), "2 zones left: B1 and B2");
    EXPECT_EQ(main("B2 left").waits.english(), "1 zone left: B2 (Bo)");
    EXPECT_FALSE(main("B2 left").ready);
    EXPECT_TRUE(main("all open").ready);
    EXPECT_EQ(main("checked").kind, NextStep::Kind::release);
    EXPECT_TRUE(main("checked").ready);
    EXPECT_EQ(main("rolled up").kind, NextStep::Kind::end);
    EXPECT_FALSE(main("break").ready);
    EXPECT_FALSE(At{"ended"}.live.turns().mainStep(0));
    EXPECT_FALSE(At{"not begun"}.live.turns().mainStep(0));
}

TEST(Turns, UpToACallIsEverythingThatLeadsThere) {
    for (const Call call : {Call::clamp, Call::pin, Call::handsOff, Call::close, Call::check}) {
        At at{"backing laid"};
        int n = 0;
        const auto from = at.at.events.back().atMs;
        for (const What& what : at.live.turns().upTo(0, call)) {
            ++n;
            EXPECT_EQ(at.live.add({"upTo" + std::to_string(n), from + n, what}).english(), "");
        }
        EXPECT_TRUE(at.live.state().cautions.empty());
        const auto now = at.live.turns().call(0);
        if (call == Call::check)
            EXPECT_TRUE(now.toRelease);
        else
            EXPECT_GT(orderOf(now.now), orderOf(call));
    }
}

TEST(Turns, AZoneToBeDoneAgainIsClosedOnceMore) {
    At at{"A1 again"};
    EXPECT_EQ(at.live.state().zones.at({0, "p1.A1"}).state, ZoneState::open);
    EXPECT_EQ(at.live.state().pinsOut, 30) << "its pins are still in the quilt";
    EXPECT_EQ(at.live.turns().whoseTurn(0, "p1.A1"), std::vector<std::string>{"Ada"});
    EXPECT_EQ(at.live.turns().call(0).now, Call::close);
}

} // namespace
} // namespace bastewright
