#include "sheets/pictures/ribbon_pictures.h"

#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/words.h"

#include <QPainter>

#include <cmath>

namespace bastewright::sheets {
namespace {

constexpr double kNumber = 8, kRibbonMark = 5;

struct Ribbon {
    QRectF box;
    double scale; ///< points to the inch
    double y;
    double at(Length l) const { return box.left() + l.in() * scale; }
};

Ribbon ribbonIn(QRectF box, Length longest, double y) {
    const QRectF inner = box.adjusted(12, 0, -12, 0);
    return {inner, inner.width() / std::max(1.0, longest.in()), y};
}

/// The last mark of all, and as much again as the first is in.
Length lengthOf(const std::vector<Length>& a, const std::vector<Length>& b) {
    Length first = Length::inches(1000), last{};
    for (const auto* marks : {&a, &b})
        if (!marks->empty()) {
            first = std::min(first, marks->front());
            last = std::max(last, marks->back());
        }
    return last + std::min(first, last);
}

void band(QPainter& p, const Ribbon& r, Length length) {
    p.setPen(QPen{ink::kDark, ink::kLine});
    p.setBrush(ink::kPaper);
    p.drawRect(QRectF{r.at({}), r.y - kRibbonMark, r.at(length) - r.at({}), 2 * kRibbonMark});
}

/// Numbers of marks and their distances, where they do not run into each other.
void marks(QPainter& p, const Ribbon& r, const std::vector<Length>& of, Unit unit, bool above,
           bool solid, std::optional<std::size_t> chosen = {}) {
    const double way = above ? -1 : 1;
    double free = -1e9, numbered = -1e9;
    for (std::size_t i = 0; i < of.size(); ++i) {
        const double x = r.at(of[i]);
        const bool set = chosen == i;
        QPolygonF tip;
        tip << QPointF{x, r.y} << QPointF{x - 3, r.y + way * (kRibbonMark + 3)}
            << QPointF{x + 3, r.y + way * (kRibbonMark + 3)};
        p.setPen(QPen{ink::kDark, ink::kThin});
        p.setBrush(solid ? ink::kDark : ink::kPaper);
        p.drawPolygon(tip);
        const QString number = QString::number(i + 1);
        const double half = 2.6 * double(number.size());
        if (x - half >= numbered || set) {
            label(p, {x, r.y + way * (kRibbonMark + 9)}, number, int(kNumber) + (set ? 4 : 0), 24,
                  set);
            numbered = x + half + 2;
        }
        const QString text = length(of[i], unit);
        const double wide = 4.6 * double(text.size());
        if (x - wide / 2 < free && !set)
            continue;
        label(p, {x, r.y + way * (kRibbonMark + 20)}, text, int(kNumber), wide + 8, set,
              set ? ink::kDark : ink::kQuiet);
        free = x + wide / 2 + 4;
    }
}

} // namespace

void drawMarksRibbon(QPainter& p, QRectF box, const PinRows& rows, Unit unit) {
    p.save();
    const Length length = lengthOf(rows.ribbons.odd, rows.ribbons.even);
    const Ribbon r = ribbonIn(box, length, box.center().y());
    band(p, r, length);
    marks(p, r, rows.ribbons.odd, unit, true, true);
    if (rows.ribbons.even != rows.ribbons.odd)
        marks(p, r, rows.ribbons.even, unit, false, false);
    p.restore();
}

void drawSideRibbon(QPainter& p, QRectF box, const PinRows& rows, Unit unit,
                    std::optional<std::size_t> row) {
    p.save();
    const Length length = lengthOf(rows.ribbons.side, {});
    const Ribbon r = ribbonIn(box, length, box.center().y());
    band(p, r, length);
    // Odd rows above, as on the other ribbon.
    std::vector<Length> odd, even;
    for (std::size_t i = 0; i < rows.ribbons.side.size(); ++i)
        (i % 2 == 0 ? odd : even).push_back(rows.ribbons.side[i]);
    double free[2] = {-1e9, -1e9};
    for (std::size_t i = 0; i < rows.ribbons.side.size(); ++i) {
        const bool isOdd = i % 2 == 0, set = row == i;
        const double x = r.at(rows.ribbons.side[i]), way = isOdd ? -1 : 1;
        p.setPen(QPen{ink::kDark, set ? ink::kBold * 1.5 : ink::kLine});
        p.drawLine(QPointF{x, r.y - kRibbonMark}, QPointF{x, r.y + kRibbonMark});
        label(p, {x, r.y + way * (kRibbonMark + 8)}, QString::number(i + 1),
              int(kNumber) + (set ? 4 : 0), 24, set || isOdd);
        const QString text = sheets::length(rows.ribbons.side[i], unit);
        const double wide = 4.6 * double(text.size());
        if (x - wide / 2 < free[isOdd ? 0 : 1] && !set)
            continue;
        label(p, {x, r.y + way * (kRibbonMark + 19)}, text, int(kNumber), wide + 8, set,
              set ? ink::kDark : ink::kQuiet);
        free[isOdd ? 0 : 1] = x + wide / 2 + 4;
    }
    p.restore();
}

void drawRows(QPainter& p, QRectF box, const Rect& top, const std::vector<Segment>& seams,
              const PinRows& rows) {
    p.save();
    const Mapping map{top, box.adjusted(16, 14, -16, -14)};
    p.setPen(QPen{ink::kDark, ink::kLine, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin});
    p.setBrush(ink::kPaper);
    p.drawRect(map(top));
    p.setPen(QPen{ink::kRule, ink::kHair});
    for (const Segment& s : seams)
        p.drawLine(map(s.from), map(s.to));
    const RowMarks all{rows};
    const double dot = std::clamp(map.scale() * 0.5, 1.2, 3.0);
    p.setPen(QPen{ink::kDark, ink::kThin});
    for (const auto& [at, mark] : all.all()) {
        p.setBrush(mark.row % 2 == 1 ? ink::kDark : ink::kPaper);
        p.drawEllipse(map(at), dot, dot);
    }
    for (const Point& at : rows.singles)
        p.drawRect(QRectF{map(at).x() - dot, map(at).y() - dot, 2 * dot, 2 * dot});
    const bool across = rows.along == PinRows::Along::width;
    for (std::size_t i = 0; i < rows.lines.size(); ++i) {
        if (i % 2 == 1 && i + 1 < rows.lines.size())
            continue; // odd ones say enough
        const Length at = rows.lines[i].at;
        const QString number = QString::number(i + 1);
        if (across) {
            label(p, map(Point{top.x0, at}) - QPointF{9, 0}, number, 8, 18);
            label(p, map(Point{top.x1, at}) + QPointF{9, 0}, number, 8, 18);
        } else {
            label(p, map(Point{at, top.y0}) - QPointF{0, 8}, number, 8, 18);
            label(p, map(Point{at, top.y1}) + QPointF{0, 8}, number, 8, 18);
        }
    }
    p.restore();
}

void drawBlock(QPainter& p, QRectF box, const PinBlocks& blocks, const Top& top, Length pin) {
    p.save();
    const Length side = blocks.block, sashing = top.grid ? top.grid->sashing : Length{};
    const Rect block{{}, {}, side, side};
    const Mapping map{block.grown(sashing), box.adjusted(4, 4, -4, -4)};
    p.setPen(QPen{ink::kDark, ink::kLine});
    p.setBrush(ink::kPaper);
    if (sashing > Length{})
        p.drawRect(map(block.grown(sashing)));
    p.drawRect(map(block));
    p.setPen(QPen{ink::kRule, ink::kThin});
    if (top.grid) {
        for (const Length x : top.grid->innerX)
            p.drawLine(map(Point{x, {}}), map(Point{x, side}));
        for (const Length y : top.grid->innerY)
            p.drawLine(map(Point{{}, y}), map(Point{side, y}));
    }
    std::vector<Point> all = blocks.inBlock;
    for (int i = 0; i < blocks.perStrip; ++i) {
        const Length along = (2 * i + 1) * side / (2 * blocks.perStrip);
        for (const Length beside : {-sashing / 2, side + sashing / 2}) {
            all.push_back({beside, along});
            all.push_back({along, beside});
        }
    }
    if (blocks.posts)
        for (const Length x : {-sashing / 2, side + sashing / 2})
            for (const Length y : {-sashing / 2, side + sashing / 2})
                all.push_back({x, y});
    const double half = std::max(3.0, map(pin) / 2);
    for (const Point& at : all) {
        p.setPen(QPen{ink::kDark, 2.6, Qt::SolidLine, Qt::RoundCap});
        p.setBrush(ink::kDark);
        if (pin > Length{})
            p.drawLine(map(at) - QPointF{half, 0}, map(at) + QPointF{half, 0});
        else
            p.drawEllipse(map(at), 3, 3);
    }
    p.restore();
}

} // namespace bastewright::sheets
