#pragma once

#include <span>
#include <vector>

namespace bastewright::crew {

/// How many of each shared tool are in use over time.
class Profile {
public:
    explicit Profile(std::span<const int> capacity);

    void clear();

    /// The first time from `ready` on at which all of `demand` is free for so long. A demand above
    /// the capacity is a programmer's error.
    int earliest(int ready, int seconds, std::span<const int> demand) const;

    void take(int start, int seconds, std::span<const int> demand);

private:
    std::size_t stepAt(int time) const;
    std::size_t split(int time);

    std::vector<int> capacity_;
    std::vector<int> times_; ///< where the use changes, ascending from 0
    std::vector<int> used_;  ///< of each tool from that time on, row by row
};

} // namespace bastewright::crew
