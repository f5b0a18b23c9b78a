#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

/// The signs that stand beside the lead's calls, our own drawings.
namespace bastewright::sheets {

enum class Sign {
    layers,    ///< folded layers: lay
    clamp,     ///< a clamp on a table's edge
    pinOpen,   ///< pin
    palm,      ///< hands off
    pinClosed, ///< close
    under,     ///< an eye under the table: check
    slide,     ///< the quilt sliding over the table: move
    needle,    ///< a threaded needle: stitch
    dot,       ///< a fuse dot laid
    can,       ///< a can that sprays: spray
    iron,      ///< press
    wait,      ///< a clock: cool
    chair,     ///< works sitting
    lift,
    roll, ///< rolled up
    care  ///< take care
};

void drawSign(QPainter& p, QRectF box, Sign sign, const QColor& ink);

} // namespace bastewright::sheets
