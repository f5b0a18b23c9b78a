#include "planners/backing/column.h"

#include "planners/backing/seam_places.h"

#include <algorithm>

namespace bastewright::backing {
namespace {

/// Enough for a short join's pressed-open allowance to lie beside the fold.
Length joinClear(const Problem& p) {
    return std::max(p.rules.seam, Length::inch64ths(8));
}

/// The bolts of one cloth.
struct Sources {
    int hand = -1, bought = -1;
    Length left; ///< of the length on hand, after the whole lengths
};

Sources sourcesOf(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& layout,
                  int fabric) {
    Sources s;
    for (int b = 0; b < int(bolts.size()); ++b) {
        if (bolts[std::size_t(b)].fabric != fabric)
            continue;
        if (bolts[std::size_t(b)].bought) {
            s.bought = b;
        } else {
            s.hand = b;
            s.left = bolts[std::size_t(b)].length -
                     clothFor(layout.lengths[std::size_t(b)], problem.height(layout.along),
                              problem.rules) -
                     problem.rules.squaring;
        }
    }
    return s;
}

/// Blocks side by side in one row (or, turned, one above the other) from what is left on hand.
Blocks fromHand(const Sources& s, Length clothWidth, Length width, int count, bool turned) {
    if (count == 0)
        return {};
    return {s.hand, count, turned, turned ? clothWidth : s.left, turned ? count * width : s.left};
}

Length roundedUpDivision(Length a, int n) {
    return Length::nanometres(ceilDiv(a, Length::nanometres(n)));
}

/// The column with its bought blocks, which lie with the threads, as short as lets its joins keep
/// off the fold: longer blocks never take a place away. Nothing where no length does.
std::optional<Column> shortest(const Problem& problem, Column column, Length height) {
    const auto joined = [&](Length block) {
        column.fromBought.most = column.fromBought.cloth = block;
        return joinsOf(problem, column, height).has_value();
    };
    Length low = column.fromBought.most;
    if (joined(low))
        return column;
    Length high = low + 2 * joinClear(problem);
    if (!joined(high))
        return std::nullopt;
    while (high - low > Length::nanometres(1)) {
        const Length middle = low + (high - low) / 2;
        (joined(middle) ? high : low) = middle;
    }
    joined(high);
    return column;
}

} // namespace

std::optional<ColumnJoins> joinsOf(const Problem& problem, const Column& column, Length height) {
    const int n = column.blocks();
    const Length seam = problem.rules.seam;
    std::vector<Length> wanted;
    for (int i = 1; i < n; ++i)
        wanted.push_back(height * i / n);
    std::vector<KeepAway> lines;
    if (!problem.rules.centreSeam)
        lines.push_back({height / 2, joinClear(problem)});
    for (const bool handFirst : {true, false}) {
        std::vector<StripRange> blocks;
        for (int i = 0; i < n; ++i) {
            const int ends = (i == 0) + (i == n - 1);
            const bool hand = handFirst ? i < column.fromHand.count : i >= column.fromBought.count;
            const Length most = hand ? column.fromHand.most : column.fromBought.most;
            blocks.push_back(
                {std::min(problem.rules.leastPiece, height), most - (2 - ends) * seam});
        }
        if (auto at = placeSeams(blocks, height, lines, wanted))
            return ColumnJoins{std::move(*at), handFirst};
    }
    return std::nullopt;
}

std::vector<Column> columnsOf(const Problem& problem, const std::vector<Bolt>& bolts,
                              const Layout& layout, int fabric, Length width) {
    std::vector<Column> out;
    const Sources s = sourcesOf(problem, bolts, layout, fabric);
    if (s.hand < 0 && s.bought < 0)
        return out;
    const Length height = problem.height(layout.along);
    const Length cloth = bolts[std::size_t(s.hand >= 0 ? s.hand : s.bought)].width;
    const Length seam = problem.rules.seam;
    const int abreast = int(cloth.nm() / width.nm());

    const auto complete = [&](const Blocks& hand) {
        if (hand.count >= 2 || hand.turned)
            out.push_back({fabric, width, hand, {}, false});
        if (s.bought < 0)
            return;
        for (int n = 1; hand.count + n <= problem.blocks; ++n) {
            // With the threads: n side by side from one piece across the cloth, just long enough.
            const Length missing =
                height + 2 * (hand.count + n - 1) * seam - hand.count * hand.most;
            const Length least = std::max(roundedUpDivision(std::max(missing, Length{}), n),
                                          problem.rules.leastPiece + 2 * seam);
            if (n <= abreast && hand.count + n >= 2)
                if (const auto c = shortest(
                        problem, {fabric, width, hand, {s.bought, n, false, least, least}, false},
                        height))
                    out.push_back(*c);
            if (!problem.rules.oneWay)
                out.push_back({fabric, width, hand, {s.bought, n, true, cloth, n * width}, false});
        }
    };

    complete({});
    if (s.hand < 0 || s.left < problem.rules.leastPiece + 2 * seam)
        return out;
    for (const bool turned : {false, true}) {
        if (turned && problem.rules.oneWay)
            continue;
        const int most = turned ? int(s.left.nm() / width.nm()) : abreast;
        for (int n = 1; n <= std::min(most, problem.blocks); ++n)
            complete(fromHand(s, cloth, width, n, turned));
    }
    return out;
}

} // namespace bastewright::backing
