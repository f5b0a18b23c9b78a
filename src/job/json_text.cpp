#include "job/json_text.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <utility>
#include <vector>

namespace bastewright {
namespace {

/// "line 3, column 14" of a byte; columns count characters, not bytes.
std::string lineAndColumn(std::string_view text, std::size_t byte) {
    const auto before = text.substr(0, std::min(byte, text.size()));
    const auto lines = std::ranges::count(before, '\n') + 1;
    const auto start = before.rfind('\n');
    const auto line = start == std::string_view::npos ? before : before.substr(start + 1);
    const auto column = std::ranges::count_if(line, [](char c) { return (c & 0xC0) != 0x80; }) + 1;
    return "line " + std::to_string(lines) + ", column " + std::to_string(column);
}

/// First byte that is not part of well-formed UTF-8 (Unicode 15, table 3-7).
std::optional<std::size_t> firstBadByte(std::string_view text) {
    std::size_t at = 0;
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
    };
    while (at < text.size()) {
        const unsigned lead = byte(at);
        if (lead < 0x80) {
            ++at;
            continue;
        }
        const std::size_t more = lead >= 0xC2 && lead <= 0xDF   ? 1
                                 : lead >= 0xE0 && lead <= 0xEF ? 2
                                 : lead >= 0xF0 && lead <= 0xF4 ? 3
                                                                : 0;
        if (more == 0)
            return at;
        const unsigned second = byte(at + 1);
        const unsigned least = lead == 0xE0 ? 0xA0 : lead == 0xF0 ? 0x90 : 0x80;
        const unsigned most = lead == 0xED ? 0x9F : lead == 0xF4 ? 0x8F : 0xBF;
        if (second < least || second > most)
            return at;
        for (std::size_t i = 2; i <= more; ++i)
            if ((byte(at + i) & 0xC0U) != 0x80U)
                return at;
        at += more + 1;
    }
    return {};
}

/// Builds the value and watches the limits; parsing ends where one is passed.
class Builder final : public Json::json_sax_t {
public:
    Builder(std::string_view text, const JsonLimits& limits, Findings& problems)
        : text_{text}
        , limits_{limits}
        , problems_{problems} {}

    Json take() { return std::move(root_); }

    bool null() override { return place(nullptr) != nullptr; }
    bool boolean(bool v) override { return place(v) != nullptr; }
    bool number_integer(number_integer_t v) override { return place(v) != nullptr; }
    bool number_unsigned(number_unsigned_t v) override { return place(v) != nullptr; }
    bool number_float(number_float_t v, const string_t&) override { return place(v) != nullptr; }
    bool string(string_t& v) override { return place(std::move(v)) != nullptr; }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open(Json::object()); }
    bool start_array(std::size_t) override { return open(Json::array()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        Level& level = open_.back();
        if (level.container->size() >= limits_.fields)
            return refuse(pointer(), "has more than " + std::to_string(limits_.fields) +
                                         " fields, the most that are accepted");
        level.key = std::move(name);
        if (level.container->contains(level.key))
            refuse(pointerTo(pointer(), level.key), "is given twice; each field is accepted once");
        return true;
    }

    bool parse_error(std::size_t position, const std::string& token,
                     const nlohmann::detail::exception& error) override {
        const auto where = lineAndColumn(text_, position == 0 ? 0 : position - 1);
        constexpr int kNumberTooLarge = 406;
        std::string text;
        if (error.id == kNumberTooLarge)
            text = "The number " + shortened(token) + " at " + where +
                   " is too large; numbers up to 1e308 can be read.";
        else if (position > text_.size())
            text = "The file is not complete JSON: it ends at " + where +
                   " before everything that was opened is closed.";
        else
            text = "The file is not JSON: at " + where + " '" + shortened(token) +
                   "' was not expected.";
        problems_.push_back({Finding::Level::stop, "", text, ""});
        return false;
    }

private:
    struct Level {
        Json* container;
        std::string key;
    };
    std::string_view text_;
    const JsonLimits& limits_;
    Findings& problems_;
    Json root_;
    std::vector<Level> open_;
    std::size_t values_ = 0;

    static std::string shortened(const std::string& token) {
        return token.size() <= 30 ? token : token.substr(0, 30) + "...";
    }

    std::string pointer() const {
        std::string out;
        for (std::size_t i = 0; i + 1 < open_.size(); ++i)
            out = pointerTo(out, open_[i].container->is_array()
                                     ? std::to_string(open_[i].container->size() - 1)
                                     : open_[i].key);
        return out;
    }

    bool refuse(const std::string& where, const std::string& what) {
        problems_.push_back(
            {Finding::Level::stop, where, placeInWords(where) + " " + what + ".", ""});
        return false;
    }

    template <class V>
    Json* place(V&& value) {
        if (++values_ > limits_.values) {
            refuse("", "holds more than " + std::to_string(limits_.values) +
                           " values, the most that are accepted");
            return nullptr;
        }
        if (open_.empty())
            return &(root_ = std::forward<V>(value));
        Level& level = open_.back();
        if (level.container->is_array()) {
            level.container->push_back(std::forward<V>(value));
            return &level.container->back();
        }
        Json& slot = (*level.container)[level.key];
        slot = std::forward<V>(value);
        return &slot;
    }

    bool open(Json container) {
        if (open_.size() == limits_.depth)
            return refuse("", "has lists or objects inside each other more than " +
                                  std::to_string(limits_.depth) +
                                  " deep, the most that is accepted");
        Json* const placed = place(std::move(container));
        if (placed == nullptr)
            return false;
        open_.push_back({placed, {}});
        return true;
    }

    bool close() {
        open_.pop_back();
        return true;
    }
};

std::string compact(const Json& value) {
    return value.dump(-1, ' ', false, Json::error_handler_t::replace);
}

/// One line with a space after colons and commas, or nothing where it is longer than `room`.
bool printLine(const Json& value, std::size_t room, std::string& out) {
    if (!value.is_structured()) {
        out += compact(value);
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
            out += compact(Json(item.key())) + ": ";
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
        out += line.empty() ? compact(value) : line;
        return;
    }
    const bool list = value.is_array();
    out += list ? "[" : "{";
    bool first = true;
    for (const auto& item : value.items()) {
        out += first ? "\n" : ",\n";
        first = false;
        out.append(indent + 2, ' ');
        const std::string key = list ? "" : compact(Json(item.key())) + ": ";
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

std::optional<Json> parseJson(std::string_view text, const JsonLimits& limits, Findings& problems) {
    const auto stop = [&](std::string sentence) {
        problems.push_back({Finding::Level::stop, "", std::move(sentence), ""});
    };
    if (text.size() > limits.bytes) {
        stop("The file has " + std::to_string(text.size()) + " bytes; up to " +
             std::to_string(limits.bytes) + " bytes are accepted.");
        return {};
    }
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) {
        stop("The file is empty.");
        return {};
    }
    if (const auto bad = firstBadByte(text)) {
        stop("The file is not UTF-8 text: at " + lineAndColumn(text, *bad) +
             " a byte has no meaning; save it as UTF-8.");
        return {};
    }
    Builder builder{text, limits, problems};
    if (!Json::sax_parse(text, &builder))
        return {};
    return builder.take();
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

std::string placeInWords(const std::string& pointer) {
    std::vector<std::string> words;
    for (const auto& step : steps(pointer)) {
        const auto index = indexOf(step);
        if (index && !words.empty())
            words.back() += " no. " + std::to_string(*index + 1);
        else
            words.push_back(step.size() <= 40 ? step : step.substr(0, 40) + "...");
    }
    if (words.empty())
        return "The file";
    std::string out;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0)
            out += i + 1 == words.size() ? ": " : ", ";
        out += words[i];
    }
    return out;
}

std::string quoted(const Json& value) {
    if (value.is_object())
        return "an object";
    if (value.is_array())
        return value.empty() ? "an empty list" : "a list";
    std::string text = compact(value);
    if (text.size() > 48) {
        std::size_t end = 44;
        while ((text[end] & 0xC0) == 0x80) // not in the middle of a character
            --end;
        text = text.substr(0, end) + "...";
    }
    return text;
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
    auto value = Json::parse(text, nullptr, false);
    if (!value.is_discarded())
        (*at)[last] = std::move(value);
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
