#include "planners/passes/predict.h"

#include "plan/trade_times.h"
#include "planners/passes/holds.h"
#include "planners/passes/reach.h"
#include "planners/rolls/lifting.h"

#include <cmath>

namespace bastewright {
namespace {

using namespace trade_times;

constexpr Length kArmSpan = Length::inches(60);

double squareFeet(const Rect& r) {
    return areaSquareInches(r) / 144.0;
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
        if (std::ranges::find(choice.workable.closed, s) == choice.workable.closed.end()) {
            const Length side =
                isAcross(s) ? choice.workable.table.width : choice.workable.table.length;
            places += std::max(1, static_cast<int>(ratio(side, kElbowRoom)));
        }
    return std::max(places, 1);
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
    double seconds = kSetUp + kHandOver + double(request.points) * (perPoint + kOpenPin) / hands;
    const FreshArea* before = nullptr;
    for (const std::size_t i : choice.order.areas) {
        const FreshArea& area = choice.layout.areas[i];
        seconds += (before == nullptr ? kLayFirst : kLayLater) + kLaySqFt * squareFeet(area.field);
        if (before != nullptr)
            seconds += kShift + kShiftInch * way(shiftBetween(*before, area)).in();
        int rounds = 0;
        for (const Hold& h :
             holds(request.layers.backing, request.layers.top, area.table, choice.surface.floor))
            rounds += h.kind == Hold::Kind::clamp ? 2 * h.count : h.count;
        seconds += rounds * kHold / hands + kUnderside + kHandsOff;
        before = &area;
    }
    return Seconds{static_cast<std::int64_t>(std::ceil(seconds))};
}

} // namespace bastewright
