#include "planners/whole/way_trials.h"

#include "planners/crew/least_finish.h"
#include "planners/whole/quilt.h"

#include <algorithm>
#include <tuple>

namespace bastewright {
namespace {

/// Laying out takes about a tenth of a millisecond for the square of the people and each pass, and
/// many times that where it does not work. After so many of these no more than the first few ways
/// are laid out, where none works yet after three times as many.
constexpr std::size_t kMostWork = 2'000, kInVainTimes = 8;
/// For less nobody lays a quilt elsewhere than it is shown.
constexpr Seconds kWorthLyingElsewhere{30};

} // namespace

WayTrials::WayTrials(const WayQuestion& question, std::vector<Shared> shared)
    : question_{question}
    , shared_{std::move(shared)} {
    for (const Shared& s : shared_)
        places_.push_back(question_.points[s.job].points);
}

std::size_t WayTrials::people() const {
    return std::max<std::size_t>(1, question_.session.setting.helpers.size());
}

PassRequest WayTrials::requestOf(std::size_t quilt) const {
    const std::size_t job = shared_[quilt].job;
    const Session& session = question_.session;
    return {.job = session.jobs[job],
            .setting = session.setting,
            .layers = question_.layers[job],
            .points = question_.points[job].points,
            .alone = session.jobs.size() == 1,
            .memory = &question_.memories[job],
            .stop = question_.stop};
}

std::vector<QuiltPlan> WayTrials::lying() const {
    PassChoice none;
    none.summary.workable = false;
    std::vector<QuiltPlan> out;
    for (const Shared& s : shared_)
        out.push_back(layQuilt(question_.session, s.job,
                               s.choices.empty() ? none : s.choices.front(), s.surface,
                               question_.layers[s.job], question_.points[s.job]));
    return out;
}

std::size_t WayTrials::stops(const CrewPlan& crew) {
    return static_cast<std::size_t>(
        std::ranges::count(crew.findings, Finding::Level::stop, &Finding::level));
}

WayTrials::Trial WayTrials::layOut(Picks picks, bool sharings) {
    Trial out{std::move(picks), {}, {}, sharings};
    std::size_t passes = 0;
    for (std::size_t q = 0; q < shared_.size(); ++q) {
        const Shared& s = shared_[q];
        const PassChoice& choice = evenedOut(q, out.picks[q]);
        out.quilts.push_back(layQuilt(question_.session, s.job, choice, s.surface,
                                      question_.layers[s.job], question_.points[s.job]));
        passes += out.quilts.back().passes.size();
    }
    out.crew =
        planCrew(question_.session, out.quilts, places_,
                 {.range = false, .bound = false, .sharings = sharings, .memory = &sharings_},
                 question_.stop);
    work_ += people() * people() * passes * (stops(out.crew) > 0 ? 1 + kInVainTimes : 1);
    return out;
}

const PassChoice& WayTrials::evenedOut(std::size_t quilt, std::size_t choice) {
    PassChoice& out = shared_[quilt].choices[choice];
    makeEven(requestOf(quilt), out);
    return out;
}

void WayTrials::note(const Trial& trial) {
    if (shared_.size() > 1)
        return;
    const auto stop = std::ranges::find(trial.crew.findings, Finding::Level::stop, &Finding::level);
    laidOut_[trial.picks.front()] = {trial.crew.finish, stops(trial.crew),
                                     stop != trial.crew.findings.end() ? stop->text : Sentence{}};
}

bool WayTrials::isBetter(const Trial& trial) const {
    const auto rank = [&](const Trial& one) {
        std::size_t others = 0; // not as was asked for
        for (std::size_t q = 0; q < shared_.size(); ++q)
            others += shared_[q].choices[one.picks[q]].asked ? 0 : 1;
        return std::tuple{stops(one.crew), others, one.crew.finish};
    };
    return rank(trial) < rank(best_);
}

void WayTrials::begin() {
    best_ = layOut(Picks(shared_.size(), 0), true);
    note(best_);
}

std::size_t WayTrials::tryChoice(std::size_t quilt, std::size_t choice) {
    Picks picks = best_.picks;
    picks[quilt] = choice;
    Trial trial = layOut(std::move(picks), false);
    note(trial);
    const std::size_t out = stops(trial.crew);
    if (isBetter(trial))
        best_ = std::move(trial);
    return out;
}

std::size_t WayTrials::tryNew(std::size_t quilt, PassChoice&& choice) {
    std::vector<PassChoice>& choices = shared_[quilt].choices;
    const std::size_t index = choices.size();
    choices.push_back(std::move(choice));
    const std::size_t out = tryChoice(quilt, index);
    if (best_.picks[quilt] != index) {
        choices.pop_back();
        laidOut_.erase(index);
    }
    return out;
}

void WayTrials::tryVersion(std::size_t choice, PassChoice&& other) {
    PassChoice& here = shared_.front().choices[choice];
    std::swap(here, other);
    Trial trial = layOut({choice}, false);
    if (stops(trial.crew) > 0 ||
        trial.crew.finish + kWorthLyingElsewhere > laidOut_[choice].finish) {
        std::swap(here, other);
        return;
    }
    note(trial);
    if (isBetter(trial))
        best_ = std::move(trial);
}

Seconds WayTrials::leastFinishOf(const PassChoice& choice) const {
    const std::size_t job = shared_.front().job;
    return leastFinish(question_.session, job,
                       layQuilt(question_.session, job, choice, shared_.front().surface,
                                question_.layers[job], question_.points[job]),
                       places_.front());
}

bool WayTrials::spent(bool works) const {
    return work_ > (works ? kMostWork : 3 * kMostWork);
}

void WayTrials::finish() {
    const bool handed = std::ranges::any_of(question_.asked.jobs,
                                            [](const Job& job) { return !job.handed.empty(); });
    // What begin() laid out has all sharings already.
    if (question_.outcome && !handed && best_.all)
        return;
    best_.crew =
        planCrew(question_.asked, best_.quilts, places_,
                 {.range = !question_.outcome, .bound = !question_.outcome, .memory = &sharings_},
                 question_.stop);
}

} // namespace bastewright
