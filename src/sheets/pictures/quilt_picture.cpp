#include "sheets/pictures/quilt_picture.h"

#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/top_photo.h"
#include "sheets/task_words.h"
#include "sheets/text_block.h"
#include "sheets/type.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

void framed(QPainter& p, QRectF r, double weight, Qt::PenStyle style = Qt::SolidLine,
            const QBrush& fill = Qt::NoBrush) {
    p.setPen(QPen{ink::kDark, weight, style, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(fill);
    p.drawRect(r);
}

/// The top in the table's frame: origin at the table's head-left corner.
Rect onTable(const QuiltPlan& quilt, const Pass& pass) {
    return topOf(quilt).moved({-pass.table.x0, -pass.table.y0});
}

} // namespace

void drawQuilt(QPainter& p, QRectF box, const QuiltPlan& quilt, const QImage& photo) {
    p.save();
    const Mapping map{topOf(quilt), box.adjusted(2, 2, -2, -2)};
    framed(p, map(topOf(quilt)), ink::kLine, Qt::SolidLine, ink::kPaper);
    drawTopPhoto(p, photo, topOf(quilt), map.fromInches(), map(topOf(quilt)));
    double tagSize = 15;
    for (const auto& zone : quilt.zones) {
        const QRectF r = map(zone.area);
        p.setPen(QPen{ink::kRule, ink::kThin});
        p.drawRect(r);
        const double room = std::min(r.width(), r.height());
        tagSize = std::clamp(room * 0.3, 9.0, tagSize);
        const QString name = zoneWord(zone.id);
        label(p, r.center(), name, std::clamp(int(room * 0.32), kSmallestLabel, type::kBody),
              std::max(r.width() - 3, std::ceil(textWidth(name, {kSmallestLabel}))));
    }
    for (const auto& pass : quilt.passes)
        for (const Rect& part : pass.fresh.parts)
            framed(p, map(part), ink::kBold);
    for (const auto& pass : quilt.passes) {
        const QRectF tag{map(pass.fresh.parts.front()).topLeft(), QSizeF{tagSize, tagSize}};
        p.setPen(Qt::NoPen);
        p.setBrush(ink::kDark);
        p.drawRect(tag);
        label(p, tag.center(), QString::number(pass.number), type::kHead, tagSize - 2, true,
              ink::kPaper);
    }
    p.restore();
}

void drawShift(QPainter& p, QRectF box, const QuiltPlan& quilt, const Pass& before,
               const Pass& after, const QString& distance) {
    p.save();
    const Rect old = onTable(quilt, before), now = onTable(quilt, after);
    const Rect table = after.table.moved({-after.table.x0, -after.table.y0});
    const Mapping map{around(around(old, now), table), box.adjusted(2, 2, -2, -2)};
    framed(p, map(table), ink::kBold, Qt::SolidLine, ink::kTable);
    framed(p, map(old), ink::kLine);
    for (const Rect& part : before.fresh.moved({-before.table.x0, -before.table.y0}).parts)
        hatch(p, map(part), 5);
    framed(p, map(now), ink::kLine, Qt::DashLine);
    const QPointF from = map(old.middle()), to = map(now.middle());
    arrow(p, from, to, 2.6);
    labelOnWhite(p, {(from.x() + to.x()) / 2, std::max(from.y(), to.y()) + 11}, distance,
                 type::kHead, 70, true);
    p.restore();
}

} // namespace bastewright::sheets
