#include "view/table/live_controller.h"

#include "job/job_json.h"
#include "plan/plan_json.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"

#include <QUuid>

#include <algorithm>

using namespace bastewright;

LiveController::LiveController(Library* library, Clock clock, QObject* parent)
    : QObject{parent}
    , library_{library}
    , clock_{std::move(clock)}
    , people_{{"letter", "mark", "name", "now", "next", "present"}}
    , notes_{{"noteId", "time", "words"}} {
    minute_.setInterval(20'000); // the forecast moves with the clock
    connect(&minute_, &QTimer::timeout, this, &LiveController::refresh);
    look_.setInterval(kLookMs);
    connect(&look_, &QTimer::timeout, this, &LiveController::takeInOthers);
}

void LiveController::say(const QString& problem) {
    problem_ = problem;
    emit problemChanged();
}

void LiveController::forgetProblem() {
    say({});
}

bool LiveController::start(JobId job, const Planned& planned) {
    const auto id = library_->startSession(
        job, {.session = writeSession(planned.session), .plan = writePlan(planned.plan)});
    if (!id) {
        say(words::fromCore(id.error()));
        return false;
    }
    id_ = *id;
    job_ = job;
    planned_.reset();
    live_.emplace(planned.session, planned.plan);
    begin();
    if (beginIfNotBegun())
        return true;
    const QString why = problem_; // the library has the session; the next try takes it up
    close();
    say(why);
    return false;
}

bool LiveController::resume(SessionId id) {
    const auto from = library_->sessionStart(id);
    const auto revision = library_->revision();
    const auto stored = library_->eventsAfter(id, 0);
    const auto all = library_->sessions();
    if (!from || !stored || !all) {
        say(words::fromCore(!from ? from.error() : !stored ? stored.error() : all.error()));
        return false;
    }
    const auto session = readSession(from->session);
    const auto plan = readPlan(from->plan);
    const auto entry =
        std::find_if(all->begin(), all->end(), [id](const SessionEntry& e) { return e.id == id; });
    if (!session.session || !plan.plan || entry == all->end()) {
        say(tr("The session that was running cannot be read."));
        return false;
    }
    id_ = id;
    job_ = entry->job;
    std::vector<Event> events;
    for (const auto& [sequence, event] : *stored)
        events.push_back(event);
    planned_.reset();
    live_.emplace(*session.session, *plan.plan, std::move(events));
    begin();
    revision_ = revision;
    seen_ = stored->empty() ? 0 : stored->back().sequence;
    refresh();
    return beginIfNotBegun();
}

bool LiveController::beginIfNotBegun() {
    return live_->state().started || report(EventKind::sessionStarted);
}

void LiveController::begin() {
    seen_ = 0;
    revision_ = library_->revision();
    say({});
    minute_.start();
    look_.start();
}

void LiveController::close() {
    minute_.stop();
    look_.stop();
    live_.reset();
    id_ = 0;
    job_ = 0;
    refresh();
}

bool LiveController::report(EventKind kind, Event event) {
    if (!live_)
        return false;
    takeInOthers();
    event.kind = kind;
    event.id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    event.atMs = clock_();
    const QString reason = keep(event);
    say(reason);
    return reason.isEmpty();
}

QString LiveController::tickFromElsewhere(Event tick) {
    if (!live_)
        return tr("No session is running.");
    takeInOthers();
    if (const Event* known = live_->find(tick.id))
        return known->kind == tick.kind && known->job == tick.job && known->zone == tick.zone
                   ? QString{}
                   : tr("Another tick has this number already. Tick again.");
    if (live_->nextTick(tick.job, tick.zone) != tick.kind)
        return tr("%1 is ticked already, or not on the table now.").arg(words::zone(tick.zone));
    tick.atMs = clock_();
    return keep(tick);
}

QString LiveController::keep(const Event& event) {
    const auto stored = library_->append(id_, event);
    if (!stored)
        return words::fromCore(stored.error());
    QString reason = takeIn(event.id);
    refresh();
    return reason;
}

QString LiveController::takeIn(const std::string& own) {
    auto fresh = library_->eventsAfter(id_, seen_);
    if (!fresh)
        return words::fromCore(fresh.error());
    QString reason;
    for (auto& [sequence, event] : *fresh) {
        const bool isOwn = event.id == own;
        const auto ignored = live_->add(std::move(event));
        if (isOwn)
            reason = words::fromCore(ignored);
        seen_ = sequence;
    }
    return reason;
}

void LiveController::takeInOthers() {
    const auto revision = library_->revision();
    if (!live_ || revision == revision_)
        return;
    revision_ = revision;
    if (const QString problem = takeIn(); !problem.isEmpty())
        say(problem);
    refresh();
}

const Task* LiveController::nextAt(int quilt, const std::string& zone) const {
    for (const auto& task : live_->plan().tasks)
        if (task.job == quilt && task.zone == zone && !task.people.empty() &&
            !live_->state().doneTasks.contains(task.id))
            return &task;
    return nullptr;
}

std::string LiveController::whoseTurn(int quilt, const std::string& zone) const {
    const Task* task = live_ ? nextAt(quilt, zone) : nullptr;
    return task ? task->people.front() : std::string{};
}

void LiveController::tick(int quilt, const QString& zone) {
    takeInOthers();
    if (!live_)
        return;
    const auto id = words::toCore(zone);
    const auto kind = live_->nextTick(quilt, id);
    if (!kind)
        return say(tr("%1 is done, or not on the table now. Hold it to take its last tick back.")
                       .arg(zone));
    Event event;
    event.job = quilt;
    event.zone = id;
    if (const Task* task = nextAt(quilt, id))
        event.person = task->people.front();
    report(*kind, std::move(event));
}

void LiveController::takeBack(int quilt, const QString& zone) {
    takeInOthers();
    if (!live_)
        return;
    const auto id = words::toCore(zone);
    const auto& undoable = live_->state().undoable;
    for (auto it = undoable.rbegin(); it != undoable.rend(); ++it) {
        const Event* e = live_->find(*it);
        if (!e || e->job != quilt || e->zone != id)
            continue;
        takeBackEvent(e->id);
        return;
    }
    say(tr("%1 has no tick to take back.").arg(zone));
}

void LiveController::stepDone(int quilt, const QString& task) {
    if (!live_)
        return;
    const auto id = words::toCore(task);
    for (const auto& t : live_->plan().tasks)
        if (t.id == id) {
            Event event;
            event.job = quilt;
            event.pass = t.pass;
            event.task = id;
            if (!t.people.empty())
                event.person = t.people.front();
            report(EventKind::stepDone, std::move(event));
            return;
        }
}

void LiveController::release(int quilt, int pass) {
    Event event;
    event.job = quilt;
    event.pass = pass;
    report(EventKind::passReleased, std::move(event));
}

void LiveController::undo() {
    takeInOthers();
    if (canUndo())
        takeBackEvent(live_->state().undoable.back());
}

void LiveController::redo() {
    takeInOthers();
    if (canRedo())
        takeBackEvent(live_->state().redoable.back());
}

void LiveController::setPresent(const QString& person, bool here) {
    Event event;
    event.person = words::toCore(person);
    report(here ? EventKind::personIn : EventKind::personOut, std::move(event));
}

void LiveController::setPaused(bool pause) {
    report(pause ? EventKind::paused : EventKind::resumed);
}

void LiveController::takeBackEvent(const std::string& id) {
    Event event;
    event.target = id;
    report(EventKind::undone, std::move(event));
}

void LiveController::pinsFound(int count) {
    Event event;
    event.count = count;
    report(EventKind::pinsFound, std::move(event));
}

void LiveController::pinsBack(int count) {
    Event event;
    event.count = count;
    report(EventKind::pinsBack, std::move(event));
}

void LiveController::pinsCounted() {
    report(EventKind::pinsCounted);
}

bool LiveController::note(const QString& said) {
    Event event;
    event.text = words::toCore(said.simplified());
    return report(EventKind::note, std::move(event));
}

void LiveController::takeBackNote(const QString& noteId) {
    takeBackEvent(words::toCore(noteId));
}

void LiveController::end() {
    report(EventKind::sessionEnded);
}

void LiveController::refresh() {
    if (!live_) {
        planned_.reset();
    } else if (!planned_ || plannedRevision_ != live_->revision()) {
        planned_ = std::make_shared<const Planned>(Planned{live_->session(), live_->plan()});
        plannedRevision_ = live_->revision();
    }
    QList<QVariantList> rows;
    if (live_) {
        const auto& helpers = live_->session().setting.helpers;
        const auto names = people::names(helpers);
        const auto letters = people::letters(helpers);
        const auto& state = live_->state();
        for (qsizetype i = 0; i < names.size(); ++i) {
            const auto person = words::toCore(names[i]);
            const auto tasks = nextTasks(live_->plan(), state, person);
            const auto told = [&](std::size_t n) {
                if (n >= tasks.size())
                    return QString{};
                const auto& t = tasks[n];
                return t.zone.empty() ? words::shortTask(t.kind)
                                      : QStringLiteral("%1 %2").arg(words::zone(t.zone),
                                                                    words::zoneTask(t.kind));
            };
            const bool here = state.present.contains(person);
            QString now = !here ? tr("not here") : tasks.empty() ? tr("all done") : told(0);
            rows.push_back({letters[i], int(i), names[i], now, here ? told(1) : QString{}, here});
        }
    }
    people_.setRows(std::move(rows));
    notes_.setRows(noteRows());
    emit changed();
}
