#include "view/plan/plan_presenter.h"

#include "view/base/words.h"
#include "view/plan/layer_rows.h"
#include "view/plan/plan_rows.h"

#include <algorithm>

using namespace bastewright;

PlanPresenter::PlanPresenter(QObject* parent)
    : QObject{parent}
    , alternatives_{{"surface", "start", "orientation", "passes", "time", "lifts", "chosen",
                     "workable", "why", "costs", "beside", "first"}}
    , supplies_{{"item", "need", "have", "buy", "unit", "lacking", "figure", "note"}}
    , people_{{"letter", "mark", "name", "hours", "work", "tasks"}}
    , help_{{"change", "gain"}} {}

void PlanPresenter::show(PlannedPtr planned) {
    planned_ = std::move(planned);
    if (std::size_t(quilt_) >= planned_->session.jobs.size())
        quilt_ = 0;
    alternatives_.setRows(rows::ofAlternatives(*planned_, std::size_t(quilt_)));
    supplies_.setRows(rows::ofSupplies(*planned_));
    people_.setRows(rows::ofPeople(*planned_));
    help_.setRows(rows::ofHelp(*planned_));
    emit changed();
}

int PlanPresenter::furtherWays() const {
    return int(std::ranges::count_if(alternatives_.rows(),
                                     [](const QVariantList& row) { return !row.last().toBool(); }));
}

void PlanPresenter::clear() {
    planned_.reset();
    quilt_ = 0;
    for (auto* list : {&alternatives_, &supplies_, &people_, &help_})
        list->setRows({});
    emit changed();
}

void PlanPresenter::setBusy(bool busy) {
    if (busy == busy_)
        return;
    busy_ = busy;
    emit busyChanged();
}

void PlanPresenter::setQuiltIndex(int index) {
    if (index == quilt_ || index < 0)
        return;
    quilt_ = index;
    if (planned_)
        alternatives_.setRows(rows::ofAlternatives(*planned_, std::size_t(quilt_)));
    emit changed();
}

bool PlanPresenter::good() const {
    return planned_ && !planned_->plan.quilts.empty() && !anyStop(planned_->plan.findings);
}

QString PlanPresenter::passesText() const {
    const auto* plan = quilt().plan();
    if (!plan)
        return {};
    const auto n = plan->passes.size();
    return n == 1 ? tr("1 pass") : tr("%1 passes").arg(n);
}

QString PlanPresenter::pointsText() const {
    const auto* plan = quilt().plan();
    if (!plan)
        return {};
    return words::points(*quilt().job(), plan->zones);
}

QString PlanPresenter::spanText() const {
    return planned_ ? words::span(wholeMinutes(planned_->plan.finish)) : QString{};
}

Seconds PlanPresenter::finish() const {
    if (!planned_)
        return {};
    const Seconds middle = planned_->plan.range.middle;
    return middle > Seconds{} ? middle : planned_->plan.finish;
}

QString PlanPresenter::finishText() const {
    return planned_ ? words::clock(planned_->session.setting.start, finish()) : QString{};
}

QString PlanPresenter::rangeText() const {
    if (!planned_ || planned_->plan.range.middle == Seconds{})
        return {};
    const auto& range = planned_->plan.range;
    const auto start = planned_->session.setting.start;
    return tr("%1–%2").arg(words::clock(start, range.early), words::clock(start, range.late));
}

QString PlanPresenter::surfaceText() const {
    const auto* plan = quilt().plan();
    if (!plan)
        return {};
    if (plan->surface.floor)
        return tr("On the floor");
    return QStringLiteral("%1 · %2").arg(
        words::fromCore(plan->surface.name),
        words::size({plan->surface.length, plan->surface.width}, planned_->plan.unit));
}

QString PlanPresenter::boundText() const {
    const auto* plan = quilt().plan();
    if (!plan)
        return {};
    return tr("Nobody could do with fewer than %1 or %2 passes; no plan ends before %3.")
        .arg(words::points(*quilt().job(), plan->bounds.points))
        .arg(plan->bounds.passes)
        .arg(words::clock(planned_->session.setting.start, planned_->plan.finishBound));
}

QString PlanPresenter::findingsText() const {
    if (!planned_)
        return {};
    int stops = 0, warnings = 0, notes = 0;
    for (const auto& f : planned_->plan.findings) {
        stops += f.level == Finding::Level::stop;
        warnings += f.level == Finding::Level::warn;
        notes += f.level == Finding::Level::note;
    }
    if (stops > 0)
        return stops == 1 ? tr("Fix 1 thing before you start")
                          : tr("Fix %1 things before you start").arg(stops);
    if (warnings > 0)
        return warnings == 1 ? tr("Check 1 thing first")
                             : tr("Check %1 things first").arg(warnings);
    if (notes > 0)
        return notes == 1 ? tr("Ready to baste · 1 tip")
                          : tr("Ready to baste · %1 tips").arg(notes);
    return tr("Ready to baste");
}

QString PlanPresenter::suppliesText() const {
    if (!planned_)
        return {};
    QStringList buy;
    for (const auto& s : planned_->plan.supplies)
        if (s.buy > 0)
            buy << words::fromCore(s.item);
    return buy.isEmpty() ? tr("We have everything")
                         : tr("To buy: %1").arg(buy.join(QStringLiteral(", ")));
}

QString PlanPresenter::backingText() const {
    const auto* plan = quilt().plan();
    if (!plan || !plan->backing)
        return {};
    const auto& backing = *plan->backing;
    QStringList parts{tr("Backing %1, fabric runs %2.")
                          .arg(words::size(plan->layers.backing, planned_->plan.unit),
                               backing.along ? tr("along") : tr("across"))};
    for (const auto& thing : backing.toBring)
        parts << words::fromCore(thing);
    for (const auto& more : {backing.leastBought, backing.nearestMiss})
        if (!more.empty())
            parts << words::fromCore(more);
    return parts.join(QLatin1Char(' '));
}

QString PlanPresenter::battingText() const {
    const auto* plan = quilt().plan();
    if (!plan || !plan->batting)
        return {};
    return tr("Batting %1").arg(rows::battingWords(*quilt().job(), *plan));
}
