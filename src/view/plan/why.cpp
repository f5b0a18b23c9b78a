#include "view/plan/why.h"

#include "planners/passes/passes.h"
#include "planners/proof/proof.h"
#include "planners/rolls/lifting.h"
#include "planners/rolls/rolls.h"
#include "view/base/words.h"
#include "ways/way.h"

#include <QCoreApplication>

#include <cmath>
#include <numbers>
#include <utility>

using namespace bastewright;

namespace why {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("why", text);
}

/// What the figures are worked out from.
struct From {
    const Plan& plan;
    const Session& session;
    const QuiltPlan& quilt;
    const Job& job;
    Unit unit;

    QString length(Length l) const { return words::length(l, unit); }
    QString size(Size s) const { return words::size(s, unit); }
    QString clock(Seconds s) const { return words::clock(session.setting.start, s); }
    const Alternative* way() const {
        const auto at = std::ranges::find_if(quilt.alternatives, &Alternative::chosen);
        return at == quilt.alternatives.end() ? nullptr : &*at;
    }
};

Why ofPasses(const From& f) {
    if (f.quilt.passes.empty())
        return {};
    const auto n = f.quilt.passes.size();
    Why w{.title = tr("Passes")};
    w.value = n == 1 ? tr("1 pass") : tr("%1 passes").arg(n);
    w.plain = tr("Only what lies on the tables can be basted, so the quilt is moved until every "
                 "part of it has been on them.");
    w.rule = tr(
        "A pass bastes what lies on the tables and is not basted yet; where the top goes on past "
        "the table's edge, a rim stays free. A strip of basted quilt stays on them as an "
        "anchor when the quilt is shifted, so each pass after the first gains the tables' "
        "size less rim and strip.");
    w.inputs = {{tr("Top"), f.size(f.quilt.layers.top)}};
    if (!f.quilt.surface.floor)
        w.inputs << std::pair{tr("Tables pushed together"),
                              f.size({f.quilt.surface.length, f.quilt.surface.width})}
                 << std::pair{tr("Rim kept free"), f.length(f.session.setting.room.inset)}
                 << std::pair{tr("Anchor strip"), f.length(kAnchor)};
    if (const auto* way = f.way()) {
        w.inputs << std::pair{tr("Start"), words::start(way->start)}
                 << std::pair{tr("Way of all shifts"), f.length(way->shifted)};
    }
    w.bound = f.quilt.bounds.passes == 1
                  ? tr("No arrangement on these tables takes fewer than 1 pass.")
                  : tr("No arrangement on these tables takes fewer than %1 passes.")
                        .arg(f.quilt.bounds.passes);
    w.reason =
        tr("Every shift can move the layers against each other, and costs lifting and clamping. "
           "Working outward from the middle lets fullness go to an open edge instead of being "
           "caught between two basted areas.");
    w.source = tr("Geometry, exact. Anchor strip of 6 in: from memory, practice 4 to 12 in.");
    return w;
}

Why ofPoints(const From& f) {
    qsizetype n = 0;
    for (const Zone& z : f.quilt.zones)
        n += qsizetype(z.points.size());
    if (n == 0)
        return {};
    const Way& way = wayOf(f.job);
    const double r = f.job.basting.spacing.in() / std::numbers::sqrt2;
    Why w{.title = words::fromCore(way.words.heading)};
    w.value = words::points(f.job, f.quilt.zones);
    w.plain = words::fromCore(way.words.held(core::length(Length::nearestInches(r), f.job.unit)));
    w.rule = tr("No place of the top is farther from the middle of one than on a square grid of "
                "the spacing: the spacing divided by the root of two.");
    w.inputs = {{tr("Top"), f.size(f.quilt.layers.top)},
                {tr("Spacing"), f.length(f.job.basting.spacing)},
                {tr("Farthest from one"), f.length(Length::nearestInches(r))}};
    if (!way.point.isPatch())
        w.inputs << std::pair{tr("In from the edge"), f.length(f.job.basting.edge)};
    if (way.point.clearOfSeams)
        w.inputs << std::pair{tr("Clear of sewn seams"), seamsAreSewn(f.job)
                                                             ? f.length(f.job.basting.clear)
                                                             : tr("seams are not sewn")};
    if (f.quilt.rows)
        w.inputs << std::pair{tr("Rows"), QString::number(f.quilt.rows->lines.size())};
    w.bound = tr("Without any seam or edge to keep clear of, no fewer than %1 could do it.")
                  .arg(f.quilt.bounds.points);
    w.reason = words::fromCore(way.words.why);
    w.source =
        way.point.isPatch()
            ? tr("Bound: Kershner, American Journal of Mathematics 61 (1939). Depth of a band: "
                 "common practice, 12 to 18 in; the can’s label goes first.")
            : tr("Bound and rows: Kershner, American Journal of Mathematics 61 (1939). Spacing: "
                 "common practice, 3 to 6 in; the batting’s label goes first.");
    return w;
}

Why ofFinish(const From& f) {
    if (f.plan.tasks.empty())
        return {};
    Seconds work{};
    for (const Task& t : f.plan.tasks)
        work += (t.end - t.start) * std::int64_t(t.people.size());
    Why w{.title = tr("Finish")};
    w.value = tr("%1, finishes at %2")
                  .arg(words::span(wholeMinutes(f.plan.finish)), f.clock(f.plan.finish));
    w.plain = tr("All work at the same time, and we finish when the last of us does.");
    w.rule =
        tr("Every task takes the trade’s time at the person’s pace. Nobody is in two places, one "
           "person takes 24 in of an edge, and pins are closed only after the whole pass has been "
           "smoothed.");
    w.inputs = {{tr("Start"), words::clock(f.session.setting.start, Seconds{})},
                {tr("People"), QString::number(f.session.setting.helpers.size())},
                {tr("Tasks"), QString::number(f.plan.tasks.size())},
                {tr("Work of all together"), words::span(work)}};
    w.bound = tr("No schedule of the same tasks ends before %1.").arg(f.clock(f.plan.finishBound));
    w.reason =
        tr("The first hour tells the true pace: at the table the times follow what is ticked.");
    w.source = tr("Times of the tasks: common practice. Bound: proven for this plan.");
    return w;
}

/// What is said of either layer below the top.
Why ofLayer(const From& f, const QString& title, Size layer, Length overage) {
    return {.title = title,
            .value = f.size(layer),
            .inputs = {{tr("Top"), f.size(f.quilt.layers.top)},
                       {tr("Overage on each side"), f.length(overage)}}};
}

Why ofBacking(const From& f) {
    Why w = ofLayer(f, tr("Backing"), f.quilt.layers.backing, f.job.backing.overage);
    if (f.quilt.backing) {
        const auto& plan = *f.quilt.backing;
        QStringList buy;
        for (const auto& b : plan.buy)
            buy << (f.unit == Unit::inch ? words::yardsUp(b.length) : f.length(b.length));
        if (!buy.isEmpty())
            w.value = tr("%1 to buy").arg(buy.join(QStringLiteral(" + ")));
        w.inputs << std::pair{tr("Backing"), f.size(f.quilt.layers.backing)}
                 << std::pair{tr("Seam allowance"), f.length(f.job.backing.seam)}
                 << std::pair{tr("Shrinks by"),
                              tr("%1 %").arg(words::amount(f.job.backing.shrinkPercent))}
                 << std::pair{tr("Pieces"), QString::number(plan.panels.size())};
        for (const auto& fabric : f.job.backing.fabrics)
            w.inputs << std::pair{fabric.name.empty() ? tr("Usable width")
                                                      : words::fromCore(fabric.name),
                                  f.length(fabric.usableWidth)};
        QStringList near;
        for (const auto& more : {plan.leastBought, plan.nearestMiss, plan.runnerUp})
            if (!more.empty())
                near << words::fromCore(more);
        w.bound = near.join(QLatin1Char(' '));
    }
    w.plain = tr("The backing must be larger than the top on all four sides; this is the least "
                 "fabric that people would sew it from.");
    w.rule =
        tr("Every way to piece the backing was tried; this one needs the least fabric to be "
           "bought. Seams are work: to save one, up to %1 more is bought. No piece is narrower "
           "than %2, none lies wholly in what is trimmed away at the end, and %3 of every length "
           "is cut off to square it. Fabric is bought by the eighth of a yard, or 5 cm, upwards.")
            .arg(f.length(f.job.backing.seamWorth), f.length(f.job.backing.leastPiece),
                 f.length(f.job.backing.squaring));
    w.reason = tr("Quilting draws the layers in, and clamps need something to hold. A seam on the "
                  "middle line wears and shows, one over a joint of the tables will not lie flat.");
    w.source = tr(
        "Overage of 2 to 4 in, 4 to 6 for a frame, squaring of 4 in a length: common practice. The "
        "worth of a seam and the narrowest piece: from memory.");
    return w;
}

Why ofBatting(const From& f) {
    Why w = ofLayer(f, tr("Batting"), f.quilt.layers.batting, f.job.batting.overage);
    w.inputs << std::pair{tr("Thickness"), f.length(f.job.batting.thickness)};
    if (f.quilt.batting && !f.quilt.batting->joins.empty())
        w.inputs << std::pair{tr("Pieces"), QString::number(f.quilt.batting->pieces.size())}
                 << std::pair{tr("Overlap lost at each join"), f.length(f.job.batting.overlap)}
                 << std::pair{tr("Joining strip"), f.length(f.quilt.batting->strip)};
    w.plain = tr("The batting must lie under all of the top and a little more, in as few "
                 "pieces as can be.");
    if (f.quilt.batting && !f.quilt.batting->buy.empty()) {
        QStringList near;
        for (const auto& way : f.quilt.batting->alternatives)
            if (!way.chosen)
                near << words::fromCore(way.text);
        w.bound = near.join(QLatin1Char(' '));
        w.rule =
            tr("The smallest pack that covers the top with its overage on every side, or a length "
               "off the roll; where none is large enough, two packs or lengths off one roll are "
               "joined: the fewest joins, then the shortest, then the least bought.");
    } else if (f.quilt.batting) {
        w.rule = tr(
            "Leftovers are cut square, trimmed and joined by straight cuts across what is already "
            "joined: the fewest joins, then the shortest.");
    } else {
        w.rule = tr("As measured.");
    }
    w.reason =
        tr("Batting that ends short leaves a border with nothing in it; joins kept away from the "
           "backing’s seams do not show as ridges.");
    w.source = tr("Overage of 2 to 4 in, sizes of packs and widths of rolls: common practice.");
    return w;
}

Why ofSpare(const From& f) {
    const auto least = [&](Size layer) {
        const LayerSpare s = spareOf(f.job.top, layer);
        return std::min(s.sides.left(), s.ends.left());
    };
    Why w{.title = tr("Overage that remains on each side")};
    w.value =
        tr("backing %1, batting %2")
            .arg(f.length(least(f.quilt.layers.backing)), f.length(least(f.quilt.layers.batting)));
    w.plain =
        tr("If a layer slips to one side by no more than this, it still lies under every edge of "
           "the top.");
    w.rule =
        tr("Half of what a layer is larger than the top, each layer centered under it, less what a "
           "top "
           "that leans takes once it is laid straight, less %1 for creep: for each side, never for "
           "the sum.")
            .arg(f.length(kCreep));
    w.inputs = {{tr("Top"), f.size(f.quilt.layers.top)},
                {tr("Batting"), f.size(f.quilt.layers.batting)},
                {tr("Backing"), f.size(f.quilt.layers.backing)}};
    w.reason =
        tr("All the overage on one side helps nobody on the other. The four sides are compared "
           "before each pass is let go, because a layer that has crept can still be moved then.");
    w.source = tr("Geometry, exact. Creep: common practice.");
    return w;
}

const Roll* thickestRoll(const QuiltPlan& quilt) {
    const Roll* most = nullptr;
    for (const Pass& p : quilt.passes)
        for (const Roll& r : p.rolls)
            if (!most || r.diameter > most->diameter)
                most = &r;
    return most;
}

Why ofClips(const From& f) {
    const Roll* roll = thickestRoll(f.quilt);
    if (!roll)
        return {};
    Why w{.title = tr("Roll clips")};
    w.value = roll->folded ? tr("none we have holds a roll of %1").arg(f.length(roll->diameter))
                           : tr("%1 that hold %2").arg(roll->clips).arg(f.length(roll->clipHolds));
    w.plain = tr("A clip must be wide enough to go round the roll and tight enough to hold it.");
    w.rule = tr(
        "A roll of length L and thickness t fills a ring: D² = 4·L·t / (π·packing). The smallest "
        "clip that holds D, one every 15 in of the roll and at least two.");
    w.inputs = {{tr("Quilt in the roll"), f.length(roll->rolled)},
                {tr("Thickness of the layers"), f.length(sandwichThickness(f.job.batting))},
                {tr("Packing, by hand"), words::amount(kHandPacking)},
                {tr("Roll is across"), f.length(roll->diameter)},
                {tr("Roll is long"), f.length(roll->along)}};
    w.reason =
        tr("What hangs drags the layers out of place; a clip that is too small springs off, one "
           "that is too large lets the roll open.");
    w.source = tr("Area rule of wound rolls. Packing and fabric thickness: from memory. One clip "
                  "every 12 to 18 in: common practice.");
    return w;
}

Why ofWeight(const From& f) {
    const double kg = quiltKilograms(f.job, f.quilt.layers.backing);
    Why w{.title = tr("Weight")};
    const int people = peopleToSlide(kg);
    w.value = people == 1
                  ? tr("%1, 1 person by weight").arg(words::weight(kg, f.unit))
                  : tr("%1, %2 people by weight").arg(words::weight(kg, f.unit)).arg(people);
    w.plain = tr("As many move the quilt as keep each person’s share under %1.")
                  .arg(words::weight(recommendedWeightLimit(kSlide), f.unit));
    w.rule = tr("Area of the backing times the batting and two layers of fabric, carried in equal "
                "parts. Each part stays within the recommended limit for leaning over a table’s "
                "edge; a quilt wider than a pair of arms takes two people whatever it weighs.");
    w.inputs = {{tr("Backing"), f.size(f.quilt.layers.backing)},
                {tr("Batting"), tr("%1 g/m²").arg(words::amount(f.job.batting.gsm))},
                {tr("Fabric, each layer"), tr("%1 g/m²").arg(words::amount(kClothGsm))},
                {tr("Limit for a person"), words::weight(recommendedWeightLimit(kSlide), f.unit)}};
    w.reason =
        tr("Slide, do not lift, and nobody who was told not to lift does, whatever the figure "
           "says.");
    w.source = tr("Revised NIOSH lifting equation, Publication 94-110 (1994); the posture is our "
                  "assumption. Weight of fabric: from memory.");
    return w;
}

} // namespace

const QStringList& figures() {
    static const QStringList all{QStringLiteral("passes"),  QStringLiteral("points"),
                                 QStringLiteral("finish"),  QStringLiteral("backing"),
                                 QStringLiteral("batting"), QStringLiteral("spare"),
                                 QStringLiteral("clips"),   QStringLiteral("weight")};
    return all;
}

Why of(const QString& figure, const PlannedQuilt& quilt) {
    if (!quilt.plan() || !quilt.job())
        return {};
    const From from{quilt.planned()->plan, quilt.planned()->session, *quilt.plan(), *quilt.job(),
                    quilt.job()->unit};
    using Maker = Why (*)(const From&);
    static constexpr std::array<Maker, 8> kMakers{ofPasses,  ofPoints, ofFinish, ofBacking,
                                                  ofBatting, ofSpare,  ofClips,  ofWeight};
    const auto at = figures().indexOf(figure);
    return at < 0 ? Why{} : kMakers.at(std::size_t(at))(from);
}

QString ofSupply(Supply::Kind kind) {
    switch (kind) {
    case Supply::Kind::pins:
    case Supply::Kind::fuseSquares:
        return QStringLiteral("points");
    case Supply::Kind::clips:
        return QStringLiteral("clips");
    case Supply::Kind::fabric:
        return QStringLiteral("backing");
    case Supply::Kind::battingPack:
    case Supply::Kind::battingRoll:
    case Supply::Kind::leftovers:
    case Supply::Kind::joiningStrip:
        return QStringLiteral("batting");
    default:
        return {};
    }
}

} // namespace why
