#pragma once

#include "job/job.h"
#include "plan/task.h"
#include "plan/zone.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

/// What the checker must see of each way of basting, from its own side: the planner's descriptions
/// (`src/ways`) are not asked. One file for each way, and its line in the table of `seen_way.cpp`.
namespace bastewright::check {

struct QuiltView;
struct PlanView;

/// A kind of task that a quilt basted so has; kinds that only other ways see it must not have.
struct SeenTask {
    enum class Of {
        zone,      ///< once in every zone with points
        pass,      ///< once in every pass with points
        passOften, ///< at least once in every pass with points
        maybe      ///< any number of times in a pass
    };
    TaskKind kind;
    Of of;
    int stage;            ///< among the calls of a pass: from 7, after the clamps, to 16
    double secondsAPoint; ///< at pace 1 (docs/computation/checker.md); 0 for passes
    bool again = false;   ///< once more from the back where the quilt is turned
};

struct SeenWay {
    Basting::With with;
    /// How long a point is in its direction; zero where it has none.
    Length (*length)(const Basting&);
    int turn;          ///< a direction is so many degrees, or twice that …
    bool keepsEdge;    ///< all of a point lies inside the edge that is asked
    bool clearOfSeams; ///< a point keeps clear of sewn seams
    bool fromBox;      ///< a point is a pin of the box
    bool irons;        ///< it is pressed with an iron
    bool patches;      ///< a point is a square as wide as the spacing, sprayed from a can
    /// From one point to the next where it is sewn in rows of them, the spacing from row to row;
    /// nothing where it is not.
    Length (*apart)(const Basting&);
    std::vector<SeenTask> tasks;
    bool (*finishes)(const Helper&); ///< may do the last task of a zone
    /// Batting thicker than this is turned once and finished from the back too.
    std::optional<Length> turnedFrom;
    const char* angles; ///< which directions are accepted, in words
};

std::span<const SeenWay> seenWays();
const SeenWay& seenWay(const Job& job);
/// Of one zone: its quilt's, unless the plan has another for it.
const SeenWay& seenWay(const Job& job, const Zone& zone);
/// How the zones with points of a pass are basted; the quilt's own way first.
std::vector<const SeenWay*> seenWays(const QuiltView& quilt, int pass);
/// What the quilt asks for where the pins in the box do not last; null where it asks for nothing.
const SeenWay* askedWhereShort(const Job& job);
/// Points of the zones that are pins of the box.
std::int64_t pinsOf(const QuiltView& quilt);
std::int64_t pinsOf(const PlanView& plan);
/// What is seen of such a task in whichever way has it; nothing for those of all ways.
const SeenTask* seenTask(TaskKind kind);

SeenWay seenPins();
SeenWay seenDots();
SeenWay seenThread();
SeenWay seenSpray();

} // namespace bastewright::check
