#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/piece_pictures.h"
#include "sheets/two_columns.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kPictureWidth = 0.34; // of the page's
constexpr double kPictureHeight = 0.3;
constexpr double kBeside = 26, kBetween = 16, kEdge = 4; // white beside and round the tile

/// Points to the inch at which every tile of the quilt fits, so that they are drawn to one scale.
double commonScale(const SheetContext& c, std::size_t q, Length pin) {
    double scale = 1e9;
    for (const auto& p : c.plan.quilts[q].patterns) {
        const double across = (p.tile.width + pin).in(), down = (p.tile.length + pin).in();
        scale = std::min({scale, (c.width * kPictureWidth - 2 * kEdge) / std::max(across, 0.1),
                          (c.height * kPictureHeight - 2 * kEdge) / std::max(down, 0.1)});
    }
    return scale;
}

/// Numbers, from `first` to before `last`, with their distances.
Flow pointList(const SheetContext& c, const PointPattern& pattern, std::size_t first,
               std::size_t last, double width) {
    std::vector<std::vector<Cell>> rows;
    for (std::size_t i = first; i < last; ++i) {
        const Point at = pattern.points[i].at;
        rows.push_back({Cell{QString::number(i + 1), true}, Cell{length(at.x, c.unit())},
                        Cell{length(at.y, c.unit())}});
    }
    if (rows.empty())
        return {};
    return table({{{}, 18, true},
                  {Text::tr("from the left"), -1, true},
                  {Text::tr("from the head"), -1, true}},
                 rows, width, {.rowPadding = 1.5});
}

/// A flow drawn as it stands, never divided.
Block column(Flow flow) {
    double height = 0;
    for (const auto& block : flow)
        height += block.height;
    return {.height = height, .draw = [flow = std::move(flow)](QPainter& p, QRectF at) {
                double y = at.top();
                for (const auto& block : flow) {
                    block.draw(p, {at.left(), y, at.width(), block.height});
                    y += block.height;
                }
            }};
}

/// The tile on the left, its points' distances from the corner beside it in two columns.
Block besideList(const SheetContext& c, const PointPattern& pattern, Length pin, QSizeF picture) {
    const std::size_t half = (pattern.points.size() + 1) / 2;
    const double width = (c.width - picture.width() - kBeside - kBetween) / 2;
    const auto left = std::make_shared<Block>(column(pointList(c, pattern, 0, half, width)));
    const auto right = std::make_shared<Block>(
        column(pointList(c, pattern, half, pattern.points.size(), width)));
    return {.height = std::max(picture.height(), left->height),
            .before = 4,
            .draw = [=, &pattern](QPainter& p, QRectF at) {
                drawPattern(p, {at.topLeft(), picture}, pattern, pin);
                const double x = at.left() + picture.width() + kBeside;
                left->draw(p, {x, at.top(), width, left->height});
                right->draw(p, {x + width + kBetween, at.top(), width, right->height});
            }};
}

Flow patternBlocks(const SheetContext& c, std::size_t q, const PointPattern& pattern) {
    constexpr std::size_t kMost = 48; // beside the picture and on one page with it
    const Length pin = c.with(q) == Basting::With::pins ? c.job(q).basting.pinLength : Length{};
    const double scale = commonScale(c, q, pin);
    const QSizeF picture{scale * (pattern.tile.width + pin).in() + 2 * kEdge,
                         scale * (pattern.tile.length + pin).in() + 2 * kEdge};
    if (pattern.points.size() <= kMost)
        return {besideList(c, pattern, pin, picture)};
    Flow flow{{.height = picture.height(),
               .before = 4,
               .keepWithNext = true,
               .draw = [=, &pattern](QPainter& p, QRectF at) {
                   drawPattern(p, {at.topLeft(), picture}, pattern, pin);
               }}};
    flow.push_back(inTwoColumns(
        pointList(c, pattern, 0, pattern.points.size(), columnWidth(c.width))));
    return flow;
}

/// "Block: 9 pins in each, so".
QString patternTitle(const PointPattern& pattern, Basting::With with) {
    QString name = language::said(pattern.name);
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    return Text::tr("%1: %2 in each, so").arg(name, pointCount(int(pattern.points.size()), with));
}

} // namespace

Flow patternPage(const SheetContext& c, std::size_t quilt) {
    const auto& patterns = c.plan.quilts[quilt].patterns;
    if (patterns.empty())
        return {};
    Flow flow{title(Text::tr("Where each one goes"),
                    Text::tr("%1 · measured from the tile's head-left corner to the middle of each")
                        .arg(c.quiltName(quilt)),
                    c.width)};
    flow.front().newPage = true;
    for (const auto& pattern : patterns) {
        flow.push_back(heading(patternTitle(pattern, c.with(quilt)), c.width));
        const QString times = pattern.times == 1
                                  ? Text::tr("once on the top")
                                  : Text::tr("%1 times on the top").arg(pattern.times);
        flow.push_back(paragraph(Text::tr("%1, %2").arg(size(pattern.tile, c.unit()), times),
                                 c.width, type::kBody, 0));
        flow.back().keepWithNext = true;
        flow += patternBlocks(c, quilt, pattern);
    }
    return flow;
}

} // namespace bastewright::sheets
