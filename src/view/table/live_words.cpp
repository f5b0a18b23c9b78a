// Where a session stands, in words: the texts of LiveController.
#include "plan/find.h"
#include "session/nudge.h"
#include "session/pins.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/table/live_controller.h"
#include "ways/way.h"

#include <QDateTime>
#include <QLocale>

#include <algorithm>

using namespace bastewright;

bool LiveController::ended() const {
    return live_ && live_->state().ended;
}
bool LiveController::paused() const {
    return live_ && live_->state().paused;
}

bool LiveController::anotherDay() const {
    return paused() && QDateTime::fromMSecsSinceEpoch(live_->state().pausedMs).date() !=
                           QDateTime::fromMSecsSinceEpoch(clock_()).date();
}

QString LiveController::pausedText() const {
    if (!paused())
        return {};
    const auto since = live_->state().pausedMs;
    if (anotherDay())
        return tr("Stopped on %1")
            .arg(QLocale{}.toString(QDateTime::fromMSecsSinceEpoch(since).date(),
                                    QStringLiteral("dddd, d MMMM")));
    return tr("On a break since %1").arg(words::timeOfDay(since));
}

int LiveController::lateMinutes() const {
    constexpr int kNotable = 10, kAnotherDay = 6 * 60;
    if (!live_ || !live_->state().started || !live_->state().doneTasks.empty())
        return 0;
    const auto late = words::clockOf(live_->state().startedMs).sinceMidnight -
                      live_->session().setting.start.sinceMidnight;
    const auto minutes = int(late.count());
    return minutes >= kNotable && minutes <= kAnotherDay ? minutes : 0;
}

QString LiveController::openText() const {
    if (!live_)
        return {};
    const auto& zones = live_->state().zones;
    const auto done =
        std::count_if(zones.begin(), zones.end(), [](const auto& z) { return z.second.done(); });
    QStringList open;
    for (const auto& [key, zone] : zones)
        if (zone.state == ZoneState::open)
            open << words::zone(key.second);
    const QString all = tr("%1 of %2 zones are done.").arg(done).arg(zones.size());
    if (open.isEmpty())
        return all;
    return open.size() == 1
               ? tr("%1 %2 is open: close it before anybody leaves it.").arg(all, open.front())
               : tr("%1 Open: %2. Close them before anybody leaves them.")
                     .arg(all, open.join(QStringLiteral(", ")));
}

QString LiveController::liesText() const {
    if (!live_)
        return {};
    QStringList out;
    for (std::size_t q = 0; q < live_->plan().quilts.size(); ++q) {
        const int pass = live_->state().currentPass[q];
        const auto passes = live_->plan().quilts[q].passes.size();
        const QString name = words::fromCore(live_->session().jobs[q].name);
        out << tr("%1 lies as in pass %2 of %3.").arg(name).arg(pass).arg(passes);
    }
    return out.join(QLatin1Char(' '));
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
    return pins.stillOut() == 1 ? tr("1 pin in the quilt")
                                : tr("%1 pins in the quilt").arg(pins.stillOut());
}

QStringList LiveController::pinsLines() const {
    if (!live_)
        return {};
    const auto pins = countPins(live_->plan(), live_->session().setting, live_->state());
    QStringList out{tr("In the box: %1").arg(std::max<std::int64_t>(0, pins.left)),
                    tr("In the quilt: %1").arg(pins.stillOut()),
                    tr("Back in the box: %1").arg(pins.back)};
    if (pins.toPlace > 0)
        out << tr("Still to be placed: %1").arg(pins.toPlace);
    return out;
}

std::vector<const Way*> LiveController::ways() const {
    std::vector<const Way*> out;
    if (live_)
        for (std::size_t q = 0; q < live_->plan().quilts.size(); ++q)
            for (const Way* way : waysOf(live_->session().jobs[q], live_->plan().quilts[q].zones))
                if (std::ranges::find(out, way) == out.end())
                    out.push_back(way);
    return out;
}

bool LiveController::withPins() const {
    return std::ranges::any_of(ways(), &Way::fromBox);
}

bool LiveController::withIrons() const {
    return std::ranges::any_of(ways(), [](const Way* way) {
        return way->irons || (way->instead && wayOf(*way->instead).irons);
    });
}

QString LiveController::breakText() const {
    QStringList out;
    if (withPins() || withIrons())
        out << tr("Irons off. Pins off the chairs and the floor.");
    for (const Way* way : ways())
        if (!way->fromBox && !way->irons)
            out << words::fromCore(way->words.atBreaks);
    return out.join(QLatin1Char(' '));
}

QString LiveController::nightText() const {
    QStringList out;
    for (const Way* way : ways())
        if (!way->fromBox && !way->irons)
            out << words::fromCore(way->words.atBreaks) << words::fromCore(way->words.putAway);
    out << (withPins() || withIrons()
                ? tr("Close what is open. Irons off and unplugged. Count the pins, sweep the "
                     "floor, shut the door: no children, no pets.")
                : tr("Sweep the floor, shut the door: no children, no pets."));
    return out.join(QLatin1Char(' '));
}

QString LiveController::pinsNotice() const {
    if (!live_)
        return {};
    return words::fromCore(
        missingPinsNotice(countPins(live_->plan(), live_->session().setting, live_->state())));
}

const Forecast& LiveController::expected() const {
    const std::int64_t now = clock_(), minute = now / 60'000;
    if (!expected_ || minute != expectedMinute_) {
        expected_ = live_->forecastAt(now, words::clockOf(live_->state().startedMs));
        expectedMinute_ = minute;
    }
    return *expected_;
}

LiveController::Finish LiveController::finish() const {
    if (!live_ || !live_->state().started || ended())
        return {};
    const Forecast& f = expected();
    const auto now = clock_();
    // The hour is the clock's as it is now plus what is left: right even where the clock was set.
    // Nobody knows it to the minute.
    const auto at = [&](Seconds s) {
        constexpr std::int64_t kRound = 5 * 60 * 1000;
        const auto left = f.left + (s - f.finish);
        return words::timeOfDay((now + left.count() * 1000 + kRound / 2) / kRound * kRound);
    };
    return {at(f.finish), at(f.early), at(f.late)};
}

QString LiveController::finishText() const {
    if (!live_ || !live_->state().started)
        return {};
    if (ended())
        return tr("Finished at %1").arg(words::timeOfDay(live_->state().lastMs));
    const Finish at = finish();
    return tr("Finishes about %1 (%2–%3)").arg(at.about, at.early, at.late);
}

QString LiveController::finishAbout() const {
    const QString at = finishClock();
    return at.isEmpty() ? finishText() : tr("Finishes about %1").arg(at);
}

QList<QVariantList> LiveController::hintRows() {
    QList<QVariantList> rows;
    if (!live_)
        return rows;
    QSet<QString> now;
    for (const auto& n : nudges(live_->plan(), live_->session().setting, live_->state(),
                                live_->events(), clock_(), expected().finish)) {
        const QString key = QStringLiteral("%1 %2 %3 %4")
                                .arg(int(n.kind))
                                .arg(n.job)
                                .arg(words::fromCore(n.zone), words::fromCore(n.person));
        now.insert(key);
        if (!putAway_.contains(key))
            rows.push_back({key, words::fromCore(n.text), n.kind == Nudge::Kind::pinsShort});
    }
    if (const int late = lateMinutes(); late > 0) {
        const QString key = QStringLiteral("late");
        now.insert(key);
        if (!putAway_.contains(key))
            rows.prepend({key,
                          tr("It is %1 later than planned. Tap More, then What has changed, then "
                             "Begin now: the rest is planned from now on, and whoever has to leave "
                             "still leaves on time.")
                              .arg(words::span(std::chrono::minutes{late})),
                          false});
    }
    putAway_.intersect(now); // what comes again is said again
    return rows;
}

int LiveController::busy() const {
    constexpr int kPresent = 5, kWaits = 6; // roles of `people_`
    return int(std::ranges::count_if(people_.rows(), [](const QVariantList& row) {
        return row[kPresent].toBool() && !row[kWaits].toBool();
    }));
}

QList<QVariantList> LiveController::peopleRows() const {
    QList<QVariantList> rows;
    if (!live_)
        return rows;
    const auto letters = people::letters(live_->session().setting.helpers);
    const auto told = [](const Task* t) {
        if (!t)
            return QString{};
        return t->zone.empty()
                   ? words::shortTask(t->kind)
                   : QStringLiteral("%1 %2").arg(words::zone(t->zone), words::zoneTask(t->kind));
    };
    // Which rows and marks of the ribbons a zone has.
    const auto rowsOf = [this](const Task* t) {
        if (!t || t->zone.empty())
            return QString{};
        const auto quilt = std::size_t(t->job);
        const Zone* zone = findZone(live_->plan().quilts[quilt], t->zone);
        return zone ? words::zoneRows(live_->plan().quilts[quilt], *zone,
                                      live_->session().jobs[quilt])
                    : QString{};
    };
    int mark = 0;
    for (const auto& p : live_->turns().whoWaitsForWhat()) {
        QString now, next;
        using Doing = PersonNow::Doing;
        switch (p.doing) {
        case Doing::away:
            now = tr("not here");
            break;
        case Doing::onBreak:
            now = tr("on a break");
            next = told(p.task);
            break;
        case Doing::works:
            now = told(p.task);
            next = told(p.next);
            break;
        case Doing::waits:
            now = words::fromCore(p.waitsFor);
            next = told(p.task);
            break;
        case Doing::done:
            now = tr("all done");
            break;
        }
        rows.push_back({letters[mark], mark, words::fromCore(p.person), now, next,
                        p.doing != Doing::away, p.doing == Doing::waits, rowsOf(p.task)});
        ++mark;
    }
    return rows;
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
    const Event* event = live_->find(live_->state().undoable.back());
    return std::visit(
        ForEach{
            [](const happened::ZoneTick& tick) { return words::zone(tick.zone); },
            [](const happened::Step&) { return tr("the step"); },
            [](const happened::Released&) { return tr("the release"); },
            [](const happened::Presence& who) { return words::fromCore(who.person); },
            [](const happened::Pins&) { return tr("the count"); },
            [](const happened::PinsCounted&) { return tr("the count"); },
            [](const happened::ZoneAgain& e) { return tr("%1 again").arg(words::zone(e.zone)); },
            [](const happened::Note&) { return tr("the note"); },
            [](const happened::Ended&) { return tr("the ending"); },
            [](const auto&) { return tr("the last change"); }},
        event->what);
}
