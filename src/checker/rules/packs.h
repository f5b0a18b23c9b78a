#pragma once

#include "checker/view.h"
#include "measures/length_text.h"

#include <algorithm>
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

/// Fabric and batting off the roll are sold by an eighth of a yard, or by 5 cm (common practice).
inline Length soldBy(const QuiltView& v) {
    return v.job.unit == Unit::inch ? Length::inch64ths(36 * 8) : Length::millimetres(50);
}

/// A roll of batting is of a width the job lists, of the usual ones where it lists none, or of the
/// width it asks for.
inline bool isRollSold(const QuiltView& v, Length width) {
    const auto& rolls = v.job.batting.rolls;
    const std::vector<Length>& sold = rolls.empty() ? Batting{}.rolls : rolls;
    return v.job.batting.roll == width || std::ranges::find(sold, width) != sold.end();
}

} // namespace bastewright::check
