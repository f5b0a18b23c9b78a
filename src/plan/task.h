#pragma once

#include "measures/clock.h"
#include "measures/geometry.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Who does what, when.
namespace bastewright {

enum class TaskKind {
    layBacking, ///< wrong side up, centred, held on all sides
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
    turnOver, ///< dots, thick batting: turned once to press from the back
    handOver  ///< rolled for the machine, points counted
};

/// Where somebody stands: an interval along one side of the table, in the quilt's frame of that
/// pass (x for head and foot, y for left and right).
struct StandingPlace {
    Side side = Side::foot;
    Interval along;
    auto operator<=>(const StandingPlace&) const = default;
};

/// The part of a zone's points that a task is for, where two people share the zone: so many of
/// them, from one side of it on (`pointsOf` has the order).
struct Share {
    Side side = Side::left;
    int points = 0;
    auto operator<=>(const Share&) const = default;
};

struct Task {
    std::string id; ///< unique in the plan
    TaskKind kind = TaskKind::placeOpen;
    int job = 0; ///< index of the quilt
    int pass = 1;
    std::string zone; ///< empty for tasks of a whole pass
    std::optional<Share> share{}; ///< nothing where the task is for the whole zone
    std::vector<std::string> people;
    std::vector<StandingPlace>
        places;                     ///< one for each of `people`, or none (team tasks move about)
    Seconds start{}, end{};         ///< from the session's start
    std::vector<std::string> after; ///< ids that must have ended
    auto operator<=>(const Task&) const = default;
};

std::string_view name(TaskKind kind); ///< for files: "place-open"
std::optional<TaskKind> taskKind(std::string_view name);

} // namespace bastewright
