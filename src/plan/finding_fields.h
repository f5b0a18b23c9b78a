#pragma once

#include "plan/plan_fields.h"

#include <array>

/// Findings and supplies in plan files. Private to the plan format.
namespace bastewright {

inline constexpr std::array kLevelWords{Word{"stop", Finding::Level::stop},
                                        Word{"warn", Finding::Level::warn},
                                        Word{"note", Finding::Level::note}};

inline constexpr auto kFindingWords = [] {
    using enum Finding::Kind;
    return std::array{
        Word{"other", other},
        Word{"input", input},
        Word{"library", library},
        Word{"rule", rule},
        Word{"layer-short", layerShort},
        Word{"pins-near-seams", pinsNearSeams},
        Word{"pins-near-edge", pinsNearEdge},
        Word{"edge-gives-way", edgeGivesWay},
        Word{"pins-crowded", pinsCrowded},
        Word{"places-open", placesOpen},
        Word{"no-block-figure", noBlockFigure},
        Word{"no-surface", noSurface},
        Word{"other-start", otherStart},
        Word{"other-lie", otherLie},
        Word{"other-tables", otherTables},
        Word{"rolled-at-wall", rolledAtWall},
        Word{"hangs", hangs},
        Word{"table-joints", tableJoints},
        Word{"no-clip", noClip},
        Word{"fabric-assumed", fabricAssumed},
        Word{"fabric-short", fabricShort},
        Word{"backing-trimmed", backingTrimmed},
        Word{"backing-narrow", backingNarrow},
        Word{"backing-on-joints", backingOnJoints},
        Word{"backing-way-gone", backingWayGone},
        Word{"pack-joined", packJoined},
        Word{"other-batting", otherBatting},
        Word{"batting-short", battingShort},
        Word{"unknown-pack", unknownPack},
        Word{"joins-on-seams", joinsOnSeams},
        Word{"joins-untried", joinsUntried},
        Word{"piece-cut", pieceCut},
        Word{"corners-meet", cornersMeet},
        Word{"piece-too-small", pieceTooSmall},
        Word{"pieces-unused", piecesUnused},
        Word{"spacing-too-wide", spacingTooWide},
        Word{"batting-melts", battingMelts},
        Word{"not-ventilated", notVentilated},
        Word{"trouble-breathing", troubleBreathing},
        Word{"spray-and-irons", sprayAndIrons},
        Word{"throat-too-small", throatTooSmall},
        Word{"pins-short", pinsShort},
        Word{"dots-planned", dotsPlanned},
        Word{"tables-gone", tablesGone},
        Word{"helper-assumed", helperAssumed},
        Word{"works-alone", worksAlone},
        Word{"nobody-pins", nobodyPins},
        Word{"out-of-reach", outOfReach},
        Word{"nobody-there", nobodyThere},
        Word{"nobody-closes", nobodyCloses},
        Word{"no-iron", noIron},
        Word{"nobody-irons", nobodyIrons},
        Word{"nobody-lifts", nobodyLifts},
        Word{"few-lift", fewLift},
        Word{"nobody-bends", nobodyBends},
        Word{"hours-short", hoursShort},
        Word{"no-place", noPlace},
        Word{"handed-elsewhere", handedElsewhere},
    };
}();
static_assert(kFindingWords.size() == static_cast<std::size_t>(Finding::Kind::handedElsewhere) + 1);

inline constexpr auto kSupplyWords = [] {
    using enum Supply::Kind;
    return std::array{
        Word{"other", other},
        Word{"pins", pins},
        Word{"fuse-squares", fuseSquares},
        Word{"irons", irons},
        Word{"heat-safe-pads", heatSafePads},
        Word{"thread", thread},
        Word{"needles", needles},
        Word{"spray-cans", sprayCans},
        Word{"covers", covers},
        Word{"clips", clips},
        Word{"clamps", clamps},
        Word{"centre-marks", centreMarks},
        Word{"tape", tape},
        Word{"closing-tools", closingTools},
        Word{"fabric", fabric},
        Word{"batting-pack", battingPack},
        Word{"batting-roll", battingRoll},
        Word{"leftovers", leftovers},
        Word{"joining-strip", joiningStrip},
    };
}();
static_assert(kSupplyWords.size() == static_cast<std::size_t>(Supply::Kind::joiningStrip) + 1);

/// What a finding or a supply of an earlier version's file is, as far as its field or name tells.
void inferKind(Finding& finding);
void inferKind(Supply& supply);

template <class Fields, class F>
void findingFields(Fields& f, F& finding) {
    f.require({"level", "text"});
    f.word("level", finding.level, kLevelWords);
    f.word("kind", finding.kind, kFindingWords);
    f.count("quilt", finding.quilt, {-1, limits::kQuilts - 1});
    f.text("subject", finding.subject);
    f.counts("figures", finding.figures, plan_limits::kCount, plan_limits::kList);
    f.text("field", finding.field, plan_limits::kText);
    f.text("text", finding.text, plan_limits::kText);
    f.text("cure", finding.cure, plan_limits::kText);
    if constexpr (Fields::kReads)
        if (!f.has("kind"))
            inferKind(finding);
}

template <class Fields, class S>
void supplyFields(Fields& f, S& supply) {
    f.word("kind", supply.kind, kSupplyWords);
    f.text("item", supply.item, plan_limits::kText);
    f.number("need", supply.need, plan_limits::kNumber);
    f.number("have", supply.have, plan_limits::kNumber);
    f.number("buy", supply.buy, plan_limits::kNumber);
    f.text("unit", supply.unit, plan_limits::kText);
    f.text("note", supply.note, plan_limits::kText);
    f.length("size", supply.size, plan_limits::kLength);
    if constexpr (Fields::kReads)
        if (!f.has("kind"))
            inferKind(supply);
}

} // namespace bastewright
