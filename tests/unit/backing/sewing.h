#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

/// Cuts a backing as the plan says and sews it together: an oracle that shares no code with the
/// planner. Every fault is one line.
namespace bastewright::sewing {

inline std::string text(const Rect& r) {
    char buffer[120];
    std::snprintf(buffer, sizeof buffer, "%.4f..%.4f × %.4f..%.4f in", r.x0.in(), r.x1.in(),
                  r.y0.in(), r.y1.in());
    return buffer;
}

/// Where the job lists no cloth the planner takes one of 40 in.
inline std::vector<Fabric> clothOf(const Job& job) {
    return job.backing.fabrics.empty() ? std::vector<Fabric>{{.name = "backing cloth"}}
                                       : job.backing.fabrics;
}

inline std::vector<std::string> faults(const Job& job, Size needed, const BackingPlan& plan) {
    std::vector<std::string> out;
    const Backing& rules = job.backing;
    const double keep = 1 - rules.shrinkPercent / 100;
    std::map<std::string, Fabric> cloth;
    for (const Fabric& f : clothOf(job))
        cloth[f.name] = f;
    std::map<std::string, Length> bought;
    for (const BackingPurchase& p : plan.buy) {
        bought[p.fabric] += p.length;
        const Length step = job.unit == Unit::inch ? Length::inch64ths(288) : 5_cm;
        if (p.length.nm() % step.nm() != 0)
            out.push_back("bought length is not a whole number of steps");
        if (!cloth[p.fabric].buyable)
            out.push_back(p.fabric + " cannot be bought");
    }

    // The panels tile the backing.
    const Rect whole{{}, {}, needed.width, needed.length};
    double area = 0;
    for (std::size_t i = 0; i < plan.panels.size(); ++i) {
        const Rect& r = plan.panels[i].area;
        area += areaSquareInches(r);
        if (r.empty() || !whole.contains(r))
            out.push_back("panel lies outside: " + text(r));
        for (std::size_t k = 0; k < i; ++k)
            if (r.overlaps(plan.panels[k].area))
                out.push_back("panels overlap: " + text(r));
    }
    if (std::abs(area - areaSquareInches(whole)) > 1e-3)
        out.push_back("panels leave a hole");

    // Every panel has one cut that is as large as it and the allowances of its sewn sides.
    for (const BackingPanel& p : plan.panels) {
        int found = 0;
        for (const ClothCut& c : plan.cuts) {
            if (c.piece != p.name)
                continue;
            ++found;
            const Length seam = rules.seam;
            const Length w =
                p.area.width() + seam * ((p.area.x0 > whole.x0) + (p.area.x1 < whole.x1));
            const Length l =
                p.area.length() + seam * ((p.area.y0 > whole.y0) + (p.area.y1 < whole.y1));
            const bool upright = plan.along != c.turned;
            if (c.onCloth.width() < (upright ? w : l) || c.onCloth.length() < (upright ? l : w))
                out.push_back("cut of " + p.name + " is too small: " + text(c.onCloth) + " for " +
                              text(p.area));
            if (c.fabric != p.fabric)
                out.push_back("cut and panel " + p.name + " are of different cloth");
            if (rules.oneWay && (c.turned || !plan.along))
                out.push_back(p.name + " lies the wrong way for its print");
        }
        if (found != 1)
            out.push_back("panel " + p.name + " is cut " + std::to_string(found) + " times");
    }

    // The cuts lie on the cloth there is, washed and squared, and share none of it.
    for (std::size_t i = 0; i < plan.cuts.size(); ++i) {
        const ClothCut& c = plan.cuts[i];
        const Fabric& f = cloth[c.fabric];
        const Length start = c.onHand ? Length{} : f.onHand;
        const Length length = c.onHand ? f.onHand : bought[c.fabric];
        const double end = start.in() + length.in() * keep + 1e-6;
        if (c.onCloth.x0 < Length{} || c.onCloth.x1.in() > f.usableWidth.in() * keep + 1e-6 ||
            c.onCloth.y0 < start + rules.squaring || c.onCloth.y1.in() > end)
            out.push_back("cut " + c.piece + " is not on its cloth: " + text(c.onCloth));
        for (std::size_t k = 0; k < i; ++k)
            if (plan.cuts[k].fabric == c.fabric && plan.cuts[k].onCloth.overlaps(c.onCloth))
                out.push_back("cuts " + c.piece + " and " + plan.cuts[k].piece + " share cloth");
    }

    // No seam on the centre line, of either direction.
    if (!rules.centreSeam)
        for (const BackingPanel& p : plan.panels)
            if (p.area.x1 == needed.width / 2 || p.area.y1 == needed.length / 2)
                out.push_back("a seam lies on the centre line: " + text(p.area));
    return out;
}

/// Long seams: lines from edge to edge.
inline std::vector<Segment> seamsOf(Size needed, const BackingPlan& plan) {
    std::vector<Segment> out;
    for (const BackingPanel& p : plan.panels) {
        if (p.area.x1 < needed.width)
            out.push_back({{p.area.x1, p.area.y0}, {p.area.x1, p.area.y1}});
        if (p.area.y1 < needed.length)
            out.push_back({{p.area.x0, p.area.y1}, {p.area.x1, p.area.y1}});
    }
    return out;
}

inline Length boughtInAll(const BackingPlan& plan) {
    Length sum;
    for (const BackingPurchase& p : plan.buy)
        sum += p.length;
    return sum;
}

inline double yards(const BackingPlan& plan) {
    return boughtInAll(plan).in() / 36;
}

} // namespace bastewright::sewing
