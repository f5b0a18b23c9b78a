#include "ways/pins/pins.h"

#include "plan/trade_times.h"
#include "ways/supplies.h"

#include <algorithm>
#include <map>

namespace bastewright::ways {
namespace {

using namespace trade_times;

StepWords placing() {
    return {.call = core::says("Pin"),
            .forLead = core::says("All pins stay open."),
            .mine = core::says(
                "Your rows at your marks, from the middle outward; on a seam, beside it."),
            .firmly = core::says("Leave every pin open."),
            .idle =
                [](const Sentence&) {
                    return core::says("No pins for you: see that everybody has some.");
                },
            .care = core::says("No pins in the mouth."),
            .command = core::says("Put pins in, open"),
            .brief = core::says("pins in"),
            .heading = core::says("Place pins open"),
            .how = core::says("Through all three layers, left open. Lean, do not climb."),
            .caution = core::says("Pins stay in the dish, never in the mouth."),
            .noun = core::says("the placing of the pins"),
            .nounFirst = core::says("The placing of the pins"),
            .past = core::says("opened"),
            .line =
                [](const Sentence& zones, const Sentence& count) {
                    return core::says("%1: place %2, open", zones, count);
                },
            .doing =
                [](const Sentence& people, const Sentence& zone, bool one) {
                    return one ? core::says("%1 pins %2", people, zone)
                               : core::says("%1 pin %2", people, zone);
                },
            .at =
                [](const Sentence& person, const Sentence& zone, ClockTime when) {
                    return core::says("%1 places the pins of %2 at %3", person, zone, when);
                },
            .done =
                [](const Sentence& zones, bool one) {
                    return one ? core::says("%1 is pinned open", zones)
                               : core::says("%1 are pinned open", zones);
                },
            .work =
                [](const Sentence& zones, bool one) {
                    return one ? core::says("placing of zone %1", zones)
                               : core::says("placing of zones %1", zones);
                }};
}

StepWords closing() {
    return {
        .call = core::says("Close"),
        .forLead = core::says("Now, never earlier."),
        .mine = core::says("Close from the middle outward."),
        .firmly = core::says("Never before this call."),
        .idle = [](const Sentence&) { return core::says("Wait until all are closed."); },
        .care = {},
        .command = core::says("Close the pins"),
        .brief = core::says("close"),
        .heading = core::says("Close pins"),
        .how = core::says("From the middle outwards. The zone's count must come out."),
        .caution = {},
        .noun = core::says("the closing of the pins"),
        .nounFirst = core::says("The closing of the pins"),
        .past = core::says("closed"),
        .line = [](const Sentence& zones,
                   const Sentence& count) { return core::says("%1: close %2", zones, count); },
        .doing =
            [](const Sentence& people, const Sentence& zone, bool one) {
                return one ? core::says("%1 closes %2", people, zone)
                           : core::says("%1 close %2", people, zone);
            },
        .at = [](const Sentence& person, const Sentence& zone,
                 ClockTime when) { return core::says("%1 closes %2 at %3", person, zone, when); },
        .done =
            [](const Sentence& zones, bool one) {
                return one ? core::says("%1 is closed", zones) : core::says("%1 are closed", zones);
            },
        .work =
            [](const Sentence& zones, bool one) {
                return one ? core::says("closing of zone %1", zones)
                           : core::says("closing of zones %1", zones);
            }};
}

WayWords pinWords() {
    return {
        .name = core::says("Pins"),
        .heading = core::says("Pins"),
        .where = core::says("Where the pins go"),
        .choose = core::says("Baste with pins"),
        .smoothed = core::says("Only then are pins closed."),
        .byRibbons = core::says("Pin at the ribbons' marks."),
        .atBreaks = core::says("All pins closed, nothing half done."),
        .leaving =
            core::says("You leave. Close your open pins first; say which row you have reached."),
        .underneath = core::says("No pleat below? Do pins turned up reach the back?"),
        .putAway = core::says("Pins counted; table and floor swept with a magnet."),
        .rolledUp = nullptr, // pins are counted
        .care = core::says("No pins in the mouth; open ones point away from hands."),
        .cautions =
            {core::says(
                 "Pins stay in the dish, never in the mouth. What falls is picked up at once."),
             core::says(
                 "The magnet for sweeping is kept away from medical implants and electronics.")},
        .howClose = core::says("How close together do pins go?"),
        .byFist = core::says("Lay your fist on the quilt: wherever it lies, it touches a pin."),
        .count =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 pin") : core::says("%1 pins", points);
            },
        .every = [](const Sentence& spacing) { return core::says("pins every %1", spacing); },
        .held =
            [](const Sentence& distance) {
                return core::says("No spot of the quilt is farther than %1 from a pin, so the "
                                  "layers are held together everywhere.",
                                  distance);
            },
        .why = core::says("A fist or a palm between them holds the layers so that nothing creeps "
                          "under the needle. Rows with every second one half a step over are the "
                          "thinnest covering there is, and two marked ribbons place them."),
        .single =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 single pin")
                                   : core::says("%1 single pins", points);
            },
        .singles =
            [](std::int64_t points, const Sentence& places) {
                return points == 1 ? core::says("1 single pin more: %1.", places)
                                   : core::says("%1 single pins more: %2.", points, places);
            },
        .rows =
            [](bool across, const Sentence& gap, const Sentence& step) {
                return across
                           ? core::says(
                                 "Rows across the quilt, about %1 apart, a pin about every %2, "
                                 "every second row half a step over.",
                                 gap, step)
                           : core::says("Rows from head to foot, about %1 apart, a pin about every "
                                        "%2, every second row half a step over.",
                                        gap, step);
            },
        .fewest =
            [](std::int64_t fewest, std::int64_t now) {
                return core::says("Fewest pins, in no rows: %1 or fewer, not %2", fewest, now);
            },
        .ready =
            [](const Sentence& count) {
                return core::says("count %1 into your bowl and open them.", count);
            },
        .noSuchStep =
            [](const Sentence& zone) {
                return core::says("Zone %1 is pinned, not dotted.", zone);
            }};
}

Finding unclosed(const Unfinished& u) {
    return {Finding::Kind::nobodyCloses, Finding::Level::stop, "/helpers",
            core::says("%1, pass %2: nobody who closes pins reaches zone %3.", u.quilt, u.pass,
                       u.zones),
            core::says("Let somebody who reaches it close pins.")};
}

/// Pins stay in each quilt until it is quilted, so those of all quilts are needed at once. The box
/// on hand is not sorted by length; the unit says how many of which.
std::vector<Supply> box(const Session& session, std::span<const BastedQuilt> quilts) {
    std::map<Length, std::int64_t> byLength;
    for (const BastedQuilt& q : quilts)
        if (q.points > 0)
            byLength[q.job->basting.pinLength] += q.points;
    const Unit unit = session.jobs.front().unit;
    Sentences lengths;
    for (const auto& [length, count] : byLength)
        lengths.push_back(byLength.size() > 1
                              ? core::says("%1 of %2", withSpare(count), core::length(length, unit))
                              : core::length(length, unit));
    std::vector<Supply> out;
    addSupply(out, Supply::Kind::pins, core::says("pins"), double(withSpare(pointsOf(quilts))),
              session.setting.stash.pins, core::commaList(lengths));
    return out;
}

/// One for everybody who closes; where nobody is named it is planned for one.
std::vector<Supply> closingTools(const Session& session, std::span<const BastedQuilt> quilts) {
    std::vector<Supply> out;
    const auto& helpers = session.setting.helpers;
    const auto close = std::ranges::count_if(helpers, &Helper::closes);
    if (pointsOf(quilts) > 0)
        addSupply(out, Supply::Kind::closingTools, core::says("closing tools"),
                  helpers.empty() ? 1 : double(close), 0);
    return out;
}

} // namespace

Way pins() {
    using enum TaskKind;
    using By = WayStep::By;
    return {.with = Basting::With::pins,
            .point = {.shape = WayPoint::Shape::pin,
                      .clearOfSeams = true,
                      .length = [](const Basting& b) { return b.pinLength; },
                      .alongRow = nullptr},
            .steps = {{placeOpen, By::zones, kPlacePin, 0, placing()},
                      {smooth, By::palm, kHandsOff},
                      {closePins, By::zones, kClosePin, 0, closing()}},
            .calls = {Call::lay, Call::clamp, Call::pin, Call::handsOff, Call::close, Call::check,
                      Call::move},
            .finishes = [](const Helper& h) { return h.closes; },
            .fromBox = true,
            .irons = false,
            .turnedFrom = {},
            .mostInZone = 50,
            .instead = Basting::With::dots,
            .against = [](const Job&, const Session&) { return Findings{}; },
            .unfinished = unclosed,
            .materials = box,
            .tools = closingTools,
            .words = pinWords()};
}

} // namespace bastewright::ways
