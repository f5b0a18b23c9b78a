#include "page/allowance.h"

#include <algorithm>

namespace bastewright::page {

Allowance::Bucket& Allowance::filled(const std::string& address, std::int64_t nowMs) {
    const auto found = buckets_.find(address);
    if (found == buckets_.end()) {
        if (buckets_.size() >= kMostAddresses)
            buckets_.erase(std::ranges::min_element(
                buckets_, {}, [](const auto& bucket) { return bucket.second.atMs; }));
        return buckets_.emplace(address, Bucket{most_, nowMs}).first->second;
    }
    auto& bucket = found->second;
    const auto passed = double(std::max<std::int64_t>(0, nowMs - bucket.atMs));
    bucket.left = std::min(most_, bucket.left + passed / everyMs_);
    bucket.atMs = std::max(bucket.atMs, nowMs);
    return bucket;
}

bool Allowance::has(const std::string& address, std::int64_t nowMs) {
    return filled(address, nowMs).left >= 1;
}

bool Allowance::take(const std::string& address, std::int64_t nowMs) {
    auto& bucket = filled(address, nowMs);
    if (bucket.left < 1)
        return false;
    bucket.left -= 1;
    return true;
}

} // namespace bastewright::page
