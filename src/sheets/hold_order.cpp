#include "sheets/hold_order.h"

#include <algorithm>

namespace bastewright::sheets {

std::vector<HoldPoint> holdOrder(const Pass& pass) {
    std::size_t rounds = 0;
    for (const auto& h : pass.holds)
        rounds = std::max(rounds, h.positions.size());
    std::vector<HoldPoint> out;
    for (std::size_t round = 0; round < rounds; ++round)
        for (const auto& h : pass.holds)
            if (round < h.positions.size())
                out.push_back({int(out.size()) + 1, h.side, h.kind, h.positions[round]});
    return out;
}

} // namespace bastewright::sheets
