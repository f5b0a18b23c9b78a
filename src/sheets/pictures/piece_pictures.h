#pragma once

#include "plan/plan.h"

#include <QRectF>

class QPainter;

/// Pictures of single things: where quilting begins, rolls.
namespace bastewright::sheets {

/// The top with the marks at the middles of its sides, the lines between them, and the start of the
/// quilting where they cross; `across` and `down` are said of the halves.
void drawStartPoint(QPainter& p, QRectF box, const Rect& top, const QString& across,
                    const QString& down);

/// The top with one of its sides rolled up for the machine, clips marked.
void drawMachineRoll(QPainter& p, QRectF box, const Rect& top, const Roll& roll);

} // namespace bastewright::sheets
