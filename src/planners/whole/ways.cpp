#include "planners/whole/ways.h"

#include "planners/surface/reachable.h"
#include "planners/whole/quilt.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

namespace bastewright {
namespace {

/// Where the best few do not work, so many in all are tried.
constexpr std::size_t kMostTried = 12;
/// So many one after another that do not come nearer to working are enough.
constexpr std::size_t kMostInVain = 3;
/// A way predicted to take this much longer than the quickest so far is not laid out in full: the
/// predictions are off by less.
constexpr double kWorthLayingOut = 1.3;
constexpr std::size_t kMostLaidOut = 16;
/// Ways as near as this to the quickest are tried with other fields too, in all so many: fewer with
/// more people, for whom each takes longer. Where the farthest may have to do too much alone, ways
/// predicted to be near.
constexpr double kWorthVarying = 1.03, kMayBeQuicker = 1.1;
constexpr std::size_t kMostVaried = 40, kLeastVaried = 4, kVariedByOne = 400;

/// Laying out takes about a tenth of a millisecond for the square of the people and each pass, and
/// many times that where it does not work. After so many of these no more than the first few ways
/// are laid out, where none works yet after three times as many; where only the end is asked for
/// after a sixth.
constexpr std::size_t kMostWork = 3'000, kInVainTimes = 8, kAlways = 3;

using Picks = std::vector<std::size_t>; ///< the choice taken for each quilt

class Chooser {
public:
    Chooser(const Session& session, std::vector<Shared> shared,
            const std::vector<LayerSizes>& layers, const std::vector<PointsPlan>& points,
            std::vector<LayoutMemory>& memories, std::stop_token stop, bool outcome)
        : session_{session}
        , shared_{std::move(shared)}
        , layers_{layers}
        , points_{points}
        , memories_{memories}
        , stop_{std::move(stop)}
        , outcome_{outcome} {
        for (const Shared& s : shared_)
            places_.push_back(points_[s.job].points);
    }

    ChosenWays run() && {
        const bool allLie = std::ranges::all_of(shared_, [](const Shared& s) {
            return !s.choices.empty() && s.choices.front().summary.workable;
        });
        if (!allLie) {
            std::vector<QuiltPlan> lying;
            PassChoice none;
            none.summary.workable = false;
            for (const Shared& s : shared_)
                lying.push_back(layQuilt(session_, s.job,
                                         s.choices.empty() ? none : s.choices.front(), s.surface,
                                         layers_[s.job], points_[s.job]));
            return {std::move(shared_), std::move(lying), {}};
        }
        best_ = noted(Picks(shared_.size(), 0));
        for (std::size_t q = 0; q < shared_.size() && stops(best_.crew) > 0; ++q)
            tryLessReach(q);
        for (std::size_t q = 0; q < shared_.size(); ++q)
            tryOthers(q);
        if (shared_.size() == 1)
            tryVariations();
        if (outcome_)
            return {std::move(shared_), std::move(best_.quilts), std::move(best_.crew)};
        best_.crew = planCrew(session_, best_.quilts, places_, {}, stop_);
        tell();
        return {std::move(shared_), std::move(best_.quilts), std::move(best_.crew)};
    }

private:
    struct Attempt {
        Picks picks;
        std::vector<QuiltPlan> quilts;
        CrewPlan crew;
    };

    const Session& session_;
    std::vector<Shared> shared_;
    const std::vector<LayerSizes>& layers_;
    const std::vector<PointsPlan>& points_;
    std::vector<LayoutMemory>& memories_;
    std::vector<std::vector<PlacedPoint>> places_; ///< of each of `shared_`
    std::stop_token stop_;
    bool outcome_;
    std::size_t left_ = 0; ///< variations that may still be tried
    std::size_t work_ = 0; ///< spent on laying out
    Attempt best_;
    struct LaidOut {
        Seconds finish;
        std::size_t stops;
        Sentence why; ///< it does not work
    };
    std::map<std::size_t, LaidOut> laidOut_; ///< of the only quilt, by choice

    PassRequest requestOf(const Shared& s) const {
        return {.job = session_.jobs[s.job],
                .setting = session_.setting,
                .layers = layers_[s.job],
                .points = points_[s.job].points,
                .alone = session_.jobs.size() == 1,
                .memory = &memories_[s.job],
                .stop = stop_};
    }

    Attempt layOut(Picks picks) {
        Attempt a{std::move(picks), {}, {}};
        for (std::size_t q = 0; q < shared_.size(); ++q) {
            Shared& s = shared_[q];
            PassChoice& choice = s.choices[a.picks[q]];
            makeEven(requestOf(s), choice);
            a.quilts.push_back(
                layQuilt(session_, s.job, choice, s.surface, layers_[s.job], points_[s.job]));
        }
        std::size_t passes = 0;
        for (const QuiltPlan& q : a.quilts)
            passes += q.passes.size();
        a.crew = planCrew(session_, a.quilts, places_, {.range = false, .bound = false}, stop_);
        work_ += people() * people() * passes * (stops(a.crew) > 0 ? 1 + kInVainTimes : 1);
        return a;
    }

    /// What is known of a way from now on.
    void note(const Attempt& a) {
        if (shared_.size() > 1)
            return;
        const auto stop = std::ranges::find(a.crew.findings, Finding::Level::stop, &Finding::level);
        laidOut_[a.picks.front()] = {a.crew.finish, stops(a.crew),
                                     stop != a.crew.findings.end() ? stop->text : Sentence{}};
    }

    Attempt noted(Picks picks) {
        Attempt a = layOut(std::move(picks));
        note(a);
        return a;
    }

    std::size_t people() const { return std::max<std::size_t>(1, session_.setting.helpers.size()); }

    bool spent(bool works) const {
        return work_ > (works ? kMostWork / (outcome_ ? 6 : 1) : 3 * kMostWork);
    }

    static std::size_t stops(const CrewPlan& crew) {
        return static_cast<std::size_t>(
            std::ranges::count(crew.findings, Finding::Level::stop, &Finding::level));
    }

    /// All that may be near to the quickest, laid out in full.
    void tryOthers(std::size_t q) {
        const std::vector<PassChoice>& choices = shared_[q].choices;
        std::size_t tried = 1, vain = 0;
        for (std::size_t k = 1; k < choices.size(); ++k) {
            const PassChoice& c = choices[k];
            if (!c.summary.workable || stop_.stop_requested())
                break;
            const bool works = stops(best_.crew) == 0;
            // Several quilts follow one another on tables that stay as they are.
            if (works ? shared_.size() > 1 || tried >= kMostLaidOut
                      : tried >= kMostTried || vain >= kMostInVain)
                break;
            if (tried >= kAlways && spent(works))
                break;
            if (works && !mayBeNear(q, c))
                continue;
            Picks picks = best_.picks;
            picks[q] = k;
            Attempt a = noted(std::move(picks));
            ++tried;
            vain = works || stops(a.crew) < stops(best_.crew) ? 0 : vain + 1;
            if (isBetter(a))
                best_ = std::move(a);
        }
    }

    /// The ways nearest to the quickest with other fields, which people may share better.
    void tryVariations() {
        if (stops(best_.crew) > 0)
            return;
        left_ = std::clamp(kVariedByOne / (people() * people()), kLeastVaried, kMostVaried);
        const std::vector<Length> reaches = lesserReaches();
        const PassRequest request = requestOf(shared_.front());
        const std::vector<PassChoice>& choices = shared_.front().choices;
        // Where the farthest has to do too much alone, the finish says nothing yet.
        const Seconds quickest = choices[best_.picks.front()].summary.predicted;
        for (const std::size_t choice : nearest([&](std::size_t k, const LaidOut&) {
                 return double(choices[k].summary.predicted.count()) <=
                        kMayBeQuicker * double(quickest.count());
             }))
            for (PassChoice& other : forLessReach(request, choices[choice], reaches))
                vary(choice, std::move(other));
        const Seconds finish = best_.crew.finish;
        for (const std::size_t choice : nearest([&](std::size_t, const LaidOut& l) {
                 return double(l.finish.count()) <= kWorthVarying * double(finish.count());
             }))
            for (PassChoice& other : variations(request, choices[choice]))
                vary(choice, std::move(other));
    }

    /// Ways that work, as was asked for if the best is, quickest first.
    template <class Near>
    std::vector<std::size_t> nearest(Near near) const {
        const std::vector<PassChoice>& choices = shared_.front().choices;
        const bool asked = choices[best_.picks.front()].asked;
        std::vector<std::pair<Seconds, std::size_t>> found;
        for (const auto& [choice, l] : laidOut_)
            if (l.stops == 0 && choices[choice].asked == asked && near(choice, l))
                found.emplace_back(l.finish, choice);
        std::ranges::sort(found);
        std::vector<std::size_t> out;
        for (const auto& [finish, choice] : found)
            out.push_back(choice);
        return out;
    }

    /// Takes another version of a way if it ends sooner.
    void vary(std::size_t choice, PassChoice&& other) {
        if (left_ == 0 || spent(true) || stop_.stop_requested())
            return;
        --left_;
        PassChoice& here = shared_.front().choices[choice];
        std::swap(here, other);
        Attempt a = layOut({choice});
        if (stops(a.crew) > 0 || a.crew.finish >= laidOut_[choice].finish) {
            std::swap(here, other);
            return;
        }
        note(a);
        if (isBetter(a))
            best_ = std::move(a);
    }

    /// Less than the farthest: of those who pin, and a little less than each of them, the longest
    /// first.
    std::vector<Length> lesserReaches() const {
        const Job& job = session_.jobs[shared_.front().job];
        const Length farthest = farthestReach(session_.setting.helpers, job.basting.with);
        std::set<Length, std::greater<>> out;
        for (const Helper& h : session_.setting.helpers)
            for (const int less : {0, 1, 3})
                if (const Length reach = leaningReach(h) - Length::inches(less);
                    h.pins && reach < farthest)
                    out.insert(reach);
        return {out.begin(), out.end()};
    }

    bool mayBeNear(std::size_t q, const PassChoice& way) const {
        const PassChoice& best = shared_[q].choices[best_.picks[q]];
        if (outcome_ && way.asked != best.asked)
            return false;
        return double(way.summary.predicted.count()) <=
               kWorthLayingOut * double(best.summary.predicted.count());
    }

    bool isBetter(const Attempt& a) const {
        const auto rank = [&](const Attempt& one) {
            std::size_t others = 0; // not as was asked for
            for (std::size_t q = 0; q < shared_.size(); ++q)
                others += shared_[q].choices[one.picks[q]].asked ? 0 : 1;
            return std::tuple{stops(one.crew), others, one.crew.finish};
        };
        return rank(a) < rank(best_);
    }

    /// The farthest of all may sit, keep to a side or leave early: ways for those who get less far.
    void tryLessReach(std::size_t q) {
        Shared& s = shared_[q];
        const Job& job = session_.jobs[s.job];
        std::set<Length> reaches;
        for (const Helper& h : session_.setting.helpers)
            if (h.pins)
                reaches.insert(leaningReach(h));
        const Length farthest = farthestReach(session_.setting.helpers, job.basting.with);
        std::vector<Arrangement> surfaces;
        for (const PassChoice& c : s.choices)
            if (!c.surface.floor && std::ranges::none_of(surfaces, [&](const Arrangement& a) {
                    return std::tie(a.length, a.width, a.group) ==
                           std::tie(c.surface.length, c.surface.width, c.surface.group);
                }))
                surfaces.push_back(c.surface);
        std::size_t vain = 0;
        for (const Length reach : reaches) {
            if (reach >= farthest || surfaces.empty() || stop_.stop_requested())
                return;
            PassRequest request = requestOf(s);
            request.reach = reach;
            for (PassChoice& way : passChoices(request, surfaces)) {
                if (!way.summary.workable || stop_.stop_requested())
                    break;
                if (vain >= kMostInVain || spent(false))
                    return;
                Picks picks = best_.picks;
                picks[q] = s.choices.size();
                s.choices.push_back(std::move(way));
                Attempt a = noted(std::move(picks));
                vain = stops(a.crew) < stops(best_.crew) ? 0 : vain + 1;
                if (isBetter(a))
                    best_ = std::move(a);
                else
                    forgetLast(q);
                if (stops(best_.crew) == 0)
                    return;
            }
        }
    }

    void forgetLast(std::size_t q) {
        shared_[q].choices.pop_back();
        laidOut_.erase(shared_[q].choices.size());
    }

    /// Puts what was taken first, and real times where they are known.
    void tell() {
        for (std::size_t q = 0; q < shared_.size(); ++q) {
            std::vector<PassChoice>& choices = shared_[q].choices;
            const std::size_t taken = best_.picks[q];
            if (shared_.size() == 1) {
                const double scale =
                    double(best_.crew.finish.count()) /
                    double(std::max<std::int64_t>(1, choices[taken].summary.predicted.count()));
                for (PassChoice& c : choices) {
                    if (!c.summary.workable)
                        continue;
                    c.summary.predicted =
                        Seconds{std::llround(scale * double(c.summary.predicted.count()))};
                    if (c.asked == choices[taken].asked)
                        c.summary.predicted = std::max(best_.crew.finish, c.summary.predicted);
                }
                for (const auto& [choice, l] : laidOut_) {
                    Alternative& way = choices[choice].summary;
                    way.predicted = l.finish;
                    if (l.stops > stops(best_.crew)) {
                        way.workable = false;
                        way.why = l.why;
                    }
                }
            }
            std::rotate(choices.begin(), choices.begin() + static_cast<std::ptrdiff_t>(taken),
                        choices.begin() + static_cast<std::ptrdiff_t>(taken) + 1);
            std::stable_sort(
                choices.begin() + 1, choices.end(), [](const PassChoice& a, const PassChoice& b) {
                    return std::tuple{!a.summary.workable, !a.asked, a.summary.predicted} <
                           std::tuple{!b.summary.workable, !b.asked, b.summary.predicted};
                });
        }
    }
};

} // namespace

ChosenWays chooseWays(const Session& session, std::vector<Shared> shared,
                      const std::vector<LayerSizes>& layers, const std::vector<PointsPlan>& points,
                      std::vector<LayoutMemory>& memories, std::stop_token stop, bool outcome) {
    return Chooser{session, std::move(shared), layers, points, memories, std::move(stop), outcome}
        .run();
}

} // namespace bastewright
