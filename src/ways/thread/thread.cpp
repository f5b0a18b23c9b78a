#include "ways/thread/thread.h"

#include "plan/trade_times.h"
#include "ways/supplies.h"

#include <algorithm>
#include <cmath>

namespace bastewright::ways {
namespace {

using namespace trade_times;

/// Common practice: stitches of 1 to 1 1/2 in, as long below as above, in rows 3 to 6 in apart.
constexpr Length kStitchLength = Length::inch64ths(96);

/// From one stitch of a row to the next: 3 in; with wide rows half their distance, with narrow ones
/// three quarters of it.
Length fromStitchToStitch(const Basting& basting) {
    return std::min(basting.spacing * 3 / 4, std::max(2 * kStitchLength, basting.spacing / 2));
}

Length stitchLength(const Basting& basting) {
    return std::min(kStitchLength, fromStitchToStitch(basting) / 2);
}

StepWords stitching() {
    return {
        .call = core::says("Stitch"),
        .forLead = core::says("From the middle outward; nobody pulls a thread tight."),
        .mine = core::says("Your rows, from the middle outward, through all three layers."),
        .firmly = core::says("Never pull the thread tight."),
        .idle = [](const Sentence&) { return core::says("Thread needles for the others."); },
        .care = core::says("One needle each, never in the mouth or in the quilt."),
        .command = core::says("Sew the rows"),
        .brief = core::says("stitch"),
        .heading = core::says("Sew the rows"),
        .how = core::says("Long stitches through all three layers, the thread lying loose. At the "
                          "end of your part of a row one stitch back, and a hand's breadth of "
                          "thread left."),
        .caution = core::says("Needles are counted before the pass is moved."),
        .noun = core::says("the stitching"),
        .nounFirst = core::says("The stitching"),
        .past = core::says("stitched"),
        .line = [](const Sentence& zones,
                   const Sentence& count) { return core::says("%1: sew %2", zones, count); },
        .doing =
            [](const Sentence& people, const Sentence& zone, bool one) {
                return one ? core::says("%1 stitches %2", people, zone)
                           : core::says("%1 stitch %2", people, zone);
            },
        .at = [](const Sentence& person, const Sentence& zone,
                 ClockTime when) { return core::says("%1 stitches %2 at %3", person, zone, when); },
        .done =
            [](const Sentence& zones, bool one) {
                return one ? core::says("%1 is stitched", zones)
                           : core::says("%1 are stitched", zones);
            },
        .work =
            [](const Sentence& zones, bool one) {
                return one ? core::says("stitching of zone %1", zones)
                           : core::says("stitching of zones %1", zones);
            }};
}

/// What drawing them out again takes one person, in whole minutes up to five, then in fives.
std::int64_t minutesToDraw(std::int64_t stitches) {
    const auto minutes = static_cast<std::int64_t>(std::ceil(double(stitches) * kDrawStitch / 60));
    return minutes <= 5 ? std::max<std::int64_t>(1, minutes) : (minutes + 4) / 5 * 5;
}

WayWords threadWords() {
    return {
        .name = core::says("Thread"),
        .heading = core::says("Stitches"),
        .where = core::says("Where the rows of stitches go"),
        .choose = core::says("Baste with thread, which may cross seams"),
        .smoothed = core::says("Only then is it sewn."),
        .byRibbons = core::says("A row at every mark of the side ribbon."),
        .atBreaks = core::says("Every thread fastened, nothing half done."),
        .leaving =
            core::says("You leave. Fasten your thread first; say which row you have reached."),
        .underneath = core::says("No pleat below? Does every stitch reach the back?"),
        .putAway = core::says("Needles counted; ends of thread picked up."),
        .rolledUp =
            [](std::int64_t points) {
                const auto minutes = minutesToDraw(points);
                return minutes == 1
                           ? core::says("Needles counted. The thread stays in until it is quilted; "
                                        "one person then draws it out in about 1 minute.")
                           : core::says("Needles counted. The thread stays in until it is quilted; "
                                        "one person then draws it out in about %1 minutes.",
                                        minutes);
            },
        .care = core::says("Every needle is counted out and counted back."),
        .cautions = {core::says("Needles are counted out and counted back, and never held in the "
                                "mouth. What falls is picked up at once.")},
        .howClose = core::says("How far apart do the rows go?"),
        .byFist = core::says("Lay your fist on the quilt: wherever it lies, it touches a row."),
        .count =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 stitch") : core::says("%1 stitches", points);
            },
        .every = [](const Sentence& spacing) { return core::says("rows every %1", spacing); },
        .held =
            [](const Sentence& distance) {
                return core::says("No spot of the quilt is farther than %1 from a stitch, so the "
                                  "layers are held together everywhere.",
                                  distance);
            },
        .why = core::says("A palm between rows of long stitches holds the layers so that nothing "
                          "creeps under the needle; thread may cross seams and is drawn out "
                          "afterwards."),
        .single =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 single stitch")
                                   : core::says("%1 single stitches", points);
            },
        .singles =
            [](std::int64_t points, const Sentence& places) {
                return points == 1 ? core::says("1 single stitch more: %1.", places)
                                   : core::says("%1 single stitches more: %2.", points, places);
            },
        .rows =
            [](bool across, const Sentence& gap, const Sentence& step) {
                return across
                           ? core::says("Rows of stitches across the quilt, about %1 apart: the "
                                        "needle down about every %2, and up again halfway.",
                                        gap, step)
                           : core::says("Rows of stitches from head to foot, about %1 apart: the "
                                        "needle down about every %2, and up again halfway.",
                                        gap, step);
            },
        .fewest =
            [](std::int64_t fewest, std::int64_t now) {
                return core::says("Fewest stitches: %1 or fewer, not %2", fewest, now);
            },
        .ready =
            [](const Sentence&) {
                return core::says("thread your needles, each with twice the length of a row.");
            },
        .noSuchStep =
            [](const Sentence& zone) { return core::says("Zone %1 is sewn in one step.", zone); }};
}

/// Half as much again as the rows are long: what stitches take up, and an end at every stop (from
/// memory). In whole yards or metres.
std::vector<Supply> spools(const Session& session, std::span<const BastedQuilt> quilts) {
    const Unit unit = session.jobs.front().unit;
    Length sewn;
    for (const BastedQuilt& q : quilts)
        sewn += q.points * fromStitchToStitch(q.job->basting);
    std::vector<Supply> out;
    addSupply(out, Supply::Kind::thread, core::says("basting thread"),
              double(ceilDiv(sewn * 3 / 2, clothUnit(unit))), 0, clothSymbol(unit));
    const auto& helpers = session.setting.helpers;
    const auto sew = std::ranges::count_if(helpers, &Helper::pins);
    if (sewn > Length{})
        addSupply(out, Supply::Kind::needles, core::says("long needles"),
                  helpers.empty() ? 1 : double(sew), 0);
    return out;
}

} // namespace

Way thread() {
    using enum TaskKind;
    using By = WayStep::By;
    return {
        .with = Basting::With::thread,
        .point = {.shape = WayPoint::Shape::stitch,
                  .clearOfSeams = false,
                  .length = stitchLength,
                  .alongRow = fromStitchToStitch},
        .steps = {{smooth, By::palm, kHandsOff}, {stitch, By::zones, kStitch, 0, stitching()}},
        .calls = {Call::lay, Call::clamp, Call::handsOff, Call::stitch, Call::check, Call::move},
        .finishes = [](const Helper&) { return true; },
        .fromBox = false,
        .irons = false,
        .turnedFrom = {},
        .mostInZone = 45,
        .instead = {},
        .against = [](const Job&, const Session&) { return Findings{}; },
        .unfinished = nullptr,
        .materials = spools,
        .tools = [](const Session&, std::span<const BastedQuilt>) { return std::vector<Supply>{}; },
        .words = threadWords()};
}

} // namespace bastewright::ways
