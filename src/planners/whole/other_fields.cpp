#include "planners/whole/other_fields.h"

#include "planners/surface/reachable.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace bastewright {
namespace {

/// Ways as near as this to the quickest are tried with other fields too, in all so many: fewer with
/// more people, for whom each takes longer. Where the farthest may have to do too much alone, ways
/// predicted to be near.
constexpr double kWorthVarying = 1.03, kMayBeQuicker = 1.1;
constexpr std::size_t kMostVaried = 12, kLeastVaried = 4, kVariedByOne = 80;
/// Ways for those who get up to so much less far than the farthest are tried where people are few.
constexpr int kInchesLess = 6;
constexpr std::size_t kFewPeople = 4;
/// So many more that are near the best of all.
constexpr std::size_t kMostNear = 8, kLeastNear = 4, kNearByOne = 60;

std::size_t shareOf(std::size_t byOne, std::size_t people, std::size_t least, std::size_t most) {
    return std::clamp(byOne / (people * people), least, most);
}

class OtherFields {
public:
    explicit OtherFields(WayTrials& trials)
        : trials_{trials}
        , left_{shareOf(kVariedByOne, trials.people(), kLeastVaried, kMostVaried)} {}

    void run() {
        const std::vector<Length> reaches = lesserReaches();
        const PassRequest request = trials_.requestOf(0);
        // Where the farthest has to do too much alone, the finish says nothing yet.
        const Seconds quickest = choiceOf(trials_.best().picks.front()).summary.predicted;
        std::vector<Version> versions;
        const auto add = [&](std::size_t choice, std::vector<PassChoice> others) {
            for (PassChoice& other : others)
                versions.push_back({choice, std::move(other)});
        };
        for (const std::size_t choice : nearest([&](std::size_t k, const WayTrials::LaidOut&) {
                 return double(choiceOf(k).summary.predicted.count()) <=
                        kMayBeQuicker * double(quickest.count());
             }))
            add(choice, forLessReach(request, choiceOf(choice), reaches));
        tryAll(std::exchange(versions, {}));
        for (const std::size_t choice : worthVarying())
            add(choice, variations(request, choiceOf(choice)));
        tryAll(std::exchange(versions, {}));
        // Predictions cannot tell ways apart that are so near each other.
        left_ = shareOf(kNearByOne, trials_.people(), kLeastNear, kMostNear);
        tryNear(trials_.best().picks.front());
        for (const std::size_t choice : worthVarying())
            tryNear(choice);
    }

private:
    struct Version {
        std::size_t choice;
        PassChoice way;
    };

    /// All that tells versions of a way apart.
    using Places = std::vector<std::pair<Point, Window>>;
    static Places placesOf(const Sequence& sequence) {
        Places out;
        for (std::size_t k = 0; k < sequence.steps.size(); ++k)
            out.emplace_back(sequence.steps[k].at, sequence.windows[k]);
        return out;
    }

    /// Those near a way, then those near the quickest of them, as long as one ends sooner.
    void tryNear(std::size_t choice) {
        const PassRequest request = trials_.requestOf(0);
        const auto finish = [&] { return trials_.laidOut().at(choice).finish; };
        for (Seconds before; left_ > 0 && before != finish();) {
            before = finish();
            std::vector<Version> versions;
            for (PassChoice& other : nearWays(request, choiceOf(choice)))
                versions.push_back({choice, std::move(other)});
            tryAll(std::move(versions));
        }
    }

    const PassChoice& choiceOf(std::size_t k) const { return trials_.choices(0)[k]; }

    /// Those predicted to be quickest first; none that cannot be quicker than the best.
    void tryAll(std::vector<Version> versions) {
        std::ranges::stable_sort(versions, {},
                                 [](const Version& v) { return v.way.summary.predicted; });
        for (Version& v : versions) {
            if (!known_.emplace(v.choice, placesOf(v.way.sequence)).second)
                continue;
            if (left_ == 0 || trials_.spent(true) || trials_.question().stop.stop_requested())
                return;
            if (trials_.leastFinishOf(v.way) >= trials_.bestFinish())
                continue;
            --left_;
            trials_.tryVersion(v.choice, std::move(v.way));
        }
    }

    /// Ways that work, as was asked for if the best is, quickest first.
    template <class Near>
    std::vector<std::size_t> nearest(Near near) const {
        const bool asked = choiceOf(trials_.best().picks.front()).asked;
        std::vector<std::pair<Seconds, std::size_t>> found;
        for (const auto& [choice, l] : trials_.laidOut())
            if (l.stops == 0 && choiceOf(choice).asked == asked && near(choice, l))
                found.emplace_back(l.finish, choice);
        std::ranges::sort(found);
        std::vector<std::size_t> out;
        for (const auto& [finish, choice] : found)
            out.push_back(choice);
        return out;
    }

    std::vector<std::size_t> worthVarying() const {
        const double most = kWorthVarying * double(trials_.bestFinish().count());
        return nearest([&](std::size_t, const WayTrials::LaidOut& l) {
            return double(l.finish.count()) <= most;
        });
    }

    /// Less than the farthest by a few inches, and of the others who pin, and a little less than
    /// each of them, the longest first.
    std::vector<Length> lesserReaches() const {
        const PassRequest request = trials_.requestOf(0);
        const auto& helpers = request.setting.helpers;
        const Length farthest = farthestReach(helpers, request.job.basting.with);
        std::set<Length, std::greater<>> out;
        const auto add = [&](Length reach) {
            if (reach < farthest && reach > Length{})
                out.insert(reach);
        };
        for (int less = 1; less <= kInchesLess && helpers.size() <= kFewPeople; ++less)
            add(farthest - Length::inches(less));
        for (const Helper& h : helpers)
            for (const int less : {0, 1, 3})
                if (h.pins)
                    add(leaningReach(h) - Length::inches(less));
        return {out.begin(), out.end()};
    }

    WayTrials& trials_;
    std::set<std::pair<std::size_t, Places>> known_; ///< have been tried
    std::size_t left_;                               ///< versions that may still be tried
};

} // namespace

void tryLessReach(WayTrials& trials, std::size_t quilt) {
    PassRequest request = trials.requestOf(quilt);
    std::set<Length> reaches;
    for (const Helper& h : request.setting.helpers)
        if (h.pins)
            reaches.insert(leaningReach(h));
    const Length farthest = farthestReach(request.setting.helpers, request.job.basting.with);
    std::vector<Arrangement> surfaces;
    for (const PassChoice& c : trials.choices(quilt))
        if (!c.surface.floor && std::ranges::none_of(surfaces, [&](const Arrangement& a) {
                return std::tie(a.length, a.width, a.group) ==
                       std::tie(c.surface.length, c.surface.width, c.surface.group);
            }))
            surfaces.push_back(c.surface);
    const std::stop_token& stop = trials.question().stop;
    std::size_t vain = 0;
    for (const Length reach : reaches) {
        if (reach >= farthest || surfaces.empty() || stop.stop_requested())
            return;
        request.reach = reach;
        for (PassChoice& way : passChoices(request, surfaces)) {
            if (!way.summary.workable || stop.stop_requested())
                break;
            if (vain >= kMostInVain || trials.spent(false))
                return;
            const std::size_t before = trials.bestStops();
            vain = trials.tryNew(quilt, std::move(way)) < before ? 0 : vain + 1;
            if (trials.bestStops() == 0)
                return;
        }
    }
}

void tryOtherFields(WayTrials& trials) {
    OtherFields{trials}.run();
}

} // namespace bastewright
