#pragma once

#include "checker/view.h"

namespace bastewright::check {

/// What moving the whole quilt takes.
struct Lifted {
    int people = 1;
    double kilograms = 0;
};

/// Weight of a quilt and the hands for it, from its backing and batting.
Lifted liftOf(const QuiltView& v);

} // namespace bastewright::check
