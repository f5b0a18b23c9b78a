#pragma once

#include "planners/points/grid_layout.h"
#include "planners/points/pattern_memory.h"
#include "planners/points/points.h"

#include <map>
#include <mutex>
#include <tuple>

namespace bastewright {

/// A map that may be used from several threads and starts afresh when full.
template <class Key, class Value>
class Remembered {
public:
    std::optional<Value> find(const Key& key) const {
        const std::scoped_lock lock{mutex_};
        const auto it = known_.find(key);
        return it == known_.end() ? std::optional<Value>{}
                                  : std::optional<Value>{std::in_place, it->second};
    }
    void keep(const Key& key, const Value& value) {
        const std::scoped_lock lock{mutex_};
        if (known_.size() >= kMost)
            known_.clear();
        known_.insert_or_assign(key, value);
    }

private:
    static constexpr std::size_t kMost = 256;
    mutable std::mutex mutex_;
    std::map<Key, Value> known_;
};

struct PatternMemory::Store {
    /// Everything a plan of points depends on.
    using PlanKey = std::tuple<Top, Basting, Unit, bool, int, bool>;
    /// Everything the patterns of a tile depend on, as numbers.
    using TileKey = std::vector<double>;

    Remembered<PlanKey, PointsPlan> plans;
    /// In a pattern: what fewest points begin with is planned once for both.
    Remembered<PlanKey, std::optional<points::GridLayout>> layouts;
    Remembered<TileKey, std::vector<points::TilePattern>> tiles;
};

} // namespace bastewright
