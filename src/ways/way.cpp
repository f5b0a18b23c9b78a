#include "ways/way.h"

#include "ways/dots/dots.h"
#include "ways/pins/pins.h"
#include "ways/spray/spray.h"
#include "ways/thread/thread.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace bastewright {

std::span<const Way> allWays() {
    static const std::array all{ways::pins(), ways::dots(), ways::thread(), ways::spray()};
    return all;
}

const Way& wayOf(Basting::With with) {
    const Way& way = allWays()[static_cast<std::size_t>(with)];
    assert(way.with == with);
    return way;
}

const Way& wayOf(const Job& job) {
    return wayOf(job.basting.with);
}

const Way& wayOf(const Job& job, const Zone& zone) {
    return wayOf(zone.with.value_or(job.basting.with));
}

void addWay(std::vector<const Way*>& to, const Job& job, const Zone& zone) {
    const Way &own = wayOf(job), &way = wayOf(job, zone);
    if (zone.points.empty() || std::ranges::find(to, &way) != to.end())
        return;
    to.insert(&way == &own ? to.end() : std::ranges::find(to, &own), &way);
}

std::vector<const Way*> waysOf(const Job& job, std::span<const Zone> zones,
                               std::optional<int> pass) {
    std::vector<const Way*> out;
    for (const Zone& z : zones)
        if (!pass || z.pass == *pass)
            addWay(out, job, z);
    if (out.empty())
        out.push_back(&wayOf(job));
    return out;
}

std::vector<const WayStep*> stepsOf(std::span<const Way* const> ways) {
    std::vector<const WayStep*> out;
    for (const Way* way : ways)
        for (const WayStep& step : way->steps)
            if (std::ranges::find(out, step.kind, [](const WayStep* s) { return s->kind; }) ==
                out.end())
                out.push_back(&step);
    return out;
}

std::vector<Call> callsOf(std::span<const Way* const> ways) {
    std::vector<Call> out;
    for (const Way* way : ways)
        for (const Call call : way->calls)
            if (std::ranges::find(out, call) == out.end())
                out.push_back(call);
    std::ranges::sort(out);
    return out;
}

std::int64_t pointsOf(const Job& job, std::span<const Zone> zones, const Way& way,
                      std::optional<int> pass) {
    std::int64_t out = 0;
    for (const Zone& z : zones)
        if (&wayOf(job, z) == &way && (!pass || z.pass == *pass))
            out += std::ssize(z.points);
    return out;
}

namespace {

/// What the quilt asks for where its own points run out; null where it asks for nothing.
const Way* askedWhereShort(const Job& job) {
    const Basting::With with = job.basting.whereShort;
    const Way& own = wayOf(job);
    return own.fromBox && own.instead == with ? &wayOf(with) : nullptr;
}

} // namespace

Findings againstStandIn(const Job& job, const Session& session) {
    const Way* way = askedWhereShort(job);
    if (way == nullptr)
        return {};
    Findings out = way->against(job, session);
    for (Finding& f : out)
        f.field = "/basting/where_short";
    const Setting& s = session.setting;
    if ((way->irons && s.room.irons < 1) ||
        (!s.helpers.empty() && std::ranges::none_of(s.helpers, way->finishes)))
        out.push_back(way->unfinished(
            {.setting = s, .helpers = s.helpers, .quilt = job.name, .pass = 1, .zones = {}}));
    for (Finding& f :
         out) // nothing is done of it: the plan stays with what the quilt is basted with
        f.level = std::min(f.level, Finding::Level::warn);
    return out;
}

const Way* standInOf(const Job& job, const Session& session) {
    const Way* way = askedWhereShort(job);
    return way != nullptr && againstStandIn(job, session).empty() ? way : nullptr;
}

std::vector<TaskKind> Way::zoneWork() const {
    std::vector<TaskKind> out;
    for (const WayStep& step : steps)
        if (step.ofZones())
            out.push_back(step.kind);
    return out;
}

TaskKind Way::firstWork() const {
    return std::ranges::find_if(steps, &WayStep::ofZones)->kind;
}

TaskKind Way::lastWork() const {
    return std::find_if(steps.rbegin(), steps.rend(), [](const WayStep& s) { return s.ofZones(); })
        ->kind;
}

namespace {

const WayStep* findStep(const Way& way, TaskKind kind) {
    const auto at = std::ranges::find_if(
        way.steps, [&](const WayStep& s) { return s.kind == kind && s.ofZones(); });
    return at == way.steps.end() ? nullptr : &*at;
}

} // namespace

const Way& wayWith(TaskKind zoneWork) {
    const auto at = std::ranges::find_if(
        allWays(), [&](const Way& way) { return findStep(way, zoneWork) != nullptr; });
    assert(at != allWays().end());
    return *at;
}

const WayStep& zoneStep(TaskKind kind) {
    // Asked many times over.
    static const auto byKind = [] {
        std::array<const WayStep*, std::size_t(TaskKind::handOver) + 1> out{};
        for (const Way& way : allWays())
            for (const WayStep& step : way.steps)
                if (step.ofZones())
                    out[std::size_t(step.kind)] = &step;
        return out;
    }();
    const WayStep* step = byKind[std::size_t(kind)];
    assert(step != nullptr);
    return *step;
}

const WayStep* zoneStepAt(Call call) {
    for (const Way& way : allWays())
        for (const WayStep& step : way.steps)
            if (step.ofZones() && callOf(step.kind) == call)
                return &step;
    return nullptr;
}

bool isFirstWork(TaskKind kind) {
    return isOfZone(kind) && wayWith(kind).firstWork() == kind;
}

bool isLastWork(TaskKind kind) {
    return isOfZone(kind) && wayWith(kind).lastWork() == kind;
}

const StepWords& zoneStepWords(TaskKind kind) {
    return *zoneStep(kind).words;
}

} // namespace bastewright
