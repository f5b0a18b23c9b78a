#include "planners/backing/wording.h"

#include <algorithm>
#include <cstdio>

namespace bastewright::backing {
namespace {

/// "2 lengths of 88 in", with the cloth where there are several.
Sentence lengthsOf(int n, Sentence each, const Sentence* cloth) {
    if (!cloth)
        return n == 1 ? core::says("1 length of %1", std::move(each))
                      : core::says("%2 lengths of %1", std::move(each), n);
    return n == 1 ? core::says("1 length of %1 of %2", std::move(each), *cloth)
                  : core::says("%3 lengths of %1 of %2", std::move(each), *cloth, n);
}

/// ", with a column 6 in wide of another cloth": what is set into the lengths.
Sentence withColumn(Sentence text, const Problem& problem, const Column& c) {
    const Sentence wide = core::length(c.width, problem.unit);
    text = c.width <= kWidestUnlisted
               ? core::says("%1, with a column %2 wide", std::move(text), wide)
               : core::says("%1, with a panel %2 wide", std::move(text), wide);
    const auto& fabrics = problem.rules.fabrics;
    if (c.fabric < 0)
        text = core::says("%1 of another cloth", std::move(text));
    else if (fabrics.size() > 1)
        text = core::says("%1 of %2", std::move(text),
                          clothName(fabrics[std::size_t(c.fabric)], problem.unit));
    return c.blocks() > 1 ? core::says("%1 pieced from %2 blocks", std::move(text), c.blocks())
                          : text;
}

} // namespace

Sentence saleLength(Length bought, Unit unit) {
    if (unit == Unit::inch)
        return core::figure(formatYardsUp(bought));
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.2f m", bought.mm() / 1000.0);
    return core::figure(buffer);
}

Sentence clothName(const Fabric& fabric, Unit unit) {
    return fabric.name.empty() ? core::says("cloth of %1", core::length(fabric.usableWidth, unit))
                               : Sentence{fabric.name};
}

Sentence unlistedText(const Problem& problem, const Layout& layout) {
    return core::says("a column %1 × %2 of another cloth, in one piece or several",
                      core::length(layout.column->width, problem.unit),
                      core::length(problem.height(layout.along), problem.unit));
}

Sentence purchase(const Problem& problem, const Layout& layout) {
    return layout.bought == Length{} ? core::says("nothing to buy")
                                     : saleLength(layout.bought, problem.unit);
}

Sentence describe(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout) {
    const auto& fabrics = problem.rules.fabrics;
    Sentence text;
    for (int f = 0; f < int(fabrics.size()); ++f) {
        int n = 0;
        for (std::size_t b = 0; b < bolts.size(); ++b)
            n += bolts[b].fabric == f ? layout.lengths[b] : 0;
        if (n == 0)
            continue;
        const Sentence cloth = clothName(fabrics[std::size_t(f)], problem.unit);
        const Sentence these =
            lengthsOf(n, core::length(problem.height(layout.along), problem.unit),
                      fabrics.size() > 1 ? &cloth : nullptr);
        text = text.empty() ? these : core::says("%1 and %2", text, these);
    }
    text = layout.along ? core::says("%1 along the quilt", std::move(text))
                        : core::says("%1 across the quilt", std::move(text));
    if (layout.splitBolt >= 0)
        text = core::says("%1, one split into two flanks", std::move(text));
    if (layout.column)
        text = withColumn(std::move(text), problem, *layout.column);
    const Sentence bought = purchase(problem, layout);
    if (layout.seams == 0)
        return core::says("%1; %2, no seam", std::move(text), bought);
    return layout.seams == 1 ? core::says("%1; %2, 1 seam", std::move(text), bought)
                             : core::says("%1; %2, %3 seams", std::move(text), bought, layout.seams);
}

} // namespace bastewright::backing
