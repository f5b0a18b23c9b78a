#pragma once

#include "planners/crew/blocks.h"

/// What of a session is done, and what is told of a pass.
namespace bastewright::crew {

/// Some task of a pass is done, or not done.
bool anyOf(const Situation& situation, const std::vector<Task>& tasks, int job, int pass,
           bool done);

/// Everything of a pass is done.
bool isBehind(const Situation& situation, int job, const Pass& pass);

/// The zones of a pass that is done, for what is still pressed from the back.
PassCrew crewBehind(const Situation& situation, int job, const QuiltPlan& was, int pass);

/// Gives a quilt the zones of a pass, and the pass its zones and stretches.
void tellZones(const std::vector<Hand>& hands, const Block& block, const PassCrew& crew,
               QuiltPlan& quilt);

} // namespace bastewright::crew
