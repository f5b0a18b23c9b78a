#include "checker/ways/seen_way.h"

namespace bastewright::check {

SeenWay seenSpray() {
    using enum TaskKind;
    using Of = SeenTask::Of;
    return {.with = Basting::With::spray,
            .length = [](const Basting&) { return Length{}; },
            .turn = 180,
            .keepsEdge = false,
            .clearOfSeams = false,
            .fromBox = false,
            .irons = false,
            .patches = true,
            .apart = nullptr,
            // From memory: a queen is sprayed and smoothed down by one person in 30 to 45 min.
            .tasks = {{spray, Of::zone, 13, 60},
                      {smooth, Of::passOften, 14, 0},
                      {settle, Of::pass, 16, 0}},
            .finishes = [](const Helper&) { return true; },
            .turnedFrom = {},
            .angles = "a patch has direction 0."};
}

} // namespace bastewright::check
