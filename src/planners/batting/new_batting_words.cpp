#include "planners/batting/new_batting_words.h"

#include <algorithm>
#include <cctype>
#include <cstdio>

namespace bastewright::batting {
namespace {

/// A pack that is known by its size has no other name.
bool hasName(const BattingPurchase& pack) {
    return !pack.pack.empty() &&
           std::ranges::none_of(pack.pack, [](unsigned char c) { return std::isdigit(c) != 0; });
}

Sentence joinsText(const BattingPlan& plan, Unit unit) {
    if (plan.joins.empty())
        return core::says("no join");
    const Sentence strip = core::length(plan.strip, unit);
    return plan.joins.size() == 1
               ? core::says("1 join, %1 of joining strip", strip)
               : core::says("%1 joins, %2 of joining strip", plan.joins.size(), strip);
}

Sentence offRoll(const BattingPurchase& roll, Unit unit) {
    return core::says("%1 off a roll %2 wide", rollLength(roll.length, unit),
                      core::length(roll.width, unit));
}

} // namespace

Sentence packText(const BattingPurchase& pack, Unit unit) {
    const Sentence size = core::size(pack.width, pack.length, unit);
    return unit == Unit::inch && hasName(pack) ? core::says("a %1 pack, %2", pack.pack, size)
                                               : core::says("a pack of %1", size);
}

Sentence rollLength(Length bought, Unit unit) {
    if (unit == Unit::inch)
        return core::figure(formatYardsUp(bought));
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.2f m", bought.mm() / 1000.0);
    return core::figure(buffer);
}

Sentences toBring(const BattingPlan& plan, Unit unit) {
    Sentences out;
    for (std::size_t i = 0; i < plan.buy.size(); ++i) {
        const BattingPurchase& b = plan.buy[i];
        if (i > 0 && b == plan.buy[i - 1])
            continue;
        const auto number = std::ranges::count(plan.buy, b);
        if (b.pack.empty())
            out.push_back(core::says("%1.", offRoll(b, unit)));
        else if (number == 1)
            out.push_back(core::says("%1.", packText(b, unit)));
        else
            out.push_back(core::says("%1 of these: %2.", number, packText(b, unit)));
    }
    return out;
}

Sentence describe(const BattingPlan& plan, bool pieceStrip, Unit unit) {
    const Sentence joins = joinsText(plan, unit);
    const BattingPurchase& first = plan.buy.front();
    if (!first.pack.empty()) {
        if (plan.buy.size() == 1)
            return core::says("%1: %2.", packText(first, unit), joins);
        return core::says("two joined, each %1: %2.", packText(first, unit), joins);
    }
    const Sentence roll = offRoll(first, unit);
    if (pieceStrip) {
        const bool along = plan.pieces.front().turned != plan.pieces.back().turned;
        const BattingPiecePlaced& strip = plan.pieces.back();
        const Sentence wide =
            core::length(along ? strip.onPiece.length() : strip.onPiece.width(), unit);
        const auto blocks =
            std::ranges::count(plan.pieces, strip.turned, &BattingPiecePlaced::turned);
        return blocks == 1 ? core::says("%1, with a strip %2 wide: %3.", roll, wide, joins)
                           : core::says("%1, with a strip %2 wide, pieced from %3 lengths: %4.",
                                        roll, wide, blocks, joins);
    }
    return plan.pieces.size() == 1
               ? core::says("%1: %2.", roll, joins)
               : core::says("%1, in %2 lengths: %3.", roll, plan.pieces.size(), joins);
}

} // namespace bastewright::batting
