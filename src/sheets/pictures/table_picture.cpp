#include "sheets/pictures/table_picture.h"

#include "sheets/hold_order.h"
#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/table_marks.h"
#include "sheets/task_words.h"
#include "sheets/type.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

const QColor kHanging{0xf3, 0xf3, 0xf3};

Rect layerRect(const Rect& top, Size layer) {
    const Length x = (layer.width - top.width()) / 2, y = (layer.length - top.length()) / 2;
    return {top.x0 - x, top.y0 - y, top.x1 + x, top.y1 + y};
}

Rect topOf(const QuiltPlan& quilt) {
    return {Length{}, Length{}, quilt.layers.top.width, quilt.layers.top.length};
}

void outline(QPainter& p, QRectF r, double weight, Qt::PenStyle style,
             const QColor& colour = ink::kDark) {
    p.setPen(QPen{colour, weight, style, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(Qt::NoBrush);
    p.drawRect(r);
}

/// One picture in the making: the parts are drawn from the table upwards.
class Drawing {
public:
    Drawing(QPainter& p, QRectF box, const QuiltPlan& quilt, const Pass& pass,
            const TablePicture& show)
        : p_{p}
        , quilt_{quilt}
        , pass_{pass}
        , show_{show}
        , top_{topOf(quilt)}
        , world_{worldOf(quilt, pass, show.layers)}
        , map_{world_, box.adjusted(kPictureRim, kPictureRim, -kPictureRim, -kPictureRim)}
        , marks_{p, map_, pass.table} {}

    void draw() {
        ground();
        basted();
        fresh();
        edge();
        if (show_.smoothing)
            marks_.smoothing(pass_);
        if (show_.rolls)
            for (const auto& roll : pass_.rolls)
                marks_.roll(roll, top_);
        for (const Side side : quilt_.surface.closed)
            marks_.wall(side);
        for (const auto& mark : show_.places)
            marks_.place(mark);
        if (show_.holds)
            for (const auto& hold : holdOrder(pass_))
                marks_.hold(hold, pass_.backingOverhang[hold.side]);
        if (show_.sideNames)
            marks_.sideNames(world_);
    }

private:
    void ground() {
        p_.setPen(Qt::NoPen);
        p_.setBrush(ink::kTable);
        if (!quilt_.surface.floor)
            p_.drawRect(map_(pass_.table));
        const Rect backing =
            show_.layers ? around(layerRect(top_, quilt_.layers.backing), top_) : top_;
        p_.setBrush(kHanging);
        p_.drawRect(map_(backing));
        const Rect onTable = intersection(backing, pass_.table);
        if (!onTable.empty()) {
            p_.setBrush(ink::kPaper);
            p_.drawRect(map_(onTable));
        }
        if (show_.layers) {
            outline(p_, map_(layerRect(top_, quilt_.layers.backing)), ink::kThin, Qt::SolidLine,
                    ink::kQuiet);
            outline(p_, map_(layerRect(top_, quilt_.layers.batting)), ink::kThin, Qt::DashLine,
                    ink::kQuiet);
        }
    }

    void basted() {
        for (const auto& earlier : quilt_.passes)
            if (earlier.number < pass_.number) {
                hatch(p_, map_(earlier.fresh));
                outline(p_, map_(earlier.fresh), ink::kHair, Qt::SolidLine, ink::kHatch);
            }
        outline(p_, map_(top_), ink::kLine, Qt::SolidLine);
    }

    void fresh() {
        p_.setPen(Qt::NoPen);
        p_.setBrush(ink::kFresh);
        p_.drawRect(map_(pass_.fresh));
        for (const auto& id : pass_.zones)
            if (const Zone* zone = findZone(quilt_, id))
                drawZone(*zone);
        outline(p_, map_(pass_.fresh), ink::kBold, Qt::SolidLine);
    }

    void drawZone(const Zone& zone) {
        const QRectF r = map_(zone.area);
        const bool choosing = !show_.mine.empty();
        const bool mine = choosing && std::ranges::count(show_.mine, zone.id) > 0;
        if (choosing && !mine) {
            p_.setPen(Qt::NoPen);
            p_.setBrush(ink::kPaper);
            p_.drawRect(r);
        }
        outline(p_, r, ink::kThin, Qt::SolidLine, ink::kQuiet);
        const double room = r.width() - 4;
        const int type = int(std::clamp(r.height() * 0.42, 7.0, double(type::kLead)));
        const bool counts = show_.counts && r.height() > 26;
        const QString id = QString::fromStdString(zone.id);
        const QPointF at = r.center() - QPointF{0, counts ? type * 0.5 : 0};
        const int set = label(p_, at, id, choosing && !mine ? std::min(type, 10) : type, room,
                              mine || !choosing, choosing && !mine ? ink::kQuiet : ink::kDark);
        if (counts)
            label(p_, at + QPointF{0, set * 0.5 + 8}, QString::number(zone.points.size()),
                  type::kHead, room);
    }

    void edge() {
        if (quilt_.surface.floor)
            return;
        for (const Rect& t : tablesUnder(quilt_.surface, pass_.table))
            outline(p_, map_(t), ink::kThin, Qt::DotLine);
        outline(p_, map_(pass_.table), ink::kBold, Qt::SolidLine);
    }

    QPainter& p_;
    const QuiltPlan& quilt_;
    const Pass& pass_;
    const TablePicture& show_;
    Rect top_, world_;
    Mapping map_;
    TableMarks marks_;
};

} // namespace

Rect worldOf(const QuiltPlan& quilt, const Pass& pass, bool layers) {
    Rect world = around(topOf(quilt), pass.table);
    if (layers)
        world = around(world, layerRect(topOf(quilt), quilt.layers.backing));
    return world;
}

std::vector<Rect> tablesUnder(const SurfacePlan& surface, const Rect& table) {
    std::vector<Rect> out;
    for (const Rect& t : surface.tables) {
        // With the quilt's length along the surface's, its head points to the drawn left and its
        // left to the drawn foot.
        if (surface.quiltLengthAlongLength)
            out.push_back({table.x0 + surface.width - t.y1, table.y0 + t.x0,
                           table.x0 + surface.width - t.y0, table.y0 + t.x1});
        else
            out.push_back(t.moved({table.x0, table.y0}));
    }
    return out;
}

void drawTable(QPainter& p, QRectF box, const QuiltPlan& quilt, const Pass& pass,
               const TablePicture& show) {
    p.save();
    Drawing{p, box, quilt, pass, show}.draw();
    p.restore();
}

} // namespace bastewright::sheets
