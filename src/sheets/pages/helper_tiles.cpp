#include "sheets/pages/helper_tiles.h"

#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/pictures/piece_pictures.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <iterator>
#include <set>

namespace bastewright::sheets {
namespace {

constexpr double kTallest = 80, kLow = 50, kWidest = 104, kCaption = 84, kGap = 12, kPad = 4;

/// The kinds that matter most by eye: those that hold most of the points.
std::vector<const PointPattern*> chosen(const QuiltPlan& quilt, std::size_t most) {
    std::vector<const PointPattern*> out;
    for (const auto& p : quilt.patterns)
        if (p.times > 1 || quilt.patterns.size() <= most)
            out.push_back(&p);
    std::ranges::stable_sort(out, std::ranges::greater{}, [](const PointPattern* p) {
        return p->times * int(p->points.size());
    });
    if (out.size() > most)
        out.resize(most);
    return out;
}

/// One tile with its name and count below.
struct Tile {
    const PointPattern* pattern;
    Length pin;
    QSizeF size;
    std::shared_ptr<TextBlock> caption;
    double width() const { return std::max(size.width(), caption->naturalWidth()); }
};

/// The tiles of one quilt, all to one scale. `named`: with the quilt's name.
std::vector<Tile> tilesOfQuilt(const SheetContext& c, std::size_t q, std::size_t most,
                               bool named) {
    const auto patterns = chosen(c.plan.quilts[q], most);
    const Length pin = c.with(q) == Basting::With::pins ? c.job(q).basting.pinLength : Length{};
    const double tallest = most == 1 ? kLow : kTallest;
    double scale = 1e9;
    for (const auto* p : patterns)
        scale = std::min({scale, kWidest / std::max((p->tile.width + pin).in(), 0.1),
                          tallest / std::max((p->tile.length + pin).in(), 0.1)});
    std::vector<Tile> tiles;
    for (const auto* p : patterns) {
        QString name = language::said(p->name);
        if (named)
            name = Text::tr("%1, %2").arg(name, c.quiltName(q));
        tiles.push_back({p, pin,
                         {scale * (p->tile.width + pin).in() + 2 * kPad,
                          scale * (p->tile.length + pin).in() + 2 * kPad},
                         std::make_shared<TextBlock>(
                             std::vector<Span>{{pointCount(int(p->points.size()), c.with(q)), true},
                                               {QChar::Space + name}},
                             named ? kWidest : kCaption, TextStyle{type::kBody})});
    }
    return tiles;
}

Block rowOf(const std::vector<Tile>& tiles) {
    double high = 0, below = 0;
    for (const auto& t : tiles) {
        high = std::max(high, t.size.height());
        below = std::max(below, t.caption->height());
    }
    return {.height = high + below + 2, .before = 3, .draw = [=](QPainter& p, QRectF at) {
                double x = at.left();
                for (const auto& t : tiles) {
                    drawPattern(p, {{x, at.top() + high - t.size.height()}, t.size}, *t.pattern,
                                t.pin, false);
                    t.caption->draw(p, {x, at.top() + high + 2});
                    x += t.width() + kGap;
                }
            }};
}

/// The same, lower: names beside the tiles.
Block lowRowOf(const std::vector<Tile>& tiles) {
    double high = 0;
    for (const auto& t : tiles)
        high = std::max({high, t.size.height(), t.caption->height()});
    return {.height = high, .before = 3, .draw = [=](QPainter& p, QRectF at) {
                double x = at.left();
                for (const auto& t : tiles) {
                    drawPattern(p, {{x, at.top()}, t.size}, *t.pattern, t.pin, false);
                    x += t.size.width() + 6;
                    t.caption->draw(p, {x, at.top()});
                    x += t.caption->naturalWidth() + kGap;
                }
            }};
}

/// As many tiles in a row as fit.
Flow rowsOf(std::vector<Tile> tiles, const QString& title, double width,
            const ChecklistStyle& style) {
    if (tiles.empty())
        return {};
    const bool low = style.tiles == 1;
    const auto closed = low ? lowRowOf : rowOf;
    Flow flow{heading(title, width, style.heading())};
    flow.back().before = 7;
    std::vector<Tile> row;
    double x = 0;
    for (auto& tile : tiles) {
        if (!row.empty() && x + tile.width() > width) {
            flow.push_back(closed(std::move(row)));
            row.clear();
            x = 0;
        }
        x += (low ? tile.size.width() + 6 + tile.caption->naturalWidth() : tile.width()) + kGap;
        row.push_back(std::move(tile));
    }
    flow.push_back(closed(std::move(row)));
    return flow;
}

} // namespace

Flow tilesOf(const SheetContext& c, const std::vector<Stretch>& all, double width,
             const ChecklistStyle& style) {
    std::set<std::size_t> quilts;
    for (const auto& s : all)
        for (const Task* t : s.tasks)
            if (t->kind == TaskKind::placeOpen || t->kind == TaskKind::dotLower ||
                t->kind == TaskKind::dotUpper)
                quilts.insert(s.quilt);
    const QString where = Text::tr("Where each one goes");
    Flow flow;
    std::vector<Tile> together;
    for (const std::size_t q : quilts) {
        auto tiles = tilesOfQuilt(c, q, style.tiles, c.severalQuilts() && style.tiles == 1);
        if (style.tiles == 1)
            std::ranges::move(tiles, std::back_inserter(together));
        else
            flow += rowsOf(std::move(tiles),
                           c.severalQuilts() ? Text::tr("%1: %2").arg(where, c.quiltName(q))
                                             : where,
                           width, style);
    }
    flow += rowsOf(std::move(together), where, width, style);
    return flow;
}

} // namespace bastewright::sheets
