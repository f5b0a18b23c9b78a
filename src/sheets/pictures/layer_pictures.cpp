#include "sheets/pictures/layer_pictures.h"

#include "sheets/pictures/mapping.h"
#include "sheets/text_block.h"
#include "sheets/type.h"
#include "sheets/words.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <map>
#include <set>
#include <vector>

namespace bastewright::sheets {
namespace {

constexpr double kMark = 7;     ///< a centre mark's height
constexpr double kFigures = 20; ///< below a cloth, for its figures
constexpr double kSelvage = 5, kTape = 15;
const QColor kTapeGround{0xf4, 0xec, 0xd2}, kTapeInk{0x1b, 0x21, 0x30};

void frame(QPainter& p, QRectF r, double weight, const QColor& ink, const QBrush& fill) {
    p.setPen(QPen{ink, weight, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(fill);
    p.drawRect(r);
}

/// Slanting lines over what is not used.
void shade(QPainter& p, QRectF r, const LayerLook& look) {
    p.save();
    p.setClipRect(r);
    p.setPen(QPen{look.hatch, ink::kThin});
    for (double d = 0; d < r.width() + r.height(); d += 6)
        p.drawLine(QPointF{r.left() + d, r.top()}, QPointF{r.left() + d - r.height(), r.bottom()});
    p.restore();
}

/// Words in a tall and narrow piece run up it.
bool upright(QRectF r) {
    return r.height() > r.width() * 1.4 && r.width() < 96;
}

constexpr double kSmallest = 12; ///< a piece shown narrower is known by its number in the list

/// Name above, size below, in the middle of a piece; turned where the piece is tall and narrow. The
/// name alone where the size has no room, and nothing where a name has none.
void caption(QPainter& p, QRectF r, const QString& whole, const QString& size,
             const LayerLook& look) {
    const bool tall = upright(r);
    const double along = tall ? r.height() : r.width(), across = tall ? r.width() : r.height();
    if (across < kSmallest)
        return;
    // Where number and fabric do not fit, the number: half a fabric's name tells nothing.
    const bool fitsWhole = textWidth(whole, {kSmallestLabel, true}) <= along - 8;
    const QString name = fitsWhole ? whole : whole.section(QStringLiteral(" · "), 0, 0);
    p.save();
    p.translate(r.center());
    if (tall)
        p.rotate(-90);
    const bool two = across > 36;
    const QString both = name + QStringLiteral("  ") + size;
    const bool fits = textWidth(both, {type::kBody, true}) < along - 8 && across >= 18;
    const QString line = two || !fits ? name : both;
    // Lines that run through the words would be read with them.
    const QString longest = two && size.size() > name.size() ? size : name;
    const double wide =
        std::min(along - 8, textWidth(two ? longest : line, {type::kCheck, true}) + 12);
    const double high = std::min(two ? 38.0 : 18.0, across - 3);
    p.fillRect(QRectF{-wide / 2, -high / 2, wide, high}, look.paper);
    label(p, {0, two ? -9.0 : 0.0}, line, type::kCheck, along - 8, true, look.ink);
    if (two)
        label(p, {0, 9}, size, type::kCheck, along - 8, false, look.ink);
    p.restore();
}

/// A number in a filled ring.
constexpr double kRing = 10.5;
void number(QPainter& p, QPointF at, int n, const LayerLook& look, double radius = kRing) {
    p.setPen(QPen{look.paper, ink::kLine});
    p.setBrush(look.ink);
    p.drawEllipse(at, radius, radius);
    label(p, at, QString::number(n), int(radius * 1.15), radius * 1.7, true, look.paper);
}

/// How large the ring may be in a piece: smaller in a narrow one.
constexpr double kLeastRing = 6;
double ringIn(QRectF piece) {
    return std::clamp(piece.width() / 2 - 1, kLeastRing, kRing);
}

/// A number in the piece's upper left corner; in the narrowest pieces by turns higher and lower, so
/// that neighbours keep apart.
void numberIn(QPainter& p, QRectF piece, int n, const LayerLook& look) {
    const double half = piece.width() / 2;
    const double radius = ringIn(piece);
    const double lower = half < kLeastRing + 1 && n % 2 == 0 ? 2 * radius + 2 : 0;
    const QPointF at = piece.topLeft() + QPointF{std::min(radius + 2, half),
                                                 std::min(radius + 2, piece.height() / 2) + lower};
    number(p, at, n, look, radius);
}

/// The woven edges along a cloth, with the pin holes of the mill.
void selvages(QPainter& p, QRectF cloth, const LayerLook& look) {
    for (const double y : {cloth.top() - kSelvage, cloth.bottom()}) {
        const QRectF band{cloth.left(), y, cloth.width(), kSelvage};
        p.setPen(QPen{look.ink, ink::kThin});
        p.setBrush(look.fabric);
        p.drawRect(band);
        p.setPen(Qt::NoPen);
        p.setBrush(look.ink);
        for (double x = band.left() + 6; x < band.right() - 2; x += 12)
            p.drawEllipse(QPointF{x, band.center().y()}, 0.9, 0.9);
    }
}

/// A tape measure from the end that is cut first: a short line every 3 in (5 cm), a long one with
/// its number every yard (metre), as far as the numbers keep apart.
void tape(QPainter& p, QRectF band, Length whole, double pointsToTheInch, Unit unit) {
    const bool inches = unit == Unit::inch;
    const Length step = inches ? Length::inches(3) : Length::millimetres(50);
    const int toTheMark = inches ? 12 : 20;
    p.setPen(QPen{kTapeInk, ink::kThin});
    p.setBrush(kTapeGround);
    p.drawRect(band);
    const double apart = step.in() * pointsToTheInch;
    for (int i = 1; step * i < whole; ++i) {
        const double x = band.left() + i * apart;
        const bool mark = i % toTheMark == 0, middle = i % (toTheMark / 2) == 0;
        if (apart < 2.5 && !middle)
            continue;
        p.setPen(QPen{kTapeInk, mark ? ink::kLine : ink::kHair});
        p.drawLine(QPointF{x, band.top()},
                   QPointF{x, band.top() + band.height() * (mark     ? 1
                                                            : middle ? 0.5
                                                                     : 0.3)});
        if (mark)
            label(p, {x - 13, band.center().y() + 1},
                  inches ? Text::tr("%1 yd").arg(i / toTheMark)
                         : Text::tr("%1 m").arg(i / toTheMark),
                  kSmallestLabel, 26, true, kTapeInk);
    }
}

Size sizeOf(const Rect& r) {
    return {r.width(), r.length()};
}

/// Cloth is drawn with its length left to right: a quarter turn of the frame it is given in.
Rect turned(const Rect& r) {
    return {r.y0, r.x0, r.y1, r.x1};
}

Rect wholeOf(Size s) {
    return {Length{}, Length{}, s.width, s.length};
}

/// The top where it lies on a layer.
Rect topOn(Size layer, Size top) {
    const Length x = (layer.width - top.width) / 2, y = (layer.length - top.length) / 2;
    return {x, y, x + top.width, y + top.length};
}

void quiltOutline(QPainter& p, const Mapping& map, const Rect& top, const LayerLook& look) {
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen{look.ink, ink::kLine, Qt::DashLine, Qt::FlatCap});
    p.drawRect(map(top));
}

/// The tables under the first pass, in the frame of the top.
std::vector<Rect> tablesOfFirst(const QuiltPlan& quilt) {
    std::vector<Rect> out;
    if (quilt.passes.empty())
        return out;
    const Rect& at = quilt.passes.front().table;
    for (const Rect& t : quilt.surface.tables) {
        // With the quilt's length along the surface's, drawn left is its head, drawn foot its left.
        const Rect r = quilt.surface.quiltLengthAlongLength ? Rect{quilt.surface.width - t.y1, t.x0,
                                                                   quilt.surface.width - t.y0, t.x1}
                                                            : t;
        out.push_back({r.x0 + at.x0, r.y0 + at.y0, r.x1 + at.x0, r.y1 + at.y0});
    }
    return out;
}

/// Triangles at the middles of the four sides, to be laid on the marks of the table.
void centreMarks(QPainter& p, QRectF r, const LayerLook& look) {
    p.setPen(Qt::NoPen);
    p.setBrush(look.ink);
    const QPointF c = r.center();
    for (const auto& [tip, out] : {std::pair{QPointF{c.x(), r.top()}, QPointF{0, -1}},
                                   std::pair{QPointF{c.x(), r.bottom()}, QPointF{0, 1}},
                                   std::pair{QPointF{r.left(), c.y()}, QPointF{-1, 0}},
                                   std::pair{QPointF{r.right(), c.y()}, QPointF{1, 0}}}) {
        const QPointF aside{out.y(), out.x()};
        p.drawPolygon(QPolygonF{{tip, tip + out * kMark + aside * kMark * 0.7,
                                 tip + out * kMark - aside * kMark * 0.7}});
    }
}

} // namespace

std::vector<QString> pieceNames(const BattingPlan& plan) {
    std::vector<QString> out;
    std::map<std::string, int> taken;
    for (const BattingPiecePlaced& p : plan.pieces) {
        const auto same = std::ranges::count(plan.pieces, p.name, &BattingPiecePlaced::name);
        QString name = QString::fromStdString(p.name);
        if (same > 1 && !name.isEmpty())
            name += (name.back().isDigit() ? QString{} : QStringLiteral(" ")) +
                    QChar('a' + taken[p.name]++ % 26);
        out.push_back(name);
    }
    return out;
}

std::vector<ClothLength> clothsOf(const Job& job, const BackingPlan& plan) {
    std::vector<ClothLength> out;
    for (const ClothCut& cut : plan.cuts) {
        auto at = std::ranges::find(out, cut.fabric, &ClothLength::fabric);
        if (at == out.end()) {
            ClothLength cloth{cut.fabric, {}, {}, {}};
            for (const Fabric& f : job.backing.fabrics)
                if (f.name == cut.fabric)
                    cloth = {cut.fabric, f.usableWidth, f.onHand, f.onHand};
            for (const BackingPurchase& b : plan.buy)
                if (b.fabric == cut.fabric)
                    cloth.whole += b.length;
            at = out.insert(out.end(), cloth);
        }
        at->width = std::max(at->width, cut.onCloth.x1);
        at->whole = std::max(at->whole, cut.onCloth.y1);
    }
    return out;
}

double aroundCloth(const LayerLook& look) {
    return 4 + kFigures + (look.asFabric() ? 2 * kSelvage + kTape : 0);
}

Rect extentOf(const ClothLength& cloth) {
    return {Length{}, Length{}, cloth.whole, cloth.width};
}

void drawCloth(QPainter& p, QRectF box, const BackingPlan& plan, const ClothLength& cloth,
               Unit unit, const LayerLook& look) {
    p.save();
    const Rect lying = extentOf(cloth);
    const double edge = look.asFabric() ? kSelvage : 0, measure = look.asFabric() ? kTape : 0;
    const Mapping map{lying, box.adjusted(14, 2 + edge, -14, -2 - edge - measure - kFigures)};
    if (look.asFabric()) {
        selvages(p, map(lying), look);
        tape(p, {map(lying).left(), map(lying).bottom() + edge, map(lying).width(), measure},
             cloth.whole, map.scale(), unit);
    }
    const double below = map(lying).bottom() + edge + measure;
    frame(p, map(lying), ink::kLine, look.ink, look.asFabric() ? look.fabric : look.rest);
    shade(p, map(lying), look);
    int n = 0;
    std::set<Length> begins{cloth.whole};
    for (const ClothCut& cut : plan.cuts) {
        if (cut.fabric != cloth.fabric)
            continue;
        const QRectF r = map(turned(cut.onCloth));
        frame(p, r, ink::kBold, look.ink, look.piece());
        // The words keep off the number: below it in a narrow piece, beside it in a low one.
        const double taken = 2 * ringIn(r) + 3;
        caption(p,
                r.width() < 60    ? r.adjusted(0, taken, 0, 0)
                : r.height() < 44 ? r.adjusted(taken, 0, 0, 0)
                                  : r,
                QString::fromStdString(cut.piece), size(sizeOf(cut.onCloth), unit), look);
        numberIn(p, r, ++n, look);
        begins.insert(cut.onCloth.y0);
    }
    if (cloth.onHand > Length{} && cloth.onHand < cloth.whole) {
        const double x = map(Point{cloth.onHand, {}}).x();
        p.setPen(QPen{look.ink, ink::kBold, Qt::DashLine, Qt::FlatCap});
        p.drawLine(QPointF{x, map(lying).top() - 2}, QPointF{x, below + 6});
        begins.insert(cloth.onHand);
    }
    // Figures along the cloth, as far as they do not touch.
    double free = -1e9;
    for (const Length at : begins) {
        const double x = map(Point{at, {}}).x();
        const QString text = length(at, unit);
        if (x < free)
            continue;
        p.setPen(QPen{look.ink, ink::kLine});
        p.drawLine(QPointF{x, below}, QPointF{x, below + 4});
        constexpr double kWidest = 72;
        const double half = std::min(textWidth(text, {type::kBody}), kWidest) / 2;
        label(p, {std::clamp(x, box.left() + half, box.right() - half), below + 12}, text,
              type::kBody, kWidest, false, look.ink);
        free = x + 62;
    }
    p.restore();
}

void drawBacking(QPainter& p, QRectF box, const BackingPlan& plan, const QuiltPlan& quilt,
                 Unit unit, const LayerLook& look) {
    p.save();
    const Size whole = quilt.layers.backing;
    const Mapping map{wholeOf(whole), box.adjusted(kMark + 2, kMark + 2, -kMark - 2, -kMark - 2)};
    const QRectF all = map(wholeOf(whole));
    for (const BackingPanel& panel : plan.panels)
        frame(p, map(panel.area), ink::kBold, look.ink, look.piece());
    const Rect top = topOn(whole, quilt.layers.top);
    p.save();
    p.setClipRect(all);
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen{look.table, ink::kBold, Qt::DotLine, Qt::FlatCap});
    for (const Rect& t : tablesOfFirst(quilt))
        p.drawRect(map(Rect{t.x0 + top.x0, t.y0 + top.y0, t.x1 + top.x0, t.y1 + top.y0}));
    p.restore();
    quiltOutline(p, map, top, look);
    for (const BackingPanel& panel : plan.panels) {
        const QRectF area = map(panel.area);
        QString name = QString::fromStdString(panel.name);
        if (!panel.fabric.empty() && std::min(area.width(), area.height()) > 36)
            name += QStringLiteral(" · ") + QString::fromStdString(panel.fabric);
        caption(p, area, name, size(sizeOf(panel.area), unit), look);
    }
    centreMarks(p, all, look);
    p.restore();
}

void drawBatting(QPainter& p, QRectF box, const BattingPlan& plan, const QuiltPlan& quilt,
                 Unit unit, const LayerLook& look) {
    p.save();
    const Size whole = quilt.layers.batting;
    const Mapping map{wholeOf(whole), box.adjusted(2, 2, -2, -2)};
    frame(p, map(wholeOf(whole)), ink::kBold, look.ink, look.paper);
    quiltOutline(p, map, topOn(whole, quilt.layers.top), look);
    const std::vector<QString> names = pieceNames(plan);
    for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
        const BattingPiecePlaced& piece = plan.pieces[i];
        const bool told = piece.turned && piece.bought < 0; // new batting is cut as it is drawn
        caption(p, map(piece.area), told ? Text::tr("%1, turned").arg(names[i]) : names[i],
                size(sizeOf(piece.area), unit), look);
    }
    // Numbers stand on their joins where they cover neither words nor one another.
    std::vector<QRectF> taken;
    for (const BattingPiecePlaced& piece : plan.pieces) {
        const QRectF r = map(piece.area);
        const bool tall = upright(r);
        const QSizeF words{tall ? 40 : std::min(r.width(), 92.0),
                           tall ? std::min(r.height(), 92.0) : 40};
        taken.push_back({r.center() - QPointF{words.width() / 2, words.height() / 2}, words});
    }
    int n = 0;
    for (const Segment& join : plan.joins) {
        p.setPen(QPen{look.ink, 3, Qt::SolidLine, Qt::FlatCap});
        p.drawLine(map(join.from), map(join.to));
    }
    for (const Segment& join : plan.joins) {
        QRectF ring;
        for (const double at : {0.2, 0.5, 0.35, 0.8, 0.65, 0.1, 0.9, 0.2}) {
            const QPointF c = map(join.from) * (1 - at) + map(join.to) * at;
            ring = {c - QPointF{kRing, kRing}, QSizeF{2 * kRing, 2 * kRing}};
            if (std::ranges::none_of(taken, [&](const QRectF& t) { return t.intersects(ring); }))
                break;
        }
        taken.push_back(ring);
        number(p, ring.center(), ++n, look);
    }
    p.restore();
}

} // namespace bastewright::sheets
