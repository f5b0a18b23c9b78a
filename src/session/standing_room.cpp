#include "session/private/standing_room.h"

#include "planners/passes/reach.h"

#include <algorithm>
#include <array>

namespace bastewright {

bool inTheWay(const StandingPlace& a, const StandingPlace& b) {
    return a.side == b.side && a.along.overlaps(b.along);
}

std::vector<StandingPlace> roundTheTable(const Pass& pass, const SurfacePlan& surface,
                                         std::size_t people, std::span<const StandingPlace> taken) {
    // Round the table the way a clock goes, each side as full of places as it holds.
    constexpr std::array kRound{Side::head, Side::right, Side::foot, Side::left};
    std::vector<StandingPlace> all, clear;
    for (const Side side : kRound) {
        if (std::ranges::find(surface.closed, side) != surface.closed.end())
            continue;
        const Interval edge = extent(pass.table, side);
        const Length room = elbowRoom(pass.table, side);
        const auto fit =
            std::max<std::int64_t>(1, edge.size().nm() / std::max<std::int64_t>(1, room.nm()));
        const Length pitch = fit > 1 ? (edge.size() - room) / (fit - 1) : Length{};
        for (std::int64_t k = 0; k < fit; ++k) {
            // Against the axis on the way back.
            const auto step = side == Side::foot || side == Side::left ? fit - 1 - k : k;
            const Length lo = edge.lo + step * pitch;
            all.push_back({side, {lo, lo + room}});
        }
    }
    std::ranges::copy_if(all, std::back_inserter(clear), [&](const StandingPlace& place) {
        return std::ranges::none_of(taken,
                                    [&](const StandingPlace& t) { return inTheWay(t, place); });
    });
    const auto& from = clear.size() >= people ? clear : all;
    std::vector<StandingPlace> out;
    for (std::size_t k = 0; k < people && !from.empty(); ++k)
        out.push_back(from[(2 * k + 1) * from.size() / (2 * people) % from.size()]);
    return out;
}

} // namespace bastewright
