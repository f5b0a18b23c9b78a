#pragma once

#include "plan/call.h"
#include "plan/plan.h"

namespace bastewright::check {

/// Tasks in which the whole quilt is lifted.
constexpr bool isLift(TaskKind k) {
    return k == TaskKind::shift || k == TaskKind::turnOver;
}

constexpr bool isLaying(TaskKind k) {
    return k == TaskKind::layBacking || k == TaskKind::layBatting || k == TaskKind::layTop ||
           k == TaskKind::foldBack || k == TaskKind::foldForward;
}

constexpr bool liftsWell(const Helper& h) {
    return h.lifts && !h.seated;
}

/// How far somebody gets, leaning where they stand.
constexpr Length reachOf(const Helper& h) {
    return h.seated ? h.reach : h.reach + h.lean;
}

constexpr bool looksBelow(const Helper& h) {
    return h.bends && h.lifts && !h.seated;
}

constexpr bool overlap(const Task& a, const Task& b) {
    return a.start < b.end && b.start < a.end;
}

} // namespace bastewright::check
