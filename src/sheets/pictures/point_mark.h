#pragma once

#include <QPointF>

class QPainter;

namespace bastewright::sheets {

/// A pin or a dot in a picture of the table: a speck, one's own drawn as it is placed, open.
void drawPoint(QPainter& p, QPointF at, bool pin, bool mine);

} // namespace bastewright::sheets
