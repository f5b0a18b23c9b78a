#include "planners/crew/able.h"

#include "planners/crew/words.h"

#include <algorithm>

namespace bastewright::crew {
namespace {

/// The zones of one pass that are out of reach, and of those within it, that nobody closes.
struct Unworkable {
    std::string unreached, unclosed;
    std::optional<Length> reach; ///< that would do for all
};

void say(const Unworkable& u, const std::string& where, Unit unit, Findings& findings) {
    const auto stop = [&](std::string text, std::string cure) {
        findings.push_back({Finding::Level::stop, "/helpers", std::move(text), std::move(cure)});
    };
    if (!u.unreached.empty())
        stop(words({where, "nobody reaches all of zone ", u.unreached, " from an open side."}),
             u.reach
                 ? words({"A helper who reaches ", format(*u.reach + Length::inch64ths(7), unit),
                          ", or a table open on more sides."})
                 : "Move the table away from a wall: no side of it is open.");
    if (!u.unclosed.empty())
        stop(words({where, "nobody who closes pins reaches zone ", u.unclosed, "."}),
             "Let somebody who reaches it close pins.");
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
                u.unreached += words({u.unreached.empty() ? "" : ", ", zone.id});
                u.reach =
                    std::max(u.reach, leastReach(workBox(zone), p.table, quilt.surface.closed));
            } else if (closes && !anyReach(helpers, quilt, p, zone, {.closes = true})) {
                u.unclosed += words({u.unclosed.empty() ? "" : ", ", zone.id});
            } else {
                workable[z] = true;
            }
        }
        say(u, words({quilt.name, ", pass ", std::to_string(p.number), ": "}), unit, findings);
    }
    return workable;
}

} // namespace bastewright::crew
