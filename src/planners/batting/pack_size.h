#pragma once

#include "plan/plan.h"

#include <array>
#include <optional>
#include <string_view>

namespace bastewright::batting {

/// A size batting is sold in.
struct PackSize {
    std::string_view name;
    Size size;
};

/// Generic sizes, smallest first (common practice; makers differ by an inch or two).
inline constexpr std::array kPackSizes{
    PackSize{"craft", {Length::inches(36), Length::inches(45)}},
    PackSize{"crib", {Length::inches(45), Length::inches(60)}},
    PackSize{"throw", {Length::inches(60), Length::inches(60)}},
    PackSize{"twin", {Length::inches(72), Length::inches(90)}},
    PackSize{"full", {Length::inches(81), Length::inches(96)}},
    PackSize{"queen", {Length::inches(90), Length::inches(108)}},
    PackSize{"king", {Length::inches(120), Length::inches(120)}},
};

/// By name, whatever the case of its letters, or by its size: "90 x 108", "90 × 108 in", bare
/// numbers in `unit`. The name of the result is one of `kPackSizes`, or `text` itself.
std::optional<PackSize> packNamed(std::string_view text, Unit unit);

/// The smallest that holds a size, turned or not. Nothing above 120 × 120 in.
std::optional<PackSize> smallestPack(Size needed);

/// True where it holds the size as it is, or turned a quarter.
bool holds(Size pack, Size needed);

} // namespace bastewright::batting
