#include "property/plan_changes/changes.h"

#include <array>

namespace bastewright::testing {
namespace {

using Kind = SchemaField::Kind;

bool isNumber(Kind kind) {
    return kind == Kind::length || kind == Kind::seconds || kind == Kind::count ||
           kind == Kind::number;
}

/// A little of such a number.
Json little(const Json& plan, Kind kind, const Json& value) {
    if (kind == Kind::length) {
        const std::string unit = plan.at("unit");
        return unit == "in" ? 0.125 : unit == "cm" ? 0.3 : 3.0;
    }
    if (kind == Kind::seconds)
        return 60;
    if (kind == Kind::count)
        return 1;
    return std::abs(value.get<double>()) * 0.02 + 0.02;
}

void changeNumber(const Json& plan, Kind kind, Json& value, Change change) {
    const Json by = change == Change::much ? value : little(plan, kind, value);
    const int more = change == Change::much ? 7 : 0;
    const int way = change == Change::less ? -1 : 1;
    if (value.is_number_integer() && by.is_number_integer())
        value = value.get<std::int64_t>() + way * by.get<std::int64_t>() + more;
    else
        value = value.get<double>() + way * by.get<double>() + more;
}

/// Another value of the same field in this plan, or another word of the schema.
bool changeWord(const Json& plan, const SchemaField& field, Json& value, Random& random) {
    std::vector<Json> others;
    for (const std::string& word : field.words)
        if (value != word)
            others.emplace_back(word);
    if (field.words.empty())
        for (const auto& place : placesOf(field, plan))
            if (plan.at(place) != value)
                others.push_back(plan.at(place));
    if (others.empty())
        return false;
    value = others[std::size_t(random.whole(0, std::ssize(others) - 1))];
    return true;
}

bool changeList(Json& value, Change change, Random& random) {
    const auto size = static_cast<std::int64_t>(value.size());
    if (size == 0 || (change == Change::moved && size < 2))
        return false;
    const auto i = std::size_t(random.whole(0, size - (change == Change::moved ? 2 : 1)));
    if (change == Change::without) {
        value.erase(i);
    } else if (change == Change::twice) {
        const Json element = value[i];
        value.insert(value.begin() + static_cast<std::ptrdiff_t>(i), element);
    } else {
        if (value[i] == value[i + 1])
            return false;
        std::swap(value[i], value[i + 1]);
    }
    return true;
}

void changeSentence(Json& value) {
    Json& text = value.is_array() ? value.at(0) : value.at("figure");
    text = text.get<std::string>() + "x";
}

} // namespace

std::string_view name(Change change) {
    constexpr std::array<std::string_view, kChanges> kNames{
        "more", "less", "much", "other", "added", "moved", "without", "twice", "gone"};
    return kNames.at(static_cast<std::size_t>(change));
}

std::optional<Json> changed(const Json& plan, const SchemaField& field,
                            const Json::json_pointer& at, Change change, Random& random) {
    Json out = plan;
    if (change == Change::gone) {
        if (field.path.ends_with("/*"))
            return {}; // an element: left out of its list
        out.at(at.parent_pointer()).erase(at.back());
        return out;
    }
    Json& value = out.at(at);
    const bool done = [&] {
        switch (change) {
        case Change::more:
        case Change::less:
        case Change::much:
            if (isNumber(field.kind))
                changeNumber(plan, field.kind, value, change);
            return isNumber(field.kind);
        case Change::other:
            if (field.kind == Kind::flag) {
                value = !value.get<bool>();
                return true;
            }
            return (field.kind == Kind::word || field.kind == Kind::text) &&
                   changeWord(plan, field, value, random);
        case Change::added:
            if (field.kind == Kind::sentence)
                changeSentence(value);
            if (field.kind == Kind::text)
                value = value.get<std::string>() + "x";
            return field.kind == Kind::sentence || field.kind == Kind::text;
        default:
            return field.kind == Kind::list && changeList(value, change, random);
        }
    }();
    if (!done || value == plan.at(at))
        return {};
    return out;
}

} // namespace bastewright::testing
