#include "job/colour.h"

namespace bastewright {
namespace {

std::optional<unsigned> hexDigit(char c) {
    if (c >= '0' && c <= '9')
        return unsigned(c - '0');
    if (c >= 'a' && c <= 'f')
        return unsigned(c - 'a') + 10;
    if (c >= 'A' && c <= 'F')
        return unsigned(c - 'A') + 10;
    return {};
}

} // namespace

std::optional<Colour> parseColour(std::string_view text) {
    if (text.size() != 7 || text.front() != '#')
        return {};
    std::uint8_t parts[3]{};
    for (std::size_t i = 0; i < 3; ++i) {
        const auto high = hexDigit(text[1 + 2 * i]), low = hexDigit(text[2 + 2 * i]);
        if (!high || !low)
            return {};
        parts[i] = std::uint8_t(*high * 16 + *low);
    }
    return Colour{parts[0], parts[1], parts[2]};
}

std::string format(Colour colour) {
    constexpr char kDigits[] = "0123456789abcdef";
    std::string out = "#";
    for (const unsigned part : {colour.red, colour.green, colour.blue}) {
        out += kDigits[part / 16];
        out += kDigits[part % 16];
    }
    return out;
}

} // namespace bastewright
