#include "planners/backing/wording.h"

#include <algorithm>
#include <cstdio>

namespace bastewright::backing {
namespace {

std::string counted(int n, const std::string& one, const std::string& many) {
    return std::to_string(n) + " " + (n == 1 ? one : many);
}

} // namespace

std::string saleLength(Length bought, Unit unit) {
    if (unit == Unit::inch)
        return formatYardsUp(bought);
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.2f m", bought.mm() / 1000.0);
    return buffer;
}

std::string clothName(const Fabric& fabric, Unit unit) {
    return fabric.name.empty() ? "cloth of " + format(fabric.usableWidth, unit) : fabric.name;
}

std::string unlistedText(const Problem& problem, const Layout& layout) {
    return "a column " + format(layout.column->width, problem.unit) + " × " +
           format(problem.height(layout.along), problem.unit) +
           " of another cloth, in one piece or several";
}

std::string purchase(const Problem& problem, const Layout& layout) {
    return layout.bought == Length{} ? "nothing to buy" : saleLength(layout.bought, problem.unit);
}

std::string describe(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout) {
    const auto& fabrics = problem.rules.fabrics;
    const auto named = [&](int fabric) {
        return " of " + clothName(fabrics[std::size_t(fabric)], problem.unit);
    };
    std::string text;
    for (int f = 0; f < int(fabrics.size()); ++f) {
        int n = 0;
        for (std::size_t b = 0; b < bolts.size(); ++b)
            n += bolts[b].fabric == f ? layout.lengths[b] : 0;
        if (n == 0)
            continue;
        if (!text.empty())
            text += " and ";
        text += counted(n, "length", "lengths") + " of " +
                format(problem.height(layout.along), problem.unit);
        if (fabrics.size() > 1)
            text += named(f);
    }
    text += layout.along ? " along the quilt" : " across the quilt";
    if (layout.splitBolt >= 0)
        text += ", one split into two flanks";
    if (layout.column) {
        const Column& c = *layout.column;
        const bool narrow = c.width <= kWidestUnlisted;
        text += narrow ? ", with a column " : ", with a panel ";
        text += format(c.width, problem.unit) + " wide";
        if (c.fabric < 0)
            text += " of another cloth";
        else if (fabrics.size() > 1)
            text += named(c.fabric);
        if (c.blocks() > 1)
            text += " pieced from " + std::to_string(c.blocks()) + " blocks";
    }
    return text + "; " + purchase(problem, layout) + ", " +
           (layout.seams == 0 ? std::string{"no seam"} : counted(layout.seams, "seam", "seams"));
}

} // namespace bastewright::backing
