#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/piece_pictures.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

/// Points to the inch at which every tile of the quilt fits, so that they are drawn to one scale.
double commonScale(const std::vector<PointPattern>& patterns, double width, double height) {
    double scale = 1e9;
    for (const auto& p : patterns)
        scale = std::min({scale, width / std::max(p.tile.width.in(), 0.1),
                          height / std::max(p.tile.length.in(), 0.1)});
    return scale;
}

/// The tile on the left, its points' distances from the corner on the right.
Block patternBlock(const SheetContext& c, std::size_t q, const PointPattern& pattern) {
    const double pictureWidth = c.width * 0.44;
    const double scale = commonScale(c.plan.quilts[q].patterns, pictureWidth - 8, c.height * 0.26);
    const double pictureHeight = scale * pattern.tile.length.in() + 8;
    const double drawnWidth = scale * pattern.tile.width.in() + 8;
    std::vector<std::vector<Cell>> rows;
    int number = 0;
    for (const auto& point : pattern.points)
        rows.push_back({Cell{QString::number(++number), true}, Cell{length(point.at.x, c.unit())},
                        Cell{length(point.at.y, c.unit())}});
    const double listWidth = c.width - pictureWidth - 26;
    auto list = std::make_shared<Flow>(table({{{}, 24, true},
                                              {Text::tr("from the left"), -1, true},
                                              {Text::tr("from the head"), -1, true}},
                                             rows, listWidth, {.rowPadding = 1.5}));
    double listHeight = 0;
    for (const auto& b : *list)
        listHeight += b.height;
    const Length pin = c.with(q) == Basting::With::pins ? c.job(q).basting.pinLength : Length{};
    return {.height = std::max(pictureHeight, listHeight),
            .before = 4,
            .draw = [=, &pattern](QPainter& p, QRectF at) {
                drawPattern(p, {at.topLeft(), QSizeF{drawnWidth, pictureHeight}}, pattern, pin);
                double y = at.top();
                for (const auto& b : *list) {
                    b.draw(p, {at.right() - listWidth, y, listWidth, b.height});
                    y += b.height;
                }
            }};
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
        flow.push_back(patternBlock(c, quilt, pattern));
    }
    return flow;
}

} // namespace bastewright::sheets
