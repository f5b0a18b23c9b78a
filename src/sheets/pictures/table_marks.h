#pragma once

#include "sheets/hold_order.h"
#include "sheets/pictures/mapping.h"

class QPainter;

namespace bastewright::sheets {

struct PlaceMark;

/// The marks along a table's edge: holds, rolls, walls, places, names of sides.
class TableMarks {
public:
    TableMarks(QPainter& p, const Mapping& map, const Rect& table);

    void hold(const HoldPoint& hold, Length overhang);
    void roll(const Roll& roll, const Rect& top);
    void wall(Side side, const Pass& pass);
    void place(const PlaceMark& mark);
    void smoothing(const QuiltPlan& quilt, const Pass& pass);
    /// `out` points away from the picture.
    void sideName(Side side, const Rect& world, double out);

private:
    /// The point `along` the table's side (page), moved `out` points away from the table.
    QPointF onSide(Side side, Length along, double out) const;
    /// Where an arrow towards a side crosses no zone's id: on a line between zones, in page units.
    double freeLine(const QuiltPlan& quilt, const Pass& pass, const Rect& bounds, Side side) const;
    double rollThickness(const Roll& roll) const;

    QPainter& p_;
    const Mapping& map_;
    Rect table_;
};

} // namespace bastewright::sheets
