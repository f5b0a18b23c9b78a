#include "checker/geometry/partition.h"
#include "checker/rules/partition_text.h"
#include "checker/rules/quilt_side.h"
#include "checker/rules/rules.h"
#include "checker/rules/tables_left.h"
#include "checker/tolerances.h"

#include <algorithm>
#include <functional>
#include <map>
#include <set>

namespace bastewright::check {
namespace {

TableSize sizeOf(Length a, Length b) {
    return {std::max(a, b), std::min(a, b)};
}

} // namespace

void surfaceTables(const QuiltView& v, Report& report) {
    const SurfacePlan& s = v.quilt.surface;
    const Unit unit = v.plan.unit;
    if (v.stopped() && v.quilt.passes.empty())
        return;
    if (s.floor) {
        if (!s.tables.empty())
            report.add(where(v) / "surface/tables", v.label() + ": the floor is made of " +
                                                        std::to_string(s.tables.size()) +
                                                        " tables.");
        const auto [narrow, wide] =
            std::minmax({v.quilt.layers.backing.width, v.quilt.layers.backing.length});
        if (s.length != wide || s.width != narrow)
            report.add(where(v) / "surface" / (s.length != wide ? "length" : "width"),
                       v.label() + ": the floor is taken up by " + figure(s.length, unit) + " by " +
                           figure(s.width, unit) + "; the backing is " + figure(wide, unit) +
                           " by " + figure(narrow, unit) + ".");
        return;
    }
    if (s.length < s.width)
        report.add(where(v) / "surface", v.label() + ": the surface is wider, " +
                                             figure(s.width, unit) + ", than it is long, " +
                                             figure(s.length, unit) + ".");
    if (const auto fault = partitionFault({{}, {}, s.length, s.width}, s.tables))
        report.add(where(*fault, where(v) / "surface/tables", s.tables),
                   v.label() + ": the tables do not make the surface: " + text(*fault, unit));
    if (!std::ranges::is_sorted(s.tables, {}, [](const Rect& t) { return std::pair{t.x0, t.y0}; }))
        report.add(where(v) / "surface/tables",
                   v.label() + ": the tables are not listed from left to right.");
    for (const Rect& table : s.tables)
        if (std::ranges::none_of(v.session.setting.room.tables, [&](const Table& t) {
                return sizeOf(t.length, t.width) == sizeOf(table.width(), table.length());
            }))
            report.add(where(v).in("surface/tables", s.tables, table),
                       v.label() + ": no table in the room has the size of " + box(table, unit) +
                           ".");
}

void surfaceGroup(const QuiltView& v, Report& report) {
    std::map<std::string, std::map<TableSize, int>> groups;
    for (const Table& t : v.session.setting.room.tables)
        groups[t.group][sizeOf(t.length, t.width)] += t.count;
    std::map<TableSize, int> used;
    for (const Rect& t : v.quilt.surface.tables)
        ++used[sizeOf(t.width(), t.length())];
    const bool some = std::ranges::any_of(groups, [&](const auto& group) {
        return std::ranges::all_of(used, [&](const auto& u) {
            const auto has = group.second.find(u.first);
            return has != group.second.end() && has->second >= u.second;
        });
    });
    if (!used.empty() && !some)
        report.add(where(v) / "surface/tables",
                   v.label() + ": the surface is made of tables that are to stay apart.");
}

std::map<TableSize, int> tablesLeft(const PlanView& view,
                                    const std::function<bool(const QuiltView&)>& counts) {
    std::map<int, std::map<TableSize, int>> used; ///< by surface
    for (const QuiltView& v : view.quilts) {
        if (!counts(v))
            continue;
        std::map<TableSize, int> here;
        for (const Rect& t : v.quilt.surface.tables)
            ++here[sizeOf(t.width(), t.length())];
        for (const auto& [size, count] : here)
            used[v.quilt.surface.number][size] =
                std::max(used[v.quilt.surface.number][size], count);
    }
    std::map<TableSize, int> left;
    for (const Table& t : view.session.setting.room.tables)
        left[sizeOf(t.length, t.width)] += t.count;
    for (const auto& [number, tables] : used)
        for (const auto& [size, count] : tables)
            left[size] -= count;
    return left;
}

void surfaceStock(const PlanView& view, Report& report) {
    const auto left = tablesLeft(view, [](const QuiltView&) { return true; });
    for (const auto& [size, count] : left)
        if (count < 0)
            report.add(whereOfAll(view, "surface/tables"),
                       std::to_string(-count) + " more tables of " +
                           figure(size.first, view.plan.unit) + " by " +
                           figure(size.second, view.plan.unit) + " are used than the room has.");
    std::map<int, const QuiltView*> numbers; // with the first quilt of each; the floor too has one
    for (const QuiltView& v : view.quilts)
        numbers.emplace(v.quilt.surface.number, &v);
    int expected = 1;
    for (const auto& [number, first] : numbers)
        if (number != expected++) {
            report.add(where(*first) / "surface/number", "Surfaces are numbered from 1; number " +
                                                             std::to_string(number) +
                                                             " is out of turn.");
            break;
        }
    const int most = view.session.setting.room.surfaces;
    if (most > 0 && std::ssize(numbers) > most)
        report.add(whereOfAll(view, "surface/number"),
                   std::to_string(numbers.size()) + " surfaces are made of the tables; " +
                       std::to_string(most) + " were asked for.");
}

void surfaceClosed(const QuiltView& v, Report& report) {
    if (v.quilt.passes.empty())
        return; // it lies nowhere; the rules of passes ask for a stop that says why
    const SurfacePlan& s = v.quilt.surface;
    std::set<Side> expected;
    if (!s.floor)
        for (const Side wall : v.session.setting.room.walls)
            expected.insert(quiltSide(wall, s.quiltLengthAlongLength));
    const std::set<Side> said(s.closed.begin(), s.closed.end());
    if (std::ranges::adjacent_find(s.closed, std::greater_equal<>{}) != s.closed.end())
        report.add(where(v) / "surface/closed", v.label() + ": its closed sides are out of order.");
    for (const Side side : kSides)
        if (expected.contains(side) != said.contains(side))
            report.add(where(v) / "surface/closed",
                       v.label() + ": the walls of the room " +
                           (expected.contains(side) ? "close" : "leave open") + " the quilt's " +
                           std::string{name(side)} + "; the plan says otherwise.");
}

void surfacePasses(const QuiltView& v, Report& report) {
    const SurfacePlan& s = v.quilt.surface;
    const Unit unit = v.plan.unit;
    const Size expected = s.floor                    ? v.quilt.layers.backing
                          : s.quiltLengthAlongLength ? Size{s.width, s.length}
                                                     : Size{s.length, s.width};
    const auto isOff = [&](const Pass& p) {
        return abs(p.table.width() - expected.width) > kHalving ||
               abs(p.table.length() - expected.length) > kHalving;
    };
    const std::string size =
        figure(expected.width, unit) + " by " + figure(expected.length, unit) + ".";
    // Where no pass has it, it is the surface that is said otherwise.
    if (!v.quilt.passes.empty() && std::ranges::all_of(v.quilt.passes, isOff))
        report.add(where(v) / "surface", v.label() + ": in no pass is the table " + size);
    else
        for (const Pass& p : v.quilt.passes)
            if (isOff(p))
                report.add(where(v, p) / "table",
                           label(v, p) + ": the table " + box(p.table, unit) + " is not " + size);
    if (s.floor && v.quilt.passes.size() > 1)
        report.add(where(v) / "passes", v.label() + ": the floor takes one pass, not " +
                                            std::to_string(v.quilt.passes.size()) + ".");
}

} // namespace bastewright::check
