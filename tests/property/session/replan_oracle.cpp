#include "property/session/replan_oracle.h"

#include <algorithm>
#include <cmath>

namespace bastewright::made {
namespace {

bool isZoneTask(const Task& t) {
    return !t.zone.empty();
}

int seconds(std::chrono::minutes m) {
    return static_cast<int>(m.count() * 60);
}

// From the session's start; the tests keep everybody within one day.
int fromOf(const Helper& h, ClockTime start) {
    return h.from ? seconds(h.from->sinceMidnight - start.sinceMidnight) : -1;
}
int untilOf(const Helper& h, ClockTime start) {
    return h.until ? seconds(h.until->sinceMidnight - start.sinceMidnight) : 1'000'000'000;
}

double beyond(double v, double lo, double hi) {
    return v < lo ? lo - v : v > hi ? v - hi : 0;
}

// Greatest distance from a standing interval to a corner of the box of a zone's points.
double worstReach(const Zone& zone, const Rect& table, const StandingPlace& place) {
    double worst = 0;
    Rect box{zone.points[0].at.x, zone.points[0].at.y, zone.points[0].at.x, zone.points[0].at.y};
    for (const auto& p : zone.points)
        box = {std::min(box.x0, p.at.x), std::min(box.y0, p.at.y), std::max(box.x1, p.at.x),
               std::max(box.y1, p.at.y)};
    for (const Length x : {box.x0, box.x1})
        for (const Length y : {box.y0, box.y1}) {
            const bool across = isAcross(place.side);
            const double along =
                beyond((across ? x : y).in(), place.along.lo.in(), place.along.hi.in());
            const Length edge = place.side == Side::head   ? table.y0
                                : place.side == Side::foot ? table.y1
                                : place.side == Side::left ? table.x0
                                                           : table.x1;
            worst = std::max(worst, std::hypot(along, std::abs(((across ? y : x) - edge).in())));
        }
    return worst;
}

class Checking {
public:
    Checking(const Session& session, const Plan& before, const Plan& after, const LiveState& state,
             const ReplanOptions& options)
        : session_{session}
        , before_{before}
        , after_{after}
        , state_{state}
        , options_{options}
        , held_{workedOn(before, state, options.now)} {}

    std::vector<std::string> all() {
        kept();
        for (const auto& t : after_.tasks)
            if (!state_.doneTasks.contains(t.id))
                left(t);
        together();
        if (after_.finishBound > after_.finish)
            say("the bound lies beyond the finish");
        return std::move(out_);
    }

private:
    void say(const std::string& what) { out_.push_back(what); }

    const Task* find(const Plan& plan, const std::string& id) const {
        const auto it = std::ranges::find(plan.tasks, id, &Task::id);
        return it == plan.tasks.end() ? nullptr : &*it;
    }

    // Their places are given, not planned. More than the begun work may count as in hand.
    bool inHand(const Task& t) const {
        return t.start == options_.now && t.places == find(before_, t.id)->places;
    }

    void kept() {
        if (after_.quilts != before_.quilts)
            say("the quilts' plans changed");
        if (after_.tasks.size() != before_.tasks.size())
            say("tasks came or went");
        for (const auto& t : before_.tasks) {
            const Task* now = find(after_, t.id);
            if (!now)
                say(t.id + " is lost");
            else if (state_.doneTasks.contains(t.id) &&
                     (now->people != t.people || now->places != t.places ||
                      now->end > options_.now))
                say(t.id + " is done and was changed");
            else if (now->kind != t.kind || now->after != t.after || now->zone != t.zone)
                say(t.id + " became something else");
        }
        for (const Task* held : held_)
            if (const Task* t = find(after_, held->id);
                t && (t->people != held->people || t->start != options_.now))
                say(held->id + " was in hand and was taken away");
    }

    void left(const Task& t) {
        if (t.start < options_.now)
            say(t.id + " starts in the past");
        for (const auto& id : t.after)
            if (const Task* b = find(after_, id); b && b->end > t.start)
                say(t.id + " starts before " + id + " has ended");
        for (const auto& who : t.people)
            person(t, who);
        if (isZoneTask(t) && !t.people.empty() && !inHand(t))
            place(t);
    }

    void person(const Task& t, const std::string& who) {
        const auto& helpers = session_.setting.helpers;
        const auto h = std::ranges::find(helpers, who, &Helper::name);
        if (h == helpers.end())
            return say(t.id + " names " + who + ", who is nobody");
        const auto start = session_.setting.start;
        if (!state_.present.contains(who) &&
            (fromOf(*h, start) <= options_.now.count() || t.start.count() < fromOf(*h, start)))
            say(t.id + " is with " + who + ", who is not there");
        const bool hoursSaid = std::ranges::any_of(after_.findings, [&who](const Finding& f) {
            return f.text.english().find("past the hours of " + who) != std::string::npos;
        });
        if (t.end.count() > untilOf(*h, start) && untilOf(*h, start) > options_.now.count() &&
            !hoursSaid)
            say(t.id + " keeps " + who + " beyond their hours, unsaid");
        if (t.kind == TaskKind::closePins && !h->closes)
            say(who + " does not close pins");
        if (t.kind == TaskKind::press && !h->irons)
            say(who + " may not iron");
    }

    /// A zone as far as a task is for it: of a shared one the points nearest to the share's side.
    static Zone partOf(Zone zone, const Task& t) {
        if (!t.share)
            return zone;
        std::ranges::sort(zone.points, {}, [&](const PlacedPoint& p) {
            switch (t.share->side) {
            case Side::left:
                return std::pair(p.at.x, p.at.y);
            case Side::right:
                return std::pair(-p.at.x, -p.at.y);
            case Side::head:
                return std::pair(p.at.y, p.at.x);
            default:
                return std::pair(-p.at.y, -p.at.x);
            }
        });
        zone.points.resize(std::min(zone.points.size(), static_cast<std::size_t>(t.share->points)));
        return zone;
    }

    void place(const Task& t) {
        const auto& quilt = after_.quilts[static_cast<std::size_t>(t.job)];
        const auto& pass = *std::ranges::find(quilt.passes, t.pass, &Pass::number);
        const auto zone = partOf(*std::ranges::find(quilt.zones, t.zone, &Zone::id), t);
        if (t.places.size() != 1)
            return say(t.id + " has no place to stand");
        const auto& p = t.places.front();
        if (std::ranges::find(quilt.surface.closed, p.side) != quilt.surface.closed.end())
            say(t.id + " stands at a wall");
        const auto edge = isAcross(p.side) ? pass.table.x() : pass.table.y();
        if (!edge.contains(p.along))
            say(t.id + " stands beyond the table");
        const auto& h =
            *std::ranges::find(session_.setting.helpers, t.people.front(), &Helper::name);
        if (!quilt.surface.floor && worstReach(zone, pass.table, p) > h.reach.in() + 1e-6)
            say(t.id + " is out of reach");
    }

    void together() {
        const auto& tasks = after_.tasks;
        std::vector<const Task*> rest;
        for (const auto& t : tasks)
            if (!state_.doneTasks.contains(t.id))
                rest.push_back(&t);
        for (std::size_t i = 0; i < rest.size(); ++i) {
            int irons = 0;
            for (std::size_t k = 0; k < rest.size(); ++k) {
                const bool atOnce = rest[k]->start < rest[i]->end && rest[i]->start < rest[k]->end;
                irons += rest[k]->kind == TaskKind::press && !rest[k]->people.empty() &&
                         rest[k]->start <= rest[i]->start && rest[i]->start < rest[k]->end;
                if (k <= i || !atOnce)
                    continue;
                for (const auto& who : rest[i]->people)
                    if (std::ranges::find(rest[k]->people, who) != rest[k]->people.end())
                        say(who + " is in " + rest[i]->id + " and " + rest[k]->id + " at once");
                crowded(*rest[i], *rest[k]);
            }
            if (rest[i]->kind == TaskKind::press && irons > session_.setting.room.irons)
                say("more irons than there are at " + rest[i]->id);
        }
    }

    // Where two have work in hand they stand where they stand.
    void crowded(const Task& a, const Task& b) {
        if (a.places.empty() || b.places.empty() || a.job != b.job || (inHand(a) && inHand(b)))
            return;
        if (a.places[0].side == b.places[0].side && a.places[0].along.overlaps(b.places[0].along) &&
            !inHand(a) && !inHand(b))
            say(a.id + " and " + b.id + " stand on one another's feet");
    }

    const Session& session_;
    const Plan &before_, &after_;
    const LiveState& state_;
    const ReplanOptions& options_;
    std::vector<const Task*> held_;
    std::vector<std::string> out_;
};

} // namespace

std::vector<const Task*> workedOn(const Plan& before, const LiveState& state, Seconds now) {
    std::vector<const Task*> out;
    for (const auto& t : before.tasks) {
        const auto firstOf = [&](const std::string& who) {
            const auto next = nextTasks(before, state, who);
            return state.present.contains(who) && !next.empty() && next[0].id == t.id;
        };
        if (!state.doneTasks.contains(t.id) && t.start < now && !t.people.empty() &&
            mayStart(t, state) && std::ranges::all_of(t.people, firstOf))
            out.push_back(&t);
    }
    return out;
}

std::vector<std::string> brokenByReplan(const Session& session, const Plan& before,
                                        const Plan& after, const LiveState& state,
                                        const ReplanOptions& options) {
    return Checking{session, before, after, state, options}.all();
}

} // namespace bastewright::made
