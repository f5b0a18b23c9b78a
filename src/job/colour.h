#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace bastewright {

/// The colour of a fabric, as screens have it (sRGB).
struct Colour {
    std::uint8_t red = 0, green = 0, blue = 0;
    auto operator<=>(const Colour&) const = default;
};

/// Reads "#rrggbb", of either case; nothing where it is anything else.
std::optional<Colour> parseColour(std::string_view text);

/// As "#rrggbb", in small letters.
std::string format(Colour colour);

} // namespace bastewright
