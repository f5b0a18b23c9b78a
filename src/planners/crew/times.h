#pragma once

#include "plan/plan.h"

namespace bastewright::crew {

/// What a piece of work takes: `byHand` goes with the pace of who does it, `fixed` does not.
struct Effort {
    double byHand = 0;
    int fixed = 0;
    auto operator<=>(const Effort&) const = default;
};

/// Whole seconds at a pace, rounded up. A pace of zero or less counts as 1.
int secondsAt(Effort effort, double pace);

Effort layLayer(const Pass& pass);
Effort fold(const Pass& pass);
Effort smooth(double squareInches);
Effort reclamp(const Pass& pass);
Effort shift(const Pass& into);
Effort zoneWork(TaskKind kind, int points);

/// Clamps that hold the backing in a pass.
int clampsOf(const Pass& pass);

} // namespace bastewright::crew
