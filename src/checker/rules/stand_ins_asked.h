#pragma once

#include "checker/report.h"
#include "checker/view.h"

#include <cstdint>
#include <functional>

namespace bastewright::check {

/// Where pins may run short: what there is, and what is looked at.
struct PinsAsked {
    std::int64_t have = 0;                         ///< in the box
    std::int64_t pinned = 0;                       ///< of the zones that count
    std::function<bool(int quilt, int pass)> open; ///< may be basted otherwise yet
    std::function<bool(int quilt, const Zone&)> counts;
};

/// Dots stand in where the quilts ask for it, as few as let the pins last: in whole passes from the
/// last one back, of the last quilt first; in first passes only where that is not enough.
void standInsAsked(const PlanView& v, const PinsAsked& asked, Report& report);

/// What stands in may be had: nothing speaks against it in this session.
bool mayStandIn(const PlanView& v, const QuiltView& quilt);

/// Points that have dots because pins run short.
std::int64_t standingIn(const QuiltView& quilt);

/// Dots are to stand in for pins, and pins are missing all the same.
bool isShortOfDots(const QuiltView& quilt);

/// Some of its zones are pressed with an iron.
bool isPressed(const QuiltView& quilt);

/// What speaks against dots stops a plan that has them; of dots that would stand in it is a
/// warning.
bool isOfItsLevel(const PlanView& v, const Finding& said);

} // namespace bastewright::check
