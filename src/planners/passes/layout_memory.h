#pragma once

#include "planners/passes/layout.h"

#include <optional>
#include <vector>

namespace bastewright {

/// Layouts of one quilt that were found before, by everything they depend on, so that another way
/// to share the room, or another helper, does not look for them again. It never changes a result.
/// For one quilt with one set of points; not thread-safe.
class LayoutMemory {
public:
    /// As `layOut` says.
    std::optional<Layout> layOut(const LayoutInput& in);

private:
    struct Known {
        Lie lie;
        Basting::Start start;
        Length row;
        bool search, briefly;
        std::optional<Layout> layout;
    };
    std::vector<Point> points_; ///< whose layouts are known
    std::vector<Length> x_, y_; ///< its cuts
    std::vector<Known> known_;
};

} // namespace bastewright
