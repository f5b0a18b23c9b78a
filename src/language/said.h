#pragma once

#include "measures/sentence.h"

#include <QString>

/// What the core says, in the person's language. Safe from any thread.
namespace bastewright::language {

/// The context of the core's sentences in the catalogue; `lupdate` takes it from `core::says`.
inline constexpr const char* kCore = "core";

QString said(const Sentence& sentence);

/// A printed number with the language's decimal mark: "31.8 cm" is "31,8 cm" in German.
QString figure(const QString& printed);

} // namespace bastewright::language
