#include "checker/layer_rect.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <array>
#include <optional>

namespace bastewright::check {
namespace {

/// One lower layer with what was asked of it.
struct Layer {
    std::string_view name;
    Size size;
    Length overage;
    std::optional<Length> measuredWidth, measuredLength;
    double left; ///< of what was measured, once it is washed
    PerSide<Length> Pass::*spare;
    PerSide<Length> Pass::*overhang;
};

std::array<Layer, 2> lowerLayers(const QuiltView& v) {
    const Batting& batting = v.job.batting;
    const Backing& backing = v.job.backing;
    return {Layer{"batting", v.quilt.layers.batting, batting.overage, batting.width, batting.length,
                  1, &Pass::battingSpare, &Pass::battingOverhang},
            Layer{"backing", v.quilt.layers.backing, backing.overage, backing.width, backing.length,
                  backing.washed ? 1 : (100 - backing.shrinkPercent) / 100, &Pass::backingSpare,
                  &Pass::backingOverhang}};
}

/// How far a top that leans reaches beyond its sides: its far edge lies aside by the lean when the
/// near one lies straight. From the law of cosines, once for each diagonal.
Size reachOf(const QuiltView& v) {
    Size out{v.top.width(), v.top.length()};
    const auto& diagonals = v.job.top.diagonals;
    if (diagonals.size() != 2)
        return out;
    const double w = out.width.in(), l = out.length.in();
    const double longer = std::max(diagonals[0].in(), diagonals[1].in());
    const double shorter = std::min(diagonals[0].in(), diagonals[1].in());
    const double cosine = (longer - shorter) * (longer + shorter) / (4 * w * l);
    out.width += Length::nearestInches(l * cosine);
    out.length += Length::nearestInches(w * cosine);
    return out;
}

} // namespace

void layersTop(const QuiltView& v, Report& report) {
    const Unit unit = v.plan.unit;
    const Size top{v.top.width(), v.top.length()};
    if (v.quilt.layers.top != top)
        report.add(where(v) / "layers/top",
                   v.label() + ": the top is said to be " + figure(v.quilt.layers.top.width, unit) +
                       " by " + figure(v.quilt.layers.top.length, unit) +
                       "; its largest readings are " + figure(top.width, unit) + " by " +
                       figure(top.length, unit) + ".");
}

void layersSizes(const QuiltView& v, Report& report) {
    const Unit unit = v.plan.unit;
    const Size top{v.top.width(), v.top.length()};
    for (const Layer& layer : lowerLayers(v)) {
        const auto way = [&](std::string_view what, Length size, Length under,
                             const std::optional<Length>& measured) {
            const std::string says = v.label() + ": the " + std::string{what} + " of the " +
                                     std::string{layer.name} + " is " + figure(size, unit) + "; ";
            if (measured &&
                abs(size - Length::nearestInches(measured->in() * layer.left)) > kHalving)
                report.add(where(v) / "layers" / layer.name / what,
                           says + "it was measured as " + figure(*measured, unit) +
                               (layer.left < 1 ? ", and shrinks yet." : "."));
            if (!measured && size < under + 2 * layer.overage - kHalving)
                report.add(where(v) / "layers" / layer.name / what,
                           says + "the top and the overage on both sides are " +
                               figure(under + 2 * layer.overage, unit) + ".");
        };
        way("width", layer.size.width, top.width, layer.measuredWidth);
        way("length", layer.size.length, top.length, layer.measuredLength);
    }
}

void layersShort(const QuiltView& v, Report& report) {
    const Unit unit = v.plan.unit;
    const Size top = reachOf(v);
    for (const Layer& layer : lowerLayers(v)) {
        const Length spare =
            std::min(layer.size.width - top.width, layer.size.length - top.length) / 2;
        const std::string says = v.label() + ": the " + std::string{layer.name} + " has " +
                                 figure(spare, unit) + " to spare on a side";
        const auto said = [&](Finding::Level level) {
            return v.tells(Finding::Kind::layerShort, layer.name, level);
        };
        if (spare < -kHalving && !said(Finding::Level::stop))
            report.add(where(v) / "layers" / layer.name,
                       says + ", less than none, and the plan does not stop for it.");
        else if (spare < layer.overage / 2 - kHalving && !said(Finding::Level::warn))
            report.add(where(v) / "layers" / layer.name,
                       says + ", less than half of the " + figure(layer.overage, unit) +
                           " that were asked, and the plan does not warn of it.");
        if (const Finding* stop = said(Finding::Level::stop); stop != nullptr && spare > kHalving)
            report.add(Pointer{}.in("findings", v.plan.findings, *stop) / "level",
                       says + ", and the plan stops for it.");
    }
}

void layersSpare(const QuiltView& v, Report& report) {
    const Size top = reachOf(v);
    const Unit unit = v.plan.unit;
    struct Way {
        std::string_view key;
        Length Size::*size;
        std::array<Side, 2> sides;
    };
    constexpr std::array kWays{Way{"width", &Size::width, {Side::left, Side::right}},
                               Way{"length", &Size::length, {Side::head, Side::foot}}};
    for (const Layer& layer : lowerLayers(v))
        for (const Way& way : kWays) {
            const Length expected = (layer.size.*way.size - top.*way.size) / 2;
            const auto isOff = [&](const Pass& p, Side side) {
                return abs((p.*layer.spare)[side] - expected) > kHalving;
            };
            // Where no pass has it anywhere, it is the layer that is said otherwise.
            const auto hasNone = [&](const Pass& p) {
                return std::ranges::all_of(way.sides, [&](Side s) { return isOff(p, s); });
            };
            if (!v.quilt.passes.empty() && std::ranges::all_of(v.quilt.passes, hasNone)) {
                report.add(where(v) / "layers" / layer.name / way.key,
                           v.label() + ": the " + std::string{layer.name} + " is " +
                               figure(layer.size.*way.size, unit) + " in its " +
                               std::string{way.key} + ", which leaves " + figure(expected, unit) +
                               " to spare on both sides; no pass is said to have that.");
                continue;
            }
            for (const Pass& p : v.quilt.passes)
                for (const Side side : way.sides)
                    if (isOff(p, side))
                        report.add(where(v, p) / "spare" / layer.name / name(side),
                                   label(v, p) + ": the " + std::string{layer.name} +
                                       " is said to have " + figure((p.*layer.spare)[side], unit) +
                                       " to spare at the " + std::string{name(side)} +
                                       "; its size gives " + figure(expected, unit) + ".");
        }
}

void layersOverhang(const QuiltView& v, Report& report) {
    const auto compare = [&](std::string_view layer, const Rect& area,
                             PerSide<Length> Pass::*said) {
        for (const Pass& p : v.quilt.passes)
            for (const Side side : kSides) {
                const Length expected = overhang(area, p.table, side);
                if (abs((p.*said)[side] - expected) > kHalving)
                    report.add(where(v, p) / "overhang" / layer / name(side),
                               label(v, p) + ": the " + std::string{layer} + " is said to reach " +
                                   figure((p.*said)[side], v.plan.unit) +
                                   " beyond the table at the " + std::string{name(side)} +
                                   "; its place gives " + figure(expected, v.plan.unit) + ".");
            }
    };
    compare("top", v.top, &Pass::topOverhang);
    for (const Layer& layer : lowerLayers(v))
        compare(layer.name, layerRect(v.top, layer.size), layer.overhang);
}

} // namespace bastewright::check
