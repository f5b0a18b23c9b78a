#include "planners/points/row_rounds.h"

#include <algorithm>
#include <array>

namespace bastewright::points {
namespace {

// By trials on tops with seams every 3 and 4 in, in sashing and in triangles.
struct Round {
    int share; ///< times the shifts
    double heat;
    std::size_t kept;
};
constexpr std::array kRounds{Round{1, 1, 3}, Round{6, 3, 1}, Round{12, 3, 0}};
constexpr int kLooseShare = 3;
constexpr double kLooseHeat = 2;
/// Of a bare corner, to tell what promises most; and what still may become the best.
constexpr double kPromiseWorth = 0.4, kHopeWorth = 0.15;
constexpr double kSlackWorth = 1.01; ///< so much more a layout may take for a slack that is told
constexpr int kToldSlack = 4, kMostSlack = 16; ///< sixty-fourths of an inch; see `rowsDetails`

} // namespace

RowRounds::RowRounds(const Rules& rules, ClearPlaces& places, std::stop_token stop)
    : rules_{rules}
    , places_{places}
    , stop_{std::move(stop)} {}

RowStart RowRounds::best(std::vector<RowStart> starts, int shifts) {
    RowStart best = starts.front();
    std::vector<RowStart> complete;
    for (const auto& [share, heat, kept] : kRounds) {
        for (RowStart& s : starts) {
            polish(s, {shifts * share, heat});
            if (s.cost(kCornerWorth) < best.cost(kCornerWorth))
                best = s;
            if (s.bare == 0)
                complete.push_back(s);
        }
        // What is complete takes no fewer any more, and what leaves much bare hardly will.
        std::erase_if(starts, [&](const RowStart& s) {
            return s.bare == 0 || s.cost(kHopeWorth) >= best.cost(kCornerWorth);
        });
        sortByCost(starts, kPromiseWorth);
        starts.resize(std::min(starts.size(), kept));
    }
    return loosest(std::move(best), std::move(complete), {shifts * kLooseShare, kLooseHeat});
}

void RowRounds::polish(RowStart& start, RowPolish::Effort effort) {
    if (start.bare == 0)
        return;
    RowPolish polish{rules_, *start.frame, places_};
    Dice dice{2};
    start.bare = polish.polish(start.choice, effort, dice, stop_);
    start.pins = double(polish.fit().pins());
}

RowStart RowRounds::loosest(RowStart best, std::vector<RowStart> complete,
                            RowPolish::Effort effort) {
    const double cost = best.cost(kCornerWorth), fewest = best.bare == 0 ? best.pins : 0;
    int slack = loosen(best, effort);
    sortByCost(complete, 0);
    for (RowStart& s : complete) {
        if (slack >= kToldSlack || s.pins > kSlackWorth * cost)
            break;
        if (s.pins == fewest)
            continue; // the best itself, or another as good
        const int own = loosen(s, effort);
        if (own > slack && (own >= kToldSlack || s.pins <= cost + 1)) {
            slack = own;
            best = std::move(s);
        }
    }
    return best;
}

/// More room for hands with the same number of points, by steps of 1/64 in; how many were gained.
int RowRounds::loosen(RowStart& start, RowPolish::Effort effort) {
    int gained = 0;
    while (start.bare == 0 && gained < kMostSlack && !stop_.stop_requested()) {
        Rules stricter = rules_;
        stricter.radius -= (gained + 1) / 64.0;
        RowPolish polish{stricter, *start.frame, places_};
        Dice dice{3};
        RowChoice next = start.choice;
        if (polish.polish(next, effort, dice, stop_) > 0 ||
            double(polish.fit().pins()) != start.pins)
            break;
        start.choice = std::move(next);
        ++gained;
    }
    return gained;
}

} // namespace bastewright::points
