#include "checker/rules/roll_diameter.h"
#include "checker/rules/rules.h"
#include "checker/rules/stand_ins_asked.h"
#include "checker/task_traits.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <array>
#include <set>

namespace bastewright::check {
namespace {

using Kind = Finding::Kind;
using Level = Finding::Level;

/// How a kind of finding is said: how grave it is, of a quilt or of all, and of whom or what.
struct Form {
    Kind kind;
    Level least, most;
    bool ofQuilt;
    enum class Of { nothing, person, layer, piece } of = Of::nothing;
    std::size_t fewest = 0, figures = 0; ///< how many figures
    bool once = true;                    ///< of one quilt, or of all; else once for each pass
};

constexpr std::array kForms{
    Form{Kind::input, Level::note, Level::stop, true, Form::Of::nothing, 0, 0, false},
    // Of width and length.
    Form{Kind::layerShort, Level::warn, Level::stop, true, Form::Of::layer, 0, 0, false},
    Form{Kind::pinsNearSeams, Level::warn, Level::warn, true, Form::Of::nothing, 1, 1},
    Form{Kind::pinsNearEdge, Level::warn, Level::warn, true, Form::Of::nothing, 1, 1},
    Form{Kind::edgeGivesWay, Level::warn, Level::warn, true},
    Form{Kind::pinsCrowded, Level::warn, Level::warn, true},
    Form{Kind::placesOpen, Level::warn, Level::warn, true},
    Form{Kind::noBlockFigure, Level::note, Level::note, true},
    Form{Kind::noSurface, Level::stop, Level::stop, true},
    Form{Kind::otherStart, Level::warn, Level::warn, true},
    Form{Kind::otherLie, Level::warn, Level::warn, true},
    Form{Kind::otherTables, Level::warn, Level::warn, true},
    Form{Kind::rolledAtWall, Level::note, Level::note, true},
    Form{Kind::hangs, Level::note, Level::note, true},
    Form{Kind::tableJoints, Level::note, Level::note, true},
    Form{Kind::noClip, Level::note, Level::note, false, Form::Of::nothing, 0, 2},
    Form{Kind::fabricAssumed, Level::note, Level::note, true},
    Form{Kind::fabricShort, Level::stop, Level::stop, true},
    Form{Kind::backingTrimmed, Level::warn, Level::warn, true},
    Form{Kind::backingNarrow, Level::warn, Level::warn, true},
    Form{Kind::backingOnJoints, Level::warn, Level::warn, true},
    Form{Kind::backingWayGone, Level::note, Level::note, true},
    Form{Kind::packJoined, Level::note, Level::note, true},
    Form{Kind::otherBatting, Level::warn, Level::warn, true},
    Form{Kind::battingShort, Level::stop, Level::stop, true},
    Form{Kind::unknownPack, Level::stop, Level::stop, true},
    Form{Kind::joinsOnSeams, Level::warn, Level::warn, true},
    Form{Kind::joinsUntried, Level::note, Level::note, true},
    Form{Kind::pieceCut, Level::note, Level::note, true},
    Form{Kind::cornersMeet, Level::warn, Level::warn, true},
    Form{Kind::pieceTooSmall, Level::warn, Level::warn, true, Form::Of::piece, 0, 0, false},
    Form{Kind::piecesUnused, Level::note, Level::note, true},
    Form{Kind::spacingTooWide, Level::warn, Level::warn, true},
    Form{Kind::battingMelts, Level::warn, Level::warn, true},
    Form{Kind::notVentilated, Level::stop, Level::stop, true},
    Form{Kind::troubleBreathing, Level::stop, Level::stop, true, Form::Of::person},
    Form{Kind::sprayAndIrons, Level::warn, Level::stop, true}, // of dots that would stand in
    Form{Kind::throatTooSmall, Level::warn, Level::warn, true},
    Form{Kind::dotsPlanned, Level::note, Level::note, true, Form::Of::nothing, 1, 1},
    Form{Kind::pinsShort, Level::warn, Level::warn, false, Form::Of::nothing, 1, 1},
    Form{Kind::tablesGone, Level::warn, Level::warn, false},
    Form{Kind::helperAssumed, Level::note, Level::note, false},
    Form{Kind::worksAlone, Level::note, Level::note, false},
    Form{Kind::nobodyPins, Level::stop, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::outOfReach, Level::stop, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::nobodyThere, Level::stop, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::nobodyCloses, Level::stop, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::noIron, Level::warn, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::nobodyIrons, Level::warn, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::nobodyLifts, Level::stop, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::fewLift, Level::warn, Level::warn, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::nobodyBends, Level::warn, Level::warn, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::hoursShort, Level::stop, Level::stop, false, Form::Of::nothing, 0, 0, false},
    Form{Kind::noPlace, Level::note, Level::note, false, Form::Of::person, 0, 0, false},
    Form{Kind::handedElsewhere, Level::warn, Level::warn, false, Form::Of::person, 0, 0, false}};

std::string say(const PlanView& v, const Finding& f) {
    const auto at = &f - v.plan.findings.data();
    return "Finding no. " + std::to_string(at + 1) + " (" + std::string{name(f.level)} + ")";
}

bool isNamed(const PlanView& v, const Finding& f, Form::Of of) {
    switch (of) {
    case Form::Of::nothing:
        return f.subject.empty();
    case Form::Of::person:
        return v.helper(f.subject) != nullptr;
    case Form::Of::layer:
        return f.subject == "batting" || f.subject == "backing";
    case Form::Of::piece:
        break;
    }
    const QuiltView* quilt = v.quilt(f.quilt);
    return quilt != nullptr &&
           std::ranges::find(quilt->job.batting.pieces, f.subject, &BattingPiece::name) !=
               quilt->job.batting.pieces.end();
}

bool anyJob(const QuiltView& v, bool SeenWay::*is) {
    return std::ranges::any_of(v.session.jobs, [&](const Job& j) { return seenWay(j).*is; });
}

/// In a pass less than half of the top lies on the table.
bool mostlyHangs(const QuiltView& v) {
    constexpr double kHalf = 0.5 + 1e-6;
    const double half = kHalf * areaSquareInches(v.top);
    return !v.quilt.surface.floor && std::ranges::any_of(v.quilt.passes, [&](const Pass& p) {
        return areaSquareInches(intersection(p.table, v.top)) < half;
    });
}

/// True where what a finding of a quilt says can be, or cannot be seen from here.
bool isTrueOf(const QuiltView& v, Kind kind) {
    const Job& job = v.job;
    const Room& room = v.session.setting.room;
    const auto beyond = [&](auto... how) {
        return std::ranges::any_of(v.quilt.passes, [&](const Pass& p) {
            return std::ranges::any_of(kSides,
                                       [&](Side s) { return ((p.beyond[s] == how) || ...); });
        });
    };
    const auto joined = [&] { return v.quilt.batting && !v.quilt.batting->joins.empty(); };
    switch (kind) {
    case Kind::noBlockFigure:
        return job.basting.layout == Basting::Layout::blocks && !v.quilt.blocks;
    case Kind::otherStart:
        return job.basting.start != Basting::Start::best;
    case Kind::otherLie:
        return job.basting.along != Basting::Along::either;
    case Kind::otherTables:
        return room.together && (room.together->length != v.quilt.surface.length ||
                                 room.together->width != v.quilt.surface.width);
    case Kind::rolledAtWall:
        return beyond(Beyond::onTable);
    case Kind::hangs:
        return mostlyHangs(v);
    case Kind::tableJoints:
        return v.quilt.surface.tables.size() > 1;
    case Kind::fabricAssumed:
        return job.backing.fabrics.empty();
    case Kind::fabricShort:
        return !job.backing.fabrics.empty() && !v.quilt.backing;
    case Kind::backingWayGone:
        return job.backing.way.has_value();
    case Kind::packJoined:
        return joined() && std::ranges::any_of(v.quilt.batting->pieces,
                                               [](const auto& p) { return p.bought >= 0; });
    case Kind::joinsOnSeams:
    case Kind::cornersMeet:
        return joined();
    case Kind::otherBatting:
        return job.batting.pack || job.batting.roll;
    case Kind::unknownPack:
        return job.batting.pack.has_value();
    case Kind::joinsUntried:
    case Kind::pieceCut:
    case Kind::piecesUnused:
        return !job.batting.pieces.empty();
    case Kind::spacingTooWide:
        return job.quilting.gapLimit && job.basting.spacing > *job.quilting.gapLimit &&
               !seenWay(job).patches;
    case Kind::battingMelts:
        return job.batting.meltable && (seenWay(job).irons || isShortOfDots(v));
    case Kind::dotsPlanned:
        return standingIn(v) > 0;
    case Kind::notVentilated:
        return seenWay(job).patches && !room.ventilated;
    case Kind::troubleBreathing:
        return seenWay(job).patches;
    case Kind::sprayAndIrons:
        return (seenWay(job).patches && anyJob(v, &SeenWay::irons)) ||
               ((seenWay(job).irons || isShortOfDots(v)) && anyJob(v, &SeenWay::patches));
    case Kind::throatTooSmall:
        return job.machine.throat && std::ranges::any_of(v.quilt.machineRolls, [&](const Roll& r) {
                   return r.diameter > *job.machine.throat;
               });
    default:
        return true;
    }
}

/// Kinds that a quilt must be told of just where they are true, and what is so then.
constexpr std::array kAlwaysSaid{
    std::pair{Kind::rolledAtWall, "it is rolled at a wall"},
    std::pair{Kind::tableJoints, "tables meet under it"},
    std::pair{Kind::spacingTooWide, "the spacing is wider than the batting allows"},
    std::pair{Kind::throatTooSmall, "it does not fit the machine's throat"},
    std::pair{Kind::battingMelts, "its batting melts"},
    std::pair{Kind::dotsPlanned, "some of its zones have dots in place of pins"},
    std::pair{Kind::notVentilated, "it is sprayed in a room that is not ventilated"},
    std::pair{Kind::sprayAndIrons, "it is sprayed where irons are used"}};

/// The same for findings about all.
bool isTrueOfAll(const PlanView& v, Kind kind) {
    const Setting& s = v.session.setting;
    const auto nobody = [&](auto can) { return std::ranges::none_of(s.helpers, can); };
    switch (kind) {
    case Kind::pinsShort:
        return s.stash.pins > 0 && pinsOf(v) > s.stash.pins;
    case Kind::helperAssumed:
    case Kind::worksAlone:
        return s.helpers.size() == 1;
    case Kind::nobodyPins:
        return nobody([](const Helper& h) { return h.pins; });
    case Kind::nobodyBends:
        return nobody(looksBelow);
    case Kind::nobodyLifts:
    case Kind::fewLift:
        return !v.quilts.empty();
    case Kind::noIron:
    case Kind::nobodyIrons:
        return std::ranges::any_of(
            v.quilts, [](const QuiltView& q) { return isPressed(q) || isShortOfDots(q); });
    case Kind::nobodyCloses:
        return pinsOf(v) > 0;
    case Kind::handedElsewhere:
        return std::ranges::any_of(v.quilts,
                                   [](const QuiltView& q) { return !q.job.handed.empty(); });
    case Kind::noClip:
        return std::ranges::any_of(v.quilts, [](const QuiltView& q) {
            return std::ranges::any_of(q.quilt.passes, [](const Pass& p) {
                return std::ranges::any_of(p.rolls, &Roll::folded);
            });
        });
    default:
        return true;
    }
}

/// How many of the zones that were handed to somebody are not worked by them.
std::ptrdiff_t handedElsewhere(const PlanView& v, const std::string& who) {
    std::ptrdiff_t out = 0;
    for (const QuiltView& q : v.quilts)
        for (const HandedZone& wish : q.job.handed) {
            if (wish.person != who)
                continue;
            bool any = false, all = true;
            for (const Task* t : q.tasks())
                if (isOfZone(t->kind) && t->zone == wish.zone) {
                    any = true;
                    all = all && std::ranges::find(t->people, who) != t->people.end();
                }
            out += any && all ? 0 : 1;
        }
    return out;
}

bool hasZones(const PlanView& v, const std::string& who) {
    return std::ranges::any_of(v.plan.tasks, [&](const Task& t) {
        return isOfZone(t.kind) && std::ranges::find(t.people, who) != t.people.end();
    });
}

/// A clip that would hold what is folded: its size in 64ths of an inch, whole inches.
void clipInstead(const PlanView& v, const Finding& f, Report& report) {
    Length thickest{};
    for (const QuiltView& q : v.quilts)
        for (const Pass& p : q.quilt.passes)
            for (const Roll& r : p.rolls)
                if (r.folded)
                    thickest = std::max(thickest, r.diameter);
    const std::int64_t inch = ceilDiv(thickest, Length::inches(1));
    const bool some = thickest <= kLargestClip;
    if (f.figures.size() != (some ? 2U : 0U) ||
        (some && (f.figures[0] < 2 || f.figures[0] > 100 * std::ssize(v.quilts) ||
                  f.figures[1] != inch * 64)))
        report.add(where(v, f) / "figures", say(v, f) + ": what is folded is " +
                                                figure(thickest, v.plan.unit) +
                                                " thick; the figures tell of other clips.");
}

} // namespace

// Every finding is said as its kind is, of what is there, once, the graver ones first.
void planFindings(const PlanView& v, Report& report) {
    const Finding* last = nullptr;
    for (const Finding& f : v.plan.findings) {
        const Pointer there = where(v, f);
        const auto form = std::ranges::find(kForms, f.kind, &Form::kind);
        if (form == kForms.end()) {
            report.add(there / "kind", say(v, f) + " is of a kind that no plan has.");
            continue;
        }
        if (f.level < form->least || f.level > form->most || !isOfItsLevel(v, f))
            report.add(there / "level",
                       say(v, f) + ": a finding of this kind is not of that level.");
        const bool ofWhatIsThere = form->ofQuilt ? v.quilt(f.quilt) != nullptr : f.quilt == -1;
        if (!ofWhatIsThere)
            report.add(there / "quilt", say(v, f) + " is of quilt " + std::to_string(f.quilt) +
                                            (form->ofQuilt ? ", which is not there."
                                                           : "; it is about all of them."));
        if (!isNamed(v, f, form->of))
            report.add(there / "subject",
                       say(v, f) + " names '" + f.subject + "', which is not what it is about.");
        if (f.figures.size() < form->fewest || f.figures.size() > form->figures)
            report.add(there / "figures",
                       say(v, f) + " has " + std::to_string(f.figures.size()) + " figures.");
        if (ofWhatIsThere &&
            !(form->ofQuilt ? isTrueOf(*v.quilt(f.quilt), f.kind) : isTrueOfAll(v, f.kind)))
            report.add(there, say(v, f) + " says what is not so.");
        if (f.kind == Kind::noClip)
            clipInstead(v, f, report);
        if (f.kind == Kind::noPlace && hasZones(v, f.subject))
            report.add(there, say(v, f) + " says what is not so.");
        if (f.kind == Kind::pinsShort && f.figures.size() == 1 &&
            f.figures.front() != pinsOf(v) - v.session.setting.stash.pins)
            report.add(there / "figures", say(v, f) + ": " + std::to_string(f.figures.front()) +
                                              " pins are said to be missing; the plan takes " +
                                              std::to_string(pinsOf(v)) + ", and there are " +
                                              std::to_string(v.session.setting.stash.pins) + ".");
        if (f.kind == Kind::dotsPlanned && f.figures.size() == 1 && v.quilt(f.quilt) != nullptr &&
            f.figures.front() != standingIn(*v.quilt(f.quilt)))
            report.add(there / "figures", say(v, f) + ": " + std::to_string(f.figures.front()) +
                                              " dots are said to stand in; there are " +
                                              std::to_string(standingIn(*v.quilt(f.quilt))) + ".");
        const bool again = std::ranges::any_of(v.plan.findings, [&](const Finding& o) {
            return &o != &f && o.kind == f.kind && o.quilt == f.quilt && o.subject == f.subject;
        });
        if (again && form->once)
            report.add(there, say(v, f) + " is said twice.");
        if (last != nullptr && f.level > last->level && f.kind != Kind::worksAlone)
            report.add(there, say(v, f) + " is listed after what is less grave.");
        last = &f;
    }
    const auto said = [&](Kind kind, int quilt) {
        return std::ranges::any_of(
            v.plan.findings, [&](const Finding& f) { return f.kind == kind && f.quilt == quilt; });
    };
    for (const QuiltView& q : v.quilts)
        for (const auto& [kind, what] : kAlwaysSaid)
            if (!q.quilt.passes.empty() && isTrueOf(q, kind) && !said(kind, q.index))
                report.add(Pointer{} / "findings",
                           q.label() + ": " + what + ", and the plan does not say so.");
    for (const Helper& h : v.session.setting.helpers)
        for (const QuiltView& q : v.quilts) {
            const bool harms = h.troubleBreathing && seenWay(q.job).patches;
            const bool told = std::ranges::any_of(v.plan.findings, [&](const Finding& f) {
                return f.kind == Kind::troubleBreathing && f.quilt == q.index &&
                       f.subject == h.name;
            });
            if (harms != told)
                report.add(Pointer{} / "findings",
                           q.label() + ": " + h.name + " has " + (harms ? "" : "no ") +
                               "trouble with what is sprayed, and the plan says otherwise.");
        }
    for (const Helper& h : v.session.setting.helpers)
        if (const auto asked = handedElsewhere(v, h.name),
            told = std::ranges::count_if(v.plan.findings,
                                         [&](const Finding& f) {
                                             return f.kind == Kind::handedElsewhere &&
                                                    f.subject == h.name;
                                         });
            asked != told && !v.stopped())
            report.add(Pointer{} / "findings",
                       std::to_string(asked) + " zones that were handed to " + h.name +
                           " are not theirs; " + std::to_string(told) + " are said not to be.");
    for (const Helper& h : v.session.setting.helpers)
        if (h.pins && !v.stopped() && !hasZones(v, h.name) &&
            std::ranges::none_of(v.plan.findings, [&](const Finding& f) {
                return f.kind == Kind::noPlace && f.subject == h.name;
            }))
            report.add(Pointer{} / "findings",
                       h.name + " has no zones, and the plan does not say so.");
    if (isTrueOfAll(v, Kind::pinsShort) && !said(Kind::pinsShort, -1))
        report.add(Pointer{} / "findings",
                   "More pins are laid than there are, and the plan does not say so.");
}

void planNames(const QuiltView& v, Report& report) {
    if (v.quilt.name != v.job.name)
        report.add(where(v) / "name", v.label() + " is called '" + v.job.name + "' in the job.");
}

} // namespace bastewright::check
