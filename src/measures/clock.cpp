#include "measures/clock.h"

#include "measures/sentence.h"

#include <cstdio>

namespace bastewright {
namespace {
constexpr auto kDay = std::chrono::minutes{24 * 60};

bool twoDigits(std::string_view s, int& out) {
    if (s.empty() || s.size() > 2)
        return false;
    out = 0;
    for (const char c : s) {
        if (c < '0' || c > '9')
            return false;
        out = out * 10 + (c - '0');
    }
    return true;
}
} // namespace

tl::expected<ClockTime, std::string> parseClock(std::string_view text) {
    const auto colon = text.find(':');
    int h = 0, m = 0;
    if (colon == std::string_view::npos || !twoDigits(text.substr(0, colon), h) ||
        text.size() - colon != 3 || !twoDigits(text.substr(colon + 1), m) || h > 23 || m > 59)
        return tl::make_unexpected(
            std::string{"a time of day from 00:00 to 23:59, such as 13:00, is accepted"});
    return ClockTime{std::chrono::minutes{h * 60 + m}};
}

std::string format(ClockTime t) {
    auto m = t.sinceMidnight % kDay;
    if (m.count() < 0)
        m += kDay;
    char buffer[8];
    std::snprintf(buffer, sizeof buffer, "%02d:%02d", int(m.count() / 60) % 24,
                  int(m.count() % 60));
    return buffer;
}

ClockTime after(ClockTime start, Seconds s) {
    return {start.sinceMidnight + std::chrono::floor<std::chrono::minutes>(s)};
}

Seconds wholeMinutes(Seconds s) {
    return std::chrono::floor<std::chrono::minutes>(s);
}

std::string formatSpan(Seconds s) {
    return core::said(s).english();
}

} // namespace bastewright
