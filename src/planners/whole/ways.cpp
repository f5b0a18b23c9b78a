#include "planners/whole/ways.h"

#include "planners/whole/other_fields.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace bastewright {
namespace {

/// Where the best few do not work, so many in all are tried.
constexpr std::size_t kMostTried = 12;
/// A way predicted to take this much longer than the quickest so far is not laid out in full: the
/// predictions are off by less.
constexpr double kWorthLayingOut = 1.3;
constexpr std::size_t kMostLaidOut = 16;
/// However long laying out takes, so many are.
constexpr std::size_t kAlways = 3;

const PassChoice& bestOf(const WayTrials& trials, std::size_t quilt) {
    return trials.choices(quilt)[trials.best().picks[quilt]];
}

bool mayBeNear(const WayTrials& trials, std::size_t quilt, const PassChoice& way) {
    return double(way.summary.predicted.count()) <=
           kWorthLayingOut * double(bestOf(trials, quilt).summary.predicted.count());
}

/// Of the only quilt, where the best works: what was asked for wins however long it takes; of two
/// that both were, or neither, the one that ends first.
bool cannotWin(WayTrials& trials, std::size_t choice) {
    const bool asked = bestOf(trials, 0).asked;
    if (trials.choices(0)[choice].asked != asked)
        return asked;
    return trials.leastFinishOf(trials.evenedOut(0, choice)) >= trials.bestFinish();
}

/// All that may be near to the quickest, laid out in full, but for those that cannot win: gives
/// these.
std::vector<std::size_t> tryOthers(WayTrials& trials, std::size_t quilt) {
    std::vector<std::size_t> out;
    std::size_t tried = 1, vain = 0;
    for (std::size_t k = 1; k < trials.choices(quilt).size(); ++k) {
        const PassChoice& c = trials.choices(quilt)[k];
        if (!c.summary.workable || trials.question().stop.stop_requested())
            break;
        const std::size_t before = trials.bestStops();
        const bool works = before == 0;
        // Several quilts follow one another on tables that stay as they are.
        if (works ? trials.quilts() > 1 || tried >= kMostLaidOut
                  : tried >= kMostTried || vain >= kMostInVain)
            break;
        if (tried >= kAlways && trials.spent(works))
            break;
        if (works && !mayBeNear(trials, quilt, c))
            continue;
        if (works && cannotWin(trials, k)) {
            out.push_back(k);
            continue;
        }
        const std::size_t stops = trials.tryChoice(quilt, k);
        ++tried;
        vain = works || stops < before ? 0 : vain + 1;
    }
    return out;
}

/// Ways that cannot win, laid out for their real times.
void layOutToo(WayTrials& trials, const std::vector<std::size_t>& choices) {
    for (const std::size_t k : choices) {
        if (trials.laidOut().size() >= kMostLaidOut || trials.spent(true) ||
            trials.question().stop.stop_requested())
            return;
        trials.tryChoice(0, k);
    }
}

/// Real times where they are known, of the only quilt.
void tellTimes(WayTrials& trials) {
    std::vector<PassChoice>& choices = trials.shared().front().choices;
    const std::size_t taken = trials.best().picks.front();
    const Seconds finish = trials.bestFinish();
    const double scale =
        double(finish.count()) /
        double(std::max<std::int64_t>(1, choices[taken].summary.predicted.count()));
    for (PassChoice& c : choices) {
        if (!c.summary.workable)
            continue;
        c.summary.predicted = Seconds{std::llround(scale * double(c.summary.predicted.count()))};
        if (c.asked == choices[taken].asked)
            c.summary.predicted = std::max(finish, c.summary.predicted);
    }
    // What zones in other hands cost is added to all.
    const Seconds handed = finish - trials.laidOut().at(taken).finish;
    for (const auto& [choice, l] : trials.laidOut()) {
        Alternative& way = choices[choice].summary;
        way.predicted = l.finish + handed;
        if (l.stops > trials.bestStops()) {
            way.workable = false;
            way.why = l.why;
        }
    }
}

/// What was taken first, then as they are listed.
void tell(WayTrials& trials) {
    if (trials.quilts() == 1)
        tellTimes(trials);
    for (std::size_t q = 0; q < trials.quilts(); ++q) {
        std::vector<PassChoice>& choices = trials.shared()[q].choices;
        const auto taken = static_cast<std::ptrdiff_t>(trials.best().picks[q]);
        std::rotate(choices.begin(), choices.begin() + taken, choices.begin() + taken + 1);
        std::stable_sort(choices.begin() + 1, choices.end(),
                         [](const PassChoice& a, const PassChoice& b) {
                             return std::tuple{!a.summary.workable, !a.asked, a.summary.predicted} <
                                    std::tuple{!b.summary.workable, !b.asked, b.summary.predicted};
                         });
    }
}

} // namespace

ChosenWays chooseWays(const Session& session, std::vector<Shared> shared,
                      const std::vector<LayerSizes>& layers, const std::vector<PointsPlan>& points,
                      std::vector<LayoutMemory>& memories, std::stop_token stop, bool outcome) {
    Session unhanded = session;
    for (Job& job : unhanded.jobs)
        job.handed.clear();
    const WayQuestion question{unhanded, session,         layers, points,
                               memories, std::move(stop), outcome};
    WayTrials trials{question, std::move(shared)};
    if (!std::ranges::all_of(trials.shared(), [](const Shared& s) {
            return !s.choices.empty() && s.choices.front().summary.workable;
        })) {
        std::vector<QuiltPlan> lying = trials.lying();
        return {std::move(trials.shared()), std::move(lying), {}};
    }
    trials.begin();
    for (std::size_t q = 0; q < trials.quilts() && trials.bestStops() > 0; ++q)
        tryLessReach(trials, q);
    std::vector<std::size_t> beaten;
    for (std::size_t q = 0; q < trials.quilts(); ++q)
        beaten = tryOthers(trials, q);
    if (trials.quilts() == 1 && trials.bestStops() == 0)
        tryOtherFields(trials);
    if (!outcome)
        layOutToo(trials, beaten);
    trials.finish();
    if (!outcome)
        tell(trials);
    std::vector<Shared> told = std::move(trials.shared());
    WayTrials::Trial best = std::move(trials).takeBest();
    return {std::move(told), std::move(best.quilts), std::move(best.crew)};
}

} // namespace bastewright
