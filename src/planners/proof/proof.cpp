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
    Finding f;
    f.level = spare < Length{} ? Finding::Level::stop : Finding::Level::warn;
    f.field = "/" + layer.name + (measured ? (across ? "/width" : "/length") : "/overage");
    f.text = "The " + layer.name + " is " + format(has, unit) + (across ? " wide" : " long") +
             (shrinks ? " once it is washed" : "") + " and the top " +
             (needs > top.largest ? "takes up " + format(needs, unit) + ", as it leans"
                                  : format(needs, unit)) +
             ": ";
    if (spare < Length{})
        f.text += format(needs - has, unit) + " too little.";
    else
        f.text += "only " + format(spare, unit) + " to spare on each side, where " +
                  format(layer.overage, unit) + " was asked for.";
    f.cure = "Make it " + format(full - now, unit) + (across ? " wider" : " longer") + ", " +
             format(full, unit) + " in all, or at least " + format(half - now, unit) +
             " more for half of the overage.";
    out.push_back(std::move(f));
}

} // namespace

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
