#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

namespace bastewright::crew {

/// One text from several.
inline std::string words(std::initializer_list<std::string_view> parts) {
    std::string all;
    for (const std::string_view part : parts)
        all.append(part);
    return all;
}

} // namespace bastewright::crew
