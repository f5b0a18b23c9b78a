#include "checker/pointer.h"

#include <algorithm>

namespace bastewright::check {

Pointer common(const Pointer& a, const Pointer& b) {
    // With a '/' behind, so that "/zones/1" is no part of "/zones/12".
    const std::string one = a.text_ + '/', two = b.text_ + '/';
    const auto [differs, other] = std::ranges::mismatch(one, two);
    const std::string shared(one.begin(), differs);
    return Pointer{shared.substr(0, shared.rfind('/'))};
}

} // namespace bastewright::check
