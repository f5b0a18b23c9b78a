#include "property/points/made_tops.h"

namespace bastewright {
namespace {

void addInner(BlockGrid& grid, Length step) {
    for (Length at = step; at < grid.block; at += step) {
        grid.innerX.push_back(at);
        grid.innerY.push_back(at);
    }
}

/// One diagonal in every square of `side` inside the border.
void addTriangles(Top& top, Length side) {
    const BlockGrid& g = *top.grid;
    const Length x0 = (top.width.front() - g.columns * g.block) / 2;
    const Length y0 = (top.length.front() - g.rows * g.block) / 2;
    for (Length y = y0; y < y0 + g.rows * g.block; y += side)
        for (Length x = x0; x < x0 + g.columns * g.block; x += side)
            top.seams.push_back({{x, y}, {x + side, y + side}});
}

} // namespace

const char* name(Seams s) {
    switch (s) {
    case Seams::none:
        return "no seams";
    case Seams::sashing:
        return "12 in blocks, 2 in sashing";
    case Seams::every4:
        return "seams every 4 in";
    case Seams::every3:
        return "seams every 3 in";
    case Seams::triangles6:
        return "6 in triangles";
    case Seams::triangles4:
        return "4 in triangles";
    }
    return "";
}

Job madeTop(Seams seams, Length width, Length length, Length border) {
    Job job;
    job.top.width = {width};
    job.top.length = {length};
    job.quilting.method = Quilting::Method::inTheDitch;
    if (seams == Seams::none)
        return job;
    BlockGrid g;
    g.block = 12_in;
    g.sashing = seams == Seams::sashing ? 2_in : 0_in;
    const auto blocks = [&](Length side) {
        return static_cast<int>((side - 2 * border + g.sashing).nm() / (g.block + g.sashing).nm());
    };
    g.columns = blocks(width);
    g.rows = blocks(length);
    g.border = {}; // the readings say what is left on each side
    if (seams == Seams::every4 || seams == Seams::triangles4)
        addInner(g, 4_in);
    if (seams == Seams::every3)
        addInner(g, 3_in);
    if (seams == Seams::triangles6)
        addInner(g, 6_in);
    job.top.grid = g;
    if (seams == Seams::triangles6)
        addTriangles(job.top, 6_in);
    if (seams == Seams::triangles4)
        addTriangles(job.top, 4_in);
    return job;
}

} // namespace bastewright
