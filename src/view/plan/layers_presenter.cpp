#include "view/plan/layers_presenter.h"

#include "planners/whole/quilt.h"
#include "sheets/pictures/layer_pictures.h"
#include "view/base/words.h"
#include "view/plan/layer_rows.h"

#include <algorithm>

using namespace bastewright;

LayersPresenter::LayersPresenter(PlanPresenter* plan, JobEditor* editor, QObject* parent)
    : QObject{parent}
    , plan_{plan}
    , editor_{editor}
    , choices_{{"bought", "seams", "waste", "about", "wanted", "chosen", "mayTake"}}
    , battingChoices_{{"about", "chosen"}}
    , spare_{{"title", "level", "text", "cure"}} {
    connect(plan_, &PlanPresenter::changed, this, &LayersPresenter::refresh);
}

void LayersPresenter::refresh() {
    if (quilt() == looked_)
        return; // something else about the plan has changed, such as being busy
    looked_ = quilt();
    shown_ = -1;
    QList<QVariantList> choices, batting, spare;
    const QuiltPlan* plan = quilt().plan();
    if (plan && plan->backing) {
        const auto& offered = plan->backing->alternatives;
        for (std::size_t i = 0; i < offered.size(); ++i) {
            choices.push_back(rows::ofBackingWay(offered[i], quilt().job()->unit, canTake(i)));
            if (offered[i].chosen)
                shown_ = int(i);
        }
    }
    if (plan && plan->batting)
        for (const BattingAlternative& way : plan->batting->alternatives)
            batting.push_back(rows::ofBattingWay(way));
    if (plan) {
        spare = rows::ofSpare(*quilt().job(), *plan, quilt().planned()->plan.findings,
                              int(quilt().index()));
    }
    choices_.setRows(std::move(choices));
    battingChoices_.setRows(std::move(batting));
    spare_.setRows(std::move(spare));
    emit changed();
}

void LayersPresenter::setShown(int row) {
    if (row == shown_ || row < 0 || row >= choices_.count())
        return;
    shown_ = row;
    emit changed();
}

bool LayersPresenter::previewing() const {
    const QuiltPlan* plan = quilt().plan();
    return plan && plan->backing && shown_ >= 0 &&
           !plan->backing->alternatives[std::size_t(shown_)].chosen;
}

const BackingPlan* LayersPresenter::backing() const {
    const QuiltPlan* plan = quilt().plan();
    if (!plan || !plan->backing)
        return nullptr;
    return previewing() && std::size_t(shown_) < ways().size() ? &ways()[std::size_t(shown_)]
                                                               : &*plan->backing;
}

int LayersPresenter::cloths() const {
    const BackingPlan* plan = backing();
    return plan ? int(sheets::clothsOf(*quilt().job(), *plan).size()) : 0;
}

QString LayersPresenter::clothName(int cloth) const {
    if (cloth < 0 || cloth >= cloths())
        return {};
    const auto all = sheets::clothsOf(*quilt().job(), *backing());
    const auto& c = all[std::size_t(cloth)];
    return tr("%1, %2 wide: cut in this order")
        .arg(c.fabric.empty() ? tr("Fabric") : words::fromCore(c.fabric),
             words::length(c.width, quilt().job()->unit));
}

const std::vector<BackingPlan>& LayersPresenter::ways() const {
    static const std::vector<BackingPlan> kNone;
    const PlannedPtr planned = quilt().planned(); // the presenter of the plan keeps it, too
    const auto at = std::size_t(quilt().index());
    return planned && at < planned->backingWays.size() ? planned->backingWays[at] : kNone;
}

Job LayersPresenter::asking(std::size_t way) const {
    Job job = *quilt().job();
    const auto& offered = quilt().plan()->backing->alternatives;
    if (offered[way].wanted.empty()) {
        // The first that needs no other cloth is taken without being asked for.
        const auto first = std::ranges::find_if(
            offered, [](const BackingAlternative& a) { return a.wanted.empty(); });
        job.backing.way.reset();
        if (way != std::size_t(first - offered.begin()))
            job.backing.way = BackingWay{offered[way].bought, offered[way].seams};
        return job;
    }
    // The column as a length on hand of its own, with allowances and what washing and squaring
    // take.
    job.backing.way.reset();
    const BackingPlan& wanted = ways()[way];
    const Rect& strip =
        std::ranges::find(wanted.panels, kUnlistedCloth, &BackingPanel::fabric)->area;
    const auto before = [&](Length needed) {
        return Length::inches(
            std::int64_t(needed.in() / (1 - job.backing.shrinkPercent / 100) + 0.999));
    };
    const Length width = wanted.along ? strip.width() : strip.length();
    const Length length = wanted.along ? strip.length() : strip.width();
    job.backing.fabrics.push_back(
        {.name = words::toCore(tr("Another fabric")),
         .usableWidth = std::max(Length::inches(6), before(width + 2 * job.backing.seam)),
         .onHand = before(length + job.backing.squaring),
         .buyable = false,
         .price = 0});
    return job;
}

bool LayersPresenter::canTake(std::size_t way) const {
    const QuiltPlan& plan = *quilt().plan();
    const BackingAlternative& offered = plan.backing->alternatives[way];
    if (offered.chosen || way >= ways().size())
        return false;
    if (offered.wanted.empty())
        return true;
    // With a cloth of that size the plan may still find something else that buys less.
    const BackingOutcome asked = pieceBacking(asking(way), plan, false);
    return asked.plan && asked.plan->buy == ways()[way].buy &&
           asked.plan->panels.size() == ways()[way].panels.size();
}

QString LayersPresenter::take(int row) {
    if (row < 0 || row >= choices_.count() || !canTake(std::size_t(row)))
        return tr("The plan cannot be asked for this way.");
    Session next = editor_->session();
    next.jobs[std::size_t(editor_->quilt())].backing = asking(std::size_t(row)).backing;
    return editor_->apply(tr("way to piece the backing"), std::move(next));
}

QString LayersPresenter::takeBatting(int row) {
    const QuiltPlan* plan = quilt().plan();
    if (!plan || !plan->batting || row < 0 ||
        std::size_t(row) >= plan->batting->alternatives.size())
        return tr("The plan cannot be asked for this way.");
    const BattingAlternative& way = plan->batting->alternatives[std::size_t(row)];
    Session next = editor_->session();
    Batting& batting = next.jobs[std::size_t(editor_->quilt())].batting;
    batting.pack.reset();
    batting.roll.reset();
    if (way.roll > Length{})
        batting.roll = way.roll;
    else
        batting.pack = way.pack;
    batting.pieceStrip = way.pieceStrip;
    return editor_->apply(tr("way to get the batting"), std::move(next));
}

QString LayersPresenter::buyText() const {
    const BackingPlan* plan = backing();
    if (!plan)
        return {};
    QStringList parts;
    const Unit unit = quilt().job()->unit;
    for (const BackingPurchase& purchase : plan->buy)
        if (purchase.length > Length{})
            parts << (plan->buy.size() == 1 || purchase.fabric.empty()
                          ? words::lengthToBuy(purchase.length, unit)
                          : tr("%1 of %2")
                                .arg(words::lengthToBuy(purchase.length, unit),
                                     words::fromCore(purchase.fabric)));
    return parts.isEmpty() ? tr("Nothing to buy for the backing")
                           : tr("Buy %1").arg(parts.join(QStringLiteral(" + ")));
}

QString LayersPresenter::backingText() const {
    const QuiltPlan* plan = quilt().plan();
    if (!plan || !plan->backing || shown_ < 0)
        return tr("The backing is there already, or cannot be made: see what to check first.");
    return words::fromCore(plan->backing->alternatives[std::size_t(shown_)].text);
}

QString LayersPresenter::savingText() const {
    const QuiltPlan* plan = quilt().plan();
    if (!plan || !plan->backing)
        return {};
    QStringList parts;
    if (!plan->backing->leastBought.empty())
        parts << tr("Least to buy: %1").arg(words::fromCore(plan->backing->leastBought));
    if (!plan->backing->nearestMiss.empty())
        parts << tr("Nearly: %1").arg(words::fromCore(plan->backing->nearestMiss));
    if (!plan->backing->runnerUp.empty())
        parts << tr("Next best: %1").arg(words::fromCore(plan->backing->runnerUp));
    return parts.join(QLatin1Char('\n'));
}

QString LayersPresenter::battingText() const {
    const QuiltPlan* plan = quilt().plan();
    return plan && plan->batting
               ? rows::battingWords(*quilt().job(), *plan)
               : tr("The batting is there already, or cannot be made: see what to check first.");
}

QString LayersPresenter::spareText() const {
    const QuiltPlan* plan = quilt().plan();
    return plan ? rows::sizesWords(*quilt().job(), *plan) : QString{};
}
