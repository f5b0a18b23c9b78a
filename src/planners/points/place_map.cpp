#include "planners/points/place_map.h"

namespace bastewright::points {
namespace {

/// Larger tops get a coarser raster.
constexpr double kMostPlaces = 1.2e6;

Field roomOf(const Rules& rules) {
    const Field& t = rules.top();
    const double dx = std::min(rules.pin.edge(), t.width() / 2),
                 dy = std::min(rules.pin.edge(), t.length() / 2);
    return {t.x0 + dx, t.y0 + dy, t.x1 - dx, t.y1 - dy};
}

} // namespace

PlaceMap::PlaceMap(const Rules& rules)
    : room_{roomOf(rules)}
    , anchor_{rules.anchor}
    , pitch_{rules.fine}
    , reach_{rules.spacing / 2} {
    const Field& top = rules.top();
    while (top.area() > kMostPlaces * squared(pitch_) ||
           (2 * pitch_ <= rules.spacing / 22 && 4 * squared(pitch_) <= top.area() / 20000))
        pitch_ *= 2;
    firstColumn_ = static_cast<int>(std::ceil((top.x0 - anchor_.x) / pitch_ - 1e-9));
    firstRow_ = static_cast<int>(std::ceil((top.y0 - anchor_.y) / pitch_ - 1e-9));
    columns_ =
        static_cast<int>(std::floor((top.x1 - anchor_.x) / pitch_ + 1e-9)) - firstColumn_ + 1;
    rows_ = static_cast<int>(std::floor((top.y1 - anchor_.y) / pitch_ + 1e-9)) - firstRow_ + 1;
    columns_ = std::max(columns_, 1);
    rows_ = std::max(rows_, 1);
    first_ = {anchor_.x + firstColumn_ * pitch_, anchor_.y + firstRow_ * pitch_};
    away_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_),
                 static_cast<float>(reach_));
    for (int j = 0; j < rows_; ++j)
        for (int i = 0; i < columns_; ++i)
            if (rules.pin.angleAt(placeAt(i, j)))
                away_[index(i, j)] = 0;
    measure();
}

Spot PlaceMap::placeAt(int i, int j) const {
    return {anchor_.x + (firstColumn_ + i) * pitch_, anchor_.y + (firstRow_ + j) * pitch_};
}

/// Exact distances, first along each row, then over the rows in reach.
void PlaceMap::measure() {
    const int far = static_cast<int>(reach_ / pitch_);
    std::vector<int> along(away_.size(), far + 1);
    for (int j = 0; j < rows_; ++j) {
        const auto sweep = [&](int from, int to, int by) {
            int steps = far + 1;
            for (int i = from; i != to; i += by) {
                steps = away_[index(i, j)] <= 0 ? 0 : std::min(steps + 1, far + 1);
                along[index(i, j)] = std::min(along[index(i, j)], steps);
            }
        };
        sweep(0, columns_, 1);
        sweep(columns_ - 1, -1, -1);
    }
    for (int j = 0; j < rows_; ++j)
        for (int i = 0; i < columns_; ++i) {
            int least = far * far + 1;
            for (int d = 0; d <= far && d * d < least; ++d)
                for (const int k : {j - d, j + d})
                    if (k >= 0 && k < rows_)
                        least = std::min(least, d * d + along[index(i, k)] * along[index(i, k)]);
            away_[index(i, j)] = static_cast<float>(
                std::min(reach_, pitch_ * std::sqrt(static_cast<double>(least))));
        }
}

} // namespace bastewright::points
