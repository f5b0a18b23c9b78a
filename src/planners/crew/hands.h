#pragma once

#include "plan/plan.h"

#include <utility>
#include <vector>

/// The people, and when they are there, in seconds from the session's start.
namespace bastewright::crew {

inline constexpr int kAlways = 1'000'000'000;

struct Hand {
    Helper helper;
    std::size_t listed = 0; ///< how many helpers stand before them in the file
    int from = 0, until = kAlways;
    std::vector<std::pair<int, int>> away{}; ///< breaks of their own, by start

    /// There from a to b, without a break of their own in between.
    bool there(int a, int b) const;
    /// The first time from `a` on at which they are there for so long; kAlways where there is none.
    int firstTime(int a, int seconds) const;
};

/// A helper's hours and breaks. Both are times of the day the session begins on: who leaves before
/// the start is never there.
Hand handOf(const Helper& helper, ClockTime start);

/// In an order that the file's has no part in (`inOneOrder`).
std::vector<Hand> handsOf(const std::vector<Helper>& helpers, ClockTime start);

/// Breaks for everybody that somebody has told of, by start; what lies before the start is left
/// out.
std::vector<PlannedBreak> toldBreaks(const Setting& setting);

// What a person must be able to do. Who is seated does not walk round the table.
bool lays(const Helper& h);       ///< lays, carries and shifts
bool looksBelow(const Helper& h); ///< crouches and looks underneath
bool walks(const Helper& h);

} // namespace bastewright::crew
