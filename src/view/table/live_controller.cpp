#include "view/table/live_controller.h"

#include "job/job_json.h"
#include "plan/find.h"
#include "plan/plan_json.h"
#include "session/ticks.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"

#include <QUuid>

#include <algorithm>

using namespace bastewright;

LiveController::LiveController(Library* library, Clock clock, QObject* parent)
    : QObject{parent}
    , library_{library}
    , clock_{std::move(clock)}
    , people_{{"letter", "mark", "name", "now", "next", "present", "waits", "rows"}}
    , notes_{{"noteId", "time", "words"}}
    , hints_{{"key", "words", "pins"}} {
    minute_.setInterval(20'000); // the forecast moves with the clock
    connect(&minute_, &QTimer::timeout, this, &LiveController::refresh);
    look_.setInterval(kLookMs);
    connect(&look_, &QTimer::timeout, this, &LiveController::takeInOthers);
    idle_.setSingleShot(true);
    idle_.setInterval(kIdleMs);
    connect(&idle_, &QTimer::timeout, this, [this] {
        if (!library_->tidy())
            idle_.start(); // another window is at it
    });
}

void LiveController::say(const QString& problem) {
    problem_ = problem;
    early_.reset();
    emit problemChanged();
}

void LiveController::putAway(const QString& hint) {
    putAway_.insert(hint);
    refresh();
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
    putAway_.clear();
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

bool LiveController::isSameTap(const std::string& thing) {
    const auto now = clock_();
    const bool same = thing == lastTapped_ && now >= lastTapMs_ && now - lastTapMs_ < kOneTapMs;
    if (!same) {
        lastTapped_ = thing;
        lastTapMs_ = now;
    }
    return same;
}

bool LiveController::tap(const Tap& tap) {
    takeInOthers();
    if (!live_)
        return false;
    // All steps are done by one button, so that the next may not be hit by the end of the last.
    if (isSameTap(tap.what == Tap::What::zone ? "zone " + std::to_string(tap.job) + tap.zone
                                              : "step"))
        return false;
    const auto answer = live_->turns().mayTick(tap);
    if (answer.counts()) {
        const bool kept = report(answer.event.kind, answer.event);
        if (!kept)
            lastTapped_.clear();
        return kept;
    }
    lastTapped_.clear(); // nothing happened, so another tap is another
    say(words::fromCore(answer.said));
    if (answer.why == TapAnswer::Why::early) {
        early_ = tap;
        emit problemChanged();
    }
    return false;
}

QString LiveController::tapFromElsewhere(const Tap& tap, const std::string& id) {
    if (!live_)
        return tr("No session is running.");
    takeInOthers();
    if (const Event* known = live_->find(id))
        return tap.what == Tap::What::zone && known->kind == tap.meant && known->job == tap.job &&
                       known->zone == tap.zone
                   ? QString{}
                   : tr("Another tick has this number already. Tick again.");
    const auto answer = live_->turns().mayTick(tap);
    if (!answer.counts())
        return words::fromCore(answer.said);
    Event event = answer.event;
    event.id = id;
    event.atMs = clock_();
    return keep(event);
}

QString LiveController::takeBackOwn(const std::string& person, const std::string& id) {
    if (!live_)
        return tr("No session is running.");
    takeInOthers();
    if (live_->find(id))
        return {};
    const auto& undoable = live_->state().undoable;
    for (auto it = undoable.rbegin(); it != undoable.rend(); ++it) {
        const Event* e = live_->find(*it);
        if (!e || e->person != person || e->zone.empty())
            continue;
        const Zone* zone = std::size_t(e->job) < live_->plan().quilts.size()
                               ? findZone(live_->plan().quilts[std::size_t(e->job)], e->zone)
                               : nullptr;
        const auto call = live_->turns().call(e->job);
        if (!zone || call.pass != zone->pass || call.toRelease ||
            callAt(e->kind, live_->turns().way(e->job)) != call.now)
            return tr("The next call has come. Tell the person at the tablet.");
        Event back;
        back.id = id;
        back.kind = EventKind::undone;
        back.target = e->id;
        back.atMs = clock_();
        return keep(back);
    }
    return tr("There is no tick to take back.");
}

QString LiveController::keep(const Event& event) {
    const auto stored = library_->append(id_, event);
    if (!stored)
        return words::fromCore(stored.error());
    idle_.start();
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

void LiveController::tick(int quilt, const QString& zone) {
    tap({.what = Tap::What::zone, .job = quilt, .zone = words::toCore(zone)});
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
    tap({.what = Tap::What::step, .job = quilt, .task = words::toCore(task)});
}

void LiveController::release(int quilt, int pass) {
    tap({.what = Tap::What::release, .job = quilt, .pass = pass});
}

void LiveController::end(bool open) {
    tap({.what = Tap::What::end, .otherwise = open});
}

void LiveController::doneOtherwise() {
    if (!early_)
        return;
    Tap again = *early_;
    again.otherwise = true;
    tap(again);
}

void LiveController::doneUpTo(int quilt, int call, int minutesAgo) {
    takeInOthers();
    if (!live_)
        return;
    for (Event event : live_->turns().upTo(quilt, Call(call))) {
        event.count = std::int64_t{60} * std::max(0, minutesAgo);
        if (!report(event.kind, event))
            return;
    }
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

void LiveController::pinsInBox(int count) {
    Event event;
    event.count = count;
    report(EventKind::pinsInBox, std::move(event));
}

bool LiveController::note(const QString& said) {
    Event event;
    event.text = words::toCore(said.simplified());
    return report(EventKind::note, std::move(event));
}

void LiveController::takeBackNote(const QString& noteId) {
    takeBackEvent(words::toCore(noteId));
}

void LiveController::refresh() {
    if (!live_) {
        planned_.reset();
    } else if (!planned_ || plannedRevision_ != live_->revision()) {
        planned_ = std::make_shared<const Planned>(Planned{live_->session(), live_->plan()});
        plannedRevision_ = live_->revision();
    }
    people_.setRows(peopleRows());
    notes_.setRows(noteRows());
    hints_.setRows(hintRows());
    emit changed();
}
