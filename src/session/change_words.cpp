#include "session/private/change_words.h"

#include "plan/find.h"
#include "plan/share.h"
#include "session/pins.h"
#include "session/private/plan_index.h"
#include "session/private/words.h"

#include <algorithm>

namespace bastewright {
namespace {

std::string_view does(TaskKind kind) {
    switch (kind) {
    case TaskKind::placeOpen:
        return "places the pins of";
    case TaskKind::closePins:
        return "closes";
    case TaskKind::press:
        return "presses";
    default:
        return "dots";
    }
}

} // namespace

std::vector<std::string> howTaken(const Plan& plan, const LiveState& state, int job,
                                  const std::string& zone, const std::string& person,
                                  ClockTime start) {
    std::vector<std::string> out;
    for (const auto& t : plan.tasks) {
        if (t.job != job || t.zone != zone || state.doneTasks.contains(t.id))
            continue;
        const auto own = std::ranges::find(t.people, person) - t.people.begin();
        if (static_cast<std::size_t>(own) == t.people.size())
            continue;
        std::string line = person;
        line.append(" ")
            .append(does(t.kind))
            .append(" ")
            .append(zone)
            .append(" at ")
            .append(format(after(start, t.start)));
        if (static_cast<std::size_t>(own) < t.places.size())
            line.append(" from the ")
                .append(name(t.places[static_cast<std::size_t>(own)].side))
                .append(" side");
        out.push_back(line.append("."));
    }
    return out;
}

std::vector<std::string> howFarPinsGo(const Plan& plan, const Setting& setting,
                                      const LiveState& state) {
    const auto pins = countPins(plan, setting, state);
    if (pins.shortBy() == 0)
        return {"The " + std::to_string(pins.left) + " pins in the box do for all that is left."};
    std::int64_t left = pins.left;
    std::vector<std::string> out;
    for (const auto& t : plan.tasks) {
        if (t.kind != TaskKind::placeOpen || state.doneTasks.contains(t.id))
            continue;
        const Zone* zone = findZone(plan.quilts[static_cast<std::size_t>(t.job)], t.zone);
        if (!zone)
            continue;
        left -= pointCount(*zone, t.share);
        if (left >= 0)
            continue;
        out.push_back("The " + std::to_string(std::max<std::int64_t>(0, pins.left)) +
                      " pins in the box last until zone " + t.zone + ", at " +
                      format(after(setting.start, t.start)) + ": fetch " +
                      std::to_string(pins.shortBy()) + " more by then.");
        break;
    }
    return out;
}

std::vector<std::string> howTablesMatter(const Plan& plan, int more) {
    const bool trouble = std::ranges::any_of(
        plan.findings, [](const Finding& f) { return f.field.starts_with("/room/tables"); });
    if (trouble)
        return {"The quilt lies on a table that is gone: finish what is open where it lies, and "
                "plan the rest as a job of its own."};
    return {more > 0 ? "The passes stay as they are: a quilt that is begun is not moved to other "
                       "tables. A new job can use it."
                     : "The plan stands on other tables: the passes stay as they are."};
}

Seconds elapsedOf(const LiveState& state) {
    return Seconds{std::max<std::int64_t>(0, state.lastMs - state.startedMs) / 1000};
}

std::string setAsideRest(const Plan& plan, LiveState& state, int job, int pass) {
    if (state.released.contains({job, pass}))
        return capital(passName(pass)) + " is released already.";
    std::vector<std::string> open, waiting;
    const PlanIndex index{plan};
    for (const auto& [key, live] : state.zones) {
        const Zone* zone = index.zone(key.first, key.second);
        if (key.first != job || !zone || zone->pass != pass || live.done() ||
            state.setAside.contains(key))
            continue;
        (live.state == ZoneState::waiting ? waiting : open).push_back(key.second);
    }
    if (!open.empty())
        return "Close what is open first: " + listed(open) + ".";
    if (waiting.empty())
        return "Nothing of " + passName(pass) + " is left to be left out.";
    for (const auto& zone : waiting) {
        state.setAside.insert({job, zone});
        for (const auto& t : plan.tasks)
            if (t.job == job && t.zone == zone)
                state.doneTasks.insert(t.id);
    }
    return {};
}

} // namespace bastewright
