#pragma once

#include "planners/whole/whole.h"

#include <cstdint>
#include <iosfwd>
#include <map>
#include <string>

namespace bastewright::testing {

/// What people would ask of a plan of one quilt.
struct Outcome {
    int stops = 0;
    int passes = 0, pulls = 0;
    int points = 0;
    double yards = 0; ///< of backing to buy
    Seconds finish{}, longestPass{};
    bool quiltLengthAlongLength = false;
    std::map<TaskKind, Seconds> byKind{}; ///< how long the session is at each kind of work
    std::string surface{};
    int holds = 0;
};
std::ostream& operator<<(std::ostream& out, const Outcome& o);

Outcome outcomeOf(const Plan& plan);

/// A number that the environment sets, or another.
std::uint64_t number(const char* variable, std::uint64_t otherwise);

} // namespace bastewright::testing
