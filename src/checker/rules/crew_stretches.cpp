#include "checker/geometry/standing_reach.h"
#include "checker/rules/rules.h"
#include "checker/task_traits.h"

#include <algorithm>
#include <map>
#include <set>

namespace bastewright::check {
// One stretch for each person and pass, none in another's, each with a letter of its own.
void crewStretches(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes) {
        std::set<std::string> people, letters;
        for (const Stretch& s : p.stretches) {
            if (!people.insert(s.person).second)
                report.add(where(v, p, s) / "person",
                           label(v, p) + ": " + s.person + " has two stretches.");
            if (s.place.empty() || !letters.insert(s.place).second)
                report.add(where(v, p, s) / "place", label(v, p) + ": the letter '" + s.place +
                                                         "' is empty or two people's.");
            for (const StandingPlace& e : s.edges)
                if (!extent(p.table, e.side).contains(e.along))
                    report.add(where(v, p, s).in("edges", s.edges, e),
                               label(v, p) + ": the stretch of " + s.person +
                                   " reaches beyond the " + std::string{name(e.side)} +
                                   " side of the table.");
            for (const Stretch& o : p.stretches)
                for (const StandingPlace& a : s.edges)
                    for (const StandingPlace& b : o.edges)
                        if (s.person < o.person && a.side == b.side && a.along.overlaps(b.along))
                            report.add(where(v, p, s).in("edges", s.edges, a),
                                       label(v, p) + ": " + s.person + " and " + o.person +
                                           " share a place of the " + std::string{name(a.side)} +
                                           " side.");
        }
    }
}

namespace {

/// What somebody needs of the sides in a pass for zones of one letter, from the places of tasks.
std::map<Side, Interval> worked(const QuiltView& v, int pass, std::string_view letter,
                                const std::vector<std::string>& who) {
    std::map<Side, Interval> out;
    for (const Task* t : v.tasks())
        if (t->pass == pass && isOfZone(t->kind) && zonePlace(t->zone) == letter &&
            t->people == who)
            for (const StandingPlace& at : t->places) {
                const auto [side, isNew] = out.emplace(at.side, at.along);
                side->second = {std::min(side->second.lo, at.along.lo),
                                std::max(side->second.hi, at.along.hi)};
            }
    return out;
}

bool isLetters(const std::string& place) {
    return std::ranges::all_of(place, [](char c) { return c >= 'A' && c <= 'Z'; });
}

} // namespace

// A stretch is where its person works at the zones of its letter from; letters follow one another.
void crewLetters(const QuiltView& v, Report& report) {
    for (const Pass& p : v.quilt.passes) {
        std::set<std::string> letters;
        const Stretch* last = nullptr;
        for (const Stretch& s : p.stretches) {
            letters.insert(s.place);
            bool known = false;
            for (const Helper& h : v.session.setting.helpers)
                known = known || h.name == s.person;
            if (!known)
                report.add(where(v, p, s) / "person", label(v, p) + ": place " + s.place +
                                                          " is of '" + s.person +
                                                          "', who is not among the helpers.");
            if (!isLetters(s.place) ||
                (last != nullptr &&
                 std::pair{s.place.size(), s.place} <= std::pair{last->place.size(), last->place}))
                report.add(where(v, p, s) / "place",
                           label(v, p) + ": place '" + s.place + "' is out of turn.");
            last = &s;
            const auto asked = worked(v, p.number, s.place, {s.person});
            std::map<Side, Interval> said;
            for (const StandingPlace& e : s.edges)
                if (!said.emplace(e.side, e.along).second)
                    report.add(where(v, p, s).in("edges", s.edges, e),
                               label(v, p) + ": place " + s.place + " has two parts of the " +
                                   std::string{name(e.side)} + " side.");
            if (!asked.empty() && said != asked)
                report.add(where(v, p, s) / "edges",
                           label(v, p) + ": place " + s.place +
                               " is not where its zones are worked from.");
            // What was handed to somebody else is worked by them, from wherever they stand.
            const auto tasks = v.tasks();
            const bool handed = std::ranges::any_of(tasks, [&](const Task* t) {
                return t->pass == p.number && isOfZone(t->kind) && zonePlace(t->zone) == s.place &&
                       std::ranges::find(v.job.handed, t->zone, &HandedZone::zone) !=
                           v.job.handed.end();
            });
            if (s.edges.empty() || (asked.empty() && !handed && !v.stopped()))
                report.add(where(v, p, s), label(v, p) + ": " + s.person +
                                               " works at nothing from place " + s.place + ".");
        }
        std::map<std::pair<std::string, std::string>, const Task*> first;
        for (const Task* t : v.tasks()) {
            if (t->pass != p.number || !isOfZone(t->kind) || t->people.size() != 1)
                continue;
            const auto [at, isNew] = first.emplace(std::pair{t->zone, t->people.front()}, t);
            if (!isNew && at->second->places != t->places)
                report.add(where(v, *t) / "places", label(v, p) + ": " + t->people.front() +
                                                        " works zone " + t->zone +
                                                        " from one place in '" + at->second->id +
                                                        "' and from another in '" + t->id + "'.");
        }
        for (const Task* t : v.tasks())
            if (t->pass == p.number && isOfZone(t->kind) &&
                !letters.contains(std::string{zonePlace(t->zone)}))
                report.add(where(v, p) / "stretches",
                           label(v, p) + ": zone " + t->zone + " is of a place nobody has.");
    }
}

// The same hands put a zone's pins in and close them, as long as those close and are there.
void crewHands(const PlanView& v, Report& report) {
    std::map<std::pair<int, std::string>, const Task*> placed;
    for (const Task& t : v.plan.tasks)
        if (t.kind == TaskKind::placeOpen)
            placed[{t.job, t.zone}] = &t;
    for (const Task& t : v.plan.tasks) {
        const auto before = placed.find({t.job, t.zone});
        if (t.kind != TaskKind::closePins || before == placed.end() ||
            before->second->people == t.people || before->second->people.empty())
            continue;
        const QuiltView* quilt = v.quilt(t.job);
        const Helper* h = v.helper(before->second->people.front());
        // Who leaves, rests or does not close gives it to somebody else; so does a wish.
        const bool handed =
            quilt != nullptr && std::ranges::find(quilt->job.handed, t.zone, &HandedZone::zone) !=
                                    quilt->job.handed.end();
        if (h != nullptr && h->closes && !h->until && h->breaks.empty() && !handed)
            report.add(where(v, t) / "people",
                       "Task '" + t.id + "' is given to " +
                           (t.people.empty() ? std::string{"nobody"} : t.people.front()) + "; " +
                           h->name + " put the zone's pins in.");
    }
}

// Who sits stays where they sit, for the whole of a quilt.
void crewSeated(const PlanView& v, Report& report) {
    std::map<std::pair<std::string, int>, StandingPlace> seats; // in the table's own frame
    for (const Task& t : v.plan.tasks) {
        const QuiltView* quilt = v.quilt(t.job);
        const Pass* pass = quilt == nullptr ? nullptr : quilt->pass(t.pass);
        if (pass == nullptr || t.places.size() != 1 || t.people.size() != 1)
            continue;
        const Helper* h = v.helper(t.people.front());
        if (h == nullptr || !h->seated)
            continue;
        StandingPlace at = t.places.front();
        const Length by = isAcross(at.side) ? pass->table.x0 : pass->table.y0;
        at.along = {at.along.lo - by, at.along.hi - by};
        const auto [seat, isNew] = seats.try_emplace({h->name, t.job}, at);
        const Interval both{std::min(seat->second.along.lo, at.along.lo),
                            std::max(seat->second.along.hi, at.along.hi)};
        if (!isNew && (seat->second.side != at.side ||
                       both.size() > standingWidth(pass->table, at.side) + Length::inches(1)))
            report.add(where(v, t) / "places/0",
                       "Task '" + t.id + "': " + h->name + " sits, and would have to move.");
    }
}

// Breaks are nobody's work, and where they are proposed nobody works for two hours without one.
void crewRests(const PlanView& v, Report& report) {
    constexpr Seconds kMost{2 * 60 * 60}, kRest{5 * 60};
    std::map<std::string, std::vector<const Task*>> own;
    for (const Task& t : v.plan.tasks)
        for (const std::string& who : t.people)
            own[who].push_back(&t);
    for (auto& [who, tasks] : own) {
        std::ranges::sort(tasks, {}, &Task::start);
        Seconds since = tasks.empty() ? Seconds{} : tasks.front()->start, last = since;
        for (const Task* t : tasks) {
            if (t->start - last >= kRest)
                since = t->start;
            last = std::max(last, t->end);
            for (const PlannedBreak& b : v.plan.breaks)
                if ((b.people.empty() || std::ranges::find(b.people, who) != b.people.end()) &&
                    t->start < b.end && b.start < t->end)
                    report.add(where(v, *t), "Task '" + t->id + "' of " + who +
                                                 " runs into the break at " + clock(b.start) + ".");
            if (v.session.setting.proposeBreaks && t->end - since > kMost) {
                report.add(Pointer{} / "breaks", who + " works from " + clock(since) + " to " +
                                                     clock(t->end) + " without a break.");
                since = t->end;
            }
        }
    }
}

} // namespace bastewright::check
