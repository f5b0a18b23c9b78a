#include "planners/points/row_layout.h"

#include <algorithm>
#include <cmath>

namespace bastewright::points {
namespace {

/// One way to lay rows: `columns` half steps across, `rows` rows.
struct Rows {
    double halfStep, rowStep; ///< points of a row are two half steps apart
    int columns, rows;
    Spot first;
};

/// Greatest distance of a place from its nearest point in endless rows.
double reach(double halfStep, double rowStep) {
    return (squared(halfStep) + squared(rowStep)) / (2 * std::max(halfStep, rowStep));
}

/// Numbers of lines and the place of the first, so that the rest is shared by
/// both ends.
std::vector<std::pair<int, double>> lines(double length, double step, double margin, double fine) {
    std::vector<std::pair<int, double>> out;
    const int most = static_cast<int>(std::floor((length - 2 * margin) / step + 1e-9)) + 1;
    for (int n = most; n >= std::max(2, most - 1); --n) {
        const double first = (length - (n - 1) * step) / 2;
        out.emplace_back(n, std::round(first / fine) * fine);
    }
    return out;
}

std::vector<Rows> choices(const Rules& rules, double margin) {
    std::vector<Rows> out;
    const double fine = rules.fine * std::max(1.0, std::round(rules.spacing / 40 / rules.fine));
    const Field& top = rules.top();
    for (double half = std::ceil(0.5 * rules.radius / fine) * fine; half <= 1.6 * rules.radius;
         half += fine) {
        double row = std::floor(1.8 * rules.radius / fine) * fine;
        while (row > fine && reach(half, row) > rules.radius - 1e-5)
            row -= fine;
        // Only rows near the best density; one step closer may end better at the
        // edges.
        for (int closer = 0; closer < 3; ++closer, row -= fine)
            if (half * row > 0.9 * 1.299 * squared(rules.radius))
                for (const auto& [columns, x] : lines(top.width(), half, margin, rules.fine))
                    for (const auto& [count, y] : lines(top.length(), row, margin, rules.fine))
                        out.push_back({half, row, columns, count, {top.x0 + x, top.y0 + y}});
    }
    std::stable_sort(out.begin(), out.end(), [](const Rows& a, const Rows& b) {
        return a.columns * a.rows < b.columns * b.rows;
    });
    return out;
}

BlockFrame frameOf(const Rows& r) {
    BlockFrame f;
    f.first = r.first;
    f.pitchX = 2 * r.halfStep;
    f.pitchY = 2 * r.rowStep;
    f.columns = (r.columns + 1) / 2;
    f.rows = (r.rows + 1) / 2;
    f.blockX = r.columns % 2 == 0 ? r.halfStep : 0;
    f.blockY = r.rows % 2 == 0 ? r.rowStep : 0;
    return f;
}

} // namespace

std::optional<GridLayout> rowLayout(const Rules& rules, int effort, std::stop_token stop) {
    double margin = rules.radius;
    for (const Spot p : rules.places({rules.top().x0, rules.top().y0, rules.top().x0 + rules.radius,
                                      rules.top().y0 + rules.radius}))
        margin = std::min({margin, p.x - rules.top().x0, p.y - rules.top().y0});
    const auto tileOf = [](const Rows& r, bool shifted) {
        TilePattern t;
        t.points = shifted ? Spots{{r.halfStep, 0}, {0, r.rowStep}}
                           : Spots{{0, 0}, {r.halfStep, r.rowStep}};
        t.symmetry = 2;
        return t;
    };
    std::optional<GridLayout> best;
    const auto build = [&](const Rows& r, bool shifted, int steps) {
        const RepeatFrame frame{rules.top(), frameOf(r), 1, 1};
        const RepeatSearch search{rules, frame};
        TilePattern tile = tileOf(r, shifted);
        tile.room = rules.pin.clear();
        auto repeat = search.complete(tile, steps, {});
        if (!repeat || (best && repeat->count >= best->repeat.count))
            return;
        GridLayout next{search.laidOut(*repeat), frame, std::move(*repeat), true};
        if (repair(next.layout, rules, 300))
            next.regular = false;
        if (!best || next.layout.pins.size() < best->layout.pins.size())
            best = std::move(next);
    };
    const auto all = choices(rules, margin);
    const std::size_t most =
        std::min<std::size_t>(all.size(), 60 * static_cast<std::size_t>(std::max(effort, 1)));
    if (all.empty())
        return {};
    build(all[all.size() / 3], false, 60);
    if (effort <= 0)
        return best;
    for (std::size_t i = 0; i < most && !stop.stop_requested(); ++i)
        for (const bool shifted : {false, true}) {
            const Rows& r = all[i];
            const RepeatSearch search{rules, RepeatFrame{rules.top(), frameOf(r), 1, 1}};
            TilePattern tile = tileOf(r, shifted);
            tile.room = rules.pin.clear();
            if (const auto repeat = search.complete(tile, 40, stop))
                if (!best || repeat->count < best->repeat.count)
                    build(r, shifted, 300);
        }
    return best;
}

} // namespace bastewright::points
