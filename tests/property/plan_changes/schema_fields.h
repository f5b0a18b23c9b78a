#pragma once

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace bastewright::testing {

using Json = nlohmann::ordered_json;

/// A field of a plan's file, as its schema names it.
struct SchemaField {
    enum class Kind { length, seconds, count, number, flag, word, text, list, object, sentence };
    std::string path; ///< "/passes/*/holds/*/count"; of a quilt without "/quilts/*"
    Kind kind = Kind::object;
    std::vector<std::string> words; ///< what a word may be
    bool ofQuilt = false;           ///< in a plan of several quilts it stands in each of them
};

/// Every field of docs/schema/bastewright-plan.schema.json, lists and objects too, each once.
std::vector<SchemaField> planFields();

/// Where a field stands in a plan.
std::vector<Json::json_pointer> placesOf(const SchemaField& field, const Json& plan);

} // namespace bastewright::testing
