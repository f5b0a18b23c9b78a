#pragma once

#include <tl/expected.hpp>

#include <chrono>
#include <compare>
#include <string>
#include <string_view>

namespace bastewright {

using Seconds = std::chrono::seconds;

/// A time of day, to the minute: 00:00 to 23:59.
struct ClockTime {
    std::chrono::minutes sinceMidnight{};
    auto operator<=>(const ClockTime&) const = default;
};

/// Reads "13:00" or "9:05" (24 hours). The error says what is accepted.
tl::expected<ClockTime, std::string> parseClock(std::string_view text);

/// A time of day as people type it: "13:00", "1:30 pm", "1.30 PM", "3". Without am or pm an hour
/// before noon that comes before `begin` is taken in the afternoon: where the work begins at 13:00,
/// "1:30" is 13:30. The error says what to enter.
tl::expected<ClockTime, std::string> parseTypedClock(std::string_view text, ClockTime begin);

/// "13:00"; wraps round midnight.
std::string format(ClockTime t);

/// The clock time so many seconds after a start, rounded down to the minute.
ClockTime after(ClockTime start, Seconds s);

/// Cut to the minute as `after` cuts: the span to show beside the clock time it ends at.
Seconds wholeMinutes(Seconds s);

/// "1 h 05 min", "35 min", "under a minute".
std::string formatSpan(Seconds s);

} // namespace bastewright
