#pragma once

#include "measures/length.h"

#include <tl/expected.hpp>

#include <string>
#include <string_view>

namespace bastewright {

/// The unit a job is written and shown in.
enum class Unit { inch, centimetre, millimetre };

constexpr std::string_view symbol(Unit u) {
    return u == Unit::inch ? "in" : u == Unit::centimetre ? "cm" : "mm";
}

/// Reads a length as people write it: `12`, `12 1/2`, `12-1/2`, `12.5 in`, `12 1/2"`, `5' 6"`, `2
/// yd`, `317.5mm`, `2,5 cm`, `1.2 m`. A bare number is in `bare`.
///
/// The result is exact, or rounded to the nearest nanometre where the text is not a whole number of
/// them (thirds of an inch). The error is one clause that says what was wrong and what is accepted;
/// it does not name the field. Limits: magnitude at most 1 km, denominators 1…1000.
tl::expected<Length, std::string> parseLength(std::string_view text, Unit bare);

/// Same rule for a bare number from a file. Rejects what is not finite or above 1 km.
tl::expected<Length, std::string> lengthOf(double number, Unit unit);

/// The number of `unit`s as a decimal without loss (a length read from a file writes back equal).
double inUnit(Length l, Unit unit);

/// For people: inches to the nearest 1/8 as `12 1/2 in`; centimetres to 1 mm as `31.8 cm`.
/// `withUnit` false leaves the symbol out.
std::string format(Length l, Unit unit, bool withUnit = true);

/// Yards to the nearest 1/8 above, as cloth is bought: `5 1/2 yd`.
std::string formatYardsUp(Length l);

/// A weight for people: whole pounds where lengths are in inches (ounces below one pound), else
/// kilograms to 0.1.
std::string formatWeight(double kilograms, Unit unit);

} // namespace bastewright
