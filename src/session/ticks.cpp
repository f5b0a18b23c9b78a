#include "session/ticks.h"

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

/// As zones go through them.
constexpr std::array kTicks{Tick::dotted, Tick::opened, Tick::closed};

/// The tick before this one, or nothing.
std::optional<Tick> before(Tick tick) {
    const auto at = std::ranges::find(kTicks, tick);
    if (at == kTicks.end())
        return Tick::closed; // pressed from the back
    return at == kTicks.begin() ? std::nullopt : std::optional{*(at - 1)};
}

} // namespace

std::optional<TaskKind> workAt(Tick tick, const Way& way) {
    if (tick == Tick::pressed)
        return way.turnedFrom ? std::optional{way.lastWork()} : std::nullopt;
    const auto work = way.zoneWork();
    const auto fromLast = kTicks.end() - std::ranges::find(kTicks, tick);
    if (fromLast == 0 || fromLast > std::ssize(work))
        return {};
    return *(work.end() - fromLast);
}

Tick tickAt(TaskKind zoneWork) {
    const auto work = wayWith(zoneWork).zoneWork();
    return *(kTicks.end() - (work.end() - std::ranges::find(work, zoneWork)));
}

Tick firstTick(const Way& way) {
    return tickAt(way.firstWork());
}

ZoneState stateAfter(Tick tick) {
    switch (tick) {
    case Tick::dotted:
        return ZoneState::dotted;
    case Tick::opened:
        return ZoneState::open;
    case Tick::closed:
        return ZoneState::closed;
    case Tick::pressed:
        break;
    }
    return ZoneState::pressedBack;
}

ZoneState stateBefore(Tick tick, const Way& way) {
    const auto earlier = before(tick);
    return earlier && workAt(*earlier, way) ? stateAfter(*earlier) : ZoneState::waiting;
}

int stepsDone(ZoneState state, const Way& way) {
    const auto steps = static_cast<int>(way.zoneWork().size());
    switch (state) {
    case ZoneState::waiting:
        return 0;
    case ZoneState::dotted:
        return steps - 2;
    case ZoneState::open:
        return steps - 1;
    case ZoneState::closed:
        break;
    case ZoneState::pressedBack:
        return steps + 1;
    }
    return steps;
}

Call callAt(Tick tick, const Way& way) {
    return callOf(workAt(tick, way).value_or(way.lastWork()));
}

} // namespace bastewright
