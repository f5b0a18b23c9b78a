#pragma once

#include "planners/crew/reaching.h"
#include "ways/way.h"

#include <vector>

/// How the points of one pass are shared among those who stand round the table
/// (docs/computation/crew.md, "Stretches").
namespace bastewright::crew {

/// Somebody who may work at the table in a pass.
struct Post {
    const Helper* helper = nullptr;
    Point at;                         ///< where they belong, for the order round the table
    std::vector<StandingPlace> edges; ///< where they may stand
};

/// What is basted in one pass, in the quilt's frame.
struct Ground {
    Region fresh;
    Rect table;
    std::vector<PlacedPoint> points; ///< those in `fresh`
    std::vector<Length> xs, ys;      ///< lines it may be cut along: see cutLines
    bool limited = true;             ///< false on the floor: reach does not count
    double secondsAPoint = 0;        ///< of one call, at pace 1
    int mostInZone = 0;              ///< as the way of basting has it (`Way::mostInZone`)
    auto operator<=>(const Ground&) const = default;
};

/// `rows` where points stand in rows.
Ground groundOf(const Pass& pass, std::vector<PlacedPoint> points, Length spacing,
                const PinRows* rows, bool limited, const Way& way);

/// Who has which part of the area: rectangles between cut lines, for each of the posts; none for
/// who has nothing to do here.
struct Sharing {
    std::vector<std::vector<Rect>> parts;
    std::vector<double> seconds; ///< of one call, by post
    double slowest = 0;          ///< the middle of the slowest of them
    int unreached = 0;           ///< points nobody was found for; then it does not work
};

/// Shares the points so that all are through together: the area is cut straight through between
/// those who stand on either side of the cut, and again between those of each half, always between
/// rows or marks; between the last two one step is allowed. Everybody's part lies in front of them,
/// within their reach, and is connected where the area is.
Sharing shareOut(const Ground& ground, const std::vector<Post>& posts);

} // namespace bastewright::crew
