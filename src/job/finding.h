#pragma once

#include "measures/sentence.h"

#include <string>
#include <vector>

namespace bastewright {

/// Something the person has to know about a job or a plan.
///
/// What it is stands in `kind`, `quilt`, `subject` and `figures`: whoever acts on a finding (the
/// checker, the live session, remedies) reads those. `field`, `text` and `cure` are for people and
/// files only; `lint: identity` holds the code to that.
struct Finding {
    enum class Level {
        note, ///< worth knowing
        warn, ///< the plan works, but something may go wrong
        stop  ///< no good plan until this is cured
    };
    /// What was found; each kind is made in one place. Its words in files: plan/finding_fields.h.
    enum class Kind {
        other,   ///< of a plan file of an earlier version, which does not say
        input,   ///< a file or a value that is not accepted
        library, ///< the library is damaged, or could not be copied
        rule,    ///< the checker: the plan breaks the rule `subject`

        layerShort, ///< `subject`, "batting" or "backing", has too little to spare

        pinsNearSeams, ///< figures: how many pins keep less than what is asked from a seam
        pinsNearEdge,  ///< figures: how many pins keep less than what is asked from the edge
        edgeGivesWay,  ///< all keep less from the edge, so that the corners hold
        pinsCrowded,   ///< some are nearer to each other than half the spacing
        placesOpen,    ///< some places are farther from a point than the spacing allows
        noBlockFigure, ///< planned in rows, though by the blocks was asked for

        noSurface,
        otherStart,  ///< the first pass does not start as was asked for
        otherLie,    ///< the quilt does not lie along the side of the table that was asked for
        otherTables, ///< the tables are not pushed together as was asked for
        rolledAtWall,
        hangs,
        tableJoints,
        noClip, ///< folded for want of clips; figures: how many clips would do instead, and the
                ///< roll they would hold in 64ths of an inch; none where no clip is so large

        fabricAssumed,
        fabricShort, ///< no backing from the fabric on hand, and none may be bought
        backingTrimmed,
        backingNarrow,
        backingOnJoints,
        backingWayGone,
        packJoined,
        otherBatting, ///< not from the pack or roll that was asked for
        battingShort, ///< no batting from what there is
        unknownPack,
        joinsOnSeams,
        joinsUntried,
        pieceCut,
        cornersMeet,
        pieceTooSmall, ///< `subject`: the piece
        piecesUnused,

        spacingTooWide, ///< wider than the batting's label allows
        battingMelts,
        notVentilated,    ///< sprayed where nothing says that it is well ventilated
        troubleBreathing, ///< sprayed where `subject` is, who has trouble breathing
        sprayAndIrons,    ///< sprayed where another quilt's dots are pressed
        throatTooSmall,
        pinsShort,   ///< figures: how many are missing
        dotsPlanned, ///< some zones get dots because pins run short; figures: how many dots
        tablesGone,

        // Of the people; a new plan of the rest says these anew.
        helperAssumed,
        worksAlone,
        nobodyPins,
        outOfReach,
        nobodyThere,
        nobodyCloses,
        noIron,
        nobodyIrons,
        nobodyLifts,
        fewLift,
        nobodyBends,
        hoursShort,
        noPlace, ///< `subject` pins and has no zone: no room or no time for a place of theirs
        handedElsewhere ///< a zone is not worked by `subject`, whom it was handed to
    };
    Kind kind = Kind::input;
    Level level = Level::note;
    std::string field{}; ///< JSON pointer into the job or session file, e.g. "/top/width/0", of the
                         ///< checker's into the plan's file; may be empty
    Sentence text{};     ///< one sentence: what is wrong, the value, what is accepted
    Sentence cure{};     ///< the smallest change that cures it, one sentence; may be empty
    std::string subject{};      ///< a person, a layer, a piece, a rule; may be empty
    std::vector<int> figures{}; ///< as `Kind` says
    int quilt = -1;             ///< index of its job; -1: people, room and supplies of all
    auto operator<=>(const Finding&) const = default;
};

using Findings = std::vector<Finding>;

constexpr const char* name(Finding::Level l) {
    return l == Finding::Level::stop ? "stop" : l == Finding::Level::warn ? "warn" : "note";
}

/// What the planner of people says.
constexpr bool isAboutPeople(const Finding& f) {
    return f.kind >= Finding::Kind::helperAssumed && f.kind <= Finding::Kind::handedElsewhere;
}

/// A finding about one job of a session; its field, given from the job's own root, then leads there
/// in a file of several quilts.
Finding ofQuilt(Finding finding, int quilt, bool severalQuilts);

/// True where any of them forbids starting.
inline bool anyStop(const Findings& all) {
    for (const auto& f : all)
        if (f.level == Finding::Level::stop)
            return true;
    return false;
}

} // namespace bastewright
