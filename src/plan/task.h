#pragma once

#include "measures/clock.h"
#include "plan/place.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Who does what, when.
namespace bastewright {

enum class TaskKind {
    setUp, ///< tables stood and checked, joints covered, middles marked, pins opened into bowls
    layBacking, ///< wrong side up, centred; from the second pass on the upper two are folded away
                ///< first
    clamp,      ///< the backing, everybody their own stretch
    layBatting,
    layTop,
    reclamp,        ///< one clamp at a time, from backing only to all three layers
    placeOpen,      ///< a zone's pins go in open
    smooth,         ///< palm over the pass: no ripple; then closing may begin
    closePins,      ///< a zone's pins are closed
    checkUnderside, ///< overhang compared, a palm below, a few pins turned up
    shift,          ///< release, sweep, slide, hold the new edges
    foldBack,       ///< dots: batting and top back to the fold
    dotLower,       ///< dots: a zone's dots between backing and batting
    foldForward,
    dotUpper, ///< dots: between batting and top
    press,    ///< dots: a zone pressed, one iron
    cool,     ///< dots: nobody touches it
    stitch,   ///< thread: a zone's stitches
    spray,    ///< spray: a zone's bands sprayed and smoothed down
    settle,   ///< spray: nobody touches it
    turnOver, ///< dots, thick batting: turned once to press from the back
    handOver  ///< rolled up for the machine, points counted
};

struct Task {
    std::string id; ///< unique in the plan
    TaskKind kind = TaskKind::placeOpen;
    int job = 0; ///< index of the quilt
    int pass = 1;
    std::string zone; ///< empty for tasks of a whole pass
    std::vector<std::string> people;
    std::vector<StandingPlace>
        places;                     ///< one for each of `people`, or none (team tasks move about)
    Seconds start{}, end{};         ///< from the session's start
    std::vector<std::string> after; ///< ids that must have ended: everything of the call before
    auto operator<=>(const Task&) const = default;
};

std::string_view name(TaskKind kind); ///< for files: "place-open"
std::optional<TaskKind> taskKind(std::string_view name);

} // namespace bastewright
