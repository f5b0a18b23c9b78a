#include "sheets/ink.h"
#include "sheets/pictures/place_picture.h"
#include "sheets/pictures/stitches.h"
#include "sheets/pictures/turned_mapping.h"
#include "sheets/text_block.h"
#include "sheets/type.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

Rect join(const Rect& a, const Rect& b) {
    return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

Rect topOnTable(const QuiltPlan& quilt, const Pass& pass) {
    const Rect top{Length{}, Length{}, quilt.layers.top.width, quilt.layers.top.length};
    return top.moved({-pass.table.x0, -pass.table.y0});
}

/// Wherever the quilt lies in any pass, with the table at the origin.
Rect worldOf(const QuiltPlan& quilt) {
    Rect world;
    for (const Pass& pass : quilt.passes) {
        const Rect table = pass.table.moved({-pass.table.x0, -pass.table.y0});
        world = join(world.empty() ? table : world, join(table, topOnTable(quilt, pass)));
    }
    return world;
}

class Thumb {
public:
    Thumb(QPainter& p, QRectF box, const PassThumb& show, Unit unit)
        : p_{p}
        , show_{show}
        , quilt_{*show.quilt}
        , pass_{*show.pass}
        , unit_{unit}
        , box_{box}
        , map_{worldOf(quilt_),
               box.marginsRemoved(show.hang ? QMarginsF{2, 2, 22, 13} : QMarginsF{2, 2, 2, 2}),
               show.bottom} {}

    void draw() {
        const QRectF top = map_(topOnTable(quilt_, pass_));
        p_.setPen(QPen{ink::kDark, ink::kThin});
        p_.setBrush(ink::kPaper);
        p_.drawRect(top);
        const bool across = !quilt_.rows || quilt_.rows->along == PinRows::Along::width;
        for (const Pass& before : quilt_.passes)
            if (before.number < pass_.number)
                for (const Rect& part : before.fresh.parts)
                    stitch(p_, map_(here(part)), across == isAcross(show_.bottom), 3.6);
        p_.setPen(Qt::NoPen);
        p_.setBrush(ink::kNow);
        if (show_.mine.empty())
            for (const Rect& part : pass_.fresh.parts)
                p_.drawRect(map_(here(part)));
        for (const Zone* zone : show_.mine)
            p_.drawRect(map_(here(zone->area)));
        p_.setBrush(Qt::NoBrush);
        if (!show_.mine.empty()) {
            p_.setPen(QPen{ink::kRule, ink::kHair});
            for (const Rect& part : pass_.fresh.parts)
                p_.drawRect(map_(here(part)));
        }
        p_.setPen(QPen{ink::kDark, quilt_.surface.floor ? ink::kHair : 2.6, Qt::SolidLine,
                       Qt::FlatCap, Qt::MiterJoin});
        p_.drawRect(map_(table()));
        if (show_.hang)
            hangs();
    }

private:
    Rect here(const Rect& r) const { return r.moved({-pass_.table.x0, -pass_.table.y0}); }
    Rect table() const { return here(pass_.table); }

    /// Below the picture what hangs to its left and right, beside it what hangs above and below.
    void hangs() {
        const Rect on = table();
        const auto& past = pass_.backingOverhang;
        const Rect backing{on.x0 - past.left, on.y0 - past.head, on.x1 + past.right,
                           on.y1 + past.foot};
        const QRectF whole = map_(worldOf(quilt_)), edge = map_(on), cloth = map_(backing);
        for (const Side side : kSides) {
            const Length over = pass_.backingOverhang[side];
            if (over <= Length{} || quilt_.surface.floor)
                continue;
            const QString figure = halves(over, unit_, false);
            const QPointF out = map_.outward(side);
            p_.setPen(QPen{ink::kDark, ink::kThin});
            if (map_.isLevel(side)) {
                const double x = std::min(whole.right(), cloth.right()) + 5;
                const double from =
                    out.y() < 0 ? std::max(cloth.top(), whole.top()) : edge.bottom();
                const double to =
                    out.y() < 0 ? edge.top() : std::min(cloth.bottom(), whole.bottom());
                p_.drawLine(QPointF{x, from}, QPointF{x, to});
                for (const double y : {from, to})
                    p_.drawLine(QPointF{x - 2.5, y}, QPointF{x + 2.5, y});
                const double w = textWidth(figure, {type::kLeast, true});
                labelOnWhite(p_, {x + 5 + w / 2, (from + to) / 2}, figure, type::kLeast, 30, true);
            } else {
                const double y =
                    std::min(whole.bottom(), std::max(cloth.bottom(), edge.bottom())) + 7;
                const double from =
                    out.x() < 0 ? std::max(cloth.left(), whole.left()) : edge.right();
                const double to =
                    out.x() < 0 ? edge.left() : std::min(cloth.right(), whole.right());
                p_.drawLine(QPointF{from, y}, QPointF{to, y});
                for (const double x : {from, to})
                    p_.drawLine(QPointF{x, y - 2.5}, QPointF{x, y + 2.5});
                const double w = textWidth(figure, {type::kLeast, true});
                const bool inside = to - from > w + 6;
                const double x = std::max(box_.left() + w / 2, inside        ? (from + to) / 2
                                                               : out.x() < 0 ? from - w / 2 - 3
                                                                             : to + w / 2 + 3);
                labelOnWhite(p_, {x, y}, figure, type::kLeast, 30, true);
            }
        }
    }

    QPainter& p_;
    const PassThumb& show_;
    const QuiltPlan& quilt_;
    const Pass& pass_;
    Unit unit_;
    QRectF box_;
    TurnedMapping map_;
};

} // namespace

double thumbShape(const QuiltPlan& quilt, Side bottom) {
    const Rect world = worldOf(quilt);
    const double w = std::max(world.width().in(), 1e-6), h = std::max(world.length().in(), 1e-6);
    return isAcross(bottom) ? w / h : h / w;
}

void drawThumb(QPainter& p, QRectF box, const PassThumb& thumb, Unit unit) {
    p.save();
    Thumb{p, box, thumb, unit}.draw();
    p.restore();
}

} // namespace bastewright::sheets
