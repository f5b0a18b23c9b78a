#pragma once

#include "planners/points/row_options.h"

#include <stop_token>

namespace bastewright::points {

/// One way to lay all rows of a top, before single pins are moved off seams.
struct RowChoice {
    PinRows::Along along = PinRows::Along::width;
    double gap = 0, step = 0;
    RibbonMarks marks;
    std::vector<int> rows;
    int level = 0;

    const std::vector<int>& marksOf(std::size_t row) const {
        return row % 2 == 0 ? marks.odd : marks.even;
    }
    std::size_t count() const {
        return (rows.size() + 1) / 2 * marks.odd.size() + rows.size() / 2 * marks.even.size();
    }
};

/// Whole ribbons and whole rows combined so that the top is covered: every pair of them with at
/// most so many points, fewest first. What is told here by `StripCover` holds for tops whose seams
/// all run right across.
std::vector<RowChoice> coveringRows(const RowFrame& frame, const RowOptions& options,
                                    std::size_t most);

/// The choice that two options make, with their rows the other way round where `swapped`; nothing
/// where it has `most` points or more, or does not cover.
std::optional<RowChoice> combined(const RowFrame& frame, const RibbonOption& ribbons,
                                  const RowsOption& rows, bool swapped, std::size_t most);

/// How far every point of a choice may be off before a place is out of reach, to 1/1000 in; as for
/// `coveringRows`, never too much.
double slackOf(const RowFrame& frame, const RowChoice& choice, double radius);

/// The fewest points of any such pair; nothing where none covers.
std::optional<std::size_t> fewestInRows(const RowOptions& options);

} // namespace bastewright::points
