#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace bastewright {

inline std::string passName(int pass) {
    return std::string{"pass "}.append(std::to_string(pass));
}

/// The text with its first letter large, as a sentence begins.
inline std::string capital(std::string_view text) {
    std::string out{text};
    if (!out.empty() && out.front() >= 'a' && out.front() <= 'z')
        out.front() = static_cast<char>(out.front() - 'a' + 'A');
    return out;
}

/// "A1, B1 and C1"; of more than `most` names the rest is "others".
inline std::string listed(const std::vector<std::string>& names, std::size_t most = 6) {
    std::string out;
    const auto shown = std::min(names.size(), most);
    const bool all = shown == names.size();
    for (std::size_t i = 0; i < shown; ++i)
        out.append(i == 0 ? "" : all && i + 1 == shown ? " and " : ", ").append(names[i]);
    return all ? out : out.append(" and others");
}

} // namespace bastewright
