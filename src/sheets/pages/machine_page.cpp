#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/piece_pictures.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

/// The zone the top's middle lies in; on a boundary the one towards head and left.
const Zone* middleZone(const QuiltPlan& quilt) {
    const Point middle{quilt.layers.top.width / 2, quilt.layers.top.length / 2};
    const auto found = std::ranges::find_if(
        quilt.zones, [&](const Zone& zone) { return zone.area.contains(middle); });
    return found == quilt.zones.end() ? nullptr : &*found;
}

/// "in the 4th of 7 columns", "between columns 3 and 4 of 6".
QString middleOf(int count, const QString& in, const QString& between) {
    return count % 2 == 1 ? in.arg((count + 1) / 2).arg(count)
                          : between.arg(count / 2).arg(count / 2 + 1).arg(count);
}

QString byBlocks(const BlockGrid& grid) {
    return Text::tr("By the blocks: %1, %2.")
        .arg(middleOf(grid.columns, Text::tr("in column %1 of %2 from the left"),
                      Text::tr("between columns %1 and %2 of %3 from the left")),
             middleOf(grid.rows, Text::tr("in row %1 of %2 from the head"),
                      Text::tr("between rows %1 and %2 of %3 from the head")));
}

Flow startPoint(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    const Size top = q.layers.top;
    QString where = Text::tr("the middle of the top, %1 from the left and right edges, %2 from the "
                             "head and foot edges")
                        .arg(length(top.width / 2, c.unit()), length(top.length / 2, c.unit()));
    if (const Zone* zone = middleZone(q))
        where = Text::tr("%1; zone %2 of pass %3").arg(where, zoneWord(zone->id)).arg(zone->pass);
    QString find = Text::tr("Fold each side edge to edge, or measure, and mark the four middles "
                            "with a thread. The lines between opposite marks cross at the start.");
    if (const auto& grid = c.job(quilt).top.grid)
        find = Text::tr("%1 %2").arg(find, byBlocks(*grid));
    return facts({{Text::tr("Start"), where},
                  {Text::tr("Find it"), find},
                  {Text::tr("Then"), Text::tr("from the start outwards, the half under the arm "
                                              "first; then turn the quilt end for end and quilt "
                                              "the other half.")}},
                 c.width, 70);
}

/// The roll that goes through the throat first: the thinner one, of equal ones the later listed.
std::size_t underTheArm(const std::vector<Roll>& rolls) {
    std::size_t best = 0;
    for (std::size_t i = 0; i < rolls.size(); ++i)
        if (rolls[i].diameter <= rolls[best].diameter)
            best = i;
    return best;
}

Flow rollTable(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    const auto& throat = c.job(quilt).machine.throat;
    std::vector<std::vector<Cell>> rows;
    for (const auto& roll : q.machineRolls) {
        const bool arm = std::size_t(&roll - q.machineRolls.data()) == underTheArm(q.machineRolls);
        const QString fits = !throat                    ? Text::tr("throat not given")
                             : roll.diameter <= *throat ? Text::tr("fits the throat")
                                                        : Text::tr("too thick for the throat");
        rows.push_back(
            {Cell::tick(), Cell{sideName(roll.side), true}, Cell{length(roll.rolled, c.unit())},
             Cell{length(roll.diameter, c.unit())},
             Cell{roll.clipHolds > Length{}
                      ? Text::tr("%1 of %2").arg(roll.clips).arg(length(roll.clipHolds, c.unit()))
                      : Text::tr("%1, none we have is large enough").arg(roll.clips)},
             Cell{arm ? Text::tr("under the arm, right of the needle; %1").arg(fits)
                      : Text::tr("on the table, left of the needle; after the turn under the "
                                 "arm; %1")
                            .arg(fits)}});
    }
    return table({{{}, 0},
                  {Text::tr("Side"), 0},
                  {Text::tr("Roll up"), 0, true},
                  {Text::tr("Thickness"), 0, true},
                  {Text::tr("Clips"), -2},
                  {Text::tr("At the machine"), -3}},
                 rows, c.width, {.size = type::kBody, .rowPadding = 4, .together = kAllRows});
}

/// Where it starts, then each roll, side by side.
Block pictures(const SheetContext& c, const QuiltPlan& q) {
    return {.height = 190,
            .before = 8,
            .keepWithNext = true,
            .draw = [&q, unit = c.unit()](QPainter& p, QRectF at) {
                const Rect top{Length{}, Length{}, q.layers.top.width, q.layers.top.length};
                const double each = at.width() / double(q.machineRolls.size() + 1);
                const auto box = [&](std::size_t i) {
                    return QRectF{at.left() + each * double(i), at.top(), each, at.height()};
                };
                drawStartPoint(p, box(0), top, length(top.width() / 2, unit),
                               length(top.length() / 2, unit));
                for (std::size_t i = 0; i < q.machineRolls.size(); ++i)
                    drawMachineRoll(p, box(i + 1), top, q.machineRolls[i]);
            }};
}

} // namespace

Flow machinePage(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (q.machineRolls.empty())
        return {};
    const auto& throat = c.job(quilt).machine.throat;
    // Stands with the counts where it fits: both belong to the end of the work.
    Flow flow{heading(Text::tr("Roll for the machine"), c.width)};
    flow.front().before = 28;
    flow.front().newPage = countsPage(c, quilt).empty();
    flow.push_back(paragraph(
        throat
            ? Text::tr("%1. The throat is %2: never more than half of the quilt goes through it.")
                  .arg(c.quiltName(quilt), length(*throat, c.unit()))
            : Text::tr("%1. Never more than half of the quilt goes through the throat.")
                  .arg(c.quiltName(quilt)),
        c.width, type::kBody, 2));
    flow += startPoint(c, quilt);
    flow.push_back(pictures(c, q));
    flow += rollTable(c, quilt);
    for (auto& block : flow) // all of it or none of it beside the counts
        block.keepWithNext = &block != &flow.back();
    return flow;
}

} // namespace bastewright::sheets
