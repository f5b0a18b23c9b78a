#pragma once

#include "planners/passes/order.h"
#include "planners/surface/arrangement.h"

#include <span>
#include <vector>

namespace bastewright {

/// One complete way to do a quilt's passes.
struct PassChoice {
    Arrangement surface{};
    bool quiltLengthAlongLength = false;
    Basting::Start start = Basting::Start::centred;
    Workable workable{};
    Layout layout{};
    WorkingOrder order{};
    Length anchor{};
    int leastPasses = 0;
    Alternative summary{}; ///< what it costs, for people
    bool asked = true;     ///< see isAskedFor
};

struct PassRequest {
    const Job& job;
    const Setting& setting;
    LayerSizes layers;
    std::size_t points = 0; ///< how many will be placed, for the predicted time
};

/// Every surface, orientation and start, the best shape of each with its order and predicted time;
/// workable ones first, those asked for before others, quickest first. Beside a centred start its
/// neighbour whose middle lies up to half a block beside the table's, where that saves a pass.
/// Without tables: the floor, in one pass.
std::vector<PassChoice> passChoices(const PassRequest& request,
                                    std::span<const Arrangement> surfaces);

/// False for a way that is shown and not taken while one that was asked for works: another start,
/// the quilt lying the other way, the tables pushed together to another rectangle.
bool isAskedFor(const Job& job, const Room& room, const Alternative& way);

/// The three parts of it.
bool startsAsAskedFor(const Job& job, const Alternative& way);
bool liesAsAskedFor(const Job& job, const Alternative& way);
bool standsAsAskedFor(const Room& room, const Alternative& way);

/// The anchor strip: 6 in of basted quilt stay on the table (from memory: 4-12), and always 2 in
/// more than one spacing, since the row beside the boundary is not basted yet.
Length anchorStrip(const Basting& basting);

/// The passes of a choice in working order: fields, shifts, holds, overhang, spare, rolls, lifting.
std::vector<Pass> detailedPasses(const PassRequest& request, const PassChoice& choice);

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

} // namespace bastewright
