#pragma once

#include "planners/points/cover_task.h"
#include "planners/points/repeat_frame.h"
#include "unit/points/solver.h"

namespace bastewright {

/// The covering problem of one block on a torus with half-turn symmetry, on the planner's raster of
/// places. Built without the planner's search; witnesses are added until an optimum leaves no hole.
class TileModel {
public:
    TileModel(const points::Rules& rules, const points::BlockFrame& frame);

    /// A proven lower bound by CBC: the optimum that covers the witnesses. Witnesses are added until
    /// it is `wanted` or leaves no hole, so that in the end it is the optimum itself. None where CBC
    /// does not answer within the seconds.
    std::optional<Solved> bound(double wanted, int limitSeconds);

    /// The same problem for the planner's own proof.
    points::CoverTask task() const;
    std::size_t candidates() const { return orbits_.size(); }

private:
    static double wrap(double v, double period);
    double apart2(points::Spot a, points::Spot b) const;
    bool tooNear(const points::Spots& a, const points::Spots& b) const;
    void require(points::Spot w);

    const points::Rules& rules_;
    points::BlockFrame f_;
    std::vector<points::Spots> orbits_;
    CoverModel model_;
};

} // namespace bastewright
