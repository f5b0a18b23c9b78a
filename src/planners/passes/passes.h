#pragma once

#include "planners/passes/layout_memory.h"
#include "planners/surface/arrangement.h"

#include <memory>
#include <span>
#include <vector>

namespace bastewright {

/// One complete way to do a quilt's passes.
struct PassChoice {
    Arrangement surface{};
    bool quiltLengthAlongLength = false;
    Basting::Start start = Basting::Start::besideMiddle;
    std::shared_ptr<const Board> board{};
    Lie lie{};
    Sequence sequence{};
    std::vector<Sequence> others{}; ///< with as few passes, see Layout
    int leastPasses = 0;
    Alternative summary{}; ///< what it costs, for people
    bool asked = true;     ///< see isAskedFor
    bool even = false;     ///< boundaries have been evened out (see makeEven)
};

struct PassRequest {
    const Job& job;
    const Setting& setting;
    LayerSizes layers;
    std::span<const PlacedPoint> points; ///< all of the quilt's
    bool alone = true;                   ///< no other quilt needs the tables that are left over
    /// How far people get; nothing: the farthest of those who work there.
    std::optional<Length> reach{};
    LayoutMemory* memory = nullptr; ///< of this quilt; makes it quicker, never different
    std::stop_token stop{};         ///< ends the search for fewer passes with what was found
};

/// Every surface, orientation and start that is worth looking at, with its fewest passes and its
/// predicted time; workable ones first, those asked for before others, quickest first. Where any
/// start will do, one beside the middle is offered where it saves a pass; one from an end is
/// offered after the others. Without tables: the floor, in one pass.
std::vector<PassChoice> passChoices(const PassRequest& request,
                                    std::span<const Arrangement> surfaces);

/// Evens out the boundaries of a way, and sums it up anew.
void makeEven(const PassRequest& request, PassChoice& choice);

/// The same way with as many passes or fewer otherwise cut or otherwise put on the table:
/// boundaries as they were found, other sets of fields, the table where those who work there reach
/// most, the fields of a table a little smaller. `choice` is evened out.
std::vector<PassChoice> variations(const PassRequest& request, const PassChoice& choice);

/// The same way with its passes in another order, the table elsewhere, or a boundary a line or two
/// farther on; none where it takes many passes.
std::vector<PassChoice> nearWays(const PassRequest& request, const PassChoice& choice);

/// The same way, with as many passes or fewer, as if nobody got farther than each of these: so more
/// people share what lies deep.
std::vector<PassChoice> forLessReach(const PassRequest& request, const PassChoice& choice,
                                     std::span<const Length> reaches);

/// False for a way that is shown and not taken while one that was asked for works: another start,
/// the quilt lying the other way, the tables pushed together to another rectangle.
bool isAskedFor(const Job& job, const Room& room, const Alternative& way);

/// The three parts of it.
bool startsAsAskedFor(const Job& job, const Alternative& way);
bool liesAsAskedFor(const Job& job, const Alternative& way);
bool standsAsAskedFor(const Room& room, const Alternative& way);

/// The basted strip that stays on the table as an anchor, to the table's edge (from memory: 4-12
/// in).
inline constexpr Length kAnchor = Length::inches(6);

/// The passes of a choice in working order: fields, shifts, holds, overhang, spare, rolls, lifting.
/// A pass of which something is pulled across is followed by one that is `pulled`. They come after
/// `earlier`, done on whichever tables.
std::vector<Pass> detailedPasses(const PassRequest& request, const PassChoice& choice,
                                 std::vector<Pass> earlier = {});

/// The surface of a choice as the plan shows it.
SurfacePlan surfacePlan(const PassChoice& choice, int number);

/// Joints between the tables as they lie under the quilt in a pass, in the quilt's frame.
std::vector<Segment> jointsUnderQuilt(const SurfacePlan& surface, const Rect& table);

/// Sorted places of seams that run right across (along y at an x, and along x at a y), where a pass
/// or zone boundary can be seen.
struct SeamLines {
    std::vector<Length> x, y;
};
SeamLines seamLines(const Top& top);

/// The top with its points as passes are planned on it.
Board boardOf(const PassRequest& request);

/// A surface under the quilt, with the people who are there.
Lie lieOf(const PassRequest& request, const Arrangement& surface, bool quiltLengthAlongLength);

/// Sides of the quilt over which nothing can hang.
std::vector<Side> sidesAtWalls(const Room& room, const std::vector<Side>& closed);

} // namespace bastewright
