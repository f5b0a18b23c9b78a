#include "planners/passes/deep.h"
#include "planners/passes/passes.h"
#include "planners/surface/arrangement.h"
#include "unit/checker/random.h"
#include "unit/passes/boards.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <iostream>

// Random rooms and people: another table, a longer or a wider one, a wall less, more reach for
// everybody or for one, another helper never gives more passes or a later finish. The number of
// rooms and the first seed are set by BASTEWRIGHT_JOBS and BASTEWRIGHT_SEED.
namespace bastewright::testing {
namespace {

std::uint64_t number(const char* variable, std::uint64_t otherwise) {
    const char* text = std::getenv(variable);
    return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

struct Hall {
    Job job;
    Setting setting;
    LayerSizes layers;
    std::vector<PlacedPoint> points;

    std::vector<PassChoice> ways() const {
        return passChoices({job, setting, layers, points}, arrangements(setting.room.tables));
    }
};

Hall hall(std::uint64_t seed) {
    Random random{seed};
    Hall out;
    const Length width = Length::inches(random.whole(36, 110));
    const Length length = Length::inches(random.whole(44, 120));
    out.job.top.width = {width};
    out.job.top.length = {length};
    out.layers = {{width, length}, {width + 4_in, length + 4_in}, {width + 8_in, length + 8_in}};
    for (const Point& p : rowsAcross(width, length).points)
        out.points.push_back({p, 0});
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
    return out;
}

/// Surfaces whose middle nobody reaches and that is too wide to be pulled across: a table that has
/// become so deep is less, not more.
std::size_t tooDeepOnes(const Hall& hall) {
    const PassRequest request{hall.job, hall.setting, hall.layers, hall.points};
    std::size_t n = 0;
    for (const Arrangement& a : arrangements(hall.setting.room.tables))
        n += tooDeep(lieOf(request, a, false)).empty() ? 0 : 1;
    return n;
}

struct Fewest {
    int passes = 0;
    Seconds soonest{};
};

Fewest fewestOf(const Hall& hall) {
    Fewest out;
    for (const PassChoice& way : hall.ways())
        if (way.summary.workable && way.asked) {
            if (out.passes == 0 || way.summary.passes < out.passes)
                out.passes = way.summary.passes;
            if (out.soonest == Seconds{} || way.summary.predicted < out.soonest)
                out.soonest = way.summary.predicted;
        }
    return out;
}

struct More {
    const char* what;
    std::function<void(Setting&)> change;
};

const std::vector<More> kMore{
    {"another helper",
     [](Setting& s) {
         Helper h;
         h.name = "Another";
         h.reach = 24_in;
         h.pace = 0.5;
         s.helpers.push_back(h);
     }},
    {"another table", [](Setting& s) { ++s.room.tables.front().count; }},
    {"tables 2 in longer", [](Setting& s) { s.room.tables.front().length += 2_in; }},
    {"tables 6 in longer", [](Setting& s) { s.room.tables.front().length += 6_in; }},
    {"no wall", [](Setting& s) { s.room.walls.clear(); }},
    {"1 in more reach for everybody",
     [](Setting& s) {
         for (Helper& h : s.helpers)
             h.reach += 1_in;
     }},
    {"3 in more reach for one", [](Setting& s) { s.helpers.front().reach += 3_in; }},
};

TEST(MoreNeverHurts, AmongTheWaysOfRandomRooms) {
    const std::uint64_t halls = number("BASTEWRIGHT_JOBS", 12);
    const std::uint64_t first = number("BASTEWRIGHT_SEED", 1);
    double worst = 0;
    for (std::uint64_t seed = first; seed < first + halls; ++seed) {
        const Hall before = hall(seed);
        const Fewest had = fewestOf(before);
        for (const More& more : kMore) {
            Hall after = before;
            more.change(after.setting);
            if (after.setting.room.tables.front().count ==
                    before.setting.room.tables.front().count &&
                tooDeepOnes(after) > tooDeepOnes(before))
                continue;
            const Fewest has = fewestOf(after);
            SCOPED_TRACE("BASTEWRIGHT_SEED=" + std::to_string(seed) + ": " + more.what);
            if (had.passes > 0) {
                EXPECT_GT(has.passes, 0);
                EXPECT_LE(has.passes, had.passes);
                const double later =
                    double((has.soonest - had.soonest).count()) / double(had.soonest.count());
                EXPECT_LE(later, 0.01);
                worst = std::max(worst, later);
            }
        }
    }
    std::cout << "at worst " << 100 * worst << " % later\n";
}

} // namespace
} // namespace bastewright::testing
