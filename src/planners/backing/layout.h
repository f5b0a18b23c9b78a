#pragma once

#include "plan/plan.h"
#include "planners/backing/cloth.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace bastewright::backing {

/// From memory: a strip along the edge reaches at least so far onto the quilt, else it would be
/// trimmed away with the overage, or nearly.
inline constexpr Length kOntoQuilt = Length::inches(2);
/// Common practice: the fold down the middle and joins below must not meet a seam.
inline constexpr Length kClear = Length::inches(2);
/// Widest column offered of cloth that is not listed (scraps and leftovers).
inline constexpr Length kWidestUnlisted = Length::inches(12);

/// One backing to piece: finished size and rules. `rules.fabrics` is not empty.
struct Problem {
    Size needed;
    Backing rules;
    Unit unit = Unit::inch;
    int blocks = 5; ///< most blocks of a column
    std::vector<Segment> keepAway;
    bool unlisted = false; ///< also offer a narrow column of cloth the job does not list
    bool edgesLoose =
        false; ///< strips along the edge may lie inside the overage: nothing else fits

    Length across(bool along) const { return along ? needed.width : needed.length; }
    Length height(bool along) const { return along ? needed.length : needed.width; }
    /// Narrowest strip once sewn, inside and along the edge.
    Length leastInside() const { return rules.leastPiece; }
    Length leastOutside() const {
        return edgesLoose ? rules.leastPiece
                          : std::max(rules.leastPiece, rules.overage + kOntoQuilt);
    }
    /// What being spared a seam is worth, in what `Layout::cost` is in: the cheapest buyable cloth
    /// where all have prices.
    double seamCost() const;
};

/// Blocks of a column cut from one bolt. Turned ones lie with their length across the cloth.
struct Blocks {
    int bolt = -1;
    int count = 0;
    bool turned = false;
    Length most;  ///< longest a block may be along the column, with its allowances
    Length cloth; ///< length of cloth they take
};

/// A strip pieced from blocks of one cloth instead of one whole length.
struct Column {
    int fabric = 0; ///< -1: of cloth the job does not list, from as many blocks as it gives
    Length width;   ///< across the column, with allowances
    Blocks fromHand, fromBought;
    bool outside = false; ///< so narrow that it has to lie along the edge
    int blocks() const { return fromHand.count + fromBought.count; }
};

/// Which lengths of which cloth a backing takes; where its seams go is `arrange`'s business.
struct Layout {
    bool along = true;
    std::vector<int> lengths; ///< whole lengths from each bolt
    int splitBolt = -1;       ///< bolt of which one length is split into two flanks; -1: none
    std::optional<Column> column;

    std::vector<Length> buy; ///< by fabric, as bought
    Length bought;           ///< in all
    double cost = 0;         ///< money where every buyable cloth has a price, else inches bought
    double waste = 0;        ///< square inches of the cloth taken that are not in the backing
    int seams = 0;           ///< long ones and those between blocks
    double score = 0;        ///< cost, and what its seams are worth to be spared of
    int cloths = 0;          ///< different fabrics in it
};

/// True where people would rather sew a: score, then a column off the edge, seams, waste, cloths,
/// then along before across.
bool better(const Layout& a, const Layout& b);

/// Takes layouts as they are found.
class LayoutSink {
public:
    virtual ~LayoutSink() = default;
    /// True where no layout that costs at least this much and has at least so many seams is wanted.
    virtual bool hopeless(double cost, int seams) const = 0;
    /// False where its seams have no place.
    virtual bool offer(const Layout& layout) = 0;
};

/// Shows every layout of the family that is not hopeless; their seams are not yet placed.
void visitLayouts(const Problem& problem, const std::vector<Bolt>& bolts, LayoutSink& sink);

/// True where every cloth that may be bought has a price, so that cost is money.
bool isPriced(const Backing& rules);

} // namespace bastewright::backing
