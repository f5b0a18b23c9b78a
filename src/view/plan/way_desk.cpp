#include "view/plan/way_desk.h"

#include "view/base/words.h"

#include <cmath>

using namespace bastewright;

namespace {

constexpr double kSamePlace = 1; // inches; a finger cannot tell them apart

} // namespace

WayDesk::WayDesk(JobEditor* editor, PlanPresenter* plan, QObject* parent)
    : QObject{parent}
    , editor_{editor}
    , plan_{plan}
    , starts_{{"x0", "y0", "title", "row", "chosen"}} {
    connect(plan_, &PlanPresenter::changed, this, &WayDesk::refresh);
    connect(editor_, &JobEditor::changed, this, [this] {
        problem_.clear();
        emit changed();
    });
}

void WayDesk::refresh() {
    QList<QVariantList> rows;
    const QuiltPlan* plan = plan_->quilt().plan();
    const auto chosen = plan ? std::ranges::find_if(plan->alternatives, &Alternative::chosen)
                             : std::vector<Alternative>::const_iterator{};
    if (plan && chosen != plan->alternatives.end() && !plan->surface.floor) {
        const auto add = [&](const Alternative& way, int row) {
            const double x = (plan->layers.top.width / 2 + way.offCentre.dx).in();
            const double y = (plan->layers.top.length / 2 + way.offCentre.dy).in();
            for (const auto& known : rows)
                if (std::hypot(known[0].toDouble() - x, known[1].toDouble() - y) < kSamePlace)
                    return;
            const QString passes = way.passes == 1 ? tr("1 pass") : tr("%1 passes").arg(way.passes);
            rows.push_back(
                {x, y,
                 tr("%1: %2, %3").arg(words::start(way.start), passes, words::about(way.predicted)),
                 row, way.chosen});
        };
        add(*chosen, int(chosen - plan->alternatives.begin()));
        for (std::size_t i = 0; i < plan->alternatives.size(); ++i) {
            const Alternative& way = plan->alternatives[i];
            if (way.workable && way.surfaceLength == chosen->surfaceLength &&
                way.surfaceWidth == chosen->surfaceWidth &&
                way.quiltLengthAlongLength == chosen->quiltLengthAlongLength)
                add(way, int(i));
        }
    }
    starts_.setRows(std::move(rows));
    emit changed();
}

void WayDesk::take(int row) {
    const QuiltPlan* plan = plan_->quilt().plan();
    if (!plan || row < 0 || std::size_t(row) >= plan->alternatives.size())
        return;
    const Alternative& way = plan->alternatives[std::size_t(row)];
    if (!way.workable)
        return;
    Session next = editor_->session();
    Basting& basting = next.jobs[std::size_t(editor_->quilt())].basting;
    basting.start = way.start;
    if (!next.setting.room.tables.empty()) {
        basting.along =
            way.quiltLengthAlongLength ? Basting::Along::tableLength : Basting::Along::tableWidth;
        next.setting.room.together = {way.surfaceLength, way.surfaceWidth};
    }
    apply(tr("another way"), std::move(next));
}

void WayDesk::startNear(qreal x, qreal y) {
    const QVariantList* nearest = nullptr;
    const auto off = [&](const QVariantList& start) {
        return std::hypot(start[0].toDouble() - x, start[1].toDouble() - y);
    };
    for (const auto& start : starts_.rows())
        if (!nearest || off(start) < off(*nearest))
            nearest = &start;
    if (nearest && !(*nearest)[4].toBool())
        take((*nearest)[3].toInt());
}

bool WayDesk::asked() const {
    return editor_->job().basting.start != Basting::Start::best ||
           editor_->job().basting.along != Basting::Along::either ||
           editor_->session().setting.room.together;
}

void WayDesk::takeQuickest() {
    Session next = editor_->session();
    Basting& basting = next.jobs[std::size_t(editor_->quilt())].basting;
    basting.start = Basting::Start::best;
    basting.along = Basting::Along::either;
    next.setting.room.together.reset();
    apply(tr("the quickest way"), std::move(next));
}

void WayDesk::apply(const QString& what, Session next) {
    problem_ = editor_->apply(what, std::move(next));
    emit changed();
}
