#include "view/table/lanes_board.h"

#include "plan/call.h"
#include "plan/find.h"
#include "session/change.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/paint/scene_words.h"

#include <QDateTime>

#include <algorithm>

using namespace bastewright;

LanesBoard::LanesBoard(PlanPresenter* plan, LiveController* live,
                       std::function<std::int64_t()> clock, QObject* parent)
    : QObject{parent}
    , plan_{plan}
    , live_{live}
    , clock_{std::move(clock)}
    , takers_{{"letter", "mark", "name", "why", "has"}} {
    connect(plan_, &PlanPresenter::changed, this, [this] {
        if (!atTable_)
            refresh();
    });
    connect(live_, &LiveController::changed, this, [this] {
        if (atTable_)
            refresh();
    });
}

void LanesBoard::setAtTable(bool atTable) {
    atTable_ = atTable;
    chosen_.clear();
    refresh();
}

void LanesBoard::refresh() {
    shown_ = atTable_ ? live_->planned() : plan_->planned();
    blocks_.clear();
    names_.clear();
    letters_.clear();
    if (shown_) {
        const auto& helpers = shown_->session.setting.helpers;
        names_ = people::names(helpers);
        letters_ = people::letters(helpers);
        bool nobodys = false;
        for (const auto& task : shown_->plan.tasks) {
            const bool done = atTable_ && live_->live()->state().doneTasks.contains(task.id);
            for (const auto& who : task.people)
                if (const auto lane = names_.indexOf(words::fromCore(who)); lane >= 0)
                    blocks_.push_back({&task, int(lane), done});
            if (task.people.empty() && !isWaiting(task.kind) && !done) {
                blocks_.push_back({&task, int(helpers.size()), false});
                nobodys = true;
            }
        }
        if (nobodys) {
            names_ << tr("nobody yet");
            letters_ << QStringLiteral("?");
        }
    }
    if (!task())
        chosen_.clear();
    emit changed();
    setChosen(chosen_);
}

qreal LanesBoard::span() const {
    return shown_ ? qreal(shown_->plan.finish.count()) : 0;
}

qreal LanesBoard::now() const {
    if (!atTable_ || !live_->live())
        return 0;
    return std::max(0.0, qreal(clock_() - live_->live()->state().startedMs) / 1000);
}

const Task* LanesBoard::task() const {
    if (!shown_ || chosen_.isEmpty())
        return nullptr;
    const auto& tasks = shown_->plan.tasks;
    const auto at = std::find_if(tasks.begin(), tasks.end(), [this](const Task& t) {
        return words::fromCore(t.id) == chosen_;
    });
    return at == tasks.end() ? nullptr : &*at;
}

void LanesBoard::setChosen(const QString& id) {
    chosen_ = id;
    QList<QVariantList> rows;
    if (const auto* t = task(); t && !zone().isEmpty()) {
        const LiveState before;
        const LiveState& state = atTable_ && live_->live() ? live_->live()->state() : before;
        const auto& helpers = shown_->session.setting.helpers;
        for (std::size_t i = 0; i < helpers.size(); ++i) {
            const auto why =
                cannotTake(shown_->session, shown_->plan, state, t->job, t->zone, helpers[i].name);
            rows.push_back({letters_[qsizetype(i)], int(i), names_[qsizetype(i)],
                            words::fromCore(why),
                            std::find(t->people.begin(), t->people.end(), helpers[i].name) !=
                                t->people.end()});
        }
    }
    takers_.setRows(std::move(rows));
    emit chosenChanged();
}

QString LanesBoard::title() const {
    const auto* t = task();
    if (!t)
        return {};
    return tr("%1–%2  %3")
        .arg(clockAt(qreal(t->start.count())), clockAt(qreal(t->end.count())),
             words::deed(*shown_, *t));
}

QString LanesBoard::what() const {
    const auto* t = task();
    if (!t)
        return {};
    QStringList out;
    const auto& quilt = shown_->plan.quilts[std::size_t(t->job)];
    if (shown_->plan.quilts.size() > 1 && !quilt.name.empty())
        out << QStringLiteral("%1.").arg(words::fromCore(quilt.name));
    out << tr("Pass %1 of %2.").arg(t->pass).arg(quilt.passes.size());
    if (!t->places.empty())
        out << tr("From the %1 edge.").arg(words::side(t->places.front().side));
    if (const Zone* zone = findZone(quilt, t->zone))
        out << tr("%1.").arg(
            words::points(shown_->session.jobs[std::size_t(t->job)], std::span{zone, 1}));
    // Why then: the last of what it waits for.
    const Task* last = nullptr;
    for (const auto& id : t->after)
        for (const auto& other : shown_->plan.tasks)
            if (other.id == id && (!last || other.end > last->end))
                last = &other;
    if (last)
        out << tr("Waits until %1: %2.")
                   .arg(clockAt(qreal(last->end.count())), words::deed(*shown_, *last));
    if (handed())
        out << tr("Given to somebody else by hand.");
    return out.join(QLatin1Char(' '));
}

QString LanesBoard::zone() const {
    const auto* t = task();
    if (!t || t->zone.empty() ||
        (atTable_ && live_->live() && live_->live()->state().doneTasks.contains(t->id)))
        return {};
    return words::fromCore(t->zone);
}

int LanesBoard::quilt() const {
    const auto* t = task();
    return t ? t->job : 0;
}

bool LanesBoard::handed() const {
    const auto* t = task();
    if (!t)
        return false;
    const auto& wishes = shown_->session.jobs[std::size_t(t->job)].handed;
    return std::any_of(wishes.begin(), wishes.end(),
                       [&](const HandedZone& h) { return h.zone == t->zone; });
}

void LanesBoard::step(int along, int down) {
    if (blocks_.empty())
        return;
    const auto at = std::find_if(blocks_.begin(), blocks_.end(), [this](const Block& b) {
        return words::fromCore(b.task->id) == chosen_;
    });
    if (at == blocks_.end())
        return setChosen(words::fromCore(blocks_.front().task->id));
    const Block* best = nullptr;
    for (const auto& b : blocks_) {
        if (down != 0 ? b.lane != std::clamp(at->lane + down, 0, lanes() - 1) : b.lane != at->lane)
            continue;
        if (along > 0 && b.task->start <= at->task->start)
            continue;
        if (along < 0 && b.task->start >= at->task->start)
            continue;
        if (!best ||
            abs(b.task->start - at->task->start) < abs(best->task->start - at->task->start))
            best = &b;
    }
    if (best)
        setChosen(words::fromCore(best->task->id));
}

bool LanesBoard::chooseZone(int quilt, const QString& zone) {
    for (const auto& b : blocks_)
        if (!b.done && b.task->job == quilt && words::fromCore(b.task->zone) == zone) {
            setChosen(words::fromCore(b.task->id));
            return true;
        }
    return false;
}

std::pair<qreal, qreal> LanesBoard::hours(int lane) const {
    std::pair<qreal, qreal> out{0, span()};
    const auto& helpers = shown_->session.setting.helpers;
    if (std::size_t(lane) >= helpers.size())
        return out;
    const auto& h = helpers[std::size_t(lane)];
    const auto since = [&](ClockTime t) {
        return qreal(
            Seconds{t.sinceMidnight - shown_->session.setting.start.sinceMidnight}.count());
    };
    if (h.from)
        out.first = std::max(0.0, since(*h.from));
    if (h.until)
        out.second = std::max(0.0, since(*h.until));
    return out;
}

QString LanesBoard::clockAt(qreal seconds) const {
    if (atTable_ && live_->live())
        return words::timeOfDay(live_->live()->state().startedMs + qint64(seconds * 1000));
    return shown_ ? words::clock(shown_->session.setting.start, Seconds{std::int64_t(seconds)})
                  : QString{};
}

int LanesBoard::startMinute() const {
    if (atTable_ && live_->live())
        return QDateTime::fromMSecsSinceEpoch(live_->live()->state().startedMs).time().minute();
    return shown_ ? int(shown_->session.setting.start.sinceMidnight.count() % 60) : 0;
}
