#include "planners/points/row_choice.h"

#include <algorithm>

namespace bastewright::points {
namespace {

constexpr double kLess = 1e-9;

std::size_t countOf(const RibbonOption& ribbons, bool swapped, std::size_t rows) {
    const std::size_t odd = ribbons.marks.odd.size(), even = ribbons.marks.even.size();
    return (rows + 1) / 2 * (swapped ? even : odd) + rows / 2 * (swapped ? odd : even);
}

bool covers(const RibbonOption& r, bool swapped, const RowsOption& o) {
    const double odd = swapped ? r.edgeEven : r.edgeOdd, even = swapped ? r.edgeOdd : r.edgeEven;
    return o.widest <= r.widest - kLess && o.first <= odd - kLess &&
           o.last <= (o.rows.size() % 2 == 1 ? odd : even) - kLess;
}

template <class Visit>
void eachPair(const RowOptions& options, Visit visit) {
    for (const RibbonOption& ribbons : options.ribbons)
        for (const RowsOption& rows : options.rows)
            for (const bool swapped : {false, true})
                visit(ribbons, rows, swapped);
}

} // namespace

std::optional<std::size_t> fewestInRows(const RowOptions& options) {
    std::optional<std::size_t> best;
    eachPair(options, [&](const RibbonOption& ribbons, const RowsOption& rows, bool swapped) {
        const std::size_t n = countOf(ribbons, swapped, rows.rows.size());
        if ((!best || n < *best) && covers(ribbons, swapped, rows))
            best = n;
    });
    return best;
}

std::optional<RowChoice> combined(const RowFrame& frame, const RibbonOption& ribbons,
                                  const RowsOption& rows, bool swapped, std::size_t most) {
    if (countOf(ribbons, swapped, rows.rows.size()) >= most || !covers(ribbons, swapped, rows))
        return {};
    RowChoice c{frame.along(), rows.gap,  ribbons.step,
                ribbons.marks, rows.rows, std::max(ribbons.level, rows.level)};
    if (swapped)
        std::swap(c.marks.odd, c.marks.even);
    return c;
}

std::vector<RowChoice> coveringRows(const RowFrame& frame, const RowOptions& options,
                                    std::size_t most) {
    std::vector<RowChoice> out;
    eachPair(options, [&](const RibbonOption& ribbons, const RowsOption& rows, bool swapped) {
        if (auto c = combined(frame, ribbons, rows, swapped, most + 1))
            out.push_back(std::move(*c));
    });
    std::stable_sort(out.begin(), out.end(),
                     [](const RowChoice& a, const RowChoice& b) { return a.count() < b.count(); });
    return out;
}

double slackOf(const RowFrame& frame, const RowChoice& choice, double radius) {
    const auto holds = [&](double less) {
        const StripCover cover{radius - less, frame.fine(), frame.across()};
        const double widest = cover.widest(choice.marks) - kLess;
        const auto edge = [&](std::size_t row) { return cover.edge(choice.marksOf(row)) - kLess; };
        const std::size_t last = choice.rows.size() - 1;
        if (choice.rows.front() * frame.fine() > edge(0) ||
            frame.down() - choice.rows[last] * frame.fine() > edge(last))
            return false;
        for (std::size_t i = 1; i <= last; ++i)
            if ((choice.rows[i] - choice.rows[i - 1]) * frame.fine() > widest)
                return false;
        return true;
    };
    double lo = 0, hi = radius / 2;
    while (hi - lo > 1e-3)
        (holds((lo + hi) / 2) ? lo : hi) = (lo + hi) / 2;
    return lo;
}

} // namespace bastewright::points
