#include "measures/sentence.h"

#include <algorithm>
#include <ostream>
#include <span>
#include <utility>

namespace bastewright {

Sentence::Sentence(std::string name)
    : text_{std::move(name)} {}

Sentence::Sentence(Kind kind, std::string text, std::vector<Sentence> values)
    : kind_{kind}
    , text_{std::move(text)}
    , values_{std::move(values)} {}

std::string Sentence::english() const {
    if (values_.empty())
        return text_;
    std::string out;
    for (std::size_t i = 0; i < text_.size(); ++i) {
        const bool place = text_[i] == '%' && i + 1 < text_.size() && text_[i + 1] >= '1' &&
                           std::size_t(text_[i + 1] - '1') < values_.size();
        if (place)
            out += values_[std::size_t(text_[++i] - '1')].english();
        else
            out += text_[i];
    }
    return out;
}

std::strong_ordering Sentence::operator<=>(const Sentence& other) const {
    return english() <=> other.english();
}

std::ostream& operator<<(std::ostream& out, const Sentence& sentence) {
    return out << sentence.english();
}

} // namespace bastewright

namespace core {
namespace {

// By halves, so that sentences of long lists are not deep.
Sentence joined(std::span<const Sentence> items) {
    if (items.size() < 2)
        return items.empty() ? Sentence{} : items.front();
    const auto half = items.size() / 2;
    return core::says("%1, %2", joined(items.first(half)), joined(items.subspan(half)));
}

} // namespace

Sentence said(ClockTime time) {
    return {Sentence::Kind::time, bastewright::format(time)};
}

Sentence said(Seconds span) {
    const auto minutes = std::chrono::round<std::chrono::minutes>(span).count();
    if (minutes < 1)
        return core::says("under a minute");
    if (minutes < 60)
        return core::says("%1 min", minutes);
    const auto rest = std::to_string(minutes % 60);
    return core::says("%1 h %2 min", minutes / 60, figure(rest.size() == 1 ? "0" + rest : rest));
}

Sentence length(Length l, Unit unit) {
    return figure(format(l, unit));
}

Sentence weight(double kilograms, Unit unit) {
    return figure(bastewright::formatWeight(kilograms, unit));
}

Sentence size(Length width, Length length, Unit unit) {
    return figure(format(width, unit, false) + " × " + format(length, unit));
}

Sentence figure(std::string printed) {
    return {Sentence::Kind::figure, std::move(printed)};
}

Sentence side(Side side) {
    switch (side) {
    case Side::head:
        return core::says("head");
    case Side::foot:
        return core::says("foot");
    case Side::left:
        return core::says("left");
    case Side::right:
        break;
    }
    return core::says("right");
}

Sentence listed(const Sentences& items, std::size_t most) {
    if (items.size() > most)
        return core::says("%1 and others", joined(std::span{items}.first(most)));
    if (items.size() < 2)
        return joined(items);
    return core::says("%1 and %2", joined(std::span{items}.first(items.size() - 1)), items.back());
}

Sentence listed(const std::vector<std::string>& names, std::size_t most) {
    return listed(Sentences(names.begin(), names.end()), most);
}

Sentence commaList(const Sentences& items) {
    return joined(items);
}

} // namespace core
