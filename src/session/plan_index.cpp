#include "session/private/plan_index.h"

#include "session/ticks.h"

#include <algorithm>

namespace bastewright {

PlanIndex::PlanIndex(const Plan& plan)
    : plan_{plan}
    , quilts_(plan.quilts.size()) {
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        for (const auto& z : plan.quilts[q].zones)
            quilts_[q].zones.emplace(z.id, &z);
    for (const auto& t : plan.tasks)
        tasks_.emplace(t.id, &t);
    findFromBack();
    for (const auto& t : plan.tasks) {
        if (t.job < 0 || t.job >= quilts())
            continue;
        if (const Zone* at = zone(t.job, t.zone); isOfZone(t.kind) && !(at && at->with))
            quilts_[static_cast<std::size_t>(t.job)].way = &wayWith(t.kind);
        if (!t.zone.empty())
            zoneTasks_[{t.job, t.zone, t.kind, fromBack(t)}].push_back(&t);
    }
}

// By what waits for the turning, near and far; by their starts they may lie before it, where what
// is done was done sooner than planned.
void PlanIndex::findFromBack() {
    std::vector<const Task*> todo;
    for (const auto& t : plan_.tasks)
        if (t.kind == TaskKind::turnOver)
            todo.push_back(&t);
    if (todo.empty())
        return;
    std::unordered_multimap<std::string_view, const Task*> followers;
    for (const auto& t : plan_.tasks)
        for (const auto& id : t.after)
            followers.emplace(id, &t);
    while (!todo.empty()) {
        const Task* at = todo.back();
        todo.pop_back();
        for (auto [f, end] = followers.equal_range(at->id); f != end; ++f)
            if (f->second->job == at->job && fromBack_.insert(f->second).second)
                todo.push_back(f->second);
    }
}

const Task* PlanIndex::task(std::string_view id) const {
    const auto it = tasks_.find(id);
    return it == tasks_.end() ? nullptr : it->second;
}

const Zone* PlanIndex::zone(int job, std::string_view id) const {
    if (job < 0 || job >= quilts())
        return nullptr;
    const auto& zones = quilts_[static_cast<std::size_t>(job)].zones;
    const auto it = zones.find(id);
    return it == zones.end() ? nullptr : it->second;
}

int PlanIndex::lastPass(int job) const {
    int last = 1;
    for (const auto& p : plan_.quilts[static_cast<std::size_t>(job)].passes)
        last = std::max(last, p.number);
    return last;
}

std::span<const Task* const> PlanIndex::zoneTasks(int job, std::string_view zone, TaskKind kind,
                                                  bool fromBack) const {
    const auto it = zoneTasks_.find({job, zone, kind, fromBack});
    if (it == zoneTasks_.end())
        return {};
    return it->second;
}

std::span<const Task* const> PlanIndex::ticked(int job, std::string_view zone, Tick tick) const {
    const auto work = workAt(tick, way(job, zone));
    if (!work)
        return {};
    return zoneTasks(job, zone, *work, tick == Tick::pressed);
}

std::vector<const Task*> PlanIndex::before(std::span<const Task* const> tasks) const {
    std::set<const Task*> seen;
    std::vector<const Task*> todo{tasks.begin(), tasks.end()};
    while (!todo.empty()) {
        const Task* at = todo.back();
        todo.pop_back();
        for (const auto& id : at->after)
            if (const Task* t = task(id); t && t->job == at->job && seen.insert(t).second)
                todo.push_back(t);
    }
    std::vector<const Task*> out{seen.begin(), seen.end()};
    std::ranges::sort(out, {}, [](const Task* t) { return std::pair{t->start, t->id}; });
    return out;
}

} // namespace bastewright
