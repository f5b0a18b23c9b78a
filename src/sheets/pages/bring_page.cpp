#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/words.h"

#include <cmath>

namespace bastewright::sheets {
namespace {

/// Cloth and strip in eighths of a yard or inch as they are measured, the rest as it is counted.
QString amount(double n, const std::string& unit) {
    if (unit == "yd" || unit == "in")
        return QString::fromStdString(format(Length::nearestInches(n), Unit::inch, false));
    return QString::number(n, 'f', std::abs(n - std::round(n)) < 0.005 ? 0 : 2);
}

} // namespace

Flow bringPage(const SheetContext& c) {
    if (c.plan.supplies.empty())
        return {};
    std::vector<std::vector<Cell>> rows;
    for (const auto& s : c.plan.supplies) {
        const QString unit = QString::fromStdString(s.unit);
        rows.push_back({Cell::tick(), Cell{QString::fromStdString(s.item), true},
                        Cell{amount(s.need, s.unit)}, Cell{amount(s.have, s.unit)},
                        s.buy > 0 ? Cell{amount(s.buy, s.unit), true} : Cell{QStringLiteral("–")},
                        Cell{unit}});
    }
    Flow flow{title(Text::tr("Bring"),
                    Text::tr("what the plan needs, what is in the box, what is still to buy"),
                    c.width)};
    flow.front().newPage = true;
    flow += table({{{}, 0},
                   {Text::tr("What"), -1},
                   {Text::tr("Need"), 58, true},
                   {Text::tr("Have"), 58, true},
                   {Text::tr("Buy"), 58, true},
                   {{}, 90}},
                  rows, c.width, {.size = type::kCheck, .rowPadding = 5});
    return flow;
}

} // namespace bastewright::sheets
