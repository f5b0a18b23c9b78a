#pragma once

#include "planners/passes/cover.h"

#include <bit>
#include <cstdint>

namespace bastewright {

/// What sets of windows have to cover, and by which windows it can be: every cell between their
/// cuts, every place where two passes may meet together with the anchor beside it (one window that
/// has both), and a first pass. Windows that cover nothing another does not are left out.
class CoverNeeds {
public:
    using Bits = std::vector<std::uint64_t>;

    CoverNeeds(const Board& board, const Lie& lie, const FirstPass& first,
               const std::vector<Candidate>& candidates);

    /// False where the windows have too many cuts to tell cells apart.
    bool sound() const { return sound_; }
    /// True where all windows together cover every need.
    bool coverable() const { return coverable_; }
    std::size_t count() const { return by_.size(); }
    /// Those of which none follows from another.
    const Bits& all() const { return all_; }

    std::size_t windows() const { return windows_.size(); }
    const Window& window(std::size_t i) const { return windows_[i]; }
    const Bits& coverOf(std::size_t window) const { return cover_[window]; }
    /// The windows that cover a need.
    const std::vector<std::size_t>& by(std::size_t need) const { return by_[need]; }

    /// So many windows at least for what is left: needs of which no two share a window.
    std::size_t least(const Bits& left, std::size_t most) const;
    /// The need that the fewest windows cover.
    std::size_t hardest(const Bits& left) const;

private:
    std::vector<Window> windows_;
    std::vector<Bits> cover_;
    Bits all_;
    std::vector<std::vector<std::size_t>> by_;
    std::vector<Bits> blocked_; ///< `by_` as bits
    bool sound_ = false, coverable_ = true;

    void add(const Window& window, Bits&& bits);
    void dropImplied();
};

/// Calls visit(need) for every need of a set.
template <class Visit>
void eachNeed(const CoverNeeds::Bits& bits, Visit visit) {
    for (std::size_t k = 0; k < bits.size(); ++k)
        for (std::uint64_t b = bits[k]; b != 0; b &= b - 1)
            visit(k * 64 + static_cast<std::size_t>(std::countr_zero(b)));
}

} // namespace bastewright
