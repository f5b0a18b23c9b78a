#include "checker/ways/seen_way.h"

namespace bastewright::check {

SeenWay seenPins() {
    using enum TaskKind;
    using Of = SeenTask::Of;
    return {.with = Basting::With::pins,
            .length = [](const Basting& b) { return b.pinLength; },
            .turn = 15,
            .keepsEdge = true,
            .clearOfSeams = true,
            .fromBox = true,
            .irons = false,
            .patches = false,
            .apart = nullptr,
            // Common practice: 10 to 11 s a pin, placed and closed.
            .tasks = {{placeOpen, Of::zone, 13, 5.5},
                      {smooth, Of::passOften, 14, 0},
                      {closePins, Of::zone, 15, 5.5}},
            .finishes = [](const Helper& h) { return h.closes; },
            .turnedFrom = {},
            .angles = "0 to 179 degrees are accepted."};
}

} // namespace bastewright::check
