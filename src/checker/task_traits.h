#pragma once

#include "plan/plan.h"

namespace bastewright::check {

/// Tasks that one person does for one zone, from one place.
constexpr bool isOfZone(TaskKind k) {
    return k == TaskKind::placeOpen || k == TaskKind::closePins || k == TaskKind::dotLower ||
           k == TaskKind::dotUpper || k == TaskKind::press;
}

/// Tasks in which the whole quilt is lifted.
constexpr bool isLift(TaskKind k) {
    return k == TaskKind::shift || k == TaskKind::turnOver;
}

constexpr bool isLaying(TaskKind k) {
    return k == TaskKind::layBacking || k == TaskKind::layBatting || k == TaskKind::layTop;
}

constexpr bool liftsWell(const Helper& h) {
    return h.lifts && !h.seated;
}

/// How far somebody gets, leaning where they stand.
constexpr Length reachOf(const Helper& h) {
    return h.seated ? h.reach : h.reach + h.lean;
}

constexpr bool overlap(const Task& a, const Task& b) {
    return a.start < b.end && b.start < a.end;
}

} // namespace bastewright::check
