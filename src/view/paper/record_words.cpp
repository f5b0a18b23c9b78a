#include "view/paper/record_words.h"

#include "session/checks.h"
#include "view/base/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

using namespace bastewright;

namespace record_words {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Record)
};

QString tick(const RecordLine& line) {
    const QString zone = words::zone(line.zone);
    switch (line.kind) {
    case EventKind::zoneDotted:
        return Text::tr("%1 has its dots below").arg(zone);
    case EventKind::zoneOpened:
        return line.call == Call::pin ? Text::tr("%1 pinned open").arg(zone)
                                      : Text::tr("%1 dotted above").arg(zone);
    case EventKind::zoneClosed:
        return line.call == Call::close ? Text::tr("%1 closed").arg(zone)
                                        : Text::tr("%1 pressed").arg(zone);
    default:
        return Text::tr("%1 pressed from the back").arg(zone);
    }
}

QString answer(const RecordLine& line) {
    const auto check = checkNamed(line.text);
    const bool yes = line.count == 1;
    if (check == Check::palmGlides)
        return yes ? Text::tr("The palm glides") : Text::tr("The palm does not glide yet");
    if (check == Check::underside)
        return yes ? Text::tr("It is flat underneath") : Text::tr("It is not flat underneath yet");
    if (check == Check::spare)
        return yes ? Text::tr("Four sides as planned") : Text::tr("A side is short");
    return yes ? Text::tr("The cautions were read") : QString{};
}

} // namespace

QString line(const RecordLine& l) {
    const QString who = words::fromCore(l.person);
    const auto by = [&](const QString& what) {
        QString out = who.isEmpty() ? what : Text::tr("%1: %2").arg(who, what);
        return l.took ? Text::tr("%1, %2").arg(out, words::span(*l.took)) : out;
    };
    switch (l.kind) {
    case EventKind::sessionStarted:
        return Text::tr("The session began");
    case EventKind::stepDone:
        return l.step ? by(words::task(*l.step)) : QString{};
    case EventKind::checkAnswered:
        return answer(l);
    case EventKind::zoneDotted:
    case EventKind::zoneOpened:
    case EventKind::zoneClosed:
    case EventKind::zonePressed:
        return by(tick(l));
    case EventKind::zoneAgain:
        return Text::tr("%1 has to be done again").arg(words::zone(l.zone));
    case EventKind::passAbandoned:
        return l.zone.empty() ? Text::tr("The rest of pass %1 was left out").arg(l.pass)
                              : Text::tr("%1 was left out").arg(words::zone(l.zone));
    case EventKind::passReleased:
        return Text::tr("Pass %1 was finished").arg(l.pass);
    case EventKind::personIn:
        return Text::tr("%1 came to the table").arg(who);
    case EventKind::personOut:
        return Text::tr("%1 left the table").arg(who);
    case EventKind::pinsFound:
        return l.count < 0 ? Text::tr("%1 pins were short").arg(-l.count)
                           : Text::tr("%1 more pins turned up").arg(l.count);
    case EventKind::pinsBack:
        return Text::tr("%1 pins back in the box").arg(l.count);
    case EventKind::pinsInBox:
        return Text::tr("%1 pins counted in the box").arg(l.count);
    case EventKind::pinsCounted:
        return Text::tr("The pins were counted");
    case EventKind::note:
        return Text::tr("Note: %1").arg(words::fromCore(l.text));
    case EventKind::paused:
        return Text::tr("A break began");
    case EventKind::resumed:
        return Text::tr("The work went on");
    case EventKind::settingChanged:
        return Text::tr("Something in the hall changed");
    case EventKind::replanned:
        return Text::tr("The rest was planned again");
    case EventKind::sessionEnded:
        return Text::tr("The session ended");
    case EventKind::undone:
        break;
    }
    return {};
}

QStringList summary(const Record& r) {
    QStringList out;
    if (r.startedMs == 0)
        return out;
    const auto day = QDateTime::fromMSecsSinceEpoch(r.startedMs).date();
    const QString from = words::timeOfDay(r.startedMs);
    out << (r.endedMs == 0 ? Text::tr("%1, from %2; still running")
                                 .arg(QLocale{}.toString(day, QLocale::ShortFormat), from)
                           : Text::tr("%1, %2 to %3")
                                 .arg(QLocale{}.toString(day, QLocale::ShortFormat), from,
                                      words::timeOfDay(r.endedMs)));
    out << (r.rested > Seconds{} ? Text::tr("%1 of work and %2 of breaks")
                                       .arg(words::span(r.worked), words::span(r.rested))
                                 : Text::tr("%1 of work").arg(words::span(r.worked)));
    if (r.plannedFinish > Seconds{})
        out << Text::tr("Planned: %1").arg(words::span(r.plannedFinish));
    out << Text::tr("%1 of %2 zones done").arg(r.zonesDone).arg(r.zones);
    if (r.pins.out > 0)
        out << Text::tr("Pins: %1 in the quilt, %2 back in the box")
                   .arg(r.pins.stillOut())
                   .arg(r.pins.back);
    if (r.pins.missing > 0)
        out << (r.pins.missing == 1 ? Text::tr("1 pin is missing")
                                    : Text::tr("%1 pins are missing").arg(r.pins.missing));
    return out;
}

QString pace(const PersonRecord& person) {
    if (!person.pace)
        return {};
    const double pace = *person.pace;
    if (pace > 1.25)
        return Text::tr("much quicker than planned");
    if (pace > 1.07)
        return Text::tr("a little quicker than planned");
    if (pace < 0.8)
        return Text::tr("much slower than planned");
    if (pace < 0.93)
        return Text::tr("a little slower than planned");
    return Text::tr("as planned");
}

} // namespace record_words
