#pragma once

#include "checker/report.h"
#include "checker/view.h"

#include <functional>

namespace bastewright::check {

/// What a plan that takes over need not have: the tasks of a pass whose zones are all left out; of
/// a zone so many of a kind.
struct Excused {
    std::function<bool(const Pass&)> pass;
    std::function<int(const Zone&, TaskKind)> ofZone;
};

/// Every pass and zone has, done or not, the tasks it takes, and no others.
void tasksAsked(const QuiltView& v, const Excused& excused, Report& report);

} // namespace bastewright::check
