#include "property/plan_changes/schema_fields.h"

#include <algorithm>
#include <fstream>
#include <map>
#include <stdexcept>

namespace bastewright::testing {
namespace {

using Kind = SchemaField::Kind;

class Walk {
public:
    explicit Walk(const Json& schema)
        : schema_{schema} {}

    std::vector<SchemaField> fields() {
        properties(schema_, "", false);
        properties(schema_.at("$defs").at("quilt"), "", true);
        return std::move(out_);
    }

private:
    const Json& target(const Json& node, std::string& name) const {
        const Json* at = &node;
        while (at->contains("$ref")) {
            const std::string ref = at->at("$ref");
            name = ref.substr(ref.rfind('/') + 1);
            at = &schema_.at(Json::json_pointer{ref.substr(1)});
        }
        return *at;
    }

    void properties(const Json& node, const std::string& path, bool ofQuilt) {
        for (const auto& part : node.value("allOf", Json::array())) {
            std::string name;
            properties(target(part, name), path, ofQuilt);
        }
        const Json all = node.value("properties", Json::object());
        for (const auto& [key, value] : all.items())
            if (!path.empty() || key != "quilts")
                field(value, path + "/" + key, ofQuilt);
    }

    void add(const std::string& path, Kind kind, bool ofQuilt,
             std::vector<std::string> words = {}) {
        if (std::ranges::find(out_, path, &SchemaField::path) == out_.end())
            out_.push_back({path, kind, std::move(words), ofQuilt});
    }

    void field(const Json& node, const std::string& path, bool ofQuilt) {
        static const std::map<std::string, Kind> kNamed{
            {"length", Kind::length}, {"seconds", Kind::seconds}, {"count", Kind::count}};
        std::string name;
        const Json& is = target(node, name);
        const std::string type = is.value("type", "");
        if (path == "/sentences/*")
            return add(path, Kind::sentence, ofQuilt);
        if (const auto named = kNamed.find(name); named != kNamed.end())
            return add(path, named->second, ofQuilt);
        if (is.contains("enum"))
            return add(path, Kind::word, ofQuilt, is.at("enum"));
        if (is.contains("const"))
            return add(path, is.at("const").is_string() ? Kind::text : Kind::count, ofQuilt);
        if (type == "boolean")
            return add(path, Kind::flag, ofQuilt);
        if (type == "integer")
            return add(path, Kind::count, ofQuilt);
        if (type == "number") // sizes are lengths that are not below zero
            return add(path, is.contains("minimum") ? Kind::length : Kind::number, ofQuilt);
        if (type == "string")
            return add(path, Kind::text, ofQuilt);
        if (type == "array") {
            add(path, Kind::list, ofQuilt);
            return field(is.at("items"), path + "/*", ofQuilt);
        }
        if (!is.contains("properties") && !is.contains("allOf"))
            throw std::runtime_error{"the schema does not say what " + path + " is"};
        if (!path.ends_with("/*"))
            add(path, Kind::object, ofQuilt);
        properties(is, path, ofQuilt);
    }

    const Json& schema_;
    std::vector<SchemaField> out_;
};

void find(const Json& value, const std::vector<std::string>& steps, std::size_t next,
          const Json::json_pointer& at, std::vector<Json::json_pointer>& out) {
    if (next == steps.size()) {
        out.push_back(at);
        return;
    }
    const std::string& step = steps[next];
    if (step == "*" && value.is_array())
        for (std::size_t i = 0; i < value.size(); ++i)
            find(value[i], steps, next + 1, at / i, out);
    else if (value.is_object() && value.contains(step))
        find(value.at(step), steps, next + 1, at / step, out);
}

std::vector<std::string> stepsOf(const std::string& path) {
    std::vector<std::string> out;
    for (std::size_t at = 1; at <= path.size();) {
        const auto end = std::min(path.find('/', at), path.size());
        out.push_back(path.substr(at, end - at));
        at = end + 1;
    }
    return out;
}

} // namespace

std::vector<SchemaField> planFields() {
    std::ifstream file{BASTEWRIGHT_SOURCE "/docs/schema/bastewright-plan.schema.json"};
    return Walk{Json::parse(file)}.fields();
}

std::vector<Json::json_pointer> placesOf(const SchemaField& field, const Json& plan) {
    std::vector<Json::json_pointer> out;
    const auto steps = stepsOf(field.path);
    find(plan, steps, 0, Json::json_pointer{}, out);
    if (field.ofQuilt && plan.contains("quilts"))
        for (std::size_t i = 0; i < plan.at("quilts").size(); ++i)
            find(plan.at("quilts")[i], steps, 0, Json::json_pointer{"/quilts"} / i, out);
    return out;
}

} // namespace bastewright::testing
