#include "job/json_text.h"

namespace bastewright {
namespace {
constexpr const char* kFigure = "figure";
constexpr std::size_t kPlaces = 9;
} // namespace

Json sentenceJson(const Sentence& sentence) {
    switch (sentence.kind()) {
    case Sentence::Kind::name:
        return sentence.text();
    case Sentence::Kind::figure:
        return Json{{kFigure, sentence.text()}};
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
        if (value.size() != 1 || !value.contains(kFigure) || !value.at(kFigure).is_string())
            return {};
        return core::figure(value.at(kFigure).get<std::string>());
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
    return Sentence{Sentence::Kind::words, value[0].get<std::string>(), std::move(values)};
}

} // namespace bastewright
