#include "session/private/open_work.h"

#include "session/private/fold.h"
#include "session/private/words.h"
#include "session/ticks.h"
#include "session/turns.h"

#include <algorithm>

namespace bastewright {

int orderOf(Call call) {
    // A pass begins with the quilt moved into it; else calls are listed as they come.
    return call == Call::setUp ? 0 : call == Call::move ? 1 : 1 + static_cast<int>(call);
}

bool OpenWork::isLast(const Task& task) const {
    return task.kind == TaskKind::handOver || task.kind == TaskKind::turnOver ||
           index_.fromBack(task);
}

bool OpenWork::lastReleased(int job) const {
    return state_.released.contains({job, index_.lastPass(job)});
}

bool OpenWork::onTable(const Task& task) const {
    return isLast(task) ? lastReleased(task.job) : task.pass <= pass(task.job);
}

std::vector<const Task*> OpenWork::open(int job) const {
    std::vector<const Task*> out;
    for (const auto& t : index_.plan().tasks)
        if (t.job == job && !isDone(t) && !isSetAside(t) && onTable(t))
            out.push_back(&t);
    return out;
}

std::vector<const Zone*> OpenWork::zonesOfNobody(int job) const {
    std::vector<const Zone*> out;
    for (const auto& z : index_.plan().quilts[static_cast<std::size_t>(job)].zones)
        if (const auto tick = nextTick(index_, state_, job, z.id);
            tick && tick != Tick::pressed && index_.ticked(job, z.id, *tick).empty())
            out.push_back(&z);
    return out;
}

bool OpenWork::ready(const Task& task) const {
    return onTable(task) && std::ranges::all_of(task.after, [this](const std::string& id) {
               const Task* t = index_.task(id);
               if (!t || isDone(*t))
                   return true;
               return isSetAside(*t) && ready(*t);
           });
}

void OpenWork::addPassBefore(int job, std::vector<const Task*>& seen, ComesFirst& out) const {
    const auto left = open(job);
    for (const Task* t : left)
        addBefore(*t, seen, out);
    if (left.empty() && !lastReleased(job))
        out.release = pass(job);
}

// Adds the task itself where nothing has to come before it, else what has to.
void OpenWork::addBefore(const Task& task, std::vector<const Task*>& seen, ComesFirst& out) const {
    if (std::ranges::find(seen, &task) != seen.end())
        return;
    seen.push_back(&task);
    bool blocked = false;
    for (const auto& id : task.after)
        if (const Task* t = index_.task(id); t && !isDone(*t)) {
            const auto before = out.tasks.size();
            addBefore(*t, seen, out);
            blocked = blocked || !isSetAside(*t) || out.tasks.size() > before;
        }
    if (blocked)
        return;
    if (!onTable(task))
        addPassBefore(task.job, seen, out);
    else if (!isSetAside(task))
        out.tasks.push_back(&task);
}

ComesFirst OpenWork::before(const Task& task) const {
    ComesFirst out;
    if (ready(task))
        return out;
    std::vector<const Task*> seen;
    addBefore(task, seen, out);
    std::erase(out.tasks, &task);
    std::ranges::sort(out.tasks, {}, [](const Task* t) { return std::pair{t->start, t->id}; });
    return out;
}

ComesFirst OpenWork::before(const Zone& zone, int job, Tick tick) const {
    ComesFirst out;
    std::vector<const Task*> seen;
    const int order = orderOf(callAt(tick, index_.way(job, zone)));
    for (const Task* t : open(job))
        if (t->zone.empty() && t->pass == zone.pass && orderOf(callOf(t->kind)) < order)
            addBefore(*t, seen, out);
    std::ranges::sort(out.tasks, {}, [](const Task* t) { return std::pair{t->start, t->id}; });
    return out;
}

// ------------------------------------------------------------------------------------ words

namespace {

std::vector<std::string> zonesOf(const ComesFirst& first) {
    std::vector<std::string> out;
    for (const Task* t : first.tasks)
        if (std::string zone{zoneName(t->zone)};
            !zone.empty() && std::ranges::find(out, zone) == out.end())
            out.push_back(std::move(zone));
    return out;
}

std::vector<std::string> peopleOf(const ComesFirst& first, const std::string& but = {}) {
    std::vector<std::string> out;
    for (const Task* t : first.tasks)
        for (const auto& who : t->people)
            if (who != but && std::ranges::find(out, who) == out.end())
                out.push_back(who);
    return out;
}

const Task* stepOf(const ComesFirst& first) {
    const auto at =
        std::ranges::find_if(first.tasks, [](const Task* t) { return t->zone.empty(); });
    return at == first.tasks.end() ? nullptr : *at;
}

} // namespace

Sentence notYet(const ComesFirst& first) {
    if (first.tasks.empty())
        return first.release ? core::says("Not yet: first pass %1 is released.", *first.release)
                             : Sentence{};
    const auto people = peopleOf(first);
    const Task* step = stepOf(first);
    const auto zones = zonesOf(first);
    const Sentence what =
        step
            ? spoken(step->kind)
            : zoneStepWords(first.tasks.front()->kind).done(core::listed(zones), zones.size() == 1);
    if (people.empty() || people.size() > 3)
        return core::says("Not yet: first %1.", what);
    return core::says("Not yet: first %1 (%2).", what, core::listed(people));
}

Sentence whatIsLeft(const ComesFirst& first) {
    const auto zones = zonesOf(first);
    if (zones.empty() || stepOf(first))
        return notYet(first);
    const auto people = peopleOf(first);
    if (zones.size() > 1)
        return core::says("%1 zones left: %2", zones.size(), core::listed(zones));
    if (people.empty())
        return core::says("1 zone left: %1", zones.front());
    return core::says("1 zone left: %1 (%2)", zones.front(), core::listed(people));
}

Sentence waitsFor(const ComesFirst& first, const std::string& person) {
    if (first.tasks.empty())
        return first.release ? core::says("waits until pass %1 is released", *first.release)
                             : Sentence{};
    const auto people = peopleOf(first, person);
    const Task* step = stepOf(first);
    const auto zones = zonesOf(first);
    const Sentence what = step ? spoken(step->kind) : core::listed(zones, 3);
    if (people.empty())
        return core::says("waits for %1", what);
    return core::says("waits for %1: %2", core::listed(people, 3), what);
}

} // namespace bastewright
