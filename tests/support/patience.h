#pragma once

#include <cstdlib>

namespace bastewright {

/// How many times as long a test may take as it does in a release build: `tests/sanitize.sh` says
/// that its programs are slow.
inline int slowness() {
    return std::getenv("BASTEWRIGHT_SANITIZED") ? 10 : 1;
}

} // namespace bastewright
