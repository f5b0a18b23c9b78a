#pragma once

#include "job/job.h"
#include "measures/sentence.h"
#include "plan/call.h"
#include "plan/plan.h"

#include <optional>
#include <span>
#include <vector>

/// What a way of basting is, described once for planners, session, sheets and screen. Each way has
/// a folder of its own here and a line in the table of `way.cpp`. The checker has its own
/// descriptions (`src/checker/ways`).
namespace bastewright {

/// What one basting point is.
struct WayPoint {
    enum class Shape { pin, dot, stitch, patch }; ///< as pictures show it
    Shape shape;
    bool clearOfSeams; ///< it keeps clear of seams that will be sewn
    /// How long it is in its direction; zero for a dot or a patch, which have none.
    Length (*length)(const Basting&);
    /// Where rows are sewn: the spacing is from row to row, and so much from one point of a row to
    /// the next. Nothing: points stand wherever the spacing asks for them.
    Length (*alongRow)(const Basting&);

    /// True for a patch: a square as wide as the spacing, all of which it holds. Patches lie side
    /// by side from one edge of the top to the other, and each of them whole on the table.
    bool isPatch() const { return shape == Shape::patch; }
};

/// How a step of one zone is said.
struct StepWords {
    Sentence call;    ///< what the lead calls: "Close"
    Sentence forLead; ///< what is to be heard and seen then, for whoever leads
    Sentence mine;    ///< the same for whoever has zones
    Sentence firmly;  ///< what of it must not be missed; may be empty
    /// For whoever has none; `people` do it, empty where they cannot be named in few words.
    Sentence (*idle)(const Sentence& people);
    Sentence care;      ///< what can hurt whoever does it, in few words; may be empty
    Sentence command;   ///< "Close the pins"
    Sentence brief;     ///< "close": beside the zone's name
    Sentence heading;   ///< "Close pins": on paper
    Sentence how;       ///< how it is done well, a sentence or two
    Sentence caution;   ///< what can hurt; may be empty
    Sentence noun;      ///< "the closing of the pins", inside a sentence
    Sentence nounFirst; ///< the same where a sentence begins
    Sentence past;      ///< "closed": what a zone is then
    /// "A1, A2: close 24 pins"
    Sentence (*line)(const Sentence& zones, const Sentence& count);
    /// "Ada closes A1", "Ada and Bo close A1"
    Sentence (*doing)(const Sentence& people, const Sentence& zone, bool one);
    /// "Ada closes A1 at 13:20"
    Sentence (*at)(const Sentence& person, const Sentence& zone, ClockTime when);
    /// "A1 is closed", "A1 and A2 are closed"
    Sentence (*done)(const Sentence& zones, bool one);
    /// "closing of zone A1", "closing of zones A1 and A2"
    Sentence (*work)(const Sentence& zones, bool one);
};

/// A step of a pass between clamping and checking underneath. Steps come in the order of `Way`, and
/// each call of the lead is over before the next begins.
struct WayStep {
    enum class By {
        zones, ///< each the points of their own zone; `seconds` a point
        irons, ///< the same, by as many at a time as there are irons
        palm,  ///< one or two who walk; `seconds` all together
        fold,  ///< two who lay; `seconds` and `secondsASquareFoot` of what is new
        nobody ///< all wait; at least 60 s, `seconds` as planned
    };
    TaskKind kind;
    By by;
    double seconds; ///< at pace 1 (plan/trade_times.h)
    double secondsASquareFoot = 0;
    std::optional<StepWords> words{}; ///< those of zones have some

    bool ofZones() const { return by == By::zones || by == By::irons; }
};

/// What of a quilt is basted in one way, with its job.
struct BastedQuilt {
    const Job* job;
    const QuiltPlan* quilt;
    std::int64_t points; ///< of the zones that are basted so
};

/// Zones of a pass that nobody finishes.
struct Unfinished {
    const Setting& setting;
    std::span<const Helper> helpers; ///< who is there
    Sentence quilt;                  ///< its name
    int pass;
    Sentence zones; ///< their names
};

/// How the way and its points are said.
struct WayWords {
    Sentence name;       ///< "Fuse dots": in a list to choose from
    Sentence heading;    ///< "Dots": over figures about them
    Sentence where;      ///< "Where the dots go": heading of the rows
    Sentence choose;     ///< "Baste with pins": on a button
    Sentence smoothed;   ///< what comes once the palm glides; may be empty
    Sentence byRibbons;  ///< what is done at the marks of the ribbons
    Sentence atBreaks;   ///< what has to be so when a break begins
    Sentence leaving;    ///< for whoever leaves before the end
    Sentence underneath; ///< what the lead asks when somebody looks underneath
    Sentence putAway;    ///< what has to be so before the quilt is rolled up
    /// The same of so many points in few words; nothing where they are counted instead.
    Sentence (*rolledUp)(std::int64_t points);
    Sentence care;      ///< what can hurt, in one sentence on paper
    Sentences cautions; ///< the same to read out before work begins

    Sentence howClose;                          ///< "How close together do dots go?"
    Sentence byFist;                            ///< the same, measured by hand
    Sentence (*count)(std::int64_t points);     ///< "1 dot", "80 dots"
    Sentence (*every)(const Sentence& spacing); ///< "dots every 4 in"
    /// "No spot of the quilt is farther than 2 7/8 in from a dot, …"
    Sentence (*held)(const Sentence& distance);
    Sentence why;                            ///< why there are so many, and why in such rows
    Sentence (*single)(std::int64_t points); ///< "3 single dots", outside all rows
    Sentence (*singles)(std::int64_t, const Sentence& places); ///< the same, and where
    /// "Rows across the quilt, about 4 in apart, a dot about every 5 in, …"
    Sentence (*rows)(bool across, const Sentence& gap, const Sentence& step);
    Sentence (*fewest)(std::int64_t fewest, std::int64_t now); ///< free placing, compared
    Sentence (*ready)(const Sentence& count);                  ///< what a helper does first of all
    Sentence (*noSuchStep)(const Sentence& zone); ///< a tick that this way does not have
};

struct Way {
    Basting::With with;
    WayPoint point;
    std::vector<WayStep> steps;
    std::vector<Call> calls;         ///< of a pass, from laying to moving
    bool (*finishes)(const Helper&); ///< may do the last step of zones
    bool fromBox;                    ///< its points come out of the box of pins and go back
    bool irons;                      ///< more irons make it quicker
    /// Batting thicker than this is finished once more from the back; none: never.
    std::optional<Length> turnedFrom;
    /// The most points of a zone. At pace 1 all its steps take about ten minutes with pins, and
    /// about a quarter of an hour with dots and with thread.
    int mostInZone;
    /// What may stand in for points that are missing, zone by zone.
    std::optional<Basting::With> instead;
    /// What speaks against it for this quilt in this session; nothing where it may be taken.
    Findings (*against)(const Job&, const Session&);
    /// Zones left to nobody, although somebody began them; nothing where one step is all.
    Finding (*unfinished)(const Unfinished&);
    /// What it uses up, and what it is done with, of all quilts basted so; at least one.
    std::vector<Supply> (*materials)(const Session&, std::span<const BastedQuilt>);
    std::vector<Supply> (*tools)(const Session&, std::span<const BastedQuilt>);
    WayWords words;

    /// The kinds of its steps of zones, in order.
    std::vector<TaskKind> zoneWork() const;
    TaskKind firstWork() const; ///< of a zone
    TaskKind lastWork() const;  ///< of a zone: it is finished then
    /// True where such a batting has zones finished once more from the back.
    bool turns(const Batting& batting) const {
        return turnedFrom && batting.thickness > *turnedFrom;
    }
};

/// All ways, in the order of `Basting::With`.
std::span<const Way> allWays();
const Way& wayOf(Basting::With with);
const Way& wayOf(const Job& job);
/// Of one zone: its quilt's, unless the plan has another for it.
const Way& wayOf(const Job& job, const Zone& zone);
/// Adds how a zone with points is basted, if it is not among them, in the order of the work: what
/// stands in for the quilt's own way comes before it.
void addWay(std::vector<const Way*>& to, const Job& job, const Zone& zone);
/// How zones are basted, of one pass or of all where none is named, in the order of the work; as
/// the quilt is where they have no points.
std::vector<const Way*> waysOf(const Job& job, std::span<const Zone> zones,
                               std::optional<int> pass = {});
/// The steps of a pass whose zones are basted so, in the order of the work, and its calls.
std::vector<const WayStep*> stepsOf(std::span<const Way* const> ways);
std::vector<Call> callsOf(std::span<const Way* const> ways);
/// Points of zones that are basted so.
std::int64_t pointsOf(const Job& job, std::span<const Zone> zones, const Way& way,
                      std::optional<int> pass = {});
/// What stands in where pins run short, if the quilt asks for it and nothing speaks against it;
/// null where nothing does.
const Way* standInOf(const Job& job, const Session& session);
/// What speaks against it, where the quilt asks for it.
Findings againstStandIn(const Job& job, const Session& session);

/// The step of a zone of this kind; every such kind belongs to one way (`isOfZone`).
const WayStep& zoneStep(TaskKind kind);
const StepWords& zoneStepWords(TaskKind kind);
/// The step of zones that is done at a call, or nothing.
const WayStep* zoneStepAt(Call call);
/// True for the first, or the last, step of zones of a way.
bool isFirstWork(TaskKind kind);
bool isLastWork(TaskKind kind);
/// The way that has such a step of a zone.
const Way& wayWith(TaskKind zoneWork);

} // namespace bastewright
