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
    taken_[ix(room.strip)].push_back({start, end, room.place});
}

Standing::Room Standing::find(const Mode& mode, int start, int end) const {
    Room best;
    std::int64_t bestAway = 0;
    for (int s = mode.firstSpot; s < mode.endSpot; ++s) {
        const Spot& spot = problem_.spots[ix(s)];
        const Strip& strip = problem_.strips[ix(spot.strip)];
        const auto& others = taken_[ix(spot.strip)];
        const auto clash = [&](std::int64_t place) -> const Stand* {
            for (const Stand& o : others)
                if (o.start < end && start < o.end && place < o.place + strip.room &&
                    o.place < place + strip.room)
                    return &o;
            return nullptr;
        };
        const auto offer = [&](std::int64_t place) {
            if (place < spot.lo || place > spot.hi)
                return;
            const std::int64_t away = std::abs(place - spot.want);
            if (best.strip >= 0 && away >= bestAway)
                return;
            if (const Stand* o = clash(place)) {
                best.retry = std::min(best.retry, o->end);
                return;
            }
            best.strip = spot.strip;
            best.place = place;
            bestAway = away;
        };
        offer(spot.want);
        if (best.strip >= 0)
            return best;
        // Shoulder to shoulder with those who stand there, or as far aside as one can.
        offer(spot.lo);
        offer(spot.hi);
        for (const Stand& o : others)
            if (o.start < end && start < o.end) {
                offer(o.place - strip.room);
                offer(o.place + strip.room);
            }
        if (best.strip >= 0)
            return best;
    }
    return best;
}

} // namespace bastewright::crew
