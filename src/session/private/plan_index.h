#pragma once

#include "plan/call.h"
#include "plan/plan.h"
#include "session/event.h"
#include "ways/way.h"

#include <map>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace bastewright {

/// Tasks whose doing leaves something to be seen on the table: work that builds on it implies it.
/// The others (smoothing, re-clamping, checking, cooling) are cautions that only a tick can vouch
/// for.
constexpr bool isPlainToSee(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
    case TaskKind::layBacking:
    case TaskKind::clamp:
    case TaskKind::layBatting:
    case TaskKind::layTop:
    case TaskKind::shift:
    case TaskKind::foldBack:
    case TaskKind::foldForward:
    case TaskKind::turnOver:
        return true;
    default:
        return false;
    }
}

/// Checks without which a pass is not let go.
constexpr bool isCheck(TaskKind kind) {
    return kind == TaskKind::smooth || kind == TaskKind::checkUnderside || isWaiting(kind);
}

constexpr bool isZoneWork(TaskKind kind) {
    return isOfZone(kind);
}

/// Look-ups into one plan, which must outlive the index and stay where it is.
class PlanIndex {
public:
    explicit PlanIndex(const Plan& plan);

    const Plan& plan() const { return plan_; }
    const Task* task(std::string_view id) const;
    const Zone* zone(int job, std::string_view id) const;
    /// How the quilt is basted, by its tasks; without any, the first way there is.
    const Way& way(int job) const { return *quilts_[static_cast<std::size_t>(job)].way; }
    /// How one of its zones is.
    const Way& way(int job, const Zone& zone) const {
        return zone.with ? wayOf(*zone.with) : way(job);
    }
    const Way& way(int job, std::string_view zone) const {
        const Zone* at = this->zone(job, zone);
        return at ? way(job, *at) : way(job);
    }
    int quilts() const { return static_cast<int>(quilts_.size()); }
    int lastPass(int job) const;
    /// True for what comes after the quilt was turned over to be pressed from the back.
    bool fromBack(const Task& task) const { return fromBack_.contains(&task); }

    /// The zone's tasks of one kind; presses from the back (after the turning) apart from the
    /// others.
    std::span<const Task* const> zoneTasks(int job, std::string_view zone, TaskKind kind,
                                           bool fromBack = false) const;
    /// The tasks that such a tick at the zone is about.
    std::span<const Task* const> ticked(int job, std::string_view zone, Tick tick) const;
    /// Everything of the quilt the tasks wait for, near and far, in the plan's order.
    std::vector<const Task*> before(std::span<const Task* const> tasks) const;

private:
    struct Quilt {
        const Way* way = &allWays().front();
        std::map<std::string, const Zone*, std::less<>> zones;
    };
    struct ZoneWork {
        int job;
        std::string_view zone;
        TaskKind kind;
        bool fromBack;
        auto operator<=>(const ZoneWork&) const = default;
    };

    void findFromBack();

    const Plan& plan_;
    std::vector<Quilt> quilts_;
    std::unordered_map<std::string_view, const Task*> tasks_;
    std::map<ZoneWork, std::vector<const Task*>> zoneTasks_;
    std::set<const Task*> fromBack_;
};

} // namespace bastewright
