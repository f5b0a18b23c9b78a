#include "planners/crew/sharing_memory.h"

#include <utility>

namespace bastewright::crew {

const Sharing& SharingMemory::OfPass::among(const std::vector<Post>& posts) {
    Standing standing;
    standing.reserve(posts.size());
    for (const Post& p : posts)
        standing.emplace_back(*p.helper, p.at, p.edges);
    auto known = known_.find(standing);
    if (known == known_.end())
        known = known_.emplace(std::move(standing), shareOut(ground_, posts)).first;
    return known->second;
}

SharingMemory::OfPass& SharingMemory::of(Ground ground) {
    Key key{ground.fresh, ground.table,   ground.points,        ground.xs,
            ground.ys,    ground.limited, ground.secondsAPoint, ground.mostInZone};
    return known_.try_emplace(std::move(key), std::move(ground)).first->second;
}

} // namespace bastewright::crew
