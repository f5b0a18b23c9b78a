#pragma once

#include "written.h"

/// What has to hold for the sheets of every plan; used on plans made by hand and by the planner.
namespace bastewright {

/// Every helper's own pages, and nobody else's, hold that helper's zone tasks with the plan's times
/// and counts, under the right quilt, pass and table: the set of these lines is equal to the
/// plan's. So is that of breaks and long waits. Rows are in order of time; team tasks name
/// everybody they are done with, and say where that is a lift.
void expectEverybodysTasks(const Written& w);

/// Every helper's pages are no more than so many: front and back of one sheet.
void expectChecklistsWithin(const Written& w, int pages);

/// The lead's pages hold all zones, counts of passes, times and people.
void expectLeadKnowsAll(const Written& w);

/// No page has a zone by its id in files ("p1.A2"): people call it A2.
void expectZonesAsCalled(const Written& w);

/// Exact page size, embedded fonts, no missing glyph, 12 mm of white all round, a title, whole
/// pages (`layout.h`), zones as people call them.
void expectGoodForm(const Written& w, Paper paper);

} // namespace bastewright
