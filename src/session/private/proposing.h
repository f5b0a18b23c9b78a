#pragma once

#include "session/change.h"

#include <string>

/// What proposals before and during a session share.
namespace bastewright {

/// Gives a zone to somebody; "" gives it back.
void hand(Session& session, int job, const std::string& zone, const std::string& person);

/// A stop, somebody kept beyond their hours, or a zone that cannot stay with whom it was handed to,
/// that was not there before; empty where there is none.
Sentence newTrouble(const Plan& before, const Plan& after);

/// That a plan is not offered, because the checker found this.
Sentence notOffered(const Finding& fault);

/// What is left by a plan; `state` is as that plan sees it.
WhatIsLeft whatIsLeftBy(const Plan& plan, const Setting& setting, const LiveState& state);

} // namespace bastewright
