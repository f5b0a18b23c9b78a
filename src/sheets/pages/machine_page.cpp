#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/piece_pictures.h"
#include "sheets/words.h"

#include <QPainter>

namespace bastewright::sheets {

Flow machinePage(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (q.machineRolls.empty())
        return {};
    const auto& throat = c.job(quilt).machine.throat;
    std::vector<std::vector<Cell>> rows;
    for (const auto& roll : q.machineRolls) {
        const QString fits = !throat                    ? Text::tr("throat not given")
                             : roll.diameter <= *throat ? Text::tr("fits the throat")
                                                        : Text::tr("too thick for the throat");
        rows.push_back(
            {Cell::tick(), Cell{sideName(roll.side), true}, Cell{length(roll.rolled, c.unit())},
             Cell{length(roll.diameter, c.unit())},
             Cell{roll.clipHolds > Length{}
                      ? Text::tr("%1 of %2").arg(roll.clips).arg(length(roll.clipHolds, c.unit()))
                      : Text::tr("%1, none on hand is large enough").arg(roll.clips)},
             Cell{fits}});
    }
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
    flow.back().keepWithNext = true;
    flow.push_back(
        {.height = 210, .before = 10, .keepWithNext = true, .draw = [&q](QPainter& p, QRectF at) {
             const Rect top{Length{}, Length{}, q.layers.top.width, q.layers.top.length};
             const double each = at.width() / double(q.machineRolls.size());
             for (std::size_t i = 0; i < q.machineRolls.size(); ++i)
                 drawMachineRoll(p, {at.left() + each * double(i), at.top(), each, at.height()},
                                 top, q.machineRolls[i]);
         }});
    flow += table({{{}, 0},
                   {Text::tr("Side"), 0},
                   {Text::tr("Roll up"), 0, true},
                   {Text::tr("Thickness"), 0, true},
                   {Text::tr("Clips"), -1},
                   {Text::tr("Throat"), -1}},
                  rows, c.width, {.size = type::kBody, .rowPadding = 4});
    return flow;
}

} // namespace bastewright::sheets
