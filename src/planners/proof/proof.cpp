#include "planners/proof/proof.h"

#include <array>

namespace bastewright {
namespace {

struct Layer {
    std::string name; ///< "batting"; also the field's name
    Size size;
    Length overage; ///< asked for, per side
    bool widthMeasured = false, lengthMeasured = false;
    double left = 1; ///< of a measured size, once it is washed
};

/// The top in one direction: its largest reading, and what it takes up.
struct Reach {
    Length largest, taken;
};

Sentence measuredAs(bool batting, bool across, bool onceWashed, const Sentence& size) {
    if (batting)
        return across ? core::says("The batting is %1 wide", size)
                      : core::says("The batting is %1 long", size);
    if (onceWashed)
        return across ? core::says("The backing is %1 wide once it is washed", size)
                      : core::says("The backing is %1 long once it is washed", size);
    return across ? core::says("The backing is %1 wide", size)
                  : core::says("The backing is %1 long", size);
}

void proveOneWay(const Layer& layer, bool across, Reach top, Unit unit, Findings& out) {
    const Length has = across ? layer.size.width : layer.size.length;
    const Length needs = top.taken;
    const Length spare = (has - needs) / 2;
    if (spare * 2 >= layer.overage)
        return;
    const bool measured = across ? layer.widthMeasured : layer.lengthMeasured;
    const bool shrinks = measured && layer.left < 1;
    // What must be measured before washing so that so much is left, to the next 64th of an inch.
    const auto before = [&](Length after) {
        return shrinks ? Length::inch64ths(std::int64_t(after.in() / layer.left * 64) + 1) : after;
    };
    const Length now = before(has), full = before(needs + 2 * layer.overage),
                 half = before(needs + layer.overage);
    const auto length = [&](Length l) { return core::length(l, unit); };
    const Sentence isTop =
        needs > top.largest ? core::says("the top, which is not square, takes up %1", length(needs))
                            : core::says("the top %1", length(needs));
    const Sentence sizes = core::says(
        "%1 and %2", measuredAs(layer.name == "batting", across, shrinks, length(has)), isTop);
    Finding f;
    f.kind = Finding::Kind::layerShort;
    f.subject = layer.name;
    f.level = spare < Length{} ? Finding::Level::stop : Finding::Level::warn;
    f.field = "/" + layer.name + (measured ? (across ? "/width" : "/length") : "/overage");
    f.text = spare < Length{}
                 ? core::says("%1: %2 too little.", sizes, length(needs - has))
                 : core::says("%1: only %2 of overage on each side, where %3 was asked for.", sizes,
                              length(spare), length(layer.overage));
    const Sentence more = length(full - now), all = length(full), least = length(half - now);
    f.cure = across ? core::says("Make it %1 wider (%2). It just does with %3 more, which leaves "
                                 "half of the overage.",
                                 more, all, least)
                    : core::says("Make it %1 longer (%2). It just does with %3 more, which leaves "
                                 "half of the overage.",
                                 more, all, least);
    out.push_back(std::move(f));
}

} // namespace

LayerSpare spareOf(const Top& top, Size layer) {
    const Rect flat = topRect(top), taken = topEnvelope(top);
    const auto one = [](Length has, Length wide, Length takes) {
        return SpareLeft{(has - wide) / 2, (takes - wide) / 2};
    };
    return {one(layer.width, flat.width(), taken.width()),
            one(layer.length, flat.length(), taken.length())};
}

Findings proveSizes(const Job& job, const LayerSizes& layers) {
    Findings out;
    const std::array all{Layer{"batting", layers.batting, job.batting.overage,
                               job.batting.width.has_value(), job.batting.length.has_value()},
                         Layer{"backing", layers.backing, job.backing.overage,
                               job.backing.width.has_value(), job.backing.length.has_value(),
                               job.backing.washed ? 1 : 1 - job.backing.shrinkPercent / 100}};
    const Rect reach = topEnvelope(job.top);
    for (const Layer& layer : all)
        for (const bool across : {true, false})
            proveOneWay(layer, across,
                        across ? Reach{layers.top.width, reach.width()}
                               : Reach{layers.top.length, reach.length()},
                        job.unit, out);
    return out;
}

} // namespace bastewright
