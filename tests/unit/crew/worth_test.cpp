#include "planners/crew/worth.h"
#include "unit/crew/made_session.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

using namespace bastewright;
using namespace bastewright::crew;

namespace {

/// A few people and passes at two tables, small enough for every way to share them to be tried.
struct SmallHall {
    std::vector<Hand> hands;
    std::vector<PassAt> passes; ///< of each table in their order
    WorthOptions options;
};

SmallHall smallHall(std::uint64_t seed, bool rests) {
    made::Dice dice{seed};
    SmallHall out;
    for (int p = 0; p < 3; ++p) {
        Hand h{made::helper("H" + std::to_string(p), 0.7 + 0.1 * dice.upTo(7))};
        if (dice.once(3))
            h.from = 60 * dice.between(5, 40);
        if (dice.once(3))
            h.until = 60 * dice.between(90, 200);
        if (dice.once(4))
            h.away = {{3'600, 3'600 + 60 * dice.between(5, 20)}};
        out.hands.push_back(h);
    }
    for (std::size_t k = 0; k < 4; ++k) {
        PassWork w;
        w.single = dice.between(100, 900);
        w.pair = dice.between(100, 500);
        w.opened = dice.between(0, 2'000);
        w.holds = 204;
        w.zones = dice.between(300, 3'000);
        w.calls = 2;
        w.room = static_cast<std::size_t>(dice.between(2, 6));
        out.passes.push_back({w, k % 2});
    }
    // Nobody gets tired within the two hours or so that this takes, unless it is soon.
    out.options.restAfter = rests ? 3'600 : 0;
    return out;
}

/// The earliest end of all ways to share people and to order the passes of both tables.
class EveryWay {
public:
    explicit EveryWay(const SmallHall& hall)
        : hall_{hall} {}

    double earliest() {
        go(0, {0, 0}, {0, 0}, std::vector<double>(hall_.hands.size(), 0),
           std::vector<double>(hall_.hands.size(), 0), {0, 0});
        return best_;
    }

private:
    using PerTable = std::array<double, 2>;

    /// By those of the team who make it quickest.
    double seconds(const PassWork& work, unsigned team) const {
        double out = 1e9;
        for (unsigned some = team; some != 0; some = (some - 1) & team) {
            std::vector<double> paces;
            for (std::size_t p = 0; p < hall_.hands.size(); ++p)
                if ((some >> p & 1U) != 0)
                    paces.push_back(hall_.hands[p].helper.pace);
            std::ranges::sort(paces, std::greater{});
            out = std::min(out, aboutSeconds(work, paces));
        }
        return out;
    }

    /// The first time from `at` on at which all of a team are there for so long; none: far away.
    double whenThere(unsigned team, double at, double seconds) const {
        for (bool moved = true; moved;) {
            moved = false;
            for (std::size_t p = 0; p < hall_.hands.size(); ++p) {
                const Hand& h = hall_.hands[p];
                if ((team >> p & 1U) == 0)
                    continue;
                at = std::max<double>(at, h.from);
                if (at + seconds > h.until)
                    return 1e9;
                for (const auto& [a, b] : h.away)
                    if (at < b && at + seconds > a) {
                        at = b;
                        moved = true;
                    }
            }
        }
        return at;
    }

    void go(std::size_t done, std::array<std::size_t, 2> next, PerTable ready,
            std::vector<double> free, std::vector<double> rested, PerTable tableRested) {
        const double end = std::max(ready[0], ready[1]);
        if (end >= best_)
            return;
        if (done == hall_.passes.size()) {
            best_ = end;
            return;
        }
        for (std::size_t t = 0; t < 2; ++t) {
            const std::size_t k = 2 * next[t] + t;
            if (k >= hall_.passes.size())
                continue;
            for (unsigned team = 1; team < (1U << hall_.hands.size()); ++team) {
                const double takes = seconds(hall_.passes[k].work, team);
                double start = ready[t];
                for (std::size_t p = 0; p < free.size(); ++p)
                    if ((team >> p & 1U) != 0)
                        start = std::max(start, free[p]);
                start = whenThere(team, start, takes);
                const auto since = [&](double was, double through, double at) {
                    return at - through >= kBreakLasts ? at : was;
                };
                // A break first where somebody, or the table, would go on for too long.
                double rest = since(tableRested[t], ready[t], start);
                for (std::size_t p = 0; p < free.size(); ++p)
                    if ((team >> p & 1U) != 0)
                        rest = std::min(rest, since(rested[p],
                                                    std::max<double>(free[p], hall_.hands[p].from),
                                                    start));
                if (hall_.options.restAfter > 0 && start + takes - rest > hall_.options.restAfter &&
                    start > rest)
                    start = whenThere(team, start + kBreakLasts, takes);
                if (start >= 1e9 || (hall_.options.restAfter > 0 && takes > 3'600))
                    continue;
                auto nextNow = next;
                auto readyNow = ready, tableNow = tableRested;
                auto freeNow = free, restedNow = rested;
                ++nextNow[t];
                tableNow[t] = since(tableRested[t], ready[t], start);
                readyNow[t] = start + takes;
                for (std::size_t p = 0; p < free.size(); ++p)
                    if ((team >> p & 1U) != 0) {
                        restedNow[p] =
                            std::max<double>(since(rested[p], free[p], start), hall_.hands[p].from);
                        freeNow[p] = readyNow[t];
                    }
                go(done + 1, nextNow, readyNow, freeNow, restedNow, tableNow);
            }
        }
    }

    const SmallHall& hall_;
    double best_ = 1e8;
};

// The bound of several tables against every way to share three people among four passes, with
// hours, breaks of their own and, in every other hall, breaks that are proposed after an hour.
TEST(Worth, NoSharingEndsBeforeIt) {
    double ratio = 0;
    int halls = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const SmallHall hall = smallHall(seed, seed % 2 == 0);
        const double best = EveryWay{hall}.earliest();
        if (best >= 1e8) // nobody stays for long enough
            continue;
        const double bound = Worth{hall.hands, 2, hall.passes, hall.options}.prove();
        EXPECT_LE(bound, best + 1) << "seed " << seed;
        ratio += best / bound;
        ++halls;
    }
    ASSERT_GT(halls, 25);
    // And it says something: so small a hall has hardly a way to share people evenly.
    EXPECT_LT(ratio / halls, 1.35);
}

// Somebody who leaves after two hours has had a break in them, so there is less to be had of them
// than their hours say.
TEST(Worth, CountsBreaksWithinHours) {
    SmallHall hall;
    for (const char* name : {"Ada", "Bo"})
        hall.hands.push_back({made::helper(name)});
    PassWork w;
    w.single = 6'000;
    hall.passes = {{w, 0}, {w, 1}, {w, 0}, {w, 1}};
    const double unbroken = Worth{hall.hands, 2, hall.passes, hall.options}.prove();
    EXPECT_NEAR(unbroken, 12'000, 1);
    hall.options.restAfter = kBreakAtLast;
    EXPECT_NEAR((Worth{hall.hands, 2, hall.passes, hall.options}.prove()), 12'600, 2);
    // Bo is there for 7 000 seconds, ten minutes of which are a break.
    hall.hands[1].until = 7'000;
    hall.options.restAfter = 0;
    const double leaving = Worth{hall.hands, 2, hall.passes, hall.options}.prove();
    EXPECT_NEAR(leaving, 24'000 - 7'000, 20);
    hall.options.restAfter = kBreakAtLast;
    // Ada works for 24 000 − 6 400 and has a break whenever she has worked for 105 minutes.
    EXPECT_NEAR((Worth{hall.hands, 2, hall.passes, hall.options}.prove()), 17'600 + 2 * 600, 20);
}

} // namespace
