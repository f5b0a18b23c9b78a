#include "view/table/step_card.h"

#include "session/checks.h"
#include "sheets/hold_order.h"
#include "sheets/task_words.h"
#include "view/base/words.h"
#include "view/paint/edge_drawing.h"
#include "view/table/step_words.h"

#include <algorithm>

using namespace bastewright;

StepCard::StepCard(LiveController* live, TableBoard* board, QObject* parent)
    : QObject{parent}
    , live_{live}
    , board_{board}
    , sides_{{"side", "over", "backing", "batting"}}
    , holds_{{"x0", "y0", "round", "tape", "second"}}
    , checks_{{"check", "question", "cure", "answer"}} {
    connect(board_, &TableBoard::changed, this, &StepCard::refresh);
}

PlannedQuilt StepCard::quilt() const {
    return {live_->planned(), board_->quilt()};
}

void StepCard::refresh() {
    title_.clear();
    how_.clear();
    caution_.clear();
    lines_.clear();
    toRedo_.clear();
    known_ = moves_ = asks_ = false;
    sides_.setRows({});
    const auto* live = live_->live();
    const Task* task = live ? live->task(words::toCore(board_->step())) : nullptr;
    if (task && task->job == board_->quilt()) {
        const auto quilt = std::size_t(task->job);
        describe(*task, live->plan().quilts[quilt], live->session().jobs[quilt]);
        ask(*task);
    } else {
        checks_.setRows({});
        holds_.setRows({});
    }
    emit changed();
}

void StepCard::describe(const Task& task, const QuiltPlan& plan, const Job& job) {
    const auto unit = live_->live()->plan().unit;
    known_ = true;
    pass_ = task.pass;
    moves_ = task.kind == TaskKind::shift;
    title_ = sheets::taskLine(task, plan, job.basting.with, unit);
    if (checksOf(task.kind).empty()) // else it is asked
        how_ = sheets::taskCheck(task.kind, waysOf(job, plan.zones), unit);
    caution_ = words::caution(task.kind);
    const Pass* pass = findPass(plan, task.pass);
    QList<QVariantList> holds = pass ? holdsOf(task, *pass) : QList<QVariantList>{};
    lookAlongSides(holds);
    holds_.setRows(std::move(holds));
    if (!pass)
        return;
    lines_ = step_words::lines(task.kind, job, plan, *pass, unit);
    if (step_words::compares(task.kind))
        sides_.setRows(step_words::sides(plan.surface, *pass, unit));
}

QList<int> StepCard::rounds() const {
    QList<int> out;
    for (const QVariantList& hold : holds_.rows())
        if (const int round = hold[2].toInt(); out.isEmpty() || out.last() != round)
            out << round;
    return out;
}

QList<QVariantList> StepCard::holdsOf(const Task& task, const Pass& pass) const {
    if (task.kind != TaskKind::clamp && task.kind != TaskKind::reclamp)
        return {};
    const Rect& table = pass.table;
    // As the tiles lie: the table as a square of side 1, turned clockwise by so many quarters.
    QTransform turned;
    turned.translate(0.5, 0.5).rotate(90 * board_->quarter()).translate(-0.5, -0.5);
    QList<QVariantList> rows;
    for (const sheets::HoldPoint& hold : sheets::holdOrder(pass)) {
        const bool tape = hold.kind == Hold::Kind::tape;
        if (tape && task.kind == TaskKind::reclamp)
            continue;
        const double along = isAcross(hold.side) ? (hold.at - table.x0).in() / table.width().in()
                                                 : (hold.at - table.y0).in() / table.length().in();
        const QPointF at = turned.map(drawing::onEdge({0, 0, 1, 1}, hold.side, along));
        rows.push_back({at.x(), at.y(), hold.number, tape, false});
    }
    return rows;
}

void StepCard::lookAlongSides(QList<QVariantList>& holds) {
    nextAcross_ = nextDown_ = 1;
    for (const bool down : {false, true})
        for (const int end : {0, 1}) {
            QList<QVariantList*> side;
            for (QVariantList& hold : holds)
                if (const qreal out = hold[down ? 0 : 1].toReal(); std::abs(out - end) < 1e-6)
                    side << &hold;
            const auto along = [down](const QVariantList* hold) {
                return (*hold)[down ? 1 : 0].toReal();
            };
            std::ranges::sort(side, {}, along);
            qreal& next = down ? nextDown_ : nextAcross_;
            for (qsizetype i = 1; i < side.size(); ++i) {
                next = std::min(next, along(side[i]) - along(side[i - 1]));
                (*side[i])[4] = i % 2 == 1;
            }
        }
}

void StepCard::ask(const Task& task) {
    QList<QVariantList> rows;
    for (const Check check : checksOf(task.kind)) {
        const auto answer = answerTo(live_->live()->state(), task.id, check);
        rows.push_back({words::fromCore(name(check)),
                        step_words::question(check, live_->live()->plan().unit),
                        step_words::cure(check),
                        !answer   ? QString{}
                        : *answer ? QStringLiteral("yes")
                                  : QStringLiteral("no")});
    }
    const bool isNotYet = std::any_of(
        rows.begin(), rows.end(), [](const auto& row) { return row[3] == QLatin1String("no"); });
    if (isNotYet && task.kind == TaskKind::checkUnderside)
        for (const auto& zone : live_->live()->plan().quilts[std::size_t(task.job)].zones)
            if (zone.pass == task.pass && !zone.points.empty() &&
                live_->live()->state().zones.at({task.job, zone.id}).state == ZoneState::closed)
                toRedo_ << words::fromCore(zone.id);
    asks_ = !rows.isEmpty() && !allAnsweredYes(live_->live()->state(), task);
    checks_.setRows(std::move(rows));
}

void StepCard::redo(const QString& zone) {
    live_->report(happened::ZoneAgain{board_->quilt(), words::toCore(zone)});
}

void StepCard::answer(const QString& check, bool yes) {
    live_->report(happened::Answer{board_->quilt(), words::toCore(board_->step()),
                                   words::toCore(check), yes ? 1 : 0});
}
