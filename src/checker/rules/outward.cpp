#include "checker/rules/rules.h"

#include <algorithm>

namespace bastewright::check {
namespace {

/// True where the intervals, one after another, leave no gap.
bool isOneStretch(std::vector<Interval> all) {
    std::ranges::sort(all);
    for (std::size_t i = 1; i < all.size(); ++i) {
        if (all[i].lo > all[i - 1].hi)
            return false;
        all[i].hi = std::max(all[i].hi, all[i - 1].hi);
    }
    return true;
}

/// True where every line across some areas, and every line along them, meets them in one stretch.
bool unbroken(const std::vector<Rect>& areas) {
    std::vector<Length> xs, ys;
    for (const Rect& r : areas) {
        xs.insert(xs.end(), {r.x0, r.x1});
        ys.insert(ys.end(), {r.y0, r.y1});
    }
    std::ranges::sort(xs);
    std::ranges::sort(ys);
    const auto check = [&](const std::vector<Length>& at, auto across, auto along) {
        for (std::size_t i = 1; i < at.size(); ++i) {
            if (at[i] == at[i - 1])
                continue;
            std::vector<Interval> met;
            for (const Rect& r : areas)
                if (across(r).lo <= at[i - 1] && at[i] <= across(r).hi)
                    met.push_back(along(r));
            if (!isOneStretch(std::move(met)))
                return false;
        }
        return true;
    };
    const auto x = [](const Rect& r) { return r.x(); };
    const auto y = [](const Rect& r) { return r.y(); };
    return check(ys, y, x) && check(xs, x, y);
}

} // namespace

void passesOutward(const QuiltView& v, Report& report) {
    std::vector<Rect> basted;
    for (std::size_t i = 0; i < v.quilt.passes.size(); ++i) {
        const Pass& p = v.quilt.passes[i];
        basted.insert(basted.end(), p.fresh.parts.begin(), p.fresh.parts.end());
        // What is pulled across next was smoothed with this pass.
        if (i + 1 < v.quilt.passes.size() && v.quilt.passes[i + 1].pulled)
            continue;
        if (!unbroken(basted))
            report.add(where(v, p) / "fresh",
                       v.label() + ", pass " + std::to_string(p.number) +
                           ": bare quilt is left between parts that are basted.");
    }
}

} // namespace bastewright::check
