#pragma once

#include "plan/plan.h"

#include <tl/expected.hpp>

#include <chrono>
#include <string>
#include <vector>

namespace bastewright {

/// Writes everything other programs can take into `folder`, which is made where it is missing: the
/// plan (docs/formats.md), the bring list, the helpers and everybody's tasks as CSV, the session as
/// a calendar on `day`, and the picture of every pass as SVG and PNG. Names begin with the job's:
/// "harbour-lights-bring.csv", "harbour-lights-and-2-more-bring.csv". Files of those names are
/// replaced, each as a whole. Returns the paths; the error is one sentence. Needs a QGuiApplication
/// for the pictures.
tl::expected<std::vector<std::string>, std::string>
writeExchange(const Session& session, const Plan& plan, const std::string& folder,
              std::chrono::year_month_day day, std::chrono::sys_seconds now);

} // namespace bastewright
