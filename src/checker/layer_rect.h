#pragma once

#include "plan/plan.h"

namespace bastewright::check {

/// A layer as it lies under or on the top: centred on it.
inline Rect layerRect(const Rect& top, Size layer) {
    const Length x = (layer.width - top.width()) / 2, y = (layer.length - top.length()) / 2;
    return {top.x0 - x, top.y0 - y, top.x1 + x, top.y1 + y};
}

/// How far an area reaches beyond a side of the table; negative where it ends on the table.
inline Length overhang(const Rect& area, const Rect& table, Side side) {
    switch (side) {
    case Side::head:
        return table.y0 - area.y0;
    case Side::foot:
        return area.y1 - table.y1;
    case Side::left:
        return table.x0 - area.x0;
    case Side::right:
        return area.x1 - table.x1;
    }
    return {};
}

} // namespace bastewright::check
