#pragma once

#include "planners/crew/share_out.h"

#include <map>
#include <set>
#include <tuple>
#include <vector>

namespace bastewright::crew {

/// Sharings of passes that were found before, by everything they depend on: ways to baste a quilt
/// that are tried one after another have most of their passes, and where people stand, in common.
/// It never changes a result. Not thread-safe.
class SharingMemory {
public:
    /// Those of one pass.
    class OfPass {
    public:
        /// `ground` outlives this.
        explicit OfPass(const Ground& ground)
            : ground_{&ground} {}
        const Ground& ground() const { return *ground_; }
        /// As `shareOut` says; valid as long as this is.
        const Sharing& among(const std::vector<Post>& posts);

    private:
        using Standing = std::vector<std::tuple<Helper, Point, std::vector<StandingPlace>>>;
        const Ground* ground_;
        std::map<Standing, Sharing> known_;
    };

    /// Stays where it is as long as the memory does.
    OfPass& of(Ground ground);

private:
    std::set<Ground> grounds_;
    std::map<const Ground*, OfPass> known_;
};

} // namespace bastewright::crew
