#pragma once

#include "job/finding.h"
#include "job/job.h"
#include "measures/clock.h"
#include "measures/geometry.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The result of planning: plain values, shared by planners, checker, sheets, screen and file format
/// (docs/formats.md). All geometry is in the quilt's own frame (see `Point`) unless said otherwise;
/// backing panels and batting pieces are in the frame of their own layer.
namespace bastewright {

struct Size {
    Length width, length;
    auto operator<=>(const Size&) const = default;
};

struct LayerSizes {
    Size top, batting, backing;
    auto operator<=>(const LayerSizes&) const = default;
};

/// Whole tables pushed together into one rectangle, or the floor.
struct SurfacePlan {
    std::string name;     ///< "2 tables end to end", "floor"; for people
    int number = 1;       ///< surfaces of one session are numbered from 1
    Length length, width; ///< length >= width; drawn with its length left to right
    bool floor = false;
    /// True where the quilt's length lies along the surface's length: then its head points to the
    /// surface's left. Otherwise its head points to the surface's far long side.
    bool quiltLengthAlongLength = false;
    std::vector<Rect> tables; ///< in the surface's frame: x along its length, y along its width
    std::vector<Side> closed; ///< sides of the *quilt* at which nobody can stand while it lies here
    auto operator<=>(const SurfacePlan&) const = default;
};

/// How a side of the backing is held in a pass.
struct Hold {
    enum class Kind { clamp, tape };
    Side side = Side::head;
    Kind kind = Kind::clamp;
    int count = 0;
    Length length;                 ///< of tape in all; zero for clamps
    std::vector<Length> positions; ///< along the side (x or y of the quilt), in working order
    auto operator<=>(const Hold&) const = default;
};

/// Quilt beyond a side of the table that is rolled or folded so that it does not drag.
struct Roll {
    Side side = Side::left;
    Length rolled;    ///< how much quilt is in it, measured across the roll
    Length along;     ///< length of the roll
    Length diameter;
    Length clipHolds; ///< nominal size of the clip that holds it; zero where none on hand does
    int clips = 0;
    bool folded = false; ///< fan-folded on a support instead of rolled
    auto operator<=>(const Roll&) const = default;
};

struct Pass {
    int number = 1; ///< in working order, from 1
    Rect field;     ///< what lies on the table inside the rim and inside the top
    Rect fresh;     ///< the part of it that is basted in this pass; the fresh areas tile the top
    Rect table;     ///< the whole surface, in the quilt's frame, as it lies in this pass
    Vec shift;      ///< how far the quilt moves on the table before this pass; zero in the first
    std::vector<std::string> zones;
    std::vector<Hold> holds; ///< in working order
    /// How far each layer reaches beyond the table on each side; negative: ends on the table.
    PerSide<Length> backingOverhang, battingOverhang, topOverhang;
    /// Backing beyond the top on each side, after everything is centred: the spare to compare.
    PerSide<Length> backingSpare, battingSpare;
    std::vector<Roll> rolls;
    std::vector<Side> smoothTowards; ///< away from basted area; all four sides in the first pass
    int liftPeople = 1;              ///< hands for the shift into this pass
    double liftKilograms = 0;        ///< what they move
    auto operator<=>(const Pass&) const = default;
};

/// A pin (its centre and the direction it lies in) or a fuse dot (direction zero).
struct PlacedPoint {
    Point at;
    int angle = 0; ///< degrees from the x axis towards the foot, 0 <= angle < 180
    auto operator<=>(const PlacedPoint&) const = default;
};

/// The unit that is handed out and ticked off.
///
/// Points within one spacing of an area that is basted in a later pass belong to that later pass (the
/// row beside an open boundary), so a zone's points may lie up to one spacing outside its area, on the
/// side of an earlier pass; everywhere else they lie in it.
struct Zone {
    std::string id; ///< letters across, numbers down: "C4"
    int pass = 1;
    Rect area; ///< the areas partition the top
    std::vector<PlacedPoint> points;
    auto operator<=>(const Zone&) const = default;
};

/// 'So many in each, so': the points of one kind of tile, from the tile's head-left corner.
struct PointPattern {
    std::string name; ///< "block", "block with sashing", "border, left and right", "corner"
    Size tile;
    int times = 0; ///< how often the tile occurs on the top
    std::vector<PlacedPoint> points;
    std::vector<Segment> seams; ///< drawn with it
    auto operator<=>(const PointPattern&) const = default;
};

struct BackingPurchase {
    std::string fabric;
    Length length; ///< to buy, beyond what is on hand; rounded up to 1/8 yd for inch jobs, 5 cm else
    auto operator<=>(const BackingPurchase&) const = default;
};

struct BackingPanel {
    std::string fabric;
    Rect area;        ///< finished, on the backing
    std::string name{}; ///< "A", "B"; blocks of a pieced column "C1", "C2"
    auto operator<=>(const BackingPanel&) const = default;
};

/// One cut of cloth in the order of cutting.
struct ClothCut {
    std::string fabric;
    Rect onCloth; ///< x across the usable width, y along the length, with seam allowances
    std::string piece;
    bool turned = false; ///< lies with the quilt's other direction along the cloth
    bool onHand = false; ///< from the length on hand; y goes on from its end into the bought length
    auto operator<=>(const ClothCut&) const = default;
};

/// A way to piece the backing that no other beats in length bought, waste and seams at once.
struct BackingAlternative {
    bool along = true;
    Length bought;
    double cost = 0;  ///< in the person's money; zero where a buyable cloth has no price
    double waste = 0; ///< square inches of cloth cut into and not in the backing
    int seams = 0;
    std::string text;   ///< one sentence
    std::string wanted; ///< what it needs that the job does not list; may be empty
    bool chosen = false;
    auto operator<=>(const BackingAlternative&) const = default;
};

struct BackingPlan {
    bool along = true; ///< lengths of cloth run along the quilt's length
    std::vector<BackingPurchase> buy;
    std::vector<BackingPanel> panels;
    std::vector<ClothCut> cuts;
    std::string runnerUp, nearestMiss; ///< a sentence each; may be empty
    std::vector<BackingAlternative> alternatives{}; ///< least bought first
    auto operator<=>(const BackingPlan&) const = default;
};

struct BattingPiecePlaced {
    std::string name;
    Rect area; ///< on the joined batting
    bool turned = false;
    Rect onPiece{}; ///< what it is cut from: on the leftover as listed, not turned, overlaps included
    auto operator<=>(const BattingPiecePlaced&) const = default;
};

/// A leftover cut in two before anything is joined.
struct BattingSplit {
    std::string name;
    bool acrossWidth = true; ///< the cut runs along its length, at `at` of its width; else the other way
    Length at;
    auto operator<=>(const BattingSplit&) const = default;
};

struct BattingPlan {
    std::string pack; ///< empty where joined from leftovers
    std::vector<BattingPiecePlaced> pieces;
    std::vector<Segment> joins; ///< in the order they are made
    Length strip;               ///< joining strip to bring
    std::vector<std::string> leftOver; ///< names and sizes of what is not needed
    std::vector<BattingSplit> splits{}; ///< made first
    auto operator<=>(const BattingPlan&) const = default;
};

/// One way to do the passes, with what it costs.
struct Alternative {
    std::string surface; ///< name of the arrangement of tables
    Basting::Start start = Basting::Start::centred;
    bool quiltLengthAlongLength = false;
    int passes = 0;
    Seconds predicted{};   ///< from the trade's times, with everybody at work
    int lifts = 0;         ///< shifts that need more than one person
    Length largestShift;
    bool workable = true;  ///< every place within somebody's reach
    bool chosen = false;
    std::string why; ///< what speaks for or against it
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
    std::vector<PointPattern> patterns;
    std::optional<BackingPlan> backing;
    std::optional<BattingPlan> batting;
    std::vector<Roll> machineRolls;
    std::vector<Alternative> alternatives;
    QuiltBounds bounds;
    auto operator<=>(const QuiltPlan&) const = default;
};

enum class TaskKind {
    layBacking,     ///< wrong side up, centred, held on all sides
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
    dotUpper,       ///< dots: between batting and top
    press,          ///< dots: a zone pressed, one iron
    cool,           ///< dots: nobody touches it
    turnOver,       ///< dots, thick batting: turned once to press from the back
    handOver        ///< rolled for the machine, points counted
};

/// Where somebody stands: an interval along one side of the table, in the quilt's frame of that pass
/// (x for head and foot, y for left and right).
struct StandingPlace {
    Side side = Side::foot;
    Interval along;
    auto operator<=>(const StandingPlace&) const = default;
};

struct Task {
    std::string id; ///< unique in the plan
    TaskKind kind = TaskKind::placeOpen;
    int job = 0; ///< index of the quilt
    int pass = 1;
    std::string zone; ///< empty for tasks of a whole pass
    std::vector<std::string> people;
    std::vector<StandingPlace> places; ///< one for each of `people`, or none (team tasks move about)
    Seconds start{}, end{};            ///< from the session's start
    std::vector<std::string> after;    ///< ids that must have ended
    auto operator<=>(const Task&) const = default;
};

struct Supply {
    std::string item;
    double need = 0, have = 0, buy = 0;
    std::string unit;
    auto operator<=>(const Supply&) const = default;
};

/// A ranked answer to 'what would help most'.
struct Help {
    std::string change;
    Seconds saved{};
    int passesSaved = 0;
    auto operator<=>(const Help&) const = default;
};

struct Plan {
    Unit unit = Unit::inch;
    std::vector<QuiltPlan> quilts; ///< one for each job, in order
    std::vector<Task> tasks;       ///< by start, then id
    std::vector<Supply> supplies;
    std::vector<Help> help;
    Seconds finish{};      ///< end of the last task, from the session's start
    Seconds finishBound{}; ///< proven: no schedule of these tasks ends earlier
    Findings findings;
    auto operator<=>(const Plan&) const = default;
};

std::string_view name(TaskKind kind);          ///< for files: "place-open"
std::optional<TaskKind> taskKind(std::string_view name);

} // namespace bastewright
