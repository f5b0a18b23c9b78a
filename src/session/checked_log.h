#pragma once

#include "job/job.h"
#include "plan/plan.h"
#include "session/event.h"

#include <span>

namespace bastewright {

/// Looks through the log of a session that is opened, as it may come from elsewhere or was edited:
/// for events that name a quilt, pass, zone, step, person or earlier event that none of its plans
/// and sessions has, for what cannot be read, and for a plan in force that breaks a rule. One
/// sentence; empty where nothing is wrong. Events that only came too late or twice are not wrong.
/// Nothing is taken out of the log: what cannot be has no effect, and is kept.
Sentence faultOfLog(const Session& session, const Plan& plan, std::span<const Event> events);

} // namespace bastewright
