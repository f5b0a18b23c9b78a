#include "planners/crew/times.h"

#include "plan/trade_times.h"

#include <cmath>

namespace bastewright::crew {

using namespace trade_times;

namespace {
constexpr double kSquareInchesPerSqFt = 144;

double squareFeet(const Rect& r) {
    return areaSquareInches(r) / kSquareInchesPerSqFt;
}
} // namespace

int secondsAt(Effort effort, double pace) {
    // A hair is taken off so that 10 pins at 5 s are 50 s however the product was rounded.
    const double hands = effort.byHand / (pace > 0 ? pace : 1.0);
    return static_cast<int>(std::ceil(hands - 1e-9)) + effort.fixed;
}

Effort layLayer(const Pass& pass) {
    return {.byHand = kLayLayer + kLayLayerSqFt * squareFeet(pass.field)};
}

Effort fold(const Pass& pass) {
    return {.byHand = kFold + kFoldSqFt * squareFeet(pass.field)};
}

Effort smooth(double squareInches) {
    return {.byHand = kSmooth + kSmoothSqFt * squareInches / kSquareInchesPerSqFt};
}

int clampsOf(const Pass& pass) {
    int clamps = 0;
    for (const Hold& h : pass.holds)
        if (h.kind == Hold::Kind::clamp)
            clamps += h.count;
    return clamps;
}

Effort reclamp(const Pass& pass) {
    return {.byHand = kClamp * clampsOf(pass)};
}

Effort shift(const Pass& into) {
    return {.byHand = kShift + kShiftInch * std::hypot(into.shift.dx.in(), into.shift.dy.in())};
}

Effort zoneWork(TaskKind kind, int points) {
    const double each = kind == TaskKind::placeOpen   ? kPlacePin
                        : kind == TaskKind::closePins ? kClosePin
                        : kind == TaskKind::press     ? kPressDot
                                                      : kLayDot;
    return {.byHand = each * points, .fixed = kSettle};
}

} // namespace bastewright::crew
