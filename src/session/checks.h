#pragma once

#include "session/live_state.h"

#include <optional>
#include <string_view>
#include <vector>

/// What is asked, and answered yes or no, before a pass is let go.
///
/// An answer is an event (`happened::Answer`), so that it outlives a crash and can be taken back.
/// While an answer is no, the step it belongs to cannot be ticked; a step that is ticked without
/// answers counts as looked at (paper has its own boxes). Common practice: overhang compared, a
/// palm over both faces, a few places turned up.
namespace bastewright {

enum class Check {
    cautions,   ///< read to everybody before the first step
    palmGlides, ///< over the top: no ripple ahead of the hand
    underside,  ///< the back is caught everywhere and lies flat
    spare       ///< backing and batting show on all four sides as planned
};

std::string_view name(Check check); ///< for events: "palm-glides"
std::optional<Check> checkNamed(std::string_view name);

/// What is asked at a step, in the order in which it is looked at; empty for steps without.
std::vector<Check> checksOf(TaskKind step);

/// What was last answered at this step; nothing while it is open.
std::optional<bool> answerTo(const LiveState& state, const std::string& task, Check check);

/// True where everything that is asked at the step was answered yes.
bool allAnsweredYes(const LiveState& state, const Task& task);

} // namespace bastewright
