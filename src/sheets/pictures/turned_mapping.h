#pragma once

#include "measures/geometry.h"

#include <QPointF>
#include <QRectF>
#include <QTransform>

#include <algorithm>

namespace bastewright::sheets {

/// From the quilt's frame to the page, turned by quarters so that one side of the quilt lies at the
/// bottom: the table as somebody sees it who stands there. Lengths keep one scale both ways.
class TurnedMapping {
public:
    TurnedMapping(const Rect& world, QRectF box, Side bottom)
        : bottom_{bottom} {
        const bool across = isAcross(bottom);
        const double w = std::max((across ? world.width() : world.length()).in(), 1e-6);
        const double h = std::max((across ? world.length() : world.width()).in(), 1e-6);
        scale_ = std::min(box.width() / w, box.height() / h);
        const QPointF middle = turned(world.middle());
        origin_ = box.center() - middle * scale_;
    }

    double scale() const { return scale_; } ///< points to the inch
    double operator()(Length l) const { return l.in() * scale_; }
    QPointF operator()(Point p) const { return origin_ + turned(p) * scale_; }
    QRectF operator()(const Rect& r) const {
        return QRectF{(*this)(Point{r.x0, r.y0}), (*this)(Point{r.x1, r.y1})}.normalized();
    }

    QTransform fromInches() const {
        const QPointF x = turned(QPointF{1, 0}) * scale_, y = turned(QPointF{0, 1}) * scale_;
        return {x.x(), x.y(), y.x(), y.y(), origin_.x(), origin_.y()};
    }

    /// Where on the page a side of the quilt faces: (0, 1) is down.
    QPointF outward(Side s) const {
        const QPointF d = s == Side::head   ? QPointF{0, -1}
                          : s == Side::foot ? QPointF{0, 1}
                          : s == Side::left ? QPointF{-1, 0}
                                            : QPointF{1, 0};
        return turned(d);
    }
    /// True where this side lies at the top or at the bottom of the page.
    bool isLevel(Side s) const { return isAcross(s) == isAcross(bottom_); }

private:
    QPointF turned(QPointF p) const {
        switch (bottom_) {
        case Side::head:
            return -p;
        case Side::left:
            return {p.y(), -p.x()};
        case Side::right:
            return {-p.y(), p.x()};
        case Side::foot:
            break;
        }
        return p;
    }
    QPointF turned(Point p) const { return turned(QPointF{p.x.in(), p.y.in()}); }

    Side bottom_;
    double scale_ = 1;
    QPointF origin_;
};

} // namespace bastewright::sheets
