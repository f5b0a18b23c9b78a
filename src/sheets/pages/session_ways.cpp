#include "sheets/pages/session_ways.h"

#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/printable.h"
#include "sheets/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

/// The chosen way and the best of the others, in the plan's order.
std::vector<Alternative> foremost(const std::vector<Alternative>& all, std::size_t most) {
    std::vector<Alternative> out;
    for (const auto& a : all)
        if (a.chosen || out.size() < most)
            out.push_back(a);
    return out;
}

/// "4 × 9 lb by 2"
QString liftWords(const Alternative& a, Unit unit) {
    if (!a.workable || a.passes < 2)
        return {};
    return Text::tr("%1 × %2 by %3")
        .arg(a.passes - 1)
        .arg(weight(a.liftKilograms, unit))
        .arg(a.liftPeople);
}

Flow alternatives(const SheetContext& c, std::size_t q, std::size_t most) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    if (quilt.alternatives.size() < 2)
        return {};
    std::vector<std::vector<Cell>> rows;
    for (const auto& a : foremost(quilt.alternatives, most)) {
        const bool b = a.chosen;
        const QString lies = a.quiltLengthAlongLength ? Text::tr("along") : Text::tr("across");
        rows.push_back({Cell{b ? Text::tr("chosen") : QString{}, true},
                        Cell{language::said(a.surface), true}, Cell{lies, b},
                        Cell{startName(a.start), b}, Cell{QString::number(a.passes), b},
                        Cell{a.workable ? span(a.predicted) : Text::tr("out of reach"), b},
                        Cell{liftWords(a, c.plan.unit), b},
                        Cell{a.reach > Length{} ? length(a.reach, c.unit()) : QString{}, b}});
        if (!a.why.empty())
            rows.back().emplace_back(language::said(a.why));
    }
    Flow flow{heading(c.severalQuilts()
                          ? Text::tr("The ways that were weighed: %1").arg(c.quiltName(q))
                          : Text::tr("The ways that were weighed"),
                      c.width)};
    flow += table({{{}, 0},
                   {Text::tr("Table"), -1},
                   {Text::tr("Lies"), 0},
                   {Text::tr("Start"), 0},
                   {Text::tr("Passes"), 0, true},
                   {Text::tr("About"), 0, true},
                   {Text::tr("Lifts"), 0, true},
                   {Text::tr("Reach"), 0, true}},
                  rows, c.width, {.size = type::kSmall, .rowPadding = 2, .together = 3});
    if (const auto more = quilt.alternatives.size() - rows.size(); more > 0)
        flow.push_back(paragraph(Text::tr("and %1 more that take longer").arg(more), c.width,
                                 type::kSmall, 3));
    return flow;
}

Flow help(const SheetContext& c) {
    if (c.plan.help.empty())
        return {};
    std::vector<std::vector<Cell>> rows;
    for (const auto& h : c.plan.help) {
        const QString passes =
            h.passesSaved == 1 ? Text::tr("1 pass") : Text::tr("%1 passes").arg(h.passesSaved);
        rows.push_back({Cell{language::said(h.change)}, Cell{span(h.saved), true},
                        Cell{h.passesSaved > 0 ? passes : QString{}}});
    }
    Flow flow{heading(Text::tr("What would help most"), c.width)};
    flow += table({{Text::tr("Change"), -1}, {Text::tr("Saves"), 0, true}, {{}, 0, true}}, rows,
                  c.width, {.rowPadding = 2, .together = kAllRows});
    return flow;
}

} // namespace

Flow waysWeighed(const SheetContext& c, std::size_t most) {
    Flow flow;
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q)
        flow += alternatives(c, q, most);
    flow += help(c);
    return flow;
}

} // namespace bastewright::sheets
