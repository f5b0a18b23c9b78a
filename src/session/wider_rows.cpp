#include "planners/crew/crew.h"
#include "planners/crew/zone_points.h"
#include "planners/whole/help.h"
#include "planners/whole/pins.h"
#include "session/pins.h"
#include "session/private/rest_planning.h"
#include "session/private/rows_beyond.h"
#include "ways/way.h"

#include <algorithm>

namespace bastewright {
namespace {

std::vector<PlacedPoint> pointsOfPasses(const QuiltPlan& quilt, int last) {
    std::vector<PlacedPoint> out;
    for (const Zone& z : quilt.zones)
        if (z.pass <= last)
            out.insert(out.end(), z.points.begin(), z.points.end());
    return out;
}

} // namespace

OtherPasses withWiderRows(const Session& session, const Plan& plan, const LiveState& state,
                          const ReplanOptions& options, std::stop_token stop) {
    const PinCount pins = countPins(plan, session, state);
    if (plan.quilts.size() != 1)
        return noOtherPasses(core::says(
            "With several quilts at once the rows stay as they are. Fetch %1 more pins, or let "
            "fuse dots or fewer zones do.",
            pins.shortBy()));
    const RestPlanning narrow{session, plan, state, options, stop};
    if (narrow.isOver(0))
        return noOtherPasses(core::says("No pass is left to be planned otherwise."));
    const Job& job = session.jobs.front();
    const QuiltPlan& was = plan.quilts.front();
    const int kept = narrow.kept(0);
    const int current = state.currentPass.front();
    if (kept >= current)
        return noOtherPasses(
            core::says("Finish pass %1 first: its rows are marked on the ribbons. Then the "
                       "rows of what is left can be wider.",
                       current));
    if (!wayOf(job).fromBox || pins.shortBy() == 0)
        return noOtherPasses(core::says("The pins do for all that is left."));
    const auto limit = job.quilting.gapLimit;
    Session wider = session;
    Length& spacing = wider.jobs.front().basting.spacing;
    // Where rows meet those that are basted a few more are needed; so it may take another try.
    constexpr int kTries = 4;
    std::int64_t wanted = pins.toPlace;
    for (int attempt = 0; attempt < kTries && pins.left > 0; ++attempt) {
        spacing = std::max(spacing + Length::inches(1) / 8, spacingFor(spacing, wanted, pins.left));
        if (spacing > Length::inches(12) || (limit && spacing > *limit))
            break;
        std::vector<PointsPlan> found = planAllPoints(wider, {}, stop);
        const PointsPlan& rows = found.front();
        std::vector<Pass> done{was.passes.begin(), was.passes.begin() + kept};
        const auto rest =
            rowsBeyond(job, wider.jobs.front(), pointsOfZones(was), rows.points, done);
        wanted = std::ssize(rest);
        if (wanted > pins.left)
            continue;
        const RestPlanning planning{wider, plan, state, options, stop};
        if (kept == 0)
            return planning.anew(std::move(found));
        auto points = pointsOfPasses(was, kept);
        points.insert(points.end(), rest.begin(), rest.end());
        auto quilt = planning.lay(0, points, session.setting.room.tables);
        if (!quilt)
            return noOtherPasses(noTableServes());
        quilt->rows = rows.rows;
        quilt->blocks = rows.blocks;
        std::vector<Moved> moved;
        moved.push_back({0, *std::move(quilt)});
        return planning.withPeople(std::move(moved), {std::move(points)});
    }
    return noOtherPasses(
        limit ? core::says("Rows as wide as these pins allow are wider than the batting "
                           "takes (%1). Fetch %2 more pins.",
                           core::length(*limit, job.unit), pins.shortBy())
              : core::says("Rows as wide as these pins allow would not hold the layers. "
                           "Fetch %1 more pins.",
                           pins.shortBy()));
}

} // namespace bastewright
