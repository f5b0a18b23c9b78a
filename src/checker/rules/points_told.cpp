#include "checker/rules/rules.h"
#include "checker/rules/told.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <functional>
#include <map>
#include <string>

namespace bastewright::check {
namespace {

/// Every point that was told of is one of the zones', and the other way round.
void areThosePoints(const QuiltView& v, const std::vector<Point>& told, const std::string& by,
                    Report& report) {
    // A quilt that lies nowhere has no zones to hold its points; that is said elsewhere.
    if (v.quilt.zones.empty())
        return;
    std::vector<Point> laid;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points)
            laid.push_back(p.at);
    std::ranges::sort(laid);
    std::vector<char> found(laid.size(), 0);
    std::vector<Point> more;
    for (const Point& t : told) {
        auto at = std::ranges::lower_bound(laid, Point{t.x - kHalving, t.y - kHalving});
        while (at != laid.end() && at->x <= t.x + kHalving &&
               (abs(at->y - t.y) > kHalving || found[std::size_t(at - laid.begin())] != 0))
            ++at;
        if (at == laid.end() || at->x > t.x + kHalving)
            more.push_back(t);
        else
            found[std::size_t(at - laid.begin())] = 1;
    }
    const auto missing = std::ranges::count(found, 0);
    if (missing > 0)
        report.add(
            where(v) / by,
            v.label() + ": the " + by + " do not tell of " + std::to_string(missing) +
                (missing == 1 ? " point" : " points") + " of the zones, one of them at " +
                place(laid[std::size_t(std::ranges::find(found, 0) - found.begin())], v.plan.unit) +
                ".");
    if (!more.empty()) // those that are missing may be these, elsewhere
        report.add(where(v) / (missing > 0 ? "zones" : by),
                   v.label() + ": the " + by + " tell of " + std::to_string(more.size()) +
                       (more.size() == 1 ? " point" : " points") +
                       " that no zone has, one of them at " + place(more.front(), v.plan.unit) +
                       ".");
}

/// The figure of every block, what stands in the sashing strips and on the posts.
std::vector<Point> byBlocks(const PinBlocks& blocks, const BlockGrid& grid, Point first) {
    std::vector<Point> out;
    const Length pitch = blocks.block + grid.sashing;
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            const Point corner{first.x + column * pitch, first.y + row * pitch};
            for (const Point& p : blocks.inBlock)
                out.push_back({corner.x + p.x, corner.y + p.y});
            const Length beyond = blocks.block + grid.sashing / 2; // the middle of the next strip
            const bool right = column + 1 < grid.columns, below = row + 1 < grid.rows;
            for (int i = 0; i < blocks.perStrip; ++i) {
                const Length along = blocks.block * (2 * i + 1) / (2 * blocks.perStrip);
                if (right)
                    out.push_back({corner.x + beyond, corner.y + along});
                if (below)
                    out.push_back({corner.x + along, corner.y + beyond});
            }
            if (blocks.posts && right && below)
                out.push_back({corner.x + beyond, corner.y + beyond});
        }
    return out;
}

Point onLine(const EdgeLine& line, Length along, const Rect& top) {
    switch (line.side) {
    case Side::head:
        return {along, top.y0 + line.in};
    case Side::foot:
        return {along, top.y1 - line.in};
    case Side::left:
        return {top.x0 + line.in, along};
    case Side::right:
        break;
    }
    return {top.x1 - line.in, along};
}

bool isThere(const std::vector<Point>& points, Point at) {
    return std::ranges::any_of(points, [&](const Point& p) {
        return abs(p.x - at.x) <= kHalving && abs(p.y - at.y) <= kHalving;
    });
}

/// The distances between neighbours, each with how often it is there.
std::map<Length, int> distances(const std::vector<std::vector<Length>>& lines) {
    std::map<Length, int> out;
    for (const auto& line : lines)
        for (std::size_t i = 1; i < line.size(); ++i)
            ++out[line[i] - line[i - 1]];
    return out;
}

} // namespace

std::vector<Point> toldByRows(const PinRows& rows) {
    const bool across = rows.along == PinRows::Along::width;
    std::vector<Point> out = rows.singles;
    for (const PinRow& row : rows.lines)
        for (const Length place : row.places) {
            Point at = across ? Point{place, row.at} : Point{row.at, place};
            for (const PinAside& beside : row.aside)
                if (beside.mark == place)
                    at = beside.to;
            out.push_back(at);
        }
    return out;
}

// Points stand in rows or go by the blocks, unless as few as can be were asked for.
void pointsTold(const QuiltView& v, Report& report) {
    if (v.quilt.zones.empty())
        return;
    const bool told = v.quilt.rows || v.quilt.blocks;
    if (!told && v.job.basting.layout != Basting::Layout::fewest)
        report.add(where(v) / (v.job.basting.layout == Basting::Layout::blocks ? "blocks" : "rows"),
                   v.label() + ": nothing tells where its points go.");
    if (v.quilt.rows && v.quilt.blocks)
        report.add(where(v) / "blocks",
                   v.label() + ": its points are told by rows and by the blocks.");
}

// The distances of rows, and of the points of a row, are such as are often there; points of a row
// are told in their order.
void pointsGaps(const QuiltView& v, Report& report) {
    if (!v.quilt.rows || v.quilt.rows->lines.size() < 2)
        return;
    const PinRows& rows = *v.quilt.rows;
    std::vector<Length> at;
    std::vector<std::vector<Length>> places;
    for (const PinRow& row : rows.lines) {
        at.push_back(row.at);
        places.push_back(row.places);
        if (std::ranges::adjacent_find(row.places, std::greater_equal<>{}) != row.places.end() ||
            std::ranges::adjacent_find(row.aside, std::greater_equal<>{}) != row.aside.end())
            report.add(where(v).in("rows/lines", rows.lines, row),
                       v.label() + ": the points of the row at " + figure(row.at, v.plan.unit) +
                           " are not told in their order, each once.");
    }
    if (!std::ranges::is_sorted(rows.singles))
        report.add(where(v) / "rows/singles", v.label() + ": the single points are out of order.");
    const auto gaps = distances({at}), steps = distances(places);
    int most = 0, all = 0;
    for (const auto& [gap, times] : gaps)
        most = std::max(most, times);
    for (const auto& [step, times] : steps)
        all += times;
    if (const auto found = gaps.find(rows.gap); found == gaps.end() || found->second * 4 < most)
        report.add(where(v) / "rows/gap", v.label() + ": rows are said to lie " +
                                              figure(rows.gap, v.plan.unit) + " apart; few do.");
    if (const auto found = steps.find(rows.step);
        all > 0 && (found == steps.end() || found->second * 20 < all))
        report.add(where(v) / "rows/step", v.label() + ": points of a row are said to lie " +
                                               figure(rows.step, v.plan.unit) +
                                               " apart; hardly any do.");
}

// Whoever lays by the ribbons lays every point, and no other: rows stand at the side ribbon's
// marks, their pins at marks of their own ribbon or beside them, and all of them with the single
// ones are the points of the zones.
void pointsRows(const QuiltView& v, Report& report) {
    if (!v.quilt.rows)
        return;
    const PinRows& rows = *v.quilt.rows;
    const Unit unit = v.plan.unit;
    const bool across = rows.along == PinRows::Along::width;
    const Length end = across ? v.top.width() : v.top.length();
    const Length foot = across ? v.top.length() : v.top.width();
    const auto ribbon = [&](std::string_view key, const std::vector<Length>& marks, Length length,
                            const std::string& name) {
        for (std::size_t i = 0; i < marks.size(); ++i)
            if (marks[i] < Length{} || marks[i] > length || (i > 0 && marks[i] <= marks[i - 1]))
                report.add(where(v) / "rows/ribbons" / key / i,
                           v.label() + ": the mark at " + figure(marks[i], unit) +
                               " of the ribbon for " + name +
                               " is not behind the one before it, or not on the top.");
    };
    ribbon("odd", rows.ribbons.odd, end, "odd rows");
    ribbon("even", rows.ribbons.even, end, "even rows");
    ribbon("side", rows.ribbons.side, foot, "the side");
    if (rows.lines.size() != rows.ribbons.side.size())
        report.add(where(v) / "rows/lines",
                   v.label() + ": " + std::to_string(rows.lines.size()) + " rows, and " +
                       std::to_string(rows.ribbons.side.size()) + " marks of the side ribbon.");
    for (std::size_t i = 0; i < rows.lines.size(); ++i) {
        const PinRow& row = rows.lines[i];
        const std::string what = v.label() + ", row " + std::to_string(i + 1);
        const Pointer there = where(v) / "rows/lines" / i;
        if (i < rows.ribbons.side.size() && row.at != rows.ribbons.side[i])
            report.add(there / "at", what + " lies at " + figure(row.at, unit) + ", its mark at " +
                                         figure(rows.ribbons.side[i], unit) + ".");
        const auto& marks = i % 2 == 0 ? rows.ribbons.odd : rows.ribbons.even;
        for (const Length& place : row.places)
            if (std::ranges::find(marks, place) == marks.end())
                report.add(there.in("places", row.places, place),
                           what + " has a point at " + figure(place, unit) +
                               ", where its ribbon has no mark.");
        for (const PinAside& beside : row.aside)
            if (std::ranges::find(row.places, beside.mark) == row.places.end())
                report.add(there.in("aside", row.aside, beside) / "mark",
                           what + " has a point beside the mark at " + figure(beside.mark, unit) +
                               ", which it leaves out.");
    }
    areThosePoints(v, toldByRows(rows), "rows", report);
}

// Whoever lays the figure in every block, then the lines along the sides and the single points,
// lays every point, and no other; and the figure is the same from every side of the block.
void pointsBlocks(const QuiltView& v, Report& report) {
    if (!v.quilt.blocks)
        return;
    const PinBlocks& blocks = *v.quilt.blocks;
    const auto& grid = v.job.top.grid;
    if (!grid || grid->block != blocks.block || grid->blockHeight() != blocks.block) {
        report.add(where(v) / "blocks/block", v.label() + ": points go by square blocks of " +
                                                  figure(blocks.block, v.plan.unit) +
                                                  "; the top has none.");
        return;
    }
    if (blocks.perStrip < 0)
        report.add(where(v) / "blocks/per_strip",
                   v.label() + ": fewer than no points are said to lie in a sashing strip.");
    const Length all = blocks.block;
    for (const Point& p : blocks.inBlock)
        for (const Point& image : {Point{all - p.x, p.y}, Point{p.x, all - p.y}, Point{p.y, p.x}})
            if (!isThere(blocks.inBlock, image))
                report.add(where(v).in("blocks/in_block", blocks.inBlock, p),
                           v.label() + ": the figure of a block has a point at " +
                               place(p, v.plan.unit) + " and none at its image " +
                               place(image, v.plan.unit) + ".");
    std::vector<Point> told = byBlocks(blocks, *grid, grid->firstBlock(v.top));
    for (const Point& out : blocks.leftOut) {
        const auto at = std::ranges::find_if(told, [&](const Point& p) {
            return abs(p.x - out.x) <= kHalving && abs(p.y - out.y) <= kHalving;
        });
        if (at == told.end())
            report.add(where(v).in("blocks/left_out", blocks.leftOut, out),
                       v.label() + ": a point is left out at " + place(out, v.plan.unit) +
                           ", where the blocks have none.");
        else
            told.erase(at);
    }
    for (const EdgeLine& line : blocks.edges)
        for (const Length along : line.places)
            told.push_back(onLine(line, along, v.top));
    told.insert(told.end(), blocks.singles.begin(), blocks.singles.end());
    areThosePoints(v, told, "blocks", report);
}

} // namespace bastewright::check
