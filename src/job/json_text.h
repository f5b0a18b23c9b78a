#pragma once

#include "job/finding.h"

#include <nlohmann/json.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

/// JSON as text: parsing with limits, printing for people. For the file formats and what guests
/// send.
namespace bastewright {

/// Fields keep the order of the file.
using Json = nlohmann::ordered_json;

/// Limits against hostile text. Time and memory are linear in `bytes` within them.
struct JsonLimits {
    std::size_t bytes;
    std::size_t values = 1'000'000; ///< numbers, texts, lists and objects in all
    std::size_t depth = 32;         ///< lists and objects inside each other
    std::size_t fields = 500;       ///< of one object
};

/// Parses UTF-8 JSON text (RFC 8259). What is not JSON, not UTF-8 or beyond a limit is one finding
/// with line and column, and nothing is returned. A field given twice is a finding of level stop,
/// too; the rest is still returned so that its other problems can be told, unless a hundred are
/// given twice. Never throws.
std::optional<Json> parseJson(std::string_view text, const JsonLimits& limits, Findings& problems);

/// Reads text that this program has written: no limits and no sentence. Nothing where it is no
/// JSON.
std::optional<Json> parseOwnJson(std::string_view text);

/// On one line, without spaces between values. Text that is not UTF-8 has its bad bytes replaced.
std::string compactJson(const Json& value);

/// Prints with two spaces of indent; what fits on a line of 100 characters stays on one. Text that
/// is not UTF-8 has its bad bytes replaced. Ends with a line feed.
std::string printJson(const Json& value);

/// JSON pointer (RFC 6901) to a field of the object at `parent`.
std::string pointerTo(const std::string& parent, std::string_view key);

/// A pointer as words: "/helpers/2/reach" is "helpers no. 3: reach".
Sentence placeInWords(const std::string& pointer);

/// The first `most` bytes, whole characters only, and three dots; all of it where it is no longer.
/// Spaces stand for control characters.
std::string shortened(const std::string& text, std::size_t most);

/// A value as it is quoted in a sentence, shortened where long.
std::string quoted(const Json& value);

/// A sentence with its form: words are a list of the form and what stands in its places, a figure
/// is {"figure": "4 in"}, a time {"time": "13:05"}, a name is text.
Json sentenceJson(const Sentence& sentence);

/// The longest sentence that is read, in bytes of its English.
inline constexpr std::size_t kLongestSentence = 4000;

/// Reads what sentenceJson writes; nothing where the value is something else or longer.
std::optional<Sentence> readSentence(const Json& value);

/// Puts a value at a pointer whose parent is an object that has no such field; otherwise does
/// nothing.
void putBack(Json& root, const std::string& pointer, const std::string& text);

/// Sorts findings by where their pointers lead in the file.
void sortByPlace(Findings& findings, const Json& root);

} // namespace bastewright
