#include "job/spacings.h"
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
                                      &w.heading, &w.how, &w.noun, &w.nounFirst, &w.past})
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
             {&w.name, &w.heading, &w.where, &w.choose, &w.underneath, &w.putAway, &w.care,
              &w.byRibbons, &w.atBreaks, &w.leaving, &w.howClose, &w.byFist})
            EXPECT_FALSE(s->empty()) << w.name;
        EXPECT_FALSE(w.cautions.empty()) << w.name;
        // Pins are counted back into the box instead.
        EXPECT_EQ(w.rolledUp == nullptr, way.fromBox) << w.name;
        if (w.rolledUp) {
            EXPECT_FALSE(w.rolledUp(1).empty()) << w.name;
            EXPECT_FALSE(w.rolledUp(800).empty()) << w.name;
        }
        EXPECT_FALSE(w.why.empty()) << w.name;
        EXPECT_NE(w.held("3 in").english().find("3 in"), std::string::npos) << w.name;
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
    const auto& thread = wayOf(Basting::With::thread).words;
    EXPECT_EQ(thread.count(1).english(), "1 stitch");
    EXPECT_EQ(thread.count(812).english(), "812 stitches");
    EXPECT_EQ(thread.every("4 in").english(), "rows every 4 in");
    const auto& spray = wayOf(Basting::With::spray).words;
    EXPECT_EQ(spray.count(1).english(), "1 patch");
    EXPECT_EQ(spray.count(30).english(), "30 patches");
    EXPECT_EQ(spray.every("18 in").english(), "bands of 18 in");
}

// Common practice: what melts under an iron is not ironed.
TEST(Ways, OnlyWhatIsIronedSpeaksAgainstABattingThatMelts) {
    Session aired;
    aired.setting.room.ventilated = true;
    Job job;
    for (const Way& way : allWays()) {
        job.batting.meltable = false;
        EXPECT_TRUE(way.against(job, aired).empty());
        job.batting.meltable = true;
        const Findings against = way.against(job, aired);
        EXPECT_EQ(against.size(), way.irons ? 1u : 0u);
        for (const Finding& f : against)
            EXPECT_EQ(f.kind, Finding::Kind::battingMelts);
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

TEST(Ways, OnlyWhatTakesSeveralStepsCanBeLeftHalfDone) {
    for (const Way& way : allWays())
        EXPECT_EQ(way.unfinished != nullptr, way.zoneWork().size() > 1) << way.words.name;
}

// Common practice: rows 3 to 6 in apart, stitches of 1 to 1 1/2 in, as long below as above.
TEST(Thread, IsSewnInLongStitches) {
    const WayPoint& point = wayOf(Basting::With::thread).point;
    Basting basting;
    for (const Length rows : {4_in, 5_in, 6_in}) {
        basting.spacing = rows;
        EXPECT_EQ(point.length(basting), 1.5_in);
        EXPECT_EQ(point.alongRow(basting), 3_in);
    }
    // Half the distance of the rows at least, three quarters of it at most.
    basting.spacing = 10_in;
    EXPECT_EQ(point.alongRow(basting), 5_in);
    EXPECT_EQ(point.length(basting), 1.5_in);
    basting.spacing = 3_in;
    EXPECT_EQ(point.alongRow(basting), 2.25_in);
    EXPECT_EQ(point.length(basting), 1.125_in);
}

// Half as much thread again as is sewn; common practice and from memory.
TEST(Thread, TakesSpoolsAndANeedleForEverybodyWhoSews) {
    Session session;
    Job job;
    job.basting.with = Basting::With::thread;
    session.jobs = {job};
    session.setting.helpers.resize(3);
    session.setting.helpers[2].pins = false;
    QuiltPlan quilt;
    quilt.zones.resize(1);
    quilt.zones[0].points.resize(100); // 300 in, so 450 in of thread: 12 1/2 yd
    const Way& way = wayOf(Basting::With::thread);
    const std::vector<BastedQuilt> all{{&session.jobs[0], &quilt, pointsOf(quilt)}};
    const auto supplies = way.materials(session, all);
    ASSERT_EQ(supplies.size(), 2u);
    EXPECT_EQ(supplies[0].kind, Supply::Kind::thread);
    EXPECT_EQ(supplies[0].buy, 13);
    EXPECT_EQ(supplies[0].unit.english(), "yd");
    EXPECT_EQ(supplies[1].kind, Supply::Kind::needles);
    EXPECT_EQ(supplies[1].need, 2);
    EXPECT_TRUE(way.tools(session, all).empty());
    const std::vector<BastedQuilt> nothing{{&session.jobs[0], &quilt, 0}};
    EXPECT_TRUE(way.materials(session, nothing).empty());
}

// From memory: 3 s a stitch.
TEST(Thread, SaysHowLongItIsDrawnOutAgain) {
    const auto& words = wayOf(Basting::With::thread).words;
    EXPECT_NE(words.rolledUp(10).english().find("1 minute."), std::string::npos);
    EXPECT_NE(words.rolledUp(812).english().find("45 minutes"), std::string::npos);
}

/// A session of one quilt, sprayed, where nothing speaks against it.
Session sprayed(Length width, Length length) {
    Session session;
    session.jobs.resize(1);
    session.jobs[0].top.width = {width};
    session.jobs[0].top.length = {length};
    session.jobs[0].basting = bastedWith({}, Basting::With::spray);
    session.setting.room.ventilated = true;
    session.setting.helpers.resize(2);
    session.setting.helpers[1].name = "Bo";
    return session;
}

// Common practice: one can for about three queens, or for six or seven lap quilts; the sizes from
// memory.
TEST(Spray, TakesACanForThreeQueensAtMostAndSixLapQuiltsAtLeast) {
    const Way& way = wayOf(Basting::With::spray);
    const auto cans = [&](Length width, Length length, std::size_t quilts) {
        const Session session = sprayed(width, length);
        QuiltPlan quilt;
        quilt.zones.resize(1);
        quilt.zones[0].points.resize(4);
        const std::vector<BastedQuilt> all(quilts, {&session.jobs[0], &quilt, pointsOf(quilt)});
        const auto supplies = way.materials(session, all);
        EXPECT_EQ(supplies.size(), 2u);
        EXPECT_EQ(supplies[0].kind, Supply::Kind::sprayCans);
        EXPECT_EQ(supplies[1].kind, Supply::Kind::covers);
        EXPECT_EQ(supplies[1].need, 2) << "table and floor";
        return supplies[0].buy;
    };
    EXPECT_EQ(cans(50_in, 65_in, 6), 1);
    EXPECT_EQ(cans(50_in, 65_in, 8), 2);
    EXPECT_EQ(cans(90_in, 108_in, 1), 1);
    EXPECT_EQ(cans(90_in, 108_in, 4), 2);
    const Session session = sprayed(50_in, 65_in);
    const QuiltPlan none;
    const std::vector<BastedQuilt> nothing{{&session.jobs[0], &none, 0}};
    EXPECT_TRUE(way.materials(session, nothing).empty());
    EXPECT_TRUE(way.tools(session, nothing).empty());
}

// Common practice, and on every can: only where there is air, no iron, and nobody it harms.
TEST(Spray, IsRefusedWhereItMayHarm) {
    using Kind = Finding::Kind;
    const auto against = [](const Session& s, std::size_t quilt) {
        std::vector<std::pair<Kind, std::string>> out;
        for (const Finding& f : wayOf(s.jobs[quilt]).against(s.jobs[quilt], s)) {
            EXPECT_EQ(f.level, Finding::Level::stop);
            EXPECT_FALSE(f.cure.empty());
            out.emplace_back(f.kind, f.subject);
        }
        return out;
    };
    using All = std::vector<std::pair<Kind, std::string>>;
    Session s = sprayed(60_in, 72_in);
    EXPECT_EQ(against(s, 0), All{});
    s.setting.room.ventilated = false;
    EXPECT_EQ(against(s, 0), (All{{Kind::notVentilated, ""}}));
    s.setting.room.ventilated = true;
    s.setting.helpers[1].troubleBreathing = true;
    EXPECT_EQ(against(s, 0), (All{{Kind::troubleBreathing, "Bo"}}));
    s.setting.helpers[1].troubleBreathing = false;
    s.jobs.emplace_back().basting.with = Basting::With::dots;
    EXPECT_EQ(against(s, 0), (All{{Kind::sprayAndIrons, ""}}));
    EXPECT_EQ(against(s, 1), (All{{Kind::sprayAndIrons, ""}})) << "an iron beside spray";
    s.jobs[1].basting.with = Basting::With::pins;
    EXPECT_EQ(against(s, 0), All{});
    EXPECT_EQ(against(s, 1), All{});
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
