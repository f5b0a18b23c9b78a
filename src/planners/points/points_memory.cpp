#include "planners/points/points_memory.h"

#include "planners/points/points_store.h"

namespace bastewright {

PointsMemory::PointsMemory()
    : store_{std::make_unique<Store>()} {}

PointsMemory::~PointsMemory() = default;

} // namespace bastewright
