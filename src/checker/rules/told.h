#pragma once

#include "plan/plan.h"

#include <vector>

namespace bastewright::check {

/// Where rows say that points go: at marks of their ribbon, beside them, and single ones.
std::vector<Point> toldByRows(const PinRows& rows);

} // namespace bastewright::check
