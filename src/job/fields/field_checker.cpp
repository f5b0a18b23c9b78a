#include "job/fields/field_checker.h"

#include <algorithm>

namespace bastewright {

void FieldChecker::enter(const FieldName& field, const Sentence& what, const Sentence& value) {
    stopAt(pointerTo(pointer_, field.key),
           core::says("%1: enter %2, not %3.", labelled(field), what, value));
}

Sentence FieldChecker::labelled(const FieldName& field) {
    if (field.label.empty())
        return Sentence{field.key};
    return {Sentence::Kind::words, std::string{field.label}};
}

Sentence FieldChecker::named(const std::string& at) const {
    for (const FieldName& field : noted_)
        if (const auto own = pointerTo(pointer_, field.key); at == own || at.starts_with(own + "/"))
            return labelled(field);
    return placeInWords(at);
}

void FieldChecker::name(const FieldName& field, const std::string& value) {
    text(field, value);
    if (isBlank(value))
        stop(field.key, core::says("is blank; enter a name."));
}

void FieldChecker::text(const FieldName& field, const std::string& value) {
    note(field);
    if (value.size() > limits::kName)
        enter(field, core::says("up to %1 letters", limits::kName),
              core::figure(std::to_string(value.size())));
    else if (!isPrintable(value))
        enter(field, core::says("text without line breaks or tabs"), quoted(Json(value)));
}

void FieldChecker::count(const FieldName& field, int value, Within<int> accepted) {
    note(field);
    if (!accepted.has(value))
        enter(field, core::says("a whole number from %1 to %2", accepted.lo, accepted.hi),
              core::figure(std::to_string(value)));
}

void FieldChecker::number(const FieldName& field, double value, Within<double> accepted) {
    note(field);
    if (!accepted.has(value))
        enter(field,
              core::says("a number from %1 to %2", core::figure(plainNumber(accepted.lo)),
                         core::figure(plainNumber(accepted.hi))),
              core::figure(plainNumber(value)));
}

void FieldChecker::length(const FieldName& field, Length value, Within<Length> accepted) {
    note(field);
    if (accepted.has(value))
        return;
    const Sentence most = core::length(accepted.hi, unit());
    enter(field,
          accepted.lo == Length{} ? core::says("0 to %1", most)
                                  : core::says("%1 to %2", core::length(accepted.lo, unit()), most),
          core::length(value, unit()));
}

void FieldChecker::clock(const FieldName& field, std::optional<ClockTime> value) {
    note(field);
    constexpr std::chrono::minutes kDay{24 * 60};
    if (value && (value->sinceMidnight < std::chrono::minutes{} || value->sinceMidnight >= kDay))
        enter(field, core::says("a time of day from 00:00 to 23:59, such as 13:00"),
              core::figure(std::to_string(value->sinceMidnight.count())));
}

void FieldChecker::lengths(const FieldName& field, const std::vector<Length>& values,
                           Within<Length> accepted, std::size_t most) {
    note(field);
    if (atMost(field.key, values.size(), most))
        for (const Length value : values)
            length(field, value, accepted);
}

void FieldChecker::diagonals(const FieldName& field, const std::vector<Length>& values,
                             Within<Length> accepted) {
    lengths(field, values, accepted, 2);
    expectNoneOrBoth(field.key, values.size());
}

void FieldChecker::readings(const FieldName& field, const std::vector<Length>& values,
                            Within<Length> accepted, std::size_t most) {
    lengths(field, values, accepted, most);
    if (values.empty())
        stop(field.key, core::says("is missing; one reading, several, or a grid of blocks is "
                                   "needed."));
}

void FieldChecker::colours(const FieldName& field, const std::vector<Colour>& values,
                           Within<std::size_t> accepted) {
    note(field);
    if (atMost(field.key, values.size(), accepted.hi))
        expectNoneOr(field.key, values.size(), accepted.lo);
}

void FieldChecker::point(const FieldName& field, Point value, Within<Length> accepted) {
    length(field, value.x, accepted);
    length(field, value.y, accepted);
}

} // namespace bastewright
