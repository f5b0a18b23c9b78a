#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/ribbon_strips.h"
#include "sheets/words.h"

#include <QPainter>

namespace bastewright::sheets {
namespace {

/// A line of known length, to see whether the printer kept the size.
Block measure(Unit unit, double width) {
    const Length known = unit == Unit::inch ? Length::inches(4) : Length::millimetres(100);
    const auto words = std::make_shared<TextBlock>(
        std::vector<Span>{{Text::tr("This line is %1.").arg(length(known, unit)), true},
                          {QChar::Space + Text::tr("If yours is not, print at 100 %.")}},
        width, TextStyle{type::kBody});
    return {.height = 14 + words->height(),
            .before = 6,
            .draw = [known, words](QPainter& p, QRectF at) {
                const double end = at.left() + known.in() * kPointsPerInch;
                p.setPen(QPen{Qt::black, 1});
                p.drawLine(QPointF{at.left(), at.top() + 6}, QPointF{end, at.top() + 6});
                for (const double x : {at.left(), end})
                    p.drawLine(QPointF{x, at.top() + 2}, QPointF{x, at.top() + 10});
                words->draw(p, {at.left(), at.top() + 14});
            }};
}

} // namespace

Flow ribbonsPages(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& plan = c.plan.quilts[quilt];
    if (!plan.rows)
        return {};
    Flow flow{
        title(Text::tr("Ribbons"), Text::tr("%1 · true size").arg(c.quiltName(quilt)), c.width)};
    flow.front().newPage = true;
    flow.push_back(measure(c.unit(), c.width));
    flow.push_back(paragraph(
        Text::tr("Lay a ribbon along strip 1, copy one edge, go on at strip 2; or cut the "
                 "strips out and join them. Left edges: where the rows lie, along the "
                 "side. Right edges: marks along a row, black for odd rows, white for "
                 "even ones. Gray: sashing and borders."),
        c.width, type::kBody, 4));
    double head = 12;
    for (const Block& b : flow)
        head += b.height + b.before;
    const Top& top = c.job(quilt).top;
    const Strips strips = stripsFor(*plan.rows, top, c.height - head);
    const double high = strips.each.in() * kPointsPerInch + 2;
    for (int first = 0; first < strips.count; first += stripsBeside(c.width)) {
        flow.push_back({.height = high,
                        .before = 6,
                        .newPage = first > 0,
                        .draw = [&rows = *plan.rows, &top, strips, first](QPainter& p, QRectF at) {
                            drawStrips(p, at, rows, top, strips, first);
                        }});
    }
    return flow;
}

} // namespace bastewright::sheets
