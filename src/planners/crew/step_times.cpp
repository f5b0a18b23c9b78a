#include "planners/crew/step_times.h"

#include "plan/trade_times.h"
#include "planners/crew/slowest.h"
#include "planners/surface/helper_order.h"
#include "planners/surface/reachable.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace bastewright::crew {

using namespace trade_times;

namespace {

double squareFeet(const Region& r) {
    return areaSquareInches(r) / 144;
}

/// Whole holds dealt out, each to whoever would be through with it first.
std::vector<double> dealt(int holds, std::span<const double> paces) {
    std::vector<double> out(paces.size());
    for (; holds > 0; --holds) {
        std::size_t best = 0;
        for (std::size_t k = 1; k < out.size(); ++k)
            if ((out[k] + 1) / soundPace(paces[k]) <
                (out[best] + 1) / soundPace(paces[best]) - 1e-12)
                best = k;
        out[best] += 1;
    }
    return out;
}

} // namespace

int wholeSeconds(double seconds) {
    // A hair is taken off so that 10 pins at 5 s are 50 s however the product was rounded.
    return static_cast<int>(std::ceil(seconds - 1e-9));
}

double together(double seconds, std::span<const double> paces) {
    return paces.empty() ? seconds : seconds / soundPace(*std::ranges::min_element(paces));
}

double setUpSeconds(std::span<const double> paces, std::size_t points, bool firstOnTheTable) {
    const double all = std::accumulate(paces.begin(), paces.end(), 0.0);
    const double most = paces.empty() ? 1 : *std::ranges::max_element(paces);
    return (firstOnTheTable ? kSetUp : kSetUpNext) / soundPace(most) +
           kOpenPin * double(points) / soundPace(all);
}

double laySeconds(const Pass& pass, bool first, std::span<const double> paces) {
    const double all = (first ? kLayFirst : kLayLater) + kLaySqFt * squareFeet(pass.fresh);
    return together(all / 3, paces) * (paces.size() < 2 ? kLayAlone : 1);
}

double HoldSeconds::operator()(std::span<const double> paces, std::size_t& hands) {
    double best = 0;
    hands = 0;
    for (std::size_t n = 1; n <= paces.size(); ++n) {
        const auto who = paces.first(n);
        const auto [at, isNew] = known_.try_emplace({who.begin(), who.end()}, 0);
        if (isNew) {
            std::vector<double> times = dealt(holds_, who);
            for (std::size_t k = 0; k < n; ++k)
                times[k] *= kHold * (n < 2 ? kHoldAlone : 1) / soundPace(who[k]);
            at->second = middleOfSlowest(times, spreadOfWork());
        }
        if (n == 1 || at->second < best) {
            best = at->second;
            hands = n;
        }
    }
    return best;
}

double holdSeconds(int holds, std::span<const double> paces, std::size_t& hands) {
    return HoldSeconds{holds}(paces, hands);
}

double shiftSeconds(const Pass& into, std::span<const double> paces) {
    return together(kShift + kShiftInch * std::hypot(into.shift.dx.in(), into.shift.dy.in()),
                    paces) *
           (paces.size() < 2 ? kLayAlone : 1);
}

double stepSeconds(const WayStep& step, const Pass& pass, std::span<const double> paces) {
    const double all = step.seconds + step.secondsASquareFoot * squareFeet(pass.fresh);
    return together(all, paces) *
           (step.by == WayStep::By::fold && paces.size() < 2 ? kLayAlone : 1);
}

double turnSeconds(const QuiltPlan& quilt, std::span<const double> paces) {
    double sum = together(kTurnOver, paces) * (paces.size() < 2 ? kLayAlone : 1);
    for (std::size_t k = 1; k < quilt.passes.size(); ++k)
        sum += shiftSeconds(quilt.passes[k], paces);
    return sum;
}

double secondsAPoint(TaskKind kind) {
    return zoneStep(kind).seconds;
}

double leastSteppingUp(TaskKind kind) {
    return kStepUpToZone / (wayWith(kind).mostInZone * secondsAPoint(kind));
}

double zoneSeconds(TaskKind kind, int points, int leaning, double pace) {
    return secondsAPoint(kind) * (points + (kLeaningFactor - 1) * leaning) / soundPace(pace) +
           kStepUpToZone;
}

int holdsOf(const Pass& pass) {
    int out = 0;
    for (const Hold& h : pass.holds)
        out += h.count;
    if (out == 0)
        return 0;
    for (const Roll& r : pass.rolls)
        out += 2 * static_cast<int>(ceilDiv(r.along, kRollEvery));
    return out;
}

int clampsOf(const Pass& pass) {
    int out = 0;
    for (const Hold& h : pass.holds)
        out += h.kind == Hold::Kind::clamp ? h.count : 0;
    return out;
}

} // namespace bastewright::crew
