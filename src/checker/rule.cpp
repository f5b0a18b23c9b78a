#include "checker/rule.h"

#include "checker/rules/rules.h"

#include <array>

namespace bastewright::check {

std::span<const Rule> rules() {
    using enum AskedOf;
    using enum Rule::Asks;
    static constexpr std::array kRules{
        Rule{"plan.quilts", planQuilts, whole},
        Rule{"plan.names", planNames, whole},
        Rule{"plan.findings", planFindings, first}, // of what was planned first, or the rest
        Rule{"plan.help", planHelp, whole},

        Rule{"layers.top", layersTop, whole},
        Rule{"layers.sizes", layersSizes, whole, unlessStopped},
        Rule{"layers.short", layersShort, whole},
        Rule{"layers.spare", layersSpare, whole},
        Rule{"layers.overhang", layersOverhang, whole},

        Rule{"surface.tables", surfaceTables, whole},
        Rule{"surface.group", surfaceGroup, whole},
        Rule{"surface.stock", surfaceStock, first}, // rest.tables
        Rule{"surface.closed", surfaceClosed, whole},
        Rule{"surface.passes", surfacePasses, newPasses},

        Rule{"passes.numbers", passesNumbers, whole},
        Rule{"passes.fresh", passesFresh, whole},
        Rule{"passes.field", passesField, newPasses},
        Rule{"passes.shift", passesShift, whole},
        Rule{"passes.touch", passesTouch, whole},
        Rule{"passes.anchor", passesAnchor, whole},
        Rule{"passes.outward", passesOutward, whole},
        Rule{"passes.worth", passesWorth, whole},
        Rule{"passes.start", passesStart, whole},
        Rule{"passes.alternatives", passesAlternatives, whole},
        Rule{"passes.ways", passesWays, whole},
        Rule{"passes.listed", passesListed, first}, // no other way is to be had any more
        Rule{"passes.smoothing", passesSmoothing, whole},
        Rule{"passes.lift", passesLift, whole},

        Rule{"zones.partition", zonesPartition, whole},
        Rule{"zones.names", zonesNames, whole},
        Rule{"zones.pass", zonesPass, whole},
        Rule{"zones.reach", zonesReach, newPasses},

        Rule{"points.coverage", pointsCoverage, whole, unlessStopped},
        Rule{"points.edge", pointsEdge, whole},
        Rule{"points.clearance", pointsClearance, whole},
        Rule{"points.apart", pointsApart, first}, // closer where rows of two spacings meet
        Rule{"points.angle", pointsAngle, whole},
        Rule{"points.zone", pointsZone, whole},
        Rule{"points.rows", pointsRows, first}, // with wider rows those are told that are new
        Rule{"points.blocks", pointsBlocks, whole},
        Rule{"points.told", pointsTold, whole},
        Rule{"points.gaps", pointsGaps, whole},
        Rule{"points.sewn", pointsSewn, whole},
        Rule{"points.slack", pointsSlack, whole},
        Rule{"points.bound", pointsBound, whole},

        Rule{"holds.sides", holdsSides, newPasses},
        Rule{"holds.count", holdsCount, newPasses},
        Rule{"holds.order", holdsOrder, newPasses},
        Rule{"holds.numbers", holdsNumbers, newPasses},
        Rule{"rolls.beyond", rollsBeyond, newPasses},
        Rule{"rolls.needed", rollsNeeded, newPasses},
        Rule{"rolls.diameter", rollsDiameter, newPasses},
        Rule{"rolls.clips", rollsClips, newPasses},
        Rule{"rolls.machine", rollsMachine, same},

        Rule{"backing.panels", backingPanels, same},
        Rule{"backing.cuts", backingCuts, same},
        Rule{"backing.pieces", backingPieces, same},
        Rule{"backing.bought", backingBought, same},
        Rule{"backing.narrow", backingNarrow, same},
        Rule{"backing.squared", backingSquared, same},
        Rule{"backing.centre", backingCentre, same},
        Rule{"backing.ways", backingWays, same},
        Rule{"backing.listed", backingListed, same},
        Rule{"backing.order", backingOrder, same},
        Rule{"batting.bought", battingBought, same},
        Rule{"batting.pieces", battingPieces, same},
        Rule{"batting.fits", battingFits, same},
        Rule{"batting.joins", battingJoins, same},
        Rule{"batting.apart", battingApart, same},
        Rule{"batting.listed", battingListed, same},

        Rule{"crew.list", crewList, open},
        Rule{"crew.tasks", crewTasks, first, unlessStopped}, // rest.tasks
        Rule{"crew.stretches", crewStretches, newPasses},
        Rule{"crew.letters", crewLetters, newPasses},
        Rule{"crew.hands", crewHands, open, unlessStopped},
        Rule{"crew.seated", crewSeated, open, unlessStopped},
        Rule{"crew.rests", crewRests, open, unlessStopped},
        Rule{"crew.people", crewPeople, open},
        Rule{"crew.teams", crewTeams, newPasses, unlessStopped},
        Rule{"crew.skills", crewSkills, open, unlessStopped},
        Rule{"crew.handed", crewHanded, open, unlessStopped},
        Rule{"crew.hours", crewHours, open, unlessStopped},
        Rule{"crew.breaks", crewBreaks, open, unlessStopped},
        Rule{"crew.twice", crewTwice, open},
        Rule{"crew.irons", crewIrons, open, unlessStopped},
        Rule{"crew.places", crewPlaces, open, unlessStopped},
        Rule{"crew.reach", crewReach, open, unlessStopped},
        Rule{"crew.edges", crewEdges, newPasses},
        Rule{"crew.surfaces", crewSurfaces, newPasses},
        Rule{"crew.after", crewAfter, open},
        Rule{"crew.order", crewOrder, open},
        Rule{"crew.waits", crewWaits, first},       // rest.waits
        Rule{"crew.smoothed", crewSmoothed, first}, // rest.smoothed
        Rule{"crew.cooled", crewCooled, open},
        Rule{"crew.times", crewTimes, notBegun},
        Rule{"crew.lengths", crewLengths, notBegun},
        Rule{"crew.setup", crewSetUp, notBegun},
        Rule{"crew.finish", crewFinish, whole},
        Rule{"crew.range", crewRange, first}, // rest.range
        // While a pass is finished first, or somebody is waited for, nobody may work.
        Rule{"crew.pauses", crewPauses, first},

        Rule{"supplies.sums", suppliesSums, same},
        Rule{"supplies.enough", suppliesEnough, same, unlessStopped},
        Rule{"supplies.dots", suppliesDots, same},
        Rule{"supplies.needed", suppliesNeeded, same},
    };
    return kRules;
}

void planQuilts(const PlanView& v, Report& report) {
    if (v.plan.quilts.size() != v.session.jobs.size())
        report.add("The plan has " + std::to_string(v.plan.quilts.size()) +
                   " quilts, the session " + std::to_string(v.session.jobs.size()) + ".");
}

} // namespace bastewright::check
