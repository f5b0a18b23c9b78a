#include "planners/rolls/rolls.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>
#include <numbers>
#include <tuple>

namespace bastewright {
namespace {

constexpr Length kClothThickness = Length::nanometres(300'000); // from memory
constexpr Length kClipEvery = Length::inches(15);               // common practice: 12-18 in
constexpr int kLeastClips = 2;

} // namespace

Length rollDiameter(Length wound, Length thick, Length core, double packing) {
    assert(packing > 0 && packing <= 1);
    const double area = std::max(wound, Length{}).mm() * std::max(thick, Length{}).mm() / packing;
    return Length::nearestMillimetres(
        std::sqrt(core.mm() * core.mm() + 4.0 * area / std::numbers::pi));
}

Length sandwichThickness(const Batting& batting) {
    return batting.thickness + 2 * kClothThickness;
}

Roll clipped(Roll roll, const Stash& stash) {
    const Length along = std::max(roll.along, Length{});
    roll.clips = std::max(kLeastClips, static_cast<int>(ceilDiv(along, kClipEvery)));
    roll.clipHolds = Length{};
    std::map<Length, int> onHand;
    for (const ClipStock& clips : stash.clips)
        if (clips.holds >= roll.diameter && clips.count > 0)
            onHand[clips.holds] += clips.count;
    // The smallest of which there are enough; else the one of which the fewest are missing.
    const auto rank = [&](const auto& size) {
        return std::tuple{std::max(roll.clips - size.second, 0), size.first};
    };
    const auto best = std::ranges::min_element(onHand, {}, rank);
    if (best != onHand.end())
        roll.clipHolds = best->first;
    return roll;
}

} // namespace bastewright
