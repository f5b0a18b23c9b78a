#pragma once

#include "planners/crew/problem.h"

namespace bastewright::crew {

/// Who stands where along the edges, and when.
class Standing {
public:
    explicit Standing(const Problem& problem)
        : problem_(problem)
        , taken_(problem.strips.size()) {}

    void clear();

    struct Room {
        int strip = -1; ///< -1: there is none
        std::int64_t place = 0;
        int retry = kNever; ///< then: when to look again
    };

    /// Somewhere to stand for a mode from `start` to `end`: on the first of its spots with room, as
    /// near as can be to where it is best.
    Room find(const Mode& mode, int start, int end) const;

    void take(const Room& room, int start, int end);

private:
    struct Stand {
        int start, end;
        std::int64_t place;
    };

    const Problem& problem_;
    std::vector<std::vector<Stand>> taken_; ///< by strip, soonest end first
    mutable std::vector<Stand> others_;     ///< working memory of `find`
};

} // namespace bastewright::crew
