#include "sheets/pictures/stitches.h"

#include "sheets/ink.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {

void stitch(QPainter& p, QRectF area, bool level, double pitch) {
    QPen pen{ink::kDark, ink::kThin, Qt::CustomDashLine, Qt::FlatCap};
    pen.setDashPattern({4, 3});
    p.setPen(pen);
    const double across = level ? area.height() : area.width();
    const int lines = std::max(1, int(across / pitch));
    for (int i = 0; i < lines; ++i) {
        const double at = across * (i + 0.5) / lines;
        if (level)
            p.drawLine(QPointF{area.left() + 1, area.top() + at},
                       QPointF{area.right() - 1, area.top() + at});
        else
            p.drawLine(QPointF{area.left() + at, area.top() + 1},
                       QPointF{area.left() + at, area.bottom() - 1});
    }
}

} // namespace bastewright::sheets
