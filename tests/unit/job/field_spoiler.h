#pragma once

#include "job/fields/quilt_fields.h"
#include "job/fields/setting_fields.h"

namespace bastewright {

/// Walks the table of fields and gives one value, chosen by its number, a value just outside what
/// is accepted. The members are those of FieldReader.
class FieldSpoiler {
public:
    static constexpr bool kReads = false, kChecks = false;

    /// `which`: the number of the value to spoil, from 0; `above`: past its upper end, else below.
    FieldSpoiler(int which, bool above)
        : which_{which}
        , above_{above} {}
    /// How many values there are.
    int count() const { return at_; }
    bool spoilt() const { return spoilt_; }

    void require(std::initializer_list<std::string_view>) const {}
    void requireEither(std::initializer_list<std::string_view>,
                       std::initializer_list<std::string_view>) const {}
    void unit(const FieldName&, Unit&) {}
    void name(const FieldName&, std::string& value) {
        if (isMine())
            value = above_ ? std::string(limits::kName + 1, 'a') : std::string{"  "};
    }
    void text(const FieldName&, std::string& value) {
        if (isMine())
            value = above_ ? std::string(limits::kName + 1, 'a') : std::string{"a\tb"};
    }
    void text(const FieldName& field, std::optional<std::string>& value) {
        if (value)
            text(field, *value);
    }
    void flag(const FieldName&, bool) {}
    void count(const FieldName&, int& value, Within<int> accepted) {
        if (isMine())
            value = above_ ? accepted.hi + 1 : accepted.lo - 1;
    }
    void number(const FieldName&, double& value, Within<double> accepted) {
        if (isMine())
            value = above_ ? accepted.hi * 1.01 : accepted.lo - 0.01;
    }
    void length(const FieldName&, Length& value, Within<Length> accepted) {
        constexpr Length kLeast = Length::millimetres(1);
        if (isMine())
            value = above_ ? accepted.hi + kLeast : accepted.lo - kLeast;
    }
    void length(const FieldName& field, std::optional<Length>& value, Within<Length> accepted) {
        if (value)
            length(field, *value, accepted);
    }
    void clock(const FieldName&, std::optional<ClockTime>) {}
    void lengths(const FieldName& field, std::vector<Length>& values, Within<Length> accepted,
                 std::size_t) {
        for (Length& value : values)
            length(field, value, accepted);
    }
    void diagonals(const FieldName& field, std::vector<Length>& values, Within<Length> accepted) {
        lengths(field, values, accepted, 2);
    }
    void readings(const FieldName& field, std::vector<Length>& values, Within<Length> accepted,
                  std::size_t most) {
        lengths(field, values, accepted, most);
    }
    void point(const FieldName& field, Point& value, Within<Length> accepted) {
        length(field, value.x, accepted);
        length(field, value.y, accepted);
    }
    void colours(const FieldName&, std::vector<Colour>& values, Within<std::size_t> accepted) {
        if (isMine() && !values.empty())
            values.resize(above_ ? accepted.hi + 1 : accepted.lo - 1);
    }
    void photo(const FieldName&, Photo&) {}
    template <class E, std::size_t N>
    void word(const FieldName&, const E&, const std::array<Word<E>, N>&) {}
    template <class E, std::size_t N>
    void word(const FieldName&, const std::optional<E>&, const std::array<Word<E>, N>&) {}
    template <class E, std::size_t N>
    void words(const FieldName&, std::vector<E>& values, const std::array<Word<E>, N>&) {
        if (!values.empty() && isMine())
            values.push_back(values.front());
    }
    template <std::invocable<FieldSpoiler&> Fn>
    void object(const FieldName&, Fn fn) {
        fn(*this);
    }
    template <class T, class Fn>
    void object(const FieldName&, std::optional<T>& value, Fn fn) {
        if (value)
            fn(*this, *value);
    }
    template <class T, class Fn>
    void list(const FieldName&, std::vector<T>& values, std::size_t most, Fn fn) {
        for (T& value : values)
            fn(*this, value);
        if (isMine() && !values.empty())
            values.resize(most + 1, values.front());
    }

private:
    int which_, at_ = 0;
    bool above_, spoilt_ = false;

    bool isMine() {
        const bool mine = at_++ == which_;
        spoilt_ = spoilt_ || mine;
        return mine;
    }
};

} // namespace bastewright
