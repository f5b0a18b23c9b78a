#include "job/spacings.h"
#include "planners/whole/remedy.h"
#include "ways/way.h"

#include <gtest/gtest.h>

namespace bastewright {
namespace {

/// Two quilts in a hall with a wall; Cai leaves early.
Session evening() {
    Session s;
    s.severalQuilts = true;
    s.jobs.resize(2);
    s.jobs[1].basting.spacing = 6_in;
    s.jobs[1].quilting.gapLimit = 4_in;
    s.jobs[1].basting.start = Basting::Start::centred;
    s.jobs[1].basting.along = Basting::Along::tableWidth;
    s.jobs[1].batting.pieces = {{"A", 60_in, 70_in}};
    s.jobs[1].backing.fabrics = {{.name = "blue", .buyable = false}};
    s.jobs[1].handed = {{"p1.A1", "Cai"}};
    s.setting.room.tables = {{.length = 72_in, .width = 30_in, .count = 2}};
    s.setting.room.walls = {Side::head};
    s.setting.room.together = {60_in, 50_in};
    s.setting.stash.pins = 100;
    Helper cai;
    cai.name = "Cai";
    cai.until = ClockTime{std::chrono::hours{14}};
    s.setting.helpers = {cai};
    return s;
}

Finding ofSecond(Finding::Kind kind, std::vector<int> figures = {}) {
    return {kind, Finding::Level::stop, "", "", "", "", std::move(figures), 1};
}

/// The session with the only cure of a finding.
Session cured(const Finding& finding, const Plan& plan = {}) {
    const Session before = evening();
    const auto remedies = remediesFor(finding, before, plan);
    EXPECT_EQ(remedies.size(), 1u);
    return remedies.empty() ? before : remedies.front().applied(before);
}

TEST(Remedy, ChangesTheQuiltTheFindingIsAbout) {
    using enum Finding::Kind;
    const Session before = evening();
    EXPECT_EQ(cured(ofSecond(otherStart)).jobs[1].basting.start, Basting::Start::best);
    EXPECT_EQ(cured(ofSecond(otherLie)).jobs[1].basting.along, Basting::Along::either);
    EXPECT_EQ(cured(ofSecond(spacingTooWide)).jobs[1].basting.spacing, 4_in);
    EXPECT_TRUE(cured(ofSecond(battingShort)).jobs[1].batting.pieces.empty());
    EXPECT_TRUE(cured(ofSecond(fabricShort)).jobs[1].backing.fabrics.front().buyable);
    EXPECT_TRUE(cured(ofSecond(handedElsewhere)).jobs[1].handed.empty());
    for (const Finding::Kind kind : {otherStart, otherLie, spacingTooWide, battingShort})
        EXPECT_EQ(cured(ofSecond(kind)).jobs[0], before.jobs[0]);
}

TEST(Remedy, ChangesTheRoomAndWhatIsBrought) {
    using enum Finding::Kind;
    EXPECT_FALSE(cured(ofSecond(otherTables)).setting.room.together.has_value());
    EXPECT_EQ(cured({noIron}).setting.room.irons, 1);
    const auto surfaces = remediesFor(ofSecond(noSurface), evening(), {});
    ASSERT_EQ(surfaces.size(), 2u);
    EXPECT_TRUE(surfaces[0].applied(evening()).setting.room.walls.empty());
    EXPECT_TRUE(surfaces[1].applied(evening()).setting.room.tables.empty());
    const ClipStock four{3_in, 4};
    EXPECT_EQ(cured({.kind = noClip, .figures = {4, 192}}).setting.stash.clips, std::vector{four});
    EXPECT_TRUE(remediesFor({.kind = noClip}, evening(), {}).empty())
        << "no clip that is sold is so large";
    Plan plan;
    plan.supplies = {{Supply::Kind::pins, "pins", 150, 100, 50, ""}};
    EXPECT_EQ(cured({pinsShort}, plan).setting.stash.pins, 150);
}

TEST(Remedy, KeepsThemUntilTheirLastTask) {
    Plan plan;
    plan.tasks.resize(1);
    plan.tasks[0].people = {"Cai"};
    plan.tasks[0].end = Seconds{90 * 60 + 1};
    const Session longer = cured({Finding::Kind::hoursShort}, plan);
    EXPECT_EQ(longer.setting.helpers[0].until, ClockTime{std::chrono::minutes{14 * 60 + 31}});
}

TEST(Remedy, IsNotOfferedWhereItChangesNothingOrOnlyAPersonCanHelp) {
    Session best = evening();
    best.jobs[1].basting.start = Basting::Start::best;
    EXPECT_TRUE(remediesFor(ofSecond(Finding::Kind::otherStart), best, {}).empty());
    EXPECT_TRUE(remediesFor({Finding::Kind::nobodyLifts}, evening(), {}).empty());
    Session melts = evening();
    melts.jobs[1].batting.meltable = true;
    const auto others = remediesFor(ofSecond(Finding::Kind::pinsNearSeams), melts, {});
    ASSERT_EQ(others.size(), 1u) << "an iron would melt it";
    EXPECT_EQ(others[0].applied(melts).jobs[1].basting.with, Basting::With::thread);
}

TEST(Remedy, OffersEveryWayThatMayCrossSeams) {
    const auto others = remediesFor(ofSecond(Finding::Kind::pinsNearSeams), evening(), {});
    ASSERT_EQ(others.size(), 2u);
    for (const auto& [remedy, with] :
         {std::pair{others[0], Basting::With::dots}, std::pair{others[1], Basting::With::thread}}) {
        EXPECT_EQ(remedy.applied(evening()).jobs[1].basting.with, with);
        EXPECT_EQ(remedy.applied(evening()).jobs[0], evening().jobs[0]);
    }
}

// Where spray is refused the room is aired, or another way is taken; each cure leaves nothing
// against it.
TEST(Remedy, CuresWhatIsAgainstSpray) {
    using enum Finding::Kind;
    Session s = evening();
    s.jobs[1].basting = bastedWith(s.jobs[1].basting, Basting::With::spray);
    const auto still = [](const Session& then) {
        return !wayOf(then.jobs[1]).against(then.jobs[1], then).empty();
    };
    EXPECT_TRUE(still(s));
    const auto aired = remediesFor(ofSecond(notVentilated), s, {});
    ASSERT_EQ(aired.size(), 4u);
    EXPECT_TRUE(aired[0].applied(s).setting.room.ventilated);
    s.setting.room.ventilated = true;
    s.setting.helpers[0].troubleBreathing = true;
    const auto others = remediesFor(ofSecond(troubleBreathing), s, {});
    EXPECT_EQ(others.size(), 3u);
    s.setting.helpers[0].troubleBreathing = false;
    s.jobs[0].basting.with = Basting::With::dots;
    const auto cold = remediesFor(ofSecond(sprayAndIrons), s, {});
    EXPECT_EQ(cold.size(), 3u);
    for (const auto* remedies : {&aired, &others, &cold})
        for (const Remedy& remedy : *remedies) {
            const Session then = remedy.applied(s);
            EXPECT_EQ(then.jobs[0], s.jobs[0]);
            if (then.jobs[1].basting.with != Basting::With::spray) {
                EXPECT_FALSE(still(then));
                EXPECT_EQ(then.jobs[1].basting.spacing, 4_in);
            }
        }
}

TEST(Remedy, HelpsWithWhatTheSessionHas) {
    const Session s = evening();
    EXPECT_EQ(remedyOf(Help::Kind::table, s)->applied(s).setting.room.tables[0].count, 3);
    EXPECT_EQ(remedyOf(Help::Kind::helper, s)->applied(s).setting.helpers[1].name, "Helper 2");
    EXPECT_FALSE(remedyOf(Help::Kind::iron, s).has_value()) << "nothing is pressed";
    Session floor = s;
    floor.setting.room.tables.clear();
    EXPECT_FALSE(remedyOf(Help::Kind::table, floor).has_value());
}

} // namespace
} // namespace bastewright
