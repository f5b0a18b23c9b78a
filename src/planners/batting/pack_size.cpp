#include "planners/batting/pack_size.h"

#include <algorithm>
#include <cctype>

namespace bastewright::batting {

std::optional<PackSize> packNamed(std::string_view name) {
    const auto same = [](char a, char b) {
        return std::tolower(static_cast<unsigned char>(a)) ==
               std::tolower(static_cast<unsigned char>(b));
    };
    for (const PackSize& p : kPackSizes)
        if (std::ranges::equal(p.name, name, same))
            return p;
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
