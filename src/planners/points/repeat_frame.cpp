#include "planners/points/repeat_frame.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {

AxisKinds::AxisKinds(double topLo, double topHi, double firstAt, double lastAt, double tileSize,
                     int count)
    : first{firstAt}
    , end{lastAt}
    , tile{tileSize}
    , tiles{count} {
    if (tiles == 1) {
        kinds.push_back({topLo, topHi, 0, 1, false});
        return;
    }
    kinds.push_back({topLo, first + tile, 0, 1, false});
    if (tiles > 2)
        kinds.push_back({first + tile, first + 2 * tile, 1, tiles - 2, true});
    kinds.push_back({first + (tiles - 1) * tile, topHi, tiles - 1, 1, false});
}

bool AxisKinds::symmetric() const {
    return std::abs(kinds.back().hi - (first + tiles * tile) - (first - kinds.front().lo)) < 1e-7;
}

std::vector<AxisKinds::Copy> AxisKinds::copies(int kind, double reach) const {
    const Kind& k = kinds[static_cast<std::size_t>(kind)];
    const int n = static_cast<int>(std::ceil(reach / tile)) + (k.periodic ? 0 : 1);
    std::vector<Copy> out;
    for (int t = k.tile - n; t <= k.tile + n; ++t)
        if (k.periodic)
            out.push_back({t * tile, kind});
        else if (t >= 0 && t < tiles)
            out.push_back({t * tile, kindOf(t)});
    return out;
}

RepeatFrame::RepeatFrame(const Field& top, const BlockFrame& b, int tileAcross, int tileDown)
    : blocks{b}
    , across{tileAcross}
    , down{tileDown}
    , x{top.x0, top.x1, b.first.x, b.lastX(), across * b.pitchX, (b.columns + across - 1) / across}
    , y{top.y0, top.y1, b.first.y, b.lastY(), down * b.pitchY, (b.rows + down - 1) / down} {}

Field RepeatFrame::field(int place) const {
    const auto& kx = x.kinds[static_cast<std::size_t>(xKind(place))];
    const auto& ky = y.kinds[static_cast<std::size_t>(yKind(place))];
    return {kx.lo, ky.lo, kx.hi, ky.hi};
}

int RepeatFrame::inside() const {
    for (int place = 0; place < count(); ++place)
        if (periodicX(place) && periodicY(place))
            return place;
    return -1;
}

} // namespace bastewright::points
