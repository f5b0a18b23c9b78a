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

/// ", with a strip 6 in wide, pieced from 3 lengths": what is set in between the lengths.
Sentence withColumn(Sentence text, const Problem& problem, const Column& c) {
    const Sentence wide = core::length(c.width, problem.unit);
    text = c.width <= kWidestUnlisted
               ? core::says("%1, with a strip %2 wide", std::move(text), wide)
               : core::says("%1, with a panel %2 wide", std::move(text), wide);
    const auto& fabrics = problem.rules.fabrics;
    if (c.fabric < 0)
        text = core::says("%1 of another fabric", std::move(text));
    else if (fabrics.size() > 1)
        text = core::says("%1 of %2", std::move(text),
                          clothName(fabrics[std::size_t(c.fabric)], problem.unit));
    return c.blocks() > 1 ? core::says("%1, pieced from %2 lengths", std::move(text), c.blocks())
                          : text;
}

/// "8.50": money, in whatever the person pays.
Sentence money(double amount) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.2f", amount);
    return core::figure(buffer);
}

Sentence seamsMore(int more) {
    switch (more) {
    case 0:
        return core::says("as many seams");
    case 1:
        return core::says("1 seam more");
    case -1:
        return core::says("1 seam fewer");
    default:
        return more > 0 ? core::says("%1 seams more", more) : core::says("%1 seams fewer", -more);
    }
}

} // namespace

Sentence percent(double value) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%g", value);
    return core::figure(buffer);
}

Sentence saleLength(Length bought, Unit unit) {
    if (unit == Unit::inch)
        return core::figure(formatYardsUp(bought));
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.2f m", bought.mm() / 1000.0);
    return core::figure(buffer);
}

Sentence clothName(const Fabric& fabric, Unit unit) {
    return fabric.name.empty()
               ? core::says("fabric %1 wide", core::length(fabric.usableWidth, unit))
               : Sentence{fabric.name};
}

Sentence unlistedText(const Problem& problem, const Layout& layout) {
    return core::says("a strip %1 × %2 of another fabric, in one piece or several",
                      core::length(layout.column->width, problem.unit),
                      core::length(problem.height(layout.along), problem.unit));
}

Sentence purchase(const Problem& problem, const Layout& layout) {
    if (layout.bought == Length{})
        return core::says("nothing to buy");
    const Sentence length = saleLength(layout.bought, problem.unit);
    return isPriced(problem.rules) ? core::says("%1 for %2", length, money(layout.cost)) : length;
}

Sentence difference(const Problem& problem, const Layout& other, const Layout& chosen) {
    const Sentence seams = seamsMore(other.seams - chosen.seams);
    if (isPriced(problem.rules) && other.cost != chosen.cost)
        return other.cost < chosen.cost
                   ? core::says("saves %1, %2", money(chosen.cost - other.cost), seams)
                   : core::says("costs %1 more, %2", money(other.cost - chosen.cost), seams);
    if (other.bought == chosen.bought)
        return core::says("as much fabric, %1", seams);
    return other.bought < chosen.bought
               ? core::says("saves %1, %2", saleLength(chosen.bought - other.bought, problem.unit),
                            seams)
               : core::says("takes %1 more, %2",
                            saleLength(other.bought - chosen.bought, problem.unit), seams);
}

Sentences toBring(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout) {
    Sentences out;
    const Backing& rules = problem.rules;
    for (std::size_t f = 0; f < rules.fabrics.size(); ++f) {
        const Fabric& fabric = rules.fabrics[f];
        int lengths = 0;
        bool used = layout.column && layout.column->fabric == int(f);
        for (std::size_t b = 0; b < bolts.size(); ++b)
            if (bolts[b].fabric == int(f))
                lengths += layout.lengths[b];
        used = used || lengths > 0;
        if (!used)
            continue;
        const Sentence name = clothName(fabric, problem.unit);
        const Sentence wide = core::length(fabric.usableWidth, problem.unit);
        Sentence what =
            layout.buy[f] == Length{} ? core::says("%1 from what we have", name)
            : fabric.onHand > Length{}
                ? core::says("%1 more of %2", saleLength(layout.buy[f], problem.unit), name)
                : core::says("%1 of %2", saleLength(layout.buy[f], problem.unit), name);
        what = core::says("%1, %2 wide without selvages", std::move(what), wide);
        if (lengths > 0)
            what = core::says("%1: %2", std::move(what),
                              lengthsOf(lengths,
                                        core::length(problem.height(layout.along), problem.unit),
                                        nullptr));
        if (rules.squaring > Length{})
            what = core::says("%1, with %2 for squaring each cut end", std::move(what),
                              core::length(rules.squaring, problem.unit));
        if (rules.shrinkPercent > 0)
            what = core::says("%1 and %2 % for shrinking", std::move(what),
                              percent(rules.shrinkPercent));
        out.push_back(core::says("%1.", std::move(what)));
    }
    return out;
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
        text = core::says("%1, one cut lengthwise, half on each side", std::move(text));
    if (layout.column)
        text = withColumn(std::move(text), problem, *layout.column);
    const Sentence bought = purchase(problem, layout);
    if (layout.seams == 0)
        return core::says("%1; %2, no seam", std::move(text), bought);
    return layout.seams == 1
               ? core::says("%1; %2, 1 seam", std::move(text), bought)
               : core::says("%1; %2, %3 seams", std::move(text), bought, layout.seams);
}

} // namespace bastewright::backing
