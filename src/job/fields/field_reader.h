#pragma once

#include "job/fields/field_reports.h"
#include "job/job.h"
#include "job/job_json.h"
#include "measures/clock.h"
#include "measures/geometry.h"

#include <concepts>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Reads the fields of JSON objects into values and says what is wrong with them. Private to the
/// file formats. `FieldReader` and `FieldWriter` have the same members, so that one list of fields
/// (a template over the two) serves both directions and neither can forget one.
namespace bastewright {

inline constexpr std::array kUnitWords{Word{"in", Unit::inch}, Word{"cm", Unit::centimetre},
                                       Word{"mm", Unit::millimetre}};
inline constexpr std::array kSideWords{Word{"head", Side::head}, Word{"foot", Side::foot},
                                       Word{"left", Side::left}, Word{"right", Side::right}};
inline constexpr std::array kWithWords{
    Word{"pins", Basting::With::pins}, Word{"dots", Basting::With::dots},
    Word{"thread", Basting::With::thread}, Word{"spray", Basting::With::spray}};
inline constexpr std::array kStartWords{
    Word{"centred", Basting::Start::centred}, Word{"fewest-shifts", Basting::Start::besideMiddle},
    Word{"best", Basting::Start::best}, Word{"one-end", Basting::Start::oneEnd},
    // As older files have it.
    Word{"beside-middle", Basting::Start::besideMiddle}};
inline constexpr std::array kAlongWords{Word{"either", Basting::Along::either},
                                        Word{"length", Basting::Along::tableLength},
                                        Word{"width", Basting::Along::tableWidth}};
/// `pattern` is what files of earlier versions call rows.
inline constexpr std::array kLayoutWords{
    Word{"rows", Basting::Layout::rows}, Word{"blocks", Basting::Layout::blocks},
    Word{"fewest", Basting::Layout::fewest}, Word{"pattern", Basting::Layout::rows}};

class FieldReader : public FieldReports {
public:
    static constexpr bool kReads = true, kChecks = true;
    using FieldReports::unit;

    /// `object` and `problems` must outlive the reader.
    FieldReader(const Json& object, std::string pointer, Problems& problems)
        : FieldReports{std::move(pointer), problems}
        , object_{&object} {}

    /// Unknown fields from here on are kept in `fields`, with pointers from this object.
    void keepUnknownIn(UnknownFields& fields) {
        unknown_ = &fields;
        base_ = pointer_.size();
    }
    bool has(std::string_view key) const { return object_->contains(key); }
    /// Says so where any of these is missing.
    void require(std::initializer_list<std::string_view> keys);
    /// All of the first, or all of the second; what is missing is said by who makes it up.
    static void requireEither(std::initializer_list<std::string_view>,
                              std::initializer_list<std::string_view>) {}

    // A missing field leaves `out` as it is; so does one that is not accepted, which is a finding.
    void unit(std::string_view key, Unit& out);
    void text(std::string_view key, std::string& out, std::size_t most = limits::kName);
    /// Text of more than spaces.
    void name(std::string_view key, std::string& out);
    void text(std::string_view key, Sentence& out, std::size_t most);
    void text(std::string_view key, std::optional<std::string>& out);
    void texts(std::string_view key, Sentences& out, std::size_t most);
    /// Sentences with their forms and values.
    void sentences(std::string_view key, Sentences& out, std::size_t most);
    void texts(std::string_view key, std::vector<std::string>& out, std::size_t most);
    void flag(std::string_view key, bool& out);
    void count(std::string_view key, int& out, Within<int> accepted);
    void number(std::string_view key, double& out, Within<double> accepted);
    void seconds(std::string_view key, Seconds& out, Within<std::int64_t> accepted);
    void length(std::string_view key, Length& out, Within<Length> accepted);
    void length(std::string_view key, std::optional<Length>& out, Within<Length> accepted);
    void clock(std::string_view key, ClockTime& out);
    void clock(std::string_view key, std::optional<ClockTime>& out);
    /// A list of at most `most`.
    void counts(std::string_view key, std::vector<int>& out, Within<int> accepted,
                std::size_t most);
    void lengths(std::string_view key, std::vector<Length>& out, Within<Length> accepted,
                 std::size_t most);
    /// The two diagonals, or none.
    void diagonals(std::string_view key, std::vector<Length>& out, Within<Length> accepted);
    /// One value or a list of 1 to `most`.
    void readings(std::string_view key, std::vector<Length>& out, Within<Length> accepted,
                  std::size_t most);
    /// None, or so many.
    void colours(std::string_view key, std::vector<Colour>& out, Within<std::size_t> accepted);
    void photo(std::string_view key, Photo& out);
    /// [x, y].
    void point(std::string_view key, Point& out, Within<Length> accepted);

    template <class E, std::size_t N>
    void word(std::string_view key, E& out, const std::array<Word<E>, N>& accepted) {
        if (const Json* const value = find(key))
            if (const auto i = wordIndex(*value, pointerTo(pointer_, key), textsOf(accepted)))
                out = accepted[*i].value;
    }
    template <class E, std::size_t N>
    void word(std::string_view key, std::optional<E>& out, const std::array<Word<E>, N>& accepted) {
        if (const Json* const value = find(key))
            if (const auto i = wordIndex(*value, pointerTo(pointer_, key), textsOf(accepted)))
                out = accepted[*i].value;
    }
    /// A list of words, none of them twice.
    template <class E, std::size_t N>
    void words(std::string_view key, std::vector<E>& out, const std::array<Word<E>, N>& accepted) {
        const Json* const list = findList(key, N);
        if (list == nullptr)
            return;
        out.clear();
        for (std::size_t i = 0; i < list->size(); ++i) {
            const auto at = pointerTo(pointerTo(pointer_, key), std::to_string(i));
            const auto found = wordIndex((*list)[i], at, textsOf(accepted));
            if (!found)
                continue;
            const E value = accepted[*found].value;
            if (std::ranges::find(out, value) != out.end())
                stopAt(at, core::says("%1 is %2 again; each word is accepted once.",
                                      placeInWords(at), quoted((*list)[i])));
            else
                out.push_back(value);
        }
    }

    /// A value that is written for other readers and follows from the rest.
    void derived(std::string_view key, double) { find(key); }

    /// Calls fn(reader) for the object at `key`.
    template <std::invocable<FieldReader&> Fn>
    void object(std::string_view key, Fn fn) {
        if (const Json* const value = findObject(key)) {
            FieldReader reader = child(*value, pointerTo(pointer_, key));
            fn(reader);
            reader.finish();
        }
    }
    /// Calls fn(reader, value) for the object at `key`, where it is there.
    template <class T, class Fn>
    void object(std::string_view key, std::optional<T>& out, Fn fn) {
        object(key, [&](FieldReader& reader) { fn(reader, out.emplace()); });
    }
    /// Calls fn(reader, element) for each object of the list at `key`.
    template <class T, class Fn>
    void list(std::string_view key, std::vector<T>& out, std::size_t most, Fn fn) {
        const Json* const items = findList(key, most);
        if (items == nullptr)
            return;
        out.clear();
        out.reserve(items->size());
        for (std::size_t i = 0; i < items->size(); ++i) {
            T& element = out.emplace_back();
            const auto at = pointerTo(pointerTo(pointer_, key), std::to_string(i));
            if (!isObject((*items)[i], at))
                continue;
            FieldReader reader = child((*items)[i], at);
            fn(reader, element);
            reader.finish();
        }
    }

    /// Keeps a field that is known elsewhere but has no meaning here, and warns.
    void setAside(std::string_view key, const Sentence& clause);
    /// Warns about fields nobody asked for, and keeps them.
    void finish();

private:
    const Json* object_;
    UnknownFields* unknown_ = nullptr;
    std::size_t base_ = 0;
    std::vector<std::string_view> asked_;

    FieldReader child(const Json& object, std::string pointer) const;
    const Json* find(std::string_view key);
    const Json* findObject(std::string_view key);
    const Json* findList(std::string_view key, std::size_t most);
    bool isObject(const Json& value, const std::string& at);
    void keep(std::string_view key, const Json& value);
    Sentence named(const std::string& at) const override { return placeInWords(at); }
    void refuse(const Json& value, const std::string& at, const Sentence& accepted);

    std::optional<Length> lengthAt(const Json& value, const std::string& at,
                                   Within<Length> accepted);
    std::optional<std::string> textAt(const Json& value, const std::string& at, std::size_t most);
    std::optional<std::int64_t> wholeAt(const Json& value, const std::string& at,
                                        Within<std::int64_t> accepted);
    std::optional<std::size_t> wordIndex(const Json& value, const std::string& at,
                                         std::span<const std::string_view> accepted);
};

} // namespace bastewright
