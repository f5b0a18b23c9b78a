#pragma once

#include "planners/points/pin_rule.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace bastewright::points {

/// The part of a line inside a field (Liang and Barsky, ACM Transactions on
/// Graphics 3, 1984); none where nothing or a single place is inside.
inline std::optional<Line> clipped(const Line& l, const Field& f) {
    double t0 = 0, t1 = 1;
    const Spot d = l.to - l.from;
    const std::pair<double, double> bounds[] = {{-d.x, l.from.x - f.x0},
                                                {d.x, f.x1 - l.from.x},
                                                {-d.y, l.from.y - f.y0},
                                                {d.y, f.y1 - l.from.y}};
    for (const auto& [p, q] : bounds) {
        if (p == 0 && q < 0)
            return {};
        if (p < 0)
            t0 = std::max(t0, q / p);
        else if (p > 0)
            t1 = std::min(t1, q / p);
    }
    if (t1 - t0 < 1e-9)
        return {};
    return Line{{l.from.x + t0 * d.x, l.from.y + t0 * d.y},
                {l.from.x + t1 * d.x, l.from.y + t1 * d.y}};
}

} // namespace bastewright::points
