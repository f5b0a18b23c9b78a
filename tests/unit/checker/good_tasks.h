#pragma once

#include "plan/plan.h"

#include <string>
#include <string_view>
#include <vector>

namespace bastewright::testing {

inline constexpr std::string_view kAda = "Ada", kBo = "Bo";

/// The good plan's tasks of one quilt by the trade's times at pace 1, every call right after the
/// one before; returns when the last ends. `after`: what the quilt waits for on its table.
Seconds goodTasks(std::vector<Task>& out, const std::vector<Zone>& all, int job, Basting::With with,
                  bool thick, Seconds start, const std::vector<std::string>& after = {});

/// What so many of these quilts take on so many tables.
void goodSupplies(Plan& plan, int quilts, Basting::With with, int surfaces = 1);

} // namespace bastewright::testing
