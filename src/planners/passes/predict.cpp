#include "planners/passes/predict.h"

#include "plan/trade_times.h"
#include "planners/passes/holds.h"
#include "planners/passes/reach.h"
#include "planners/rolls/lifting.h"
#include "planners/surface/reachable.h"

#include <cmath>

namespace bastewright {
namespace {

using namespace trade_times;

constexpr Length kArmSpan = Length::inches(60);
constexpr Length kRollEvery = Length::inches(12);

double squareFeet(double squareInches) {
    return squareInches / 144.0;
}

bool isOpen(const PassChoice& choice, Side side) {
    return std::ranges::find(choice.lie.closed, side) == choice.lie.closed.end();
}

double teamPace(const std::vector<Helper>& helpers, int places) {
    if (helpers.empty())
        return 1;
    std::vector<double> paces;
    for (const Helper& h : helpers)
        paces.push_back(h.pace);
    std::ranges::sort(paces, std::greater<>{});
    double sum = 0;
    for (std::size_t i = 0; i < paces.size() && i < static_cast<std::size_t>(places); ++i)
        sum += paces[i];
    return sum;
}

/// How many can stand side by side at the open sides.
int standingRoom(const PassChoice& choice) {
    int places = 0;
    for (const Side s : kSides)
        if (isOpen(choice, s)) {
            const Length side = isAcross(s) ? choice.lie.x.size : choice.lie.y.size;
            places += std::max(1, static_cast<int>(ratio(side, kElbowRoom)));
        }
    return std::max(places, 1);
}

/// The points of a pass, each counted half as much again where everybody has to lean for it.
double pointsToWork(const PassRequest& request, const PassChoice& choice, const Step& step) {
    if (choice.surface.floor)
        return step.points;
    Length comfortable;
    for (const Helper& h : request.setting.helpers)
        comfortable = std::max(comfortable, h.reach);
    if (request.setting.helpers.empty())
        comfortable = Helper{}.reach;
    const Rect table{step.at.x, step.at.y, step.at.x + choice.lie.x.size,
                     step.at.y + choice.lie.y.size};
    const Rect deep = outOfReach(table, choice.lie.closed, comfortable);
    if (deep.empty())
        return step.points;
    const Region fresh = regionOf(*choice.board, choice.sequence.cells, step.fresh);
    int leaning = 0;
    for (const Point& p : choice.board->points)
        leaning += deep.contains(p) && fresh.contains(p) ? 1 : 0;
    return step.points + (kLeaningFactor - 1) * leaning;
}

} // namespace

int liftersFor(const PassRequest& request) {
    const Size& backing = request.layers.backing;
    const int byWeight = peopleToSlide(quiltKilograms(request.job, backing));
    const int byWidth = std::max(backing.width, backing.length) > kArmSpan ? 2 : 1;
    return std::max(byWeight, byWidth);
}

Seconds predictedTime(const PassRequest& request, const PassChoice& choice) {
    const bool dots = request.job.basting.with == Basting::With::dots;
    const double perPoint = dots ? 2 * kLayDot + kPressDot : kPlacePin + kClosePin;
    const double hands = teamPace(request.setting.helpers, standingRoom(choice));
    double points = 0;
    for (const Step& step : choice.sequence.steps)
        points += pointsToWork(request, choice, step);
    double seconds = kSetUp + kHandOver + points * (perPoint + kOpenPin) / hands;
    for (const Pass& p : detailedPasses(request, choice)) {
        if (p.number > 1)
            seconds += kShift + kShiftInch * (abs(p.shift.dx) + abs(p.shift.dy)).in();
        seconds += (p.number == 1 ? kLayFirst : kLayLater) +
                   kLaySqFt * squareFeet(areaSquareInches(p.field));
        // Rolling cloth up against a wall takes as long as holding it would.
        int rounds = 0;
        for (const Hold& h : p.holds)
            rounds += h.kind == Hold::Kind::clamp ? 2 * h.count : h.count;
        for (const Roll& r : p.rolls)
            rounds += 2 * static_cast<int>(ceilDiv(r.along, kRollEvery));
        seconds += rounds * kHold / hands + kUnderside + kHandsOff;
    }
    return Seconds{static_cast<std::int64_t>(std::ceil(seconds))};
}

} // namespace bastewright
