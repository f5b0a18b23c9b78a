#include "view/base/words.h"

#include "language/said.h"
#include "plan/supply.h"
#include "session/ticks.h"
#include "ways/point_words.h"

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
    return language::figure(
        fromCore(format(s.width, unit, false) + " × " + format(s.length, unit)));
}

QString span(Seconds s) {
    return fromCore(core::said(s));
}

QString about(Seconds s) {
    return s < std::chrono::minutes{1} ? span(s) : tr("about %1").arg(span(s));
}

QString timeOfDay(std::int64_t ms) {
    return clock(clockOf(ms));
}

ClockTime clockOf(std::int64_t ms) {
    const QTime time = QDateTime::fromMSecsSinceEpoch(ms).time();
    return {std::chrono::minutes{time.hour() * 60 + time.minute()}};
}

QString clock(ClockTime start, Seconds s) {
    return clock(after(start, s));
}

QString clock(ClockTime time) {
    return language::clock(time);
}

QString weight(double kilograms, Unit unit) {
    return language::figure(fromCore(formatWeight(kilograms, unit)));
}

QString yardsUp(Length l) {
    return language::figure(fromCore(formatYardsUp(l)));
}

QString lengthToBuy(Length l, Unit unit) {
    return unit == Unit::inch
               ? yardsUp(l)
               : QStringLiteral("%1\u00a0m").arg(QLocale{}.toString(l.mm() / 1000, 'f', 2));
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
        return tr("From the center");
    case Basting::Start::besideMiddle:
        return tr("Beside the middle");
    case Basting::Start::best:
        return tr("The faster one");
    case Basting::Start::oneEnd:
        return tr("From one end");
    }
    return {};
}

QString points(const Job& job, std::span<const Zone> zones, std::optional<int> pass) {
    return fromCore(countsSentence(job, zones, pass));
}

QString points(const Job& job, qsizetype count) {
    return fromCore(wayOf(job).words.count(count));
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
    case TaskKind::smooth:
        return tr("Palm over it: no ripple");
    case TaskKind::checkUnderside:
        return tr("Check underneath");
    case TaskKind::shift:
        return tr("Shift the quilt");
    case TaskKind::foldBack:
        return tr("Fold batting and top back");
    case TaskKind::foldForward:
        return tr("Fold forward");
    case TaskKind::cool:
        return tr("Let it cool");
    case TaskKind::settle:
        return tr("Leave it to set");
    case TaskKind::turnOver:
        return tr("Turn the quilt over");
    case TaskKind::handOver:
        return tr("Roll up for quilting");
    default:
        return fromCore(zoneStepWords(kind).command);
    }
}

QString shortTask(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
        return tr("set up");
    case TaskKind::clamp:
        return tr("clamp");
    case TaskKind::layBacking:
        return tr("lay backing");
    case TaskKind::layBatting:
        return tr("lay batting");
    case TaskKind::layTop:
        return tr("lay top");
    case TaskKind::reclamp:
        return tr("move the clamps");
    case TaskKind::smooth:
        return tr("hands off");
    case TaskKind::checkUnderside:
        return tr("check underneath");
    case TaskKind::shift:
        return tr("shift");
    case TaskKind::foldBack:
        return tr("fold back");
    case TaskKind::foldForward:
        return tr("fold forward");
    case TaskKind::cool:
        return tr("cool");
    case TaskKind::settle:
        return tr("wait");
    case TaskKind::turnOver:
        return tr("turn over");
    case TaskKind::handOver:
        return tr("roll up");
    default:
        return zoneTask(kind);
    }
}

QString zoneTask(TaskKind kind) {
    return isOfZone(kind) ? fromCore(zoneStepWords(kind).brief) : task(kind);
}

QString call(Call call) {
    switch (call) {
    case Call::setUp:
        return tr("Set up");
    case Call::lay:
        return tr("Lay");
    case Call::clamp:
        return tr("Clamp");
    case Call::handsOff:
        return tr("Hands off");
    case Call::cool:
        return tr("Cool");
    case Call::wait:
        return tr("Wait");
    case Call::check:
        return tr("Check");
    case Call::move:
        return tr("Move");
    case Call::rollUp:
        return tr("Roll up");
    default:
        break;
    }
    const WayStep* step = zoneStepAt(call);
    return step ? fromCore(step->words->call) : QString{};
}

QString tick(Tick kind, const Way& way) {
    if (kind == Tick::pressed)
        return tr("press back");
    const auto work = workAt(kind, way);
    return work ? zoneTask(*work) : QString{};
}

QString caution(TaskKind kind) {
    switch (kind) {
    case TaskKind::shift:
        return tr("Lift together, on one person's count. Nobody climbs on a table.");
    case TaskKind::setUp:
        return tr("Check that the table legs are locked.");
    case TaskKind::cool:
        return tr("Hot: nobody touches it yet. Iron off and upright.");
    case TaskKind::settle:
        return tr("Nobody touches it yet; the can says for how long.");
    case TaskKind::turnOver:
        return tr("Lift together, on one person's count.");
    case TaskKind::handOver:
        return tr("Sweep with a magnet last; keep it away from medical implants and electronics.");
    default:
        return isOfZone(kind) ? fromCore(zoneStepWords(kind).caution) : QString{};
    }
}

} // namespace words
