#pragma once

#include "session/record.h"

#include <QStringList>

/// A record in words.
namespace record_words {

/// When, how long, how many: a line each.
QStringList summary(const bastewright::Record& record);
/// What happened: "Ada: A2 closed, 12 pins, 1 min"; empty where it is not worth a line.
QString line(const bastewright::RecordLine& line);
/// "a little quicker than planned"; empty where nothing was learnt.
QString pace(const bastewright::PersonRecord& person);

} // namespace record_words
