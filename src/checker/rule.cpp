#include "checker/rule.h"

#include "checker/rules/rules.h"

#include <array>

namespace bastewright::check {

std::span<const Rule> rules() {
    using enum AskedOf;
    using enum Rule::Asks;
    static constexpr std::array kRules{
        Rule{"plan.quilts", "one quilt for each job", planQuilts, whole},
        Rule{"plan.unit", "lengths are in the unit of the first job", planUnit, whole},
        Rule{"plan.names", "a quilt is called as its job", planNames, whole},
        Rule{"plan.findings", "what the plan says of itself is so, and what must be said is said",
             planFindings, first}, // else rest.said, rest.pins, rest.tables
        Rule{"plan.help", "advice is possible in this session, and ranked by what it saves",
             planHelp, whole},

        Rule{"layers.top", "the top is as large as its largest readings", layersTop, whole},
        Rule{
            "layers.sizes",
            "batting and backing reach past the top by their overage, or are as they were measured",
            layersSizes, whole, unlessStopped},
        Rule{"layers.short", "a layer with too little to spare is warned of", layersShort, whole},
        Rule{"layers.spare", "a layer lies centered under the top", layersSpare, whole},
        Rule{"layers.overhang", "a layer reaches beyond the table as far as it lies there",
             layersOverhang, whole},

        Rule{"surface.tables", "tables of the room make up the surface, from left to right",
             surfaceTables, whole},
        Rule{"surface.group", "tables that are to stay apart are not pushed together", surfaceGroup,
             whole},
        Rule{"surface.stock", "no more tables than the room has", surfaceStock,
             first}, // rest.tables
        Rule{"surface.closed", "nobody stands at a wall", surfaceClosed, whole},
        Rule{"surface.passes", "in every pass the table is the surface", surfacePasses, newPasses},

        Rule{"passes.numbers", "passes are numbered 1, 2, 3", passesNumbers, whole},
        Rule{"passes.fresh", "the new areas of the passes divide the top", passesFresh, whole},
        Rule{"passes.field",
             "the field is what lies on the table inside its rim, and holds the pass's points",
             passesField, newPasses},
        Rule{"passes.shift", "a shift leads from one place of the table to the next", passesShift,
             whole},
        Rule{"passes.touch", "a new area touches what is basted", passesTouch, whole},
        Rule{"passes.anchor", "6 in of what is basted stay on the table beside a new area",
             passesAnchor, whole},
        Rule{"passes.outward", "basting goes outward and leaves nothing bare between",
             passesOutward, whole},
        Rule{"passes.worth", "every pass has points", passesWorth, whole},
        Rule{"passes.start", "the first pass lies where its start says", passesStart, whole},
        Rule{"passes.alternatives", "one way is chosen, and it is the plan's", passesAlternatives,
             whole},
        Rule{"passes.ways", "the chosen way's figures are those of its passes", passesWays, whole},
        Rule{"passes.listed", "the figures of every way that is listed go together", passesListed,
             first}, // no other way is to be had any more
        Rule{"passes.smoothing", "smoothing goes away from what is basted", passesSmoothing, whole},
        Rule{"passes.lift", "enough people lift the quilt by its weight", passesLift, whole},

        Rule{"zones.partition", "the zones divide the top", zonesPartition, whole},
        Rule{"zones.names", "a zone is called by its pass, its place's letter and its turn",
             zonesNames, whole},
        Rule{"zones.pass", "a zone lies in the new area of its pass, which lists it", zonesPass,
             whole},
        Rule{"zones.reach", "somebody reaches every point from an open side", zonesReach,
             newPasses},
        Rule{"zones.with",
             "a zone is basted otherwise than its quilt only where the quilt asks for it",
             zonesWith, whole},
        Rule{"zones.short",
             "dots stand in for pins where the box does not last, in no more than it takes",
             zonesShort, first, unlessStopped}, // rest.with

        Rule{"points.coverage", "no place of the top is too far from a point", pointsCoverage,
             whole, unlessStopped},
        Rule{"points.edge", "points lie inside the edge", pointsEdge, whole},
        Rule{"points.clearance", "pins keep clear of seams that will be sewn", pointsClearance,
             whole},
        Rule{"points.apart", "points are half the spacing apart at least", pointsApart,
             sameRows}, // else rest.rows: closer where rows of two spacings meet
        Rule{"points.angle", "a point lies in a direction that hands can lay", pointsAngle, whole},
        Rule{"points.zone", "a zone's points lie in its area, from the head to the foot",
             pointsZone, whole},
        Rule{"points.rows", "rows and ribbons tell of every point, and of no other", pointsRows,
             sameRows}, // else rest.rows: those are told that are new
        Rule{"points.blocks", "the figure of the blocks tells of every point, and of no other",
             pointsBlocks, whole},
        Rule{"points.told", "points are told by rows or by the blocks", pointsTold, whole},
        Rule{"points.gaps", "the distances that are said are those of rows and points", pointsGaps,
             whole},
        Rule{"points.sewn", "stitches lie along rows as far apart as the spacing", pointsSewn,
             whole},
        Rule{"points.sprayed", "patches leave nothing of the top bare", pointsSprayed, whole},
        Rule{"points.slack", "points may be off by as much as is said, and no more", pointsSlack,
             whole},
        Rule{"points.bound", "no covering has fewer points than the bound", pointsBound, whole},

        Rule{"holds.sides",
             "a side is clamped where backing hangs, taped where it ends on the table", holdsSides,
             newPasses},
        Rule{"holds.count", "clamps are 12 to 18 in apart, tape is 6 in every 12 in", holdsCount,
             newPasses},
        Rule{"holds.order", "holds go from the middle outward, evenly, long sides first",
             holdsOrder, newPasses},
        Rule{"holds.numbers", "holds that face each other have one number", holdsNumbers,
             newPasses},
        Rule{"rolls.beyond", "what lies beyond the table hangs, rests or is rolled as it must",
             rollsBeyond, newPasses},
        Rule{"rolls.needed", "a roll holds what is beyond its side", rollsNeeded, newPasses},
        Rule{"rolls.diameter", "a roll is as thick as what is wound up in it", rollsDiameter,
             newPasses},
        Rule{"rolls.clips", "a roll is held by clips that are large enough, or folded", rollsClips,
             newPasses},
        Rule{"rolls.machine", "for the machine the quilt is rolled from both longer sides",
             rollsMachine, same},

        Rule{"backing.panels", "the panels make up the backing", backingPanels, same},
        Rule{"backing.cuts", "pieces are cut from cloth that is there, none from another's",
             backingCuts, same},
        Rule{"backing.pieces", "every panel is cut once, with its seam allowances", backingPieces,
             same},
        Rule{"backing.bought", "what is cut is on hand or bought", backingBought, same},
        Rule{"backing.narrow", "no panel is narrower than is wanted", backingNarrow, same},
        Rule{"backing.squared", "a cut end is left cloth to be squared", backingSquared, same},
        Rule{"backing.centre", "no seam on a center line", backingCentre, same},
        Rule{"backing.ways",
             "the way that is chosen to piece the backing is the best that is offered", backingWays,
             same},
        Rule{"backing.listed", "the figures of every way to piece the backing go together",
             backingListed, same},
        Rule{"backing.order", "panels, purchases and cuts are in their order", backingOrder, same},
        Rule{"batting.bought", "packs and rolls are such as are sold", battingBought, same},
        Rule{"batting.pieces", "the pieces make up the batting", battingPieces, same},
        Rule{"batting.fits", "a piece fits into what it is cut from", battingFits, same},
        Rule{"batting.joins", "every join is one straight cut", battingJoins, same},
        Rule{"batting.apart", "joins keep clear of backing seams, and no four corners meet",
             battingApart, same},
        Rule{"batting.listed", "the figures of every way to buy the batting go together",
             battingListed, same},

        Rule{"crew.list",
             "tasks are in order, each once, of quilts, passes and zones that are there", crewList,
             open},
        Rule{"crew.tasks", "every pass and zone has its tasks", crewTasks, first,
             unlessStopped}, // rest.tasks
        Rule{"crew.stretches", "everybody has a stretch of the table of their own", crewStretches,
             newPasses},
        Rule{"crew.letters", "people work at their zones from their place", crewLetters, newPasses},
        Rule{"crew.hands", "who put a zone's pins in closes them", crewHands, open, unlessStopped},
        Rule{"crew.seated", "who sits keeps their seat", crewSeated, openInPlace, unlessStopped},
        Rule{"crew.rests", "nobody works in a break, or two hours without one", crewRests, open,
             unlessStopped},
        Rule{"crew.people", "tasks are given to helpers, once", crewPeople, open},
        Rule{"crew.teams", "a task has as many people as it takes", crewTeams, newPasses,
             unlessStopped},
        Rule{"crew.skills", "a task is given to those who can do it", crewSkills, open,
             unlessStopped},
        Rule{"crew.handed", "a zone that was handed to somebody is theirs", crewHanded, open,
             unlessStopped},
        Rule{"crew.hours", "nobody works before they come or after they leave", crewHours, open,
             unlessStopped},
        Rule{"crew.breaks", "nobody works in a break of theirs", crewBreaks, open, unlessStopped},
        Rule{"crew.twice", "nobody does two tasks at once", crewTwice, open},
        Rule{"crew.irons", "no more irons at once than the room has", crewIrons, open,
             unlessStopped},
        Rule{"crew.places", "who works has a place at an open side, wide enough", crewPlaces,
             openInPlace, unlessStopped},
        Rule{"crew.reach", "people reach their zone's points from where they stand", crewReach,
             openInPlace, unlessStopped},
        Rule{"crew.edges", "no two people stand at one place", crewEdges, newPasses},
        Rule{"crew.surfaces", "a surface takes one quilt at a time", crewSurfaces, newPasses},
        Rule{"crew.after", "a task begins when what it waits for has ended", crewAfter, open},
        Rule{"crew.order", "the calls of a pass follow one another", crewOrder, open},
        Rule{"crew.waits", "a task waits for all of the call before", crewWaits,
             first}, // rest.waits
        Rule{"crew.smoothed", "a zone is smoothed between placing and closing its pins",
             crewSmoothed, first}, // rest.smoothed
        Rule{"crew.cooled", "what is pressed cools for a minute", crewCooled, open},
        Rule{"crew.times", "work takes the time it needs", crewTimes, notBegun},
        Rule{"crew.lengths", "a task lasts as long as its work", crewLengths, notBegunInPlace},
        Rule{"crew.setup", "setting up lasts as long as its work", crewSetUp, notBegun},
        Rule{"crew.finish", "the plan finishes with its last task, not before the bound",
             crewFinish, whole},
        Rule{"crew.range", "the finish lies between early and late, near the middle", crewRange,
             first}, // rest.range
        Rule{"crew.pauses", "breaks are somebody's or proposed, and nobody stands idle without one",
             crewPauses, open},

        Rule{"supplies.sums", "what is bought is what is needed and not on hand", suppliesSums,
             same},
        Rule{"supplies.enough", "pins, clamps, clips and tape are enough", suppliesEnough, same,
             unlessStopped},
        Rule{"supplies.needed", "what is brought is what the plan uses", suppliesNeeded, same},
    };
    return kRules;
}

void planQuilts(const PlanView& v, Report& report) {
    if (v.plan.quilts.size() != v.session.jobs.size())
        report.add(Pointer{} / "quilts", "The plan has " + std::to_string(v.plan.quilts.size()) +
                                             " quilts, the session " +
                                             std::to_string(v.session.jobs.size()) + ".");
}

void planUnit(const PlanView& v, Report& report) {
    if (!v.session.jobs.empty() && v.plan.unit != v.session.jobs.front().unit)
        report.add(Pointer{} / "unit", "Lengths are in " + std::string{symbol(v.plan.unit)} +
                                           "; the first job's are in " +
                                           std::string{symbol(v.session.jobs.front().unit)} + ".");
}

} // namespace bastewright::check
