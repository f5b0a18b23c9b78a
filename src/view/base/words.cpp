#include "view/base/words.h"

#include "language/said.h"
#include "plan/supply.h"
#include "plan/zone_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

#include <cmath>

using namespace bastewright;

namespace words {
QString tr(const char* text) {
    return QCoreApplication::translate("words", text);
}

QString fromCore(const Sentence& sentence) {
    return language::said(sentence);
}

std::string toCore(const QString& text) {
    return text.toStdString();
}

QString length(Length l, Unit unit) {
    return language::figure(fromCore(format(l, unit)));
}

QString size(Size s, Unit unit) {
    return QStringLiteral("%1 × %2 %3")
        .arg(language::figure(fromCore(format(s.width, unit, false))),
             language::figure(fromCore(format(s.length, unit, false))), fromCore(symbol(unit)));
}

QString span(Seconds s) {
    return fromCore(core::said(s));
}

QString about(Seconds s) {
    return s < std::chrono::minutes{1} ? span(s) : tr("about %1").arg(span(s));
}

QString timeOfDay(std::int64_t ms) {
    return QDateTime::fromMSecsSinceEpoch(ms).toString(QStringLiteral("HH:mm"));
}

ClockTime clockOf(std::int64_t ms) {
    const QTime time = QDateTime::fromMSecsSinceEpoch(ms).time();
    return {std::chrono::minutes{time.hour() * 60 + time.minute()}};
}

QString clock(ClockTime start, Seconds s) {
    return fromCore(format(after(start, s)));
}

QString amount(double number) {
    return QLocale{}.toString(number, 'f', std::abs(number - std::round(number)) < 0.005 ? 0 : 1);
}

QString amount(const Supply& supply, double number, Unit unit) {
    if (isSaidInEighths(supply.kind, unit))
        return language::figure(fromCore(inEighths(number)));
    return QLocale{}.toString(number, 'f', std::abs(number - std::round(number)) < 0.005 ? 0 : 2);
}

QString side(Side s) {
    return fromCore(core::side(s));
}

QString zone(const std::string& id) {
    return fromCore(std::string{zoneName(id)});
}

QString zoneRows(const QuiltPlan& quilt, const Zone& zone, const Job& job) {
    if (!quilt.rows)
        return {};
    QString out = fromCore(zoneRowsWords(zone, *quilt.rows, job));
    if (!out.isEmpty())
        out[0] = out[0].toUpper();
    return out;
}

QString method(Quilting::Method m) {
    switch (m) {
    case Quilting::Method::inTheDitch:
        return tr("In the ditch");
    case Quilting::Method::acrossSeams:
        return tr("All over");
    case Quilting::Method::singleTacks:
        return tr("Tied or tacked");
    case Quilting::Method::freeMotion:
        return tr("Free motion");
    case Quilting::Method::undecided:
        return tr("Not decided yet");
    }
    return {};
}

QString start(Basting::Start s) {
    switch (s) {
    case Basting::Start::centred:
        return tr("From the centre");
    case Basting::Start::besideMiddle:
        return tr("Beside the middle");
    case Basting::Start::best:
        return tr("Whichever is quicker");
    case Basting::Start::oneEnd:
        return tr("From one end");
    }
    return {};
}

QString points(const Job& job, qsizetype count) {
    if (job.basting.with == Basting::With::pins)
        return count == 1 ? tr("1 pin") : tr("%1 pins").arg(count);
    return count == 1 ? tr("1 dot") : tr("%1 dots").arg(count);
}

QString task(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
        return tr("Set up the tables");
    case TaskKind::clamp:
        return tr("Clamp the backing");
    case TaskKind::layBacking:
        return tr("Lay the backing");
    case TaskKind::layBatting:
        return tr("Lay the batting");
    case TaskKind::layTop:
        return tr("Lay the top");
    case TaskKind::reclamp:
        return tr("Move the clamps to all three layers");
    case TaskKind::placeOpen:
        return tr("Put pins in, open");
    case TaskKind::smooth:
        return tr("Palm over it: no ripple");
    case TaskKind::closePins:
        return tr("Close the pins");
    case TaskKind::checkUnderside:
        return tr("Check underneath");
    case TaskKind::shift:
        return tr("Shift the quilt");
    case TaskKind::foldBack:
        return tr("Fold batting and top back");
    case TaskKind::dotLower:
        return tr("Dots on the backing");
    case TaskKind::foldForward:
        return tr("Fold forward");
    case TaskKind::dotUpper:
        return tr("Dots under the top");
    case TaskKind::press:
        return tr("Press the dots");
    case TaskKind::cool:
        return tr("Let it cool");
    case TaskKind::turnOver:
        return tr("Turn the quilt over");
    case TaskKind::handOver:
        return tr("Roll up and count the pins");
    }
    return {};
}

QString shortTask(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
        return tr("set up");
    case TaskKind::clamp:
        return tr("clamp");
    case TaskKind::layBacking:
        return tr("backing");
    case TaskKind::layBatting:
        return tr("batting");
    case TaskKind::layTop:
        return tr("top");
    case TaskKind::reclamp:
        return tr("move the clamps");
    case TaskKind::smooth:
        return tr("hands off");
    case TaskKind::checkUnderside:
        return tr("check below");
    case TaskKind::shift:
        return tr("shift");
    case TaskKind::foldBack:
        return tr("fold back");
    case TaskKind::foldForward:
        return tr("fold forward");
    case TaskKind::cool:
        return tr("cool");
    case TaskKind::turnOver:
        return tr("turn over");
    case TaskKind::handOver:
        return tr("roll up");
    default:
        return zoneTask(kind);
    }
}

QString zoneTask(TaskKind kind) {
    switch (kind) {
    case TaskKind::placeOpen:
        return tr("pins in");
    case TaskKind::closePins:
        return tr("close");
    case TaskKind::dotLower:
        return tr("dots below");
    case TaskKind::dotUpper:
        return tr("dots above");
    case TaskKind::press:
        return tr("press");
    default:
        return task(kind);
    }
}

QString call(Call call) {
    switch (call) {
    case Call::setUp:
        return tr("Set up");
    case Call::lay:
        return tr("Lay");
    case Call::clamp:
        return tr("Clamp");
    case Call::pin:
        return tr("Pin");
    case Call::handsOff:
        return tr("Hands off");
    case Call::close:
        return tr("Close");
    case Call::dotBelow:
        return tr("Dot below");
    case Call::dotAbove:
        return tr("Dot above");
    case Call::press:
        return tr("Press");
    case Call::cool:
        return tr("Cool");
    case Call::check:
        return tr("Check");
    case Call::move:
        return tr("Move");
    case Call::rollUp:
        break;
    }
    return tr("Roll up");
}

QString tick(EventKind kind, bool dots) {
    switch (kind) {
    case EventKind::zoneDotted:
        return zoneTask(TaskKind::dotLower);
    case EventKind::zoneOpened:
        return zoneTask(dots ? TaskKind::dotUpper : TaskKind::placeOpen);
    case EventKind::zoneClosed:
        return zoneTask(dots ? TaskKind::press : TaskKind::closePins);
    case EventKind::zonePressed:
        return tr("press back");
    default:
        return {};
    }
}

QString caution(TaskKind kind) {
    switch (kind) {
    case TaskKind::placeOpen:
        return tr("Pins stay in the dish, never in the mouth.");
    case TaskKind::shift:
        return tr("Lift together, on one person's count. Nobody climbs on a table.");
    case TaskKind::setUp:
        return tr("Check that the table legs are locked.");
    case TaskKind::press:
        return tr("One pair of hands on the iron; cord off the walkway.");
    case TaskKind::cool:
        return tr("Hot: nobody touches it yet. Iron off and upright.");
    case TaskKind::turnOver:
        return tr("Lift together, on one person's count.");
    case TaskKind::handOver:
        return tr("Sweep with a magnet last; keep it away from medical implants and electronics.");
    default:
        return {};
    }
}

} // namespace words
