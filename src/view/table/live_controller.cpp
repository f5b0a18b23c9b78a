#include "view/table/live_controller.h"

#include "job/job_json.h"
#include "plan/find.h"
#include "plan/plan_json.h"
#include "session/checked_log.h"
#include "session/ticks.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"

#include <QUuid>

#include <algorithm>

using namespace bastewright;

namespace {

bool isAboutZone(const What& what, int quilt, const std::string& zone) {
    return std::visit(
        [&](const auto& about) {
            if constexpr (requires { about.zone; })
                return about.job == quilt && about.zone == zone;
            else
                return false;
        },
        what);
}

} // namespace

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
    if (!beginIfNotBegun())
        return false;
    if (const auto fault = faultOfLog(*session.session, *plan.plan, live_->events());
        !fault.empty())
        say(words::fromCore(fault));
    return true;
}

bool LiveController::beginIfNotBegun() {
    return live_->state().started || report(happened::Started{});
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

bool LiveController::report(What what) {
    if (!live_)
        return false;
    takeInOthers();
    const QString reason = keep({QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString(),
                                 clock_(), std::move(what)});
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
        const bool kept = report(answer.what);
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
    if (const Event* known = live_->find(id)) {
        const auto* tick = std::get_if<happened::ZoneTick>(&known->what);
        return tick && tap.what == Tap::What::zone && tick->kind == tap.meant &&
                       tick->job == tap.job && tick->zone == tap.zone
                   ? QString{}
                   : tr("Another tick has this number already. Tick again.");
    }
    const auto answer = live_->turns().mayTick(tap);
    if (!answer.counts())
        return words::fromCore(answer.said);
    return keep({id, clock_(), answer.what});
}

QString LiveController::takeBackOwn(const std::string& person, const std::string& id) {
    if (!live_)
        return tr("No session is running.");
    takeInOthers();
    if (live_->find(id))
        return {};
    const auto& undoable = live_->state().undoable;
    for (auto it = undoable.rbegin(); it != undoable.rend(); ++it) {
        const auto* tick = std::get_if<happened::ZoneTick>(&live_->find(*it)->what);
        if (!tick || tick->person != person)
            continue;
        const Zone* zone = std::size_t(tick->job) < live_->plan().quilts.size()
                               ? findZone(live_->plan().quilts[std::size_t(tick->job)], tick->zone)
                               : nullptr;
        const auto call = live_->turns().call(tick->job);
        if (!zone || call.pass != zone->pass || call.toRelease ||
            callAt(tick->kind, live_->turns().way(tick->job, tick->zone)) != call.now)
            return tr("The next call has come. Tell the person at the tablet.");
        return keep({id, clock_(), happened::Undone{*it}});
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
        if (isAboutZone(live_->find(*it)->what, quilt, id))
            return takeBackEvent(*it);
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
    for (What what : live_->turns().upTo(quilt, Call(call))) {
        std::visit(
            [&](auto& done) {
                if constexpr (requires { done.secondsAgo; })
                    done.secondsAgo = std::int64_t{60} * std::max(0, minutesAgo);
            },
            what);
        if (!report(std::move(what)))
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
    using happened::Presence;
    report(Presence{here ? Presence::Kind::in : Presence::Kind::out, words::toCore(person)});
}

void LiveController::setPaused(bool pause) {
    report(pause ? What{happened::Paused{}} : What{happened::Resumed{}});
}

void LiveController::takeBackEvent(const std::string& id) {
    report(happened::Undone{id});
}

void LiveController::pinsFound(int count) {
    report(happened::Pins{happened::Pins::Kind::found, count});
}

void LiveController::pinsBack(int count) {
    report(happened::Pins{happened::Pins::Kind::back, count});
}

void LiveController::pinsInBox(int count) {
    report(happened::Pins{happened::Pins::Kind::inBox, count});
}

bool LiveController::note(const QString& said) {
    return report(happened::Note{words::toCore(said.simplified())});
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
    expected_.reset();
    people_.setRows(peopleRows());
    notes_.setRows(noteRows());
    hints_.setRows(hintRows());
    emit changed();
}
