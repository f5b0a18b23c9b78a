#include "view/plan/why_desk.h"

WhyDesk::WhyDesk(PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , plan_{plan}
    , figures_{{"figure", "title", "value"}}
    , inputs_{{"label", "value"}} {
    connect(plan_, &PlanPresenter::changed, this, &WhyDesk::refresh);
}

void WhyDesk::refresh() {
    QList<QVariantList> rows;
    for (const QString& figure : why::figures())
        if (const Why w = why::of(figure, plan_->quilt()); !w.title.isEmpty())
            rows.push_back({figure, w.title, w.value});
    figures_.setRows(std::move(rows));
}

bool WhyDesk::open(const QString& figure) {
    why_ = why::of(figure, plan_->quilt());
    QList<QVariantList> rows;
    for (const auto& [label, value] : why_.inputs)
        rows.push_back({label, value});
    inputs_.setRows(std::move(rows));
    emit changed();
    return !why_.title.isEmpty();
}
