#include "measures/length_text.h"

#include "measures/printable.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numeric>
#include <optional>
#include <utility>

namespace bastewright {
namespace {

__extension__ using Wide = __int128;

constexpr std::int64_t kLimit = 1'000'000'000'000; // 1 km
constexpr const char* kAccepted =
    "a length such as 12 1/2, 12.5 in, 317.5 mm, 31.75 cm, 2 yd is accepted";

std::string failure(std::string_view what) {
    return std::string{what}.append("; ").append(kAccepted);
}

/// The first characters of what was not understood, in quotes.
std::string quoted(std::string_view text) {
    constexpr std::size_t kShown = 20;
    return "'" + printable(text, kShown) + "'";
}

/// A fraction with a positive denominator.
struct Rational {
    Wide num = 0, den = 1;
};

/// In lowest terms. Terms of a length are below 10^21 with denominators up to 5000, and a length
/// has at most one term for each of six units, so that nothing here comes near 2^127.
Rational sum(Rational a, Rational b) {
    const Rational s{a.num * b.den + b.num * a.den, a.den * b.den};
    Wide x = s.num, y = s.den;
    while (y != 0)
        x = std::exchange(y, x % y);
    return {s.num / x, s.den / x};
}

/// Nearest whole number, halves away from zero; num >= 0.
Wide rounded(Rational r) {
    return (2 * r.num + r.den) / (2 * r.den); // NOLINT(clang-analyzer-core.DivideZero): den > 0
}

struct UnitName {
    std::string_view text;
    std::int64_t nm;
};
// Longest names first: the reader takes the first that matches.
constexpr std::array kUnits{
    UnitName{"inches", Length::kInch},    UnitName{"yards", 36 * Length::kInch},
    UnitName{"inch", Length::kInch},      UnitName{"yard", 36 * Length::kInch},
    UnitName{"feet", 12 * Length::kInch}, UnitName{"foot", 12 * Length::kInch},
    UnitName{"yds", 36 * Length::kInch},  UnitName{"″", Length::kInch},
    UnitName{"′", 12 * Length::kInch},    UnitName{"”", Length::kInch},
    UnitName{"’", 12 * Length::kInch},    UnitName{"in", Length::kInch},
    UnitName{"yd", 36 * Length::kInch},   UnitName{"ft", 12 * Length::kInch},
    UnitName{"''", Length::kInch},        UnitName{"mm", 1'000'000},
    UnitName{"cm", 10'000'000},           UnitName{"m", 1'000'000'000},
    UnitName{"\"", Length::kInch},        UnitName{"'", 12 * Length::kInch},
};

struct Vulgar {
    std::string_view text;
    int num, den;
};
constexpr std::array kVulgar{Vulgar{"½", 1, 2}, Vulgar{"¼", 1, 4}, Vulgar{"¾", 3, 4},
                             Vulgar{"⅛", 1, 8}, Vulgar{"⅜", 3, 8}, Vulgar{"⅝", 5, 8},
                             Vulgar{"⅞", 7, 8}, Vulgar{"⅓", 1, 3}, Vulgar{"⅔", 2, 3}};

std::int64_t nanometresIn(Unit u) {
    return u == Unit::inch ? Length::kInch : u == Unit::centimetre ? 10'000'000 : 1'000'000;
}

class Reader {
public:
    explicit Reader(std::string_view text)
        : rest_{text} {}

    tl::expected<Length, std::string> read(Unit bare) {
        skipSpace();
        const bool negative = take("-") || take("−");
        skipSpace();
        if (rest_.empty())
            return tl::make_unexpected(failure("it is empty"));
        Rational total;
        std::int64_t lastUnit = 0;
        while (!rest_.empty()) {
            const auto value = number();
            if (!value)
                return tl::make_unexpected(failure(problem_));
            skipSpace();
            const auto unit = unitName();
            if (!unit && !rest_.empty())
                return tl::make_unexpected(failure(quoted(rest_) + " is not understood"));
            if (!unit && lastUnit != 0)
                return tl::make_unexpected(failure("its last number has no unit"));
            const std::int64_t nm = unit ? *unit : nanometresIn(bare);
            if (lastUnit != 0 && nm >= lastUnit)
                return tl::make_unexpected(failure("its units must go from larger to smaller"));
            lastUnit = nm;
            total = sum(total, {value->num * nm, value->den});
            if (rounded(total) > kLimit)
                return tl::make_unexpected(
                    std::string{"it is longer than 1 km, the longest accepted"});
            skipSpace();
        }
        const auto nm = static_cast<std::int64_t>(rounded(total));
        return Length::nanometres(negative ? -nm : nm);
    }

private:
    std::string_view rest_;
    std::string problem_;

    bool take(std::string_view token) {
        if (!rest_.starts_with(token))
            return false;
        rest_.remove_prefix(token.size());
        return true;
    }
    bool takeSlash() { return take("/") || take("⁄"); }
    void skipSpace() {
        while (take(" ") || take("\t") || take("\u00a0") || take("\u202f")) {
        }
    }
    static bool isDigit(char c) { return c >= '0' && c <= '9'; }
    static bool isLetter(char c) { return c >= 'a' && c <= 'z'; }
    static char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; }

    /// Digits, at most `most` of them; nothing where there are none or too many.
    std::optional<std::int64_t> digits(std::size_t most) {
        std::int64_t n = 0;
        std::size_t count = 0;
        while (count < rest_.size() && isDigit(rest_[count])) {
            if (count == most) {
                problem_ = "it has too many digits";
                return {};
            }
            n = n * 10 + (rest_[count++] - '0');
        }
        if (count == 0) {
            problem_ = quoted(rest_) + " is not a number";
            return {};
        }
        rest_.remove_prefix(count);
        return n;
    }

    std::optional<Rational> fraction(std::int64_t numerator) {
        skipSpace();
        const auto den = digits(4);
        if (!den)
            return {};
        if (*den < 1 || *den > 1000) {
            problem_ = "a fraction's lower number must be 1 to 1000";
            return {};
        }
        return Rational{numerator, *den};
    }

    std::optional<Rational> vulgar() {
        for (const auto& v : kVulgar)
            if (take(v.text))
                return Rational{v.num, v.den};
        return {};
    }

    /// 12, 12.5, 12,5, 1/2, 12 1/2, 12-1/2, ½, 12½.
    std::optional<Rational> number() {
        if (const auto v = vulgar())
            return v;
        if (rest_.starts_with('.') || rest_.starts_with(','))
            return decimals({0, 1});
        const auto whole = digits(9);
        if (!whole)
            return {};
        if (rest_.starts_with('.') || rest_.starts_with(','))
            return decimals({*whole, 1});
        if (takeSlash())
            return fraction(*whole);
        const auto before = rest_;
        if (!take("-"))
            skipSpace();
        if (const auto v = vulgar())
            return sum({*whole, 1}, *v);
        // A second number belongs to this one only where a slash follows it.
        std::size_t n = 0;
        while (n < rest_.size() && isDigit(rest_[n]))
            ++n;
        if (n > 0 && (rest_.substr(n).starts_with("/") || rest_.substr(n).starts_with("⁄"))) {
            const auto numerator = digits(4);
            if (!numerator)
                return {};
            takeSlash();
            const auto part = fraction(*numerator);
            if (!part)
                return {};
            return sum({*whole, 1}, *part);
        }
        rest_ = before;
        return Rational{*whole, 1};
    }

    std::optional<Rational> decimals(Rational whole) {
        rest_.remove_prefix(1);
        const auto before = rest_.size();
        const auto part = digits(9);
        if (!part)
            return {};
        Wide scale = 1;
        for (auto n = before - rest_.size(); n > 0; --n)
            scale *= 10;
        return sum(whole, {*part, scale});
    }

    std::optional<std::int64_t> unitName() {
        for (const auto& u : kUnits) {
            const auto head = rest_.substr(0, u.text.size());
            if (!std::ranges::equal(head, u.text, {}, lower))
                continue;
            const auto after = rest_.substr(u.text.size());
            if (isLetter(u.text.back()) && !after.empty() && isLetter(lower(after.front())))
                continue;
            rest_ = after;
            take(".");
            return u.nm;
        }
        return {};
    }
};

} // namespace

tl::expected<Length, std::string> parseLength(std::string_view text, Unit bare) {
    if (text.size() > 64)
        return tl::make_unexpected(failure("it is longer than 64 characters"));
    return Reader{text}.read(bare);
}

tl::expected<Length, std::string> lengthOf(double number, Unit unit) {
    if (!std::isfinite(number))
        return tl::make_unexpected(failure("it is not a finite number"));
    const double nm = number * double(nanometresIn(unit));
    if (std::abs(nm) > double(kLimit))
        return tl::make_unexpected(std::string{"it is longer than 1 km, the longest accepted"});
    return Length::nanometres(std::llround(nm));
}

double inUnit(Length l, Unit unit) {
    return double(l.nm()) / double(nanometresIn(unit));
}

std::string format(Length l, Unit unit, bool withUnit) {
    char buffer[48];
    if (unit != Unit::inch) {
        // Centimetres show a millimetre; whole ones drop the zero.
        const auto tenths = std::llround(double(l.nm()) / double(nanometresIn(unit)) * 10.0);
        if (tenths % 10 == 0)
            std::snprintf(buffer, sizeof buffer, "%lld", static_cast<long long>(tenths / 10));
        else
            std::snprintf(buffer, sizeof buffer, "%s%lld.%lld", tenths < 0 ? "-" : "",
                          std::llabs(tenths) / 10, std::llabs(tenths) % 10);
    } else {
        const auto eighths = std::llround(double(l.nm()) * 8.0 / double(Length::kInch));
        const auto whole = std::llabs(eighths) / 8, part = std::llabs(eighths) % 8;
        const char* sign = eighths < 0 ? "-" : "";
        const auto common = std::gcd(part, 8LL);
        if (part == 0)
            std::snprintf(buffer, sizeof buffer, "%s%lld", sign, whole);
        else if (whole == 0)
            std::snprintf(buffer, sizeof buffer, "%s%lld/%lld", sign, part / common, 8 / common);
        else
            std::snprintf(buffer, sizeof buffer, "%s%lld %lld/%lld", sign, whole, part / common,
                          8 / common);
    }
    std::string text = buffer;
    if (withUnit)
        text.append(" ").append(symbol(unit));
    return text;
}

std::string formatYardsUp(Length l) {
    // 1/8 yd = 4 1/2 in; less than nothing is nothing to buy.
    const auto eighths = ceilDiv(std::max(l, Length{}), Length::inch64ths(288));
    const auto whole = eighths / 8, part = eighths % 8;
    const auto common = std::gcd(part, std::int64_t{8});
    char buffer[48];
    if (part == 0)
        std::snprintf(buffer, sizeof buffer, "%lld yd", static_cast<long long>(whole));
    else if (whole == 0)
        std::snprintf(buffer, sizeof buffer, "%lld/%lld yd", static_cast<long long>(part / common),
                      static_cast<long long>(8 / common));
    else
        std::snprintf(buffer, sizeof buffer, "%lld %lld/%lld yd", static_cast<long long>(whole),
                      static_cast<long long>(part / common), static_cast<long long>(8 / common));
    return buffer;
}

std::string formatWeight(double kilograms, Unit unit) {
    constexpr double kKilogramsInPound = 0.45359237; // exact since 1959
    char buffer[48];
    const double pounds = kilograms / kKilogramsInPound;
    if (unit == Unit::inch && std::round(pounds) >= 1)
        std::snprintf(buffer, sizeof buffer, "%lld lb", std::llround(pounds));
    else if (unit == Unit::inch)
        std::snprintf(buffer, sizeof buffer, "%lld oz", std::llround(pounds * 16));
    else
        std::snprintf(buffer, sizeof buffer, "%.*f kg",
                      std::llround(kilograms * 10) % 10 == 0 ? 0 : 1, kilograms);
    return buffer;
}

} // namespace bastewright
