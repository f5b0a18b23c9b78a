#pragma once

#include "job/job.h"
#include "plan/pin_rows.h"

#include <QRectF>

class QPainter;

/// Both ribbons at true size, in strips to cut out and join or to copy from.
namespace bastewright::sheets {

inline constexpr double kPointsPerInch = 72;

/// The strips of both ribbons, side by side: left edges have the rows, right edges the marks.
struct Strips {
    Length each; ///< length of a strip
    int count = 0;
};

/// How many strips of a page's height the longer ribbon takes.
Strips stripsFor(const PinRows& rows, const Top& top, double height);

/// Strips from `first` on, as many as fit the box's width, at true size. Gray bars: border and
/// sashing. Returns the number of the strip after the last one drawn.
int drawStrips(QPainter& p, QRectF box, const PinRows& rows, const Top& top, const Strips& strips,
               int first);

/// Strips that fit side by side.
int stripsBeside(double width);

} // namespace bastewright::sheets
