#include "planners/points/memory_store.h"

namespace bastewright {

PatternMemory::PatternMemory()
    : store_{std::make_unique<Store>()} {}
PatternMemory::~PatternMemory() = default;

} // namespace bastewright
