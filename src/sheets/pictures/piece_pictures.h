#pragma once

#include "plan/plan.h"

#include <QRectF>

class QPainter;

/// Pictures of single things: patterns of points, rolls.
namespace bastewright::sheets {

/// One tile with its seams and numbered points. `pin` is the length pins are drawn with; zero:
/// dots.
void drawPattern(QPainter& p, QRectF box, const PointPattern& pattern, Length pin,
                 bool numbered = true);

/// The top with the marks at the middles of its sides, the lines between them, and the start of the
/// quilting where they cross; `across` and `down` are said of the halves.
void drawStartPoint(QPainter& p, QRectF box, const Rect& top, const QString& across,
                    const QString& down);

/// The top with one of its sides rolled up for the machine, clips marked.
void drawMachineRoll(QPainter& p, QRectF box, const Rect& top, const Roll& roll);

} // namespace bastewright::sheets
