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
        known = known_.emplace(std::move(standing), shareOut(*ground_, posts)).first;
    return known->second;
}

SharingMemory::OfPass& SharingMemory::of(Ground ground) {
    const Ground& kept = *grounds_.insert(std::move(ground)).first;
    return known_.try_emplace(&kept, kept).first->second;
}

} // namespace bastewright::crew
