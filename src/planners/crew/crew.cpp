#include "planners/crew/crew.h"

#include "planners/crew/bound.h"
#include "planners/crew/handed.h"
#include "planners/crew/hours.h"
#include "planners/crew/model.h"
#include "planners/crew/pair.h"
#include "planners/crew/settle.h"
#include "planners/crew/sharing.h"
#include "planners/crew/sweep.h"
#include "planners/crew/words.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {
using namespace crew;

/// Zones of a pass pinned between one smoothing and the next. While a first wave is smoothed by two
/// the others pin the second; every wave costs a smoothing.
constexpr std::array kZonesInWave{1'000, 15, 10};
/// A further wave has to save this share of the finish.
constexpr double kWorthAWave = 0.99;
/// Two people who see each other's side are worth this much of it.
constexpr double kWorthAPair = 1.005;
/// Shares of the work this near to one another count as even between them.
constexpr double kEvenPair = 1.10;

/// A first look at a way to cut the passes takes this part of the search.
constexpr int kShortLook = 8;

/// Whole schedules' worth of search for a problem of some size at effort 1.
int schedulesFor(const Problem& problem, int effort) {
    return std::max(1, effort) * std::clamp(200'000 / std::max(1, problem.size()), 80, 1'000);
}

std::string idOf(const TaskDraft& d, const std::vector<QuiltPlan>& quilts) {
    std::string id = words({"q", std::to_string(d.job + 1), ".p", std::to_string(d.pass), "."});
    if (d.zone >= 0)
        id += words(
            {quilts[static_cast<std::size_t>(d.job)].zones[static_cast<std::size_t>(d.zone)].id,
             "."});
    id += name(d.kind);
    if (d.share)
        id += words({".", name(d.share->side)});
    if (d.wave > 0)
        id += words({".", std::to_string(d.wave)});
    return id;
}

/// One way to cut the work into tasks, and its schedule.
struct Attempt : Planned {
    DraftOptions drafted;
    int bound = 0; ///< of just these tasks
};

/// Rounds of letting people share zones, each on the schedule the one before led to.
constexpr int kSharing = 3;
/// Above so many activities sharing saves less than a hundredth and takes too long.
constexpr int kMostToShare = 1000;

/// A round has to save this many seconds of the finish.
constexpr int kWorthSharing = 30;

class Planner {
public:
    Planner(const Session& session, const std::vector<QuiltPlan>& quilts,
            const CrewOptions& options, std::stop_token stop)
        : session_(session)
        , quilts_(quilts)
        , options_(options)
        , stop_(std::move(stop))
        , helpers_(session.setting.helpers) {}

    CrewPlan run() {
        sayWhoIsThere();
        sayHanded(session_, helpers_, quilts_, plan_.findings);
        Attempt best = bestOfWaves();
        if (options_.sharing && best.model.problem.size() <= kMostToShare)
            share(best);
        plan_.findings.insert(plan_.findings.end(), best.drafts.findings.begin(),
                              best.drafts.findings.end());
        const Problem& problem = best.model.problem;
        if (best.schedule.overtime > 0)
            best.schedule =
                leastOvertime(problem, std::move(best.schedule),
                              {.schedules = schedulesFor(problem, options_.effort) / 4}, stop_);
        const SettleOptions settling{.looks = 150'000 * std::max(1, options_.effort)};
        settle(problem, best.schedule, settling, stop_);
        sideBySide(best);
        sayOvertime(problem, best.schedule, helpers_, session_.setting.start, plan_.findings);
        plan_.tasks = tasksOf(best);
        plan_.finish = Seconds{best.schedule.finish};
        plan_.bound = Seconds{best.bound};
        return std::move(plan_);
    }

private:
    void sayWhoIsThere() {
        if (helpers_.empty()) {
            helpers_.emplace_back().name = "Helper 1";
            plan_.findings.push_back({Finding::Level::note, "/helpers",
                                      core::says("No helpers are named: planned for one, "
                                                 "'Helper 1'."),
                                      core::says("Name who comes.")});
        } else if (helpers_.size() == 1) {
            plan_.findings.push_back(
                {Finding::Level::note, "/helpers",
                 core::says("%1 works alone: laying the layers takes longer than planned for two.",
                            helpers_.front().name),
                 core::says("A second pair of hands for laying the layers.")});
        }
    }

    /// Looks shortly at each way to cut the passes into waves, and longer at the best.
    Attempt bestOfWaves() {
        std::optional<Attempt> best;
        for (const int zones : kZonesInWave) {
            const DraftOptions options{.zonesInWave = zones, .shares = {}};
            Drafts drafts = draftTasks(session_, helpers_, quilts_, options);
            // Smaller waves that change nothing were planned already.
            if (best && drafts.tasks == best->drafts.tasks)
                continue;
            Attempt a = attempt(std::move(drafts));
            a.drafted = options;
            if (!best || a.schedule.overtime < best->schedule.overtime ||
                (a.schedule.overtime == best->schedule.overtime &&
                 a.schedule.finish < best->schedule.finish * kWorthAWave))
                best = std::move(a);
        }
        deepen(*best);
        return std::move(*best);
    }

    Attempt attempt(Drafts drafts) const {
        Attempt a;
        a.drafts = std::move(drafts);
        a.model = modelOf(session_, helpers_, quilts_, a.drafts);
        const Problem& problem = a.model.problem;
        a.bound = lowerBound(problem);
        const int schedules = schedulesFor(problem, options_.effort);
        a.schedule = searchBySweeps(problem, construct(problem),
                                    {.schedules = schedules / kShortLook, .bound = a.bound}, stop_);
        return a;
    }

    void deepen(Attempt& a) const {
        const Problem& problem = a.model.problem;
        SearchOptions searching{
            .schedules = schedulesFor(problem, options_.effort), .bound = a.bound, .seed = 2};
        a.schedule = searchBySweeps(problem, a.schedule, searching, stop_);
        // Sections see only themselves; the whole is looked at once more.
        a.schedule = search(problem, a.schedule, searching, stop_).schedule;
        bound(a);
    }

    /// Where somebody stays beyond their hours the bound must not know them.
    void bound(Attempt& a) const {
        const Problem& problem = a.model.problem;
        a.bound = lowerBound(a.schedule.overtime > 0 ? withOpenEnd(problem) : problem);
    }

    void share(Attempt& a) const {
        const Given given{session_, helpers_, quilts_};
        for (int round = 0; round < kSharing && !stop_.stop_requested(); ++round) {
            DraftOptions drafted = a.drafted;
            auto next = shared(given, a, drafted);
            if (!next)
                return;
            const Problem& problem = next->model.problem;
            const SearchOptions searching{.schedules = schedulesFor(problem, options_.effort) / 2,
                                          .seed = 3};
            next->schedule = searchBySweeps(problem, next->schedule, searching, stop_);
            const int saved = a.schedule.finish - next->schedule.finish;
            if (next->schedule.overtime > a.schedule.overtime ||
                (next->schedule.overtime == a.schedule.overtime && saved < kWorthSharing))
                return;
            static_cast<Planned&>(a) = std::move(*next);
            a.drafted = std::move(drafted);
            bound(a);
        }
    }

    /// Two people at one table see each other's side, where that leaves both about as much to do.
    void sideBySide(Attempt& a) const {
        const Problem& problem = a.model.problem;
        auto pair = mirroredPair(a.model, a.drafts, quilts_);
        if (!pair || pair->overtime > a.schedule.overtime ||
            pair->finish > a.schedule.finish * kWorthAPair)
            return;
        settle(problem, *pair, {.zonesToo = false}, stop_);
        if (spread(problem, *pair) <= std::max(kEvenPair, spread(problem, a.schedule)))
            a.schedule = std::move(*pair);
    }

    std::vector<Task> tasksOf(const Attempt& a) const {
        std::vector<Task> tasks;
        tasks.reserve(a.drafts.tasks.size());
        for (std::size_t i = 0; i < a.drafts.tasks.size(); ++i) {
            const TaskDraft& d = a.drafts.tasks[i];
            Task t;
            t.id = idOf(d, quilts_);
            t.kind = d.kind;
            t.job = d.job;
            t.pass = d.pass;
            if (d.zone >= 0)
                t.zone = quilts_[static_cast<std::size_t>(d.job)]
                             .zones[static_cast<std::size_t>(d.zone)]
                             .id;
            t.share = d.share;
            for (const int p : a.schedule.crew[i])
                t.people.push_back(helpers_[static_cast<std::size_t>(p)].name);
            if (a.schedule.strip[i] >= 0)
                t.places.push_back(placeOf(a, i));
            t.start = Seconds{a.schedule.start[i]};
            t.end = Seconds{a.schedule.end[i]};
            for (const int b : d.after)
                t.after.push_back(idOf(a.drafts.tasks[static_cast<std::size_t>(b)], quilts_));
            tasks.push_back(std::move(t));
        }
        std::ranges::sort(tasks, [](const Task& x, const Task& y) {
            return x.start != y.start ? x.start < y.start : x.id < y.id;
        });
        return tasks;
    }

    static StandingPlace placeOf(const Attempt& a, std::size_t i) {
        const auto strip = static_cast<std::size_t>(a.schedule.strip[i]);
        const Length lo = Length::nanometres(a.schedule.place[i]);
        return {a.model.edges[strip].side,
                {lo, lo + Length::nanometres(a.model.problem.strips[strip].room)}};
    }

    const Session& session_;
    const std::vector<QuiltPlan>& quilts_;
    const CrewOptions& options_;
    std::stop_token stop_;
    std::vector<Helper> helpers_;
    CrewPlan plan_;
};

} // namespace

CrewPlan planCrew(const Session& session, const std::vector<QuiltPlan>& quilts,
                  const CrewOptions& options, std::stop_token stop) {
    return Planner{session, quilts, options, std::move(stop)}.run();
}

} // namespace bastewright
