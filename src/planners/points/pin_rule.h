#pragma once

#include "job/job.h"
#include "planners/points/spot.h"

#include <limits>
#include <optional>
#include <span>

namespace bastewright::points {

/// A seam in inches.
struct Line {
    Spot from, to;
};

/// Where the middle of a pin (or a dot) may lie.
///
/// A pin is a segment: its whole length keeps `edge` from the edge of the top
/// and `clear` from every sewn seam. A dot is a place: it keeps `edge` only.
class PinRule {
public:
    /// `seams` are those that count: none for dots or where no seam will be sewn.
    PinRule(const Field& top, std::span<const Segment> seams, const Basting& basting);

    /// The plainest direction in which a point here obeys the rule with `clear`
    /// as asked for: straight across, straight down, then the diagonals, then
    /// every 30 degrees. None where it cannot.
    std::optional<int> angleAt(Spot at) const;

    /// The direction with most room, and that room, where the edge is kept; room
    /// is at most `clear`.
    struct Room {
        int angle = 0;
        double room = -1; ///< least distance from a seam; 0 where it crosses one,
                          ///< -1 where the edge forbids
    };
    Room mostRoom(Spot at) const;

    /// Least distance of a point's whole length from any seam, counted up to
    /// `clear`.
    double room(Spot at, int angle) const;
    /// Least distance of a point's whole length from the edge of the top,
    /// negative outside.
    double edgeRoom(Spot at, int angle) const;

    double clear() const { return clear_; }
    double edge() const { return edge_; }
    const Field& top() const { return top_; }
    bool seamless() const { return lines_.empty(); }
    /// The same rule on a top without seams.
    PinRule withoutSeams() const;
    /// The same rule with another distance from the edge.
    PinRule withEdge(double edge) const;
    /// Half the length of a pin or a stitch; zero for a dot.
    double halfLength() const { return halfLength_; }
    std::span<const Line> seams() const { return lines_; }

private:
    Spot half(int angle) const;
    /// True where a pin that lies in this direction is clear of these seams.
    bool fits(Spot at, Spot unit, std::span<const int> seams) const;
    std::size_t cell(int column, int row) const;
    const std::vector<int>& near(Spot at) const;

    Field top_;
    double halfLength_ = 0, clear_ = 0, edge_ = 0, reach_ = 0;
    std::vector<Line> lines_;
    double cell_ = 1;
    int columns_ = 1, rows_ = 1;
    std::vector<std::vector<int>>
        cells_; ///< lines that matter to a pin with its middle in the cell
};

/// Distance between two segments.
double distance(const Line& a, const Line& b);

} // namespace bastewright::points
