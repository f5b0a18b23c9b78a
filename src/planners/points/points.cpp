#include "planners/points/points.h"

#include "planners/points/block_layout.h"
#include "planners/points/free_layout.h"
#include "planners/points/patch_rows.h"
#include "planners/points/pin_rows_of.h"
#include "planners/points/points_store.h"
#include "planners/points/report.h"
#include "planners/points/stitch_rows.h"
#include "ways/way.h"

#include <cmath>

namespace bastewright {
namespace {

using namespace points;

/// By the blocks is offered up to so many times the bound, and taken unasked up to so many times
/// the points of rows.
constexpr double kMostByBlocks = 1.4, kBlocksWorth = 1.1;

/// Rows and marks are told apart by at most so many steps of the raster in a spacing: more gain
/// nothing, and a spacing of yards would have thousands.
constexpr double kFinestShare = 1.0 / 64;

/// Marks on ribbons are measured from the edge of the top.
Rules forRows(Rules rules, const WayPoint& point) {
    rules.anchor = {rules.top().x0, rules.top().y0};
    if (point.isPatch())
        return rules;
    rules.fine *= std::max(1.0, std::floor(kFinestShare * rules.spacing / rules.fine));
    rules.step = std::max(rules.step, rules.fine);
    return rules;
}

Measures measuresFor(const Job& job) {
    const double unit = job.unit == Unit::inch ? 0.5 : Length::millimetres(5).in();
    if (job.basting.measure && job.basting.measure->length > Length{}) {
        const double own = job.basting.measure->length.in();
        return {{own / 2, own / 4, unit / 2}};
    }
    Measures out{{unit, unit / 2}};
    if (job.unit == Unit::inch)
        out.units.push_back(unit / 4);
    return out;
}

/// Rows, and single points for what they leave bare; scattered points where no rows fit.
struct Rowed {
    Layout layout;
    std::optional<RowLayout> rows;
};

Rowed rowed(const Job& job, const Rules& rules, const PointsOptions& options,
            std::stop_token stop) {
    Rowed out;
    const WayPoint& point = wayOf(job).point;
    if (point.isPatch())
        out.rows = patchRows(rules, options.along);
    else if (point.alongRow)
        out.rows = stitchRows(rules, point.alongRow(job.basting), options.along);
    else
        out.rows = rowsFor(
            rules, {options.along, measuresFor(job), options.glance ? 0 : options.effort}, stop);
    if (out.rows) {
        const RowFrame frame{rules, out.rows->choice.along};
        for (const FittedRow& row : out.rows->rows)
            for (const FittedPin& pin : row)
                out.layout.pins.push_back({frame.toTop(pin.at), false});
    } else {
        fill(out.layout, rules, 100);
    }
    if (point.isPatch())
        return out; // no patch is too many, though its middle were
    repair(out.layout, rules, 300);
    prune(out.layout, rules);
    return out;
}

PointsPlan planned(const Job& job, const PointsOptions& options, std::stop_token stop) {
    PointsPlan plan;
    const Rect area = topRect(job.top);
    if (area.empty() || job.basting.spacing <= Length{})
        return plan;
    plan.bound = leastPoints(areaSquareInches(area), job.basting.spacing);
    const Rules rules = rulesFor(job), edged = forRows(rules, wayOf(job).point);
    const bool sewn = wayOf(job).point.alongRow != nullptr;
    const bool inRows = sewn || wayOf(job).point.isPatch();
    const auto wanted = inRows           ? Basting::Layout::rows
                        : options.layout ? options.layout
                                         : job.basting.layout;
    Rowed rows = rowed(job, edged, options, stop);
    Layout layout = std::move(rows.layout);
    std::optional<BlockLayout> blocks;
    if (wanted == Basting::Layout::blocks)
        blocks = blockLayout(job, rules, std::size_t(plan.bound * kMostByBlocks) + 1);
    else if (!wanted && options.effort > 0 && !stop.stop_requested())
        blocks = blockLayout(job, rules, std::size_t(double(layout.pins.size()) * kBlocksWorth) + 1,
                             stop);
    if (blocks) {
        layout = std::move(blocks->layout);
        plan.blocks = std::move(blocks->blocks);
    } else if (wanted == Basting::Layout::fewest) {
        layout = freeLayout(rules, std::move(layout), options.effort, options.glance, stop);
    } else if (rows.rows) {
        if (wanted == Basting::Layout::blocks)
            plan.findings.push_back(
                {Finding::Kind::noBlockFigure, Finding::Level::note, "/basting/layout",
                 core::says(
                     "No figure that is the same in every block covers this top with few enough; "
                     "planned in rows."),
                 ""});
        plan.rows = pinRowsOf(*rows.rows, edged, job.unit, layout.spots());
    }
    tidy(layout);
    std::optional<int> alongRows;
    if (sewn && rows.rows)
        alongRows = rows.rows->choice.along == PinRows::Along::width ? 0 : 90;
    for (const auto& p : layout.pins)
        plan.points.push_back({exact(p.at), alongRows ? *alongRows : rules.angleAt(p.at)});
    std::sort(plan.points.begin(), plan.points.end(),
              [](const PlacedPoint& a, const PlacedPoint& b) {
                  return std::pair{a.at.y, a.at.x} < std::pair{b.at.y, b.at.x};
              });
    report(plan, job, rules, layout.spots());
    return plan;
}

} // namespace

int leastPoints(double squareInches, Length spacing) {
    const double r2 = spacing.in() * spacing.in() / 2;
    return static_cast<int>(std::ceil(squareInches / (r2 * 1.5 * std::sqrt(3.0)) - 1e-9));
}

PointsPlan planPoints(const Job& job, const PointsOptions& options, std::stop_token stop) {
    if (options.memory == nullptr)
        return planned(job, options, stop);
    const PointsMemory::Store::Key key{job.top,           job.basting,    job.unit,
                                       seamsAreSewn(job), options.effort, options.layout,
                                       options.along,     options.glance};
    if (auto known = options.memory->store().find(key))
        return *known;
    auto plan = planned(job, options, stop);
    if (!stop.stop_requested())
        options.memory->store().keep(key, plan);
    return plan;
}

} // namespace bastewright
