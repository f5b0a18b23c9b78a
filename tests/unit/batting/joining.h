#pragma once

#include "job/job.h"
#include "plan/plan.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// Cuts and joins a batting in the order a plan shows, from the pieces the job lists: an oracle
/// that shares no code with the planner. Every fault is one line.
namespace bastewright::joining {

inline std::string text(const Rect& r) {
    char buffer[120];
    std::snprintf(buffer, sizeof buffer, "%.4f..%.4f × %.4f..%.4f in", r.x0.in(), r.x1.in(),
                  r.y0.in(), r.y1.in());
    return buffer;
}

/// What lies on the table: a rectangle of the finished batting and the cloth that makes it, which
/// reaches beyond it wherever a join is still to come.
struct Part {
    Rect area, cloth;
};

inline Rect unite(const Rect& a, const Rect& b) {
    return {std::min(a.x0, b.x0), std::min(a.y0, b.y0), std::max(a.x1, b.x1), std::max(a.y1, b.y1)};
}

/// Lays the two parts over one another along a join and cuts through both; nothing where that is
/// not one straight cut from edge to edge, or where they do not overlap by just `overlap`.
inline std::optional<Part> cutThrough(const Part& a, const Part& b, const Segment& join,
                                      Length overlap) {
    const bool upright = join.from.x == join.to.x;
    const Part& first = upright ? (a.area.x0 < b.area.x0 ? a : b) : (a.area.y0 < b.area.y0 ? a : b);
    const Part& second = &first == &a ? b : a;
    const Interval edge =
        upright ? Interval{join.from.y, join.to.y} : Interval{join.from.x, join.to.x};
    if (upright) {
        if (first.area.x1 != join.from.x || second.area.x0 != join.from.x ||
            first.area.y() != edge || second.area.y() != edge ||
            first.cloth.x1 - second.cloth.x0 != overlap || first.cloth.y() != second.cloth.y())
            return std::nullopt;
    } else if (first.area.y1 != join.from.y || second.area.y0 != join.from.y ||
               first.area.x() != edge || second.area.x() != edge ||
               first.cloth.y1 - second.cloth.y0 != overlap || first.cloth.x() != second.cloth.x()) {
        return std::nullopt;
    }
    return Part{unite(a.area, b.area), unite(a.cloth, b.cloth)};
}

inline std::vector<std::string> faults(const Job& job, Size needed, const BattingPlan& plan) {
    std::vector<std::string> out;
    const Batting& rules = job.batting;
    const Rect whole{{}, {}, needed.width, needed.length};

    // Each part is cut from inside the trimmed edges of a piece there is.
    std::map<std::string, int> there, taken;
    std::map<std::string, Size> sizes;
    for (const BattingPiece& p : rules.pieces) {
        there[p.name] += p.count;
        const Rect square = squared(p);
        sizes[p.name] = {square.width(), square.length()};
    }
    std::map<int, std::vector<Rect>> ofNew;
    for (const BattingPiecePlaced& p : plan.pieces) {
        if (p.bought >= 0) {
            if (p.bought >= int(plan.buy.size())) {
                out.push_back(p.name + " is cut from nothing");
                continue;
            }
            const BattingPurchase& b = plan.buy[std::size_t(p.bought)];
            const double keep = 1 - rules.shrinkPercent / 100;
            const double edge = b.pack.empty() || plan.joins.empty() ? 0 : rules.trim.in();
            if (p.onPiece.empty() || p.onPiece.x0.in() < edge - 1e-6 ||
                p.onPiece.y0.in() < edge - 1e-6 ||
                p.onPiece.x1.in() > b.width.in() * keep - edge + 1e-6 ||
                p.onPiece.y1.in() > b.length.in() * keep - edge + 1e-6)
                out.push_back(p.name + " is cut beyond what is bought: " + text(p.onPiece));
            for (const Rect& other : ofNew[p.bought])
                if (other.overlaps(p.onPiece))
                    out.push_back(p.name + " shares batting with another: " + text(p.onPiece));
            ofNew[p.bought].push_back(p.onPiece);
            continue;
        }
        if (!sizes.contains(p.name)) {
            out.push_back("no piece is called " + p.name);
            continue;
        }
        const Rect usable =
            Rect{{}, {}, sizes[p.name].width, sizes[p.name].length}.grown(-rules.trim);
        if (!usable.contains(p.onPiece) || p.onPiece.empty())
            out.push_back(p.name + " is cut beyond its trimmed edges: " + text(p.onPiece));
        if (p.turned && !rules.mayTurn)
            out.push_back(p.name + " is turned");
        ++taken[p.name];
    }
    for (const BattingSplit& s : plan.splits) {
        // Its two parts come from one piece, on either side of the cut.
        int before = 0, after = 0;
        for (const BattingPiecePlaced& p : plan.pieces)
            if (p.name == s.name) {
                const Interval i = s.acrossWidth ? p.onPiece.x() : p.onPiece.y();
                before += i.hi <= s.at;
                after += i.lo >= s.at;
            }
        if (before > 0 && after > 0)
            --taken[s.name];
    }
    for (const auto& [name, n] : taken)
        if (n > there[name])
            out.push_back(name + " is used " + std::to_string(n) + " times");

    // Each part is as large as it shows, and half an overlap more at every join.
    const Length half = rules.overlap / 2, rest = rules.overlap - half;
    std::vector<Part> parts;
    for (const BattingPiecePlaced& p : plan.pieces) {
        Rect cloth = p.area;
        cloth.x0 -= p.area.x0 > whole.x0 ? rest : Length{};
        cloth.y0 -= p.area.y0 > whole.y0 ? rest : Length{};
        cloth.x1 += p.area.x1 < whole.x1 ? half : Length{};
        cloth.y1 += p.area.y1 < whole.y1 ? half : Length{};
        const Length w = p.turned ? p.onPiece.length() : p.onPiece.width();
        const Length l = p.turned ? p.onPiece.width() : p.onPiece.length();
        if (cloth.width() != w || cloth.length() != l)
            out.push_back(p.name + " is cut " + text(p.onPiece) + " for " + text(p.area));
        parts.push_back({p.area, cloth});
    }

    Length strip;
    for (const Segment& join : plan.joins) {
        strip += (join.to.x - join.from.x) + (join.to.y - join.from.y);
        bool made = false;
        for (std::size_t a = 0; a < parts.size() && !made; ++a)
            for (std::size_t b = a + 1; b < parts.size() && !made; ++b)
                if (const auto both = cutThrough(parts[a], parts[b], join, rules.overlap)) {
                    parts[a] = *both;
                    parts.erase(parts.begin() + std::ptrdiff_t(b));
                    made = true;
                }
        if (!made)
            out.push_back("not one straight cut through two parts: " +
                          text({join.from.x, join.from.y, join.to.x, join.to.y}));
    }
    if (parts.size() != 1 || parts[0].area != whole || parts[0].cloth != whole)
        out.push_back("the batting is not made after the last join");
    if (strip != plan.strip)
        out.push_back("the strip is not as long as the joins");
    return out;
}

/// Places where four pieces meet in one point.
inline int fourCorners(const BattingPlan& plan) {
    std::map<Point, int> corners;
    for (const BattingPiecePlaced& p : plan.pieces)
        for (const Length x : {p.area.x0, p.area.x1})
            for (const Length y : {p.area.y0, p.area.y1})
                ++corners[{x, y}];
    return int(std::ranges::count_if(corners, [](const auto& c) { return c.second == 4; }));
}

} // namespace bastewright::joining
