#include "checker/rules/rules.h"
#include "checker/rules/share_of.h"
#include "checker/task_traits.h"

#include <algorithm>
#include <map>

namespace bastewright::check {
namespace {

/// True where two shares begin at opposite sides of the zone.
bool opposite(Side a, Side b) {
    return a != b && isAcross(a) == isAcross(b);
}

} // namespace

std::vector<PlacedPoint> pointsOfTask(const Zone& zone, const Task& t) {
    std::vector<PlacedPoint> out;
    for (const PlacedPoint& p : zone.points) {
        if (t.share) {
            // How many lie nearer to the task's side; ties go along it, as docs/formats.md has it.
            const auto far = [&](const PlacedPoint& q) {
                switch (t.share->side) {
                case Side::left:
                    return std::pair{q.at.x, q.at.y};
                case Side::right:
                    return std::pair{-q.at.x, -q.at.y};
                case Side::head:
                    return std::pair{q.at.y, q.at.x};
                default:
                    return std::pair{-q.at.y, -q.at.x};
                }
            };
            const auto nearer = std::ranges::count_if(
                zone.points, [&](const PlacedPoint& q) { return far(q) < far(p); });
            if (nearer >= t.share->points)
                continue;
        }
        out.push_back(p);
    }
    return out;
}

// A zone that is not worked by one person is worked by two, who have all its points between them.
void crewShares(const QuiltView& v, Report& report) {
    std::map<std::pair<TaskKind, std::string>, std::vector<const Task*>> ofZone;
    for (const Task* t : v.tasks()) {
        if (!isOfZone(t->kind)) {
            if (t->share)
                report.add("Task '" + t->id + "' has a share of points and no zone.");
        } else if (t->kind == TaskKind::press) {
            if (t->share)
                report.add("Task '" + t->id + "' shares a zone; an iron is in one person's hands.");
        } else {
            ofZone[{t->kind, t->zone}].push_back(t);
        }
    }
    for (const auto& [key, tasks] : ofZone) {
        const Zone* zone = v.zone(key.second);
        if (zone == nullptr || (tasks.size() == 1 && !tasks.front()->share))
            continue;
        const auto all = static_cast<int>(zone->points.size());
        const bool shared = tasks.size() == 2 && tasks[0]->share && tasks[1]->share &&
                            opposite(tasks[0]->share->side, tasks[1]->share->side) &&
                            tasks[0]->share->points > 0 && tasks[1]->share->points > 0 &&
                            tasks[0]->share->points + tasks[1]->share->points == all;
        if (!shared)
            report.add(v.label() + ", zone " + key.second + ": " + std::string{name(key.first)} +
                       " is given to " + std::to_string(tasks.size()) +
                       " tasks that do not share its " + std::to_string(all) +
                       " points between two opposite sides.");
    }
}

} // namespace bastewright::check
