#include "unit/crew/rules_oracle.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <sstream>

namespace bastewright::made {
namespace {

bool ofZone(TaskKind k) {
    return k == TaskKind::placeOpen || k == TaskKind::closePins || k == TaskKind::dotLower ||
           k == TaskKind::dotUpper || k == TaskKind::press;
}

double fromInterval(double v, const Interval& i) {
    return std::max({0.0, i.lo.in() - v, v - i.hi.in()});
}

class Oracle {
public:
    Oracle(const Session& s, const std::vector<QuiltPlan>& q, const CrewPlan& p)
        : session_(s)
        , quilts_(q)
        , plan_(p)
        , people_(s.setting.helpers) {
        if (people_.empty())
            people_.emplace_back().name = "Helper 1";
        for (const Task& t : p.tasks) {
            if (!byId_.emplace(t.id, &t).second)
                say(t, "its id is not unique");
        }
    }

    std::vector<std::string> run() {
        for (const Task& t : plan_.tasks) {
            order(t);
            people(t);
            if (ofZone(t.kind))
                place(t);
        }
        pairs();
        irons();
        for (std::size_t q = 0; q < quilts_.size(); ++q)
            quilt(static_cast<int>(q));
        Seconds last{};
        for (const Task& t : plan_.tasks)
            last = std::max(last, t.end);
        if (last != plan_.finish)
            broken_.push_back("the finish is not the last end");
        if (plan_.bound > plan_.finish)
            broken_.push_back("the bound lies beyond the finish");
        if (!std::ranges::is_sorted(plan_.tasks, {},
                                    [](const Task& t) { return std::pair(t.start, t.id); }))
            broken_.push_back("tasks are not by start, then id");
        return broken_;
    }

private:
    void say(const Task& t, const std::string& what) {
        std::ostringstream text;
        text << t.id << " (" << t.start.count() << "-" << t.end.count() << "): " << what;
        broken_.push_back(text.str());
    }

    const Helper* helper(const std::string& name) const {
        for (const Helper& h : people_)
            if (h.name == name)
                return &h;
        return nullptr;
    }

    void order(const Task& t) {
        if (t.start.count() < 0 || t.end < t.start)
            say(t, "ends before it starts");
        for (const std::string& id : t.after) {
            const auto at = byId_.find(id);
            if (at == byId_.end())
                say(t, "waits for a task that is not there: " + id);
            else if (at->second->end > t.start)
                say(t, "starts before the end of " + id);
        }
    }

    bool hoursStop() const {
        return std::ranges::any_of(plan_.findings, [](const Finding& f) {
            return f.level == Finding::Level::stop && f.text.english().find("hours") != std::string::npos;
        });
    }

    void people(const Task& t) {
        std::set<std::string> names(t.people.begin(), t.people.end());
        if (names.size() != t.people.size())
            say(t, "somebody is in it twice");
        if (t.people.empty() != (t.kind == TaskKind::cool))
            say(t, "wrong: nobody does it, or somebody cools");
        for (const std::string& name : t.people) {
            const Helper* h = helper(name);
            if (!h) {
                say(t, "nobody is called " + name);
                continue;
            }
            // All times are of the day the session begins on.
            const auto start = session_.setting.start.sinceMidnight;
            if (h->from && t.start < h->from->sinceMidnight - start)
                say(t, name + " is not there yet");
            if (h->until && t.end > h->until->sinceMidnight - start && !hoursStop())
                say(t, name + " has left");
            for (const Break& rest : h->breaks)
                if (t.start < rest.until.sinceMidnight - start &&
                    t.end > rest.from.sinceMidnight - start)
                    say(t, name + " rests then");
            if (t.kind == TaskKind::closePins && !h->closes)
                say(t, name + " does not close pins");
            if (t.kind == TaskKind::press && !h->irons)
                say(t, name + " does not iron");
            if (t.kind == TaskKind::shift && (!h->lifts || h->seated) && liftersInSession() > 0)
                say(t, name + " does not lift");
        }
    }

    int liftersInSession() const {
        return static_cast<int>(
            std::ranges::count_if(people_, [](const Helper& h) { return h.lifts && !h.seated; }));
    }

    const Pass& passOf(const Task& t) const {
        for (const Pass& p : quilts_[static_cast<std::size_t>(t.job)].passes)
            if (p.number == t.pass)
                return p;
        throw std::runtime_error("no such pass");
    }

    const Zone* zoneOf(const Task& t) const {
        for (const Zone& z : quilts_[static_cast<std::size_t>(t.job)].zones)
            if (z.id == t.zone)
                return &z;
        return nullptr;
    }

    /// The points a task is for: of a shared zone those that lie nearest to the share's side.
    static std::vector<PlacedPoint> own(const Zone& zone, const Task& t) {
        std::vector<PlacedPoint> points = zone.points;
        if (!t.share)
            return points;
        std::ranges::sort(points, [&](const PlacedPoint& a, const PlacedPoint& b) {
            const auto ax = a.at.x, ay = a.at.y, bx = b.at.x, by = b.at.y;
            switch (t.share->side) {
            case Side::left:
                return std::pair(ax, ay) < std::pair(bx, by);
            case Side::right:
                return std::pair(ax, ay) > std::pair(bx, by);
            case Side::head:
                return std::pair(ay, ax) < std::pair(by, bx);
            default:
                return std::pair(ay, ax) > std::pair(by, bx);
            }
        });
        points.resize(std::min(points.size(), static_cast<std::size_t>(t.share->points)));
        return points;
    }

    /// Done by one person, or by two who have all its points between them.
    void workedOnce(int job, const Zone& z, TaskKind kind) {
        const auto tasks = some(job, z.pass, kind, z.id);
        if (tasks.size() == 1)
            return expect(!tasks[0]->share, z.id + ": one person has only a share");
        if (tasks.size() != 2 || !tasks[0]->share || !tasks[1]->share)
            return expect(false, z.id + ": done by one person, or shared by two");
        std::set<std::pair<Length, Length>> places;
        for (const Task* t : tasks)
            for (const PlacedPoint& p : own(z, *t))
                places.insert({p.at.x, p.at.y});
        expect(places.size() == z.points.size() &&
                   tasks[0]->share->points + tasks[1]->share->points ==
                       static_cast<int>(z.points.size()),
               z.id + ": its shares are not its points");
        expect(tasks[0]->people != tasks[1]->people, z.id + ": shared by one person");
    }

    void place(const Task& t) {
        const Zone* z = zoneOf(t);
        if (t.people.size() != 1 || t.places.size() != 1 || !z || !helper(t.people[0]))
            return say(t, "zone work has one person, one place, one zone");
        const StandingPlace& s = t.places.front();
        const Pass& p = passOf(t);
        const SurfacePlan& surface = quilts_[static_cast<std::size_t>(t.job)].surface;
        if (std::ranges::find(surface.closed, s.side) != surface.closed.end())
            say(t, "stands at a closed side");
        const bool across = s.side == Side::head || s.side == Side::foot;
        const Length lo = across ? p.table.x0 : p.table.y0, hi = across ? p.table.x1 : p.table.y1;
        if (s.along.lo < lo || s.along.hi > hi)
            say(t, "stands beyond the side's end");
        if (s.along.size() != std::min(Length::inches(24), hi - lo))
            say(t, "takes more or less than 24 in of edge");
        if (surface.floor)
            return;
        std::vector<Point> corners;
        Rect box = z->area;
        if (const auto points = own(*z, t); !points.empty()) {
            box = {points[0].at.x, points[0].at.y, points[0].at.x, points[0].at.y};
            for (const PlacedPoint& q : points)
                box = {std::min(box.x0, q.at.x), std::min(box.y0, q.at.y), std::max(box.x1, q.at.x),
                       std::max(box.y1, q.at.y)};
        }
        for (const Length x : {box.x0, box.x1})
            for (const Length y : {box.y0, box.y1}) {
                const double edge = s.side == Side::head   ? p.table.y0.in()
                                    : s.side == Side::foot ? p.table.y1.in()
                                    : s.side == Side::left ? p.table.x0.in()
                                                           : p.table.x1.in();
                const double depth = std::abs((across ? y : x).in() - edge);
                const double aside = fromInterval((across ? x : y).in(), s.along);
                if (std::hypot(depth, aside) > helper(t.people[0])->reach.in() + 1e-9)
                    say(t, "a corner of the zone is out of reach");
            }
    }

    void pairs() {
        for (std::size_t i = 0; i < plan_.tasks.size(); ++i)
            for (std::size_t j = i + 1; j < plan_.tasks.size(); ++j) {
                const Task &a = plan_.tasks[i], &b = plan_.tasks[j];
                if (a.start >= b.end || b.start >= a.end)
                    continue;
                for (const std::string& n : a.people)
                    if (std::ranges::find(b.people, n) != b.people.end())
                        say(a, n + " is also in " + b.id);
                const bool sameTable = quilts_[static_cast<std::size_t>(a.job)].surface.number ==
                                       quilts_[static_cast<std::size_t>(b.job)].surface.number;
                if (sameTable && a.job != b.job)
                    say(a, "another quilt lies on its table for " + b.id);
                for (const StandingPlace& p : a.places)
                    for (const StandingPlace& q : b.places)
                        if (sameTable && p.side == q.side && p.along.lo < q.along.hi &&
                            q.along.lo < p.along.hi)
                            say(a, "stands on the place of " + b.id);
            }
    }

    void irons() {
        for (const Task& t : plan_.tasks) {
            if (t.kind != TaskKind::press)
                continue;
            const auto inUse = std::ranges::count_if(plan_.tasks, [&](const Task& o) {
                return o.kind == TaskKind::press && o.start <= t.start && t.start < o.end;
            });
            if (inUse > session_.setting.room.irons)
                say(t, "too few irons");
        }
    }

    std::vector<const Task*> some(int job, int pass, TaskKind kind, const std::string& zone = "") {
        std::vector<const Task*> out;
        for (const Task& t : plan_.tasks)
            if (t.job == job && t.pass == pass && t.kind == kind &&
                (zone.empty() || t.zone == zone))
                out.push_back(&t);
        return out;
    }

    /// All of `first` end before any of `then` starts.
    void before(const std::vector<const Task*>& first, const std::vector<const Task*>& then) {
        for (const Task* a : first)
            for (const Task* b : then)
                if (a->end > b->start)
                    say(*b, "starts before the end of " + a->id);
    }

    void expect(bool good, const std::string& what) {
        if (!good)
            broken_.push_back(what);
    }

    bool zoneStop(const QuiltPlan& q, const Zone& z) const {
        return std::ranges::any_of(plan_.findings, [&](const Finding& f) {
            std::string text = f.text.english();
            std::ranges::replace(text, ',', ' ');
            std::ranges::replace(text, '.', ' ');
            return f.level == Finding::Level::stop &&
                   f.text.english().find(q.name + ", pass " + std::to_string(z.pass) + ": nobody") == 0 &&
                   text.find(" " + z.id + " ") != std::string::npos;
        });
    }

    void quilt(int job) {
        const QuiltPlan& q = quilts_[static_cast<std::size_t>(job)];
        const Job& j = session_.jobs[static_cast<std::size_t>(job)];
        const bool dots = j.basting.with == Basting::With::dots;
        std::vector<const Task*> passBefore;
        for (const Pass& p : q.passes) {
            const bool first = &p == &q.passes.front();
            const auto lead = some(job, p.number, first ? TaskKind::layTop : TaskKind::shift);
            expect(lead.size() == 1, q.name + ": one lay or shift a pass");
            if (lead.empty())
                return;
            if (first) {
                const auto backing = some(job, p.number, TaskKind::layBacking);
                const auto batting = some(job, p.number, TaskKind::layBatting);
                expect(backing.size() == 1 && batting.size() == 1, q.name + ": layers are laid");
                if (backing.empty() || batting.empty())
                    return;
                before(backing, batting);
                before(batting, lead);
                for (const auto* t : {backing.front(), batting.front(), lead.front()})
                    if (t->people.size() < std::min<std::size_t>(2, people_.size()))
                        say(*t, "two people lay a layer");
            } else if (static_cast<int>(lead.front()->people.size()) <
                       std::min(p.liftPeople, std::max(1, liftersInSession()))) {
                say(*lead.front(), "too few hands");
            }
            before(passBefore, lead);
            const auto check = some(job, p.number, TaskKind::checkUnderside);
            expect(check.size() == 1, q.name + ": the underside is checked once a pass");
            for (const TaskKind k : {TaskKind::placeOpen, TaskKind::closePins, TaskKind::dotLower,
                                     TaskKind::dotUpper, TaskKind::smooth}) {
                before(lead, some(job, p.number, k));
                before(some(job, p.number, TaskKind::reclamp), some(job, p.number, k));
                before(some(job, p.number, k), check);
            }
            if (dots)
                dotPass(job, p);
            for (const Zone& z : q.zones)
                if (z.pass == p.number)
                    zone(job, q, z, dots);
            passBefore = check;
        }
        const int last = q.passes.back().number;
        const auto over = some(job, last, TaskKind::handOver);
        expect(over.size() == 1, q.name + ": handed over once");
        if (over.empty())
            return;
        for (const Task& t : plan_.tasks)
            if (t.job == job && &t != over.front() && t.end > over.front()->start)
                say(t, "goes on after the quilt was handed over");
        const bool thick = dots && j.batting.thickness > Length::millimetres(10);
        expect(some(job, last, TaskKind::turnOver).size() == (thick ? 1U : 0U),
               q.name + ": thick batting is turned once");
    }

    void dotPass(int job, const Pass& p) {
        const auto back = some(job, p.number, TaskKind::foldBack),
                   forward = some(job, p.number, TaskKind::foldForward);
        before(back, some(job, p.number, TaskKind::dotLower));
        before(some(job, p.number, TaskKind::dotLower), forward);
        before(forward, some(job, p.number, TaskKind::dotUpper));
        expect(back.size() == 1 && forward.size() == 1, "folded back and forward once a pass");
        const auto cool = some(job, p.number, TaskKind::cool);
        expect(!cool.empty(), "a pass with dots cools");
        for (const Task* c : cool)
            if (c->end - c->start < Seconds{60})
                say(*c, "cools for less than a minute");
    }

    void zone(int job, const QuiltPlan& q, const Zone& z, bool dots) {
        if (zoneStop(q, z))
            return;
        const auto count = [&](TaskKind k) { return some(job, z.pass, k, z.id).size(); };
        if (!dots) {
            if (z.points.empty()) {
                expect(count(TaskKind::placeOpen) + count(TaskKind::closePins) == 0,
                       z.id + ": has nothing to be done");
                return;
            }
            workedOnce(job, z, TaskKind::placeOpen);
            workedOnce(job, z, TaskKind::closePins);
            const auto opened = some(job, z.pass, TaskKind::placeOpen, z.id);
            for (const Task* c : some(job, z.pass, TaskKind::closePins, z.id)) {
                const bool smoothed =
                    std::ranges::any_of(some(job, z.pass, TaskKind::smooth), [&](const Task* s) {
                        return s->end <= c->start &&
                               std::ranges::all_of(
                                   opened, [&](const Task* o) { return o->end <= s->start; });
                    });
                if (!smoothed)
                    say(*c, "is closed before it was smoothed");
            }
            return;
        }
        if (z.points.empty())
            expect(count(TaskKind::dotLower) + count(TaskKind::dotUpper) == 0,
                   z.id + ": has nothing to be done");
        else
            for (const TaskKind kind : {TaskKind::dotLower, TaskKind::dotUpper})
                workedOnce(job, z, kind);
        for (const Task* press : some(job, z.pass, TaskKind::press, z.id))
            before(some(job, z.pass, TaskKind::dotUpper, z.id), {press});
    }

    const Session& session_;
    const std::vector<QuiltPlan>& quilts_;
    const CrewPlan& plan_;
    std::vector<Helper> people_;
    std::map<std::string, const Task*> byId_;
    std::vector<std::string> broken_;
};

} // namespace

std::vector<std::string> brokenRules(const Session& session, const std::vector<QuiltPlan>& quilts,
                                     const CrewPlan& plan) {
    return Oracle{session, quilts, plan}.run();
}

} // namespace bastewright::made
