#include "view/live_controller.h"

#include "job/job_json.h"
#include "plan/plan_json.h"
#include "session/nudge.h"
#include "session/pins.h"
#include "view/people_palette.h"
#include "view/words.h"

#include <QDateTime>
#include <QUuid>

#include <algorithm>

using namespace bastewright;

LiveController::LiveController(Library* library, Clock clock, QObject* parent)
    : QObject{parent}
    , library_{library}
    , clock_{std::move(clock)}
    , people_{{"letter", "mark", "name", "now", "next", "present"}} {
    minute_.setInterval(20'000); // the forecast moves with the clock
    connect(&minute_, &QTimer::timeout, this, &LiveController::refresh);
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
    live_.emplace(planned.session, planned.plan);
    say({});
    minute_.start();
    return report(EventKind::sessionStarted);
}

bool LiveController::resume(SessionId id) {
    const auto from = library_->sessionStart(id);
    const auto events = library_->events(id);
    const auto all = library_->sessions();
    if (!from || !events || !all) {
        say(words::fromCore(!from ? from.error() : !events ? events.error() : all.error()));
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
    live_.emplace(*session.session, *plan.plan, *events);
    say({});
    minute_.start();
    refresh();
    return true;
}

void LiveController::close() {
    minute_.stop();
    live_.reset();
    id_ = 0;
    job_ = 0;
    refresh();
}

bool LiveController::report(EventKind kind, Event event) {
    if (!live_)
        return false;
    event.kind = kind;
    event.id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    event.atMs = clock_();
    if (const auto stored = library_->append(id_, event); !stored) {
        say(words::fromCore(stored.error()));
        return false;
    }
    const auto reason = live_->add(std::move(event));
    say(words::fromCore(reason));
    refresh();
    return reason.empty();
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
    if (!live_)
        return;
    const auto id = words::toCore(zone);
    const auto kind = nextTick(live_->plan(), live_->state(), quilt, id);
    if (!kind)
        return say(tr("%1 is done, or not on the table now. Hold it to take its last tick back.")
                       .arg(zone));
    Event event;
    event.job = quilt;
    event.zone = id;
    if (const Task* task = nextAt(quilt, id)) {
        event.person = task->people.front();
        // Of a shared zone each tick is one person's part.
        if (task->share)
            event.task = task->id;
    }
    report(*kind, std::move(event));
}

void LiveController::takeBack(int quilt, const QString& zone) {
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
    if (canUndo())
        takeBackEvent(live_->state().undoable.back());
}

void LiveController::redo() {
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
void LiveController::end() {
    report(EventKind::sessionEnded);
}

void LiveController::refresh() {
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
                                      : QStringLiteral("%1 %2").arg(words::zone(t),
                                                                    words::zoneTask(t.kind));
            };
            const bool here = state.present.contains(person);
            QString now = !here ? tr("not here") : tasks.empty() ? tr("all done") : told(0);
            rows.push_back({letters[i], int(i), names[i], now, here ? told(1) : QString{}, here});
        }
    }
    people_.setRows(std::move(rows));
    emit changed();
}

bool LiveController::ended() const {
    return live_ && live_->state().ended;
}
bool LiveController::paused() const {
    return live_ && live_->state().paused;
}

QString LiveController::title() const {
    if (!live_)
        return {};
    QStringList names;
    for (const auto& job : live_->session().jobs)
        names << words::fromCore(job.name);
    return names.join(QStringLiteral(" · "));
}

qreal LiveController::progress() const {
    return live_ ? bastewright::progress(live_->state()) : 0;
}

QString LiveController::progressText() const {
    if (!live_)
        return {};
    const auto& zones = live_->state().zones;
    const auto done =
        std::count_if(zones.begin(), zones.end(), [](const auto& z) { return z.second.done(); });
    return tr("%1/%2 zones").arg(done).arg(zones.size());
}

QString LiveController::pinsText() const {
    if (!live_)
        return {};
    const auto pins = countPins(live_->plan(), live_->session().setting, live_->state());
    if (pins.out == 0 && pins.toPlace == 0)
        return {};
    if (ended() || pins.back > 0)
        return tr("%1 of %2 pins back").arg(pins.back).arg(pins.out);
    return tr("%1 pins out").arg(pins.out);
}

QString LiveController::pinsNotice() const {
    if (!live_)
        return {};
    return words::fromCore(
        missingPinsNotice(countPins(live_->plan(), live_->session().setting, live_->state())));
}

QString LiveController::finishText() const {
    if (!live_ || !live_->state().started)
        return {};
    const auto f = live_->forecastAt(clock_());
    const auto at = [this](Seconds s) {
        return QDateTime::fromMSecsSinceEpoch(live_->state().startedMs + s.count() * 1000)
            .toString(QStringLiteral("HH:mm"));
    };
    return tr("done %1 (%2–%3)").arg(at(f.finish), at(f.early), at(f.late));
}

QString LiveController::nudge() const {
    if (!live_ || ended())
        return {};
    const auto all =
        nudges(live_->plan(), live_->session().setting, live_->state(), live_->events(), clock_());
    return all.empty() ? QString{} : words::fromCore(all.front().text);
}

bool LiveController::canUndo() const {
    return live_ && !live_->state().undoable.empty();
}
bool LiveController::canRedo() const {
    return live_ && !live_->state().redoable.empty();
}

QString LiveController::undoText() const {
    if (!canUndo())
        return {};
    const Event* e = live_->find(live_->state().undoable.back());
    if (!e)
        return {};
    switch (e->kind) {
    case EventKind::zoneDotted:
    case EventKind::zoneOpened:
    case EventKind::zoneClosed:
    case EventKind::zonePressed:
        return words::fromCore(e->zone);
    case EventKind::stepDone:
        return tr("the step");
    case EventKind::passReleased:
        return tr("the release");
    case EventKind::personIn:
    case EventKind::personOut:
        return words::fromCore(e->person);
    case EventKind::pinsFound:
    case EventKind::pinsBack:
    case EventKind::pinsCounted:
        return tr("the count");
    case EventKind::sessionEnded:
        return tr("the ending");
    default:
        return tr("the last change");
    }
}
