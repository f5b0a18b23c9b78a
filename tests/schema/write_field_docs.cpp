#include "job/field_facts.h"

#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>

/// Writes what the documents take from the table of fields (src/job/fields), or compares it with
/// what stands there:
///
///     write_field_docs DOCS            compares; exit 1 and a sentence for each file that differs
///     write_field_docs DOCS --write    writes
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kBegin = "<!-- fields: written by tests/schema/write_field_docs -->\n";
constexpr std::string_view kEnd = "<!-- end of fields -->\n";

std::string textOf(const fs::path& path) {
    std::ifstream in{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

/// The page with the table between its two marks; empty where it has none.
std::string withTable(const std::string& page) {
    const auto begin = page.find(kBegin), end = page.find(kEnd);
    if (begin == std::string::npos || end == std::string::npos)
        return {};
    return page.substr(0, begin + kBegin.size()) + bastewright::defaultsTable() + page.substr(end);
}

/// True where the file holds the text, or now does.
bool holds(const fs::path& path, const std::string& text, bool write) {
    if (textOf(path) == text)
        return true;
    if (write)
        return static_cast<bool>(std::ofstream{path, std::ios::binary} << text);
    std::cerr << path << " is not what the table of fields says. Write it anew: write_field_docs "
              << "docs --write\n";
    return false;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::cerr << "write_field_docs DOCS [--write]\n";
        return 2;
    }
    const fs::path docs{argv[1]};
    const bool write = argc > 2 && std::string_view{argv[2]} == "--write";
    const fs::path defaults = docs / "computation/defaults.md";
    const bool all[] = {
        holds(docs / "schema/bastewright-job.schema.json", bastewright::jobSchema(), write),
        holds(docs / "schema/bastewright-session.schema.json", bastewright::sessionSchema(), write),
        holds(defaults, withTable(textOf(defaults)), write)};
    return all[0] && all[1] && all[2] ? 0 : 1;
}
