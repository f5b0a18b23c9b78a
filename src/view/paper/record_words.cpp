#include "view/paper/record_words.h"

#include "session/checks.h"
#include "view/base/words.h"
#include "ways/way.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

using namespace bastewright;

namespace record_words {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Record)
};

QString said(const happened::ZoneTick& tick, const RecordLine& line) {
    if (tick.kind == Tick::pressed)
        return Text::tr("%1 pressed from the back").arg(words::zone(tick.zone));
    const WayStep* step = line.call ? zoneStepAt(*line.call) : nullptr;
    return step ? words::fromCore(step->words->done(std::string{zoneName(tick.zone)}, true))
                : words::zone(tick.zone);
}

QString said(const happened::Answer& answer) {
    const auto check = checkNamed(answer.check);
    const bool yes = answer.yes == 1;
    if (check == Check::palmGlides)
        return yes ? Text::tr("The palm glides") : Text::tr("The palm does not glide yet");
    if (check == Check::underside)
        return yes ? Text::tr("It is flat underneath") : Text::tr("It is not flat underneath yet");
    if (check == Check::spare)
        return yes ? Text::tr("Four sides as planned") : Text::tr("A side is short");
    return yes ? Text::tr("The cautions were read") : QString{};
}

QString said(const happened::Pins& pins) {
    switch (pins.kind) {
    case happened::Pins::Kind::found:
        return pins.count < 0 ? Text::tr("%1 pins were short").arg(-pins.count)
                              : Text::tr("%1 more pins turned up").arg(pins.count);
    case happened::Pins::Kind::back:
        return Text::tr("%1 pins back in the box").arg(pins.count);
    case happened::Pins::Kind::inBox:
        break;
    }
    return Text::tr("%1 pins counted in the box").arg(pins.count);
}

} // namespace

QString line(const RecordLine& l) {
    const auto by = [&l](const std::string& person, const QString& what) {
        const QString who = words::fromCore(person);
        QString out = who.isEmpty() ? what : Text::tr("%1: %2").arg(who, what);
        return l.took ? Text::tr("%1, %2").arg(out, words::span(*l.took)) : out;
    };
    return std::visit(
        ForEach{
            [](const happened::Started&) { return Text::tr("The session began"); },
            [&](const happened::Step& step) {
                return l.step ? by(step.person, words::task(*l.step)) : QString{};
            },
            [&](const happened::ZoneTick& tick) { return by(tick.person, said(tick, l)); },
            [](const happened::ZoneAgain& again) {
                return Text::tr("%1 has to be done again").arg(words::zone(again.zone));
            },
            [](const happened::LeftOut& part) {
                return part.zone.empty()
                           ? Text::tr("The rest of pass %1 was left out").arg(part.pass)
                           : Text::tr("%1 was left out").arg(words::zone(part.zone));
            },
            [](const happened::Released& done) {
                return Text::tr("Pass %1 was finished").arg(done.pass);
            },
            [](const happened::Presence& who) {
                const QString name = words::fromCore(who.person);
                return who.kind == happened::Presence::Kind::in
                           ? Text::tr("%1 came to the table").arg(name)
                           : Text::tr("%1 left the table").arg(name);
            },
            [](const happened::PinsCounted&) { return Text::tr("The pins were counted"); },
            [](const happened::Note& note) {
                return Text::tr("Note: %1").arg(words::fromCore(note.text));
            },
            [](const happened::Paused&) { return Text::tr("A break began"); },
            [](const happened::Resumed&) { return Text::tr("The work went on"); },
            [](const happened::NewSetting&) { return Text::tr("Something in the hall changed"); },
            [](const happened::NewPlan&) { return Text::tr("The rest was planned again"); },
            [](const happened::Ended&) { return Text::tr("The session ended"); },
            [](const happened::Answer& answer) { return said(answer); },
            [](const happened::Pins& pins) { return said(pins); },
            // Not in a record.
            [](const happened::Undone&) { return QString{}; },
            [](const happened::Unread&) { return QString{}; }},
        l.what);
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
