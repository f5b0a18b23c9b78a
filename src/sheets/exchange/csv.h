#pragma once

#include "plan/plan.h"

#include <string>
#include <string_view>
#include <vector>

/// Lists for spreadsheets: comma-separated values after RFC 4180 (lines end in CR LF, the first
/// line names the columns), in UTF-8. Figures are written with a point and without units, times as
/// hh:mm.
namespace bastewright {

/// item,need,have,buy,unit
std::string bringCsv(const Plan& plan);

/// name,from,until,reach,unit,pace,closes,irons,lifts,seated,trouble_breathing: one line for each
/// helper.
std::string crewCsv(const Session& session, Unit unit);

/// person,start,end,quilt,pass,task,zone,points: one line for each person's part in each task, in
/// the plan's order, and for everybody's part in each break, whose task is "break" and whose other
/// columns are empty.
std::string tasksCsv(const Session& session, const Plan& plan);

/// Text from a person or a file, so that no spreadsheet takes it for a formula: where it begins as
/// one
/// (= + - @), an apostrophe stands before it.
std::string csvText(std::string_view text);

/// One field as RFC 4180, 2, rules 5 to 7 want it: in quotes where it holds a comma, a quote or a
/// line break, quotes doubled.
std::string csvField(std::string_view text);

} // namespace bastewright
