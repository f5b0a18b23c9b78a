#include "ways/dots/dots.h"

#include "plan/trade_times.h"
#include "ways/supplies.h"

#include <algorithm>
#include <map>

namespace bastewright::ways {
namespace {

using namespace trade_times;

/// From this thickness on dots are pressed from the back too.
constexpr Length kThickBatting = Length::millimetres(10);
/// Common practice: a square of 3/4 in at each face.
constexpr Length kSquare = Length::inch64ths(48);

// Both faces are dotted alike.
Sentence dotting(const Sentence& people, const Sentence& zone, bool one) {
    return one ? core::says("%1 dots %2", people, zone) : core::says("%1 dot %2", people, zone);
}
Sentence dottingAt(const Sentence& person, const Sentence& zone, ClockTime when) {
    return core::says("%1 dots %2 at %3", person, zone, when);
}
Sentence dottingOf(const Sentence& zones, bool one) {
    return one ? core::says("dotting of zone %1", zones) : core::says("dotting of zones %1", zones);
}
Sentence waiting(const Sentence&) {
    return core::says("Wait.");
}
Sentence howToDot() {
    return core::says("Flat on the layer, none folded, none at the edge.");
}

StepWords below() {
    return {.call = core::says("Dot below"),
            .forLead = core::says("Top and batting back. Dots on the backing."),
            .mine = core::says("Top and batting lie back: your dots on the backing."),
            .firmly = {},
            .idle = waiting,
            .care = {},
            .command = core::says("Dots on the backing"),
            .brief = core::says("dots below"),
            .heading = core::says("Dots on the backing"),
            .how = howToDot(),
            .caution = {},
            .noun = core::says("the dotting of the lower face"),
            .nounFirst = core::says("The dotting of the lower face"),
            .past = core::says("dotted"),
            .line =
                [](const Sentence& zones, const Sentence& count) {
                    return core::says("%1: %2 on the backing", zones, count);
                },
            .doing = dotting,
            .at = dottingAt,
            .done =
                [](const Sentence& zones, bool one) {
                    return one ? core::says("%1 is dotted below", zones)
                               : core::says("%1 are dotted below", zones);
                },
            .work = dottingOf};
}

StepWords above() {
    return {.call = core::says("Dot above"),
            .forLead = core::says("Batting forward. Dots on the batting."),
            .mine = core::says("Batting forward: your dots on the batting."),
            .firmly = {},
            .idle = waiting,
            .care = {},
            .command = core::says("Dots under the top"),
            .brief = core::says("dots above"),
            .heading = core::says("Dots on the batting"),
            .how = howToDot(),
            .caution = {},
            .noun = core::says("the dotting of the upper face"),
            .nounFirst = core::says("The dotting of the upper face"),
            .past = core::says("dotted above"),
            .line =
                [](const Sentence& zones, const Sentence& count) {
                    return core::says("%1: %2 on the batting", zones, count);
                },
            .doing = dotting,
            .at = dottingAt,
            .done =
                [](const Sentence& zones, bool one) {
                    return one ? core::says("%1 is dotted above", zones)
                               : core::says("%1 are dotted above", zones);
                },
            .work = dottingOf};
}

StepWords pressing() {
    return {
        .call = core::says("Press"),
        .forLead = core::says("Top forward. Lower the iron and lift it, never slide."),
        .mine = core::says("Lower the iron and lift it, never slide; the label's setting."),
        .firmly = core::says("Hold it in one hand only, yours; up on its heel."),
        .idle =
            [](const Sentence& people) {
                return people.empty() ? core::says("Wait.")
                                      : core::says("Hands off. At the iron: %1.", people);
            },
        .care = core::says("The iron is hot: up on its heel, off at breaks."),
        .command = core::says("Press the dots"),
        .brief = core::says("press"),
        .heading = core::says("Press"),
        .how = core::says("Lower the iron and lift it again, do not slide. Follow the labels of "
                          "web and batting."),
        .caution = core::says("One pair of hands on the iron; cord off the walkway."),
        .noun = core::says("the pressing"),
        .nounFirst = core::says("The pressing"),
        .past = core::says("pressed"),
        .line = [](const Sentence& zones,
                   const Sentence& count) { return core::says("%1: press %2", zones, count); },
        .doing =
            [](const Sentence& people, const Sentence& zone, bool one) {
                return one ? core::says("%1 presses %2", people, zone)
                           : core::says("%1 press %2", people, zone);
            },
        .at = [](const Sentence& person, const Sentence& zone,
                 ClockTime when) { return core::says("%1 presses %2 at %3", person, zone, when); },
        .done =
            [](const Sentence& zones, bool one) {
                return one ? core::says("%1 is pressed", zones)
                           : core::says("%1 are pressed", zones);
            },
        .work =
            [](const Sentence& zones, bool one) {
                return one ? core::says("pressing of zone %1", zones)
                           : core::says("pressing of zones %1", zones);
            }};
}

WayWords dotWords() {
    return {
        .name = core::says("Fuse dots"),
        .heading = core::says("Dots"),
        .where = core::says("Where the dots go"),
        .choose = core::says("Use fuse dots, which may lie on seams"),
        .smoothed = {}, // pressed as it lies
        .byRibbons = core::says("Dot at the ribbons' marks."),
        .atBreaks = core::says("All dots pressed, irons off, nothing half done."),
        .leaving = core::says("You leave. Finish your zone first; say which row you have reached."),
        .underneath = core::says("No pleat below? Do the dots hold?"),
        .putAway = core::says("Every dot holds; irons off and cold."),
        .rolledUp = [](std::int64_t) { return core::says("Irons off and cold."); },
        .care = core::says("One person holds an iron and minds it: up on its heel, off at breaks; "
                           "try it on a scrap."),
        .cautions = {core::says("One pair of hands on the iron, its cord off the walkway, off and "
                                "upright at breaks."),
                     core::says("Follow the label of web and batting: some melt.")},
        .howClose = core::says("How close together do dots go?"),
        .byFist = core::says("Lay your fist on the quilt: wherever it lies, it touches a dot."),
        .count =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 dot") : core::says("%1 dots", points);
            },
        .every = [](const Sentence& spacing) { return core::says("dots every %1", spacing); },
        .held =
            [](const Sentence& distance) {
                return core::says("No spot of the quilt is farther than %1 from a dot, so the "
                                  "layers are held together everywhere.",
                                  distance);
            },
        .why = core::says("A fist or a palm between them holds the layers so that nothing creeps "
                          "under the needle. Rows with every second one half a step over are the "
                          "thinnest covering there is, and two marked ribbons place them."),
        .single =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 single dot")
                                   : core::says("%1 single dots", points);
            },
        .singles =
            [](std::int64_t points, const Sentence& places) {
                return points == 1 ? core::says("1 single dot more: %1.", places)
                                   : core::says("%1 single dots more: %2.", points, places);
            },
        .rows =
            [](bool across, const Sentence& gap, const Sentence& step) {
                return across
                           ? core::says(
                                 "Rows across the quilt, about %1 apart, a dot about every %2, "
                                 "every second row half a step over.",
                                 gap, step)
                           : core::says("Rows from head to foot, about %1 apart, a dot about every "
                                        "%2, every second row half a step over.",
                                        gap, step);
            },
        .fewest =
            [](std::int64_t fewest, std::int64_t now) {
                return core::says("Fewest dots, in no rows: %1 or fewer, not %2", fewest, now);
            },
        .ready =
            [](const Sentence&) { return core::says("lay your dots ready, the paper still on."); },
        .noSuchStep =
            [](const Sentence& zone) {
                return core::says("Zone %1 is not pressed from the back in this plan.", zone);
            }};
}

bool spraysAny(const Session& session) {
    return std::ranges::any_of(session.jobs, [](const Job& j) { return wayOf(j).point.isPatch(); });
}

Findings meltsOrBurns(const Job& job, const Session& session) {
    Findings out;
    if (spraysAny(session))
        out.push_back(
            {Finding::Kind::sprayAndIrons, Finding::Level::stop, "/basting/with",
             core::says("Fuse dots are pressed with an iron, and basting spray, which catches fire "
                        "at one, is used on another quilt of this session."),
             core::says("Baste one of the two otherwise, or on another day.")});
    if (job.batting.meltable)
        out.push_back(
            {Finding::Kind::battingMelts, Finding::Level::warn, "/batting/meltable",
             core::says(
                 "This batting can melt under an iron, and fuse dots are pressed on with one."),
             core::says("Baste with pins, or test on scraps at the setting both labels allow.")});
    return out;
}

Finding unpressed(const Unfinished& u) {
    if (u.setting.room.irons < 1)
        return {Finding::Kind::noIron, Finding::Level::stop, "/room/irons",
                core::says("Dots have to be pressed, and there is no iron."),
                core::says("Bring one iron.")};
    if (std::ranges::none_of(u.helpers, &Helper::irons))
        return {Finding::Kind::nobodyIrons, Finding::Level::stop, "/helpers",
                core::says("Dots have to be pressed, and nobody may iron."),
                core::says("Let one helper iron.")};
    return {
        Finding::Kind::nobodyIrons, Finding::Level::stop, "/helpers",
        core::says("%1, pass %2: nobody who may iron reaches zone %3.", u.quilt, u.pass, u.zones),
        core::says("Let somebody who reaches it iron.")};
}

/// A square at both faces of the batting for every dot; pads under all tables of each surface.
std::vector<Supply> squares(const Session& session, std::span<const BastedQuilt> quilts) {
    const std::int64_t places = pointsOf(quilts);
    std::map<int, std::size_t> tables; // by surface
    for (const BastedQuilt& q : quilts) {
        std::size_t& most = tables[q.quilt->surface.number];
        most = std::max({most, q.quilt->surface.tables.size(), std::size_t{1}});
    }
    std::size_t pads = 0;
    for (const auto& [surface, count] : tables)
        pads += count;
    std::vector<Supply> out;
    addSupply(out, Supply::Kind::fuseSquares,
              core::says("fuse squares, %1", core::length(kSquare, session.jobs.front().unit)),
              double(withSpare(2 * places)), 0, {}, kSquare);
    if (places > 0)
        addSupply(out, Supply::Kind::irons, core::says("iron"), 1, session.setting.room.irons);
    addSupply(out, Supply::Kind::heatSafePads, core::says("heat-safe pads"), double(pads), 0);
    return out;
}

} // namespace

Way dots() {
    using enum TaskKind;
    using By = WayStep::By;
    return {
        .with = Basting::With::dots,
        .point = {.shape = WayPoint::Shape::dot,
                  .clearOfSeams = false,
                  .length = [](const Basting&) { return Length{}; },
                  .alongRow = nullptr},
        .steps = {{foldBack, By::fold, kFold, kFoldSqFt},
                  {dotLower, By::zones, kLayDot, 0, below()},
                  {foldForward, By::fold, kFold, kFoldSqFt},
                  {dotUpper, By::zones, kLayDot, 0, above()},
                  {press, By::irons, kPressDot, 0, pressing()},
                  {cool, By::nobody, kCool}},
        .calls = {Call::lay, Call::clamp, Call::dotBelow, Call::dotAbove, Call::press, Call::cool,
                  Call::check, Call::move},
        .finishes = [](const Helper& h) { return h.irons; },
        .fromBox = false,
        .irons = true,
        .turnedFrom = kThickBatting,
        .mostInZone = 50,
        .instead = {},
        .against = meltsOrBurns,
        .unfinished = unpressed,
        .materials = squares,
        .tools = [](const Session&, std::span<const BastedQuilt>) { return std::vector<Supply>{}; },
        .words = dotWords()};
}

} // namespace bastewright::ways
