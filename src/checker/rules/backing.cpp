#include "checker/geometry/partition.h"
#include "checker/rules/packs.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/rules.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <map>

namespace bastewright::check {
namespace {

/// The finished backing that the panels make up.
Rect whole(const BackingPlan& plan) {
    Rect out{};
    for (const BackingPanel& p : plan.panels) {
        out.x1 = std::max(out.x1, p.area.x1);
        out.y1 = std::max(out.y1, p.area.y1);
    }
    return out;
}

/// Without fabrics in the job a cloth of 40 in usable width is assumed (common practice: 40 to 42).
const Fabric* fabric(const QuiltView& v, std::string_view name) {
    static const Fabric kAssumed{};
    const auto& all = v.job.backing.fabrics;
    if (all.empty())
        return &kAssumed;
    const auto it = std::ranges::find(all, name, &Fabric::name);
    return it == all.end() ? nullptr : &*it;
}

Length bought(const BackingPlan& plan, std::string_view name) {
    Length out{};
    for (const BackingPurchase& p : plan.buy)
        if (p.fabric == name)
            out += p.length;
    return out;
}

std::string label(const QuiltView& v, const ClothCut& cut) {
    return v.label() + ": the cut for '" + cut.piece + "' at " + box(cut.onCloth, v.plan.unit);
}

Pointer where(const QuiltView& v, const ClothCut& cut) {
    return where(v).in("backing/cuts", v.quilt.backing->cuts, cut);
}

/// The cloth a finished measure takes: an allowance at each of its sewn ends.
Length uncut(const QuiltView& v, Interval finished, Interval backing) {
    return finished.size() + v.job.backing.seam * ((finished.lo > backing.lo ? 1 : 0) +
                                                   (finished.hi < backing.hi ? 1 : 0));
}

} // namespace

void backingPanels(const QuiltView& v, Report& report) {
    if (!v.quilt.backing)
        return;
    const Unit unit = v.plan.unit;
    std::vector<Rect> areas;
    for (const BackingPanel& p : v.quilt.backing->panels)
        areas.push_back(p.area);
    const Rect all = whole(*v.quilt.backing);
    if (const auto fault = partitionFault(all, areas))
        report.add(where(*fault, where(v) / "backing/panels", areas),
                   v.label() + ": the panels do not make the backing: " + text(*fault, unit));
    const Size asked{v.job.backing.width.value_or(v.quilt.layers.backing.width),
                     v.job.backing.length.value_or(v.quilt.layers.backing.length)};
    if (abs(all.width() - asked.width) > kHalving || abs(all.length() - asked.length) > kHalving)
        report.add(where(v) / "backing/panels",
                   v.label() + ": the panels make a backing of " + figure(all.width(), unit) +
                       " by " + figure(all.length(), unit) + "; it must be " +
                       figure(asked.width, unit) + " by " + figure(asked.length, unit) + ".");
}

void backingCuts(const QuiltView& v, Report& report) {
    if (!v.quilt.backing)
        return;
    const auto& cuts = v.quilt.backing->cuts;
    for (const ClothCut& cut : cuts) {
        const Fabric* cloth = fabric(v, cut.fabric);
        if (cloth == nullptr) {
            report.add(where(v, cut) / "fabric", label(v, cut) + " is from '" + cut.fabric +
                                                     "', which the job does not list.");
            continue;
        }
        const Rect& at = cut.onCloth;
        const Length usable = washed(cloth->usableWidth, v.job.backing.shrinkPercent);
        if (at.empty() || at.x0 < Length{} || at.x1 > usable + kHalving || at.y0 < Length{})
            report.add(where(v, cut), label(v, cut) + " does not lie on cloth of " +
                                          figure(usable, v.plan.unit) + " usable width.");
        if (v.job.backing.oneWay && cut.turned)
            report.add(where(v, cut) / "turned",
                       label(v, cut) + " is turned, but the print has one way up.");
    }
    for (auto a = cuts.begin(); a != cuts.end(); ++a)
        for (auto b = std::next(a); b != cuts.end(); ++b)
            if (a->fabric == b->fabric && a->onCloth.overlaps(b->onCloth))
                report.add(where(v) / "backing/cuts", label(v, *a) + " and that for '" + b->piece +
                                                          "' at " + box(b->onCloth, v.plan.unit) +
                                                          " share cloth.");
}

void backingPieces(const QuiltView& v, Report& report) {
    if (!v.quilt.backing)
        return;
    const BackingPlan& plan = *v.quilt.backing;
    const Rect all = whole(plan);
    for (const BackingPanel& p : plan.panels) {
        const auto same = [&](const ClothCut& c) { return c.piece == p.name; };
        const auto number = std::ranges::count_if(plan.cuts, same);
        if (number != 1) {
            report.add(where(v).in("backing/panels", plan.panels, p),
                       v.label() + ": panel '" + p.name + "' is cut " + std::to_string(number) +
                           " times.");
            continue;
        }
        const ClothCut& cut = *std::ranges::find_if(plan.cuts, same);
        Length across = uncut(v, p.area.x(), all.x()), along = uncut(v, p.area.y(), all.y());
        if (plan.along == cut.turned)
            std::swap(across, along);
        if (cut.fabric != p.fabric || abs(cut.onCloth.width() - across) > kFine ||
            abs(cut.onCloth.length() - along) > kFine)
            report.add(where(v, cut),
                       label(v, cut) + " from '" + cut.fabric + "' does not make its panel of '" +
                           p.fabric + "', which takes " + figure(across, v.plan.unit) +
                           " across and " + figure(along, v.plan.unit) + " along the cloth.");
    }
    for (const ClothCut& cut : plan.cuts)
        if (std::ranges::find(plan.panels, cut.piece, &BackingPanel::name) == plan.panels.end())
            report.add(where(v, cut) / "piece", label(v, cut) + " is for no panel.");
}

void backingBought(const QuiltView& v, Report& report) {
    if (!v.quilt.backing)
        return;
    const BackingPlan& plan = *v.quilt.backing;
    const Unit unit = v.plan.unit;
    for (const BackingPurchase& p : plan.buy) {
        const Fabric* cloth = fabric(v, p.fabric);
        if (cloth == nullptr || !cloth->buyable)
            report.add(where(v).in("backing/buy", plan.buy, p) / "fabric",
                       v.label() + ": '" + p.fabric + "' cannot be bought.");
        const Length step = soldBy(v);
        if (p.length <= Length{} || p.length.nm() % step.nm() != 0)
            report.add(where(v).in("backing/buy", plan.buy, p) / "length",
                       v.label() + ": " + figure(p.length, unit) + " of '" + p.fabric +
                           "' are to be bought; cloth is sold by " + figure(step, unit) + ".");
    }
    for (const ClothCut& cut : plan.cuts) {
        const Fabric* cloth = fabric(v, cut.fabric);
        if (cloth == nullptr)
            continue;
        // The length on hand and the bought one are two cloths; the second is drawn from where the
        // first ended before it was washed.
        const Interval lies =
            cut.onHand
                ? Interval{{}, washed(cloth->onHand, v.job.backing.shrinkPercent)}
                : Interval{cloth->onHand, cloth->onHand + washed(bought(plan, cut.fabric),
                                                                 v.job.backing.shrinkPercent)};
        if (cut.onCloth.y0 < lies.lo - kHalving || cut.onCloth.y1 > lies.hi + kHalving)
            report.add(where(v, cut), label(v, cut) + " does not lie on the " +
                                          (cut.onHand ? "length on hand" : "bought length") + ", " +
                                          figure(lies.lo, unit) + " to " + figure(lies.hi, unit) +
                                          ".");
    }
}

void backingCentre(const QuiltView& v, Report& report) {
    if (!v.quilt.backing || v.job.backing.centreSeam)
        return;
    const Rect all = whole(*v.quilt.backing);
    for (const BackingPanel& p : v.quilt.backing->panels)
        for (const auto& [end, middle, way] :
             {std::tuple{p.area.x1, all.middle().x, "from head to foot"},
              std::tuple{p.area.y1, all.middle().y, "across"}})
            if (abs(end - middle) <= kHalving)
                report.add(where(v).in("backing/panels", v.quilt.backing->panels, p),
                           v.label() + ": a seam of panel '" + p.name + "' runs " + way +
                               " on the centre line of the quilt.");
}

void backingNarrow(const QuiltView& v, Report& report) {
    if (!v.quilt.backing)
        return;
    // Where no layout does without narrow pieces, the plan says so, and strips may then be trimmed.
    const bool mayBeNarrow = v.tells(Finding::Kind::backingNarrow) != nullptr;
    const bool mayBeTrimmed = mayBeNarrow || v.tells(Finding::Kind::backingTrimmed) != nullptr;
    const Rect all = whole(*v.quilt.backing);
    const Backing& rules = v.job.backing;
    const Unit unit = v.plan.unit;
    for (const BackingPanel& p : v.quilt.backing->panels) {
        const std::string says = v.label() + ": panel '" + p.name + "' at " + box(p.area, unit);
        const Pointer there = where(v).in("backing/panels", v.quilt.backing->panels, p);
        // A panel from edge to edge is as wide as the backing, and a whole width of cloth may be
        // narrower than what is asked of pieces.
        const auto narrow = [&](Interval side, Interval backing) {
            return side != backing && side.size() < rules.leastPiece - kFine;
        };
        const Fabric* cloth = fabric(v, p.fabric);
        const bool slim =
            cloth == nullptr || washed(cloth->usableWidth, v.job.backing.shrinkPercent) <
                                    rules.leastPiece + 2 * rules.seam;
        if (!mayBeNarrow && !slim && (narrow(p.area.x(), all.x()) || narrow(p.area.y(), all.y())))
            report.add(there, says + " is narrower than " + figure(rules.leastPiece, unit) + ".");
        const auto trimmed = [&](Interval side, Interval backing) {
            return side != backing &&
                   (side.hi <= backing.lo + rules.overage || side.lo >= backing.hi - rules.overage);
        };
        if (!mayBeTrimmed && (trimmed(p.area.x(), all.x()) || trimmed(p.area.y(), all.y())))
            report.add(there, says + " lies in the overage that is trimmed away.");
    }
}

void backingSquared(const QuiltView& v, Report& report) {
    if (!v.quilt.backing)
        return;
    const BackingPlan& plan = *v.quilt.backing;
    const Length squaring = v.job.backing.squaring;
    for (const ClothCut& cut : plan.cuts) {
        const Fabric* cloth = fabric(v, cut.fabric);
        if (cloth == nullptr)
            continue;
        const auto sameCloth = [&](const ClothCut& o) {
            return &o != &cut && o.fabric == cut.fabric && o.onHand == cut.onHand;
        };
        // Turned pieces are cut one beside the other from one length.
        const bool goesOn = cut.turned && std::ranges::any_of(plan.cuts, [&](const ClothCut& o) {
                                return sameCloth(o) && o.turned && o.onCloth.y1 == cut.onCloth.y0;
                            });
        const Rect lost{Length{}, cut.onCloth.y0 - squaring, cloth->usableWidth, cut.onCloth.y0};
        const Length start = cut.onHand ? Length{} : cloth->onHand;
        if (!goesOn &&
            (lost.y0 < start - kHalving || std::ranges::any_of(plan.cuts, [&](const ClothCut& o) {
                 return sameCloth(o) && o.onCloth.overlaps(lost);
             })))
            report.add(where(v, cut), label(v, cut) + " leaves less than " +
                                          figure(squaring, v.plan.unit) +
                                          " before it for squaring its end.");
    }
}

} // namespace bastewright::check
