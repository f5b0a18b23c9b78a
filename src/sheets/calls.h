#pragma once

#include "plan/call.h"
#include "plan/plan.h"
#include "sheets/pictures/call_signs.h"
#include "ways/way.h"

#include <QString>

#include <span>
#include <vector>

/// The lead's calls as they stand on paper.
namespace bastewright::sheets {

QString callName(Call call);
Sign signOf(Call call);

/// What is to be heard and seen at a call, for whoever leads, where zones are
/// basted so: a sentence or two in few words.
QString callForLead(Call call, std::span<const Way* const> ways);

} // namespace bastewright::sheets
