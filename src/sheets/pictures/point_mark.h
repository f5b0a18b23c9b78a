#pragma once

#include "ways/way.h"

#include <QPointF>

class QPainter;

namespace bastewright::sheets {

/// A pin, a dot, a stitch or a patch in a picture of the table: a speck, one's own drawn as it is
/// placed, a pin open. `angle` in degrees.
void drawPoint(QPainter& p, QPointF at, WayPoint::Shape shape, bool level, bool mine);

} // namespace bastewright::sheets
