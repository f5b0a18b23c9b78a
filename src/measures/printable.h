#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace bastewright {

/// The first `most` bytes of a text from elsewhere, whole characters of UTF-8 only. Spaces stand
/// for control characters, which would break a sentence or steer a terminal.
std::string printable(std::string_view text, std::size_t most);

} // namespace bastewright
