#include "planners/crew/able.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

/// The zones of one pass that are out of reach, and of those within it, that nobody closes.
struct Unworkable {
    std::vector<std::string> unreached, unclosed;
    std::optional<Length> reach; ///< that would do for all
};

Sentence zones(const std::vector<std::string>& ids) {
    return core::commaList(Sentences(ids.begin(), ids.end()));
}

void say(const Unworkable& u, const Sentence& quilt, int pass, Unit unit, Findings& findings) {
    const auto stop = [&](Sentence text, Sentence cure) {
        findings.push_back({Finding::Level::stop, "/helpers", std::move(text), std::move(cure)});
    };
    if (!u.unreached.empty())
        stop(core::says("%1, pass %2: nobody reaches all of zone %3 from an open side.", quilt, pass,
                        zones(u.unreached)),
             u.reach ? core::says("A helper who reaches %1, or a table open on more sides.",
                                  core::length(*u.reach + Length::inch64ths(7), unit))
                     : core::says("Move the table away from a wall: no side of it is open."));
    if (!u.unclosed.empty())
        stop(core::says("%1, pass %2: nobody who closes pins reaches zone %3.", quilt, pass,
                        zones(u.unclosed)),
             core::says("Let somebody who reaches it close pins."));
}

} // namespace

bool may(const Helper& helper, const Needs& needs) {
    return (!needs.lifts || (helper.lifts && !helper.seated)) && (!needs.irons || helper.irons) &&
           (!needs.closes || helper.closes) && (!needs.afoot || !helper.seated);
}

bool anyReach(const std::vector<Helper>& helpers, const QuiltPlan& quilt, const Pass& pass,
              const Zone& zone, const Needs& needs) {
    const Rect box = workBox(zone);
    return std::ranges::any_of(helpers, [&](const Helper& h) {
        return may(h, needs) && !sidesFor(box, pass.table, quilt.surface, h).empty();
    });
}

std::vector<bool> workableZones(const std::vector<Helper>& helpers, const QuiltPlan& quilt,
                                bool dots, Unit unit, Findings& findings) {
    std::vector<bool> workable(quilt.zones.size(), false);
    for (const Pass& p : quilt.passes) {
        Unworkable u;
        for (std::size_t z = 0; z < quilt.zones.size(); ++z) {
            const Zone& zone = quilt.zones[z];
            if (zone.pass != p.number)
                continue;
            const bool closes = !dots && !zone.points.empty();
            if (!anyReach(helpers, quilt, p, zone, {})) {
                u.unreached.push_back(zone.id);
                u.reach =
                    std::max(u.reach, leastReach(workBox(zone), p.table, quilt.surface.closed));
            } else if (closes && !anyReach(helpers, quilt, p, zone, {.closes = true})) {
                u.unclosed.push_back(zone.id);
            } else {
                workable[z] = true;
            }
        }
        say(u, quilt.name.empty() ? core::says("Quilt") : Sentence{quilt.name}, p.number, unit,
            findings);
    }
    return workable;
}

} // namespace bastewright::crew
