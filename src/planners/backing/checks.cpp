#include "planners/backing/checks.h"

#include "planners/backing/layout.h"

#include <algorithm>
#include <cstdio>

namespace bastewright::backing {
namespace {

std::string percent(double value) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%g", value);
    return buffer;
}

} // namespace

Findings checkInput(const Backing& rules, Size needed, Unit unit) {
    Findings out;
    const auto stop = [&](std::string field, std::string text, std::string cure = {}) {
        out.push_back({Finding::Level::stop, std::move(field), std::move(text), std::move(cure)});
    };
    const auto text = [&](Length l) { return format(l, unit); };

    if (needed.width <= Length{} || needed.length <= Length{})
        stop("/top", "The backing would be " + text(needed.width) + " × " + text(needed.length) +
                         "; a size above 0 each way is accepted.");
    if (rules.seam < Length{})
        stop("/backing/seam",
             "The seam allowance is " + text(rules.seam) + "; 0 or more is accepted.");
    if (rules.shrinkPercent < 0 || rules.shrinkPercent >= 50)
        stop("/backing/shrink_percent",
             "Shrinkage is " + percent(rules.shrinkPercent) + " %; 0 to less than 50 is accepted.");
    if (rules.squaring < Length{})
        stop("/backing/squaring",
             "Squaring takes " + text(rules.squaring) + "; 0 or more is accepted.");
    if (rules.repeat < Length{})
        stop("/backing/repeat", "The repeat is " + text(rules.repeat) + "; 0 or more is accepted.");
    if (!out.empty())
        return out;

    for (std::size_t i = 0; i < rules.fabrics.size(); ++i) {
        const Fabric& f = rules.fabrics[i];
        if (std::ranges::find(rules.fabrics, f.name, &Fabric::name) - rules.fabrics.begin() <
            std::ptrdiff_t(i))
            stop("/backing/fabrics/" + std::to_string(i) + "/name",
                 "Two cloths are called '" + f.name + "'; a name of its own for each is accepted.",
                 "Name them apart, for example by colour or by length on hand.");
        const std::string at = "/backing/fabrics/" + std::to_string(i);
        const Length least = kLeastStrip + 2 * rules.seam;
        if (f.usableWidth < least)
            stop(at + "/usable_width", "The usable width is " + text(f.usableWidth) +
                                           "; at least " + text(least) +
                                           " is accepted with this seam allowance.");
        else if (rules.overage > f.usableWidth)
            stop("/backing/overage", "The overage of " + text(rules.overage) +
                                         " a side is wider than the cloth of " +
                                         text(f.usableWidth) + "; less than that is accepted.");
        if (f.onHand < Length{})
            stop(at + "/on_hand",
                 "The length on hand is " + text(f.onHand) + "; 0 or more is accepted.");
        if (f.price < 0)
            stop(at + "/price", "The price is below 0; 0 or more is accepted.");
    }
    return out;
}

} // namespace bastewright::backing
