#include "planners/whole/quilt.h"

#include <cmath>

namespace bastewright {

Findings adviceOn(const Job& job, const QuiltPlan& quilt, const std::string& prefix) {
    Findings out;
    const auto& gap = job.quilting.gapLimit;
    if (gap && job.basting.spacing > *gap)
        out.push_back({Finding::Level::warn, prefix + "/basting/spacing",
                       "Spacing " + format(job.basting.spacing, job.unit) + " is wider than the " +
                           format(*gap, job.unit) +
                           " between quilting lines that the batting's label allows.",
                       "Set the spacing to " + format(*gap, job.unit) + " or less."});
    if (job.basting.with == Basting::With::dots && job.batting.meltable)
        out.push_back({Finding::Level::warn, prefix + "/batting/meltable",
                       "This batting can melt under an iron: fuse dots are pressed on.",
                       "Baste with pins, or test on scraps at the setting both labels allow."});
    const auto& throat = job.machine.throat;
    for (const Roll& r : quilt.machineRolls)
        if (throat && r.diameter > *throat) {
            out.push_back(
                {Finding::Level::warn, prefix + "/machine/throat",
                 "Half of the quilt rolled is about " + format(r.diameter, job.unit) +
                     " thick and does not pass the machine's throat of " +
                     format(*throat, job.unit) + ".",
                 "Fold instead of rolling, roll from the end nearest to where you quilt, or "
                 "use a machine with a larger throat."});
            break;
        }
    if (quilt.surface.tables.size() > 1)
        out.push_back({Finding::Level::note, prefix + "/room/tables",
                       "Cover the joints between the tables, or they print a pleat.", ""});
    const bool folded = std::ranges::any_of(
        quilt.passes, [](const Pass& p) { return std::ranges::any_of(p.rolls, &Roll::folded); });
    if (folded)
        out.push_back(
            {Finding::Level::note, prefix + "/stash/clips",
             "No clip on hand holds some of the rolls: fold that part on a chair or a second "
             "table so that it does not drag.",
             ""});
    return out;
}

Findings adviceOnPins(const Session& session, const std::vector<QuiltPlan>& quilts) {
    std::int64_t points = 0;
    for (std::size_t i = 0; i < quilts.size(); ++i) {
        if (session.jobs[i].basting.with != Basting::With::pins)
            continue;
        for (const Zone& z : quilts[i].zones)
            points += static_cast<std::int64_t>(z.points.size());
    }
    const int have = session.setting.stash.pins;
    if (points == 0 || have == 0 || points <= have)
        return {};
    // As many points per area as the box allows: spacing grows with the root.
    const Job& job = session.jobs.front();
    const double wider = job.basting.spacing.in() * std::sqrt(double(points) / double(have));
    const Length spacing = Length::nearestInches(std::ceil(wider * 8) / 8);
    return {{Finding::Level::warn, "/stash/pins",
             "The plan takes " + std::to_string(points) + " pins and there are " +
                 std::to_string(have) + ".",
             "Bring " + std::to_string(points - have) +
                 " more, use fuse dots in the outer zones, or widen the spacing to about " +
                 format(spacing, job.unit) + " if the batting allows it."}};
}

} // namespace bastewright
