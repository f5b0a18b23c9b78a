#include "ways/spray/spray.h"

#include "plan/trade_times.h"
#include "ways/supplies.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace bastewright::ways {
namespace {

using namespace trade_times;

/// Square feet of a quilt that one can holds: about three queens (90 x 108 in) at the most, six or
/// seven lap quilts (50 x 65 in) at the least; common practice. The least is reckoned with.
constexpr double kCanHolds = 150;

StepWords spraying() {
    return {
        .call = core::says("Spray"),
        .forLead = core::says("Top and batting back: one half, then the other; from pass 2 on, "
                              "onto what is basted."),
        .mine = core::says("Top and batting lie back. From the fold outward, band by band: spray "
                           "the batting below and smooth it down, spray it above and smooth the "
                           "top down."),
        .firmly = core::says("Never spray toward a face."),
        .idle = [](const Sentence&) { return core::says("Hold up what is folded back."); },
        .care = core::says("Wash your hands afterwards; the can's label decides."),
        .command = core::says("Spray and smooth down"),
        .brief = core::says("spray"),
        .heading = core::says("Spray"),
        .how = core::says("A light, even mist from as far off as the can says. Every band is "
                          "smoothed from the fold outward before the next."),
        .caution = core::says("Plenty of air, no iron, no flame; never spray toward a face."),
        .noun = core::says("the spraying"),
        .nounFirst = core::says("The spraying"),
        .past = core::says("sprayed"),
        .line = [](const Sentence& zones,
                   const Sentence& count) { return core::says("%1: spray %2", zones, count); },
        .doing =
            [](const Sentence& people, const Sentence& zone, bool one) {
                return one ? core::says("%1 sprays %2", people, zone)
                           : core::says("%1 spray %2", people, zone);
            },
        .at = [](const Sentence& person, const Sentence& zone,
                 ClockTime when) { return core::says("%1 sprays %2 at %3", person, zone, when); },
        .done =
            [](const Sentence& zones, bool one) {
                return one ? core::says("%1 is sprayed", zones)
                           : core::says("%1 are sprayed", zones);
            },
        .work =
            [](const Sentence& zones, bool one) {
                return one ? core::says("spraying of zone %1", zones)
                           : core::says("spraying of zones %1", zones);
            }};
}

WayWords sprayWords() {
    return {
        .name = core::says("Spray"),
        .heading = core::says("Sprayed patches"),
        .where = core::says("Where the bands go"),
        .choose = core::says("Baste with spray, which may lie on seams"),
        .smoothed = core::says("A ripple is lifted from the nearest edge and smoothed down again."),
        .byRibbons = core::says("A band at every mark of the side ribbon."),
        .atBreaks = core::says("Every band smoothed down, cans closed, nothing half done."),
        .leaving =
            core::says("You leave. Smooth your band down first; say which one you have reached."),
        .underneath = core::says("No pleat below? Does the backing hold?"),
        .putAway = core::says("Cans closed, away from heat; covers folded inward; hands washed."),
        .rolledUp =
            [](std::int64_t) { return core::says("Cans closed, covers off, hands washed."); },
        .care = core::says("Plenty of air; no iron, no flame; table and floor covered; never spray "
                           "toward a face; wash your hands; the can's label decides."),
        .cautions = {core::says(
                         "Spray only outdoors or with windows and doors open, away from irons and "
                         "flames and from anybody who has trouble breathing."),
                     core::says(
                         "Table and floor are covered. Never spray toward a face; wash your hands "
                         "afterwards. The can's label decides.")},
        .howClose = core::says("How deep is a band of spray?"),
        .byFist = core::says("A band is sprayed and smoothed down in one go; a forearm and a hand "
                             "are about 18 in."),
        .count =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 patch") : core::says("%1 patches", points);
            },
        .every = [](const Sentence& spacing) { return core::says("bands of %1", spacing); },
        .held =
            [](const Sentence& distance) {
                return core::says("The patches lie side by side, no spot farther than %1 from the "
                                  "middle of one, so the layers are held together everywhere.",
                                  distance);
            },
        .why = core::says("A band no deeper than two hands smooth in one go does not set before it "
                          "lies flat. A patch is a stretch of a band as wide as the band is deep; "
                          "zones and shares are counted in them."),
        .single =
            [](std::int64_t points) {
                return points == 1 ? core::says("1 single patch")
                                   : core::says("%1 single patches", points);
            },
        .singles =
            [](std::int64_t points, const Sentence& places) {
                return points == 1 ? core::says("1 single patch more: %1.", places)
                                   : core::says("%1 single patches more: %2.", points, places);
            },
        .rows =
            [](bool across, const Sentence& gap, const Sentence& step) {
                return across
                           ? core::says("Bands across the quilt, about %1 deep, in patches about "
                                        "%2 wide.",
                                        gap, step)
                           : core::says("Bands from head to foot, about %1 deep, in patches "
                                        "about %2 wide.",
                                        gap, step);
            },
        .fewest =
            [](std::int64_t fewest, std::int64_t now) {
                return core::says("Fewest patches: %1 or fewer, not %2", fewest, now);
            },
        .ready =
            [](const Sentence&) {
                return core::says("shake the can and try it on scraps, as its label says.");
            },
        .noSuchStep =
            [](const Sentence& zone) {
                return core::says("Zone %1 is sprayed in one step.", zone);
            }};
}

bool pressesAny(const Session& session) {
    return std::ranges::any_of(session.jobs, [](const Job& j) { return wayOf(j).irons; });
}

/// Where it may not be: no air, somebody whom it harms, an iron to light it.
Findings forbidden(const Job&, const Session& session) {
    using Kind = Finding::Kind;
    Findings out;
    if (!session.setting.room.ventilated)
        out.push_back(
            {Kind::notVentilated, Finding::Level::stop, "/room/ventilated",
             core::says("Spray is only for outdoors or for a room with windows and doors open, "
                        "and nothing says that this is one."),
             core::says("Go outdoors or open them, and say so of the room; or baste otherwise.")});
    const auto& helpers = session.setting.helpers;
    for (std::size_t i = 0; i < helpers.size(); ++i)
        if (helpers[i].troubleBreathing)
            out.push_back(
                {Kind::troubleBreathing, Finding::Level::stop,
                 "/helpers/" + std::to_string(i) + "/trouble_breathing",
                 core::says("%1 has trouble breathing, and basting is not sprayed where "
                            "such a person is.",
                            helpers[i].name),
                 core::says("Baste otherwise, or spray when %1 is not there.", helpers[i].name),
                 helpers[i].name});
    if (pressesAny(session))
        out.push_back(
            {Kind::sprayAndIrons, Finding::Level::stop, "/basting/with",
             core::says("Basting spray catches fire at an iron, and another quilt's dots are "
                        "pressed in this session."),
             core::says("Baste one of the two otherwise, or on another day.")});
    return out;
}

/// Cans for all the tops together; a cover for the tables and one for the floor of each surface.
std::vector<Supply> cans(const Session& session, std::span<const BastedQuilt> quilts) {
    const bool inches = session.jobs.front().unit == Unit::inch;
    double squareFeet = 0;
    std::set<int> tables, floors; // surfaces
    for (const BastedQuilt& q : quilts) {
        if (q.points == 0)
            continue;
        squareFeet += areaSquareInches(topRect(q.job->top)) / 144;
        floors.insert(q.quilt->surface.number);
        if (!q.quilt->surface.floor)
            tables.insert(q.quilt->surface.number);
    }
    std::vector<Supply> out;
    const double cans = std::ceil(squareFeet / kCanHolds - 1e-9);
    addSupply(out, Supply::Kind::sprayCans,
              inches ? core::says("basting spray, 150 to 200 square feet a can")
                     : core::says("basting spray, 14 to 18 m² a can"),
              cans, 0, cans == 1 ? core::says("can") : core::says("cans"));
    const auto covers = tables.size() + floors.size();
    addSupply(out, Supply::Kind::covers,
              covers == 1 ? core::says("old sheet to cover the floor")
                          : core::says("old sheets to cover table and floor"),
              double(covers), 0);
    return out;
}

} // namespace

Way spray() {
    using enum TaskKind;
    using By = WayStep::By;
    return {
        .with = Basting::With::spray,
        .point = {.shape = WayPoint::Shape::patch,
                  .clearOfSeams = false,
                  .length = [](const Basting&) { return Length{}; },
                  .alongRow = nullptr},
        .steps = {{TaskKind::spray, By::zones, kSprayPatch, 0, spraying()},
                  {smooth, By::palm, kHandsOff},
                  {settle, By::nobody, kSettle}},
        .calls = {Call::lay, Call::clamp, Call::spray, Call::handsOff, Call::wait, Call::check,
                  Call::move},
        .finishes = [](const Helper&) { return true; },
        .fromBox = false,
        .irons = false,
        .turnedFrom = {},
        .mostInZone = 12,
        .instead = {},
        .against = forbidden,
        .unfinished = nullptr,
        .materials = cans,
        .tools = [](const Session&, std::span<const BastedQuilt>) { return std::vector<Supply>{}; },
        .words = sprayWords()};
}

} // namespace bastewright::ways
