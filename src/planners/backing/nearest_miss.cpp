#include "planners/backing/nearest_miss.h"

#include "planners/backing/front.h"
#include "planners/backing/wording.h"

#include <algorithm>
#include <numeric>

namespace bastewright::backing {
namespace {

constexpr Length kMostLess = Length::inches(2);    // of overage a side
constexpr Length kOverageKept = Length::inches(1); // below that nobody would start

int lengthsIn(const Layout& l) {
    return std::accumulate(l.lengths.begin(), l.lengths.end(), 0);
}

class Search {
public:
    Search(const Problem& problem, const Layout& chosen)
        : problem_{problem}
        , chosen_{chosen}
        , step_{problem.unit == Unit::inch ? Length::inch64ths(8) : Length::nanometres(2'500'000)} {
    }

    struct Miss {
        Length less; ///< overage, each side
        Layout layout;
    };

    /// The least overage to give up that is worth it, from `from` to below `limit`.
    std::optional<Miss> lessOverage(bool centreSeam, Length from, Length limit) const {
        if (limit <= from || !worth(with(limit - step_, centreSeam)))
            return std::nullopt;
        for (Length less = from; less < limit; less += step_)
            if (auto l = with(less, centreSeam); worth(l))
                return Miss{less, *l};
        return std::nullopt;
    }

    Length step() const { return step_; }
    Length most() const { return std::min(kMostLess, problem_.rules.overage - kOverageKept); }

    std::optional<Layout> with(Length less, bool centreSeam) const {
        Problem p = problem_;
        p.needed = {p.needed.width - 2 * less, p.needed.length - 2 * less};
        p.rules.centreSeam = centreSeam;
        return bestOf(p, chosen_.score);
    }

    bool worth(const std::optional<Layout>& l) const {
        const Length half =
            problem_.unit == Unit::inch ? Length::inches(18) : Length::millimetres(500);
        return l && l->bought < chosen_.bought &&
               (l->bought + half <= chosen_.bought || lengthsIn(*l) < lengthsIn(chosen_) ||
                l->seams < chosen_.seams);
    }

private:
    const Problem& problem_;
    const Layout& chosen_;
    const Length step_;
};

/// "5 1/2 yd: 2 lengths …": what a miss saves, and how it would be made.
Sentence saving(const Problem& problem, const std::vector<Bolt>& bolts, const Layout& chosen,
                const Layout& miss, Length less) {
    Problem smaller = problem;
    smaller.needed = {problem.needed.width - 2 * less, problem.needed.length - 2 * less};
    return core::says("%1: %2", saleLength(chosen.bought - miss.bought, problem.unit),
                      describe(smaller, bolts, miss));
}

} // namespace

Sentence nearestMiss(const Problem& problem, const Layout& chosen) {
    if (chosen.bought == Length{})
        return {};
    const auto bolts = boltsOf(problem.rules);

    const Search search{problem, chosen};
    const Length step = search.step();
    const auto plain = search.lessOverage(problem.rules.centreSeam, step, search.most() + step);
    std::optional<Search::Miss> centre;
    if (!problem.rules.centreSeam)
        centre = search.lessOverage(true, Length{},
                                    plain ? plain->less : std::max(step, search.most() + step));
    const auto length = [&](Length l) { return core::length(l, problem.unit); };
    const auto saved = [&](const Search::Miss& miss) {
        return saving(problem, bolts, chosen, miss.layout, miss.less);
    };
    if (centre) {
        const Sentence text =
            centre->less > Length{}
                ? core::says("%1 less overage on every side, with a seam on the center line, would "
                             "save %2.",
                             length(centre->less), saved(*centre))
                : core::says("A seam on the center line would save %1.", saved(*centre));
        return plain ? core::says("%1 %2 less overage on every side without one would save %3.",
                                  text, length(plain->less), saved(*plain))
                     : text;
    }
    if (plain)
        return core::says("%1 less overage on every side would save %2.", length(plain->less),
                          saved(*plain));
    for (const Length squaring : {Length::inches(2), Length::inches(1), Length{}}) {
        if (squaring >= problem.rules.squaring)
            continue;
        Problem less = problem;
        less.rules.squaring = squaring;
        if (const auto l = bestOf(less, chosen.score); search.worth(l))
            return squaring > Length{}
                       ? core::says("Squaring off only %1 of each length would save %2.",
                                    length(squaring), saving(problem, bolts, chosen, *l, Length{}))
                       : core::says("Lengths that are square as they are cut would save %1.",
                                    saving(problem, bolts, chosen, *l, Length{}));
    }
    for (const Length seam : {Length::inch64ths(24), Length::inch64ths(16)}) {
        if (seam >= problem.rules.seam)
            continue;
        Problem narrow = problem;
        narrow.rules.seam = seam;
        if (const auto l = bestOf(narrow, chosen.score); search.worth(l))
            return core::says("Seam allowances of %1 would save %2.", length(seam),
                              saving(problem, bolts, chosen, *l, Length{}));
    }
    return {};
}

} // namespace bastewright::backing
