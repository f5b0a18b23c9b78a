#include "planners/crew/crew.h"

#include "planners/crew/afternoons.h"
#include "planners/crew/behind.h"
#include "planners/crew/blocks.h"
#include "planners/crew/earliest.h"
#include "planners/crew/findings.h"
#include "planners/crew/pass_day.h"
#include "planners/crew/places_before.h"

#include <algorithm>

namespace bastewright {
namespace {
using namespace crew;

/// As a pass that is not planned yet goes by calls, for where breaks in it can be.
constexpr int kCallsOfPass = 6;

/// Ways to share people among several tables, and to spread them round one: fewer of many, for whom
/// each takes longer.
constexpr std::size_t kWaysTried = 3, kPlacesTried = 4, kPlacesByOne = 16;

class CrewPlanner {
public:
    CrewPlanner(const Session& session, std::vector<QuiltPlan>& quilts,
                std::span<const std::vector<PlacedPoint>> points, const Situation& situation,
                const CrewOptions& options, std::stop_token stop)
        : session_{session}
        , quilts_{quilts}
        , situation_{situation}
        , options_{options}
        , stop_{std::move(stop)}
        , helpers_{session.setting.helpers} {
        sayWhoIsThere(helpers_, plan_.findings);
        hands_ = handsNow(helpers_, session_.setting.start, situation_);
        given_.emplace(Given{session_, hands_, quilts_, situation_, toldBreaks(session.setting)});
        std::vector<std::vector<std::vector<PlacedPoint>>> places;
        for (std::size_t q = 0; q < quilts_.size(); ++q)
            places.push_back(pointsByPass(quilts_[q], points[q]));
        auto how = bastedPasses(session_, quilts_, places, situation_);
        for (std::size_t q = 0; q < quilts_.size(); ++q) {
            tables_.emplace_back(session_, static_cast<int>(q), quilts_[q], std::move(places[q]),
                                 std::move(how[q]), hands_,
                                 options_.memory != nullptr ? *options_.memory : sharings_, stop_);
            crews_.emplace_back(quilts_[q].passes.size());
        }
    }

    CrewPlan run() {
        if (situation_.before != nullptr)
            takePlacesBefore(*given_, tables_, crews_, letters_);
        auto blocks = blocksOf();
        several_ = tablesInUse(blocks) > 1;
        if (several_)
            blocks = shareOutPeople(blocks);
        else
            blocks = workFromBestPlaces(blocks);
        tell(blocks);
        return std::move(plan_);
    }

private:
    std::vector<Block> blocksOf() const {
        std::vector<Block> out;
        for (std::size_t q = 0; q < quilts_.size() && q < session_.jobs.size(); ++q)
            for (std::size_t p = 0; p < quilts_[q].passes.size(); ++p)
                if (!isBehind(situation_, session_.jobs[q], static_cast<int>(q),
                              quilts_[q].passes[p])) {
                    Block b{.job = static_cast<int>(q),
                            .pass = p,
                            .surface = quilts_[q].surface.number};
                    for (std::size_t h = 0; h < hands_.size(); ++h)
                        if (hands_[h].from < kAlways)
                            b.team.push_back(static_cast<int>(h));
                    out.push_back(std::move(b));
                }
        return out;
    }

    static std::size_t tablesInUse(const std::vector<Block>& blocks) {
        std::set<int> surfaces;
        for (const Block& b : blocks)
            surfaces.insert(b.surface);
        return surfaces.size();
    }

    void begin() {
        const auto now = static_cast<int>(situation_.now.count());
        ready_.clear();
        tableRested_.clear();
        barrier_.clear();
        places_.clear();
        worked_.clear();
        passes_.clear();
        given_->ironsUsed.clear();
        free_.assign(hands_.size(), now);
        rested_.assign(hands_.size(), static_cast<int>(situation_.lastRest.count()));
        end_ = now;
    }

    /// Several tables: the best of a few ways to share people among them.
    std::vector<Block> shareOutPeople(const std::vector<Block>& blocks) {
        return bestOf(options_.sharings ? kWaysTried : 1, [&](std::size_t way) {
            return std::optional{handOut(
                *given_, tables_, blocks,
                [&](Block& b, int start, const std::vector<int>& ahead) {
                    return workOfSeveral(b, start, ahead);
                },
                stop_, way + 1)};
        });
    }

    /// One table. Where somebody comes or goes between passes, the places that are best as long as
    /// all are there may not be best in the end, above all a seat, which is kept: the next best are
    /// tried too.
    std::vector<Block> workFromBestPlaces(const std::vector<Block>& blocks) {
        const bool nobodyYet =
            std::ranges::all_of(tables_, [](const QuiltTable& t) { return t.stood().empty(); });
        bool others = nobodyYet;
        const std::size_t ways =
            options_.sharings
                ? std::clamp<std::size_t>(kPlacesByOne / std::max<std::size_t>(1, hands_.size()), 1,
                                          kPlacesTried)
                : 1;
        return bestOf(ways, [&](std::size_t way) -> std::optional<std::vector<Block>> {
            if (way > 0 && !others)
                return {};
            if (way > 0)
                for (QuiltTable& t : tables_)
                    t.leaveOutPlaces(way);
            work(blocks);
            others = others && crewsDiffer(passes_) &&
                     std::ranges::any_of(tables_,
                                         [](const QuiltTable& t) { return t.hasOtherPlaces(); });
            return blocks;
        });
    }

    /// The best of a few ways to work all passes, each from where things stand now; gives its
    /// passes in their order. `way` does it for the first, second, … and gives nothing where there
    /// is none.
    template <class OneWay>
    std::vector<Block> bestOf(std::size_t ways, OneWay way) {
        struct Done {
            std::vector<Block> blocks;
            std::vector<PassPlan> passes;
            std::vector<std::vector<PassCrew>> crews;
            std::vector<QuiltTable> tables;
            std::map<int, Letters> letters;
            int end = 0;
        };
        const auto letters = letters_;
        const auto crews = crews_;
        const auto tables = tables_;
        std::optional<Done> best;
        for (std::size_t k = 0; k < ways && !(best && stop_.stop_requested()); ++k) {
            letters_ = letters;
            crews_ = crews;
            std::vector<QuiltTable> fresh = tables;
            tables_.swap(fresh);
            begin();
            auto blocks = way(k);
            if (!blocks)
                break;
            if (best &&
                std::pair{howGood(passes_), end_} >= std::pair{howGood(best->passes), best->end})
                continue;
            best = Done{*std::move(blocks), std::move(passes_), crews_, {}, letters_, end_};
            best->tables.swap(tables_);
        }
        passes_ = std::move(best->passes);
        crews_ = std::move(best->crews);
        letters_ = std::move(best->letters);
        tables_.swap(best->tables);
        end_ = best->end;
        return std::move(best->blocks);
    }

    /// One table: the passes in their order, and where that goes on for too long once more with
    /// breaks.
    void work(const std::vector<Block>& blocks) {
        for (const Block& b : blocks)
            keep(b, workOne(b, end_, nullptr));
        const auto lastRest = static_cast<int>(situation_.lastRest.count());
        if (!session_.setting.proposeBreaks || end_ - lastRest <= kProposeBeyond)
            return;
        std::vector<CallSpan> calls;
        for (const PassPlan& p : passes_)
            calls.insert(calls.end(), p.calls.begin(), p.calls.end());
        const auto rests = restsBefore(lastRest, calls, given_->told);
        begin();
        for (const Block& b : blocks)
            keep(b, workOne(b, end_, &rests));
    }

    /// One of several tables: a pass with the breaks its team needs, where the passes after it take
    /// so long.
    Worked workOfSeveral(Block& b, int start, const std::vector<int>& ahead) {
        PassPlan plan = workOne(b, start, nullptr);
        while (plan.unworked > 0 && askSomebodyElse(b, start, nullptr, plan))
            ;
        if (session_.setting.proposeBreaks && !plan.calls.empty()) {
            const int lastRest = restOf(b, plan.start);
            auto calls = plan.calls;
            for (const int pass : ahead)
                for (int k = 0; k < kCallsOfPass; ++k) {
                    const int from = calls.back().end;
                    calls.push_back({{}, from, from + pass / kCallsOfPass, k == 0});
                }
            const int beyond =
                Seconds{lastRest} > situation_.lastRest ? kBreakAtLast : kProposeBeyond;
            const auto rests = restsBefore(lastRest, calls, given_->told, beyond);
            if (calls.back().end - lastRest > beyond) {
                plan = workOne(b, start, &rests);
                // After a break somebody who lifts may have left.
                while (plan.liftersMissing > 0 && askSomebodyElse(b, start, &rests, plan))
                    ;
            }
        }
        Worked out{.end = plan.end, .seconds = 0, .lastRest = plan.lastRest};
        for (const CallSpan& c : plan.calls)
            out.seconds += c.end - c.start;
        keep(b, std::move(plan));
        return out;
    }

    /// Zones that nobody of the team may do, or reaches, and a shift with too few who lift: with
    /// whoever can, and is free first.
    bool askSomebodyElse(Block& b, int start, const std::set<std::string>* rests, PassPlan& plan) {
        std::vector<int> others;
        for (std::size_t h = 0; h < hands_.size(); ++h)
            if (hands_[h].from < kAlways &&
                std::ranges::find(b.team, static_cast<int>(h)) == b.team.end())
                others.push_back(static_cast<int>(h));
        std::ranges::stable_sort(others, {}, [&](int p) {
            return std::max(free_[static_cast<std::size_t>(p)],
                            hands_[static_cast<std::size_t>(p)].from);
        });
        for (const int p : others) {
            Block more = b;
            more.team.insert(std::ranges::lower_bound(more.team, p), p);
            PassPlan one = workOne(more, start, rests);
            if (one.unworked + one.liftersMissing >= plan.unworked + plan.liftersMissing)
                continue;
            b = std::move(more);
            plan = std::move(one);
            return true;
        }
        return false;
    }

    /// Plans a pass with its team, from `earliest` on; `rests` null: no break is proposed.
    PassPlan workOne(const Block& b, int earliest, const std::set<std::string>* rests) {
        PassStart start{
            .job = b.job, .pass = b.pass, .team = b.team, .barrier = barrier_[b.surface]};
        start.ready = std::max(earliest, ready_[b.surface]);
        start.firstOnTheTable =
            std::ranges::none_of(quilts_.begin(), quilts_.begin() + b.job,
                                 [&](const QuiltPlan& q) { return q.surface.number == b.surface; });
        for (const int p : b.team)
            start.ready = std::max(start.ready, free_[static_cast<std::size_t>(p)]);
        start.lastRest = restOf(b, start.ready);
        start.work = worked_;
        for (const PassCrew& c : crews_[static_cast<std::size_t>(b.job)])
            start.earlier.push_back(&c);
        start.rests = rests;
        auto& table = tables_[static_cast<std::size_t>(b.job)];
        if (table.stood().empty() && places_.contains(b.surface))
            table.stood(places_[b.surface]);
        return planPass(*given_, table, letters_[b.surface], start);
    }

    /// The pass is planned that way.
    void keep(const Block& b, PassPlan plan) {
        auto& table = tables_[static_cast<std::size_t>(b.job)];
        tableRested_[b.surface] = plan.lastRest;
        ready_[b.surface] = plan.end;
        barrier_[b.surface] = plan.barrier;
        worked_ = plan.work;
        for (const int p : b.team) {
            rested_[static_cast<std::size_t>(p)] = std::max(restOf(p, plan.start), plan.lastRest);
            free_[static_cast<std::size_t>(p)] = plan.end;
        }
        crews_[static_cast<std::size_t>(b.job)][b.pass] = plan.crew;
        table.keepPlaces(plan.crew);
        places_[b.surface] = table.stood();
        for (const Task& t : plan.tasks)
            if (t.kind == TaskKind::press)
                given_->ironsUsed.emplace_back(static_cast<int>(t.start.count()),
                                               static_cast<int>(t.end.count()));
        if (several_)
            for (PlannedBreak& r : plan.breaks)
                for (const int p : b.team)
                    r.people.push_back(hands_[static_cast<std::size_t>(p)].helper.name);
        end_ = std::max(end_, plan.end);
        passes_.push_back(std::move(plan));
    }

    /// When somebody had a break who begins at `start`: who comes, or waited for as long as a
    /// break, is rested.
    int restOf(int p, int start) const {
        const auto i = static_cast<std::size_t>(p);
        if (!several_)
            return rested_[i];
        return start - std::max(free_[i], hands_[i].from) >= kBreakLasts
                   ? start
                   : std::max(rested_[i], hands_[i].from);
    }
    /// Of the one of a team who has been at work for longest. A table rests with its people:
    /// others do not take it over in the meantime.
    int restOf(const Block& b, int start) const {
        int out = start;
        for (const int p : b.team)
            out = std::min(out, restOf(p, start));
        const auto ready = ready_.find(b.surface);
        const auto rested = tableRested_.find(b.surface);
        if (several_ && rested != tableRested_.end() && start - ready->second < kBreakLasts)
            out = std::min(out, rested->second);
        return out;
    }

    void tell(const std::vector<Block>& blocks) {
        for (std::size_t k = 0; k < blocks.size(); ++k)
            tellPass(blocks[k], passes_[k]);
        std::ranges::sort(plan_.tasks, {}, [](const Task& t) { return std::pair{t.start, t.id}; });
        for (const PlannedBreak& b : given_->told)
            if (b.start < Seconds{end_} && b.end > situation_.now)
                plan_.breaks.push_back(b);
        std::ranges::sort(plan_.breaks);
        plan_.breaks.erase(std::unique(plan_.breaks.begin(), plan_.breaks.end()),
                           plan_.breaks.end());
        plan_.finish = situation_.now;
        for (const Task& t : plan_.tasks)
            plan_.finish = std::max(plan_.finish, t.end);
        sayFindings({*given_, helpers_, crews_, passes_}, plan_.tasks, plan_.findings);
        if (options_.bound)
            plan_.bound = earliestFinish(*given_, tables_, blocks, passes_);
        if (options_.range)
            plan_.range =
                finishRange(plan_.tasks, plan_.breaks, afternoonOf(hands_, situation_.now));
    }

    void tellPass(const Block& block, PassPlan& pass) {
        plan_.tasks.insert(plan_.tasks.end(), pass.tasks.begin(), pass.tasks.end());
        plan_.breaks.insert(plan_.breaks.end(), pass.breaks.begin(), pass.breaks.end());
        tellZones(hands_, situation_, block, pass, quilts_[static_cast<std::size_t>(block.job)]);
    }

    const Session& session_;
    std::vector<QuiltPlan>& quilts_;
    const Situation& situation_;
    const CrewOptions& options_;
    std::stop_token stop_;
    std::vector<Helper> helpers_;
    std::vector<Hand> hands_;
    std::optional<Given> given_;
    SharingMemory sharings_; ///< where none was given; outlives the tables
    std::vector<QuiltTable> tables_;
    std::vector<std::vector<PassCrew>> crews_;        ///< by quilt and pass
    std::map<int, Letters> letters_;                  ///< by surface
    std::vector<PassPlan> passes_;                    ///< by block
    std::map<int, int> ready_;                        ///< by surface: when its pass ends
    std::map<int, int> tableRested_;                  ///< by surface: end of its last break
    std::map<int, std::vector<std::string>> barrier_; ///< by surface
    std::map<int, std::map<int, bastewright::Length>> places_;
    std::vector<int> free_, rested_; ///< by hand: end of their last pass, of their last break
    std::map<int, int> worked_;
    bool several_ = false; ///< tables in use
    int end_ = 0;
    CrewPlan plan_;
};

} // namespace

CrewPlan planRest(const Session& session, std::vector<QuiltPlan>& quilts,
                  std::span<const std::vector<PlacedPoint>> points, const Situation& situation,
                  const CrewOptions& options, std::stop_token stop) {
    return CrewPlanner{session, quilts, points, situation, options, std::move(stop)}.run();
}

CrewPlan planCrew(const Session& session, std::vector<QuiltPlan>& quilts,
                  std::span<const std::vector<PlacedPoint>> points, const CrewOptions& options,
                  std::stop_token stop) {
    return planRest(session, quilts, points, Situation{}, options, std::move(stop));
}

} // namespace bastewright
