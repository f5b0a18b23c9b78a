// Where a session stands, in words: the texts of LiveController.
#include "session/nudge.h"
#include "session/pins.h"
#include "view/base/words.h"
#include "view/table/live_controller.h"

#include <algorithm>

using namespace bastewright;

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
    const auto now = clock_();
    const auto f = live_->forecastAt(now);
    // The hour is the clock's as it is now plus what is left: right even where the clock was set.
    const auto at = [&](Seconds s) {
        const auto left = f.left + (s - f.finish);
        return words::timeOfDay(now + left.count() * 1000);
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

QList<QVariantList> LiveController::noteRows() const {
    QList<QVariantList> rows;
    if (live_)
        for (const auto& note : live_->state().notes)
            rows.prepend({words::fromCore(note.id), words::timeOfDay(note.atMs),
                          words::fromCore(note.text)});
    return rows;
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
        return words::zone(e->zone);
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
    case EventKind::note:
        return tr("the note");
    case EventKind::sessionEnded:
        return tr("the ending");
    default:
        return tr("the last change");
    }
}
