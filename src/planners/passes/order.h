#pragma once

#include "planners/passes/board.h"

#include <span>

namespace bastewright {

/// Where the first pass of a sequence has to lie.
struct FirstPass {
    Rect held;                  ///< its window holds this part of the top, if there is any
    std::optional<Point> fixed; ///< the table's corner, for a start from the middle
    /// Along an axis on which the top lies whole the table may be elsewhere.
    bool anyX = false, anyY = false;

    /// Where the table's corner may be.
    std::optional<Rect> places() const;
};

bool mayBeFirst(const Board& board, const FirstPass& first, const Window& window);

/// Passes in working order, and the windows they came from.
struct Sequence {
    std::vector<Window> windows;
    std::vector<Step> steps;
    Cells cells;
    double cost = 0; ///< see costOf
};

/// What a sequence costs beside its number of passes, in seconds: two an inch of shift, a pull, and
/// the unevenness of its passes; most of all a pass that is not worth its shift (under 8 points or
/// a twentieth of them).
double costOf(const Board& board, const std::vector<Step>& steps);

/// No one bastes a quilt in more passes than this.
inline constexpr std::size_t kMostPasses = 64;

/// The cheapest order of all windows, outward from the first; nothing where there is none. The
/// search looks at no more than `looks` steps; what it finds then may not be the cheapest.
std::optional<Sequence> bestOrder(const Board& board, const Lie& lie, const FirstPass& first,
                                  const std::vector<Window>& windows, int looks = 4'000);

/// The windows in the order given; nothing where that does not work. The table lies where the
/// `cost` of each pass is least, or as stepInto has it; with `places` there, in each pass.
std::optional<Sequence> inOrder(const Board& board, const Lie& lie, const FirstPass& first,
                                const std::vector<Window>& windows, const StepCost& cost = {},
                                std::span<const Point> places = {});

/// Seconds that shifting the quilt takes for a pass, and what has to be pulled across in it.
double costOfMoving(const Step& step, const std::optional<Point>& before);

} // namespace bastewright
