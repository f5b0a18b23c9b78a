#include "sheets/parts.h"

#include "language/said.h"
#include "plan/find.h"
#include "ways/point_words.h"
#include "ways/way.h"

#include <algorithm>
#include <map>
#include <set>

namespace bastewright::sheets {
namespace {

bool has(const Task& t, const std::string& person) {
    return std::ranges::count(t.people, person) > 0;
}

/// Adds a place to those on its side, taking together what overlaps or touches.
void addEdge(std::vector<StandingPlace>& edges, const StandingPlace& place) {
    for (auto& e : edges)
        if (e.side == place.side && e.along.lo <= place.along.hi && place.along.lo <= e.along.hi) {
            e.along.lo = std::min(e.along.lo, place.along.lo);
            e.along.hi = std::max(e.along.hi, place.along.hi);
            return;
        }
    edges.push_back(place);
}

/// A stretch for everybody from the places of their tasks, where the pass itself names none.
std::vector<Stretch> fromTasks(const Plan& plan, std::size_t quilt, int pass) {
    std::vector<Stretch> out;
    for (const auto& t : plan.tasks)
        for (std::size_t i = 0; t.job == int(quilt) && t.pass == pass && i < t.places.size(); ++i) {
            auto found = std::ranges::find(out, t.people[i], &Stretch::person);
            if (found == out.end()) {
                out.push_back({{}, t.people[i], {}});
                found = out.end() - 1;
            }
            addEdge(found->edges, t.places[i]);
        }
    return out;
}

/// How far a place along a side lies outside an interval.
Length outside(Length at, Interval along) {
    return std::max({Length{}, along.lo - at, at - along.hi});
}

/// The holds that lie in front of somebody: of everybody's stretches on that side theirs is the
/// nearest.
std::vector<HoldPoint> holdsOf(const Pass& pass, const std::vector<Stretch>& all,
                               const std::string& person) {
    std::vector<HoldPoint> out;
    for (const HoldPoint& hold : holdOrder(pass)) {
        const Stretch* nearest = nullptr;
        Length least;
        for (const auto& s : all)
            for (const auto& e : s.edges)
                if (e.side == hold.side) {
                    const Length d = outside(hold.at, e.along);
                    if (!nearest || d < least) {
                        nearest = &s;
                        least = d;
                    }
                }
        if (nearest && nearest->person == person)
            out.push_back(hold);
    }
    return out;
}

/// The rows of all of somebody's zones together, as one says those of a zone.
QString rowsOf(const QuiltPlan& quilt, const std::vector<Job>& jobs, const Part& part) {
    if (!quilt.rows || part.quilt >= jobs.size())
        return {};
    Zone all;
    for (const Zone* zone : part.zones)
        all.points.insert(all.points.end(), zone->points.begin(), zone->points.end());
    return language::said(zoneRowsWords(all, *quilt.rows, jobs[part.quilt]));
}

} // namespace

bool Part::does(TaskKind kind) const {
    return task(kind) != nullptr;
}

const Task* Part::task(TaskKind kind) const {
    const auto found = std::ranges::find(tasks, kind, &Task::kind);
    return found == tasks.end() ? nullptr : *found;
}

std::vector<Stretch> standing(const Plan& plan, std::size_t quilt, const Pass& pass) {
    return pass.stretches.empty() ? fromTasks(plan, quilt, pass.number) : pass.stretches;
}

std::vector<Part> partsOf(const Plan& plan, const std::vector<Job>& jobs,
                          const std::string& person) {
    std::map<std::pair<std::size_t, int>, Part> parts;
    for (const auto& t : plan.tasks) {
        if (!has(t, person) || t.job < 0 || std::size_t(t.job) >= plan.quilts.size())
            continue;
        const auto quilt = std::size_t(t.job);
        const Pass* pass = findPass(plan.quilts[quilt], t.pass);
        if (!pass)
            continue;
        Part& part = parts[{quilt, t.pass}];
        part.quilt = quilt;
        part.pass = pass;
        part.tasks.push_back(&t);
        const Zone* zone = findZone(plan.quilts[quilt], t.zone);
        if (zone && isFirstWork(t.kind)) {
            part.zones.push_back(zone);
            part.points += int(zone->points.size());
        }
    }
    std::vector<Part> out;
    for (auto& [key, part] : parts) {
        const auto times = passTimes(plan, part.quilt, part.pass->number);
        part.start = times ? times->start : Seconds{};
        const auto all = standing(plan, part.quilt, *part.pass);
        const auto own = std::ranges::find(all, person, &Stretch::person);
        if (own != all.end()) {
            part.place = own->place;
            part.edges = own->edges;
        }
        part.holds = holdsOf(*part.pass, all, person);
        part.rows = rowsOf(plan.quilts[part.quilt], jobs, part);
        out.push_back(std::move(part));
    }
    std::ranges::stable_sort(out, {}, &Part::start);
    return out;
}

std::string placeOf(const QuiltPlan& quilt, const std::string& person) {
    std::map<std::string, int> count;
    for (const auto& pass : quilt.passes)
        for (const auto& s : pass.stretches)
            if (s.person == person)
                ++count[s.place];
    const auto most = std::ranges::max_element(
        count, [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == count.end() ? std::string{} : most->first;
}

std::optional<PassTimes> passTimes(const Plan& plan, std::size_t quilt, int pass) {
    std::optional<PassTimes> times;
    for (const auto& t : plan.tasks) {
        if (t.job != int(quilt) || t.pass != pass || t.kind == TaskKind::setUp ||
            t.kind == TaskKind::handOver)
            continue;
        if (!times)
            times = PassTimes{t.start, t.end};
        times->start = std::min(times->start, t.start);
        times->end = std::max(times->end, t.end);
    }
    return times;
}

std::vector<int> rounds(const std::vector<HoldPoint>& holds) {
    std::set<int> out;
    for (const auto& h : holds)
        out.insert(h.number);
    return {out.begin(), out.end()};
}

} // namespace bastewright::sheets
