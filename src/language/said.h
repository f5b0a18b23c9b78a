#pragma once

#include "measures/sentence.h"

#include <QString>

/// What the core says, in the person's language. Safe from any thread.
namespace bastewright::language {

/// The context of the core's sentences in the catalogue; `lupdate` takes it from `core::says`.
inline constexpr const char* kCore = "core";

QString said(const Sentence& sentence);

/// A printed number as people read it: the language's decimal mark ("31,8 cm" in German), signs for
/// fractions ("12½ in"), and no line's end between a number and its unit.
QString figure(const QString& printed);

/// The device writes times of day with AM and PM.
bool hasTwelveHours();

/// A time of day in the device's own way: "13:05" or "1:05 PM".
QString clock(ClockTime time);

} // namespace bastewright::language
