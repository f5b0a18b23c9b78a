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

tl::expected<ClockTime, std::string> parseTypedClock(std::string_view text, ClockTime begin) {
    using namespace std::chrono;
    std::string digits;
    std::string letters;
    for (const char c : text) {
        if (c >= '0' && c <= '9' && letters.empty())
            digits += c;
        else if ((c == ':' || c == '.') && letters.empty())
            digits += ':';
        else if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'))
            letters += static_cast<char>(c | 0x20);
        else if (c != ' ' && c != '.' && c != '\xC2' && c != '\xA0') // a no-break space in UTF-8
            letters += '?';
    }
    if (digits.find(':') == std::string::npos)
        digits += ":00";
    const bool am = letters == "am" || letters == "a", pm = letters == "pm" || letters == "p";
    auto read = parseClock(digits);
    const bool twelve = read && read->sinceMidnight >= hours{1} && read->sinceMidnight < hours{13};
    if (!read || (!letters.empty() && !((am || pm) && twelve)))
        return tl::make_unexpected(std::string{"enter a time of day such as 13:00 or 1:00 pm"});
    auto& time = read->sinceMidnight;
    if (am || pm)
        time = time % hours{12} + (pm ? hours{12} : hours{0});
    else if (time < hours{12} && time < begin.sinceMidnight &&
             time + hours{12} >= begin.sinceMidnight)
        time += hours{12};
    return read;
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
