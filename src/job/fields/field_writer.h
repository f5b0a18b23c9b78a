#pragma once

#include "job/fields/field_reader.h"

#include <cstdint>

namespace bastewright {

/// How a length that has no short exact decimal in the file's unit is written.
enum class LengthStyle {
    textWhereInexact, ///< as "8.466667 mm": for files people edit
    numbersOnly       ///< as the shortest decimal that reads back equal: for files programs read
};

/// A length as a number of `unit`s, or as text; reads back equal.
Json lengthJson(Length length, Unit unit, LengthStyle style);

/// Writes values as fields of a JSON object, in the order they are named. The members mirror those
/// of FieldReader; the ranges it takes are not looked at.
class FieldWriter {
public:
    static constexpr bool kReads = false, kChecks = false;

    FieldWriter(Json& object, LengthStyle style)
        : object_{&object}
        , style_{style} {}

    void setUnit(Unit unit) { unit_ = unit; }
    void require(std::initializer_list<std::string_view>) const {}
    void requireEither(std::initializer_list<std::string_view>,
                       std::initializer_list<std::string_view>) const {}

    void unit(std::string_view key, Unit value) {
        unit_ = value;
        word(key, value, kUnitWords);
    }
    void text(std::string_view key, const std::string& value, std::size_t = 0) { put(key, value); }
    void name(std::string_view key, const std::string& value) { put(key, value); }
    void text(std::string_view key, const Sentence& value, std::size_t = 0) {
        put(key, value.english());
    }
    void text(std::string_view key, const std::optional<std::string>& value) {
        if (value)
            put(key, *value);
    }
    void texts(std::string_view key, const std::vector<std::string>& values, std::size_t) {
        put(key, values);
    }
    void texts(std::string_view key, const Sentences& values, std::size_t) {
        Json list = Json::array();
        for (const Sentence& value : values)
            list.push_back(value.english());
        put(key, std::move(list));
    }
    void sentences(std::string_view key, const Sentences& values, std::size_t) {
        Json list = Json::array();
        for (const Sentence& value : values)
            list.push_back(sentenceJson(value));
        put(key, std::move(list));
    }
    void flag(std::string_view key, bool value) { put(key, value); }
    void count(std::string_view key, int value, Within<int>) { put(key, value); }
    void number(std::string_view key, double value, Within<double>) { put(key, numberJson(value)); }
    void seconds(std::string_view key, Seconds value, Within<std::int64_t>) {
        put(key, value.count());
    }
    void length(std::string_view key, Length value, Within<Length>) { put(key, json(value)); }
    void length(std::string_view key, std::optional<Length> value, Within<Length>) {
        if (value)
            put(key, json(*value));
    }
    void clock(std::string_view key, ClockTime value) { put(key, format(value)); }
    void clock(std::string_view key, std::optional<ClockTime> value) {
        if (value)
            put(key, format(*value));
    }
    void lengths(std::string_view key, const std::vector<Length>& values, Within<Length>,
                 std::size_t) {
        Json list = Json::array();
        for (const Length v : values)
            list.push_back(json(v));
        put(key, std::move(list));
    }
    void diagonals(std::string_view key, const std::vector<Length>& values, Within<Length> within) {
        lengths(key, values, within, 2);
    }
    void counts(std::string_view key, const std::vector<int>& values, Within<int>, std::size_t) {
        put(key, Json(values));
    }
    void readings(std::string_view key, const std::vector<Length>& values, Within<Length> accepted,
                  std::size_t most) {
        lengths(key, values, accepted, most);
    }
    void point(std::string_view key, Point value, Within<Length>) {
        put(key, Json::array({json(value.x), json(value.y)}));
    }
    void colours(std::string_view key, const std::vector<Colour>& values, Within<std::size_t>) {
        Json list = Json::array();
        for (const Colour value : values)
            list.push_back(format(value));
        put(key, std::move(list));
    }
    void photo(std::string_view key, const Photo& value) {
        if (!value.empty())
            put(key, value.base64());
    }
    void derived(std::string_view key, double value) { put(key, numberJson(value)); }

    template <class E, std::size_t N>
    void word(std::string_view key, E value, const std::array<Word<E>, N>& known) {
        put(key, textOf(value, known));
    }
    template <class E, std::size_t N>
    void word(std::string_view key, const std::optional<E>& value,
              const std::array<Word<E>, N>& known) {
        if (value)
            word(key, *value, known);
    }
    template <class E, std::size_t N>
    void words(std::string_view key, const std::vector<E>& values,
               const std::array<Word<E>, N>& known) {
        Json list = Json::array();
        for (const E v : values)
            list.push_back(textOf(v, known));
        put(key, std::move(list));
    }

    template <std::invocable<FieldWriter&> Fn>
    void object(std::string_view key, Fn fn) {
        Json inner = Json::object();
        FieldWriter writer = child(inner);
        fn(writer);
        put(key, std::move(inner));
    }
    template <class T, class Fn>
    void object(std::string_view key, const std::optional<T>& value, Fn fn) {
        if (value)
            object(key, [&](FieldWriter& writer) { fn(writer, *value); });
    }
    template <class T, class Fn>
    void list(std::string_view key, const std::vector<T>& values, std::size_t, Fn fn) {
        Json items = Json::array();
        for (const T& value : values) {
            Json inner = Json::object();
            FieldWriter writer = child(inner);
            fn(writer, value);
            items.push_back(std::move(inner));
        }
        put(key, std::move(items));
    }

private:
    Json* object_;
    LengthStyle style_;
    Unit unit_ = Unit::inch;

    FieldWriter child(Json& object) const {
        FieldWriter writer{object, style_};
        writer.unit_ = unit_;
        return writer;
    }
    Json json(Length value) const { return lengthJson(value, unit_, style_); }
    static Json numberJson(double value);
    template <class V>
    void put(std::string_view key, V&& value) {
        (*object_)[std::string{key}] = std::forward<V>(value);
    }
    template <class E, std::size_t N>
    static std::string_view textOf(E value, const std::array<Word<E>, N>& known) {
        const auto found = std::ranges::find(known, value, &Word<E>::value);
        return found == known.end() ? std::string_view{} : found->text;
    }
};

} // namespace bastewright
