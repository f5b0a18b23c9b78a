#include "sheets/hold_order.h"

#include <algorithm>

namespace bastewright::sheets {

std::vector<HoldPoint> holdOrder(const Pass& pass) {
    std::vector<HoldPoint> out;
    for (const auto& h : pass.holds)
        for (std::size_t k = 0; k < h.positions.size() && k < h.numbers.size(); ++k)
            out.push_back({h.numbers[k], h.side, h.kind, h.positions[k]});
    std::ranges::stable_sort(out, {}, &HoldPoint::number);
    return out;
}

} // namespace bastewright::sheets
