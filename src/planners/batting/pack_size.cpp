#include "planners/batting/pack_size.h"

#include <algorithm>
#include <cctype>

namespace bastewright::batting {
namespace {

/// A smaller pack is no batting for a quilt.
constexpr Length kNarrowest = Length::inches(20);

} // namespace

std::optional<PackSize> packNamed(std::string_view text, Unit unit) {
    const auto same = [](char a, char b) {
        return std::tolower(static_cast<unsigned char>(a)) ==
               std::tolower(static_cast<unsigned char>(b));
    };
    for (const PackSize& p : kPackSizes)
        if (std::ranges::equal(p.name, text, same))
            return p;
    for (const std::string_view by : {"×", "x", "X", "by"}) {
        const auto at = text.find(by);
        if (at == std::string_view::npos)
            continue;
        const auto width = parseLength(text.substr(0, at), unit);
        const auto length = parseLength(text.substr(at + by.size()), unit);
        if (width && length && *width >= kNarrowest && *length >= kNarrowest)
            return PackSize{text, {*width, *length}};
    }
    return std::nullopt;
}

bool holds(Size pack, Size needed) {
    return (needed.width <= pack.width && needed.length <= pack.length) ||
           (needed.width <= pack.length && needed.length <= pack.width);
}

std::optional<PackSize> smallestPack(Size needed) {
    for (const PackSize& p : kPackSizes)
        if (holds(p.size, needed))
            return p;
    return std::nullopt;
}

} // namespace bastewright::batting
