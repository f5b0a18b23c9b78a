#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/layer_pictures.h"
#include "sheets/pictures/mapping.h"
#include "sheets/words.h"

#include <QPainter>

namespace bastewright::sheets {
namespace {

Flow cuts(const SheetContext& c, const BackingPlan& plan, const std::string& fabric) {
    std::vector<std::vector<Cell>> rows;
    int number = 0;
    for (const auto& cut : plan.cuts)
        if (cut.fabric == fabric)
            rows.push_back({Cell::tick(), Cell{QString::number(++number), true},
                            Cell{QString::fromStdString(cut.piece)},
                            Cell{length(cut.onCloth.width(), c.unit())},
                            Cell{length(cut.onCloth.length(), c.unit())},
                            Cell{length(cut.onCloth.y0, c.unit())}});
    return table({{{}, 0},
                  {Text::tr("Cut"), 0, true},
                  {Text::tr("Piece"), -1},
                  {Text::tr("Across the fabric"), 90, true},
                  {Text::tr("Along the fabric"), 90, true},
                  {Text::tr("Begins at"), 80, true}},
                 rows, c.width, {.size = type::kCheck, .rowPadding = 3.5});
}

QString buyWords(const BackingPlan& plan) {
    if (plan.buy.empty())
        return Text::tr("Nothing to buy: the fabric on hand makes it.");
    QStringList words;
    for (const auto& thing : plan.toBring)
        words << language::said(thing);
    return Text::tr("Bring %1").arg(words.join(QLatin1Char(' ')));
}

} // namespace

Flow clothPage(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (!q.backing || q.backing->panels.empty())
        return {};
    const BackingPlan& plan = *q.backing;
    Flow flow{title(Text::tr("Fabric for the backing"),
                    Text::tr("%1 · finished %2 · lengths of fabric run %3 the quilt")
                        .arg(c.quiltName(quilt), size(q.layers.backing, c.unit()),
                             plan.along ? Text::tr("along") : Text::tr("across")),
                    c.width)};
    flow.front().newPage = true;
    flow.push_back(paragraph(std::vector<Span>{{buyWords(plan), true}}, c.width, type::kLead, 8));
    for (const ClothLength& cloth : clothsOf(c.job(quilt), plan)) {
        flow.push_back(heading(
            cloth.fabric.empty()
                ? Text::tr("Cut in this order")
                : Text::tr("%1: cut in this order").arg(QString::fromStdString(cloth.fabric)),
            c.width));
        flow.push_back({.height = heightFor(extentOf(cloth), c.width, 150) + 24,
                        .before = 6,
                        .keepWithNext = true,
                        .draw = [=, &plan, unit = c.unit()](QPainter& p, QRectF at) {
                            drawCloth(p, at, plan, cloth, unit);
                        }});
        flow += cuts(c, plan, cloth.fabric);
    }
    flow.push_back(heading(Text::tr("Sewn together"), c.width));
    const Rect whole{Length{}, Length{}, q.layers.backing.width, q.layers.backing.length};
    flow.push_back({.height = heightFor(whole, c.width * 0.7, 250) + 18,
                    .before = 6,
                    .keepWithNext = true,
                    .draw = [&plan, &q, unit = c.unit()](QPainter& p, QRectF at) {
                        drawBacking(p, at, plan, q, unit);
                    }});
    flow.push_back(
        paragraph(Text::tr("Dashed: the quilt. Dotted: the tables of the first pass. The "
                           "triangles lie on the marks at the middles of the table."),
                  c.width, type::kBody, 4));
    flow.back().keepWithNext = true;
    for (const auto& [what, words] : {std::pair{Text::tr("Least to buy"), plan.leastBought},
                                      std::pair{Text::tr("Next best"), plan.runnerUp},
                                      std::pair{Text::tr("Nearly"), plan.nearestMiss}})
        if (!words.empty()) {
            flow.push_back(paragraph(std::vector<Span>{{what + QStringLiteral(": "), true},
                                                       {language::said(words), false}},
                                     c.width, type::kBody, 8));
            flow.back().keepWithNext = true;
        }
    flow.back().keepWithNext = false;
    return flow;
}

} // namespace bastewright::sheets
