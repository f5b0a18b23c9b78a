#include "property/passes/any_way.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace bastewright::testing {
namespace {

constexpr double kAnchorInches = 6;
constexpr double kNone = 1e9;
constexpr int kMostTables = 6;

struct Span {
    double lo = -kNone, hi = kNone;
    bool empty() const { return hi < lo - 1e-6; }
    Span with(Span o) const { return {std::max(lo, o.lo), std::min(hi, o.hi)}; }
};

/// Sizes of rectangles of equal tables in rows and columns, turned or not; other mixtures are
/// larger or no better than the largest of them for what is asked here.
std::set<std::pair<double, double>> rectangles(const std::vector<Table>& tables) {
    std::set<std::pair<double, double>> out;
    for (const Table& t : tables)
        for (int across = 1; across <= std::min(t.count, kMostTables); ++across)
            for (int down = 1; across * down <= std::min(t.count, kMostTables); ++down) {
                const double a = t.length.in() * across, b = t.width.in() * down;
                out.insert({std::max(a, b), std::min(a, b)});
            }
    return out;
}

/// Sides of the quilt that a wall closes: those of the surface, as drawn with its length left to
/// right, turned with the quilt.
std::set<Side> closed(const std::vector<Side>& walls, bool along) {
    std::set<Side> out;
    for (const Side s : walls)
        out.insert(!along             ? s
                   : s == Side::left  ? Side::head
                   : s == Side::foot  ? Side::left
                   : s == Side::right ? Side::foot
                                      : Side::right);
    return out;
}

class OneByOne {
public:
    OneByOne(double width, double length, double tableX, double tableY, double inset, double reach,
             std::set<Side> shut)
        : width_{width}
        , length_{length}
        , tableX_{tableX}
        , tableY_{tableY}
        , inset_{inset}
        , reach_{reach}
        , shut_{std::move(shut)} {}

    bool works(const std::vector<PlacedPoint>& points) const {
        std::set<double> xs, ys;
        for (const PlacedPoint& p : points) {
            xs.insert(p.at.x.in());
            ys.insert(p.at.y.in());
        }
        for (const bool fromRight : {false, true})
            for (const bool fromFoot : {false, true})
                if (std::ranges::all_of(points, [&](const PlacedPoint& p) {
                        return point(p.at.x.in(), p.at.y.in(), xs, ys, fromRight, fromFoot);
                    }))
                    return true;
        return false;
    }

private:
    /// Table places along one axis that hold a coordinate inside the rim, and the anchor beside it
    /// where something before it is basted.
    static Span places(double at, const std::set<double>& lines, bool fromHigh, double table,
                       double quilt, double inset) {
        const double lo = at + inset - table, hi = at - inset;
        Span out{at + table >= quilt && quilt - table <= at ? std::min(lo, quilt - table) : lo,
                 at <= table ? std::max(hi, 0.0) : hi};
        const auto here = lines.find(at);
        if (!fromHigh && here != lines.begin()) {
            const double before = *std::prev(here), edge = (at + before) / 2;
            out = out.with({-kNone, std::min(edge - kAnchorInches, before)});
        }
        if (fromHigh && std::next(here) != lines.end()) {
            const double before = *std::next(here), edge = (at + before) / 2;
            out = out.with({std::max(edge + kAnchorInches, before) - table, kNone});
        }
        return out;
    }

    bool point(double x, double y, const std::set<double>& xs, const std::set<double>& ys,
               bool fromRight, bool fromFoot) const {
        const Span px = places(x, xs, fromRight, tableX_, width_, inset_);
        const Span py = places(y, ys, fromFoot, tableY_, length_, inset_);
        if (px.empty() || py.empty())
            return false;
        return (open(Side::left) && !px.with({x - reach_, kNone}).empty()) ||
               (open(Side::right) && !px.with({-kNone, x + reach_ - tableX_}).empty()) ||
               (open(Side::head) && !py.with({y - reach_, kNone}).empty()) ||
               (open(Side::foot) && !py.with({-kNone, y + reach_ - tableY_}).empty());
    }
    bool open(Side s) const { return !shut_.contains(s); }

    double width_, length_, tableX_, tableY_, inset_, reach_;
    std::set<Side> shut_;
};

double farthest(const Setting& setting, Basting::With with) {
    double out = setting.helpers.empty() ? 31 : 0;
    for (const Helper& h : setting.helpers)
        if (h.pins && (with == Basting::With::dots   ? h.irons
                       : with == Basting::With::pins ? h.closes
                                                     : true))
            out = std::max(out, h.reach.in() + (h.seated ? 0 : h.lean.in()));
    return out;
}

} // namespace

bool anyWay(const Job& job, const Setting& setting, const std::vector<PlacedPoint>& points) {
    const Rect top = topRect(job.top);
    const double reach = farthest(setting, job.basting.with);
    // A patch of spray lies on the table with all of it.
    const double half = job.basting.with == Basting::With::spray ? job.basting.spacing.in() / 2 : 0;
    for (const auto& [length, width] : rectangles(setting.room.tables))
        for (const bool along : {false, true}) {
            const OneByOne way{top.width().in(),
                               top.length().in(),
                               along ? width : length,
                               along ? length : width,
                               setting.room.inset.in() + half,
                               reach,
                               closed(setting.room.walls, along)};
            if (way.works(points))
                return true;
        }
    return false;
}

int leastByArea(const Job& job, const Setting& setting) {
    double largest = 1;
    for (const auto& [length, width] : rectangles(setting.room.tables))
        largest = std::max(largest, length * width);
    return static_cast<int>(std::ceil(areaSquareInches(topRect(job.top)) / largest));
}

} // namespace bastewright::testing
