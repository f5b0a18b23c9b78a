#include "job/json_text.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace bastewright {
namespace {

/// "line 3, column 14" of a byte; columns count characters, not bytes.
Sentence lineAndColumn(std::string_view text, std::size_t byte) {
    const auto before = text.substr(0, std::min(byte, text.size()));
    const auto lines = std::ranges::count(before, '\n') + 1;
    const auto start = before.rfind('\n');
    const auto line = start == std::string_view::npos ? before : before.substr(start + 1);
    const auto column = std::ranges::count_if(line, [](char c) { return (c & 0xC0) != 0x80; }) + 1;
    return core::says("line %1, column %2", lines, column);
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
            return refuse(pointer(), core::says("has more than %1 fields, the most that are "
                                                "accepted.",
                                                limits_.fields));
        level.key = std::move(name);
        if (level.container->contains(level.key))
            refuse(pointerTo(pointer(), level.key),
                   core::says("is given twice; each field is accepted once."));
        constexpr std::size_t kEnough = 100;
        return problems_.size() < kEnough;
    }

    bool parse_error(std::size_t position, const std::string& token,
                     const nlohmann::detail::exception& error) override {
        const auto where = lineAndColumn(text_, position == 0 ? 0 : position - 1);
        constexpr int kNumberTooLarge = 406;
        Sentence text;
        if (error.id == kNumberTooLarge)
            text = core::says("The number %1 at %2 is too large; numbers up to 1e308 can be read.",
                              shortened(token, 30), where);
        else if (position > text_.size())
            text = core::says("The file is not complete JSON: it ends at %1 before everything that "
                              "was opened is closed.",
                              where);
        else
            text = core::says("The file is not JSON: at %1 '%2' was not expected.", where,
                              shortened(token, 30));
        problems_.push_back({Finding::Kind::input, Finding::Level::stop, "", text, ""});
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

    std::string pointer() const {
        std::string out;
        for (std::size_t i = 0; i + 1 < open_.size(); ++i)
            out = pointerTo(out, open_[i].container->is_array()
                                     ? std::to_string(open_[i].container->size() - 1)
                                     : open_[i].key);
        return out;
    }

    bool refuse(const std::string& where, const Sentence& what) {
        problems_.push_back({Finding::Kind::input, Finding::Level::stop, where,
                             core::says("%1 %2", placeInWords(where), what), ""});
        return false;
    }

    template <class V>
    Json* place(V&& value) {
        if (++values_ > limits_.values) {
            refuse("", core::says("holds more than %1 values, the most that are accepted.",
                                  limits_.values));
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
            return refuse("",
                          core::says("has lists or objects inside each other more than %1 deep, "
                                     "the most that is accepted.",
                                     limits_.depth));
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

} // namespace

std::optional<Json> parseJson(std::string_view text, const JsonLimits& limits, Findings& problems) {
    const auto stop = [&](Sentence sentence) {
        problems.push_back(
            {Finding::Kind::input, Finding::Level::stop, "", std::move(sentence), ""});
    };
    if (text.size() > limits.bytes) {
        stop(core::says("The file has %1 bytes; up to %2 bytes are accepted.", text.size(),
                        limits.bytes));
        return {};
    }
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) {
        stop(core::says("The file is empty."));
        return {};
    }
    if (const auto bad = firstBadByte(text)) {
        stop(
            core::says("The file is not UTF-8 text: at %1 a byte has no meaning; save it as UTF-8.",
                       lineAndColumn(text, *bad)));
        return {};
    }
    Builder builder{text, limits, problems};
    if (!Json::sax_parse(text, &builder))
        return {};
    return builder.take();
}

} // namespace bastewright
