#include "unit/crew/rules_oracle.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <sstream>

namespace bastewright::made {
namespace {

constexpr double kFineInches = 1e-6;

bool ofZone(TaskKind k) {
    return k == TaskKind::placeOpen || k == TaskKind::closePins || k == TaskKind::dotLower ||
           k == TaskKind::dotUpper || k == TaskKind::press || k == TaskKind::stitch ||
           k == TaskKind::spray;
}

/// The order of the steps of a pass; what comes after all passes is pressed from the back and
/// rolled.
int stepOf(const Task& t, bool back) {
    if (back && t.kind == TaskKind::press)
        return 1000 - t.pass; // pass by pass in reverse
    if (back && t.kind == TaskKind::cool)
        return 2000;
    switch (t.kind) {
    case TaskKind::setUp:
        return 0;
    case TaskKind::shift:
        return 1;
    case TaskKind::layBacking:
        return 2;
    case TaskKind::clamp:
        return 3;
    case TaskKind::layBatting:
        return 4;
    case TaskKind::layTop:
        return 5;
    case TaskKind::reclamp:
        return 6;
    case TaskKind::foldBack:
        return 7;
    case TaskKind::dotLower:
        return 8;
    case TaskKind::foldForward:
        return 9;
    case TaskKind::dotUpper:
        return 10;
    case TaskKind::press:
        return 11;
    case TaskKind::cool: // dots before pins, where a pass has both
        return 12;
    case TaskKind::placeOpen:
    case TaskKind::spray:
        return 13;
    case TaskKind::smooth:
        return 14;
    case TaskKind::closePins:
    case TaskKind::stitch:
        return 15;
    case TaskKind::settle:
        return 16;
    case TaskKind::checkUnderside:
        return 17;
    case TaskKind::turnOver:
        return 500;
    case TaskKind::handOver:
        return 3000;
    }
    return 0;
}

class Oracle {
public:
    Oracle(const Session& session, const std::vector<QuiltPlan>& quilts, const CrewPlan& plan)
        : session_{session}
        , quilts_{quilts}
        , plan_{plan}
        , helpers_{session.setting.helpers} {
        if (helpers_.empty())
            helpers_.emplace_back().name = "Helper 1";
        stopped_ = std::ranges::any_of(
            plan.findings, [](const Finding& f) { return f.level == Finding::Level::stop; });
        hoursShort_ = std::ranges::any_of(
            plan.findings, [](const Finding& f) { return f.kind == Finding::Kind::hoursShort; });
    }

    std::vector<std::string> run() {
        list();
        for (std::size_t q = 0; q < quilts_.size(); ++q) {
            zones(q);
            calls(q);
            work(q);
            lifts(q);
            stretches(q);
        }
        people();
        places();
        irons();
        breaks();
        surfaces();
        return std::move(out_);
    }

private:
    template <class... T>
    void broken(const T&... parts) {
        std::ostringstream text;
        (text << ... << parts);
        out_.push_back(text.str());
    }

    const Helper* helper(const std::string& name) const {
        const auto at = std::ranges::find(helpers_, name, &Helper::name);
        return at == helpers_.end() ? nullptr : &*at;
    }
    const Zone* zone(const Task& t) const {
        const auto& zones = quilts_[std::size_t(t.job)].zones;
        const auto at = std::ranges::find(zones, t.zone, &Zone::id);
        return at == zones.end() ? nullptr : &*at;
    }
    const Pass* pass(const Task& t) const {
        for (const Pass& p : quilts_[std::size_t(t.job)].passes)
            if (p.number == t.pass)
                return &p;
        return nullptr;
    }
    bool is(std::size_t q, const Zone& z, Basting::With with) const {
        return z.with.value_or(session_.jobs[q].basting.with) == with;
    }

    void list() {
        std::set<std::string> ids;
        Seconds last{};
        const Task* before = nullptr;
        for (const Task& t : plan_.tasks) {
            if (!ids.insert(t.id).second)
                broken("two tasks ", t.id);
            if (t.start < Seconds{} || t.end <= t.start)
                broken(t.id, " has no length");
            if (before && std::pair{t.start, t.id} < std::pair{before->start, before->id})
                broken(t.id, " out of order");
            before = &t;
            last = std::max(last, t.end);
            if (t.people.empty() && t.kind != TaskKind::cool && t.kind != TaskKind::settle)
                broken(t.id, " is nobody's");
            for (const auto& id : t.after) {
                const auto at = std::ranges::find(plan_.tasks, id, &Task::id);
                if (at == plan_.tasks.end())
                    broken(t.id, " waits for ", id, ", which is not there");
                else if (at->end > t.start)
                    broken(t.id, " begins before ", id, " ends");
            }
        }
        if (plan_.finish != last)
            broken("finish");
        if (plan_.bound > plan_.finish)
            broken("bound ", plan_.bound.count(), " beyond finish ", plan_.finish.count());
        if (plan_.range.early > plan_.range.middle || plan_.range.middle > plan_.range.late)
            broken("range");
    }

    void zones(std::size_t q) {
        const QuiltPlan& quilt = quilts_[q];
        for (const Pass& p : quilt.passes) {
            double area = 0;
            for (const Zone& z : quilt.zones) {
                if (z.pass != p.number)
                    continue;
                area += areaSquareInches(z.area);
                if (!contains(p.fresh, z.area))
                    broken(z.id, " lies outside its pass");
                for (const PlacedPoint& at : z.points)
                    if (!z.area.contains(at.at))
                        broken(z.id, " has a point outside");
                if (std::ranges::count(p.zones, z.id) != 1)
                    broken(z.id, " is not listed");
                for (const Zone& o : quilt.zones)
                    if (&o != &z && (o.id == z.id || o.area.overlaps(z.area)))
                        broken(z.id, " and ", o.id, " overlap");
            }
            if (std::abs(area - areaSquareInches(p.fresh)) > 1e-3)
                broken("pass ", p.number, " is not covered by its zones");
        }
    }

    /// Nobody before the next call: of one quilt, step after step.
    void calls(std::size_t q) {
        std::map<std::pair<int, int>, std::vector<const Task*>> steps;
        const auto last = int(quilts_[q].passes.size());
        for (const Task& t : plan_.tasks)
            if (t.job == int(q)) {
                const bool back = t.id.ends_with(".back");
                const int step = stepOf(t, back);
                steps[{step >= 500 ? last + 1 : t.pass, step}].push_back(&t);
            }
        const Task* before = nullptr;
        for (const auto& [key, tasks] : steps) {
            for (const Task* t : tasks)
                if (before && t->start < before->end)
                    broken(t->id, " begins before ", before->id, " ends");
            for (const Task* t : tasks)
                if (!before || t->end > before->end)
                    before = t;
        }
    }

    double asked(const Task& t, const Helper& h) const {
        const Zone* z = zone(t);
        // 22 s a stitch: within a factor of two of the totals reported (common practice),
        // docs/decisions/0036.
        // 60 s a patch: from memory, docs/decisions/0037.
        const double each = t.kind == TaskKind::stitch                                     ? 22
                            : t.kind == TaskKind::spray                                    ? 60
                            : t.kind == TaskKind::press                                    ? 8
                            : t.kind == TaskKind::dotLower || t.kind == TaskKind::dotUpper ? 6
                                                                                           : 5.5;
        return each * double(z->points.size()) / h.pace + 15;
    }

    double awayFrom(const Task& t, Point p) const {
        const Rect& table = pass(t)->table;
        const StandingPlace& at = t.places.front();
        const bool across = at.side == Side::head || at.side == Side::foot;
        const double deep = at.side == Side::head   ? (p.y - table.y0).in()
                            : at.side == Side::foot ? (table.y1 - p.y).in()
                            : at.side == Side::left ? (p.x - table.x0).in()
                                                    : (table.x1 - p.x).in();
        const Length along = across ? p.x : p.y;
        const double beside =
            std::max({0.0, (at.along.lo - along).in(), (along - at.along.hi).in()});
        return std::hypot(deep, beside);
    }

    void work(std::size_t q) {
        std::map<std::pair<std::string, TaskKind>, int> done;
        std::map<std::string, std::string> hands;
        for (const Task& t : plan_.tasks) {
            if (t.job != int(q) || !ofZone(t.kind))
                continue;
            const Zone* z = zone(t);
            if (!z || t.people.size() != 1 || t.places.size() != 1) {
                broken(t.id, " has no zone, person or place");
                continue;
            }
            const Helper* h = helper(t.people.front());
            if (!h) {
                broken(t.id, " is done by somebody unknown");
                continue;
            }
            ++done[{t.zone, t.kind}];
            if (!h->pins && t.kind != TaskKind::press)
                broken(t.id, ": ", h->name, " has no zones");
            if (t.kind == TaskKind::closePins && !h->closes)
                broken(t.id, ": ", h->name, " does not close");
            if (t.kind == TaskKind::press && !h->irons)
                broken(t.id, ": ", h->name, " does not iron");
            if (t.kind == TaskKind::placeOpen)
                hands[t.zone] = h->name;
            if (t.kind == TaskKind::closePins && hands[t.zone] != h->name &&
                helper(hands[t.zone]) && helper(hands[t.zone])->closes &&
                h->until == std::nullopt && helper(hands[t.zone])->until == std::nullopt)
                broken(t.zone, " changes hands");
            reach(q, t, *z, *h);
            if (double((t.end - t.start).count()) < asked(t, *h) - 1e-6)
                broken(t.id, " is too short");
        }
        if (stopped_)
            return;
        for (const Zone& z : quilts_[q].zones) {
            const int once = z.points.empty() ? 0 : 1;
            const bool thick = session_.jobs[q].batting.thickness > Length::millimetres(10);
            const auto times = [&](TaskKind k) { return done[{z.id, k}]; };
            const int pins = is(q, z, Basting::With::pins) ? once : 0;
            const int dots = is(q, z, Basting::With::dots) ? once : 0;
            const int sewn = is(q, z, Basting::With::thread) ? once : 0;
            const int sprayed = is(q, z, Basting::With::spray) ? once : 0;
            if (times(TaskKind::placeOpen) != pins || times(TaskKind::closePins) != pins ||
                times(TaskKind::dotLower) != dots || times(TaskKind::dotUpper) != dots ||
                times(TaskKind::press) != dots * (thick ? 2 : 1) ||
                times(TaskKind::stitch) != sewn || times(TaskKind::spray) != sprayed)
                broken(z.id, " is not worked as it should be");
        }
    }

    void reach(std::size_t q, const Task& t, const Zone& z, const Helper& h) {
        const Rect& table = pass(t)->table;
        const StandingPlace& at = t.places.front();
        const auto& closed = quilts_[q].surface.closed;
        if (std::ranges::find(closed, at.side) != closed.end())
            broken(t.id, " is worked from a closed side");
        const Interval side = isAcross(at.side) ? table.x() : table.y();
        if (!side.contains(at.along) || at.along.size() < std::min(Length::inches(24), side.size()))
            broken(t.id, " has no room");
        if (quilts_[q].surface.floor)
            return;
        const double most = h.reach.in() + (h.seated ? 0 : h.lean.in());
        for (const PlacedPoint& p : z.points)
            if (awayFrom(t, p.at) > most + kFineInches) {
                broken(t.id, " is out of reach of ", h.name);
                break;
            }
    }

    /// A shift has the hands it asks for, as far as people who lift work in its pass and have not
    /// left before; where all have, as far as they stay.
    void lifts(std::size_t q) {
        for (const Task& t : plan_.tasks) {
            if (t.job != int(q) || t.kind != TaskKind::shift)
                continue;
            std::set<std::string> able, there;
            for (const Task& o : plan_.tasks)
                if (o.job == t.job && o.pass == t.pass)
                    for (const std::string& who : o.people)
                        if (const Helper* h = helper(who); h && h->lifts && !h->seated) {
                            able.insert(who);
                            if (hours(*h).second >= t.end)
                                there.insert(who);
                        }
            const auto most = int(there.empty() ? able.size() : there.size());
            if (std::ssize(t.people) < std::min(pass(t)->liftPeople, most))
                broken(t.id, " has too few people");
        }
    }

    /// One stretch for each person and pass; all they do at zones of their own is done from it.
    void stretches(std::size_t q) {
        for (const Pass& p : quilts_[q].passes) {
            std::set<std::string> people;
            for (const Stretch& s : p.stretches) {
                if (!people.insert(s.person).second)
                    broken("pass ", p.number, ": two stretches of ", s.person);
                for (const Stretch& o : p.stretches)
                    if (&o != &s)
                        for (const StandingPlace& a : s.edges)
                            for (const StandingPlace& b : o.edges)
                                if (a.side == b.side && a.along.overlaps(b.along))
                                    broken("pass ", p.number, ": ", s.person, " and ", o.person,
                                           " stand in one place");
            }
        }
    }

    std::pair<Seconds, Seconds> hours(const Helper& h) const {
        const auto at = [&](ClockTime t) {
            return Seconds{t.sinceMidnight - session_.setting.start.sinceMidnight};
        };
        return {h.from ? at(*h.from) : Seconds{}, h.until ? at(*h.until) : Seconds{1'000'000'000}};
    }

    void people() {
        const bool anyLays =
            std::ranges::any_of(helpers_, [](const Helper& h) { return h.lifts && !h.seated; });
        const bool anyLooks = std::ranges::any_of(
            helpers_, [](const Helper& h) { return h.lifts && h.bends && !h.seated; });
        std::map<std::string, std::vector<const Task*>> own;
        for (const Task& t : plan_.tasks)
            for (const auto& who : t.people) {
                own[who].push_back(&t);
                const Helper* h = helper(who);
                if (!h)
                    continue;
                using enum TaskKind;
                const bool lay = t.kind == layBacking || t.kind == layBatting || t.kind == layTop ||
                                 t.kind == shift || t.kind == foldBack || t.kind == foldForward ||
                                 t.kind == turnOver;
                if (lay && anyLays && (!h->lifts || h->seated))
                    broken(t.id, ": ", who, " lifts");
                if (t.kind == checkUnderside && anyLooks && (!h->lifts || !h->bends || h->seated))
                    broken(t.id, ": ", who, " looks underneath");
                const auto [from, until] = hours(*h);
                if (!hoursShort_ && (t.start < from || t.end > until))
                    broken(t.id, ": ", who, " is not there");
                for (const Break& b : h->breaks) {
                    const auto a =
                        Seconds{b.from.sinceMidnight - session_.setting.start.sinceMidnight};
                    const auto z =
                        Seconds{b.until.sinceMidnight - session_.setting.start.sinceMidnight};
                    if (!hoursShort_ && t.start < z && a < t.end)
                        broken(t.id, ": ", who, " has a break");
                }
            }
        for (auto& [who, tasks] : own)
            for (std::size_t k = 1; k < tasks.size(); ++k)
                if (tasks[k]->start < tasks[k - 1]->end)
                    broken(who, " does ", tasks[k - 1]->id, " and ", tasks[k]->id, " at once");
        seated(own);
    }

    void seated(const std::map<std::string, std::vector<const Task*>>& own) {
        for (const auto& [who, tasks] : own) {
            const Helper* h = helper(who);
            if (!h || !h->seated)
                continue;
            std::map<int, StandingPlace> seat; // by quilt, in the table's frame
            for (const Task* t : tasks) {
                if (t->places.empty())
                    continue;
                StandingPlace at = t->places.front();
                const Rect& table = pass(*t)->table;
                const Length by = isAcross(at.side) ? table.x0 : table.y0;
                at.along = {at.along.lo - by, at.along.hi - by};
                const auto [was, isNew] = seat.try_emplace(t->job, at);
                if (!isNew && (was->second.side != at.side ||
                               std::max(was->second.along.hi, at.along.hi) -
                                       std::min(was->second.along.lo, at.along.lo) >
                                   Length::inches(25)))
                    broken(who, " sits and walks: ", t->id);
            }
        }
    }

    void places() {
        for (std::size_t i = 0; i < plan_.tasks.size(); ++i)
            for (std::size_t j = i + 1; j < plan_.tasks.size(); ++j) {
                const Task &a = plan_.tasks[i], &b = plan_.tasks[j];
                if (b.start >= a.end)
                    break;
                if (a.job == b.job && !a.places.empty() && !b.places.empty() &&
                    a.people != b.people && a.places.front().side == b.places.front().side &&
                    a.places.front().along.overlaps(b.places.front().along))
                    broken(a.id, " and ", b.id, " are worked from one place");
            }
    }

    void irons() {
        std::vector<std::pair<Seconds, int>> changes;
        for (const Task& t : plan_.tasks)
            if (t.kind == TaskKind::press) {
                changes.emplace_back(t.start, 1);
                changes.emplace_back(t.end, -1);
            }
        std::ranges::sort(changes);
        int now = 0;
        for (const auto& [at, by] : changes)
            if ((now += by) > session_.setting.room.irons) {
                broken("more irons than there are");
                break;
            }
    }

    void breaks() {
        for (const PlannedBreak& b : plan_.breaks)
            for (const Task& t : plan_.tasks)
                // What cools is nobody's work.
                if (b.people.empty() && !t.people.empty() && t.start < b.end && b.start < t.end &&
                    !hoursShort_)
                    broken(t.id, " goes on in the break at ", b.start.count());
    }

    void surfaces() {
        for (std::size_t q = 0; q < quilts_.size(); ++q)
            for (std::size_t r = q + 1; r < quilts_.size(); ++r) {
                if (quilts_[q].surface.number != quilts_[r].surface.number)
                    continue;
                Seconds last{}, first{1'000'000'000};
                for (const Task& t : plan_.tasks) {
                    if (t.job == int(q))
                        last = std::max(last, t.end);
                    if (t.job == int(r))
                        first = std::min(first, t.start);
                }
                if (first < last)
                    broken("quilt ", r + 1, " begins while the table is taken");
            }
    }

    const Session& session_;
    const std::vector<QuiltPlan>& quilts_;
    const CrewPlan& plan_;
    std::vector<Helper> helpers_;
    bool stopped_ = false;    ///< the plan says that there is no good one
    bool hoursShort_ = false; ///< and that people would have to stay longer
    std::vector<std::string> out_;
};

} // namespace

std::vector<std::string> brokenRules(const Session& session, const std::vector<QuiltPlan>& quilts,
                                     const CrewPlan& plan) {
    return Oracle{session, quilts, plan}.run();
}

} // namespace bastewright::made
