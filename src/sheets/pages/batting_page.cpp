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

/// What is cut off a roll, and which leftovers are cut in two.
QStringList cutsOf(const SheetContext& c, const BattingPlan& plan) {
    QStringList out;
    const bool roll = !plan.buy.empty() && plan.buy.front().pack.empty();
    const auto names = pieceNames(plan);
    for (std::size_t i = 0; roll && i < plan.pieces.size(); ++i) {
        const Rect& at = plan.pieces[i].onPiece;
        out << Text::tr("%1, %2 across and %3 along the roll")
                   .arg(names[i], length(at.width(), c.unit()), length(at.length(), c.unit()));
    }
    for (const BattingSplit& s : plan.splits)
        out << (s.acrossWidth ? Text::tr("%1 in two, at %2 of its width")
                              : Text::tr("%1 in two, at %2 of its length"))
                   .arg(QString::fromStdString(s.name), length(s.at, c.unit()));
    return out;
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
    QStringList bring;
    for (const auto& thing : plan.toBring)
        bring << language::said(thing);
    if (!bring.isEmpty())
        flow.push_back(paragraph(
            std::vector<Span>{{Text::tr("Bring %1").arg(bring.join(QLatin1Char(' '))), true}},
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
            paragraph(plan.joinCost.empty()
                          ? Text::tr("Bring %1 of joining strip.").arg(length(plan.strip, c.unit()))
                          : language::said(plan.joinCost),
                      c.width, type::kCheck, 8));
    const QStringList cuts = cutsOf(c, plan);
    if (!cuts.isEmpty())
        flow.push_back(
            paragraph(Text::tr("Cut first: %1.").arg(listed(cuts)), c.width, type::kBody, 8));
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
