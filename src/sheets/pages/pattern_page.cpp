#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/piece_pictures.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kPictureWidth = 0.44; // of the page's
constexpr double kPictureHeight = 0.26;
constexpr double kBeside = 26, kEdge = 4; // white between picture and list, and round the tile

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

Flow pointList(const SheetContext& c, const PointPattern& pattern, double width) {
    std::vector<std::vector<Cell>> rows;
    for (const auto& point : pattern.points)
        rows.push_back({Cell{QString::number(rows.size() + 1), true},
                        Cell{length(point.at.x, c.unit())}, Cell{length(point.at.y, c.unit())}});
    return table({{{}, 24, true},
                  {Text::tr("from the left"), -1, true},
                  {Text::tr("from the head"), -1, true}},
                 rows, width, {.rowPadding = 1.5});
}

/// The same block in the right-hand column of a page.
Block onTheRight(Block block, double width) {
    auto inner = std::make_shared<Block>(std::move(block));
    return {.height = inner->height,
            .repeat = inner->repeat ? std::make_shared<Block>(onTheRight(*inner->repeat, width))
                                    : nullptr,
            .draw = [inner, width](QPainter& p, QRectF at) {
                inner->draw(p, {at.right() - width, at.top(), width, inner->height});
            }};
}

/// The tile on the left, its points' distances from the corner on the right; a list longer than the
/// picture runs on by itself.
Flow patternBlocks(const SheetContext& c, std::size_t q, const PointPattern& pattern) {
    const Length pin = c.with(q) == Basting::With::pins ? c.job(q).basting.pinLength : Length{};
    const double scale = commonScale(c, q, pin);
    const QSizeF picture{scale * (pattern.tile.width + pin).in() + 2 * kEdge,
                         scale * (pattern.tile.length + pin).in() + 2 * kEdge};
    const double listWidth = c.width * (1 - kPictureWidth) - kBeside;
    Flow list = pointList(c, pattern, listWidth);
    auto beside = std::make_shared<Flow>();
    double listHeight = 0;
    std::size_t next = 0;
    for (; next < list.size() && listHeight < picture.height(); ++next) {
        listHeight += list[next].height;
        beside->push_back(onTheRight(list[next], listWidth));
    }
    Flow flow{{.height = std::max(picture.height(), listHeight),
               .before = 4,
               .draw = [=, &pattern](QPainter& p, QRectF at) {
                   drawPattern(p, {at.topLeft(), picture}, pattern, pin);
                   double y = at.top();
                   for (const auto& b : *beside) {
                       b.draw(p, {at.left(), y, at.width(), b.height});
                       y += b.height;
                   }
               }}};
    for (; next < list.size(); ++next)
        flow.push_back(onTheRight(std::move(list[next]), listWidth));
    return flow;
}

/// "Block: 9 pins in each, so".
QString patternTitle(const PointPattern& pattern, Basting::With with) {
    QString name = QString::fromStdString(pattern.name);
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
