#pragma once

#include "plan/task.h"

#include <string_view>

namespace bastewright {

/// What the lead calls, in the order it is called. Nobody goes on before the next call. Every pass
/// goes by lay, clamp, pin, hands off, close, check and move; with fuse dots the calls between
/// clamping and checking are dot below, dot above, press and cool, with thread hands off and
/// stitch, with spray spray, hands off and wait. Where a pass has both, dots come before pins. Set
/// up and roll up come once.
enum class Call {
    setUp,
    lay,
    clamp,
    dotBelow,
    dotAbove,
    press,
    cool,
    pin,
    spray,
    handsOff,
    close,
    stitch,
    wait,
    check,
    move,
    rollUp
};

/// The call at which such a task is done.
constexpr Call callOf(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
        return Call::setUp;
    case TaskKind::layBacking:
    case TaskKind::layBatting:
    case TaskKind::layTop:
        return Call::lay;
    case TaskKind::clamp:
    case TaskKind::reclamp:
        return Call::clamp;
    case TaskKind::placeOpen:
        return Call::pin;
    case TaskKind::smooth:
        return Call::handsOff;
    case TaskKind::closePins:
        return Call::close;
    case TaskKind::stitch:
        return Call::stitch;
    case TaskKind::spray:
        return Call::spray;
    case TaskKind::settle:
        return Call::wait;
    case TaskKind::checkUnderside:
        return Call::check;
    case TaskKind::shift:
    case TaskKind::turnOver:
        return Call::move;
    case TaskKind::foldBack:
    case TaskKind::dotLower:
        return Call::dotBelow;
    case TaskKind::foldForward:
    case TaskKind::dotUpper:
        return Call::dotAbove;
    case TaskKind::press:
        return Call::press;
    case TaskKind::cool:
        return Call::cool;
    case TaskKind::handOver:
        break;
    }
    return Call::rollUp;
}

/// True for what is done at one zone by one person.
constexpr bool isOfZone(TaskKind kind) {
    return kind == TaskKind::placeOpen || kind == TaskKind::closePins ||
           kind == TaskKind::dotLower || kind == TaskKind::dotUpper || kind == TaskKind::press ||
           kind == TaskKind::stitch || kind == TaskKind::spray;
}

/// True where nobody does anything, and nobody touches the quilt.
constexpr bool isWaiting(TaskKind kind) {
    return kind == TaskKind::cool || kind == TaskKind::settle;
}

} // namespace bastewright
