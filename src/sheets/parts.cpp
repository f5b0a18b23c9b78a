#include "sheets/parts.h"

#include "language/said.h"
#include "plan/find.h"
#include "ways/point_words.h"
#include "ways/way.h"

#include <algorithm>
#include <map>
#include <optional>
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

/// Where a place of a side lies on the way round the table, clockwise from its head-left corner.
Length roundTable(const Rect& table, Side side, Length along) {
    const Length w = table.width(), h = table.length();
    const Length x = std::clamp(along - table.x0, Length{}, w);
    const Length y = std::clamp(along - table.y0, Length{}, h);
    switch (side) {
    case Side::head:
        return x;
    case Side::right:
        return w + y;
    case Side::foot:
        return w + h + (w - x);
    case Side::left:
        break;
    }
    return w + h + w + (h - y);
}

/// How far it is from somebody's edge to the middle of another side, round the table.
Length walk(const Rect& table, const StandingPlace& edge, Side side) {
    const Length all = (table.width() + table.length()) * 2;
    const Length to = roundTable(table, side, (isAcross(side) ? table.x() : table.y()).middle());
    Length least = all;
    for (const Length end : {edge.along.lo, edge.along.hi}) {
        const Length straight = abs(roundTable(table, edge.side, end) - to);
        least = std::min({least, straight, all - straight});
    }
    return least;
}

bool standsAt(const Stretch& stretch, Side side) {
    return std::ranges::count(stretch.edges, side, &StandingPlace::side) > 0;
}

/// Who sets the holds of each side where nobody stands.
using Setters = std::map<Side, std::string>;

/// Whoever has the shortest way round the table, seated people last; whoever did it in an earlier
/// pass goes on where they are there.
Setters settersOf(const Pass& pass, const std::vector<Stretch>& all,
                  const std::vector<Helper>& helpers, const Setters& before) {
    using Way = std::pair<bool, Length>; ///< seated, how far
    Setters out;
    for (const Hold& hold : pass.holds) {
        if (std::ranges::any_of(all, [&](const Stretch& s) { return standsAt(s, hold.side); }))
            continue;
        const auto last = before.find(hold.side);
        if (last != before.end() && std::ranges::count(all, last->second, &Stretch::person) > 0) {
            out.insert(*last);
            continue;
        }
        std::optional<Way> least;
        for (const Stretch& s : all) {
            const auto who = std::ranges::find(helpers, s.person, &Helper::name);
            const bool sits = who != helpers.end() && who->seated;
            for (const StandingPlace& e : s.edges)
                if (const Way way{sits, walk(pass.table, e, hold.side)}; !least || way < *least) {
                    least = way;
                    out[hold.side] = s.person;
                }
        }
    }
    return out;
}

/// Where everybody stands in the passes of a quilt, all of them together.
using UsualEdges = std::map<std::string, std::vector<StandingPlace>>;

UsualEdges usualEdges(const Plan& plan, std::size_t quilt) {
    UsualEdges out;
    for (const Pass& pass : plan.quilts[quilt].passes)
        for (const Stretch& s : standing(plan, quilt, pass))
            for (const StandingPlace& e : s.edges)
                addEdge(out[s.person], e);
    return out;
}

/// How far a place of a side lies outside somebody's edges there; nothing where they have none.
std::optional<Length> outsideOf(const std::vector<StandingPlace>& edges, const HoldPoint& hold) {
    std::optional<Length> least;
    for (const StandingPlace& e : edges)
        if (const Length d = outside(hold.at, e.along);
            e.side == hold.side && (!least || d < *least))
            least = d;
    return least;
}

/// Who sets a hold of a side where somebody stands: of those who stand there in this pass whoever's
/// place, as it is in all passes together, is nearest; of two equally near whoever stands nearer.
std::string nearestTo(const HoldPoint& hold, const std::vector<Stretch>& all,
                      const UsualEdges& usual) {
    using Way = std::pair<Length, Length>; ///< from the usual place, and in this pass
    std::string person;
    std::optional<Way> least;
    for (const Stretch& s : all)
        if (const auto now = outsideOf(s.edges, hold)) {
            const Way way{outsideOf(usual.at(s.person), hold).value_or(*now), *now};
            if (!least || way < *least) {
                least = way;
                person = s.person;
            }
        }
    return person;
}

std::vector<HoldPoint> holdsOf(const Pass& pass, const std::vector<Stretch>& all,
                               const Setters& setters, const UsualEdges& usual,
                               const std::string& person) {
    std::vector<HoldPoint> out;
    for (const HoldPoint& hold : holdOrder(pass)) {
        const auto setter = setters.find(hold.side);
        if ((setter == setters.end() ? nearestTo(hold, all, usual) : setter->second) == person)
            out.push_back(hold);
    }
    return out;
}

/// The setters of every pass of a quilt.
std::map<int, Setters> settersOf(const Plan& plan, std::size_t quilt,
                                 const std::vector<Helper>& helpers) {
    std::map<int, Setters> out;
    Setters last;
    for (const Pass& pass : plan.quilts[quilt].passes) {
        const Setters now = settersOf(pass, standing(plan, quilt, pass), helpers, last);
        for (const auto& [side, person] : now)
            last.insert_or_assign(side, person);
        out[pass.number] = now;
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

bool Part::standsAt(Side side) const {
    return std::ranges::count(edges, side, &StandingPlace::side) > 0;
}

std::vector<Part> partsOf(const Plan& plan, const Session& session, const std::string& person) {
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
    std::map<std::size_t, std::map<int, Setters>> setters;
    std::map<std::size_t, UsualEdges> usual;
    for (const auto& [key, part] : parts)
        if (!setters.contains(part.quilt)) {
            setters[part.quilt] = settersOf(plan, part.quilt, session.setting.helpers);
            usual[part.quilt] = usualEdges(plan, part.quilt);
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
        part.holds = holdsOf(*part.pass, all, setters[part.quilt][part.pass->number],
                             usual[part.quilt], person);
        part.rows = rowsOf(plan.quilts[part.quilt], session.jobs, part);
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

bool restsOnChairs(const QuiltPlan& quilt) {
    return std::ranges::any_of(quilt.passes, [](const Pass& pass) {
        return std::ranges::any_of(kSides,
                                   [&](Side side) { return pass.beyond[side] == Beyond::chairs; });
    });
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
