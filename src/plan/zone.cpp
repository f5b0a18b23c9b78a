#include "plan/zone.h"

#include <algorithm>
#include <charconv>

namespace bastewright {

std::string zoneId(int pass, std::string_view place, int turn) {
    std::string out = "p" + std::to_string(pass) + ".";
    out += place;
    out += std::to_string(turn);
    return out;
}

std::string_view zoneName(std::string_view id) {
    const auto dot = id.rfind('.');
    return dot == std::string_view::npos ? id : id.substr(dot + 1);
}

std::string_view zonePlace(std::string_view id) {
    const std::string_view name = zoneName(id);
    const auto digit = name.find_first_of("0123456789");
    return digit == std::string_view::npos ? std::string_view{} : name.substr(0, digit);
}

int zoneTurn(std::string_view id) {
    const std::string_view name = zoneName(id);
    const auto digit = std::min(name.find_first_of("0123456789"), name.size());
    int turn = 0;
    std::from_chars(name.data() + digit, name.data() + name.size(), turn);
    return turn;
}

std::string placeLetter(std::size_t index) {
    std::string out;
    for (std::size_t n = index + 1; n > 0; n = (n - 1) / 26)
        out.insert(out.begin(), static_cast<char>('A' + (n - 1) % 26));
    return out;
}

} // namespace bastewright
