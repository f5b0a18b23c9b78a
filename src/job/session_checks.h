#pragma once

#include "job/finding.h"
#include "job/job.h"

namespace bastewright {

/// What is wrong with the values of a session in memory, by the rules a file is read by; fields are
/// named as they are on screens. Warnings too. A session without a finding of level stop is one
/// that `readSession` accepts once it is written.
Findings problemsOf(const Session& session);

} // namespace bastewright
