#include "checker/geometry/partition.h"

#include <set>
#include <vector>

namespace bastewright::check {

// Every x at which a part begins or ends cuts the whole into slabs; within a slab the parts that
// cross it must follow one another without a gap from the head to the foot.
std::optional<PartitionFault> partitionFault(const Rect& whole, std::span<const Rect> parts) {
    using Kind = PartitionFault::Kind;
    std::set<Length> cuts{whole.x0, whole.x1};
    for (const Rect& p : parts) {
        if (p.empty())
            return PartitionFault{Kind::empty, p};
        if (!whole.contains(p))
            return PartitionFault{Kind::outside, p};
        cuts.insert({p.x0, p.x1});
    }
    for (auto lo = cuts.begin(), hi = std::next(lo); hi != cuts.end(); ++lo, ++hi) {
        std::vector<Interval> runs;
        for (const Rect& p : parts)
            if (p.x().overlaps({*lo, *hi}))
                runs.push_back(p.y());
        std::sort(runs.begin(), runs.end());
        Length reached = whole.y0;
        for (const Interval run : runs) {
            if (run.lo < reached)
                return PartitionFault{Kind::overlap, {*lo, run.lo, *hi, std::min(reached, run.hi)}};
            if (run.lo > reached)
                return PartitionFault{Kind::hole, {*lo, reached, *hi, run.lo}};
            reached = run.hi;
        }
        if (reached < whole.y1)
            return PartitionFault{Kind::hole, {*lo, reached, *hi, whole.y1}};
    }
    return {};
}

} // namespace bastewright::check
