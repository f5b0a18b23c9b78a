#pragma once

#include "job/job.h"

#include <QString>

/// What is given, in half a line each.
namespace summaries {

QString room(const bastewright::Room& room, bastewright::Unit unit);
QString person(const bastewright::Helper& helper, bastewright::Unit unit);
QString supplies(const bastewright::Stash& stash);

/// A name nobody at the table has yet: "Helper 3".
QString newName(const bastewright::Setting& setting);
/// A name that `newName` made, and nobody's own.
bool isNumbered(const QString& name);

} // namespace summaries
