#pragma once

#include <memory>

namespace bastewright {

/// What earlier plans found out about points, so that the next plan comes
/// quicker: patterns of tiles by their seams and rules, finished layouts by
/// everything they depend on.
///
/// It never changes a result: what is remembered is what would be found again.
/// May be shared between threads. Holds a few hundred entries and forgets all
/// when full.
class PatternMemory {
public:
    PatternMemory();
    ~PatternMemory();
    PatternMemory(const PatternMemory&) = delete;
    PatternMemory& operator=(const PatternMemory&) = delete;

    struct Store;
    Store& store() const { return *store_; }

private:
    std::unique_ptr<Store> store_;
};

} // namespace bastewright
