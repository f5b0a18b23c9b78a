#pragma once

#include "plan/plan.h"

#include <QString>

#include <vector>

namespace bastewright::sheets {

/// The rows of some zones and the marks along them: "rows 14–26, marks 8–9". Empty where points do
/// not stand in rows.
QString rowWords(const QuiltPlan& quilt, const std::vector<const Zone*>& zones);

} // namespace bastewright::sheets
