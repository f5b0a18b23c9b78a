#include "planners/points/clear_places.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace bastewright::points {
namespace {

// Shares of the spacing: how far a pin may be moved to clear a seam, and how far where none is
// cleared but the edge is kept.
constexpr double kReach = 0.6, kNear = 0.25;

constexpr double kNotAsked = -3; ///< less than any room

} // namespace

ClearPlaces::ClearPlaces(const Rules& rules)
    : rules_{rules}
    , fine_{rules.fine}
    , columns_{int(std::floor(rules.top().width() / fine_ + 1e-9)) + 1}
    , rows_{int(std::floor(rules.top().length() / fine_ + 1e-9)) + 1}
    , reach_{int(kReach * rules.spacing / fine_)}
    , near_{int(kNear * rules.spacing / fine_)}
    , clear_(std::size_t(columns_) * std::size_t(rows_), std::int8_t{-1})
    , nearest_(clear_.size(), -1) {
    for (int i = -reach_; i <= reach_; ++i)
        for (int j = -reach_; j <= reach_; ++j)
            if (i * i + j * j <= reach_ * reach_)
                rings_.emplace_back(i, j);
    std::ranges::sort(rings_, {}, [](const auto& o) {
        return std::tuple{o.first * o.first + o.second * o.second, o.first, o.second};
    });
}

bool ClearPlaces::clear(int column, int row) {
    auto& known = clear_[std::size_t(row) * std::size_t(columns_) + std::size_t(column)];
    if (known < 0)
        known = rules_.pin.angleAt({column * fine_, row * fine_}) ? 1 : 0;
    return known == 1;
}

int ClearPlaces::search(int column, int row) {
    for (const auto& [i, j] : rings_) {
        const int c = column + i, r = row + j;
        if (c >= 0 && r >= 0 && c < columns_ && r < rows_ && clear(c, r))
            return r * columns_ + c;
    }
    return -2 - roomiest(column, row);
}

double ClearPlaces::roomAt(int column, int row) {
    if (room_.empty())
        room_.assign(clear_.size(), kNotAsked);
    double& known = room_[std::size_t(row) * std::size_t(columns_) + std::size_t(column)];
    if (known == kNotAsked)
        known = rules_.pin.mostRoom({column * fine_, row * fine_}).room;
    return known;
}

int ClearPlaces::roomiest(int column, int row) {
    int best = row * columns_ + column;
    double most = -2;
    for (const auto& [i, j] : rings_) {
        if (i * i + j * j > near_ * near_ && most >= 0)
            break;
        const int c = column + i, r = row + j;
        if (c < 0 || r < 0 || c >= columns_ || r >= rows_)
            continue;
        if (const double room = roomAt(c, r); room > most + 1e-6) {
            most = room;
            best = r * columns_ + c;
        }
    }
    return best;
}

ClearPlaces::Found ClearPlaces::nearest(int column, int row) {
    auto& known = nearest_[std::size_t(row) * std::size_t(columns_) + std::size_t(column)];
    if (known == -1)
        known = search(column, row);
    return known >= 0 ? Found{placeOf(known), true} : Found{placeOf(-2 - known), false};
}

} // namespace bastewright::points
