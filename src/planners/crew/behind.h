#pragma once

#include "planners/crew/blocks.h"

/// What of a session is done and who is there, and what is told of a pass.
namespace bastewright::crew {

/// The people from now on: who is at the table stays on where their hours are over, who should be
/// and is not is gone.
std::vector<Hand> handsNow(const std::vector<Helper>& helpers, ClockTime start,
                           const Situation& situation);

/// Some task of a pass is done, or not done.
bool anyOf(const Situation& situation, const std::vector<Task>& tasks, int job, int pass,
           bool done);

/// Such work at a zone is done.
bool isZoneWorkDone(const Situation& situation, const Job& quilt, int job, const Zone& zone,
                    TaskKind kind, bool fromBack);

/// All zones of a pass are done, and nothing else of it was still to be done before the quilt is
/// turned over or rolled up.
bool isOver(const Situation& situation, const Job& quilt, int job, int pass);

/// Everything of a pass is done; after the last pass of a quilt it is rolled up too.
bool isBehind(const Situation& situation, const Job& quilt, int job, const Pass& pass);

/// The zones of a pass that is done, for what is still pressed from the back.
PassCrew crewBehind(const std::vector<Hand>& hands, const Situation& situation, int job,
                    const QuiltPlan& was, int pass);

/// Where people stood or sat in a pass of the plan in force.
std::map<int, std::vector<StandingPlace>> placesIn(const std::vector<Hand>& hands, const Pass& was);

/// Gives a quilt the zones of a pass, and the pass its zones and stretches: of everybody where they
/// work at zones of their own. What is left out, or others do, asks for no place of theirs, unless
/// they have nothing else.
void tellZones(const std::vector<Hand>& hands, const Situation& situation, const Block& block,
               const PassPlan& plan, QuiltPlan& quilt);

} // namespace bastewright::crew
