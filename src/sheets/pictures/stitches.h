#pragma once

#include <QRectF>

class QPainter;

namespace bastewright::sheets {

/// Basted cloth: rows of stitches over a rectangle, level or upright. Dashes mean nothing else on
/// the sheets.
void stitch(QPainter& p, QRectF area, bool level, double pitch = 5.5);

} // namespace bastewright::sheets
