#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/task_words.h"
#include "sheets/words.h"
#include "ways/way.h"

namespace bastewright::sheets {

Flow countsPage(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (q.zones.empty() || !wayOf(c.with(quilt)).fromBox)
        return {}; // nothing comes back
    std::vector<std::vector<Cell>> rows;
    int total = 0;
    for (const auto& pass : q.passes) {
        const int n = pointsIn(q, pass.number);
        total += n;
        rows.push_back({Cell{Text::tr("Pass %1").arg(pass.number), true},
                        Cell{zoneList(pass.zones)}, Cell{QString::number(n)}, Cell::write(),
                        Cell::write()});
    }
    rows.push_back({Cell{Text::tr("All"), true}, Cell{}, Cell{QString::number(total), true},
                    Cell::write(), Cell::write()});
    Flow flow{title(Text::tr("Pins into the quilt, pins back"),
                    Text::tr("%1 · count out for each pass, and back as they leave the quilt")
                        .arg(c.quiltName(quilt)),
                    c.width)};
    flow.front().newPage = true;
    flow += table({{Text::tr("Pass"), 0},
                   {Text::tr("Zones"), -1},
                   {Text::tr("Planned"), 58, true},
                   {Text::tr("Into the quilt"), 90},
                   {Text::tr("Counted back"), 90}},
                  rows, c.width, {.size = type::kCheck, .rowPadding = 7});
    return flow;
}

} // namespace bastewright::sheets
