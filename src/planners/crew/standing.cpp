#include "planners/crew/standing.h"

#include <algorithm>
#include <cstdlib>

namespace bastewright::crew {
namespace {

std::size_t ix(int i) {
    return static_cast<std::size_t>(i);
}

} // namespace

void Standing::clear() {
    for (auto& list : taken_)
        list.clear();
}

void Standing::take(const Room& room, int start, int end) {
    auto& list = taken_[ix(room.strip)];
    auto at = list.end();
    while (at != list.begin() && std::prev(at)->end > end)
        --at;
    list.insert(at, {start, end, room.place});
}

Standing::Room Standing::find(const Mode& mode, int start, int end) const {
    Room best;
    std::int64_t bestAway = 0;
    std::vector<Stand>& others = others_;
    for (int s = mode.firstSpot; s < mode.endSpot && best.strip < 0; ++s) {
        const Spot& spot = problem_.spots[ix(s)];
        const std::int64_t room = problem_.strips[ix(spot.strip)].room;
        const auto& all = taken_[ix(spot.strip)];
        others.clear();
        for (auto o = all.rbegin(); o != all.rend() && o->end > start; ++o)
            if (o->start < end)
                others.push_back(*o);
        const auto offer = [&](std::int64_t place) {
            if (place < spot.lo || place > spot.hi)
                return;
            const std::int64_t away = std::abs(place - spot.want);
            if (best.strip >= 0 && away >= bestAway)
                return;
            for (const Stand& o : others)
                if (place < o.place + room && o.place < place + room) {
                    best.retry = std::min(best.retry, o.end);
                    return;
                }
            best.strip = spot.strip;
            best.place = place;
            bestAway = away;
        };
        offer(spot.want);
        if (best.strip >= 0)
            break;
        // Shoulder to shoulder with those who stand there, or as far aside as one can.
        offer(spot.lo);
        offer(spot.hi);
        for (const auto& other : others) {
            offer(other.place - room);
            offer(other.place + room);
        }
    }
    return best;
}

} // namespace bastewright::crew
