#pragma once

#include "planners/points/rules.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {

/// Where on a top a point may lie, on a raster, and from everywhere else how far the nearest such
/// place is.
class PlaceMap {
public:
    explicit PlaceMap(const Rules& rules);

    double pitch() const { return pitch_; }
    /// Distance from the raster place nearest to `at` to the nearest place where a point obeys the
    /// rule, counted up to `reach()`.
    double away(Spot at) const { return away_[index(column(at.x), row(at.y))]; }
    double reach() const { return reach_; }
    /// A place beyond the room that the edge leaves, moved to its rim.
    Spot inside(Spot at) const {
        return {std::clamp(at.x, room_.x0, room_.x1), std::clamp(at.y, room_.y0, room_.y1)};
    }

    /// Calls visit(place) for every raster place within `radius` of `at` where a point may lie.
    template <class F>
    void eachNear(Spot at, double radius, F&& visit) const {
        const auto from = [&](double v, double o) {
            return static_cast<int>(std::ceil((v - o) / pitch_ - 1e-9));
        };
        for (int j = std::max(0, from(at.y - radius, first_.y));
             j < rows_ && first_.y + j * pitch_ <= at.y + radius; ++j)
            for (int i = std::max(0, from(at.x - radius, first_.x));
                 i < columns_ && first_.x + i * pitch_ <= at.x + radius; ++i) {
                if (away_[index(i, j)] > 0)
                    continue;
                const Spot p = placeAt(i, j);
                if (distanceSquared(p, at) <= radius * radius)
                    visit(p);
            }
    }

    /// The same for the places of a coarser raster inside a field; `raster` is a multiple of the
    /// pitch.
    template <class F>
    void eachIn(const Field& field, double raster, F&& visit) const {
        const int every = std::max(1, static_cast<int>(std::lround(raster / pitch_)));
        const auto skip = [&](int first) { return ((-first) % every + every) % every; };
        for (int j = skip(firstRow_); j < rows_; j += every)
            for (int i = skip(firstColumn_); i < columns_; i += every)
                if (away_[index(i, j)] <= 0 && field.contains(placeAt(i, j), 1e-9))
                    visit(placeAt(i, j));
    }

private:
    int column(double x) const { return nearest((x - first_.x) / pitch_, columns_); }
    int row(double y) const { return nearest((y - first_.y) / pitch_, rows_); }
    /// Asked for every place of every search, so without a library's rounding; below 0 it is 0.
    static int nearest(double place, int count) {
        // NOLINTNEXTLINE(bugprone-incorrect-roundings)
        return std::clamp(static_cast<int>(place + 0.5), 0, count - 1);
    }
    std::size_t index(int i, int j) const {
        return static_cast<std::size_t>(j) * static_cast<std::size_t>(columns_) +
               static_cast<std::size_t>(i);
    }
    Spot placeAt(int i, int j) const;
    void measure();

    Field room_;
    Spot anchor_, first_;
    double pitch_, reach_;
    int firstColumn_ = 0, firstRow_ = 0; ///< of the raster, counted from the anchor
    int columns_ = 0, rows_ = 0;
    std::vector<float> away_;
};

} // namespace bastewright::points
