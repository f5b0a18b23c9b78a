#include "checker/ways/seen_way.h"

#include "checker/view.h"

#include <algorithm>
#include <array>

namespace bastewright::check {

std::span<const SeenWay> seenWays() {
    static const std::array all{seenPins(), seenDots(), seenThread(), seenSpray()};
    return all;
}

const SeenWay& seenWay(const Job& job) {
    return *std::ranges::find(seenWays(), job.basting.with, &SeenWay::with);
}

std::int64_t pinsOf(const QuiltView& quilt) {
    std::int64_t out = 0;
    if (seenWay(quilt.job).fromBox)
        for (const Zone& z : quilt.quilt.zones)
            out += std::ssize(z.points);
    return out;
}

std::int64_t pinsOf(const PlanView& plan) {
    std::int64_t out = 0;
    for (const QuiltView& quilt : plan.quilts)
        out += pinsOf(quilt);
    return out;
}

const SeenTask* seenTask(TaskKind kind) {
    for (const SeenWay& way : seenWays())
        if (const auto at = std::ranges::find(way.tasks, kind, &SeenTask::kind);
            at != way.tasks.end())
            return &*at;
    return nullptr;
}

} // namespace bastewright::check
