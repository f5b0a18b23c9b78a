#include "checker/rules/rules.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

namespace bastewright::check {
namespace {

/// As exactly as bands are marked by a tape.
constexpr Length kMarked = Length::inch64ths(8);

/// What lies bare between squares of a side round these middles, and toward both ends of a line.
bool leavesBare(const std::vector<Length>& middles, Length line, Length side) {
    if (middles.empty())
        return true;
    const Length most = side + kMarked + kFine;
    for (std::size_t i = 1; i < middles.size(); ++i)
        if (middles[i] - middles[i - 1] > most)
            return true;
    return 2 * middles.front() > most || 2 * (line - middles.back()) > most;
}

} // namespace

// Every place of the top lies in a patch: a square as wide as the bands are deep, in bands side by
// side from one edge to the other.
void pointsSprayed(const QuiltView& v, Report& report) {
    if (!seenWay(v.job).patches || v.quilt.zones.empty())
        return;
    if (!v.quilt.rows) {
        report.add(where(v) / "rows", v.label() + ": it is sprayed, and nothing tells of bands.");
        return;
    }
    const PinRows& rows = *v.quilt.rows;
    const bool across = rows.along == PinRows::Along::width;
    const Length deep = v.job.basting.spacing;
    std::vector<Length> at;
    for (const PinRow& row : rows.lines) {
        at.push_back(row.at);
        if (leavesBare(row.places, across ? v.top.width() : v.top.length(), deep))
            report.add(where(v).in("rows/lines", rows.lines, row) / "places",
                       v.label() + ": patches of " + figure(deep, v.plan.unit) +
                           " leave something bare of the band at " + figure(row.at, v.plan.unit) +
                           ".");
    }
    if (leavesBare(at, across ? v.top.length() : v.top.width(), deep))
        report.add(where(v) / "rows/lines",
                   v.label() + ": bands of " + figure(deep, v.plan.unit) +
                       " leave something bare between them or at an edge.");
}

} // namespace bastewright::check
