#include "job/job.h"

#include <set>

namespace bastewright {
namespace {

struct AxisLines {
    std::set<Length> whole; ///< run through the whole inside of the border
    std::vector<Interval> blocks;
    std::vector<Length> inner; ///< run only inside blocks
};

/// Block and sashing edges run from border to border; inner lines end at the block.
AxisLines axis(int count, Length block, Length sashing, const std::vector<Length>& inner,
               Length offset) {
    AxisLines out;
    for (int i = 0; i < count; ++i) {
        const Length start = offset + i * (block + sashing);
        out.blocks.push_back({start, start + block});
        out.whole.insert({start, start + block});
        for (const Length at : inner)
            if (at > Length{} && at < block)
                out.inner.push_back(start + at);
    }
    return out;
}

/// Joined intervals, so that inner lines of touching blocks are one seam.
std::vector<Interval> joined(const std::vector<Interval>& blocks) {
    std::vector<Interval> out;
    for (const Interval b : blocks) {
        if (!out.empty() && out.back().hi == b.lo)
            out.back().hi = b.hi;
        else
            out.push_back(b);
    }
    return out;
}

} // namespace

std::vector<Segment> seamsOf(const Top& top) {
    const Rect area = topRect(top);
    std::set<Segment> seams;
    if (top.grid) {
        const BlockGrid& g = *top.grid;
        const Point first = g.firstBlock(area);
        const AxisLines x = axis(g.columns, g.block, g.sashing, g.innerX, first.x);
        const AxisLines y = axis(g.rows, g.blockHeight(), g.sashing, g.innerY, first.y);
        const Interval spanX{x.blocks.front().lo, x.blocks.back().hi};
        const Interval spanY{y.blocks.front().lo, y.blocks.back().hi};
        for (const Length at : x.whole)
            seams.insert(Segment{{at, spanY.lo}, {at, spanY.hi}});
        for (const Length at : y.whole)
            seams.insert(Segment{{spanX.lo, at}, {spanX.hi, at}});
        for (const Interval run : joined(y.blocks))
            for (const Length at : x.inner)
                seams.insert(Segment{{at, run.lo}, {at, run.hi}});
        for (const Interval run : joined(x.blocks))
            for (const Length at : y.inner)
                seams.insert(Segment{{run.lo, at}, {run.hi, at}});
    }
    for (Segment s : top.seams) {
        if (s.to < s.from)
            std::swap(s.from, s.to);
        seams.insert(s);
    }
    std::vector<Segment> out;
    for (const Segment& s : seams) {
        const bool alongEdge =
            (s.from.x == s.to.x && (s.from.x <= area.x0 || s.from.x >= area.x1)) ||
            (s.from.y == s.to.y && (s.from.y <= area.y0 || s.from.y >= area.y1));
        if (!alongEdge)
            out.push_back(s);
    }
    return out;
}

} // namespace bastewright
