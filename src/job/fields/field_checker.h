#pragma once

#include "job/fields/field_name.h"
#include "job/fields/field_reports.h"
#include "job/job_json.h"
#include "measures/clock.h"
#include "measures/geometry.h"

#include <algorithm>
#include <concepts>
#include <initializer_list>
#include <optional>
#include <vector>

namespace bastewright {

/// Holds values in memory to the same rules as FieldReader holds those of files, and names fields
/// as they are on screens. Private to this folder; its members mirror those of FieldReader.
class FieldChecker : public FieldReports {
public:
    static constexpr bool kReads = false, kChecks = true;
    using FieldReports::unit;

    FieldChecker(std::string pointer, Problems& problems)
        : FieldReports{std::move(pointer), problems} {}

    static bool has(std::string_view) { return true; }
    void require(std::initializer_list<std::string_view>) const {}
    void requireEither(std::initializer_list<std::string_view>,
                       std::initializer_list<std::string_view>) const {}

    void unit(const FieldName&, Unit value) { setUnit(value); }
    void name(const FieldName& field, const std::string& value);
    void text(const FieldName& field, const std::string& value);
    void text(const FieldName& field, const std::optional<std::string>& value) {
        text(field, value.value_or(std::string{}));
    }
    void flag(const FieldName&, bool) {}
    void count(const FieldName& field, int value, Within<int> accepted);
    void number(const FieldName& field, double value, Within<double> accepted);
    void length(const FieldName& field, Length value, Within<Length> accepted);
    void length(const FieldName& field, std::optional<Length> value, Within<Length> accepted) {
        if (value)
            length(field, *value, accepted);
    }
    void clock(const FieldName& field, std::optional<ClockTime> value);
    void lengths(const FieldName& field, const std::vector<Length>& values, Within<Length> accepted,
                 std::size_t most);
    void diagonals(const FieldName& field, const std::vector<Length>& values,
                   Within<Length> accepted);
    void readings(const FieldName& field, const std::vector<Length>& values,
                  Within<Length> accepted, std::size_t most);
    void point(const FieldName& field, Point value, Within<Length> accepted);
    void colours(const FieldName& field, const std::vector<Colour>& values,
                 Within<std::size_t> accepted);
    void photo(const FieldName&, const Photo&) {}
    template <class E, std::size_t N>
    void word(const FieldName&, const E&, const std::array<Word<E>, N>&) {}
    template <class E, std::size_t N>
    void word(const FieldName&, const std::optional<E>&, const std::array<Word<E>, N>&) {}
    template <class E, std::size_t N>
    void words(const FieldName& field, const std::vector<E>& values,
               const std::array<Word<E>, N>&) {
        note(field);
        for (std::size_t i = 0; i < values.size(); ++i)
            if (std::find(values.begin(), values.begin() + std::ptrdiff_t(i), values[i]) !=
                values.begin() + std::ptrdiff_t(i))
                stop(field.key, core::says("has the same entry twice."));
    }

    template <std::invocable<FieldChecker&> Fn>
    void object(const FieldName& field, Fn fn) {
        note(field);
        FieldChecker inner = child(pointerTo(pointer_, field.key));
        fn(inner);
    }
    template <class T, class Fn>
    void object(const FieldName& field, const std::optional<T>& value, Fn fn) {
        if (value)
            object(field, [&](FieldChecker& inner) { fn(inner, *value); });
    }
    template <class T, class Fn>
    void list(const FieldName& field, const std::vector<T>& values, std::size_t most, Fn fn) {
        note(field);
        if (!atMost(field.key, values.size(), most))
            return;
        for (std::size_t i = 0; i < values.size(); ++i) {
            FieldChecker inner =
                child(pointerTo(pointerTo(pointer_, field.key), std::to_string(i)));
            fn(inner, values[i]);
        }
    }

private:
    std::vector<FieldName> noted_; ///< fields of this object that were visited

    void note(const FieldName& field) { noted_.push_back(field); }
    /// A value that is refused: what to enter instead.
    void enter(const FieldName& field, const Sentence& what, const Sentence& value);
    FieldChecker child(std::string pointer) const {
        FieldChecker inner{std::move(pointer), *problems_};
        inner.unit_ = unit_;
        return inner;
    }
    static Sentence labelled(const FieldName& field);
    Sentence named(const std::string& at) const override;
};

} // namespace bastewright
