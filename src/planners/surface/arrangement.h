#pragma once

#include "plan/plan.h"

#include <string>
#include <vector>

namespace bastewright {

/// Whole tables pushed together so that they fill a rectangle without gaps; or the floor.
struct Arrangement {
    Sentence name;            ///< for people: "2 tables end to end"
    Length length, width;     ///< length >= width
    std::vector<Rect> tables; ///< x along the length
    std::vector<int> used;    ///< how many of each kind of table
    bool floor = false;
    std::string group{}; ///< of its tables
};

/// Most tables pushed together into one surface; more cannot be kept in line by hand.
inline constexpr int kMostTablesTogether = 6;

/// Every rectangle that can be made by pushing whole tables together side by side and end to end,
/// turned or not, each once, with the fewest tables that make it; by length, then width. Rectangles
/// that only interlock (no straight joint right across) are not looked for. Tables of different
/// groups are not pushed together; where two groups make the same rectangle, both are listed. Empty
/// for no tables.
std::vector<Arrangement> arrangements(const std::vector<Table>& tables);

/// The floor, as large as needed.
Arrangement floorArrangement(Size layers);

/// Edges that rectangles share: joints between the tables of a surface (each prints a pleat unless
/// covered), or seams between panels.
std::vector<Segment> jointsBetween(const std::vector<Rect>& pieces);

} // namespace bastewright
