#include "sheets/calls.h"

#include "language/said.h"
#include "sheets/words.h"
#include "ways/way.h"

#include <QStringList>

namespace bastewright::sheets {

QString callName(Call call) {
    switch (call) {
    case Call::setUp:
        return Text::tr("Set up");
    case Call::lay:
        return Text::tr("Lay");
    case Call::clamp:
        return Text::tr("Clamp");
    case Call::handsOff:
        return Text::tr("Hands off");
    case Call::cool:
        return Text::tr("Cool");
    case Call::wait:
        return Text::tr("Wait");
    case Call::check:
        return Text::tr("Check");
    case Call::move:
        return Text::tr("Move");
    case Call::rollUp:
        return Text::tr("Roll up");
    default:
        break;
    }
    const WayStep* step = zoneStepAt(call);
    return step ? language::said(step->words->call) : QString{};
}

Sign signOf(Call call) {
    switch (call) {
    case Call::clamp:
        return Sign::clamp;
    case Call::pin:
        return Sign::pinOpen;
    case Call::handsOff:
        return Sign::palm;
    case Call::close:
        return Sign::pinClosed;
    case Call::stitch:
        return Sign::needle;
    case Call::spray:
        return Sign::can;
    case Call::dotBelow:
    case Call::dotAbove:
        return Sign::dot;
    case Call::press:
        return Sign::iron;
    case Call::cool:
    case Call::wait:
        return Sign::wait;
    case Call::check:
        return Sign::under;
    case Call::move:
        return Sign::slide;
    case Call::rollUp:
        return Sign::roll;
    case Call::setUp:
    case Call::lay:
        break;
    }
    return Sign::layers;
}

QString callForLead(Call call, std::span<const Way* const> ways) {
    switch (call) {
    case Call::lay:
        return Text::tr("Backing; once it is clamped batting and top.");
    case Call::clamp:
        return Text::tr("The backing; then all three layers.");
    case Call::handsOff:
        return Text::tr("A palm glides? The hang is right?");
    case Call::cool:
        return Text::tr("Nobody touches it.");
    case Call::wait:
        return Text::tr("Nobody touches it, for as long as the can says.");
    case Call::check: {
        QStringList questions; // what several ask is asked once
        for (const Way* way : ways)
            for (const QString& one :
                 language::said(way->words.underneath).split(u'?', Qt::SkipEmptyParts))
                if (const QString question = one.trimmed() + u'?'; !questions.contains(question))
                    questions << question;
        return questions.join(QChar::Space);
    }
    case Call::move:
        return Text::tr("Clamps off. Lift, slide.");
    default:
        break;
    }
    const WayStep* step = zoneStepAt(call);
    return step ? language::said(step->words->forLead) : QString{};
}

} // namespace bastewright::sheets
