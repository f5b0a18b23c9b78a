#pragma once

#include "plan/find.h"
#include "ways/way.h"

#include <QString>
#include <QStringList>

#include <span>

namespace bastewright::sheets {

/// What is done, in a line: "C4: place 24 pins, open", "Shift the quilt 54 in towards the head".
QString taskLine(const Task& task, const QuiltPlan& quilt, Basting::With with, Unit unit);

/// What people call a zone within its pass: "A2".
QString zoneWord(const std::string& zone);

/// The work of one zone, or of several together, with so many points: "C4, C5: place 48 pins,
/// open".
QString zonesLine(TaskKind kind, const QString& zones, int points, Basting::With with);

/// How it is done, where a quilt's zones are basted so, and what to check before going on: a few
/// short sentences for every kind of task; common practice (docs/sheets.md).
QString taskCheck(TaskKind kind, std::span<const Way* const> ways, Unit unit);

/// The name of a kind of work, as a heading: "Place pins open".
QString taskName(TaskKind kind);

/// How many points a task of a zone is for; 0 for tasks of a whole pass.
int taskPoints(const Task& task, const QuiltPlan& quilt);

/// Points of all zones of a pass.
int pointsIn(const QuiltPlan& quilt, int pass);

} // namespace bastewright::sheets
