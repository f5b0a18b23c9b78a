#include "checker/ways/seen_way.h"

namespace bastewright::check {

SeenWay seenDots() {
    using enum TaskKind;
    using Of = SeenTask::Of;
    return {.with = Basting::With::dots,
            .length = [](const Basting&) { return Length{}; },
            .turn = 180,
            .keepsEdge = false,
            .clearOfSeams = false,
            .fromBox = false,
            .irons = true,
            .patches = false,
            .apart = nullptr,
            // Common practice: 3 to 10 s of pressing.
            .tasks = {{foldBack, Of::pass, 7, 0},
                      {dotLower, Of::zone, 8, 6},
                      {foldForward, Of::pass, 9, 0},
                      {smooth, Of::maybe, 9, 0},
                      {dotUpper, Of::zone, 10, 6},
                      {press, Of::zone, 11, 8, true},
                      {cool, Of::pass, 12, 0, true}},
            .finishes = [](const Helper& h) { return h.irons; },
            .turnedFrom = Length::millimetres(10),
            .angles = "a dot has direction 0."};
}

} // namespace bastewright::check
