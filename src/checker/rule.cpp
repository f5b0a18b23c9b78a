#include "checker/rule.h"

#include "checker/rules/rules.h"

#include <array>

namespace bastewright::check {

std::span<const Rule> rules() {
    using enum Rule::Asks;
    static constexpr std::array kRules{
        Rule{"plan.quilts", planQuilts},
        Rule{"plan.names", planNames},
        Rule{"plan.findings", planFindings},
        Rule{"plan.help", planHelp},

        Rule{"layers.top", layersTop},
        Rule{"layers.sizes", layersSizes, unlessStopped},
        Rule{"layers.short", layersShort},
        Rule{"layers.spare", layersSpare},
        Rule{"layers.overhang", layersOverhang},

        Rule{"surface.tables", surfaceTables},
        Rule{"surface.group", surfaceGroup},
        Rule{"surface.stock", surfaceStock},
        Rule{"surface.closed", surfaceClosed},
        Rule{"surface.passes", surfacePasses},

        Rule{"passes.numbers", passesNumbers},
        Rule{"passes.fresh", passesFresh},
        Rule{"passes.field", passesField},
        Rule{"passes.shift", passesShift},
        Rule{"passes.touch", passesTouch},
        Rule{"passes.anchor", passesAnchor},
        Rule{"passes.outward", passesOutward},
        Rule{"passes.worth", passesWorth},
        Rule{"passes.start", passesStart},
        Rule{"passes.alternatives", passesAlternatives},
        Rule{"passes.ways", passesWays},
        Rule{"passes.listed", passesListed},
        Rule{"passes.smoothing", passesSmoothing},
        Rule{"passes.lift", passesLift},

        Rule{"zones.partition", zonesPartition},
        Rule{"zones.names", zonesNames},
        Rule{"zones.pass", zonesPass},
        Rule{"zones.reach", zonesReach},

        Rule{"points.coverage", pointsCoverage, unlessStopped},
        Rule{"points.edge", pointsEdge},
        Rule{"points.clearance", pointsClearance},
        Rule{"points.apart", pointsApart},
        Rule{"points.angle", pointsAngle},
        Rule{"points.zone", pointsZone},
        Rule{"points.rows", pointsRows},
        Rule{"points.blocks", pointsBlocks},
        Rule{"points.told", pointsTold},
        Rule{"points.gaps", pointsGaps},
        Rule{"points.sewn", pointsSewn},
        Rule{"points.slack", pointsSlack},
        Rule{"points.bound", pointsBound},

        Rule{"holds.sides", holdsSides},
        Rule{"holds.count", holdsCount},
        Rule{"holds.order", holdsOrder},
        Rule{"holds.numbers", holdsNumbers},
        Rule{"rolls.beyond", rollsBeyond},
        Rule{"rolls.needed", rollsNeeded},
        Rule{"rolls.diameter", rollsDiameter},
        Rule{"rolls.clips", rollsClips},
        Rule{"rolls.machine", rollsMachine},

        Rule{"backing.panels", backingPanels},
        Rule{"backing.cuts", backingCuts},
        Rule{"backing.pieces", backingPieces},
        Rule{"backing.bought", backingBought},
        Rule{"backing.narrow", backingNarrow},
        Rule{"backing.squared", backingSquared},
        Rule{"backing.centre", backingCentre},
        Rule{"backing.ways", backingWays},
        Rule{"backing.listed", backingListed},
        Rule{"backing.order", backingOrder},
        Rule{"batting.bought", battingBought},
        Rule{"batting.pieces", battingPieces},
        Rule{"batting.fits", battingFits},
        Rule{"batting.joins", battingJoins},
        Rule{"batting.apart", battingApart},
        Rule{"batting.listed", battingListed},

        Rule{"crew.list", crewList},
        Rule{"crew.tasks", crewTasks, unlessStopped},
        Rule{"crew.stretches", crewStretches},
        Rule{"crew.letters", crewLetters},
        Rule{"crew.hands", crewHands, unlessStopped},
        Rule{"crew.seated", crewSeated, unlessStopped},
        Rule{"crew.rests", crewRests, unlessStopped},
        Rule{"crew.people", crewPeople},
        Rule{"crew.teams", crewTeams, unlessStopped},
        Rule{"crew.skills", crewSkills, unlessStopped},
        Rule{"crew.handed", crewHanded, unlessStopped},
        Rule{"crew.hours", crewHours, unlessStopped},
        Rule{"crew.breaks", crewBreaks, unlessStopped},
        Rule{"crew.twice", crewTwice},
        Rule{"crew.irons", crewIrons, unlessStopped},
        Rule{"crew.places", crewPlaces, unlessStopped},
        Rule{"crew.reach", crewReach, unlessStopped},
        Rule{"crew.edges", crewEdges},
        Rule{"crew.surfaces", crewSurfaces},
        Rule{"crew.after", crewAfter},
        Rule{"crew.order", crewOrder},
        Rule{"crew.waits", crewWaits},
        Rule{"crew.smoothed", crewSmoothed},
        Rule{"crew.cooled", crewCooled},
        Rule{"crew.times", crewTimes},
        Rule{"crew.lengths", crewLengths},
        Rule{"crew.setup", crewSetUp},
        Rule{"crew.finish", crewFinish},
        Rule{"crew.range", crewRange},
        Rule{"crew.pauses", crewPauses},

        Rule{"supplies.sums", suppliesSums},
        Rule{"supplies.enough", suppliesEnough, unlessStopped},
        Rule{"supplies.dots", suppliesDots},
        Rule{"supplies.needed", suppliesNeeded},
    };
    return kRules;
}

void planQuilts(const PlanView& v, Report& report) {
    if (v.plan.quilts.size() != v.session.jobs.size())
        report.add("The plan has " + std::to_string(v.plan.quilts.size()) +
                   " quilts, the session " + std::to_string(v.session.jobs.size()) + ".");
}

} // namespace bastewright::check
