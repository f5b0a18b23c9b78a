#include "planners/passes/nearby.h"
#include "planners/passes/passes.h"
#include "planners/passes/predict.h"
#include "planners/passes/way_words.h"
#include "planners/rolls/lifting.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace bastewright {
namespace {

using Start = Basting::Start;

/// So many ways get the exact search; the others keep their grids.
constexpr std::size_t kSearched = 24;
/// The search for so few passes takes no time.
constexpr int kFewPasses = 6;

/// From an open side to the deepest point of any pass.
Length deepestPoint(const PassChoice& choice) {
    const std::vector<Side> open = openSides(choice.lie);
    Length deepest;
    for (const Step& step : choice.sequence.steps) {
        const Region fresh = regionOf(*choice.board, choice.sequence.cells, step.fresh);
        for (const Point& p : choice.board->points) {
            if (!fresh.contains(p))
                continue;
            const Point at = step.tableFor(*choice.board, p);
            const Rect table{at.x, at.y, at.x + choice.lie.x.size, at.y + choice.lie.y.size};
            deepest = std::max(deepest, nearestDepth(p, table, open).value_or(Length{}));
        }
    }
    return deepest;
}

/// From the quilt's middle to that of the table in the first pass, where some of the quilt lies
/// beyond it.
Vec offCentre(const PassChoice& choice) {
    const Point at = choice.sequence.steps.front().at;
    const auto off = [](Length from, Length size, Length quilt) {
        const Length by = from + size / 2 - quilt / 2;
        // Halves of odd nanometres are no offset.
        return abs(by) <= Length::nanometres(2) ? Length{} : by;
    };
    return {off(at.x, choice.lie.x.size, choice.board->x.quilt),
            off(at.y, choice.lie.y.size, choice.board->y.quilt)};
}

void sumUp(const PassRequest& request, PassChoice& choice) {
    choice.summary = {};
    Alternative& a = choice.summary;
    a.surface = choice.surface.name;
    a.start = choice.start;
    a.quiltLengthAlongLength = choice.quiltLengthAlongLength;
    a.surfaceLength = choice.surface.length;
    a.surfaceWidth = choice.surface.width;
    a.workable = !choice.sequence.steps.empty();
    if (!a.workable) {
        a.why = unworkable(request, choice);
        return;
    }
    const std::vector<Pass> passes = detailedPasses(request, choice);
    a.passes = static_cast<int>(choice.sequence.steps.size());
    a.pulls = static_cast<int>(passes.size()) - a.passes;
    for (const Pass& p : passes) {
        const Length way = abs(p.shift.dx) + abs(p.shift.dy);
        a.largestShift = std::max(a.largestShift, way);
        a.shifted += way;
    }
    a.predicted = predictedTime(request, choice, passes);
    if (passes.size() > 1) {
        a.liftPeople = liftersFor(request);
        a.liftKilograms = quiltKilograms(request.job, request.layers.backing);
        a.lifts = a.liftPeople > 1 ? static_cast<int>(passes.size()) - 1 : 0;
    }
    if (!choice.surface.floor) {
        a.offCentre = offCentre(choice);
        a.reach = deepestPoint(choice);
    }
    a.why = remarks(request, choice);
}

LayoutInput inputOf(const PassRequest& request, const PassChoice& choice, bool search) {
    return {.board = *choice.board,
            .lie = choice.lie,
            .start = choice.start,
            .row = request.job.basting.spacing / 2,
            .search = search,
            .stop = request.stop};
}

/// Of sequences with as few passes that which those who are there work soonest.
void takeQuickest(const PassRequest& request, PassChoice& choice) {
    if (choice.others.empty())
        return;
    const StepCost cost = costWith(request, choice);
    const auto seconds = [&](const Sequence& s) {
        double sum = 0;
        std::optional<Point> before;
        for (const Step& step : s.steps) {
            sum += cost(s.cells, step, before);
            before = step.endsAt();
        }
        return sum;
    };
    double least = seconds(choice.sequence);
    for (Sequence& s : choice.others)
        if (const double here = seconds(s); here < least) {
            least = here;
            std::swap(choice.sequence, s);
        }
}

void lay(const PassRequest& request, PassChoice& choice, bool search, bool briefly = false) {
    LayoutInput in = inputOf(request, choice, search);
    in.briefly = briefly;
    auto layout = request.memory ? request.memory->layOut(in) : layOut(in);
    if (layout) {
        choice.sequence = std::move(layout->sequence);
        choice.others = std::move(layout->others);
        choice.leastPasses = static_cast<int>(layout->least);
        takeQuickest(request, choice);
    }
    sumUp(request, choice);
}

/// Where the table lies in each pass.
std::vector<Point> tablesOf(const Sequence& sequence) {
    std::vector<Point> out;
    for (const Step& step : sequence.steps)
        out.push_back(step.at);
    return out;
}

bool sameLie(const PassChoice& a, const PassChoice& b) {
    return a.surface.length == b.surface.length && a.surface.width == b.surface.width &&
           a.surface.group == b.surface.group &&
           a.quiltLengthAlongLength == b.quiltLengthAlongLength;
}

/// Starts that say no more than another way does: beside the middle where that saves no pass, from
/// an end where all is done in one.
void dropNeedless(const Basting& basting, std::vector<PassChoice>& ways) {
    std::vector<PassChoice> kept;
    for (const PassChoice& way : ways) {
        if (way.start == Start::centred || basting.start == way.start) {
            kept.push_back(way);
            continue;
        }
        const bool needless = std::ranges::any_of(ways, [&](const PassChoice& other) {
            return other.start == Start::centred && sameLie(other, way) && other.summary.workable &&
                   (way.start == Start::besideMiddle ? other.summary.passes <= way.summary.passes
                                                     : other.summary.passes == 1);
        });
        const bool nothing =
            !way.summary.workable && std::ranges::any_of(ways, [&](const PassChoice& other) {
                return other.start != way.start && sameLie(other, way) && other.summary.workable;
            });
        if (!needless && !nothing)
            kept.push_back(way);
    }
    ways = std::move(kept);
}

/// Of equal ways that no surface works with, one is enough.
void dropEqualFailures(std::vector<PassChoice>& ways) {
    std::vector<PassChoice> kept;
    for (PassChoice& way : ways)
        if (way.summary.workable || std::ranges::none_of(kept, [&](const PassChoice& k) {
                return !k.summary.workable && sameLie(k, way);
            }))
            kept.push_back(std::move(way));
    ways = std::move(kept);
}

/// Versions of a way with other sequences, each once, with no more passes and pulls.
class Versions {
public:
    Versions(const PassRequest& request, const PassChoice& choice)
        : request_{request}
        , choice_{choice} {
        known_.emplace(tablesOf(choice.sequence), choice.sequence.windows);
    }

    void add(Sequence s) {
        if (s.windows.size() > choice_.sequence.windows.size() ||
            !known_.emplace(tablesOf(s), s.windows).second)
            return;
        PassChoice other = choice_;
        other.sequence = std::move(s);
        sumUp(request_, other);
        if (other.summary.pulls <= choice_.summary.pulls)
            out_.push_back(std::move(other));
    }
    std::vector<PassChoice> all() && { return std::move(out_); }

private:
    const PassRequest& request_;
    const PassChoice& choice_;
    std::set<std::pair<std::vector<Point>, std::vector<Window>>> known_;
    std::vector<PassChoice> out_;
};

auto rank(const PassChoice& c) {
    return std::tuple{!c.summary.workable, !c.asked, c.summary.predicted, c.surface.tables.size()};
}

} // namespace

bool startsAsAskedFor(const Job& job, const Alternative& way) {
    // From an end is for who asks for it: smoothing runs one way, and the layers have to be rolled.
    if (job.basting.start == Start::best)
        return way.start != Start::oneEnd;
    // What is done in one pass has no start.
    return way.passes == 1 || way.start == job.basting.start;
}

bool liesAsAskedFor(const Job& job, const Alternative& way) {
    return job.basting.along == Basting::Along::either ||
           (job.basting.along == Basting::Along::tableLength) == way.quiltLengthAlongLength;
}

bool standsAsAskedFor(const Room& room, const Alternative& way) {
    return !room.together || *room.together == PushedTogether{way.surfaceLength, way.surfaceWidth};
}

bool isAskedFor(const Job& job, const Room& room, const Alternative& way) {
    // On the floor there is nothing to push together and no side to lie along.
    if (room.tables.empty())
        return startsAsAskedFor(job, way);
    return startsAsAskedFor(job, way) && liesAsAskedFor(job, way) && standsAsAskedFor(room, way);
}

void makeEven(const PassRequest& request, PassChoice& choice) {
    if (choice.even || choice.sequence.steps.empty())
        return;
    const LayoutInput in = inputOf(request, choice, true);
    Sequence even = evened(in, choice.sequence);
    if (even.windows != choice.sequence.windows)
        choice.others.insert(choice.others.begin(), std::move(choice.sequence));
    choice.sequence = std::move(even);
    choice.even = true;
    sumUp(request, choice);
    if (auto placed = placedFor(in, choice.sequence, costWith(request, choice))) {
        PassChoice other = choice;
        other.sequence = *std::move(placed);
        sumUp(request, other);
        if (other.summary.predicted < choice.summary.predicted) {
            other.others.insert(other.others.begin(), std::move(choice.sequence));
            choice = std::move(other);
        }
    }
    choice.asked = isAskedFor(request.job, request.setting.room, choice.summary);
}

std::vector<PassChoice> variations(const PassRequest& request, const PassChoice& choice) {
    const LayoutInput in = inputOf(request, choice, true);
    const StepCost cost = costWith(request, choice);
    Versions out{request, choice};
    const auto addBoth = [&](const Sequence& s) {
        if (auto placed = placedFor(in, s, cost))
            out.add(*std::move(placed));
        out.add(s);
    };
    addBoth(choice.sequence);
    for (const Sequence& s : choice.others) {
        addBoth(evened(in, s));
        addBoth(s);
    }
    if (choice.summary.passes <= kFewPasses)
        for (const Sequence& s : ofSmaller(in, request.memory, cost)) {
            addBoth(evened(in, s));
            addBoth(s);
        }
    return std::move(out).all();
}

std::vector<PassChoice> nearWays(const PassRequest& request, const PassChoice& choice) {
    Versions out{request, choice};
    if (choice.summary.passes <= kFewPasses)
        for (Sequence& s :
             nearby(inputOf(request, choice, true), choice.sequence, costWith(request, choice)))
            out.add(std::move(s));
    return std::move(out).all();
}

std::vector<PassChoice> forLessReach(const PassRequest& request, const PassChoice& choice,
                                     std::span<const Length> reaches) {
    std::vector<PassChoice> out;
    for (const Length reach : reaches) {
        const Rect table{{}, {}, choice.lie.x.size, choice.lie.y.size};
        if (request.stop.stop_requested())
            break;
        // As good as any where nothing is farther.
        if (choice.surface.floor || outOfReach(table, choice.lie.closed, reach).empty())
            continue;
        PassChoice other = choice;
        other.lie.reach = reach;
        other.sequence = {};
        other.others.clear();
        other.even = false;
        lay(request, other, choice.summary.passes <= kFewPasses, true);
        if (!other.summary.workable || other.summary.passes > choice.summary.passes)
            continue;
        makeEven(request, other);
        out.push_back(std::move(other));
    }
    return out;
}

std::vector<PassChoice> passChoices(const PassRequest& request,
                                    std::span<const Arrangement> surfaces) {
    const auto board = std::make_shared<const Board>(boardOf(request));
    const bool sidesAlike = request.setting.room.walls.empty() &&
                            std::ranges::none_of(request.setting.helpers, [](const Helper& h) {
                                return h.side.has_value();
                            });
    std::vector<PassChoice> out;
    for (const Arrangement& surface : surfaces)
        for (const bool along : {false, true}) {
            // On the floor the quilt is not turned to suit anything, nor is a square table, if all
            // its sides are alike.
            if (along && (surface.floor || (surface.length == surface.width && sidesAlike)))
                continue;
            for (const Start start : {Start::centred, Start::besideMiddle, Start::oneEnd}) {
                PassChoice way{.surface = surface,
                               .quiltLengthAlongLength = along,
                               .start = start,
                               .board = board,
                               .lie = lieOf(request, surface, along)};
                lay(request, way, false);
                way.asked = isAskedFor(request.job, request.setting.room, way.summary);
                out.push_back(std::move(way));
            }
        }
    std::ranges::stable_sort(out, {}, rank);
    std::size_t searched = 0;
    for (PassChoice& way : out) {
        if (request.stop.stop_requested() && out.front().summary.workable)
            break;
        if (way.start == Start::oneEnd || (way.summary.workable && way.summary.passes == 1) ||
            (way.summary.workable && searched >= kSearched))
            continue;
        lay(request, way, true);
        ++searched;
    }
    for (PassChoice& way : out)
        way.asked = isAskedFor(request.job, request.setting.room, way.summary);
    dropNeedless(request.job.basting, out);
    dropEqualFailures(out);
    std::ranges::stable_sort(out, {}, rank);
    return out;
}

} // namespace bastewright
