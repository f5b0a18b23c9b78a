#include "planners/crew/places_before.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

/// Where the people of a pass stood, by hand, on the way round the table.
void addPlaces(const Given& given, const QuiltTable& table, const Pass& pass, Letters& letters,
               std::map<int, Length>& stood) {
    for (const Stretch& s : pass.stretches) {
        // Quilts that lie on one surface by turns may have the same letters.
        if (std::ranges::none_of(letters, [&](const auto& had) { return had.second == s.place; }))
            letters.emplace(s.person, s.place);
        for (std::size_t h = 0; h < given.hands.size() && !s.edges.empty(); ++h)
            if (given.hands[h].helper.name == s.person) {
                const StandingPlace& e = s.edges.front();
                const Length origin = isAcross(e.side) ? pass.table.x0 : pass.table.y0;
                stood[static_cast<int>(h)] =
                    onTheWayRound(table.sides(), e.side, e.along.middle() - origin);
            }
    }
}

} // namespace

void takePlacesBefore(const Given& given, std::vector<QuiltTable>& tables,
                      std::vector<std::vector<PassCrew>>& crews, std::map<int, Letters>& letters) {
    const Situation& situation = given.situation;
    const Plan& before = *situation.before;
    for (std::size_t q = 0; q < given.quilts.size() && q < before.quilts.size(); ++q) {
        const QuiltPlan& was = before.quilts[q];
        const auto job = static_cast<int>(q);
        std::map<int, Length> stood;
        bool begun = false;
        for (const Pass& p : was.passes)
            if (anyOf(situation, before.tasks, job, p.number, true)) {
                begun = true;
                addPlaces(given, tables[q], p, letters[given.quilts[q].surface.number], stood);
            }
        if (begun)
            tables[q].stood(stood);
        for (std::size_t p = 0; p < was.passes.size() && p < crews[q].size(); ++p)
            if (isBehind(situation, given.session.jobs[q], job, was.passes[p]))
                crews[q][p] = crewBehind(given.hands, situation, job, was, was.passes[p].number);
    }
}

} // namespace bastewright::crew
