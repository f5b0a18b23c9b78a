#pragma once

#include "plan/plan.h"

namespace bastewright::batting {

/// "a queen pack, 90 × 108 in", in metric jobs the size alone.
Sentence packText(const BattingPurchase& pack, Unit unit);

/// "6 7/8 yd", in metric jobs "6.30 m".
Sentence rollLength(Length bought, Unit unit);

/// One sentence for each thing to buy.
Sentences toBring(const BattingPlan& plan, Unit unit);

/// "6 7/8 yd off a roll 96 in wide, in 2 lengths: 1 join, 124 in of joining strip."
Sentence describe(const BattingPlan& plan, bool pieceStrip, Unit unit);

} // namespace bastewright::batting
