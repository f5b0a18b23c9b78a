#pragma once

#include <memory>

namespace bastewright {

/// Plans of points that were made before, by everything they depend on, so that a change of people
/// or of the room does not plan them again.
///
/// It never changes a result: what is remembered is what would be found again. May be shared
/// between threads. Holds a few hundred plans and forgets all when full.
class PointsMemory {
public:
    PointsMemory();
    ~PointsMemory();
    PointsMemory(const PointsMemory&) = delete;
    PointsMemory& operator=(const PointsMemory&) = delete;

    struct Store;
    Store& store() const { return *store_; }

private:
    std::unique_ptr<Store> store_;
};

} // namespace bastewright
