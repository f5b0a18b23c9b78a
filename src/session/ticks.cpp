#include "session/ticks.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

/// As zones go through them.
constexpr std::array kTicks{EventKind::zoneDotted, EventKind::zoneOpened, EventKind::zoneClosed};

/// The tick before this one, or nothing.
std::optional<EventKind> before(EventKind tick) {
    const auto at = std::ranges::find(kTicks, tick);
    if (at == kTicks.end())
        return EventKind::zoneClosed; // pressed from the back
    return at == kTicks.begin() ? std::nullopt : std::optional{*(at - 1)};
}

} // namespace

std::optional<TaskKind> workAt(EventKind tick, const Way& way) {
    if (tick == EventKind::zonePressed)
        return way.turnedFrom ? std::optional{way.lastWork()} : std::nullopt;
    const auto work = way.zoneWork();
    const auto fromLast = kTicks.end() - std::ranges::find(kTicks, tick);
    if (fromLast == 0 || fromLast > std::ssize(work))
        return {};
    return *(work.end() - fromLast);
}

EventKind tickAt(TaskKind zoneWork) {
    const auto work = wayWith(zoneWork).zoneWork();
    return *(kTicks.end() - (work.end() - std::ranges::find(work, zoneWork)));
}

EventKind firstTick(const Way& way) {
    return tickAt(way.firstWork());
}

ZoneState stateAfter(EventKind tick) {
    switch (tick) {
    case EventKind::zoneDotted:
        return ZoneState::dotted;
    case EventKind::zoneOpened:
        return ZoneState::open;
    case EventKind::zoneClosed:
        return ZoneState::closed;
    default:
        return ZoneState::pressedBack;
    }
}

ZoneState stateBefore(EventKind tick, const Way& way) {
    const auto earlier = before(tick);
    return earlier && workAt(*earlier, way) ? stateAfter(*earlier) : ZoneState::waiting;
}

Call callAt(EventKind tick, const Way& way) {
    return callOf(workAt(tick, way).value_or(way.lastWork()));
}

} // namespace bastewright
