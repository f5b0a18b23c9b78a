#pragma once

#include "planners/crew/problem.h"

#include <span>
#include <vector>

namespace bastewright::crew {

/// Activities seen alone, with everybody at hand who may do them: how early can all have ended?
class Stage {
public:
    /// `release` holds the earliest start of every activity of the problem.
    Stage(const Problem& problem, std::span<const int> activities, std::span<const int> release);

    /// Hands' work against everybody's hours, for all that is released from each moment on; of
    /// that, where `tail` is given, only what has at least `leastTail` after it. Not before
    /// `atLeast`.
    int byWork(std::span<const int> tail = {}, int leastTail = 0, int atLeast = 0) const;

    /// People cannot do more of the longest tasks than fit into their time, even if each has the
    /// shortest of those.
    int byCount() const;

    /// Every tool's work, from the first release on.
    int byTools() const;

    /// The least over all ways to hand the one-person activities out, released together. `branches`
    /// is counted down; where it runs out, or there are more than kExact of them, the answer is
    /// `atLeast`.
    int exact(int atLeast, int& branches) const;

    static constexpr std::size_t kExact = 13;

private:
    int fill(int from, double work, int atLeast) const;
    double need(int activity) const;
    double hoursBetween(int person, int from, int to) const;

    const Problem& problem_;
    std::vector<int> activities_;
    std::span<const int> release_;
    std::vector<double> speed_; ///< by person; 0 for who can do nothing here
};

} // namespace bastewright::crew
