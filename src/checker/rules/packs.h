#pragma once

#include "measures/length_text.h"
#include "plan/layers.h"

#include <array>
#include <optional>
#include <string_view>

namespace bastewright::check {

/// The two sides of a pack of batting, by the name of a size that it is sold in (common practice)
/// or by the size itself: "90 x 108".
inline std::optional<Size> packSize(std::string_view name, Unit unit) {
    struct Pack {
        std::string_view name;
        Size size;
    };
    constexpr std::array kPacks{Pack{"craft", {36_in, 45_in}}, Pack{"crib", {45_in, 60_in}},
                                Pack{"throw", {60_in, 60_in}}, Pack{"twin", {72_in, 90_in}},
                                Pack{"full", {81_in, 96_in}},  Pack{"queen", {90_in, 108_in}},
                                Pack{"king", {120_in, 120_in}}};
    for (const Pack& p : kPacks)
        if (p.name == name)
            return p.size;
    for (const std::string_view by : {"×", "x", "X", "by"})
        if (const auto at = name.find(by); at != std::string_view::npos) {
            const auto width = parseLength(name.substr(0, at), unit);
            const auto length = parseLength(name.substr(at + by.size()), unit);
            if (width && length)
                return Size{*width, *length};
        }
    return {};
}

} // namespace bastewright::check
