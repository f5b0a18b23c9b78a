#pragma once

#include "planners/points/spot.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace bastewright::points {

/// Numbered places sorted into square cells, so that those near a place are
/// found without looking at all. Places outside the field are kept in the
/// outermost cells.
class Buckets {
public:
    Buckets(const Field& field, double cell)
        : field_{field}
        , cell_{cell} {
        columns_ = std::max(1, static_cast<int>(std::ceil(field.width() / cell)));
        rows_ = std::max(1, static_cast<int>(std::ceil(field.length() / cell)));
        cells_.resize(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_));
    }

    void add(int id, Spot at) { cells_[cellOf(at)].push_back({at, id}); }
    void remove(int id, Spot at) {
        auto& cell = cells_[cellOf(at)];
        const auto it = std::find_if(cell.begin(), cell.end(),
                                     [&](const Entry& e) { return e.id == id && e.at == at; });
        if (it == cell.end())
            return;
        *it = cell.back();
        cell.pop_back();
    }

    /// Calls f(id, place) for everything within `radius` of `at`; stops where f
    /// returns true and then returns true itself.
    template <class F>
    bool anyNear(Spot at, double radius, F&& f) const {
        const double r2 = radius * radius;
        for (int row = rowOf(at.y - radius); row <= rowOf(at.y + radius); ++row)
            for (int column = columnOf(at.x - radius); column <= columnOf(at.x + radius); ++column)
                for (const Entry& e : cells_[index(column, row)])
                    if (distanceSquared(e.at, at) <= r2 && f(e.id, e.at))
                        return true;
        return false;
    }

    template <class F>
    void eachNear(Spot at, double radius, F&& f) const {
        anyNear(at, radius, [&](int id, Spot p) { return f(id, p), false; });
    }

    /// Calls f(id, place) for everything inside the field.
    template <class F>
    void eachIn(const Field& f, F&& visit) const {
        for (int row = rowOf(f.y0); row <= rowOf(f.y1); ++row)
            for (int column = columnOf(f.x0); column <= columnOf(f.x1); ++column)
                for (const Entry& e : cells_[index(column, row)])
                    if (f.contains(e.at))
                        visit(e.id, e.at);
    }

private:
    struct Entry {
        Spot at;
        int id;
    };
    int columnOf(double x) const {
        return std::clamp(static_cast<int>(std::floor((x - field_.x0) / cell_)), 0, columns_ - 1);
    }
    int rowOf(double y) const {
        return std::clamp(static_cast<int>(std::floor((y - field_.y0) / cell_)), 0, rows_ - 1);
    }
    std::size_t index(int column, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
               static_cast<std::size_t>(column);
    }
    std::size_t cellOf(Spot p) const { return index(columnOf(p.x), rowOf(p.y)); }

    Field field_;
    double cell_;
    int columns_ = 1, rows_ = 1;
    std::vector<std::vector<Entry>> cells_;
};

} // namespace bastewright::points
