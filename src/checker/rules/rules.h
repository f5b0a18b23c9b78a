#pragma once

#include "checker/rule.h"

/// One function for each rule; docs/computation/checker.md gives each its sentence, and ../rule.cpp
/// its name.
namespace bastewright::check {

// coverage.cpp
void pointsCoverage(const QuiltView&, Report&);
// clearance.cpp
void pointsEdge(const QuiltView&, Report&);
void pointsClearance(const QuiltView&, Report&);
// points.cpp
void pointsAngle(const QuiltView&, Report&);
void pointsApart(const QuiltView&, Report&);
void pointsZone(const QuiltView&, Report&);
void pointsSlack(const QuiltView&, Report&);
void pointsBound(const QuiltView&, Report&);
// points_told.cpp
void pointsRows(const QuiltView&, Report&);
void pointsTold(const QuiltView&, Report&);
void pointsGaps(const QuiltView&, Report&);
void pointsBlocks(const QuiltView&, Report&);
// points_sewn.cpp
void pointsSewn(const QuiltView&, Report&);
// points_sprayed.cpp
void pointsSprayed(const QuiltView&, Report&);

// zones.cpp
void zonesPartition(const QuiltView&, Report&);
void zonesNames(const QuiltView&, Report&);
void zonesPass(const QuiltView&, Report&);
void zonesReach(const PlanView&, Report&);
// stand_ins.cpp
void zonesWith(const PlanView&, Report&);
void zonesShort(const PlanView&, Report&);

// passes.cpp
void passesNumbers(const QuiltView&, Report&);
void passesFresh(const QuiltView&, Report&);
void passesField(const QuiltView&, Report&);
void passesShift(const QuiltView&, Report&);
void passesTouch(const QuiltView&, Report&);
void passesAnchor(const QuiltView&, Report&);
void passesOutward(const QuiltView&, Report&); // outward.cpp
void passesWorth(const QuiltView&, Report&);
void passesStart(const QuiltView&, Report&);
void passesAlternatives(const QuiltView&, Report&);
void passesSmoothing(const QuiltView&, Report&);

// ways.cpp
void passesWays(const QuiltView&, Report&);
// ways_listed.cpp
void passesListed(const QuiltView&, Report&);
// lifting.cpp
void passesLift(const QuiltView&, Report&);
// surface.cpp
void surfaceTables(const QuiltView&, Report&);
void surfaceGroup(const QuiltView&, Report&);
void surfaceStock(const PlanView&, Report&);
void surfaceClosed(const QuiltView&, Report&);
void surfacePasses(const QuiltView&, Report&);

// layers.cpp
void layersTop(const QuiltView&, Report&);
void layersSizes(const QuiltView&, Report&);
void layersShort(const QuiltView&, Report&);
void layersSpare(const QuiltView&, Report&);
void layersOverhang(const QuiltView&, Report&);
// holds.cpp
void holdsSides(const QuiltView&, Report&);
void holdsCount(const QuiltView&, Report&);
void holdsOrder(const QuiltView&, Report&);
void holdsNumbers(const QuiltView&, Report&);
// rolls.cpp
void rollsBeyond(const QuiltView&, Report&);
void rollsNeeded(const QuiltView&, Report&);
void rollsDiameter(const QuiltView&, Report&);
void rollsClips(const QuiltView&, Report&);
void rollsMachine(const QuiltView&, Report&);

// backing.cpp
void backingPanels(const QuiltView&, Report&);
void backingCuts(const QuiltView&, Report&);
void backingPieces(const QuiltView&, Report&);
void backingBought(const QuiltView&, Report&);
void backingNarrow(const QuiltView&, Report&);
void backingSquared(const QuiltView&, Report&);
void backingCentre(const QuiltView&, Report&);
// backing_ways.cpp
void backingWays(const QuiltView&, Report&);
void backingListed(const QuiltView&, Report&);
void backingOrder(const QuiltView&, Report&);
// batting.cpp
void battingBought(const QuiltView&, Report&);
void battingPieces(const QuiltView&, Report&);
void battingFits(const QuiltView&, Report&);
void battingJoins(const QuiltView&, Report&);
void battingApart(const QuiltView&, Report&);
// batting_ways.cpp
void battingListed(const QuiltView&, Report&);

// crew_people.cpp
void crewPeople(const PlanView&, Report&);
void crewTeams(const PlanView&, Report&);
void crewSkills(const PlanView&, Report&);
void crewHours(const PlanView&, Report&);
void crewBreaks(const PlanView&, Report&);
void crewTwice(const PlanView&, Report&);
void crewIrons(const PlanView&, Report&);
// crew_handed.cpp
void crewHanded(const PlanView&, Report&);
// crew_edges.cpp
void crewPlaces(const PlanView&, Report&);
void crewReach(const PlanView&, Report&);
void crewEdges(const PlanView&, Report&);
void crewSurfaces(const PlanView&, Report&);
// crew_tasks.cpp
void crewList(const PlanView&, Report&);
void crewTasks(const QuiltView&, Report&);
void crewAfter(const PlanView&, Report&);
// crew_stretches.cpp
void crewStretches(const QuiltView&, Report&);
void crewLetters(const QuiltView&, Report&);
void crewHands(const PlanView&, Report&);
void crewSeated(const PlanView&, Report&);
void crewRests(const PlanView&, Report&);
// crew_order.cpp
void crewOrder(const QuiltView&, Report&);
void crewWaits(const QuiltView&, Report&);
void crewSmoothed(const QuiltView&, Report&);
void crewCooled(const QuiltView&, Report&);
// crew_times.cpp
void crewTimes(const PlanView&, Report&);
void crewLengths(const PlanView&, Report&);
void crewSetUp(const PlanView&, Report&);
void crewFinish(const PlanView&, Report&);
// forecast.cpp
void crewRange(const PlanView&, Report&);
void crewPauses(const PlanView&, Report&);

// supplies.cpp
void suppliesSums(const PlanView&, Report&);
void suppliesEnough(const PlanView&, Report&);
// needs.cpp
void suppliesNeeded(const PlanView&, Report&);

// said.cpp
void planFindings(const PlanView&, Report&);
void planNames(const QuiltView&, Report&);
// help.cpp
void planHelp(const PlanView&, Report&);

// rule.cpp
void planQuilts(const PlanView&, Report&);
void planUnit(const PlanView&, Report&);

} // namespace bastewright::check
