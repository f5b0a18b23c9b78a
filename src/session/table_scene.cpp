#include "session/table_scene.h"

#include "plan/find.h"
#include "planners/crew/hands.h"
#include "session/private/plan_index.h"
#include "session/private/standing_room.h"
#include "session/ticks.h"

#include <algorithm>
#include <map>

namespace bastewright {
namespace {

double shareOf(const Task& task, Seconds at) {
    if (at >= task.end)
        return 1;
    if (at <= task.start)
        return 0;
    return double((at - task.start).count()) / double((task.end - task.start).count());
}

bool isGoing(const Task& task, Seconds at) {
    return task.start <= at && at < task.end;
}

// How far a zone is once such work is done.
ZoneState after(TaskKind kind, bool fromBack) {
    return stateAfter(fromBack ? Tick::pressed : tickAt(kind));
}

} // namespace

struct TableScenes::Inside {
    const Plan& plan;
    PlanIndex index;
    std::vector<std::string> names;
    std::vector<crew::Hand> hours;
    std::vector<std::vector<const Task*>> ofPerson; // by start
    /// By quilt: its tasks of whole passes, and for each zone its work, one group for each kind.
    struct Quilt {
        std::vector<const Task*> steps, tasks;
        std::vector<std::vector<std::vector<const Task*>>> zones;
    };
    std::vector<Quilt> quilts;

    Inside(const Plan& p, const std::vector<Helper>& helpers, ClockTime start)
        : plan{p}
        , index{p}
        , ofPerson(helpers.size())
        , quilts(p.quilts.size()) {
        for (const auto& helper : helpers) {
            names.push_back(helper.name);
            hours.push_back(crew::handOf(helper, start));
        }
        for (const auto& t : p.tasks) {
            for (const auto& who : t.people)
                if (const auto at = std::ranges::find(names, who); at != names.end())
                    ofPerson[static_cast<std::size_t>(at - names.begin())].push_back(&t);
            if (t.job < 0 || t.job >= index.quilts())
                continue;
            auto& quilt = quilts[static_cast<std::size_t>(t.job)];
            quilt.tasks.push_back(&t);
            if (t.zone.empty())
                quilt.steps.push_back(&t);
        }
        for (std::size_t q = 0; q < quilts.size(); ++q)
            for (const auto& zone : p.quilts[q].zones)
                quilts[q].zones.push_back(workOn(static_cast<int>(q), zone.id));
    }

    std::vector<std::vector<const Task*>> workOn(int job, const std::string& zone) const {
        std::vector<std::vector<const Task*>> out;
        for (const TaskKind kind : index.way(job, zone).zoneWork())
            for (const bool fromBack : {false, true})
                if (const auto tasks = index.zoneTasks(job, zone, kind, fromBack); !tasks.empty())
                    out.emplace_back(tasks.begin(), tasks.end());
        return out;
    }

    ZoneScene zoneAt(const std::vector<std::vector<const Task*>>& work, const Zone& zone,
                     Seconds at) const {
        ZoneScene out;
        if (zone.points.empty())
            out.state = ZoneState::closed;
        for (const auto& group : work) {
            bool done = true;
            for (const Task* t : group) {
                done = done && t->end <= at;
                if (isGoing(*t, at)) {
                    out.work = t;
                    out.share = std::max(out.share, shareOf(*t, at));
                }
            }
            if (done)
                out.state =
                    std::max(out.state, after(group.front()->kind, index.fromBack(*group.front())));
        }
        return out;
    }

    void lay(TableScene& scene, const Quilt& quilt, Seconds at) const {
        using enum TaskKind;
        // A plan of what is left may begin with the layers lying there already.
        bool lays[3] = {false, false, false};
        double* layers[3] = {&scene.backing, &scene.batting, &scene.top};
        const auto laid = [&](std::size_t k, const Task& t) {
            lays[k] = true;
            *layers[k] = std::max(*layers[k], shareOf(t, at));
        };
        Seconds lastFold{-1};
        for (const Task* t : quilt.steps) {
            if (t->kind == layBacking)
                laid(0, *t);
            else if (t->kind == layBatting)
                laid(1, *t);
            else if (t->kind == layTop)
                laid(2, *t);
            else if (t->kind == shift && t->start <= at && t->pass >= scene.pass) {
                scene.pass = t->pass;
                scene.moved = shareOf(*t, at);
            } else if ((t->kind == foldBack || t->kind == foldForward) && t->start <= at &&
                       t->start > lastFold) {
                lastFold = t->start;
                scene.folded = t->kind == foldBack ? shareOf(*t, at) : 1 - shareOf(*t, at);
            } else if (t->kind == turnOver)
                scene.turned = shareOf(*t, at);
        }
        for (std::size_t k = 0; k < 3; ++k)
            if (!lays[k])
                *layers[k] = 1;
    }

    void placePeople(TableScene& scene, int job, Seconds at) const {
        const auto& quilt = plan.quilts[static_cast<std::size_t>(job)];
        const Pass* pass = findPass(quilt, scene.pass);
        std::vector<StandingPlace> taken;
        std::vector<std::size_t> team, idle;
        for (std::size_t p = 0; p < names.size(); ++p) {
            auto& person = scene.people[p];
            const auto now = static_cast<int>(at.count());
            const auto going =
                std::ranges::find_if(ofPerson[p], [at](const Task* t) { return isGoing(*t, at); });
            if (going == ofPerson[p].end()) {
                const bool away = now < hours[p].from || now >= hours[p].until;
                person.where = away ? PersonScene::Where::away : PersonScene::Where::waiting;
                if (!away)
                    idle.push_back(p);
                continue;
            }
            person.task = *going;
            person.where =
                (*going)->job == job ? PersonScene::Where::atWork : PersonScene::Where::elsewhere;
            if (person.where == PersonScene::Where::elsewhere)
                continue;
            const auto own =
                std::ranges::find((*going)->people, names[p]) - (*going)->people.begin();
            const auto& places = (*going)->places;
            if (static_cast<std::size_t>(own) < places.size()) {
                person.place = places[static_cast<std::size_t>(own)];
                taken.push_back(*person.place);
            } else {
                team.push_back(p);
            }
        }
        if (!pass)
            return;
        const auto spread = roundTheTable(*pass, quilt.surface, team.size(), taken);
        for (std::size_t k = 0; k < team.size() && k < spread.size(); ++k) {
            scene.people[team[k]].place = spread[k];
            taken.push_back(spread[k]);
        }
        for (const std::size_t p : idle)
            if (const auto last = lastPlace(p, job, scene.pass, at);
                last &&
                std::ranges::none_of(taken, [&](const auto& t) { return inTheWay(t, *last); })) {
                scene.people[p].place = last;
                taken.push_back(*last);
            }
    }

    // Where somebody stood last for this pass of this quilt, if that is the last they did.
    std::optional<StandingPlace> lastPlace(std::size_t person, int job, int pass,
                                           Seconds at) const {
        const auto& tasks = ofPerson[person];
        const auto next =
            std::ranges::find_if(tasks, [at](const Task* t) { return t->start > at; });
        if (next == tasks.begin())
            return {};
        const Task& last = **std::prev(next);
        return last.job == job && last.pass == pass && !last.places.empty()
                   ? std::optional{last.places.front()}
                   : std::nullopt;
    }
};

TableScenes::TableScenes(const Plan& plan, const std::vector<Helper>& helpers, ClockTime start)
    : inside_{std::make_unique<Inside>(plan, helpers, start)} {}
TableScenes::~TableScenes() = default;
TableScenes::TableScenes(TableScenes&&) noexcept = default;
TableScenes& TableScenes::operator=(TableScenes&&) noexcept = default;

TableScene TableScenes::at(int job, Seconds moment) const {
    const auto& in = *inside_;
    const auto& quilt = in.quilts[static_cast<std::size_t>(job)];
    const auto& planned = in.plan.quilts[static_cast<std::size_t>(job)];
    const Seconds at = std::clamp(moment, Seconds{}, std::max(Seconds{}, in.plan.finish));
    TableScene out;
    out.people.resize(in.names.size());
    in.lay(out, quilt, at);
    for (std::size_t z = 0; z < planned.zones.size(); ++z)
        out.zones.push_back(in.zoneAt(quilt.zones[z], planned.zones[z], at));
    for (const Task* t : quilt.tasks)
        if (isGoing(*t, at))
            out.going.push_back(t);
    in.placePeople(out, job, at);
    return out;
}

std::vector<Seconds> TableScenes::passBegins(int job) const {
    const auto& quilt = inside_->quilts[static_cast<std::size_t>(job)];
    std::map<int, Seconds> begins;
    for (const Task* t : quilt.tasks)
        if (t->kind != TaskKind::handOver && t->kind != TaskKind::turnOver) {
            const auto [at, isNew] = begins.try_emplace(t->pass, t->start);
            if (!isNew)
                at->second = std::min(at->second, t->start);
        }
    std::vector<Seconds> out;
    for (const auto& [pass, at] : begins)
        out.push_back(at);
    return out;
}

} // namespace bastewright
