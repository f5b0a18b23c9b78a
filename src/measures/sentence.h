#pragma once

#include "measures/clock.h"
#include "measures/geometry.h"
#include "measures/length_text.h"

#include <compare>
#include <concepts>
#include <cstdint>
#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

namespace bastewright {

/// Something a person reads, kept so that it can be said in another language: a form with numbered
/// places, and what stands in them.
///
/// The core says everything in English. Whoever shows it translates the form and fills its places
/// again (`src/language`); names stay as they are, figures and times get the forms of the language
/// and the device. Two sentences are equal where they read the same in English.
class Sentence {
public:
    enum class Kind {
        name,   ///< said as it is in every language: a person, a zone, a file, a person's own words
        figure, ///< a number or a length, with a decimal point
        time,   ///< a time of day, "13:05"
        words   ///< a form in English; `%1` … `%9` stand for `values`
    };

    Sentence() = default;
    Sentence(std::string name); // NOLINT: a name may stand wherever a sentence may
    Sentence(std::string_view name)
        : Sentence{std::string{name}} {}
    Sentence(const char* name)
        : Sentence{std::string{name}} {}
    Sentence(Kind kind, std::string text, std::vector<Sentence> values = {});

    Kind kind() const { return kind_; }
    /// The form of words; a name or a figure itself.
    const std::string& text() const { return text_; }
    const std::vector<Sentence>& values() const { return values_; }
    bool empty() const { return text_.empty(); }

    std::string english() const;
    explicit operator std::string() const { return english(); }

    std::strong_ordering operator<=>(const Sentence& other) const;
    bool operator==(const Sentence& other) const { return (*this <=> other) == 0; }

private:
    Kind kind_ = Kind::name;
    std::string text_;
    std::vector<Sentence> values_;
};

using Sentences = std::vector<Sentence>;

std::ostream& operator<<(std::ostream& out, const Sentence& sentence);

} // namespace bastewright

/// How the core says things. The first argument of `core::says` is always a literal: that is where
/// the catalogue of translations finds the forms. Outside `bastewright`, so that `lupdate` calls
/// the context "core" wherever it meets one.
namespace core {

using bastewright::ClockTime;
using bastewright::Length;
using bastewright::Seconds;
using bastewright::Sentence;
using bastewright::Sentences;
using bastewright::Side;
using bastewright::Unit;

inline Sentence said(Sentence s) {
    return s;
}
Sentence said(std::integral auto number) {
    return {Sentence::Kind::figure, std::to_string(number)};
}
Sentence said(ClockTime time);
/// "1 h 05 min", "35 min", "under a minute".
Sentence said(Seconds span);

/// A form and what stands in its places, in their order.
template <class... Values>
Sentence says(const char* form, Values&&... values) {
    return {Sentence::Kind::words, form, {said(std::forward<Values>(values))...}};
}

/// "12 1/2 in".
Sentence length(Length l, Unit unit);
/// "7 lb" in a job in inches, "3.2 kg" in any other.
Sentence weight(double kilograms, Unit unit);
/// "54 × 72 in".
Sentence size(Length width, Length length, Unit unit);
/// A number as it is printed, with a decimal point.
Sentence figure(std::string printed);
/// "head": a side, in the middle of a sentence.
Sentence side(Side side);

/// "A1, B1 and C1"; of more than `most` the rest is "others".
Sentence listed(const Sentences& items, std::size_t most = 6);
Sentence listed(const std::vector<std::string>& names, std::size_t most = 6);
/// "A1, B1, C1".
Sentence commaList(const Sentences& items);

} // namespace core
