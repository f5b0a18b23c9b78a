#include "sheets/two_columns.h"

#include "sheets/ink.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kBetween = 18;

double heightOf(const PlacedPage& column) {
    return column.empty() ? 0 : column.back().y + column.back().block.height;
}

/// True where one of the first two columns ends in a heading.
bool parted(const std::vector<PlacedPage>& columns) {
    for (std::size_t i = 0; i + 1 < columns.size() && i < 2; ++i)
        if (columns[i].back().block.keepWithNext)
            return true;
    return false;
}

/// The least height at which the flow makes no more than two columns.
double evenHeight(const Flow& flow, double most) {
    constexpr double kStep = 3;
    double sum = 0;
    for (const auto& block : flow)
        sum += block.before + block.height;
    double height = std::min(sum / 2, most);
    for (; height < most; height += kStep)
        if (const auto columns = paginate(flow, height); columns.size() <= 2 && !parted(columns))
            return height;
    return most;
}

Block sideBySide(PlacedPage left, PlacedPage right) {
    const double height = std::max(heightOf(left), heightOf(right));
    return {.height = height,
            .draw = [height, columns = std::vector{std::move(left), std::move(right)}](QPainter& p,
                                                                                       QRectF at) {
                const double width = columnWidth(at.width());
                double x = at.left();
                for (const PlacedPage& column : columns) {
                    for (const auto& placed : column)
                        placed.block.draw(p, {x, at.top() + placed.y, width, placed.block.height});
                    x += width + kBetween;
                }
                p.setPen(QPen{ink::kRule, ink::kHair});
                const double middle = at.left() + width + kBetween / 2;
                p.drawLine(QPointF{middle, at.top() + 4}, QPointF{middle, at.top() + height});
            }};
}

} // namespace

double columnWidth(double width) {
    return (width - kBetween) / 2;
}

Block inTwoColumns(Flow flow) {
    Block block;
    block.columns = std::make_shared<const Flow>(std::move(flow));
    return block;
}

ColumnCut cutColumns(const Flow& flow, double height) {
    auto columns = paginate(flow, height);
    if (columns.size() <= 2)
        columns = paginate(flow, evenHeight(flow, height));
    const bool bad = parted(columns);
    const bool again = columns.size() > 2 && columns[2].front().again;
    columns.resize(2);
    std::ptrdiff_t taken = 0;
    for (const auto& column : columns)
        taken += std::ranges::count(column, false, &Placed::again);
    ColumnCut cut{sideBySide(std::move(columns[0]), std::move(columns[1])),
                  Flow(flow.begin() + taken, flow.end()), bad};
    if (again)
        cut.rest.insert(cut.rest.begin(), *cut.rest.front().repeat);
    return cut;
}

} // namespace bastewright::sheets
