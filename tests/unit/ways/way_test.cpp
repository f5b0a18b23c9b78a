#include "ways/supplies.h"
#include "ways/way.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace bastewright {
namespace {

std::vector<TaskKind> allKinds() {
    std::vector<TaskKind> out;
    for (int k = 0; k <= int(TaskKind::handOver); ++k)
        out.push_back(TaskKind(k));
    return out;
}

TEST(Ways, StandInTheTableByTheirPlaceInTheJob) {
    for (std::size_t i = 0; i < allWays().size(); ++i) {
        EXPECT_EQ(allWays()[i].with, Basting::With(i));
        EXPECT_EQ(&wayOf(Basting::With(i)), &allWays()[i]);
    }
}

TEST(Ways, EveryStepOfAZoneBelongsToOneWay) {
    std::multiset<TaskKind> seen;
    for (const Way& way : allWays())
        for (const TaskKind kind : way.zoneWork()) {
            EXPECT_TRUE(isOfZone(kind));
            EXPECT_EQ(&wayWith(kind), &way);
            EXPECT_EQ(zoneStep(kind).kind, kind);
            seen.insert(kind);
        }
    for (const TaskKind kind : allKinds())
        EXPECT_EQ(seen.count(kind), isOfZone(kind) ? 1u : 0u) << name(kind);
}

TEST(Ways, StepsFollowTheCallsOfThePass) {
    for (const Way& way : allWays()) {
        ASSERT_FALSE(way.zoneWork().empty());
        EXPECT_EQ(way.calls.front(), Call::lay);
        EXPECT_EQ(way.calls.back(), Call::move);
        auto at = way.calls.begin();
        for (const WayStep& step : way.steps) {
            at = std::find(at, way.calls.end(), callOf(step.kind));
            ASSERT_NE(at, way.calls.end()) << name(step.kind);
            EXPECT_GT(step.seconds, 0) << name(step.kind);
        }
        EXPECT_EQ(way.zoneWork().front(), way.firstWork());
        EXPECT_EQ(way.zoneWork().back(), way.lastWork());
    }
}

TEST(Ways, StepsOfZonesAreSaidInFull) {
    for (const Way& way : allWays())
        for (const WayStep& step : way.steps) {
            ASSERT_EQ(step.words.has_value(), step.ofZones()) << name(step.kind);
            if (!step.words)
                continue;
            const StepWords& w = *step.words;
            for (const Sentence* s : {&w.call, &w.forLead, &w.mine, &w.command, &w.brief,
                                      &w.heading, &w.how, &w.noun, &w.nounFirst})
                EXPECT_FALSE(s->empty()) << name(step.kind);
            const auto has = [&](const Sentence& s, std::initializer_list<const char*> parts) {
                for (const char* part : parts)
                    EXPECT_NE(s.english().find(part), std::string::npos) << s.english();
            };
            EXPECT_FALSE(w.idle("Ada").empty()) << name(step.kind);
            EXPECT_FALSE(w.idle({}).empty()) << name(step.kind);
            EXPECT_EQ(zoneStepAt(callOf(step.kind)), &step) << name(step.kind);
            has(w.line("A1, A2", "24 of them"), {"A1, A2", "24 of them"});
            has(w.doing("Ada", "A1", true), {"Ada", "A1"});
            has(w.doing("Ada and Bo", "A1", false), {"Ada and Bo", "A1"});
            has(w.at("Ada", "A1", ClockTime{std::chrono::minutes{800}}), {"Ada", "A1", "13:20"});
            has(w.done("A1", true), {"A1", " is "});
            has(w.done("A1 and A2", false), {"A1 and A2", " are "});
            has(w.work("A1", true), {"zone A1"});
            has(w.work("A1 and A2", false), {"zones A1 and A2"});
        }
}

TEST(Ways, AreSaidInFull) {
    for (const Way& way : allWays()) {
        const WayWords& w = way.words;
        for (const Sentence* s :
             {&w.name, &w.heading, &w.where, &w.choose, &w.underneath, &w.putAway, &w.care})
            EXPECT_FALSE(s->empty()) << w.name;
        EXPECT_FALSE(w.cautions.empty()) << w.name;
        // Pins are counted back into the box instead.
        EXPECT_EQ(w.rolledUp.empty(), way.fromBox) << w.name;
    }
}

TEST(Ways, OneStepOfAZoneIsTheFirstAndOneTheLast) {
    for (const Way& way : allWays()) {
        const auto work = way.zoneWork();
        EXPECT_EQ(std::ranges::count_if(work, isFirstWork), 1);
        EXPECT_EQ(std::ranges::count_if(work, isLastWork), 1);
    }
    EXPECT_FALSE(isFirstWork(TaskKind::smooth));
    EXPECT_FALSE(isLastWork(TaskKind::cool));
}

// Common practice: thick batting holds better where it is pressed from both sides.
TEST(Ways, OnlyDotsInThickBattingAreFinishedFromTheBackToo) {
    Batting thin, thick;
    thin.thickness = Length::millimetres(3);
    thick.thickness = Length::millimetres(12);
    EXPECT_TRUE(wayOf(Basting::With::dots).turns(thick));
    EXPECT_FALSE(wayOf(Basting::With::dots).turns(thin));
    EXPECT_FALSE(wayOf(Basting::With::pins).turns(thick));
}

TEST(Ways, PointsAreCounted) {
    const auto& pins = wayOf(Basting::With::pins).words;
    EXPECT_EQ(pins.count(1).english(), "1 pin");
    EXPECT_EQ(pins.count(612).english(), "612 pins");
    EXPECT_EQ(pins.every("4 in").english(), "pins every 4 in");
    const auto& dots = wayOf(Basting::With::dots).words;
    EXPECT_EQ(dots.count(1).english(), "1 dot");
    EXPECT_EQ(dots.count(80).english(), "80 dots");
    EXPECT_EQ(dots.every("10 cm").english(), "dots every 10 cm");
}

// Common practice: what melts under an iron is not ironed.
TEST(Ways, OnlyWhatIsIronedSpeaksAgainstABattingThatMelts) {
    Job job;
    for (const Way& way : allWays()) {
        job.batting.meltable = false;
        EXPECT_FALSE(way.against(job));
        job.batting.meltable = true;
        const auto against = way.against(job);
        EXPECT_EQ(against.has_value(), way.irons);
        if (against) {
            EXPECT_EQ(against->kind, Finding::Kind::battingMelts);
        }
    }
}

TEST(Ways, WhoFinishesAZoneMayDoItsLastStep) {
    Helper h;
    h.closes = false;
    h.irons = true;
    EXPECT_FALSE(wayOf(Basting::With::pins).finishes(h));
    EXPECT_TRUE(wayOf(Basting::With::dots).finishes(h));
    h.closes = true;
    h.irons = false;
    EXPECT_TRUE(wayOf(Basting::With::pins).finishes(h));
    EXPECT_FALSE(wayOf(Basting::With::dots).finishes(h));
}

// Common practice: a tenth more than counted.
TEST(Supplies, TakeATenthMore) {
    EXPECT_EQ(withSpare(0), 0);
    EXPECT_EQ(withSpare(1), 2);
    EXPECT_EQ(withSpare(100), 110);
    EXPECT_EQ(withSpare(101), 112);
}

TEST(Supplies, NameWhatIsToBeBought) {
    std::vector<Supply> out;
    addSupply(out, Supply::Kind::clamps, "clamps", 0, 5);
    EXPECT_TRUE(out.empty());
    addSupply(out, Supply::Kind::clamps, "clamps", 14, 12);
    addSupply(out, Supply::Kind::clips, "clips", 3, 8);
    ASSERT_EQ(out.size(), 2u);
    EXPECT_EQ(out[0].buy, 2);
    EXPECT_EQ(out[1].buy, 0);
}

} // namespace
} // namespace bastewright
