#include "job/fields/field_lister.h"

#include "job/fields/field_reports.h"

#include <algorithm>
#include <cctype>

namespace bastewright {
namespace {

/// A length as it is read best: whole yards where long, inches where those are exact.
std::string inWords(Length length) {
    constexpr std::int64_t kYard = 36 * Length::kInch;
    if (length.nm() >= 100 * kYard && length.nm() % kYard == 0)
        return std::to_string(length.nm() / kYard) + " yd";
    const bool eighths = length.nm() % Length::inch64ths(8).nm() == 0;
    return eighths ? format(length, Unit::inch) : plainNumber(length.mm()) + " mm";
}

std::string inWords(Within<Length> accepted) {
    return accepted.lo == Length{} ? "up to " + inWords(accepted.hi)
                                   : inWords(accepted.lo) + " to " + inWords(accepted.hi);
}

std::string listed(std::span<const std::string_view> words) {
    std::string out;
    for (const auto word : words)
        out.append(out.empty() ? "" : ", ").append(word);
    return out;
}

std::string listed(const std::vector<Length>& lengths) {
    std::string out;
    for (const Length l : lengths)
        out.append(out.empty() ? "" : ", ").append(inWords(l));
    return out;
}

} // namespace

Json FieldLister::schema() && {
    Json out{{"type", "object"}};
    if (!required_.empty())
        out["required"] = std::move(required_);
    if (!either_.is_null())
        out["anyOf"] = std::move(either_);
    out["properties"] = std::move(properties_);
    return out;
}

void FieldLister::require(std::initializer_list<std::string_view> keys) {
    for (const auto key : keys)
        required_.push_back(key);
}

void FieldLister::requireEither(std::initializer_list<std::string_view> these,
                                std::initializer_list<std::string_view> those) {
    either_ = Json::array();
    for (const auto& keys : {these, those}) {
        Json all = Json::array();
        for (const auto key : keys)
            all.push_back(key);
        either_.push_back({{"required", std::move(all)}});
    }
}

std::string FieldLister::pathOf(const FieldName& field) const {
    return (path_.empty() ? "" : path_ + "/") + std::string{field.key};
}

bool FieldLister::isRequired(const FieldName& field) const {
    return std::ranges::find(required_, Json(field.key)) != required_.end();
}

std::size_t FieldLister::open(const FieldName& field) {
    FieldFact& fact = facts_->emplace_back();
    fact.path = pathOf(field);
    fact.label = field.label;
    fact.meaning = field.help.empty() ? field.label : field.help;
    fact.source = field.source;
    fact.required = isRequired(field);
    return facts_->size() - 1;
}

void FieldLister::close(std::size_t fact, const FieldName& field, Json schema) {
    if (!field.help.empty()) {
        Json described{{"description", field.help}};
        described.update(schema);
        schema = std::move(described);
    }
    if (const auto most = schema.find("maxItems"); most != schema.end())
        (*facts_)[fact].accepted = "up to " + most->dump();
    properties_[std::string{field.key}] = std::move(schema);
}

void FieldLister::add(const FieldName& field, Json schema, const std::string& accepted,
                      const std::string& byDefault, bool inDescription) {
    const auto at = open(field);
    FieldFact& fact = (*facts_)[at];
    fact.accepted = accepted;
    fact.byDefault = fact.required ? std::string{} : byDefault;
    std::string description{field.help};
    if (inDescription) {
        if (description.ends_with('.'))
            description.pop_back();
        for (const auto& part :
             {accepted, fact.byDefault.empty() ? "" : fact.byDefault + " unless given"})
            if (!part.empty())
                description.append(description.empty() ? "" : "; ").append(part);
        if (!description.empty()) {
            description.front() = char(std::toupper(description.front()));
            description += '.';
        }
    }
    Json out = Json::object();
    if (!description.empty())
        out["description"] = description;
    out.update(schema);
    properties_[std::string{field.key}] = std::move(out);
}

void FieldLister::name(const FieldName& field, const std::string&) {
    add(field, {{"$ref", ref("name")}, {"pattern", "[^ ]"}});
}

void FieldLister::flag(const FieldName& field, bool value) {
    add(field, {{"type", "boolean"}, {"default", value}}, {}, value ? "yes" : "no");
}

void FieldLister::count(const FieldName& field, int value, Within<int> accepted) {
    Json schema{{"type", "integer"}, {"minimum", accepted.lo}, {"maximum", accepted.hi}};
    if (!isRequired(field))
        schema["default"] = value;
    add(field, std::move(schema), std::to_string(accepted.lo) + "–" + std::to_string(accepted.hi),
        std::to_string(value));
}

void FieldLister::number(const FieldName& field, double value, Within<double> accepted) {
    const auto json = [](double v) { return parseOwnJson(plainNumber(v)).value(); };
    add(field,
        {{"type", "number"},
         {"minimum", json(accepted.lo)},
         {"maximum", json(accepted.hi)},
         {"default", json(value)}},
        plainNumber(accepted.lo) + "–" + plainNumber(accepted.hi), plainNumber(value));
}

void FieldLister::length(const FieldName& field, std::optional<Length> value,
                         Within<Length> accepted) {
    add(field, {{"$ref", ref("length")}}, inWords(accepted),
        value ? inWords(*value) : std::string{}, true);
}

void FieldLister::clock(const FieldName& field, std::optional<ClockTime> value) {
    add(field, {{"$ref", ref("clock")}}, {}, value ? format(*value) : std::string{}, true);
}

void FieldLister::lengths(const FieldName& field, const std::vector<Length>& values,
                          Within<Length> accepted, std::size_t most) {
    add(field, {{"type", "array"}, {"items", {{"$ref", ref("length")}}}, {"maxItems", most}},
        inWords(accepted) + ", up to " + std::to_string(most) + " of them", listed(values), true);
}

void FieldLister::diagonals(const FieldName& field, const std::vector<Length>&,
                            Within<Length> accepted) {
    add(field,
        {{"type", "array"},
         {"items", {{"$ref", ref("length")}}},
         {"anyOf", {{{"maxItems", 0}}, {{"minItems", 2}, {"maxItems", 2}}}}},
        "none, or both: " + inWords(accepted), {}, true);
}

void FieldLister::readings(const FieldName& field, const std::vector<Length>&,
                           Within<Length> accepted, std::size_t most) {
    add(field,
        {{"anyOf",
          {{{"$ref", ref("length")}},
           {{"type", "array"},
            {"items", {{"$ref", ref("length")}}},
            {"minItems", 1},
            {"maxItems", most}}}}},
        "one reading or several: " + inWords(accepted), {}, true);
}

void FieldLister::colours(const FieldName& field, const std::vector<Colour>&,
                          Within<std::size_t> accepted) {
    add(field,
        {{"type", "array"},
         {"items", {{"type", "string"}, {"pattern", "^#[0-9a-fA-F]{6}$"}}},
         {"anyOf", {{{"maxItems", 0}}, {{"minItems", accepted.lo}, {"maxItems", accepted.hi}}}}},
        "none, or " + std::to_string(accepted.lo) + " to " + std::to_string(accepted.hi) +
            " as #rrggbb",
        {}, true);
}

void FieldLister::photo(const FieldName& field, const Photo&) {
    add(field,
        {{"type", "string"},
         {"contentEncoding", "base64"},
         {"contentMediaType", "image/jpeg"},
         {"maxLength", (limits::kPhotoBytes + 2) / 3 * 4}},
        "baseline JPEG as base64, up to " + std::to_string(limits::kPhotoBytes) + " bytes, " +
            std::to_string(limits::kPhotoSide) + " pixels a side",
        {}, true);
}

void FieldLister::wordIn(const FieldName& field, std::string_view value,
                         std::span<const std::string_view> accepted) {
    Json schema{{"enum", Json(std::vector<std::string_view>(accepted.begin(), accepted.end()))}};
    if (!value.empty())
        schema["default"] = value;
    add(field, std::move(schema), listed(accepted), std::string{value});
}

void FieldLister::wordsIn(const FieldName& field, std::span<const std::string_view> accepted) {
    const Json items{
        {"enum", Json(std::vector<std::string_view>(accepted.begin(), accepted.end()))}};
    add(field, {{"type", "array"}, {"items", items}, {"uniqueItems", true}},
        "any of " + listed(accepted));
}

} // namespace bastewright
