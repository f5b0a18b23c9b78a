#include "planners/backing/checks.h"

#include "planners/backing/layout.h"
#include "planners/backing/wording.h"

#include <algorithm>

namespace bastewright::backing {
namespace {

/// Narrower cloth cannot be sewn true.
constexpr Length kNarrowestCloth = Length::inches(2);

} // namespace

Findings checkInput(const Backing& rules, Size needed, Unit unit) {
    Findings out;
    const auto stop = [&](std::string field, Sentence text, Sentence cure = {}) {
        out.push_back({Finding::Kind::input, Finding::Level::stop, std::move(field),
                       std::move(text), std::move(cure)});
    };
    const auto text = [&](Length l) { return core::length(l, unit); };

    if (needed.width <= Length{} || needed.length <= Length{})
        stop("/top",
             core::says("The backing would be %1 × %2; a size above 0 each way is accepted.",
                        text(needed.width), text(needed.length)));
    if (rules.seam < Length{})
        stop("/backing/seam",
             core::says("The seam allowance is %1; 0 or more is accepted.", text(rules.seam)));
    if (rules.shrinkPercent < 0 || rules.shrinkPercent >= 50)
        stop("/backing/shrink_percent",
             core::says("Shrinkage is %1 %; 0 to less than 50 is accepted.",
                        percent(rules.shrinkPercent)));
    if (rules.leastPiece <= Length{})
        stop("/backing/least_piece",
             core::says("The narrowest piece is %1; more than 0 is accepted.",
                        text(rules.leastPiece)));
    if (rules.seamWorth < Length{})
        stop("/backing/seam_worth",
             core::says("A seam is worth %1 of fabric; 0 or more is accepted.",
                        text(rules.seamWorth)));
    if (rules.squaring < Length{})
        stop("/backing/squaring",
             core::says("Squaring takes %1; 0 or more is accepted.", text(rules.squaring)));
    if (rules.repeat < Length{})
        stop("/backing/repeat",
             core::says("The repeat is %1; 0 or more is accepted.", text(rules.repeat)));
    if (!out.empty())
        return out;

    for (std::size_t i = 0; i < rules.fabrics.size(); ++i) {
        const Fabric& f = rules.fabrics[i];
        if (std::ranges::find(rules.fabrics, f.name, &Fabric::name) - rules.fabrics.begin() <
            std::ptrdiff_t(i))
            stop("/backing/fabrics/" + std::to_string(i) + "/name",
                 core::says("Two cloths are called '%1'; a name of its own for each is accepted.",
                            f.name),
                 core::says("Name them apart, for example by color or by length."));
        const std::string at = "/backing/fabrics/" + std::to_string(i);
        const Length least = kNarrowestCloth + 2 * rules.seam;
        if (f.usableWidth < least)
            stop(at + "/usable_width",
                 core::says("The usable width is %1; at least %2 is accepted with "
                            "this seam allowance.",
                            text(f.usableWidth), text(least)));
        else if (rules.overage > f.usableWidth)
            stop("/backing/overage",
                 core::says("The overage of %1 a side is wider than the fabric of %2; enter less.",
                            text(rules.overage), text(f.usableWidth)));
        if (f.onHand < Length{})
            stop(at + "/on_hand",
                 core::says("The length we have is %1; enter 0 or more.", text(f.onHand)));
        if (f.price < 0)
            stop(at + "/price", core::says("The price is below 0; 0 or more is accepted."));
    }
    return out;
}

} // namespace bastewright::backing
