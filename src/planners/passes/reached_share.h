#pragma once

#include "job/job.h"
#include "planners/passes/board.h"

#include <span>

namespace bastewright {

/// Who gets to what is worked on a table, for how long it takes before anybody's place is known.
class ReachedShare {
public:
    /// Of those who may have zones, at a table under the quilt.
    ReachedShare(const std::vector<Helper>& all, const Lie& lie, bool quiltLengthAlongLength);

    /// Points that would keep everybody as long if all got to them without leaning: each is shared
    /// by whoever gets to it from an open side, more slowly by who has to lean, and what is reached
    /// from one side only by no more than find room there.
    double points(const Rect& table, std::span<const Point> worked) const;
    /// The same of a pass, with what is pulled across where it is then.
    double points(const Board& board, const Lie& lie, const Cells& cells, const Step& step) const;

    double paces() const { return paces_; } ///< of all of them

private:
    /// Paces of those who get so far, or farther: the farthest first, summed up.
    struct Reach {
        Length at;
        double paces;
    };
    struct Person {
        double pace;
        Length reach, leaning;
        Side side; ///< where they keep to
    };
    std::vector<Reach> easily_, leaning_; ///< who may stand anywhere
    std::vector<Person> keeping_;
    std::vector<double> quickest_; ///< paces
    double paces_ = 0;
    bool floor_;
    std::vector<Side> open_;
    Length farthest_;

    double shareAt(Point place, const Rect& table) const;
    double roomAt(const Rect& table, Side side) const;
};

} // namespace bastewright
