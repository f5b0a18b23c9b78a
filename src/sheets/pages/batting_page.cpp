#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/layer_pictures.h"
#include "sheets/pictures/mapping.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

Flow joins(const SheetContext& c, const BattingPlan& plan) {
    std::vector<std::vector<Cell>> rows;
    int number = 0;
    for (const auto& join : plan.joins) {
        const bool down = join.from.x == join.to.x;
        const Length along = down ? abs(join.to.y - join.from.y) : abs(join.to.x - join.from.x);
        const Length at = down ? join.from.x : join.from.y;
        rows.push_back(
            {Cell::tick(), Cell{QString::number(++number), true},
             Cell{down ? Text::tr("%1 from the left, head to foot").arg(length(at, c.unit()))
                       : Text::tr("%1 from the head, left to right").arg(length(at, c.unit()))},
             Cell{length(along, c.unit())}});
    }
    Flow flow{heading(Text::tr("Join in this order"), c.width)};
    flow.push_back(
        paragraph(Text::tr("Overlap the two, cut once through both, peel the strips away, "
                           "bring the edges together with no gap, then join."),
                  c.width, type::kBody, 2));
    flow.back().keepWithNext = true;
    flow += table({{{}, 0},
                   {Text::tr("Join"), 0, true},
                   {Text::tr("Where"), -1},
                   {Text::tr("Length"), 90, true}},
                  rows, c.width, {.size = type::kCheck, .rowPadding = 3.5});
    return flow;
}

} // namespace

Flow battingPage(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (!q.batting)
        return {};
    const BattingPlan& plan = *q.batting;
    if (plan.pieces.empty() && plan.pack.empty())
        return {};
    Flow flow{title(Text::tr("Batting"),
                    Text::tr("%1 · %2").arg(c.quiltName(quilt), size(q.layers.batting, c.unit())),
                    c.width)};
    flow.front().newPage = true;
    if (!plan.pack.empty())
        flow.push_back(paragraph(
            std::vector<Span>{{Text::tr("Pack: %1").arg(QString::fromStdString(plan.pack)), true}},
            c.width, type::kLead, 8));
    if (!plan.pieces.empty()) {
        const Rect whole{Length{}, Length{}, q.layers.batting.width, q.layers.batting.length};
        // The more joins, the smaller, so that list and strip stay on its page.
        const double share = std::clamp(0.6 - 0.035 * double(plan.joins.size()), 0.3, 0.48);
        flow.push_back({.height = heightFor(whole, c.width, c.height * share) + 4,
                        .before = 8,
                        .draw = [&plan, &q, unit = c.unit()](QPainter& p, QRectF at) {
                            drawBatting(p, at, plan, q, unit);
                        }});
    }
    if (!plan.joins.empty())
        flow += joins(c, plan);
    if (plan.strip > Length{})
        flow.push_back(
            paragraph(Text::tr("Bring %1 of joining strip.").arg(length(plan.strip, c.unit())),
                      c.width, type::kCheck, 8));
    QStringList left;
    for (const auto& name : plan.leftOver)
        left << language::said(name);
    if (!left.isEmpty())
        flow.push_back(
            paragraph(Text::tr("Left over: %1.").arg(listed(left)), c.width, type::kBody, 8));
    flow.push_back(paragraph(Text::tr("Let it rest flat overnight before it is laid."), c.width,
                             type::kBody, 8));
    return flow;
}

} // namespace bastewright::sheets
