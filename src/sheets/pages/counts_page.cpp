#include "plan/find.h"
#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/words.h"
#include "ways/way.h"

namespace bastewright::sheets {

Flow countsPage(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    const Job& job = c.job(quilt);
    std::vector<std::vector<Cell>> rows;
    int total = 0;
    for (const auto& pass : q.passes) {
        int n = 0;
        std::vector<std::string> zones;
        for (const std::string& id : pass.zones)
            if (const Zone* zone = findZone(q, id); zone && wayOf(job, *zone).fromBox) {
                n += int(zone->points.size());
                zones.push_back(id);
            }
        if (n == 0)
            continue;
        total += n;
        rows.push_back({Cell{Text::tr("Pass %1").arg(pass.number), true}, Cell{zoneList(zones)},
                        Cell{QString::number(n)}, Cell::write(), Cell::write()});
    }
    if (rows.empty())
        return {}; // nothing comes back
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
