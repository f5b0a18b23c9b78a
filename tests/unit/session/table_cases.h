#pragma once

#include "session/turns.h"
#include "unit/session/table_plan.h"

#include <span>
#include <string>
#include <vector>

/// Every situation at the table that somebody may tap in, with what a tap does and what is said.
/// The same table drives the tests of the core, of the tablet and of the phones' page.
namespace bastewright::made {

struct Case {
    const char* when; ///< the situation, as `situation` knows it
    const char* tap;  ///< "zone p1.A1", "step clamp-1", "release 1", "end", "otherwise zone p1.A1",
                      ///< "phone p1.A1 Ada zone-opened"
    TapAnswer::Why why;
    const char* said; ///< in English; empty where the tap counts
};

std::span<const Case> cases();

/// A table in one of its situations.
struct Situation {
    Session session;
    Plan plan;
    std::vector<Event> events;
};
/// Situations called "dots …" are of `dottedPlan(true)`, all others of `calledPlan`.
Situation situation(const std::string& name);
std::vector<std::string> situations();
/// The same with other ids: those of one library are never given twice.
Situation renamed(Situation situation, const std::string& prefix);

/// The tap that a case writes in words. Of quilt 1.
Tap tapOf(const std::string& words);

} // namespace bastewright::made
