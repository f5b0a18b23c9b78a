#include "measures/printable.h"

#include <algorithm>

namespace bastewright {

std::string printable(std::string_view text, std::size_t most) {
    std::size_t end = std::min(most, text.size());
    while (end > 0 && end < text.size() && (text[end] & 0xC0) == 0x80) // not inside a character
        --end;
    std::string out{text.substr(0, end)};
    std::ranges::replace_if(
        out, [](char c) { return (c >= 0 && c < ' ') || c == '\x7f'; }, ' ');
    return out;
}

} // namespace bastewright
