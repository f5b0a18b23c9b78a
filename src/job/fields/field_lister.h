#pragma once

#include "job/field_facts.h"
#include "job/fields/field_name.h"
#include "job/fields/field_writer.h"

namespace bastewright {

/// Walks a table of fields for what it says of them: a schema of each object, and a flat list of
/// facts. The values it walks are the defaults. Private to this folder; its members mirror those of
/// FieldReader.
class FieldLister {
public:
    static constexpr bool kReads = false, kChecks = false;

    /// Facts are appended to `facts`, with paths that begin with `path`.
    FieldLister(std::string path, std::vector<FieldFact>& facts)
        : path_{std::move(path)}
        , facts_{&facts} {}

    /// The schema of the object that was walked.
    Json schema() &&;

    static void setUnit(Unit) {}
    void require(std::initializer_list<std::string_view> keys);
    void requireEither(std::initializer_list<std::string_view> these,
                       std::initializer_list<std::string_view> those);

    void unit(const FieldName& field, Unit value) { word(field, value, kUnitWords); }
    void name(const FieldName& field, const std::string&);
    void text(const FieldName& field, const std::string&) { add(field, {{"$ref", ref("name")}}); }
    void text(const FieldName& field, const std::optional<std::string>&) {
        text(field, std::string{});
    }
    void flag(const FieldName& field, bool value);
    void count(const FieldName& field, int value, Within<int> accepted);
    void number(const FieldName& field, double value, Within<double> accepted);
    void length(const FieldName& field, std::optional<Length> value, Within<Length> accepted);
    void clock(const FieldName& field, std::optional<ClockTime> value);
    void lengths(const FieldName& field, const std::vector<Length>& values, Within<Length> accepted,
                 std::size_t most);
    void diagonals(const FieldName& field, const std::vector<Length>&, Within<Length> accepted);
    void readings(const FieldName& field, const std::vector<Length>&, Within<Length> accepted,
                  std::size_t most);
    void point(const FieldName& field, Point, Within<Length>) {
        add(field, {{"$ref", ref("place")}});
    }

    void colours(const FieldName& field, const std::vector<Colour>&, Within<std::size_t> accepted);
    void photo(const FieldName& field, const Photo&);

    template <class E, std::size_t N>
    void word(const FieldName& field, std::optional<E> value,
              const std::array<Word<E>, N>& accepted) {
        const auto found = std::ranges::find(accepted, value, &Word<E>::value);
        wordIn(field, found == accepted.end() ? std::string_view{} : found->text,
               textsOf(accepted));
    }
    template <class E, std::size_t N>
    void word(const FieldName& field, E value, const std::array<Word<E>, N>& accepted) {
        word(field, std::optional<E>{value}, accepted);
    }
    template <class E, std::size_t N>
    void words(const FieldName& field, const std::vector<E>&,
               const std::array<Word<E>, N>& accepted) {
        wordsIn(field, textsOf(accepted));
    }

    template <std::invocable<FieldLister&> Fn>
    void object(const FieldName& field, Fn fn) {
        const auto at = open(field);
        FieldLister inner{pathOf(field), *facts_};
        fn(inner);
        close(at, field, std::move(inner).schema());
    }
    template <class T, class Fn>
    void object(const FieldName& field, const std::optional<T>&, Fn fn) {
        object(field, [&](FieldLister& inner) {
            T byDefault{};
            fn(inner, byDefault);
        });
    }
    template <class T, class Fn>
    void list(const FieldName& field, const std::vector<T>&, std::size_t most, Fn fn) {
        const auto at = open(field);
        FieldLister inner{pathOf(field), *facts_};
        T byDefault{};
        fn(inner, byDefault);
        close(at, field,
              {{"type", "array"}, {"maxItems", most}, {"items", std::move(inner).schema()}});
    }

private:
    std::string path_;
    std::vector<FieldFact>* facts_;
    Json properties_ = Json::object(), required_ = Json::array(), either_;

    static std::string ref(std::string_view definition) {
        return "#/$defs/" + std::string{definition};
    }
    std::string pathOf(const FieldName& field) const;
    bool isRequired(const FieldName& field) const;
    /// The fact of an object or list, before those of what is in it.
    std::size_t open(const FieldName& field);
    void close(std::size_t fact, const FieldName& field, Json schema);
    /// Takes in a field: its description is its help, its accepted values and its default.
    void add(const FieldName& field, Json schema, const std::string& accepted = {},
             const std::string& byDefault = {}, bool inDescription = false);
    void wordIn(const FieldName& field, std::string_view value,
                std::span<const std::string_view> accepted);
    void wordsIn(const FieldName& field, std::span<const std::string_view> accepted);
};

} // namespace bastewright
