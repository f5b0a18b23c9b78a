#include "view/pattern_desk.h"

#include "view/words.h"

#include <cmath>

using namespace bastewright;

namespace {

constexpr double kFine = 0.02; // inches: places are whole eighths

/// Every point of the plan, in inches.
std::vector<QPointF> placed(const QuiltPlan& plan) {
    std::vector<QPointF> out;
    for (const Zone& zone : plan.zones)
        for (const PlacedPoint& p : zone.points)
            out.emplace_back(p.at.x.in(), p.at.y.in());
    return out;
}

bool has(const std::vector<QPointF>& points, QPointF at) {
    return std::ranges::any_of(points, [&](QPointF p) {
        return std::abs(p.x() - at.x()) < kFine && std::abs(p.y() - at.y()) < kFine;
    });
}

/// Where a tile of this pattern that holds the place begins: all its points are there, and no others
/// are within it.
std::optional<QPointF> cornerOf(const PointPattern& pattern, const std::vector<QPointF>& points,
                                QPointF place) {
    if (pattern.points.empty())
        return {};
    const QSizeF size{pattern.tile.width.in(), pattern.tile.length.in()};
    const Point first = pattern.points.front().at;
    for (const QPointF& p : points) {
        const QPointF corner{p.x() - first.x.in(), p.y() - first.y.in()};
        const QRectF tile{corner, size};
        if (!tile.contains(place))
            continue;
        const QRectF inside = tile.adjusted(kFine, kFine, -kFine, -kFine);
        const auto within = std::ranges::count_if(
            points, [&](QPointF q) { return inside.contains(q); });
        if (within > std::ssize(pattern.points))
            continue;
        if (std::ranges::all_of(pattern.points, [&](const PlacedPoint& q) {
                return has(points, {corner.x() + q.at.x.in(), corner.y() + q.at.y.in()});
            }))
            return corner;
    }
    return {};
}

} // namespace

PatternDesk::PatternDesk(PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , plan_{plan}
    , rows_{{"number", "fromLeft", "fromHead"}} {
    connect(plan_, &PlanPresenter::changed, this, &PatternDesk::close);
}

const PointPattern* PatternDesk::pattern() const {
    const QuiltPlan* plan = plan_->quilt().plan();
    return plan && at_ && *at_ < plan->patterns.size() ? &plan->patterns[*at_] : nullptr;
}

Length PatternDesk::pin() const {
    const Job* job = plan_->quilt().job();
    return job && job->basting.with == Basting::With::pins ? job->basting.pinLength : Length{};
}

void PatternDesk::look(qreal x, qreal y) {
    const QuiltPlan* plan = plan_->quilt().plan();
    if (!plan)
        return;
    const auto points = placed(*plan);
    for (std::size_t i = 0; i < plan->patterns.size(); ++i)
        if (const auto corner = cornerOf(plan->patterns[i], points, {x, y})) {
            const Size& tile = plan->patterns[i].tile;
            return show(i, {*corner, QSizeF{tile.width.in(), tile.length.in()}});
        }
    close();
}

void PatternDesk::step(int by) {
    const QuiltPlan* plan = plan_->quilt().plan();
    if (!plan || plan->patterns.empty())
        return;
    const int count = int(plan->patterns.size());
    const int next = at_ ? (int(*at_) + by % count + count) % count : 0;
    const PointPattern& pattern = plan->patterns[std::size_t(next)];
    const auto points = placed(*plan);
    // The first place it occurs at.
    QRectF area;
    for (const QPointF& p : points)
        if (const auto corner = cornerOf(pattern, points, p)) {
            area = {*corner, QSizeF{pattern.tile.width.in(), pattern.tile.length.in()}};
            break;
        }
    show(std::size_t(next), area);
}

void PatternDesk::close() {
    show({}, {});
}

void PatternDesk::show(std::optional<std::size_t> at, const QRectF& area) {
    at_ = at;
    area_ = area;
    QList<QVariantList> rows;
    if (const PointPattern* p = pattern()) {
        const Unit unit = plan_->quilt().job()->unit;
        for (const PlacedPoint& point : p->points)
            rows.push_back({int(rows.size()) + 1, words::length(point.at.x, unit),
                            words::length(point.at.y, unit)});
    }
    rows_.setRows(std::move(rows));
    emit changed();
}

QString PatternDesk::title() const {
    const PointPattern* p = pattern();
    if (!p)
        return {};
    QString name = words::fromCore(p->name);
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    return tr("%1: %2 in each, so")
        .arg(name, words::points(*plan_->quilt().job(), qsizetype(p->points.size())));
}

QString PatternDesk::text() const {
    const PointPattern* p = pattern();
    if (!p)
        return {};
    const QString size = words::size(p->tile, plan_->quilt().job()->unit);
    return p->times == 1 ? tr("%1, once on the top").arg(size)
                         : tr("%1, %2 times on the top").arg(size).arg(p->times);
}
