#pragma once

#include <string>
#include <string_view>
#include <vector>

/// The fields of job and session files as a list, taken from the same table that reads, writes and
/// checks them: for labels, for the schema and for the page of defaults.
namespace bastewright {

struct FieldFact {
    std::string path;      ///< as "helpers/breaks/from": keys from the file's root, without numbers
    std::string label;     ///< on screens, English; may be empty
    std::string meaning;   ///< for whoever writes files; the label where that says it
    std::string accepted;  ///< as "1 in to 12 in"; empty where any value of its type is
    std::string byDefault; ///< as "4 in"; empty where there is none
    std::string source;    ///< why the default is what it is; may be empty
    bool required = false;
};

/// Every field of a job file, in the order of the table.
const std::vector<FieldFact>& fieldFacts();

/// The fact of a path; there must be one.
const FieldFact& fieldFact(std::string_view path);

/// JSON Schema (2020-12) of `bastewright-job` and `bastewright-session`, as text.
std::string jobSchema();
std::string sessionSchema();

/// The rows of the page of defaults, as a table in Markdown.
std::string defaultsTable();

} // namespace bastewright
