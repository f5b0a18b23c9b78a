#pragma once

#include "planners/points/points.h"

#include <map>
#include <mutex>
#include <tuple>

namespace bastewright {

struct PointsMemory::Store {
    /// Everything a plan of points depends on.
    using Key = std::tuple<Top, Basting, Unit, bool, int, std::optional<Basting::Layout>,
                           std::optional<PinRows::Along>, bool>;

    std::optional<PointsPlan> find(const Key& key) const {
        const std::scoped_lock lock{mutex_};
        const auto it = known_.find(key);
        return it == known_.end() ? std::nullopt : std::optional{it->second};
    }
    void keep(const Key& key, const PointsPlan& plan) {
        constexpr std::size_t kMost = 256;
        const std::scoped_lock lock{mutex_};
        if (known_.size() >= kMost)
            known_.clear();
        known_.insert_or_assign(key, plan);
    }

private:
    mutable std::mutex mutex_;
    std::map<Key, PointsPlan> known_;
};

} // namespace bastewright
