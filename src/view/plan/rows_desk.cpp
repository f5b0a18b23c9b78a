#include "view/plan/rows_desk.h"

#include "view/base/words.h"
#include "ways/point_words.h"

#include <algorithm>

using namespace bastewright;

namespace {

/// Every row has the same marks.
bool alike(const PinRows& rows) {
    return rows.ribbons.odd == rows.ribbons.even;
}

} // namespace

RowsDesk::RowsDesk(PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , plan_{plan} {
    connect(plan_, &PlanPresenter::changed, this, &RowsDesk::refresh);
}

const PinRows* RowsDesk::rows() const {
    const QuiltPlan* plan = plan_->quilt().plan();
    return plan && plan->rows ? &*plan->rows : nullptr;
}

bool RowsDesk::any() const {
    const QuiltPlan* plan = plan_->quilt().plan();
    return plan && job() && (plan->rows || plan->blocks);
}

Unit RowsDesk::unit() const {
    return job() ? job()->unit : Unit::inch;
}

void RowsDesk::refresh() {
    const QuiltPlan* plan = plan_->quilt().plan();
    auto now = plan ? std::pair{plan->rows, plan->blocks} : decltype(known_){};
    // Advice that arrives changes nothing of the rows, and takes the card from nobody.
    if (now == known_)
        return emit changed();
    known_ = std::move(now);
    show({});
}

void RowsDesk::look(qreal x, qreal y) {
    if (!any())
        return;
    const PinRows* r = rows();
    if (!r || r->lines.empty())
        return show(0);
    const qreal side = r->along == PinRows::Along::width ? y : x;
    const auto nearest = std::ranges::min_element(
        r->lines, {}, [side](const PinRow& row) { return std::abs(row.at.in() - side); });
    show(std::size_t(nearest - r->lines.begin()));
}

void RowsDesk::step(int by) {
    if (!any())
        return;
    const PinRows* r = rows();
    const int count = r ? std::max(1, int(r->lines.size())) : 1;
    show(std::size_t(at_ ? ((int(*at_) + by) % count + count) % count : 0));
}

void RowsDesk::close() {
    show({});
}

void RowsDesk::show(std::optional<std::size_t> at) {
    at_ = at;
    emit changed();
}

QString RowsDesk::title() const {
    if (!any())
        return {};
    const QuiltPlan& plan = *plan_->quilt().plan();
    return words::fromCore(plan.rows ? rowsSentence(*plan.rows, *job())
                                     : blocksSentence(*plan.blocks, *job()));
}

QStringList RowsDesk::details() const {
    QStringList out;
    if (!any())
        return out;
    const QuiltPlan& plan = *plan_->quilt().plan();
    for (const Sentence& s :
         plan.rows ? rowsDetails(*plan.rows, *job()) : blocksDetails(*plan.blocks, *job()))
        out << words::fromCore(s);
    return out;
}

QString RowsDesk::rowTitle() const {
    const PinRows* r = rows();
    if (!r || !at_ || *at_ >= r->lines.size())
        return {};
    return tr("Row %1 of %2: %3")
        .arg(*at_ + 1)
        .arg(r->lines.size())
        .arg(words::points(*job(), qsizetype(r->lines[*at_].places.size())));
}

QString RowsDesk::rowText() const {
    const PinRows* r = rows();
    if (!r || !at_ || *at_ >= r->lines.size())
        return {};
    const PinRow& row = r->lines[*at_];
    const QString at = words::length(row.at, unit());
    const bool across = r->along == PinRows::Along::width;
    const QString marks = alike(*r)       ? tr("at the marks of all rows")
                          : *at_ % 2 == 0 ? tr("at the odd rows’ marks")
                                          : tr("at the even rows’ marks");
    const QString where = across ? tr("%1 from the head, %2").arg(at, marks)
                                 : tr("%1 from the left, %2").arg(at, marks);
    if (row.aside.empty())
        return where;
    return row.aside.size() == 1 ? tr("%1; 1 of them beside its mark, clear of a seam").arg(where)
                                 : tr("%1; %2 of them beside their marks, clear of seams")
                                       .arg(where)
                                       .arg(row.aside.size());
}

QString RowsDesk::marksTitle() const {
    const PinRows* r = rows();
    if (!r)
        return {};
    const bool across = r->along == PinRows::Along::width;
    if (alike(*r))
        return across ? tr("Along every row, from the left") : tr("Along every row, from the head");
    return across ? tr("Along a row, from the left: above odd rows, below even rows")
                  : tr("Along a row, from the head: above odd rows, below even rows");
}

QRectF RowsDesk::area() const {
    const PinRows* r = rows();
    const QuiltPlan* plan = plan_->quilt().plan();
    if (!r || !plan || !at_ || *at_ >= r->lines.size())
        return {};
    const qreal half = r->gap.in() / 4, at = r->lines[*at_].at.in();
    const Size& top = plan->layers.top;
    return r->along == PinRows::Along::width ? QRectF{0, at - half, top.width.in(), 2 * half}
                                             : QRectF{at - half, 0, 2 * half, top.length.in()};
}
