#include "checker/geometry/partition.h"
#include "checker/geometry/standing_reach.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/rules.h"
#include "checker/task_traits.h"
#include "checker/tolerances.h"

#include <limits>
#include <map>
#include <set>

namespace bastewright::check {
namespace {

/// A, B, … Z, AA, AB, … for 0, 1, …
std::string letters(std::size_t column) {
    std::string out;
    for (std::size_t n = column + 1; n > 0; n = (n - 1) / 26)
        out.insert(out.begin(), static_cast<char>('A' + (n - 1) % 26));
    return out;
}

/// The cell a coordinate opens, by the distinct places where zones begin.
std::map<Length, std::size_t> cells(const std::set<Length>& starts) {
    std::map<Length, std::size_t> out;
    for (const Length at : starts)
        out.emplace(at, out.size());
    return out;
}

/// The least reach that works a zone from some open side; infinite where all sides are closed.
double leastReach(const QuiltView& v, const Pass& pass, const Zone& zone) {
    double least = std::numeric_limits<double>::infinity();
    for (const Side side : kSides)
        if (std::ranges::find(v.quilt.surface.closed, side) == v.quilt.surface.closed.end())
            least = std::min(least, leastReachNeeded(pass.table, side, workBox(zone)));
    return least;
}

} // namespace

void zonesPartition(const QuiltView& v, Report& report) {
    std::vector<Rect> areas;
    for (const Zone& z : v.quilt.zones)
        areas.push_back(z.area);
    if (const auto fault = partitionFault(v.top, areas))
        report.add(v.label() + ": the zones do not divide the top: " + text(*fault, v.plan.unit));
}

void zonesGrid(const QuiltView& v, Report& report) {
    std::set<Length> startsX, startsY;
    for (const Zone& z : v.quilt.zones) {
        startsX.insert(z.area.x0);
        startsY.insert(z.area.y0);
    }
    const auto columns = cells(startsX), rows = cells(startsY);
    const auto endOf = [](const std::set<Length>& starts, Length from, Length last) {
        const auto next = starts.upper_bound(from);
        return next == starts.end() ? last : *next;
    };
    std::set<std::string> seen;
    for (const Zone& z : v.quilt.zones) {
        const std::string id =
            letters(columns.at(z.area.x0)) + std::to_string(rows.at(z.area.y0) + 1);
        if (z.id != id)
            report.add(v.label() + ": the zone at " + box(z.area, v.plan.unit) + " is called '" +
                       z.id + "'; letters across and numbers down make it " + id + ".");
        if (!seen.insert(z.id).second)
            report.add(v.label() + ": two zones are called '" + z.id + "'.");
        if (z.area.x1 != endOf(startsX, z.area.x0, v.top.x1) ||
            z.area.y1 != endOf(startsY, z.area.y0, v.top.y1))
            report.add(v.label() + ": zone " + z.id + " at " + box(z.area, v.plan.unit) +
                       " is not one cell of a grid whose lines run through the whole top.");
    }
}

void zonesPass(const QuiltView& v, Report& report) {
    std::map<std::string, std::vector<int>> listed;
    for (const Pass& p : v.quilt.passes)
        for (const std::string& id : p.zones) {
            listed[id].push_back(p.number);
            if (v.zone(id) == nullptr)
                report.add(v.label() + ": pass " + std::to_string(p.number) + " lists zone '" + id +
                           "', which is not there.");
        }
    for (const Zone& z : v.quilt.zones) {
        const Pass* pass = v.pass(z.pass);
        if (pass == nullptr)
            report.add(v.label() + ": zone " + z.id + " belongs to pass " + std::to_string(z.pass) +
                       ", which is not there.");
        else if (!contains(pass->fresh, z.area))
            report.add(v.label() + ": zone " + z.id + " at " + box(z.area, v.plan.unit) +
                       " is not inside the new area of its pass " + std::to_string(z.pass) + ".");
        if (listed[z.id] != std::vector{z.pass})
            report.add(v.label() + ": zone " + z.id + " is not listed just once, in pass " +
                       std::to_string(z.pass) + ".");
    }
}

void zonesReach(const PlanView& view, Report& report) {
    Length anybody{}, closers{}, ironers{};
    for (const Helper& h : view.session.setting.helpers) {
        anybody = std::max(anybody, reachOf(h));
        if (h.closes)
            closers = std::max(closers, reachOf(h));
        if (h.irons)
            ironers = std::max(ironers, reachOf(h));
    }
    for (const QuiltView& v : view.quilts) {
        if (v.quilt.surface.floor || v.stopped())
            continue;
        const Length longest = std::min(anybody, isPins(v) ? closers : ironers);
        for (const Zone& z : v.quilt.zones) {
            const Pass* pass = v.pass(z.pass);
            if (pass == nullptr || z.points.empty())
                continue; // where there is no point nobody has work
            const double needed = leastReach(v, *pass, z);
            if (needed > (longest + kFine).in())
                report.add(v.label() + ": zone " + z.id + " of pass " + std::to_string(z.pass) +
                           " is out of everybody's reach: " +
                           (needed > 1e6 ? std::string{"all sides are closed"}
                                         : figure(Length::nearestInches(needed), v.plan.unit) +
                                               " at least, the longest reach is " +
                                               figure(longest, v.plan.unit)) +
                           ".");
        }
    }
}

} // namespace bastewright::check
