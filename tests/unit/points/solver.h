#pragma once

#include <optional>
#include <string>
#include <vector>

namespace bastewright {

/// A choice of candidates of least cost: each row needs one of its candidates, no pair of `apart`
/// may be chosen together.
struct CoverModel {
    std::vector<int> costs;
    std::vector<std::vector<int>> rows;
    std::vector<std::pair<int, int>> apart;
};

struct Solved {
    double cost = 0;
    double seconds = 0; ///< of the solver by the clock
    bool proven = false;
    std::vector<int> chosen; ///< by CBC only
};

/// True where one of the solvers (COIN-OR CBC, else GLPK) can be called.
bool solverAvailable();
bool cbcAvailable();

/// The optimum by CBC, or GLPK where CBC is missing; none where neither answers within the limit.
std::optional<Solved> solved(const CoverModel& model, int limitSeconds);

} // namespace bastewright
