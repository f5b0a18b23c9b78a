#pragma once

#include <QString>

#include <string>

namespace bastewright::sheets {

/// The text as it can be printed: line breaks and control characters become spaces; a character no
/// installed font can draw becomes a hollow square, so that its absence is seen and nothing is lost
/// in silence.
QString printable(const QString& text);

/// A person's own words (a name) made ready to stand inside a sentence: printable, and isolated, so
/// that a right-to-left name keeps its order and leaves the sentence's alone.
QString isolated(const std::string& utf8);

} // namespace bastewright::sheets
