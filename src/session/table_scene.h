#pragma once

#include "plan/plan.h"
#include "session/live_state.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace bastewright {

/// A zone at one moment of a plan.
struct ZoneScene {
    ZoneState state = ZoneState::waiting;
    const Task* work = nullptr; ///< what is being done to it
    double share = 0;           ///< how far that is, 0…1
};

/// Somebody at one moment of a plan.
struct PersonScene {
    enum class Where {
        away,      ///< not come yet, or gone
        waiting,   ///< there, with nothing to do
        atWork,    ///< at this quilt
        elsewhere, ///< at another quilt
    };
    Where where = Where::waiting;
    const Task* task = nullptr; ///< what they do, at whichever quilt
    /// Where they stand at this quilt's table, in the frame of the scene's pass. Of zone work it is
    /// the task's own; people of a team are spread round the open sides; who waits stays where they
    /// stood as long as nobody else needs it. None for who is not at this table.
    std::optional<StandingPlace> place{};
};

/// One quilt on its table at one moment of a plan. Layers, folds and turning are shares, 0…1.
struct TableScene {
    int pass = 1;       ///< on the table, or being shifted in
    double moved = 1;   ///< how far the shift into `pass` is; the pass before is `pass - 1`
    double backing = 0; ///< laid
    double batting = 0, top = 0;
    double folded = 0;                ///< dots: batting and top folded back
    double turned = 0;                ///< dots in thick batting: the quilt lies back up
    std::vector<ZoneScene> zones;     ///< in the order of the quilt's zones
    std::vector<PersonScene> people;  ///< in the order of the helpers
    std::vector<const Task*> going{}; ///< this quilt's tasks that are going on, in the plan's order
};

/// What lies where and who stands where at any moment of a plan, as if everything went by it. The
/// plan must outlive this and every scene. Cheap to ask many times a second.
class TableScenes {
public:
    TableScenes(const Plan& plan, const std::vector<Helper>& helpers, ClockTime start);
    ~TableScenes();
    TableScenes(TableScenes&&) noexcept;
    TableScenes& operator=(TableScenes&&) noexcept;

    /// A time before the start counts as the start, one after the end as the end. `job` must be a
    /// quilt of the plan.
    TableScene at(int job, Seconds moment) const;

    /// When a quilt's shift into each pass begins, the first pass at its first task; for marks.
    std::vector<Seconds> passBegins(int job) const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace bastewright
