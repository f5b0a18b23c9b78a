#include "ways/supplies.h"

#include <algorithm>
#include <cmath>

namespace bastewright {

std::int64_t withSpare(std::int64_t count) {
    return count + (count + 9) / 10;
}

void addSupply(std::vector<Supply>& to, Supply::Kind kind, Sentence item, double need, double have,
               Sentence unit, std::optional<Length> size) {
    if (need <= 0)
        return;
    // Cloth is counted in thousandths: the difference is again one.
    const double buy = std::round(std::max(0.0, need - have) * 1000) / 1000;
    to.push_back({kind, std::move(item), need, have, buy, std::move(unit), {}, size});
}

Length clothUnit(Unit unit) {
    return unit == Unit::inch ? Length::inches(36) : Length::millimetres(1000);
}

std::string clothSymbol(Unit unit) {
    return unit == Unit::inch ? "yd" : "m";
}

std::int64_t pointsOf(const QuiltPlan& quilt) {
    std::int64_t count = 0;
    for (const Zone& zone : quilt.zones)
        count += std::ssize(zone.points);
    return count;
}

std::int64_t pointsOf(std::span<const BastedQuilt> quilts) {
    std::int64_t count = 0;
    for (const BastedQuilt& q : quilts)
        count += q.points;
    return count;
}

} // namespace bastewright
