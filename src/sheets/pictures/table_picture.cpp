#include "sheets/pictures/table_picture.h"

#include "sheets/hold_order.h"
#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/table_marks.h"
#include "sheets/pictures/top_photo.h"
#include "sheets/task_words.h"
#include "sheets/text_block.h"
#include "sheets/words.h"

#include <QMarginsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

const QColor kHanging{0xf3, 0xf3, 0xf3};

Rect layerRect(const Rect& top, Size layer) {
    const Length x = (layer.width - top.width()) / 2, y = (layer.length - top.length()) / 2;
    return {top.x0 - x, top.y0 - y, top.x1 + x, top.y1 + y};
}

void outline(QPainter& p, QRectF r, double weight, Qt::PenStyle style,
             const QColor& colour = ink::kDark) {
    p.setPen(QPen{colour, weight, style, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(Qt::NoBrush);
    p.drawRect(r);
}

constexpr double kNameOut = 7; // from the box's edge to the middle of a side's name

/// White kept inside the box for the marks outside the table's edge. Near pictures are small: they
/// keep only what their marks need.
QMarginsF rims(const QuiltPlan& quilt, const TablePicture& show) {
    if (!show.near)
        return {26, 26, 26, 26};
    constexpr double kBare = 5, kWall = 19, kPlace = 27, kName = 12;
    const auto rim = [&](Side side) {
        double room = std::ranges::count(quilt.surface.closed, side) > 0 ? kWall : kBare;
        if (std::ranges::any_of(show.places,
                                [&](const PlaceMark& m) { return m.place.side == side; }))
            room = kPlace;
        return side == Side::head ? room + kName : room;
    };
    return {rim(Side::left), rim(Side::head), rim(Side::right), rim(Side::foot)};
}

/// How much of the quilt beyond the table's edge a near picture shows.
const Length kNear = Length::inches(8);

/// What the picture has to hold.
Rect worldOf(const QuiltPlan& quilt, const Pass& pass, const TablePicture& show) {
    const Rect quiltArea =
        show.layers ? layerRect(topOf(quilt), quilt.layers.backing) : topOf(quilt);
    return show.near ? around(intersection(quiltArea, pass.table.grown(kNear)), pass.table)
                     : around(quiltArea, pass.table);
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
        , world_{worldOf(quilt, pass, show)}
        , rims_{rims(quilt, show)}
        , map_{world_, box.marginsRemoved(rims_)}
        , marks_{p, map_, pass.table} {} // NOLINT(*UninitializedObject): all of it is given

    void draw() {
        ground();
        basted();
        fresh();
        edge();
        if (show_.smoothing)
            marks_.smoothing(quilt_, pass_);
        zoneNames();
        if (show_.rolls)
            for (const auto& roll : pass_.rolls)
                marks_.roll(roll, top_);
        for (const Side side : quilt_.surface.closed)
            marks_.wall(side, pass_);
        for (const auto& mark : show_.places)
            marks_.place(mark);
        if (show_.holds)
            for (const auto& hold : holdOrder(pass_))
                marks_.hold(hold, pass_.backingOverhang[hold.side]);
        // Near pictures are small: one name tells the way up.
        for (const Side side : kSides)
            if (!show_.near || side == Side::head)
                marks_.sideName(side, world_,
                                (side == Side::head ? rims_.top() : rims_.left()) - kNameOut);
    }

private:
    /// As much of an area as the picture shows.
    Rect shown(const Rect& r) const { return intersection(r, world_); }

    void ground() {
        p_.setPen(Qt::NoPen);
        p_.setBrush(ink::kTable);
        if (!quilt_.surface.floor)
            p_.drawRect(map_(pass_.table));
        const Rect backing =
            show_.layers ? around(layerRect(top_, quilt_.layers.backing), top_) : top_;
        p_.setBrush(kHanging);
        p_.drawRect(map_(shown(backing)));
        const Rect onTable = intersection(backing, pass_.table);
        if (!onTable.empty()) {
            p_.setBrush(ink::kPaper);
            p_.drawRect(map_(onTable));
        }
        drawTopPhoto(p_, show_.photo, top_, map_.fromInches(), map_(shown(top_)));
        if (show_.layers) {
            outline(p_, map_(layerRect(top_, quilt_.layers.backing)), ink::kThin, Qt::SolidLine,
                    ink::kQuiet);
            outline(p_, map_(layerRect(top_, quilt_.layers.batting)), ink::kThin, Qt::DashLine,
                    ink::kQuiet);
        }
    }

    void basted() {
        for (const auto& earlier : quilt_.passes)
            if (earlier.number < pass_.number)
                for (const Rect& part : earlier.fresh.parts)
                    basted(shown(part));
        topEdges();
    }

    void basted(const Rect& area) {
        if (area.empty())
            return;
        hatch(p_, map_(area));
        outline(p_, map_(area), ink::kHair, Qt::SolidLine, ink::kHatch);
    }

    /// The top's own edges; where the picture leaves the rest of it off there is none.
    void topEdges() {
        const Rect r = shown(top_);
        p_.setPen(QPen{ink::kDark, ink::kLine, Qt::SolidLine, Qt::SquareCap});
        const auto line = [&](bool edge, Point from, Point to) {
            if (edge)
                p_.drawLine(map_(from), map_(to));
        };
        line(r.y0 == top_.y0, {r.x0, r.y0}, {r.x1, r.y0});
        line(r.y1 == top_.y1, {r.x0, r.y1}, {r.x1, r.y1});
        line(r.x0 == top_.x0, {r.x0, r.y0}, {r.x0, r.y1});
        line(r.x1 == top_.x1, {r.x1, r.y0}, {r.x1, r.y1});
    }

    void fresh() {
        p_.setPen(Qt::NoPen);
        p_.setBrush(show_.photo.isNull() ? ink::kFresh : ink::kFreshOnPhoto);
        for (const Rect& part : pass_.fresh.parts)
            p_.drawRect(map_(part));
        for (const auto& id : pass_.zones)
            if (const Zone* zone = findZone(quilt_, id))
                drawZone(*zone);
        for (const Rect& part : pass_.fresh.parts)
            outline(p_, map_(part), ink::kBold, Qt::SolidLine);
        if (show_.mine.empty())
            return;
        // A tint is lost in black and white: a person's own zones have a heavy frame of their own.
        for (const auto& id : pass_.zones)
            if (const Zone* zone = findZone(quilt_, id); zone && isMine(*zone))
                outline(p_, map_(zone->area), ink::kBold, Qt::SolidLine);
    }

    bool isMine(const Zone& zone) const {
        return show_.mine.empty() || std::ranges::count(show_.mine, zone.id) > 0;
    }

    void drawZone(const Zone& zone) {
        p_.setPen(QPen{ink::kQuiet, ink::kThin, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
        p_.setBrush(isMine(zone) ? ink::kFresh : ink::kPaper);
        p_.drawRect(map_(zone.area));
    }

    void zoneNames() {
        for (const auto& id : pass_.zones)
            if (const Zone* zone = findZone(quilt_, id))
                zoneName(*zone);
    }

    /// Width of a word in the smallest letters of labels.
    static double wordWidth(const QString& word, bool bold) {
        return std::ceil(textWidth(word, {kSmallestLabel, bold}));
    }

    void zoneName(const Zone& zone) {
        const QRectF r = map_(zone.area);
        const bool mine = isMine(zone), counts = show_.counts && r.height() > 26;
        // A small picture is for finding one's own zones: others' names only where there is room.
        if (!mine && show_.near && r.height() < 9)
            return;
        const double share = show_.near ? 0.52 : 0.42;
        const int type = int(std::clamp(r.height() * share, 7.0, double(type::kLead)));
        const QString id = zoneWord(zone.id);
        // Where names do not fit beside each other, those of neighbouring places, A and B, stand
        // one higher than the other; where there is no room for that either they are cut short.
        const double word = wordWidth(id, true), apart = counts ? 9.5 : 5;
        double room = r.width() - (show_.near ? 1.5 : 4), aside = 0;
        if (word > room && r.height() > 4 * apart && !id.isEmpty()) {
            room = word;
            aside = id[0].unicode() % 2 == 0 ? apart : -apart;
        }
        const QPointF at = r.center() + QPointF{0, aside - (counts ? type * 0.5 : 0)};
        const double width = std::min(room, textWidth(id, {type, mine})), high = type * 0.9;
        // A join of the tables or the hatching may run below the name: a ground of the zone's own.
        p_.setPen(Qt::NoPen);
        p_.setBrush(mine ? ink::kFresh : ink::kPaper);
        p_.drawRect(QRectF{at.x() - width / 2 - 1, at.y() - high / 2, width + 2, high});
        const int set = label(p_, at, id, mine ? type : std::min(type, 10), room, mine,
                              mine ? ink::kDark : ink::kQuiet);
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
    QMarginsF rims_;
    Mapping map_;
    TableMarks marks_;
};

} // namespace

double pictureHeight(const QuiltPlan& quilt, const Pass& pass, const TablePicture& show,
                     double width, double limit) {
    const QMarginsF rim = rims(quilt, show);
    const double across = rim.left() + rim.right(), down = rim.top() + rim.bottom();
    return heightFor(worldOf(quilt, pass, show), width - across, limit - down) + down;
}

QSizeF pictureSize(const QuiltPlan& quilt, const Pass& pass, const TablePicture& show,
                   double pointsToTheInch, QSizeF most) {
    const QMarginsF rim = rims(quilt, show);
    const double across = rim.left() + rim.right(), down = rim.top() + rim.bottom();
    const Rect world = worldOf(quilt, pass, show);
    const double w = std::max(world.width().in(), 1e-6), h = std::max(world.length().in(), 1e-6);
    const double scale =
        std::min({pointsToTheInch, (most.width() - across) / w, (most.height() - down) / h});
    return {w * scale + across, h * scale + down};
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
