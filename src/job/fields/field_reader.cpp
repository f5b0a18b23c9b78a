#include "job/fields/field_reader.h"

#include <algorithm>
#include <cmath>

namespace bastewright {

FieldReader FieldReader::child(const Json& object, std::string pointer) const {
    FieldReader reader{object, std::move(pointer), *problems_};
    reader.unknown_ = unknown_;
    reader.base_ = base_;
    reader.unit_ = unit_;
    return reader;
}

const Json* FieldReader::find(std::string_view key) {
    asked_.push_back(key);
    const auto found = object_->find(key);
    return found == object_->end() ? nullptr : &*found;
}

bool FieldReader::isObject(const Json& value, const std::string& at) {
    if (!value.is_object())
        refuse(value, at, core::says("an object in {} is accepted"));
    return value.is_object();
}

const Json* FieldReader::findObject(std::string_view key) {
    const Json* const value = find(key);
    return value != nullptr && isObject(*value, pointerTo(pointer_, key)) ? value : nullptr;
}

const Json* FieldReader::findList(std::string_view key, std::size_t most) {
    const Json* const value = find(key);
    if (value == nullptr)
        return nullptr;
    if (!value->is_array()) {
        refuse(*value, pointerTo(pointer_, key), core::says("a list in [] is accepted"));
        return nullptr;
    }
    return atMost(key, value->size(), most) ? value : nullptr;
}

void FieldReader::refuse(const Json& value, const std::string& at, const Sentence& accepted) {
    stopAt(at, core::says("%1 is %2; %3.", placeInWords(at), quoted(value), accepted));
}

void FieldReader::require(std::initializer_list<std::string_view> keys) {
    for (const auto key : keys)
        if (!has(key))
            stop(key, core::says("is missing; it is needed."));
}

void FieldReader::unit(std::string_view key, Unit& out) {
    out = unit_;
    word(key, out, kUnitWords);
    unit_ = out;
}

std::optional<std::string> FieldReader::textAt(const Json& value, const std::string& at,
                                               std::size_t most) {
    const Sentence accepted = core::says("text of up to %1 bytes is accepted", most);
    if (!value.is_string()) {
        refuse(value, at, accepted);
        return {};
    }
    const auto& text = value.get_ref<const std::string&>();
    if (text.size() > most) {
        stopAt(at, core::says("%1 is %2 with %3 bytes; %4.", placeInWords(at), quoted(value),
                              text.size(), accepted));
        return {};
    }
    if (!isPrintable(text)) {
        refuse(value, at,
               core::says("text without line breaks, tabs or other control characters is "
                          "accepted"));
        return {};
    }
    return text;
}

void FieldReader::text(std::string_view key, std::string& out, std::size_t most) {
    if (const Json* const value = find(key))
        if (auto read = textAt(*value, pointerTo(pointer_, key), most))
            out = *std::move(read);
}

void FieldReader::name(std::string_view key, std::string& out) {
    text(key, out);
    if (has(key) && isBlank(out))
        stop(key, core::says("is blank; a name is accepted."));
}

void FieldReader::text(std::string_view key, Sentence& out, std::size_t most) {
    std::string read = out.english();
    text(key, read, most);
    out = std::move(read);
}

void FieldReader::texts(std::string_view key, Sentences& out, std::size_t most) {
    const Json* const list = findList(key, most);
    if (list == nullptr)
        return;
    out.clear();
    for (std::size_t i = 0; i < list->size(); ++i)
        if (auto read = textAt((*list)[i], pointerTo(pointerTo(pointer_, key), std::to_string(i)),
                               kLongestSentence))
            out.emplace_back(*std::move(read));
}

void FieldReader::sentences(std::string_view key, Sentences& out, std::size_t most) {
    const Json* const list = findList(key, most);
    if (list == nullptr)
        return;
    out.clear();
    for (std::size_t i = 0; i < list->size(); ++i) {
        if (auto read = readSentence((*list)[i]))
            out.push_back(*std::move(read));
        else
            refuse((*list)[i], pointerTo(pointerTo(pointer_, key), std::to_string(i)),
                   core::says("a form and what stands in its places, as a list in [], of up to "
                              "%1 bytes together is accepted",
                              kLongestSentence));
    }
}

void FieldReader::text(std::string_view key, std::optional<std::string>& out) {
    if (const Json* const value = find(key))
        out = textAt(*value, pointerTo(pointer_, key), limits::kName);
}

void FieldReader::texts(std::string_view key, std::vector<std::string>& out, std::size_t most) {
    const Json* const list = findList(key, most);
    if (list == nullptr)
        return;
    out.clear();
    for (std::size_t i = 0; i < list->size(); ++i) {
        const auto at = pointerTo(pointerTo(pointer_, key), std::to_string(i));
        if (auto read = textAt((*list)[i], at, limits::kName))
            out.push_back(*std::move(read));
    }
}

void FieldReader::flag(std::string_view key, bool& out) {
    const Json* const value = find(key);
    if (value == nullptr)
        return;
    if (value->is_boolean())
        out = value->get<bool>();
    else
        refuse(*value, pointerTo(pointer_, key), core::says("true or false is accepted"));
}

std::optional<std::int64_t> FieldReader::wholeAt(const Json& value, const std::string& at,
                                                 Within<std::int64_t> accepted) {
    if (value.is_number()) {
        const auto v = value.get<double>();
        if (v == std::floor(v) && v >= double(accepted.lo) && v <= double(accepted.hi))
            return static_cast<std::int64_t>(v);
    }
    refuse(value, at,
           accepted.lo < accepted.hi
               ? core::says("a whole number from %1 to %2 is accepted", accepted.lo, accepted.hi)
               : core::says("%1 is accepted", accepted.lo));
    return {};
}

void FieldReader::count(std::string_view key, int& out, Within<int> accepted) {
    if (const Json* const value = find(key))
        if (const auto n = wholeAt(*value, pointerTo(pointer_, key), {accepted.lo, accepted.hi}))
            out = static_cast<int>(*n);
}

void FieldReader::seconds(std::string_view key, Seconds& out, Within<std::int64_t> accepted) {
    if (const Json* const value = find(key))
        if (const auto n = wholeAt(*value, pointerTo(pointer_, key), accepted))
            out = Seconds{*n};
}

void FieldReader::number(std::string_view key, double& out, Within<double> accepted) {
    const Json* const value = find(key);
    if (value == nullptr)
        return;
    if (value->is_number()) {
        const auto v = value->get<double>();
        if (v >= accepted.lo && v <= accepted.hi) {
            out = v;
            return;
        }
    }
    refuse(*value, pointerTo(pointer_, key),
           core::says("a number from %1 to %2 is accepted", core::figure(plainNumber(accepted.lo)),
                      core::figure(plainNumber(accepted.hi))));
}

std::optional<Length> FieldReader::lengthAt(const Json& value, const std::string& at,
                                            Within<Length> accepted) {
    const bool isText = value.is_string();
    if (isText || value.is_number()) {
        const auto read = isText ? parseLength(value.get_ref<const std::string&>(), unit_)
                                 : lengthOf(value.get<double>(), unit_);
        if (!read) {
            stopAt(at, core::says("%1 is %2: %3.", placeInWords(at), quoted(value), read.error()));
            return {};
        }
        if (*read >= accepted.lo && *read <= accepted.hi)
            return *read;
    }
    refuse(value, at,
           core::says("a length from %1 to %2 is accepted", core::length(accepted.lo, unit_),
                      core::length(accepted.hi, unit_)));
    return {};
}

void FieldReader::length(std::string_view key, Length& out, Within<Length> accepted) {
    if (const Json* const value = find(key))
        if (const auto read = lengthAt(*value, pointerTo(pointer_, key), accepted))
            out = *read;
}

void FieldReader::length(std::string_view key, std::optional<Length>& out,
                         Within<Length> accepted) {
    if (const Json* const value = find(key))
        out = lengthAt(*value, pointerTo(pointer_, key), accepted);
}

void FieldReader::lengths(std::string_view key, std::vector<Length>& out, Within<Length> accepted,
                          std::size_t most) {
    const Json* const list = findList(key, most);
    if (list == nullptr)
        return;
    out.clear();
    for (std::size_t i = 0; i < list->size(); ++i) {
        const auto at = pointerTo(pointerTo(pointer_, key), std::to_string(i));
        if (const auto read = lengthAt((*list)[i], at, accepted))
            out.push_back(*read);
    }
}

void FieldReader::diagonals(std::string_view key, std::vector<Length>& out,
                            Within<Length> accepted) {
    lengths(key, out, accepted, 2);
    expectNoneOrBoth(key, out.size());
}

void FieldReader::counts(std::string_view key, std::vector<int>& out, Within<int> accepted,
                         std::size_t most) {
    const Json* const list = findList(key, most);
    if (list == nullptr)
        return;
    out.clear();
    for (std::size_t i = 0; i < list->size(); ++i) {
        const auto at = pointerTo(pointerTo(pointer_, key), std::to_string(i));
        if (const auto n = wholeAt((*list)[i], at, {accepted.lo, accepted.hi}))
            out.push_back(static_cast<int>(*n));
    }
}

void FieldReader::readings(std::string_view key, std::vector<Length>& out, Within<Length> accepted,
                           std::size_t most) {
    const Json* const value = find(key);
    if (value == nullptr)
        return;
    if (value->is_array() && value->empty()) {
        stop(key,
             core::says("is an empty list; one reading or a list of up to %1 is accepted.", most));
    } else if (value->is_array()) {
        lengths(key, out, accepted, most);
    } else if (const auto read = lengthAt(*value, pointerTo(pointer_, key), accepted)) {
        out.assign(1, *read);
    }
}

void FieldReader::point(std::string_view key, Point& out, Within<Length> accepted) {
    const Json* const value = find(key);
    if (value == nullptr)
        return;
    const auto at = pointerTo(pointer_, key);
    if (!value->is_array() || value->size() != 2) {
        refuse(*value, at, core::says("a place as [x, y] is accepted"));
        return;
    }
    const auto x = lengthAt((*value)[0], pointerTo(at, "0"), accepted);
    const auto y = lengthAt((*value)[1], pointerTo(at, "1"), accepted);
    if (x && y)
        out = {*x, *y};
}

void FieldReader::colours(std::string_view key, std::vector<Colour>& out,
                          Within<std::size_t> accepted) {
    const Json* const list = findList(key, accepted.hi);
    if (list == nullptr)
        return;
    out.clear();
    for (std::size_t i = 0; i < list->size(); ++i) {
        const Json& value = (*list)[i];
        if (const auto colour =
                parseColour(value.is_string() ? value.get_ref<const std::string&>() : ""))
            out.push_back(*colour);
        else
            refuse(value, pointerTo(pointerTo(pointer_, key), std::to_string(i)),
                   core::says("a color as \"#rrggbb\", such as \"#27365c\", is accepted"));
    }
    expectNoneOr(key, list->size(), accepted.lo);
}

void FieldReader::photo(std::string_view key, Photo& out) {
    const Json* const value = find(key);
    if (value == nullptr)
        return;
    const auto read =
        value->is_string() ? Photo::ofBase64(value->get_ref<const std::string&>()) : std::nullopt;
    if (read)
        out = *read;
    else
        refuse(*value, pointerTo(pointer_, key),
               core::says("a baseline JPEG of up to %1 bytes and up to %2 pixels a side, as base64 "
                          "text, is accepted",
                          limits::kPhotoBytes, limits::kPhotoSide));
}

void FieldReader::clock(std::string_view key, ClockTime& out) {
    std::optional<ClockTime> read;
    clock(key, read);
    out = read.value_or(out);
}

void FieldReader::clock(std::string_view key, std::optional<ClockTime>& out) {
    const Json* const value = find(key);
    if (value == nullptr)
        return;
    const auto read = parseClock(value->is_string() ? value->get_ref<const std::string&>() : "");
    if (read)
        out = *read;
    else
        refuse(*value, pointerTo(pointer_, key),
               core::says("a time of day from 00:00 to 23:59, such as 13:00, is accepted"));
}

std::optional<std::size_t> FieldReader::wordIndex(const Json& value, const std::string& at,
                                                  std::span<const std::string_view> accepted) {
    if (value.is_string()) {
        const auto found = std::ranges::find(accepted, value.get_ref<const std::string&>());
        if (found != accepted.end())
            return static_cast<std::size_t>(found - accepted.begin());
    }
    Sentences words;
    for (const auto word : accepted)
        words.emplace_back("\"" + std::string{word} + "\"");
    const Sentence last = words.back();
    words.pop_back();
    refuse(value, at,
           words.empty() ? core::says("%1 is accepted", last)
                         : core::says("%1 or %2 is accepted", core::commaList(words), last));
    return {};
}

void FieldReader::keep(std::string_view key, const Json& value) {
    if (unknown_ != nullptr)
        unknown_->insert_or_assign(pointerTo(pointer_, key).substr(base_), value.dump());
}

void FieldReader::setAside(std::string_view key, const Sentence& clause) {
    if (const Json* const value = find(key)) {
        keep(key, *value);
        warn(key, clause);
    }
}

void FieldReader::finish() {
    for (const auto& item : object_->items()) {
        if (std::ranges::find(asked_, item.key()) != asked_.end())
            continue;
        keep(item.key(), item.value());
        warn(item.key(),
             unknown_ != nullptr
                 ? core::says("is not a field this version knows; it is kept but has no effect.")
                 : core::says("is not a field this version knows; it has no effect."));
    }
}

} // namespace bastewright
