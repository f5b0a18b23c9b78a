#pragma once

#include "written.h"

/// What has to hold for the sheets of every plan; used on plans made by hand and by the planner.
namespace bastewright {

/// Every helper's page, and nobody else's, holds that helper's passes: when each begins, which rows
/// and marks, how many pins. Rows and marks are read back and spelt out, and are those of the
/// plan's points, no more and no fewer. Breaks, coming and going stand at their times; no other
/// time of day does.
void expectEverybodysPasses(const Written& w);

/// Every helper's sheets are no more than so many pages.
void expectHelpersWithin(const Written& w, int pages);

/// The lead's page of each quilt has all passes, when they begin, and how many pins everybody puts
/// into each; finish, breaks and what to check. The list to bring has every supply with its
/// figures.
void expectLeadKnowsAll(const Written& w);

/// No text is smaller than 9 points, nor a helper's passes and calls smaller than 14.
void expectReadable(const Written& w);

/// No page has a zone by its id in files ("p1.A2"): people call it A2.
void expectZonesAsCalled(const Written& w);

/// Exact page size, embedded fonts, no missing glyph, 12 mm of white all round, a title, whole
/// pages (`layout.h`), zones as people call them.
void expectGoodForm(const Written& w, Paper paper);

} // namespace bastewright
