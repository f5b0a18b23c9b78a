#include "checker/ways/seen_way.h"

#include <algorithm>

namespace bastewright::check {
namespace {

/// Common practice: a stitch is at most 1 1/2 in long and as long below; from one to the next it is
/// at most three quarters of the distance of the rows, and at least half of it.
Length stitchesApart(const Basting& basting) {
    const Length rows = basting.spacing, usual = Length::inches(3), most = rows * 3 / 4;
    return most < usual ? most : rows > 2 * usual ? rows / 2 : usual;
}

} // namespace

SeenWay seenThread() {
    using enum TaskKind;
    using Of = SeenTask::Of;
    return {.with = Basting::With::thread,
            // Closer rows, shorter stitches.
            .length =
                [](const Basting& b) { return std::min(Length::inches(3), stitchesApart(b)) / 2; },
            .turn = 90,
            .keepsEdge = true,
            .clearOfSeams = false,
            .fromBox = false,
            .irons = false,
            .patches = false,
            .apart = stitchesApart,
            // Fitted to the totals of practice (docs/computation/checker.md).
            .tasks = {{smooth, Of::passOften, 14, 0}, {stitch, Of::zone, 15, 22}},
            .finishes = [](const Helper&) { return true; },
            .turnedFrom = {},
            .angles = "a stitch has direction 0 or 90."};
}

} // namespace bastewright::check
