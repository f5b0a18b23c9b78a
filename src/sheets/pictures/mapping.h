#pragma once

#include "plan/plan.h"

#include <QPointF>
#include <QRectF>
#include <QTransform>

#include <algorithm>

namespace bastewright::sheets {

/// From the quilt's frame to the page: one scale both ways, centred in a box.
class Mapping {
public:
    Mapping(const Rect& world, QRectF box)
        : scale_{std::min(box.width() / std::max(world.width().in(), 1e-6),
                          box.height() / std::max(world.length().in(), 1e-6))}
        , origin_{box.center().x() - (world.x0.in() + world.x1.in()) / 2 * scale_,
                  box.center().y() - (world.y0.in() + world.y1.in()) / 2 * scale_} {}

    double scale() const { return scale_; } ///< points to the inch
    double operator()(Length l) const { return l.in() * scale_; }
    QPointF operator()(Point p) const {
        return {origin_.x() + (*this)(p.x), origin_.y() + (*this)(p.y)};
    }
    QRectF operator()(const Rect& r) const {
        return {(*this)(Point{r.x0, r.y0}), (*this)(Point{r.x1, r.y1})};
    }

    QTransform fromInches() const { return {scale_, 0, 0, scale_, origin_.x(), origin_.y()}; }

private:
    double scale_;
    QPointF origin_;
};

/// The top in the quilt's frame.
inline Rect topOf(const QuiltPlan& quilt) {
    return {Length{}, Length{}, quilt.layers.top.width, quilt.layers.top.length};
}

/// The smallest rectangle around both.
constexpr Rect around(const Rect& a, const Rect& b) {
    return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

/// Height a picture of `world` takes when it is `width` wide, at most `limit`.
inline double heightFor(const Rect& world, double width, double limit) {
    return std::min(limit, width * world.length().in() / std::max(world.width().in(), 1e-6));
}

} // namespace bastewright::sheets
