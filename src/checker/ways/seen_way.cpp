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

const SeenWay& seenWay(const Job& job, const Zone& zone) {
    return zone.with ? *std::ranges::find(seenWays(), *zone.with, &SeenWay::with) : seenWay(job);
}

std::vector<const SeenWay*> seenWays(const QuiltView& quilt, int pass) {
    std::vector<const SeenWay*> out;
    for (const Zone& z : quilt.quilt.zones)
        if (const SeenWay* way = &seenWay(quilt.job, z);
            z.pass == pass && !z.points.empty() && std::ranges::count(out, way) == 0)
            out.insert(way->with == quilt.job.basting.with ? out.begin() : out.end(), way);
    return out;
}

const SeenWay* askedWhereShort(const Job& job) {
    const Basting::With with = job.basting.whereShort;
    return seenWay(job).fromBox && with != job.basting.with
               ? &*std::ranges::find(seenWays(), with, &SeenWay::with)
               : nullptr;
}

std::int64_t pinsOf(const QuiltView& quilt) {
    std::int64_t out = 0;
    for (const Zone& z : quilt.quilt.zones)
        out += seenWay(quilt.job, z).fromBox ? std::ssize(z.points) : 0;
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
