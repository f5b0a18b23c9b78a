#include "session/private/change_words.h"

#include "plan/find.h"
#include "session/pins.h"
#include "session/private/plan_index.h"
#include "ways/way.h"

#include <algorithm>

namespace bastewright {
namespace {

/// True for the step of a zone at which its pins leave the box.
bool takesFromBox(TaskKind kind) {
    return isFirstWork(kind) && wayWith(kind).fromBox;
}

Sentence from(Side side, Sentence work) {
    switch (side) {
    case Side::head:
        return core::says("%1 from the head side.", std::move(work));
    case Side::foot:
        return core::says("%1 from the foot side.", std::move(work));
    case Side::left:
        return core::says("%1 from the left side.", std::move(work));
    case Side::right:
        break;
    }
    return core::says("%1 from the right side.", std::move(work));
}

} // namespace

Sentences howTaken(const Plan& plan, const LiveState& state, int job, const std::string& zone,
                   const std::string& person, ClockTime start) {
    Sentences out;
    for (const auto& t : plan.tasks) {
        if (t.job != job || t.zone != zone || state.doneTasks.contains(t.id))
            continue;
        const auto own = std::ranges::find(t.people, person) - t.people.begin();
        if (static_cast<std::size_t>(own) == t.people.size())
            continue;
        const Sentence work =
            zoneStepWords(t.kind).at(person, std::string{zoneName(t.zone)}, after(start, t.start));
        out.push_back(static_cast<std::size_t>(own) < t.places.size()
                          ? from(t.places[static_cast<std::size_t>(own)].side, work)
                          : core::says("%1.", work));
    }
    return out;
}

Sentences howFarPinsGo(const Plan& plan, const Setting& setting, const LiveState& state,
                       ClockTime start) {
    const auto pins = countPins(plan, setting, state);
    if (pins.shortBy() == 0)
        return {core::says("The %1 pins in the box do for all that is left.", pins.left)};
    std::int64_t left = pins.left;
    Sentences out;
    for (const auto& t : plan.tasks) {
        if (!takesFromBox(t.kind) || state.doneTasks.contains(t.id))
            continue;
        const Zone* zone = findZone(plan.quilts[static_cast<std::size_t>(t.job)], t.zone);
        if (!zone)
            continue;
        left -= static_cast<std::int64_t>(zone->points.size());
        if (left >= 0)
            continue;
        out.push_back(
            core::says("The %1 pins in the box last until zone %2, at %3: fetch %4 more by then.",
                       std::max<std::int64_t>(0, pins.left), std::string{zoneName(t.zone)},
                       after(start, t.start), pins.shortBy()));
        break;
    }
    return out;
}

Sentence finishedWhereItLies(const Plan& plan, int job, int pass) {
    if (plan.quilts.size() == 1)
        return core::says("Pass %1 is finished where it lies; keep its tables until then.", pass);
    return core::says("Pass %1 of %2 is finished where it lies; keep its tables until then.", pass,
                      quiltNamed(plan, job));
}

Sentence quiltNamed(const Plan& plan, int job) {
    const std::string& name = plan.quilts[static_cast<std::size_t>(job)].name;
    return name.empty() ? core::says("quilt %1", job + 1) : Sentence{name};
}

Sentence howTablesMatter(int more) {
    return more > 0 ? core::says("The passes stay as they are: with it they would not be fewer.")
                    : core::says("The quilt lies on other tables: the passes stay as they are.");
}

Sentences passesChanged(const Plan& before, const Plan& after, const WhatIsLeft& was,
                        const WhatIsLeft& is) {
    Sentences out;
    for (std::size_t q = 0; q < after.quilts.size(); ++q) {
        const SurfacePlan& surface = after.quilts[q].surface;
        if (surface == before.quilts[q].surface)
            continue;
        out.push_back(after.quilts.size() == 1
                          ? core::says("What is left is basted on %1.", surface.name)
                          : core::says("What is left of %1 is basted on %2.",
                                       quiltNamed(after, static_cast<int>(q)), surface.name));
    }
    if (is.passes != was.passes)
        out.push_back(core::says("%1 passes are left instead of %2.", is.passes, was.passes));
    if (is.pins != was.pins)
        out.push_back(
            core::says("%1 pins are still to be placed instead of %2.", is.pins, was.pins));
    out.push_back(core::says("Zones are cut anew: look at who has which before going on."));
    for (const auto& f : after.findings)
        if (std::ranges::find(before.findings, f) == before.findings.end())
            out.push_back(f.text);
    return out;
}

Seconds elapsedOf(const LiveState& state) {
    return Seconds{std::max<std::int64_t>(0, state.lastMs - state.startedMs) / 1000};
}

namespace {

void setAside(const Plan& plan, LiveState& state, int job, const std::string& zone) {
    state.setAside.insert({job, zone});
    for (const auto& t : plan.tasks)
        if (t.job == job && t.zone == zone)
            state.doneTasks.insert(t.id);
}

} // namespace

Sentence setAsideRest(const Plan& plan, LiveState& state, int job, int pass) {
    if (state.released.contains({job, pass}))
        return core::says("Pass %1 is released already.", pass);
    std::vector<std::string> open, waiting;
    const PlanIndex index{plan};
    for (const auto& [key, live] : state.zones) {
        const Zone* zone = index.zone(key.first, key.second);
        if (key.first != job || !zone || zone->pass != pass || live.done() ||
            state.setAside.contains(key))
            continue;
        (live.state == ZoneState::waiting ? waiting : open).push_back(key.second);
    }
    for (auto& zone : open)
        zone = zoneName(zone);
    if (!open.empty())
        return core::says("Close what is open first: %1.", core::listed(open));
    if (waiting.empty())
        return core::says("Nothing of pass %1 is left to be left out.", pass);
    for (const auto& zone : waiting)
        setAside(plan, state, job, zone);
    return {};
}

Sentence setAsideZone(const Plan& plan, LiveState& state, int job, const std::string& zone) {
    const auto live = state.zones.find({job, zone});
    const std::string name{zoneName(zone)};
    const Zone* planned = static_cast<std::size_t>(job) < plan.quilts.size()
                              ? findZone(plan.quilts[static_cast<std::size_t>(job)], zone)
                              : nullptr;
    if (!planned || live == state.zones.end())
        return core::says("The plan has no zone %1.", name);
    if (live->second.state != ZoneState::waiting || state.setAside.contains({job, zone}))
        return core::says("Zone %1 is begun or left out already.", name);
    if (planned->pass < state.currentPass[static_cast<std::size_t>(job)] ||
        state.released.contains({job, planned->pass}))
        return core::says("Pass %1 is released already.", planned->pass);
    setAside(plan, state, job, zone);
    return {};
}

} // namespace bastewright
