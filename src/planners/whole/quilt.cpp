#include "planners/whole/quilt.h"

#include "plan/quilt_name.h"
#include "planners/batting/batting.h"
#include "planners/passes/holds.h"
#include "planners/proof/proof.h"
#include "planners/surface/reachable.h"
#include "ways/way.h"

#include <set>

namespace bastewright {
namespace {

constexpr std::size_t kShownAlternatives = 24;

void append(Findings& to, const Findings& from) {
    to.insert(to.end(), from.begin(), from.end());
}

/// Why an alternative was or was not taken, against the chosen one.
Sentence compared(const Alternative& a, const Alternative& chosen, std::size_t workable, bool asked,
                  bool quickest) {
    if (a.chosen && workable == 1)
        return core::says("the only one that works");
    if (a.chosen && asked)
        return core::says("as was asked for");
    if (a.chosen)
        return quickest ? core::says("quickest of %1 that work", workable)
                        : core::says("quickest for all quilts here without moving the tables");
    const int more = a.passes - chosen.passes;
    const auto longer = a.predicted - chosen.predicted;
    const Sentence time = longer >= Seconds{60}    ? core::says("%1 longer", longer)
                          : longer <= -Seconds{60} ? core::says("%1 shorter", -longer)
                                                   : core::says("as quick");
    switch (more) {
    case 0:
        return time;
    case 1:
        return core::says("%1, 1 pass more", time);
    case -1:
        return core::says("%1, 1 pass fewer", time);
    default:
        return more > 0 ? core::says("%1, %2 passes more", time, more)
                        : core::says("%1, %2 passes fewer", time, -more);
    }
}

/// The ways as they are told, in their order: those that differ in nothing that is told are one.
std::vector<Alternative> toldWays(const std::vector<PassChoice>& choices) {
    std::set<Alternative> known;
    std::vector<Alternative> out;
    for (const PassChoice& c : choices) {
        Alternative told = c.summary;
        if (told.workable)
            told.why = {}; // the first says what there is to say
        if (known.insert(std::move(told)).second)
            out.push_back(c.summary);
    }
    return out;
}

std::vector<Alternative> alternatives(const std::vector<PassChoice>& choices) {
    std::vector<Alternative> out = toldWays(choices);
    const auto workable =
        static_cast<std::size_t>(std::ranges::count(out, true, &Alternative::workable));
    const bool quickest = std::ranges::none_of(choices, [&](const PassChoice& c) {
        return c.summary.workable && c.summary.predicted < choices.front().summary.predicted;
    });
    // Something was asked for, and that is why a quicker one was not taken.
    const bool asked = !quickest && !choices.empty() && choices.front().asked &&
                       std::ranges::any_of(choices, [](const PassChoice& c) { return !c.asked; });
    if (out.size() > kShownAlternatives)
        out.resize(kShownAlternatives);
    for (std::size_t i = 0; i < out.size(); ++i) {
        Alternative& a = out[i];
        a.chosen = i == 0 && a.workable;
        if (!a.workable)
            continue;
        const Sentence note = a.why;
        a.why = compared(a, choices.front().summary, workable, asked, quickest);
        if (!note.empty())
            a.why = core::says("%1; %2", a.why, note);
    }
    return out;
}

/// So wide that a quilt gets on: an anchor and some rows; of patches, which lie on the table with
/// all of them, one beside half of one that is basted.
Length leastTable(const Job& job, const std::vector<PassChoice>& choices) {
    if (!wayOf(job).point.isPatch() || choices.empty())
        return kAnchor + Length::inches(16);
    const Length half = job.basting.spacing / 2;
    const AxisTable& table = choices.front().lie.x;
    return std::max(kAnchor, half) + half + std::max(table.insetLo, table.insetHi);
}

Finding noSurface(const Job& job, const std::vector<PassChoice>& choices) {
    const Sentence quilt = quiltName(job.name);
    return {
        Finding::Kind::noSurface, Finding::Level::stop, "/room/tables",
        choices.empty()
            ? core::says("None of the tables can hold %1 so that it can be shifted along: there is "
                         "no table in the room.",
                         quilt)
            : core::says(
                  "None of the tables can hold %1 so that it can be shifted along: on %2 %3.",
                  quilt, choices.front().summary.surface, choices.front().summary.why),
        core::says("Use tables at least %1 wide with a long side to stand at, or list no tables "
                   "and work on the floor.",
                   core::length(leastTable(job, choices), job.unit))};
}

/// Where the basting begins: "at one end of the quilt".
Sentence begins(Basting::Start start) {
    switch (start) {
    case Basting::Start::centred:
        return core::says("at the middle of the table");
    case Basting::Start::besideMiddle:
        return core::says("beside the middle of the table");
    case Basting::Start::oneEnd:
        return core::says("at one end of the quilt");
    case Basting::Start::best:
        break;
    }
    return core::says("where it is quickest");
}

/// Lines moved by the difference of two frames.
std::vector<Segment> moved(std::vector<Segment> lines, Vec by) {
    for (Segment& s : lines)
        s = {{s.from.x + by.dx, s.from.y + by.dy}, {s.to.x + by.dx, s.to.y + by.dy}};
    return lines;
}

/// From the top's frame to that of a layer centred under it.
Vec intoLayer(Size layer, Size top) {
    return {(layer.width - top.width) / 2, (layer.length - top.length) / 2};
}

/// Backing and batting, where they are still to be made: backing seams away from the table's joints
/// under the first pass, batting joins away from backing seams.
void planLayers(const Job& job, const LayerSizes& layers, QuiltPlan& out, Findings& findings) {
    std::vector<Segment> seams;
    if (!(job.backing.width && job.backing.length)) {
        BackingOutcome backing = pieceBacking(job, out, false);
        append(findings, backing.findings);
        out.backing = std::move(backing.plan);
    }
    if (out.backing) {
        std::vector<Rect> panels;
        for (const BackingPanel& p : out.backing->panels)
            panels.push_back(p.area);
        const Vec toTop = intoLayer(layers.backing, layers.top);
        const Vec toBatting = intoLayer(layers.batting, layers.top);
        seams = moved(jointsBetween(panels), {toBatting.dx - toTop.dx, toBatting.dy - toTop.dy});
    }
    if (!(job.batting.width && job.batting.length)) {
        BattingOutcome batting = planBatting(job, layers.batting, seams);
        append(findings, batting.findings);
        out.batting = std::move(batting.plan);
    }
}

/// Cloth that lies rolled on the table against a wall: pulling the tables away lets it hang.
void adviseOnWalls(const QuiltPlan& quilt, Findings& out) {
    for (const Pass& p : quilt.passes)
        for (const Side side : kSides)
            if (p.beyond[side] == Beyond::onTable) {
                out.push_back(
                    {Finding::Kind::rolledAtWall, Finding::Level::note, "/room/walls",
                     core::says(
                         "On the side at the wall nothing can hang or be clamped: in pass %1 the "
                         "rest of the quilt on that side stays rolled up on top of the table.",
                         p.number),
                     core::says("Pull the tables a foot away from the wall: then the quilt can "
                                "hang down there.")});
                return;
            }
}

} // namespace

LayerSizes layerSizes(const Job& job) {
    const Rect top = topRect(job.top);
    const auto around = [&](Length overage) {
        return Size{top.width() + 2 * overage, top.length() + 2 * overage};
    };
    LayerSizes out{
        {top.width(), top.length()}, around(job.batting.overage), around(job.backing.overage)};
    out.batting = {job.batting.width.value_or(out.batting.width),
                   job.batting.length.value_or(out.batting.length)};
    const auto made = [&](const std::optional<Length>& measured, Length planned) {
        if (!measured)
            return planned;
        return job.backing.washed
                   ? *measured
                   : Length::nearestInches(measured->in() * (1 - job.backing.shrinkPercent / 100));
    };
    out.backing = {made(job.backing.width, out.backing.width),
                   made(job.backing.length, out.backing.length)};
    return out;
}

std::vector<LayerSizes> layerSizes(const Session& session) {
    std::vector<LayerSizes> out;
    for (const Job& job : session.jobs)
        out.push_back(layerSizes(job));
    return out;
}

BackingOutcome pieceBacking(const Job& job, const QuiltPlan& quilt, bool ways) {
    BackingOptions options;
    options.ways = ways;
    const LayerSizes& layers = quilt.layers;
    if (!quilt.passes.empty())
        options.keepAway = moved(jointsUnderQuilt(quilt.surface, quilt.passes.front().table),
                                 intoLayer(layers.backing, layers.top));
    return planBacking(job, layers.backing, options);
}

Findings notAsAskedFor(const Session& session, const Job& job, const Alternative& way) {
    Findings out;
    const Room& room = session.setting.room;
    const auto say = [&](Finding::Kind kind, const char* field, Sentence text, Sentence cure) {
        out.push_back({kind, Finding::Level::warn, field, std::move(text), std::move(cure)});
    };
    // Who asked for none is told nothing where only from an end works.
    if (job.basting.start != Basting::Start::best && !startsAsAskedFor(job, way))
        say(Finding::Kind::otherStart, "/basting/start",
            core::says("Basting cannot begin %1 on these tables, as you chose; the plan begins %2.",
                       begins(job.basting.start), begins(way.start)),
            core::says("Let it begin wherever it is faster."));
    if (room.tables.empty())
        return out;
    if (!liesAsAskedFor(job, way))
        say(Finding::Kind::otherLie, "/basting/quilt_length_along",
            core::says("The quilt cannot lie along the tables as you chose; the plan turns it."),
            core::says("Let it lie the faster way."));
    if (!standsAsAskedFor(room, way))
        say(Finding::Kind::otherTables, "/room/together",
            core::says(
                "The tables cannot be used pushed together to %1, as you chose; the plan uses %2.",
                core::size(room.together->length, room.together->width, job.unit), way.surface),
            core::says("Let the tables stand as is quickest."));
    return out;
}

QuiltPlan layQuilt(const Session& session, std::size_t job, const PassChoice& choice, int surface,
                   const LayerSizes& layers, const PointsPlan& points) {
    QuiltPlan out;
    out.name = session.jobs[job].name;
    out.layers = layers;
    out.rows = points.rows;
    out.blocks = points.blocks;
    if (!choice.summary.workable)
        return out;
    const PassRequest request{session.jobs[job], session.setting, layers, points.points,
                              session.jobs.size() == 1};
    out.surface = surfacePlan(choice, surface);
    out.passes = detailedPasses(request, choice);
    out.bounds.passes = choice.leastPasses;
    return out;
}

QuiltPlan planQuilt(const Session& session, const Shared& shared, QuiltPlan lying,
                    const PointsPlan& points, Findings& findings) {
    const Job& job = session.jobs[shared.job];
    QuiltPlan out = std::move(lying);
    out.bounds.points = points.bound;
    out.alternatives = alternatives(shared.choices);
    append(findings, proveSizes(job, out.layers));
    append(findings, points.findings);

    out.machineRolls = machineRolls(job, session.setting.stash, out.layers.backing);
    if (out.passes.empty()) {
        findings.push_back(noSurface(job, shared.choices));
    } else {
        append(findings, notAsAskedFor(session, job, shared.choices.front().summary));
        adviseOnWalls(out, findings);
    }
    const LayerSizes layers = out.layers;
    planLayers(job, layers, out, findings);
    return out;
}

} // namespace bastewright
