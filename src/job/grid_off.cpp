#include "job/grid_off.h"

#include <algorithm>

namespace bastewright {

std::optional<GridOff> gridOff(const Top& top) {
    if (!top.grid)
        return std::nullopt;
    const Rect area = topRect(top);
    const BlockGrid& g = *top.grid;
    return GridOff{{(area.width() - g.blocksWidth()) / 2, g.border},
                   {(area.length() - g.blocksLength()) / 2, g.borderAtEnds()}};
}

void setBordersByMeasure(Top& top) {
    const auto off = gridOff(top);
    if (!off)
        return;
    top.grid->border = std::max(Length{}, off->sides.comesOut);
    const Length ends = std::max(Length{}, off->ends.comesOut);
    top.grid->borderEnds = ends == top.grid->border ? Length{} : ends;
}

} // namespace bastewright
