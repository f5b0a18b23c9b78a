#include "planners/backing/checks.h"

#include "planners/backing/layout.h"

#include <algorithm>

namespace bastewright::backing {

Findings checkInput(const Backing& rules, Size needed, Unit unit) {
    Findings out;
    const auto stop = [&](std::string field, std::string text, std::string cure = {}) {
        out.push_back({Finding::Level::stop, std::move(field), std::move(text), std::move(cure)});
    };
    const auto text = [&](Length l) { return format(l, unit); };

    if (needed.width <= Length{} || needed.length <= Length{})
        stop("/top", "the backing would be " + text(needed.width) + " × " + text(needed.length) +
                         "; a size above 0 each way is accepted");
    if (rules.seam < Length{})
        stop("/backing/seam",
             "the seam allowance is " + text(rules.seam) + "; 0 or more is accepted");
    if (rules.shrinkPercent < 0 || rules.shrinkPercent >= 50)
        stop("/backing/shrink_percent", "shrinkage is " + std::to_string(rules.shrinkPercent) +
                                            " %; 0 to less than 50 is accepted");
    if (rules.squaring < Length{})
        stop("/backing/squaring",
             "squaring takes " + text(rules.squaring) + "; 0 or more is accepted");
    if (rules.repeat < Length{})
        stop("/backing/repeat", "the repeat is " + text(rules.repeat) + "; 0 or more is accepted");
    if (!out.empty())
        return out;

    for (std::size_t i = 0; i < rules.fabrics.size(); ++i) {
        const Fabric& f = rules.fabrics[i];
        if (std::ranges::find(rules.fabrics, f.name, &Fabric::name) - rules.fabrics.begin() <
            std::ptrdiff_t(i))
            stop("/backing/fabrics/" + std::to_string(i) + "/name",
                 "two cloths are called '" + f.name + "'; a name of its own for each is accepted",
                 "Name them apart, for example by colour or by length on hand.");
        const std::string at = "/backing/fabrics/" + std::to_string(i);
        const Length least = kLeastStrip + 2 * rules.seam;
        if (f.usableWidth < least)
            stop(at + "/usable_width", "the usable width is " + text(f.usableWidth) +
                                           "; at least " + text(least) +
                                           " is accepted with this seam allowance");
        else if (rules.overage > f.usableWidth)
            stop("/backing/overage", "the overage of " + text(rules.overage) +
                                         " a side is wider than the cloth of " +
                                         text(f.usableWidth) + "; less than that is accepted");
        if (f.onHand < Length{})
            stop(at + "/on_hand",
                 "the length on hand is " + text(f.onHand) + "; 0 or more is accepted");
        if (f.price < 0)
            stop(at + "/price", "the price is below 0; 0 or more is accepted");
    }
    return out;
}

} // namespace bastewright::backing
