#pragma once

#include "plan/plan.h"

#include <chrono>
#include <string>

namespace bastewright {

/// The session as a calendar (iCalendar, RFC 5545): one event for the whole, one for each helper's
/// hours and one for each break, in local time of wherever it is read (3.3.5, form 1). Lines are
/// folded at 75 octets and end in CR LF (3.1). The same session on the same day keeps its
/// identifiers (3.8.4.7), so that a second import brings the first up to date.
///
/// `day` is the day it begins; times past midnight fall on the next. `now` is when the calendar is
/// made (3.8.7.2), given so that the text depends on its arguments alone.
std::string calendar(const Session& session, const Plan& plan, std::chrono::year_month_day day,
                     std::chrono::sys_seconds now);

} // namespace bastewright
