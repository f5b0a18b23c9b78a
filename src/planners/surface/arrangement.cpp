#include "planners/surface/arrangement.h"

#include <map>
#include <numeric>
#include <optional>
#include <set>

namespace bastewright {
namespace {

using Counts = std::vector<int>;

/// A rectangle made of tables: where each lies, from the rectangle's own corner.
struct Made {
    Length w, h;
    std::vector<Rect> tables;
};

using BySize = std::map<std::pair<Length, Length>, Made>;

Made beside(const Made& a, const Made& b) {
    Made out{a.w + b.w, a.h, a.tables};
    for (const Rect& t : b.tables)
        out.tables.push_back(t.moved({a.w, {}}));
    return out;
}

Made below(const Made& a, const Made& b) {
    Made out{a.w, a.h + b.h, a.tables};
    for (const Rect& t : b.tables)
        out.tables.push_back(t.moved({{}, a.h}));
    return out;
}

/// Calls `f` for every way to take some but not all of `whole`, the taken part never the larger in
/// lexicographic order (so that each split is seen once).
template <class F>
void forEachSplit(const Counts& whole, F f) {
    Counts part(whole.size(), 0), rest = whole;
    while (true) {
        std::size_t i = 0;
        while (i < whole.size() && part[i] == whole[i]) {
            part[i] = 0;
            rest[i] = whole[i];
            ++i;
        }
        if (i == whole.size())
            return;
        ++part[i];
        --rest[i];
        if (part <= rest && rest != Counts(whole.size(), 0))
            f(part, rest);
    }
}

/// All multisets with at most `most` tables, smaller ones first.
std::vector<Counts> multisets(const Counts& onHand, int most) {
    std::vector<Counts> all{Counts(onHand.size(), 0)};
    for (std::size_t i = 0; i < onHand.size(); ++i) {
        const auto size = all.size();
        for (std::size_t k = 0; k < size; ++k)
            for (int n = 1; n <= onHand[i]; ++n) {
                Counts c = all[k];
                c[i] = n;
                if (std::accumulate(c.begin(), c.end(), 0) <= most)
                    all.push_back(c);
            }
    }
    std::ranges::sort(all, [](const Counts& a, const Counts& b) {
        const int na = std::accumulate(a.begin(), a.end(), 0);
        const int nb = std::accumulate(b.begin(), b.end(), 0);
        return na != nb ? na < nb : a < b;
    });
    return all;
}

/// Tables on hand with equal kinds merged.
std::vector<Table> merged(const std::vector<Table>& tables, std::vector<std::size_t>& kindOf) {
    std::vector<Table> kinds;
    for (const Table& t : tables) {
        const auto same = std::ranges::find_if(
            kinds, [&](const Table& k) { return k.length == t.length && k.width == t.width; });
        kindOf.push_back(static_cast<std::size_t>(same - kinds.begin()));
        if (same == kinds.end())
            kinds.push_back(t);
        else
            same->count += t.count;
    }
    return kinds;
}

Sentence describe(const Made& made) {
    const auto n = made.tables.size();
    if (n == 1)
        return core::says("1 table");
    const Rect& first = made.tables.front();
    const bool alike = std::ranges::all_of(made.tables, [&](const Rect& t) {
        return t.width() == first.width() && t.length() == first.length();
    });
    if (!alike)
        return core::says("%1 tables pushed together", n);
    const auto across = ratio(made.w, first.width());
    const auto down = ratio(made.h, first.length());
    const bool lengthways = first.width() >= first.length();
    if (down == 1 || across == 1)
        return lengthways == (down == 1) ? core::says("%1 tables end to end", n)
                                         : core::says("%1 tables side by side", n);
    return core::says("%1 tables, %2 end to end by %3 side by side", n,
                      int(lengthways ? across : down), int(lengthways ? down : across));
}

Arrangement finished(Made made, Counts used) {
    if (made.w < made.h) {
        std::swap(made.w, made.h);
        for (Rect& t : made.tables)
            t = {t.y0, t.x0, t.y1, t.x1};
    }
    std::ranges::sort(made.tables);
    return {.name = describe(made),
            .length = made.w,
            .width = made.h,
            .tables = made.tables,
            .used = std::move(used)};
}

/// The rectangles of the tables of one group; those of others count as none.
std::vector<Arrangement> ofGroup(std::vector<Table> tables, const std::string& group) {
    for (Table& t : tables)
        if (t.group != group)
            t.count = 0;
    std::vector<std::size_t> kindOf;
    const std::vector<Table> kinds = merged(tables, kindOf);
    Counts onHand;
    for (const Table& t : kinds)
        onHand.push_back(t.count);

    std::map<Counts, BySize> made;
    std::map<std::pair<Length, Length>, Arrangement> best;
    for (const Counts& c : multisets(onHand, kMostTablesTogether)) {
        const int n = std::accumulate(c.begin(), c.end(), 0);
        if (n == 0)
            continue;
        BySize& here = made[c];
        const auto add = [&](Made&& m) { here.try_emplace({m.w, m.h}, std::move(m)); };
        if (n == 1) {
            const Table& t = kinds[static_cast<std::size_t>(std::ranges::find(c, 1) - c.begin())];
            add({t.length, t.width, {{{}, {}, t.length, t.width}}});
            add({t.width, t.length, {{{}, {}, t.width, t.length}}});
        }
        forEachSplit(c, [&](const Counts& a, const Counts& b) {
            for (const auto& [sizeA, madeA] : made[a])
                for (const auto& [sizeB, madeB] : made[b]) {
                    if (sizeA.second == sizeB.second)
                        add(beside(madeA, madeB));
                    if (sizeA.first == sizeB.first)
                        add(below(madeA, madeB));
                }
        });
        for (const auto& [size, m] : here) {
            const auto key = std::minmax(size.first, size.second);
            best.try_emplace({key.second, key.first}, finished(m, c));
        }
    }
    // Report use in the caller's own list: the first rows of a kind are taken first.
    std::vector<Arrangement> out;
    for (auto& [size, a] : best) {
        std::vector<int> used(tables.size(), 0);
        for (std::size_t i = 0; i < tables.size(); ++i) {
            used[i] = std::min(tables[i].count, a.used[kindOf[i]]);
            a.used[kindOf[i]] -= used[i];
        }
        a.used = std::move(used);
        a.group = group;
        out.push_back(std::move(a));
    }
    return out;
}

} // namespace

std::vector<Arrangement> arrangements(const std::vector<Table>& tables) {
    std::set<std::string> groups;
    for (const Table& t : tables)
        groups.insert(t.group);
    std::vector<Arrangement> out;
    for (const std::string& group : groups)
        for (Arrangement& a : ofGroup(tables, group))
            out.push_back(std::move(a));
    std::ranges::stable_sort(out, {}, [](const Arrangement& a) {
        return std::pair{a.length, a.width};
    });
    return out;
}

Arrangement floorArrangement(Size layers) {
    const Length longer = std::max(layers.width, layers.length);
    const Length shorter = std::min(layers.width, layers.length);
    return {.name = core::says("the floor"),
            .length = longer,
            .width = shorter,
            .tables = {},
            .used = {},
            .floor = true};
}

std::vector<Segment> jointsBetween(const std::vector<Rect>& pieces) {
    std::vector<Segment> out;
    for (const Rect& a : pieces)
        for (const Rect& b : pieces) {
            const Interval y = intersection(a.y(), b.y()), x = intersection(a.x(), b.x());
            if (a.x1 == b.x0 && y.lo < y.hi)
                out.push_back({{a.x1, y.lo}, {a.x1, y.hi}});
            if (a.y1 == b.y0 && x.lo < x.hi)
                out.push_back({{x.lo, a.y1}, {x.hi, a.y1}});
        }
    std::ranges::sort(out);
    return out;
}

} // namespace bastewright
