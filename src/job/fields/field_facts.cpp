#include "job/field_facts.h"

#include "job/fields/field_lister.h"
#include "job/fields/quilt_fields.h"
#include "job/fields/setting_fields.h"

#include <algorithm>
#include <cassert>

namespace bastewright {
namespace {

constexpr const char* kDraft = "https://json-schema.org/draft/2020-12/schema";

struct Listed {
    std::vector<FieldFact> facts;
    Json quilt, setting;
};

Listed listAll() {
    Listed out;
    FieldLister quilt{"", out.facts};
    Job job;
    quilt_fields::ofQuilt(quilt, job);
    out.quilt = std::move(quilt).schema();
    FieldLister setting{"", out.facts};
    Setting all;
    setting_fields::ofSetting(setting, all);
    out.setting = std::move(setting).schema();
    return out;
}

const Listed& table() {
    static const Listed all = listAll();
    return all;
}

/// What lengths, names, places and times of day look like in files.
Json definitions() {
    const Json text{{"type", "string"}, {"minLength", 1}, {"maxLength", 64}};
    Json positive = text;
    positive["pattern"] = "^\\s*[^-\u2212\\s]";
    return {{"name", {{"type", "string"}, {"maxLength", limits::kName}}},
            {"length",
             {{"description", "A number in the file's unit, or text with a unit such as \"12 1/2 "
                              "in\", \"317.5 mm\", \"2 yd\"."},
              {"anyOf", {{{"type", "number"}, {"minimum", 0}}, positive}}}},
            {"place",
             {{"description", "[x, y] from the top's head-left corner, x to the right, y towards "
                              "the foot."},
              {"type", "array"},
              {"items", {{"anyOf", {{{"type", "number"}}, text}}}},
              {"minItems", 2},
              {"maxItems", 2}}},
            {"clock",
             {{"description", "Time of day, 24 hours."},
              {"type", "string"},
              {"pattern", "^([01]?[0-9]|2[0-3]):[0-5][0-9]$"}}}};
}

Json head(const char* format, const char* description) {
    const std::string name{format};
    return {{"$schema", kDraft},
            {"$id", name + ".schema.json"},
            {"title", name + ", version 1"},
            {"description", description},
            {"type", "object"}};
}

/// A cell of a table in Markdown.
std::string cell(const std::string& text) {
    return text.empty() ? " |" : " " + text + " |";
}

} // namespace

const std::vector<FieldFact>& fieldFacts() {
    return table().facts;
}

const FieldFact& fieldFact(std::string_view path) {
    const auto found = std::ranges::find(fieldFacts(), path, &FieldFact::path);
    assert(found != fieldFacts().end() && "a path of the table of fields");
    return *found;
}

std::string jobSchema() {
    Json out = head("bastewright-job",
                    "One quilt to be basted, with the room, people, hour and supplies. Only top is "
                    "needed. Ranges of lengths are those of inches; they hold in every unit. "
                    "Fields that are not named here are kept.");
    out["allOf"] = {{{"$ref", "#/$defs/quilt"}}, {{"$ref", "#/$defs/setting"}}};
    out["$defs"] = definitions();
    Json quilt = table().quilt;
    quilt["properties"]["format"] = {{"const", "bastewright-job"}};
    quilt["properties"]["version"] = {{"const", 1}};
    out["$defs"]["quilt"] = std::move(quilt);
    out["$defs"]["setting"] = table().setting;
    return printJson(out);
}

std::string sessionSchema() {
    constexpr const char* kJob = "bastewright-job.schema.json#/$defs/";
    const auto ofJob = [&](const char* definition) { return std::string{kJob} + definition; };
    Json out = head("bastewright-session", "Several quilts made in one room by the same people.");
    out["required"] = {"jobs"};
    Json unit = table().quilt["properties"]["unit"];
    unit["description"] = "Of the setting, and of quilts that name none. Without it that of the "
                          "first quilt.";
    unit.erase("default");
    out["properties"] = {
        {"format", {{"const", "bastewright-session"}}},
        {"version", {{"const", 1}}},
        {"unit", std::move(unit)},
        {"jobs",
         {{"description", "Quilts as in a job file. A setting of their own is kept but has no "
                          "effect."},
          {"type", "array"},
          {"minItems", 1},
          {"maxItems", limits::kQuilts},
          {"items", {{"$ref", ofJob("quilt")}}}}}};
    out["allOf"] = Json::array({{{"$ref", ofJob("setting")}}});
    return printJson(out);
}

std::string defaultsTable() {
    std::string out =
        "| field | what it is | default | accepted | source |\n|---|---|---|---|---|\n";
    for (const FieldFact& fact : fieldFacts()) {
        const std::string byDefault = fact.required ? "needed" : fact.byDefault;
        if ((fact.meaning + byDefault + fact.accepted).empty())
            continue; // an object, whose fields follow
        std::string name = fact.path;
        std::ranges::replace(name, '/', '.');
        out += "| `" + name + "` |" + cell(fact.meaning) + cell(byDefault) + cell(fact.accepted) +
               cell(fact.source) + "\n";
    }
    return out;
}

} // namespace bastewright
