#include "job/json_text.h"

#include <vector>

namespace bastewright {
namespace {
constexpr const char* kFigure = "figure";
constexpr const char* kTime = "time";
constexpr std::size_t kPlaces = 9;

/// Bytes of the sentence in English, counted without putting it together: places inside places
/// multiply, so that a short file could stand for a text that fills any memory.
std::size_t bytesInEnglish(const Sentence& sentence) {
    std::vector<std::size_t> values;
    for (const Sentence& value : sentence.values())
        values.push_back(bytesInEnglish(value));
    const std::string& form = sentence.text();
    std::size_t bytes = form.size();
    for (std::size_t i = 0; i + 1 < form.size(); ++i)
        if (form[i] == '%' && form[i + 1] >= '1' && std::size_t(form[i + 1] - '1') < values.size())
            bytes += values[std::size_t(form[++i] - '1')];
    return bytes;
}
} // namespace

Json sentenceJson(const Sentence& sentence) {
    switch (sentence.kind()) {
    case Sentence::Kind::name:
        return sentence.text();
    case Sentence::Kind::figure:
        return Json{{kFigure, sentence.text()}};
    case Sentence::Kind::time:
        return Json{{kTime, sentence.text()}};
    case Sentence::Kind::words:
        break;
    }
    Json words = Json::array({sentence.text()});
    for (const Sentence& value : sentence.values())
        words.push_back(sentenceJson(value));
    return words;
}

std::optional<Sentence> readSentence(const Json& value) {
    if (value.is_string())
        return Sentence{value.get<std::string>()};
    if (value.is_object()) {
        if (value.size() != 1 || !value.begin()->is_string())
            return {};
        const auto& text = value.begin()->get_ref<const std::string&>();
        if (value.contains(kFigure))
            return core::figure(text);
        const auto time = value.contains(kTime) ? parseClock(text) : tl::unexpected{std::string{}};
        return time ? std::optional{core::said(*time)} : std::nullopt;
    }
    if (!value.is_array() || value.empty() || value.size() > kPlaces + 1 || !value[0].is_string())
        return {};
    Sentences values;
    for (std::size_t i = 1; i < value.size(); ++i) {
        auto read = readSentence(value[i]); // no deeper than the parser's limit
        if (!read)
            return {};
        values.push_back(*std::move(read));
    }
    Sentence read{Sentence::Kind::words, value[0].get<std::string>(), std::move(values)};
    if (bytesInEnglish(read) > kLongestSentence)
        return {};
    return read;
}

} // namespace bastewright
