#include "checker/ways/seen_way.h"

#include <algorithm>

namespace bastewright::check {

SeenWay seenThread() {
    using enum TaskKind;
    using Of = SeenTask::Of;
    return {.with = Basting::With::thread,
            // Common practice: 1 1/2 in at most, and as much below; closer rows, shorter stitches.
            .length =
                [](const Basting& b) {
                    return std::min(Length::inches(3), b.spacing - b.spacing / 4) / 2;
                },
            .turn = 90,
            .keepsEdge = true,
            .clearOfSeams = false,
            .fromBox = false,
            .irons = false,
            .sewn = true,
            // Fitted to the totals of practice (docs/computation/checker.md).
            .tasks = {{smooth, Of::passOften, 11, 0}, {stitch, Of::zone, 12, 22}},
            .finishes = [](const Helper&) { return true; },
            .turnedFrom = {},
            .angles = "a stitch has direction 0 or 90."};
}

} // namespace bastewright::check
