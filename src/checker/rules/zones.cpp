#include "checker/geometry/partition.h"
#include "checker/geometry/standing_reach.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/rules.h"
#include "checker/task_traits.h"
#include "checker/tolerances.h"
#include "checker/ways/seen_way.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

namespace bastewright::check {
namespace {

/// From the deepest of a zone's points to the open side nearest to it; infinite where all sides are
/// closed. Nobody stands nearer than straight in front.
double deepest(const QuiltView& v, const Pass& pass, const Zone& zone) {
    double most = 0;
    for (const PlacedPoint& p : zone.points) {
        double least = std::numeric_limits<double>::infinity();
        for (const Side side : kSides)
            if (std::ranges::find(v.quilt.surface.closed, side) == v.quilt.surface.closed.end())
                least = std::min(least, reachNeeded(pass.table, side, extent(pass.table, side),
                                                    {p.at.x, p.at.y, p.at.x, p.at.y}));
        most = std::max(most, least);
    }
    return most;
}

/// "p2.A3": pass, place letters, turn.
bool wellNamed(const Zone& z) {
    const std::string start = "p" + std::to_string(z.pass) + ".";
    if (!z.id.starts_with(start))
        return false;
    const std::string name = z.id.substr(start.size());
    const auto digits = name.find_first_of("123456789");
    const auto letter = [](char c) { return c >= 'A' && c <= 'Z'; };
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    return digits != std::string::npos && digits > 0 &&
           std::all_of(name.begin(), name.begin() + static_cast<std::ptrdiff_t>(digits), letter) &&
           std::all_of(name.begin() + static_cast<std::ptrdiff_t>(digits), name.end(), digit);
}

} // namespace

void zonesPartition(const QuiltView& v, Report& report) {
    if (v.quilt.zones.empty() && v.stopped())
        return;
    std::vector<Rect> areas;
    for (const Zone& z : v.quilt.zones)
        areas.push_back(z.area);
    if (const auto fault = partitionFault(v.top, areas))
        report.add(where(*fault, where(v) / "zones", areas),
                   v.label() + ": the zones do not divide the top: " + text(*fault, v.plan.unit));
}

void zonesNames(const QuiltView& v, Report& report) {
    std::set<std::string> seen;
    if (!std::ranges::is_sorted(v.quilt.zones, {}, &Zone::pass))
        report.add(where(v) / "zones", v.label() + ": the zones are not listed pass by pass.");
    for (const Zone& z : v.quilt.zones) {
        if (!wellNamed(z))
            report.add(where(v, z) / "id",
                       v.label() + ": the zone at " + box(z.area, v.plan.unit) + " of pass " +
                           std::to_string(z.pass) + " is called '" + z.id +
                           "'; its pass, the letter of a place and a turn make a name like p" +
                           std::to_string(z.pass) + ".A1.");
        if (!seen.insert(z.id).second)
            report.add(where(v, z) / "id", v.label() + ": two zones are called '" + z.id + "'.");
    }
}

void zonesPass(const QuiltView& v, Report& report) {
    std::map<std::string, std::vector<int>> listed;
    for (const Pass& p : v.quilt.passes) {
        for (const std::string& id : p.zones) {
            listed[id].push_back(p.number);
            if (v.zone(id) == nullptr)
                report.add(where(v, p).in("zones", p.zones, id),
                           v.label() + ": pass " + std::to_string(p.number) + " lists zone '" + id +
                               "', which is not there.");
        }
        std::vector<std::string> own;
        for (const Zone& z : v.quilt.zones)
            if (z.pass == p.number)
                own.push_back(z.id);
        if (own != p.zones)
            report.add(where(v, p) / "zones", v.label() + ": pass " + std::to_string(p.number) +
                                                  " does not list its zones in the plan's order.");
    }
    for (const Zone& z : v.quilt.zones) {
        const Pass* pass = v.pass(z.pass);
        if (pass == nullptr)
            report.add(where(v, z) / "pass", v.label() + ": zone " + z.id + " belongs to pass " +
                                                 std::to_string(z.pass) + ", which is not there.");
        else if (!contains(pass->fresh, z.area))
            report.add(where(v, z), v.label() + ": zone " + z.id + " at " +
                                        box(z.area, v.plan.unit) +
                                        " is not inside the new area of its pass " +
                                        std::to_string(z.pass) + ".");
        if (listed[z.id] != std::vector{z.pass})
            report.add(where(v, z) / "pass", v.label() + ": zone " + z.id +
                                                 " is not listed just once, in pass " +
                                                 std::to_string(z.pass) + ".");
    }
}

void zonesReach(const PlanView& view, Report& report) {
    const auto longestOf = [&](bool (*who)(const Helper&)) {
        Length out{};
        for (const Helper& h : view.session.setting.helpers)
            if (who(h))
                out = std::max(out, reachOf(h));
        return out;
    };
    for (const QuiltView& v : view.quilts) {
        if (v.quilt.surface.floor || v.stopped())
            continue;
        for (const Zone& z : v.quilt.zones) {
            const Pass* pass = v.pass(z.pass);
            if (pass == nullptr || z.points.empty())
                continue; // where there is no point nobody has work
            const Length longest = longestOf(seenWay(v.job, z).finishes);
            const double needed = deepest(v, *pass, z);
            if (needed > (longest + kFine).in())
                report.add(where(v, z),
                           v.label() + ": zone " + z.id + " of pass " + std::to_string(z.pass) +
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
