#pragma once

#include "planners/crew/decoder.h"

#include <stop_token>

namespace bastewright::crew {

struct SearchOptions {
    int schedules = 1'000; ///< how many may be built
    int bound = 0;         ///< a finish nobody can beat: the search ends there
    std::uint64_t seed = 1;
};

struct Found {
    Schedule schedule;
    int built = 0; ///< schedules built on the way
};

/// Looks for a short schedule with two populations in turn: orders by start are built forwards, the
/// orders by end of what results are built backwards in time, and so on, so that every generation
/// is also a justification of the one before (after Debels and Vanhoucke 2007; justification:
/// Valls, Ballestín and Quintanilla 2005). `first` is a known schedule to begin from.
///
/// Measured on PSPLIB: see docs/computation/crew.md. Deterministic.
Found search(const Problem& problem, const Schedule& first, const SearchOptions& options,
             std::stop_token stop = {});

/// The best schedule of plain priorities, longest way to the end first, over several guesses of how
/// many hands every piece of work gets; built both ways (Decoder, BusyHands).
Schedule construct(const Problem& problem);

} // namespace bastewright::crew
