#include "view/plan/pass_presenter.h"

#include "view/base/words.h"
#include "view/plan/plan_rows.h"

#include <algorithm>

using namespace bastewright;

PassPresenter::PassPresenter(PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , plan_{plan}
    , passes_{{"number", "title", "zones", "points", "time", "from"}} {
    connect(plan_, &PlanPresenter::changed, this, &PassPresenter::refresh);
}

void PassPresenter::refresh() {
    passes_.setRows(plan_->isPlanned()
                        ? rows::ofPasses(*plan_->planned(), std::size_t(plan_->quiltIndex()))
                        : QList<QVariantList>{});
    number_ = std::clamp(number_, 1, std::max(1, count()));
    if (!zoneInHand())
        zone_.clear();
    emit changed();
}

int PassPresenter::count() const {
    return passes_.count();
}

void PassPresenter::setNumber(int number) {
    number = std::clamp(number, 1, std::max(1, count()));
    if (number == number_)
        return;
    number_ = number;
    if (const auto* zone = zoneInHand(); zone && zone->pass != number_)
        zone_.clear();
    emit changed();
}

void PassPresenter::setZone(const QString& id) {
    if (id == zone_)
        return;
    zone_ = id;
    if (const auto* zone = zoneInHand())
        number_ = zone->pass;
    else
        zone_.clear();
    emit changed();
}

void PassPresenter::stepZone(int by) {
    const auto* plan = plan_->quilt().plan();
    if (!plan || plan->zones.empty())
        return;
    const auto& zones = plan->zones;
    const auto at = std::find_if(zones.begin(), zones.end(),
                                 [&](const Zone& z) { return words::fromCore(z.id) == zone_; });
    const auto n = std::ptrdiff_t(zones.size());
    const auto next = at == zones.end() ? 0 : ((at - zones.begin()) + by % n + n) % n;
    setZone(words::fromCore(zones[std::size_t(next)].id));
}

const Pass* PassPresenter::pass() const {
    const auto* plan = plan_->quilt().plan();
    if (!plan)
        return nullptr;
    const auto at = std::find_if(plan->passes.begin(), plan->passes.end(),
                                 [this](const Pass& p) { return p.number == number_; });
    return at == plan->passes.end() ? nullptr : &*at;
}

const Zone* PassPresenter::zoneInHand() const {
    const auto* plan = plan_->quilt().plan();
    if (!plan || zone_.isEmpty())
        return nullptr;
    const auto at = std::find_if(plan->zones.begin(), plan->zones.end(),
                                 [this](const Zone& z) { return words::fromCore(z.id) == zone_; });
    return at == plan->zones.end() ? nullptr : &*at;
}

QString PassPresenter::title() const {
    if (!pass())
        return {};
    return count() == 1 ? tr("One pass") : tr("Pass %1 of %2").arg(number_).arg(count());
}

QString PassPresenter::steps() const {
    const auto* p = pass();
    if (!p)
        return {};
    const auto unit = plan_->planned()->plan.unit;
    QStringList out;
    if (p->shift.dx != Length{})
        out << tr("Shift the quilt %1 to the %2.")
                   .arg(words::length(abs(p->shift.dx), unit),
                        words::side(p->shift.dx > Length{} ? Side::right : Side::left));
    if (p->shift.dy != Length{})
        out << tr("Shift the quilt %1 toward the %2.")
                   .arg(words::length(abs(p->shift.dy), unit),
                        words::side(p->shift.dy > Length{} ? Side::foot : Side::head));
    if (p->number > 1 && p->liftPeople > 1)
        out << tr("%1 people move it.").arg(p->liftPeople);
    for (const Side side : kSides)
        if (p->backingOverhang[side] > Length{})
            out << tr("Backing hangs over the %1 edge by %2.")
                       .arg(words::side(side), words::length(p->backingOverhang[side], unit));
    if (p->pulled)
        out << tr("Nothing is laid: the quilt, held, is only pulled across.");
    for (const Side side : kSides) {
        if (p->beyond[side] == Beyond::chairs)
            out << tr("Rest the %1 side on chairs.").arg(words::side(side));
        if (p->beyond[side] == Beyond::spareTable)
            out << tr("Rest the %1 side on the spare table.").arg(words::side(side));
    }
    for (const auto& roll : p->rolls) {
        if (roll.folded)
            out << tr("Fold the %1 side on a support.").arg(words::side(roll.side));
        else
            out << tr("Roll the %1 side: %2 across, %3 clips.")
                       .arg(words::side(roll.side), words::length(roll.diameter, unit))
                       .arg(roll.clips);
    }
    return out.join(QLatin1Char('\n'));
}

QString PassPresenter::zoneTitle() const {
    const auto* zone = zoneInHand();
    return zone ? tr("%1 · %2").arg(words::zone(words::toCore(zone_)),
                                    words::points(*plan_->quilt().job(), std::span{zone, 1}))
                : QString{};
}

QString PassPresenter::zoneText() const {
    const auto* zone = zoneInHand();
    if (!zone)
        return {};
    const auto& planned = *plan_->planned();
    const auto start = planned.session.setting.start;
    QStringList out;
    if (const QString rows = words::zoneRows(*plan_->quilt().plan(), *zone, *plan_->quilt().job());
        !rows.isEmpty())
        out << rows;
    for (const auto& task : planned.plan.tasks) {
        if (task.job != plan_->quiltIndex() || task.zone != zone->id)
            continue;
        QStringList who;
        for (const auto& person : task.people)
            who << words::fromCore(person);
        const QString what = words::zoneTask(task.kind);
        QString line =
            QStringLiteral("%1 %2 · %3")
                .arg(words::clock(start, task.start), what, who.join(QStringLiteral(", ")));
        if (!task.places.empty())
            line += tr(", at the %1 edge").arg(words::side(task.places.front().side));
        out << line;
    }
    return out.join(QLatin1Char('\n'));
}
