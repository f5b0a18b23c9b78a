#include "planners/proof/proof.h"

#include <array>

namespace bastewright {
namespace {

struct Layer {
    std::string name; ///< "batting"; also the field's name
    Size size;
    Length overage; ///< asked for, per side
    bool widthMeasured = false, lengthMeasured = false;
};

void proveOneWay(const Layer& layer, bool across, Size top, Unit unit, Findings& out) {
    const Length has = across ? layer.size.width : layer.size.length;
    const Length needs = across ? top.width : top.length;
    const Length spare = (has - needs) / 2;
    if (spare * 2 >= layer.overage)
        return;
    const bool measured = across ? layer.widthMeasured : layer.lengthMeasured;
    const std::string way = across ? "wide" : "long";
    Finding f;
    f.level = spare < Length{} ? Finding::Level::stop : Finding::Level::warn;
    f.field = "/" + layer.name + (measured ? (across ? "/width" : "/length") : "/overage");
    f.text = "The " + layer.name + " is " + format(has, unit) + " " + way + " and the top " +
             format(needs, unit) + ": ";
    if (spare < Length{})
        f.text += format(needs - has, unit) + " too little.";
    else
        f.text += "only " + format(spare, unit) + " to spare on each side, where " +
                  format(layer.overage, unit) + " was asked for.";
    const Length full = needs + 2 * layer.overage;
    f.cure = "Make it " + format(full - has, unit) + (across ? " wider" : " longer") + ", " +
             format(full, unit) + " in all, or at least " +
             format(needs - has + layer.overage, unit) + " more for half of the overage.";
    out.push_back(std::move(f));
}

} // namespace

Findings proveSizes(const Job& job, const LayerSizes& layers) {
    Findings out;
    const std::array all{Layer{"batting", layers.batting, job.batting.overage,
                               job.batting.width.has_value(), job.batting.length.has_value()},
                         Layer{"backing", layers.backing, job.backing.overage,
                               job.backing.width.has_value(), job.backing.length.has_value()}};
    for (const Layer& layer : all)
        for (const bool across : {true, false})
            proveOneWay(layer, across, layers.top, job.unit, out);
    return out;
}

} // namespace bastewright
