#include "checker/ways/seen_way.h"

#include <algorithm>
#include <array>

namespace bastewright::check {

std::span<const SeenWay> seenWays() {
    static const std::array all{seenPins(), seenDots()};
    return all;
}

const SeenWay& seenWay(const Job& job) {
    return *std::ranges::find(seenWays(), job.basting.with, &SeenWay::with);
}

const SeenTask* seenTask(TaskKind kind) {
    for (const SeenWay& way : seenWays())
        if (const auto at = std::ranges::find(way.tasks, kind, &SeenTask::kind);
            at != way.tasks.end())
            return &*at;
    return nullptr;
}

} // namespace bastewright::check
