#pragma once

#include "job/finding.h"
#include "job/job.h"
#include "plan/layers.h"
#include "plan/pass.h"
#include "plan/pin_blocks.h"
#include "plan/pin_rows.h"
#include "plan/task.h"
#include "plan/zone.h"

#include <optional>
#include <string>
#include <vector>

/// The result of planning: plain values, shared by planners, checker, sheets, screen and file
/// format (docs/formats.md).
namespace bastewright {

/// One way to do the passes, with what it costs.
struct Alternative {
    Sentence surface; ///< name of the arrangement of tables
    Basting::Start start = Basting::Start::centred;
    bool quiltLengthAlongLength = false;
    int passes = 0;
    int pulls =
        0; ///< how often the quilt is only pulled across (`Pass::pulled`); not among `passes`
    Seconds predicted{}; ///< to the end of it all, with everybody at work
    int lifts = 0;       ///< shifts that need more than one person
    Length largestShift;
    bool workable = true; ///< every place within somebody's reach
    bool chosen = false;
    Sentence why;   ///< what speaks for or against it
    Length reach{}; ///< from an open side to the deepest place that is worked; zero on the floor
    int liftPeople = 1;       ///< hands for the heaviest lift
    double liftKilograms = 0; ///< what they move together; zero where nothing is shifted
    /// From the quilt's middle to the middle of the first field, in the quilt's frame.
    Vec offCentre{};
    Length shifted{};                       ///< way of all shifts together, along x plus along y
    Length surfaceLength{}, surfaceWidth{}; ///< of the tables pushed together, or the floor
    auto operator<=>(const Alternative&) const = default;
};

struct QuiltBounds {
    int points = 0; ///< Kershner (1939): area / (r²·3√3/2)
    int passes = 0; ///< least passes any arrangement of fields needs on this surface
    auto operator<=>(const QuiltBounds&) const = default;
};

/// Everything about one quilt.
struct QuiltPlan {
    std::string name;
    LayerSizes layers;
    SurfacePlan surface;
    std::vector<Pass> passes;
    std::vector<Zone> zones;
    std::optional<PinRows> rows;     ///< where points stand in rows
    std::optional<PinBlocks> blocks; ///< where they go by the blocks
    std::optional<BackingPlan> backing;
    std::optional<BattingPlan> batting;
    std::vector<Roll> machineRolls;
    std::vector<Alternative> alternatives;
    QuiltBounds bounds;
    auto operator<=>(const QuiltPlan&) const = default;
};

/// One row of what to bring. What it is stands in `kind` and `size`; `item`, `unit` and `note` are
/// for people.
struct Supply {
    enum class Kind {
        other, ///< of a plan file of an earlier version, where its name says no more
        pins,
        fuseSquares,
        irons,
        heatSafePads,
        thread, ///< in whole yards or metres
        needles,
        sprayCans,
        covers, ///< for table and floor
        clips,  ///< `size`: the roll they hold
        clamps,
        centreMarks,
        tape, ///< in whole units of the plan
        closingTools,
        fabric, ///< in yards or metres
        battingPack,
        battingRoll, ///< in yards or metres; `size`: its usable width
        leftovers,
        joiningStrip ///< in whole units of the plan
    };
    Kind kind = Kind::other;
    Sentence item;
    double need = 0, have = 0, buy = 0;
    Sentence unit;
    Sentence note{};              ///< one sentence for the shop; may be empty
    std::optional<Length> size{}; ///< where there are several
    auto operator<=>(const Supply&) const = default;
};

/// A ranked answer to 'what would help most'.
struct Help {
    enum class Kind {
        helper,
        table,
        offTheWall,
        iron,
        hourLonger,
        anyStart,
        wholeTime,
        fewestPoints
    };
    Kind kind = Kind::helper;
    Sentence change;
    Seconds saved{};
    int passesSaved = 0;
    auto operator<=>(const Help&) const = default;
};

/// When the work will be done: the middle of many simulated afternoons, and where nine in ten lie
/// (docs/computation/crew.md, "Time is a range").
struct FinishRange {
    Seconds early{}, middle{}, late{};
    auto operator<=>(const FinishRange&) const = default;
};

/// A break, from the session's start.
struct PlannedBreak {
    Seconds start{}, end{};
    bool proposed = true;              ///< false: somebody has said when it is
    std::vector<std::string> people{}; ///< whose it is; empty: everybody's
    auto operator<=>(const PlannedBreak&) const = default;
};

struct Plan {
    Unit unit = Unit::inch;
    std::vector<QuiltPlan> quilts; ///< one for each job, in order
    std::vector<Task> tasks;       ///< by start, then id
    std::vector<Supply> supplies;
    std::vector<Help> help;
    std::vector<PlannedBreak> breaks; ///< by start
    Seconds finish{};                 ///< end of the last task, from the session's start
    FinishRange range{};
    Seconds finishBound{}; ///< proven: no plan of the same passes by the same rules ends earlier
    Findings findings;
    auto operator<=>(const Plan&) const = default;
};

} // namespace bastewright
