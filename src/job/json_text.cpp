#include "job/json_text.h"

#include "measures/printable.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <utility>
#include <vector>

namespace bastewright {
namespace {

/// One line with a space after colons and commas, or nothing where it is longer than `room`.
bool printLine(const Json& value, std::size_t room, std::string& out) {
    if (value.is_string() && value.get_ref<const std::string&>().size() > room)
        return false; // a long text, as of a photo, is not copied to find out
    if (!value.is_structured()) {
        out += compactJson(value);
        return out.size() <= room;
    }
    const bool list = value.is_array();
    out += list ? '[' : '{';
    bool first = true;
    for (const auto& item : value.items()) {
        if (!first)
            out += ", ";
        first = false;
        if (!list)
            out += compactJson(Json(item.key())) + ": ";
        if (!printLine(item.value(), room, out))
            return false;
    }
    out += list ? ']' : '}';
    return out.size() <= room;
}

void print(const Json& value, std::size_t indent, std::size_t used, std::string& out) {
    constexpr std::size_t kLine = 100;
    std::string line;
    if (!value.is_structured() || value.empty() ||
        (used < kLine && printLine(value, kLine - used, line))) {
        out += line.empty() ? compactJson(value) : line;
        return;
    }
    const bool list = value.is_array();
    out += list ? "[" : "{";
    bool first = true;
    for (const auto& item : value.items()) {
        out += first ? "\n" : ",\n";
        first = false;
        out.append(indent + 2, ' ');
        const std::string key = list ? "" : compactJson(Json(item.key())) + ": ";
        out += key;
        print(item.value(), indent + 2, indent + 2 + key.size() + 1, out);
    }
    out += '\n';
    out.append(indent, ' ');
    out += list ? ']' : '}';
}

/// The words of a pointer, with ~1 and ~0 read back.
std::vector<std::string> steps(const std::string& pointer) {
    std::vector<std::string> out;
    for (std::size_t i = 0; i < pointer.size(); ++i) {
        if (pointer[i] == '/') {
            out.emplace_back();
            continue;
        }
        if (out.empty())
            break; // not a pointer
        if (pointer[i] == '~' && i + 1 < pointer.size())
            out.back() += pointer[++i] == '1' ? '/' : '~';
        else
            out.back() += pointer[i];
    }
    return out;
}

std::optional<std::size_t> indexOf(const std::string& step) {
    std::size_t n = 0;
    const auto [end, error] = std::from_chars(step.data(), step.data() + step.size(), n);
    if (step.empty() || error != std::errc{} || end != step.data() + step.size())
        return {};
    return n;
}

/// Positions of each step among its siblings; what is not there comes after all that are.
std::vector<std::size_t> placeOf(const std::string& pointer, const Json& root) {
    std::vector<std::size_t> out;
    const Json* at = &root;
    for (const auto& step : steps(pointer)) {
        const auto index = indexOf(step);
        if (at != nullptr && at->is_array() && index && *index < at->size()) {
            out.push_back(*index);
            at = &(*at)[*index];
        } else if (at != nullptr && at->is_object() && at->contains(step)) {
            const auto found = at->find(step);
            out.push_back(static_cast<std::size_t>(std::distance(at->begin(), found)));
            at = &*found;
        } else {
            out.push_back(std::numeric_limits<std::size_t>::max());
            at = nullptr;
        }
    }
    return out;
}

} // namespace

std::optional<Json> parseOwnJson(std::string_view text) {
    auto value = Json::parse(text, nullptr, false);
    return value.is_discarded() ? std::nullopt : std::optional(std::move(value));
}

std::string compactJson(const Json& value) {
    return value.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string printJson(const Json& value) {
    std::string out;
    print(value, 0, 0, out);
    out += '\n';
    return out;
}

std::string pointerTo(const std::string& parent, std::string_view key) {
    std::string out = parent + '/';
    for (const char c : key) {
        if (c == '~')
            out += "~0";
        else if (c == '/')
            out += "~1";
        else
            out += c;
    }
    return out;
}

Sentence placeInWords(const std::string& pointer) {
    Sentences words; // fields keep the names they have in the file
    for (const auto& step : steps(pointer)) {
        const auto index = indexOf(step);
        if (index && !words.empty())
            words.back() = core::says("%1 no. %2", words.back(), *index + 1);
        else
            words.emplace_back(shortened(step, 40));
    }
    if (words.empty())
        return core::says("The file");
    if (words.size() == 1)
        return words.front();
    const Sentence last = words.back();
    words.pop_back();
    return core::says("%1: %2", core::commaList(words), last);
}

std::string shortened(const std::string& text, std::size_t most) {
    const std::string out = printable(text, most);
    return out.size() < text.size() ? out + "..." : out;
}

std::string quoted(const Json& value) {
    if (value.is_object())
        return "an object";
    if (value.is_array())
        return value.empty() ? "an empty list" : "a list";
    return shortened(compactJson(value), 48);
}

void putBack(Json& root, const std::string& pointer, const std::string& text) {
    auto path = steps(pointer);
    if (path.empty())
        return;
    const std::string last = std::move(path.back());
    path.pop_back();
    Json* at = &root;
    for (const auto& step : path) {
        const auto index = indexOf(step);
        if (at->is_array() && index && *index < at->size())
            at = &(*at)[*index];
        else if (at->is_object() && at->contains(step))
            at = &(*at)[step];
        else
            return;
    }
    if (!at->is_object() || at->contains(last))
        return;
    if (auto value = parseOwnJson(text))
        (*at)[last] = std::move(*value);
}

void sortByPlace(Findings& findings, const Json& root) {
    std::vector<std::pair<std::vector<std::size_t>, Finding>> placed;
    placed.reserve(findings.size());
    for (auto& f : findings)
        placed.emplace_back(placeOf(f.field, root), std::move(f));
    std::ranges::stable_sort(
        placed, {}, [](const auto& p) -> const auto& { return p.first; });
    std::ranges::transform(placed, findings.begin(), [](auto& p) { return std::move(p.second); });
}

} // namespace bastewright
