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
