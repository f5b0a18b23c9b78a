#include "checker/rules/rules.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

namespace bastewright::check {
namespace {

/// As exactly as rows are laid by a tape.
constexpr Length kTape = Length::inch64ths(8);

/// The widest of the gaps between neighbours.
Length widest(const std::vector<Length>& at) {
    Length out{};
    for (std::size_t i = 1; i < at.size(); ++i)
        out = std::max(out, at[i] - at[i - 1]);
    return out;
}

} // namespace

// What is sewn is sewn in rows as far apart as the spacing asks, every stitch along its row and no
// farther from the next than the rows are from each other.
void pointsSewn(const QuiltView& v, Report& report) {
    if (seenWay(v.job).apart == nullptr || v.quilt.zones.empty())
        return;
    if (!v.quilt.rows) {
        report.add(where(v) / "rows", v.label() + ": it is sewn, and nothing tells of rows.");
        return;
    }
    const PinRows& rows = *v.quilt.rows;
    const Length most = v.job.basting.spacing + kTape + kFine;
    std::vector<Length> at;
    for (const PinRow& row : rows.lines) {
        at.push_back(row.at);
        if (widest(row.places) > most)
            report.add(where(v).in("rows/lines", rows.lines, row) / "places",
                       v.label() + ": in the row at " + figure(row.at, v.plan.unit) +
                           " stitches are " + figure(widest(row.places), v.plan.unit) + " apart; " +
                           figure(v.job.basting.spacing, v.plan.unit) + " is the most.");
    }
    if (widest(at) > most)
        report.add(where(v) / "rows/lines",
                   v.label() + ": rows are " + figure(widest(at), v.plan.unit) + " apart; " +
                       figure(v.job.basting.spacing, v.plan.unit) + " is asked.");
    const int lies = rows.along == PinRows::Along::width ? 0 : 90;
    for (const Zone& z : v.quilt.zones)
        for (const PlacedPoint& p : z.points)
            if (p.angle != lies)
                report.add(where(v, z, p) / "angle",
                           v.label() + ", zone " + z.id + ": the stitch at " +
                               place(p.at, v.plan.unit) + " does not lie along its row.");
}

} // namespace bastewright::check
