#include "job/job_json.h"
#include "planners/bring/bring.h"
#include "planners/rolls/rolls.h"
#include "planners/whole/pins.h"
#include "planners/whole/quilt.h"
#include "ways/supplies.h"
#include "ways/way.h"

#include <cmath>

namespace bastewright {
namespace {

/// True where a quilt with pins may have dots in place of those that are missing.
bool takesDots(const Session& session) {
    return std::ranges::any_of(session.jobs, [&](const Job& job) {
        const Way& way = wayOf(job);
        return way.fromBox && way.instead && wayOf(*way.instead).against(job, session).empty();
    });
}

/// The spacing that the box allows.
Sentence widerSpacing(const Session& session, std::int64_t taken, std::int64_t have) {
    const auto job =
        std::ranges::find_if(session.jobs, [](const Job& j) { return wayOf(j).fromBox; });
    const Length spacing = spacingFor(job->basting.spacing, taken, have);
    const Sentence about = core::length(spacing, job->unit);
    const auto& gap = job->quilting.gapLimit;
    if (gap && spacing > *gap)
        return core::says("The box allows a spacing of about %1, and the batting only %2.", about,
                          core::length(*gap, job->unit));
    const Sentence now = core::length(job->basting.spacing, job->unit);
    return gap ? core::says("Or widen the spacing from %1 to about %2, which the batting allows.",
                            now, about)
               : core::says("Or widen the spacing from %1 to about %2 if the batting's label "
                            "allows it.",
                            now, about);
}

/// How many clips of this size would be on at one time if there were enough of them.
int clipsInstead(Stash stash, std::vector<QuiltPlan> quilts, Length holds) {
    stash.clips.push_back({holds, limits::kOnHand});
    const auto clipAll = [&stash](std::vector<Roll>& rolls) {
        for (Roll& roll : rolls) {
            roll = clipped(roll, stash);
            roll.folded = roll.folded && roll.clipHolds == Length{};
        }
    };
    for (QuiltPlan& quilt : quilts) {
        for (Pass& pass : quilt.passes)
            clipAll(pass.rolls);
        clipAll(quilt.machineRolls);
    }
    return static_cast<int>(clipsAtOnce(quilts)[holds]);
}

/// How much of a quilt lies on the table in its first pass, and how much of it hangs.
void adviseOnHanging(const QuiltPlan& quilt, Findings& out) {
    if (quilt.passes.empty() || quilt.surface.floor)
        return;
    const Rect top{{}, {}, quilt.layers.top.width, quilt.layers.top.length};
    double least = 1;
    int pass = 1;
    for (const Pass& p : quilt.passes) {
        const double lies = areaSquareInches(intersection(p.table, top)) / areaSquareInches(top);
        if (lies < least) {
            least = lies;
            pass = p.number;
        }
    }
    if (least >= 0.5)
        return;
    const int hangs = static_cast<int>(std::lround((1 - least) * 100));
    out.push_back({Finding::Kind::hangs, Finding::Level::note, "/room/tables",
                   core::says("In pass %1, %2 % of the quilt hangs from the table.", pass, hangs),
                   core::says("Hold it up with chairs or a second table, so that its weight does "
                              "not drag the layers.")});
}

} // namespace

Findings adviceOn(const Session& session, const Job& job, const QuiltPlan& quilt) {
    Findings out;
    const auto& gap = job.quilting.gapLimit;
    if (gap && job.basting.spacing > *gap && !wayOf(job).point.isPatch())
        out.push_back(
            {Finding::Kind::spacingTooWide, Finding::Level::warn, "/basting/spacing",
             core::says("Spacing %1 is wider than the %2 between quilting lines that the "
                        "batting's label allows.",
                        core::length(job.basting.spacing, job.unit), core::length(*gap, job.unit)),
             core::says("Set the spacing to %1 or less.", core::length(*gap, job.unit))});
    for (Finding& against : wayOf(job).against(job, session))
        out.push_back(std::move(against));
    const auto& throat = job.machine.throat;
    for (const Roll& r : quilt.machineRolls)
        if (throat && r.diameter > *throat) {
            out.push_back(
                {Finding::Kind::throatTooSmall, Finding::Level::warn, "/machine/throat",
                 core::says("Half of the quilt rolled is about %1 thick and does not pass the "
                            "machine's throat of %2.",
                            core::length(r.diameter, job.unit), core::length(*throat, job.unit)),
                 core::says(
                     "Fold it instead of rolling, begin to quilt at one end so that less is in the "
                     "throat, or use a machine with a larger throat.")});
            break;
        }
    adviseOnHanging(quilt, out);
    if (quilt.surface.tables.size() > 1)
        out.push_back(
            {Finding::Kind::tableJoints, Finding::Level::note, "/room/tables",
             core::says("Lay a towel over the joints between the tables, or they leave a crease."),
             ""});
    return out;
}

Findings adviceOnClips(const Session& session, const std::vector<QuiltPlan>& quilts) {
    Length thickest;
    for (const QuiltPlan& q : quilts)
        for (const Pass& p : q.passes)
            for (const Roll& r : p.rolls)
                if (r.folded)
                    thickest = std::max(thickest, r.diameter);
    if (thickest == Length{})
        return {};
    Finding out{Finding::Kind::noClip, Finding::Level::note, "/stash/clips",
                core::says("Some parts of the quilt make a roll too thick for any clip we have: "
                           "fold those on a chair or a second table so that they do not drag."),
                ""};
    const Length holds = ceilDiv(thickest, Length::inches(1)) * Length::inches(1);
    if (holds <= kLargestClip)
        out.figures = {clipsInstead(session.setting.stash, quilts, holds),
                       static_cast<int>(ceilDiv(holds, Length::inch64ths(1)))};
    return {std::move(out)};
}

Findings adviceOnPins(const Session& session, const std::vector<QuiltPlan>& quilts) {
    const std::int64_t points = pinsTaken(session, quilts);
    const int have = session.setting.stash.pins;
    if (have == 0) // nobody has said how many there are
        return {};
    Findings out = adviceOnStandIns(session, quilts, have, [](int, const Zone&) { return true; });
    if (points <= have)
        return out;
    const std::int64_t missing = points - have;
    const std::int64_t buy = withSpare(points) - have;
    const Sentence spacing = widerSpacing(session, points, have);
    out.push_back({Finding::Kind::pinsShort,
                   Finding::Level::warn,
                   "/stash/pins",
                   core::says("The plan takes %1 pins and there are %2.", points, have),
                   takesDots(session)
                       ? core::says("Bring %1 more, better %2 so that some are spare. Or use fuse "
                                    "dots, which are pressed with an iron, where the pins run "
                                    "short. %3",
                                    missing, buy, spacing)
                       : core::says("Bring %1 more, better %2 so that some are spare. %3", missing,
                                    buy, spacing),
                   {},
                   {static_cast<int>(missing)}});
    return out;
}

} // namespace bastewright
