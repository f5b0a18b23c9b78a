#include "job/job_json.h"
#include "planners/passes/deep.h"
#include "planners/passes/passes.h"
#include "planners/whole/quilt.h"
#include "property/passes/outcome.h"
#include "unit/checker/random.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <iostream>
#include <map>

// Plans of random rooms and people, and of the same with more of something: never more passes,
// points, yards or stops; with BASTEWRIGHT_ALL never a later finish by more than 1 % (search
// noise), either. The number of rooms and the first seed are set by BASTEWRIGHT_JOBS and
// BASTEWRIGHT_SEED; sessions that broke a law are written into the folder BASTEWRIGHT_WRITE, for
// their plans to be looked at.
namespace bastewright::testing {
namespace {

Session hall(std::uint64_t seed) {
    Random random{seed};
    Session out;
    Job& job = out.jobs.emplace_back();
    job.top.width = {Length::inches(random.whole(36, 110))};
    job.top.length = {Length::inches(random.whole(44, 120))};
    job.basting.spacing = 0.5_in * random.whole(6, 10);
    job.backing.fabrics.emplace_back().usableWidth = Length::inches(random.whole(38, 44));
    Table t;
    t.length = 6_in * random.whole(8, 16);
    t.width = 2_in * random.whole(12, 18);
    t.count = static_cast<int>(random.whole(1, 2));
    out.setting.room.tables = {t};
    if (random.chance(25))
        out.setting.room.walls = {kSides[static_cast<std::size_t>(random.whole(0, 3))]};
    for (auto i = random.whole(1, 4); i > 0; --i) {
        Helper h;
        h.name = "Helper " + std::to_string(i);
        h.reach = Length::inches(random.whole(24, 31));
        h.pace = random.real(0.7, 1.3);
        h.seated = random.chance(20);
        out.setting.helpers.push_back(h);
    }
    if (random.chance(40))
        out.setting.helpers.back().until = ClockTime{out.setting.start.sinceMidnight +
                                                     std::chrono::minutes{random.whole(60, 400)}};
    if (random.chance(50))
        out.setting.stash = {static_cast<int>(random.whole(50, 400)),
                             static_cast<int>(random.whole(0, 12)),
                             {{3_in, static_cast<int>(random.whole(1, 8))}},
                             Length::inches(random.whole(0, 200))};
    return out;
}

/// Surfaces whose middle nobody reaches and that is too wide to be pulled across: a table that has
/// become so deep is less, not more.
std::size_t tooDeepOnes(const Session& s) {
    const LayerSizes layers = layerSizes(s.jobs.front());
    const PassRequest request{s.jobs.front(), s.setting, layers, {}};
    std::size_t n = 0;
    for (const Arrangement& a : arrangements(s.setting.room.tables))
        n += tooDeep(lieOf(request, a, false)).empty() ? 0 : 1;
    return n;
}

struct More {
    const char* what;
    std::function<void(Session&)> change;
};

const std::vector<More> kMore{
    {"another helper",
     [](Session& s) {
         Helper h;
         h.name = "Another";
         h.reach = 24_in;
         h.pace = 0.5;
         s.setting.helpers.push_back(h);
     }},
    {"another table", [](Session& s) { ++s.setting.room.tables.front().count; }},
    {"tables 2 in longer", [](Session& s) { s.setting.room.tables.front().length += 2_in; }},
    {"tables 6 in longer", [](Session& s) { s.setting.room.tables.front().length += 6_in; }},
    {"tables 2 in wider", [](Session& s) { s.setting.room.tables.front().width += 2_in; }},
    {"tables 6 in wider", [](Session& s) { s.setting.room.tables.front().width += 6_in; }},
    {"no wall", [](Session& s) { s.setting.room.walls.clear(); }},
    {"1 in more reach for everybody",
     [](Session& s) {
         for (Helper& h : s.setting.helpers)
             h.reach += 1_in;
     }},
    {"3 in more reach for everybody",
     [](Session& s) {
         for (Helper& h : s.setting.helpers)
             h.reach += 3_in;
     }},
    {"1 in more reach for one", [](Session& s) { s.setting.helpers.front().reach += 1_in; }},
    {"3 in more reach for one", [](Session& s) { s.setting.helpers.front().reach += 3_in; }},
    {"a quarter of an hour of one",
     [](Session& s) {
         if (auto& until = s.setting.helpers.back().until)
             until->sinceMidnight += std::chrono::minutes{15};
     }},
    {"half an inch of spacing", [](Session& s) { s.jobs.front().basting.spacing += 0.5_in; }},
    {"more of every supply",
     [](Session& s) {
         Stash& stash = s.setting.stash;
         stash.pins += 200;
         stash.clamps += 8;
         stash.tape += 100_in;
         stash.clips.push_back({4_in, 8});
         s.jobs.front().backing.fabrics.front().onHand += 72_in;
     }},
};

/// Both sessions as files of the folder BASTEWRIGHT_WRITE.
void keep(std::uint64_t seed, std::string what, const Session& before, const Session& after) {
    const char* folder = std::getenv("BASTEWRIGHT_WRITE");
    if (folder == nullptr)
        return;
    std::ranges::replace(what, ' ', '_');
    const std::string path = std::string{folder} + "/" + std::to_string(seed);
    std::ofstream{path + ".json"} << writeSession(before);
    std::ofstream{path + "-" + what + ".json"} << writeSession(after);
}

TEST(MoreNeverHurts, InRandomRooms) {
    const std::uint64_t halls = number("BASTEWRIGHT_JOBS", 4);
    const std::uint64_t first = number("BASTEWRIGHT_SEED", 1);
    double worst = 0;
    int compared = 0;
    std::map<std::string, int> later;
    PointsMemory memory;
    const WholeOptions options{.memory = &memory};
    for (std::uint64_t seed = first; seed < first + halls; ++seed) {
        const Session before = hall(seed);
        const std::size_t deep = tooDeepOnes(before);
        const Outcome had = outcomeOf(planWhole(before, options));
        for (const More& more : kMore) {
            Session after = before;
            more.change(after);
            // A table that nobody reaches across any more is another table, not more of it.
            if (after == before || (after.setting.room.tables.front().count ==
                                        before.setting.room.tables.front().count &&
                                    tooDeepOnes(after) > deep))
                continue;
            const Outcome has = outcomeOf(planWhole(after, options));
            ++compared;
            SCOPED_TRACE("BASTEWRIGHT_SEED=" + std::to_string(seed) +
                         " BASTEWRIGHT_JOBS=1: " + more.what);
            EXPECT_LE(has.stops, had.stops) << had << "; then " << has;
            // Passes of a plan that stops are nothing to be held against one that works.
            if (had.passes > 0 && had.stops == 0) {
                EXPECT_LE(has.passes, had.passes) << had << "; then " << has;
            }
            EXPECT_LE(has.points, had.points);
            EXPECT_LE(has.yards, had.yards + 1e-9);
            if (had.stops > 0 || has.stops > 0)
                continue;
            const double by =
                double((has.finish - had.finish).count()) / double(had.finish.count());
            if (std::getenv("BASTEWRIGHT_ALL") != nullptr) {
                EXPECT_LE(by, 0.01) << had << "; then " << has;
            }
            if (by > 0.01 || has.passes > had.passes)
                keep(seed, more.what, before, after);
            worst = std::max(worst, by);
            later[more.what] += by > 0 ? 1 : 0;
        }
    }
    std::cout << compared << " compared, at worst " << 100 * worst << " % later; later at all:\n";
    for (const auto& [what, times] : later)
        std::cout << "  " << times << " × " << what << "\n";
}

} // namespace
} // namespace bastewright::testing
