#pragma once

#include <vector>

namespace bastewright::points {

/// Marks of the odd and of the even rows, as numbers of raster places, ascending.
struct RibbonMarks {
    std::vector<int> odd, even;
};

/// How far apart rows may lie, so that nothing between them is farther than a radius from a point
/// of either.
///
/// At a place x along the rows, the points of one row hold everything up to h(x) = sqrt(r² − t²)
/// from it, where t is the distance to its nearest mark. A strip of width d is held exactly where
/// h(odd) + h(even) >= d for every x. Between the middles of neighbouring marks both are concave,
/// so that only those middles and the two ends have to be looked at. Rows further off are left out,
/// which can only understate.
class StripCover {
public:
    StripCover(double radius, double fine, double length);

    /// Greatest distance between an odd row and an even one beside it; 0 where marks do not hold
    /// the rows' ends or leave a gap of more than two radii.
    double widest(const RibbonMarks& marks) const;
    /// The same between two places along the rows.
    double widest(const RibbonMarks& marks, double from, double to) const;
    /// Greatest distance of a row with these marks from the edge beside it.
    double edge(const std::vector<int>& marks) const;

private:
    double height(double away) const;

    double radius_, fine_, length_;
    std::vector<double> heights_; ///< by halves of the raster
};

} // namespace bastewright::points
