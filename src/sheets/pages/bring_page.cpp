#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/words.h"

#include <QLocale>

#include <cmath>

namespace bastewright::sheets {
namespace {

/// Fabric, strip and tape in eighths of a yard or inch as they are measured, the rest as it is
/// counted.
QString amount(double n, Supply::Kind kind, Unit unit) {
    using enum Supply::Kind;
    const bool measured =
        kind == fabric || kind == battingRoll || kind == tape || kind == joiningStrip;
    if (measured && unit == Unit::inch)
        return QString::fromStdString(format(Length::nearestInches(n), Unit::inch, false));
    return QLocale{}.toString(n, 'f', std::abs(n - std::round(n)) < 0.005 ? 0 : 2);
}

} // namespace

Flow bringPage(const SheetContext& c) {
    if (c.plan.supplies.empty())
        return {};
    std::vector<std::vector<Cell>> rows;
    for (const auto& s : c.plan.supplies) {
        const auto said = [&](double n) { return amount(n, s.kind, c.plan.unit); };
        rows.push_back({Cell::tick(), Cell{language::said(s.item), true}, Cell{said(s.need)},
                        Cell{said(s.have)},
                        s.buy > 0 ? Cell{said(s.buy), true} : Cell{QStringLiteral("–")},
                        Cell{language::said(s.unit)}});
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
    for (const auto& s : c.plan.supplies)
        if (!s.note.empty())
            flow.push_back(
                paragraph(std::vector<Span>{{language::said(s.item) + QStringLiteral(": "), true},
                                            {language::said(s.note), false}},
                          c.width, type::kBody, 6));
    return flow;
}

} // namespace bastewright::sheets
