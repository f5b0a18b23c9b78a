#include "planners/passes/predict.h"

#include "plan/trade_times.h"
#include "planners/passes/holds.h"
#include "planners/passes/reach.h"
#include "planners/passes/reached_share.h"
#include "planners/rolls/lifting.h"
#include "planners/surface/helper_order.h"
#include "ways/way.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace bastewright {
namespace {

using namespace trade_times;

constexpr Length kArmSpan = Length::inches(60);

double squareFeet(double squareInches) {
    return squareInches / 144.0;
}

/// The middle of the slowest of so many who share work evenly (docs/computation/crew.md, "Time is a
/// range"), from one on; more than eight count as eight.
constexpr std::array kSlowest{1.0, 1.17, 1.27, 1.34, 1.39, 1.43, 1.47, 1.50};
/// Beyond an hour and a half there are breaks, about so often.
constexpr double kRestsBeyond = 90 * 60, kRestEvery = 85 * 60, kRest = 10 * 60;

/// Some of the helpers, quickest first.
class Team {
public:
    Team(const std::vector<Helper>& helpers, bool (*may)(const Helper&)) {
        for (const Helper& h : helpers)
            if (may(h))
                paces_.push_back(soundPace(h.pace));
        // Where nobody is able somebody does it all the same.
        if (paces_.empty())
            paces_.push_back(1);
        std::ranges::sort(paces_, std::greater<>{});
    }

    /// Work shared by as many of them as there is room for, over when the slowest is through.
    double shared(double seconds, std::size_t room) const {
        const std::size_t n = std::min(room, paces_.size());
        const double all =
            std::accumulate(paces_.begin(), paces_.begin() + static_cast<std::ptrdiff_t>(n), 0.0);
        return seconds / all * kSlowest[std::min(n, kSlowest.size()) - 1];
    }
    double byAll(double seconds) const {
        return seconds / std::accumulate(paces_.begin(), paces_.end(), 0.0);
    }
    double byQuickest(double seconds) const { return seconds / paces_.front(); }
    /// By two, at the pace of the slower, or by one.
    double byTwo(double seconds) const {
        const double one = byQuickest(seconds) * kLayAlone;
        return alone() ? one : std::min(one, seconds / paces_[1]);
    }
    bool alone() const { return paces_.size() < 2; }

private:
    std::vector<double> paces_;
};

/// How many can stand side by side at the open sides.
std::size_t standingRoom(const PassChoice& choice) {
    std::size_t places = 0;
    for (const Side s : openSides(choice.lie))
        places += placesAlong(isAcross(s) ? choice.lie.x.size : choice.lie.y.size);
    return std::max<std::size_t>(places, 1);
}

} // namespace

int liftersFor(const PassRequest& request) {
    const Size& backing = request.layers.backing;
    const int byWeight = peopleToSlide(quiltKilograms(request.job, backing));
    const int byWidth = std::max(backing.width, backing.length) > kArmSpan ? 2 : 1;
    return std::max(byWeight, byWidth);
}

StepCost costWith(const PassRequest& request, const PassChoice& choice) {
    double each = 0;
    for (const WayStep& step : wayOf(request.job).steps)
        each += step.ofZones() ? step.seconds : 0;
    return
        [each, board = choice.board, lie = choice.lie,
         share = ReachedShare{request.setting.helpers, choice.lie, choice.quiltLengthAlongLength}](
            const Cells& cells, const Step& step, const std::optional<Point>& before) {
            return each * share.points(*board, lie, cells, step) / share.paces() +
                   costOfMoving(step, before);
        };
}

Seconds predictedTime(const PassRequest& request, const PassChoice& choice,
                      std::span<const Pass> passes) {
    const std::vector<Helper>& helpers = request.setting.helpers;
    const Way& way = wayOf(request.job);
    const Team all{helpers, [](const Helper&) { return true; }};
    const Team lifters{helpers, [](const Helper& h) { return h.lifts && !h.seated; }};
    const Team pinners{helpers, [](const Helper& h) { return h.pins; }};
    const std::size_t room = standingRoom(choice);
    double points = 0, seconds = all.byQuickest(kSetUp + kHandOver);
    const auto calls = [&](double each, std::size_t people) {
        seconds += pinners.shared(points * each, people) +
                   kStepUpToZone * double(choice.sequence.steps.size());
    };
    const ReachedShare share{helpers, choice.lie, choice.quiltLengthAlongLength};
    for (const Step& step : choice.sequence.steps)
        points += share.points(*choice.board, choice.lie, choice.sequence.cells, step);
    for (const WayStep& step : way.steps)
        if (step.ofZones())
            calls(step.seconds,
                  step.by == WayStep::By::irons
                      ? static_cast<std::size_t>(std::max(1, request.setting.room.irons))
                      : room);
    seconds += all.byAll(kOpenPin * double(choice.board->points.size()));
    for (const Pass& p : passes) {
        if (p.number > 1)
            seconds +=
                lifters.byTwo(kShift + kShiftInch * std::hypot(p.shift.dx.in(), p.shift.dy.in()));
        const double laid = squareFeet(areaSquareInches(p.fresh));
        if (!p.pulled)
            seconds += lifters.byTwo((p.number == 1 ? kLayFirst : kLayLater) + kLaySqFt * laid);
        // Rolling takes as long as holding would.
        int rounds = 0;
        for (const Hold& h : p.holds)
            rounds += h.kind == Hold::Kind::clamp ? 2 * h.count : h.count;
        for (const Roll& r : p.rolls)
            rounds += 2 * static_cast<int>(ceilDiv(r.along, kRollEvery));
        seconds += pinners.shared(rounds * kHold, room) * (pinners.alone() ? kHoldAlone : 1) +
                   all.byQuickest(kUnderside);
        double rest = 0;
        for (const WayStep& step : way.steps) {
            const double takes = step.seconds + step.secondsASquareFoot * laid;
            rest += step.by == WayStep::By::fold     ? lifters.byTwo(takes)
                    : step.by == WayStep::By::palm   ? all.byQuickest(takes)
                    : step.by == WayStep::By::nobody ? takes
                                                     : 0;
        }
        seconds += rest;
    }
    if (seconds > kRestsBeyond)
        seconds += kRest * std::floor(seconds / kRestEvery);
    return Seconds{static_cast<std::int64_t>(std::ceil(seconds))};
}

} // namespace bastewright
