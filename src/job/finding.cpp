#include "job/finding.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace bastewright {

Finding ofQuilt(Finding finding, int quilt, bool severalQuilts) {
    constexpr std::array<std::string_view, 3> kShared{"/room/", "/stash/", "/helpers"};
    finding.quilt = quilt;
    const bool shared = std::ranges::any_of(
        kShared, [&](std::string_view key) { return finding.field.starts_with(key); });
    if (severalQuilts && !shared)
        finding.field = "/jobs/" + std::to_string(quilt) + finding.field;
    return finding;
}

} // namespace bastewright
