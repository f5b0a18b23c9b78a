#include "planners/crew/blocks.h"

#include "planners/crew/earliest.h"
#include "planners/crew/random.h"
#include "planners/crew/search.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bastewright::crew {
namespace {

/// Changes of how many go to a table, tried one by one, and schedules of the search that follows.
constexpr int kChanges = 80, kSchedules = 100;

class HandingOut {
public:
    HandingOut(const Given& given, const std::vector<QuiltTable>& tables,
               std::vector<Block>& blocks)
        : given_{given}
        , tables_{tables}
        , blocks_{blocks} {
        double sum = 0;
        int n = 0;
        for (const Hand& h : given.hands)
            if (h.from < kAlways) {
                quickest_ = std::max(quickest_, h.helper.pace);
                sum += h.helper.pace;
                ++n;
            }
        mean_ = n > 0 ? sum / n : 1;
        people_ = n;
        for (const Block& b : blocks)
            work_.push_back(
                passWork(given, tables[static_cast<std::size_t>(b.job)], b.job, b.pass, quickest_));
    }

    void run(int effort, const std::stop_token& stop) {
        if (people_ == 0)
            return;
        std::vector<double> priced;
        earliestOfSeveral(given_, tables_, blocks_, &priced);
        std::map<int, int> tables;
        for (const Block& b : blocks_)
            tables[b.surface]++;
        const int even = std::max(1, people_ / static_cast<int>(tables.size()));
        std::vector<int> counts(blocks_.size()), equal(blocks_.size(), even);
        for (std::size_t k = 0; k < counts.size(); ++k)
            counts[k] = std::clamp(static_cast<int>(std::lround(priced[k] * quickest_ / mean_)), 1,
                                   people_);
        Schedule best = construct(problemOf(counts));
        if (const Schedule other = construct(problemOf(equal)); better(other, best)) {
            best = other;
            counts = equal;
        }
        Random random{7};
        for (int k = 0; k < kChanges * std::max(1, effort) && !stop.stop_requested(); ++k) {
            auto changed = counts;
            // One pass, or all of a table's from some pass on.
            const auto at =
                static_cast<std::size_t>(random.below(static_cast<int>(changed.size())));
            const int by = random.below(2) != 0 ? 1 : -1;
            const bool more = random.below(2) != 0;
            for (std::size_t j = at; j < (more ? changed.size() : at + 1); ++j)
                if (blocks_[j].surface == blocks_[at].surface)
                    changed[j] = std::clamp(changed[j] + by, 1, people_);
            Schedule one = construct(problemOf(changed));
            if (better(one, best) || (one.overtime == best.overtime && one.finish == best.finish)) {
                best = std::move(one);
                counts = std::move(changed);
            }
        }
        const Problem problem = problemOf(counts);
        best =
            search(problem, best, {.schedules = kSchedules * std::max(1, effort)}, stop).schedule;
        take(best);
    }

private:
    Problem problemOf(const std::vector<int>& counts) const {
        Problem out;
        out.from = static_cast<int>(given_.situation.now.count());
        for (const Hand& h : given_.hands)
            out.people.push_back({h.from, h.until < kAlways ? h.until : kNever});
        std::map<int, int> last;
        for (std::size_t k = 0; k < blocks_.size(); ++k) {
            Activity a{.team = counts[k]};
            for (std::size_t p = 0; p < given_.hands.size(); ++p) {
                const Hand& h = given_.hands[p];
                if (h.from >= kAlways)
                    continue;
                // Half their own pace, half everybody's: parts go by pace, steps by the slowest.
                const double pace = (h.helper.pace + mean_) / 2;
                const double seconds = work_[k].least(counts[k] * mean_ / quickest_) * mean_ / pace;
                a.modes.push_back({.person = static_cast<int>(p),
                                   .seconds = std::max(1, static_cast<int>(std::lround(seconds)))});
            }
            std::ranges::stable_sort(a.modes, {}, &Mode::seconds);
            if (const auto before = last.find(blocks_[k].surface); before != last.end())
                a.after.push_back(before->second);
            last[blocks_[k].surface] = static_cast<int>(k);
            out.activities.push_back(std::move(a));
        }
        for (std::size_t p = 0; p < given_.hands.size(); ++p)
            for (const auto& [from, until] : given_.hands[p].away)
                out.booked.push_back(
                    {.person = static_cast<int>(p), .demand = {}, .start = from, .end = until});
        return out;
    }

    /// Teams and order of the schedule; whoever can stay at their table stays.
    void take(const Schedule& s) {
        std::vector<std::size_t> order(blocks_.size());
        for (std::size_t k = 0; k < order.size(); ++k)
            order[k] = k;
        std::ranges::stable_sort(order, {}, [&](std::size_t k) { return s.start[k]; });
        std::map<int, std::vector<int>> before;
        std::vector<int> busy(given_.hands.size(), 0);
        std::vector<Block> out;
        for (const std::size_t k : order) {
            Block b = blocks_[k];
            const int start = s.start[k], end = s.end[k];
            const auto& was = before[b.surface];
            std::vector<int> free;
            for (std::size_t p = 0; p < busy.size(); ++p)
                if (busy[p] <= start && given_.hands[p].from <= start &&
                    given_.hands[p].until >= end)
                    free.push_back(static_cast<int>(p));
            const auto stays = [&](int p) {
                return std::ranges::find(was, p) != was.end() ? 0 : 1;
            };
            const auto chosen = [&](int p) {
                return std::ranges::find(s.crew[k], p) != s.crew[k].end() ? 0 : 1;
            };
            std::ranges::stable_sort(free, {}, [&](int p) {
                return std::pair{stays(p), chosen(p)};
            });
            const std::size_t n = s.crew[k].size();
            if (free.size() >= n)
                b.team.assign(free.begin(), free.begin() + static_cast<std::ptrdiff_t>(n));
            else
                b.team = s.crew[k];
            complete(b, free, busy);
            handsForTheShift(b, end, free, busy);
            std::ranges::sort(b.team);
            for (const int p : b.team)
                busy[static_cast<std::size_t>(p)] =
                    std::max(busy[static_cast<std::size_t>(p)], end);
            before[b.surface] = b.team;
            out.push_back(std::move(b));
        }
        blocks_ = std::move(out);
    }

    /// What a table needs somebody for: lifting, looking underneath, zones, closing, ironing.
    std::vector<bool (*)(const Helper&)> skills(const Block& b) const {
        std::vector<bool (*)(const Helper&)> out{lays, looksBelow,
                                                 [](const Helper& h) { return h.pins; }};
        // Who sits does it at their own seat only.
        if (tables_[static_cast<std::size_t>(b.job)].dots()) {
            out.push_back([](const Helper& h) { return h.irons; });
            out.push_back([](const Helper& h) { return h.irons && !h.seated; });
        } else {
            out.push_back([](const Helper& h) { return h.pins && h.closes; });
            out.push_back([](const Helper& h) { return h.pins && h.closes && !h.seated; });
        }
        return out;
    }

    /// Puts somebody of those free in for somebody not needed, where a table has nobody for
    /// something.
    void complete(Block& b, const std::vector<int>& free, const std::vector<int>& busy) const {
        const auto needs = skills(b);
        const auto has = [&](const std::vector<int>& team, auto may) {
            return std::ranges::any_of(team, [&](int p) { return may(helper(p)); });
        };
        for (const auto may : needs) {
            if (has(b.team, may))
                continue;
            auto able = std::ranges::find_if(free, [&](int p) {
                return may(helper(p)) && std::ranges::find(b.team, p) == b.team.end();
            });
            // Else the table waits for whoever is through first elsewhere.
            std::vector<int> others;
            if (able == free.end()) {
                for (std::size_t p = 0; p < given_.hands.size(); ++p)
                    if (given_.hands[p].from < kAlways && may(helper(static_cast<int>(p))))
                        others.push_back(static_cast<int>(p));
                able = std::ranges::min_element(
                    others, {}, [&](int p) { return busy[static_cast<std::size_t>(p)]; });
                if (able == others.end())
                    continue;
            }
            // For whom the table has others.
            const auto spare = std::ranges::find_if(b.team, [&](int p) {
                std::vector<int> rest = b.team;
                std::erase(rest, p);
                return std::ranges::all_of(
                    needs, [&](auto other) { return has(rest, other) || !has(b.team, other); });
            });
            if (spare != b.team.end())
                *spare = *able;
            else
                b.team.push_back(*able);
        }
    }

    /// As many who lift as the shift into the pass asks for: whoever is free, else whoever is
    /// through first elsewhere.
    void handsForTheShift(Block& b, int end, const std::vector<int>& free,
                          const std::vector<int>& busy) const {
        const Pass& pass = given_.quilts[static_cast<std::size_t>(b.job)].passes[b.pass];
        const auto lifting = [&] {
            return std::ranges::count_if(b.team, [&](int p) {
                return lays(helper(p)) && given_.hands[static_cast<std::size_t>(p)].until >= end;
            });
        };
        while (b.pass > 0 && lifting() < pass.liftPeople) {
            int who = -1;
            std::pair<bool, int> whoIs{};
            for (int p = 0; p < static_cast<int>(given_.hands.size()); ++p) {
                const Hand& h = given_.hands[static_cast<std::size_t>(p)];
                const int ready = std::max(h.from, busy[static_cast<std::size_t>(p)]);
                if (!lays(h.helper) || h.from >= kAlways || ready >= h.until ||
                    std::ranges::find(b.team, p) != b.team.end())
                    continue;
                const std::pair is{std::ranges::find(free, p) == free.end(), ready};
                if (who < 0 || is < whoIs) {
                    who = p;
                    whoIs = is;
                }
            }
            if (who < 0)
                return;
            b.team.push_back(who);
        }
    }

    const Helper& helper(int p) const { return given_.hands[static_cast<std::size_t>(p)].helper; }

    const Given& given_;
    const std::vector<QuiltTable>& tables_;
    std::vector<Block>& blocks_;
    std::vector<PassWork> work_;
    double quickest_ = 0, mean_ = 1;
    int people_ = 0;
};

} // namespace

void handOut(const Given& given, const std::vector<QuiltTable>& tables, std::vector<Block>& blocks,
             int effort, const std::stop_token& stop) {
    HandingOut{given, tables, blocks}.run(effort, stop);
}

} // namespace bastewright::crew
