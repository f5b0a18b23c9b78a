#include "job/fields/field_writer.h"

#include <cmath>
#include <cstdlib>

namespace bastewright {
namespace {

/// Decimals enough for any whole number of nanometres: 1 nm is 0.0000001 cm and about 0.00000004
/// in.
constexpr int kMostDecimals = 9;

std::int64_t power10(int n) {
    std::int64_t out = 1;
    for (; n > 0; --n)
        out *= 10;
    return out;
}

/// The length as an exact decimal of millimetres.
std::string inMillimetres(Length length) {
    constexpr std::int64_t kMillimetre = 1'000'000;
    const auto whole = std::llabs(length.nm() / kMillimetre);
    const auto part = std::llabs(length.nm() % kMillimetre);
    std::string text{length < Length{} ? "-" : ""};
    text += std::to_string(whole);
    if (part != 0) {
        auto decimals = std::to_string(kMillimetre + part).substr(1);
        decimals.erase(decimals.find_last_not_of('0') + 1);
        text.append(".").append(decimals);
    }
    return text + " mm";
}

} // namespace

Json lengthJson(Length length, Unit unit, LengthStyle style) {
    __extension__ using Wide = __int128;
    const std::int64_t one = unit == Unit::inch         ? Length::kInch
                             : unit == Unit::centimetre ? 10'000'000
                                                        : 1'000'000;
    for (int decimals = 0; decimals <= kMostDecimals; ++decimals) {
        const auto scale = power10(decimals);
        const Wide scaled = Wide{length.nm()} * scale;
        const bool exact = scaled % one == 0;
        // Nearest decimal of so many places; quotients of whole numbers below 2^53 are correctly
        // rounded, so that the number prints with just these places.
        const auto nearest =
            static_cast<std::int64_t>((2 * scaled + (scaled < 0 ? -one : one)) / (2 * Wide{one}));
        const double value = double(nearest) / double(scale);
        if (exact || (style == LengthStyle::numbersOnly && lengthOf(value, unit) == length))
            return decimals == 0 ? Json(nearest) : Json(value);
    }
    return inMillimetres(length);
}

Json FieldWriter::numberJson(double value) {
    if (std::abs(value) < 1e15 && value == std::floor(value))
        return static_cast<std::int64_t>(value);
    return value;
}

} // namespace bastewright
