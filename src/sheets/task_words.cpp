#include "sheets/task_words.h"

#include "language/said.h"
#include "plan/call.h"
#include "sheets/words.h"
#include "ways/way.h"

#include <algorithm>

namespace bastewright::sheets {
namespace {

/// What each of them says of it, one after another.
QString saidOf(std::span<const Way* const> ways, Sentence WayWords::*what) {
    QStringList out;
    for (const Way* way : ways)
        if (const QString words = language::said(way->words.*what); !words.isEmpty())
            out << words;
    return out.join(QChar::Space);
}

} // namespace

QString taskLine(const Task& task, const QuiltPlan& quilt, Basting::With with, Unit unit) {
    if (isOfZone(task.kind) && !task.zone.empty()) {
        return zonesLine(task.kind, zoneWord(task.zone), taskPoints(task, quilt),
                         wayWith(task.kind).with);
    }
    const Pass* pass = findPass(quilt, task.pass);
    switch (task.kind) {
    case TaskKind::setUp:
        return wayOf(with).fromBox
                   ? Text::tr("Set up the tables, mark their middles, open the pins into bowls")
                   : Text::tr("Set up the tables, mark their middles");
    case TaskKind::clamp:
        return Text::tr("Clamp the backing, middles first");
    case TaskKind::layBacking:
        return Text::tr("Lay the backing, wrong side up");
    case TaskKind::layBatting:
        return Text::tr("Lay the batting");
    case TaskKind::layTop:
        return Text::tr("Lay the top, right side up");
    case TaskKind::reclamp:
        return Text::tr("Move the clamps to all three layers");
    case TaskKind::smooth:
        return pass ? Text::tr("Smooth toward %1").arg(sidesList(pass->smoothTowards))
                    : Text::tr("Smooth");
    case TaskKind::checkUnderside:
        return Text::tr("Check underneath, and what hangs");
    case TaskKind::shift:
        return pass ? Text::tr("Shift the quilt %1").arg(shiftWords(pass->shift, unit))
                    : Text::tr("Shift the quilt");
    case TaskKind::handOver:
        return Text::tr("Roll it up for the machine");
    default:
        return taskName(task.kind);
    }
}

QString zoneWord(const std::string& zone) {
    const auto name = zoneName(zone);
    return QString::fromUtf8(name.data(), qsizetype(name.size()));
}

QString zonesLine(TaskKind kind, const QString& zones, int points, Basting::With with) {
    return language::said(
        zoneStepWords(kind).line(zones.toStdString(), pointCount(points, with).toStdString()));
}

QString taskName(TaskKind kind) {
    switch (kind) {
    case TaskKind::setUp:
        return Text::tr("Set up");
    case TaskKind::clamp:
        return Text::tr("Clamp the backing");
    case TaskKind::layBacking:
        return Text::tr("Lay the backing");
    case TaskKind::layBatting:
        return Text::tr("Lay the batting");
    case TaskKind::layTop:
        return Text::tr("Lay the top");
    case TaskKind::reclamp:
        return Text::tr("Move the clamps");
    case TaskKind::smooth:
        return Text::tr("Smooth");
    case TaskKind::checkUnderside:
        return Text::tr("Check underneath");
    case TaskKind::shift:
        return Text::tr("Shift the quilt");
    case TaskKind::foldBack:
        return Text::tr("Fold back batting and top");
    case TaskKind::foldForward:
        return Text::tr("Fold the batting forward");
    case TaskKind::cool:
        return Text::tr("Let it cool: nobody touches it");
    case TaskKind::settle:
        return Text::tr("Leave it to set: nobody touches it");
    case TaskKind::turnOver:
        return Text::tr("Turn the quilt over");
    case TaskKind::handOver:
        return Text::tr("Roll up");
    default:
        return language::said(zoneStepWords(kind).heading);
    }
}

QString taskCheck(TaskKind kind, std::span<const Way* const> ways, Unit unit) {
    switch (kind) {
    case TaskKind::setUp:
        return std::ranges::any_of(ways, &Way::fromBox)
                   ? Text::tr("Legs locked, joints covered, middles marked; pins counted.")
                   : Text::tr("Legs locked, joints covered, middles marked.");
    case TaskKind::clamp:
        return Text::tr("Everybody their own stretch, middles first. Firm, never stretched.");
    case TaskKind::layBacking:
        return Text::tr("Wrong side up, middles on the marks. Firm, never stretched: a palm pushes "
                        "no ripple.");
    case TaskKind::layBatting:
        return Text::tr("Opened from the middle, patted flat, not pulled.");
    case TaskKind::layTop:
        return Text::tr("Right side up, middles on the marks; batting and backing show on every "
                        "side.");
    case TaskKind::reclamp:
        return Text::tr("Never two off at once; no pleat under any.");
    case TaskKind::smooth:
        return QString{Text::tr("From the basted part outwards, no ripple.") + QChar::Space +
                       saidOf(ways, &WayWords::smoothed)}
            .trimmed();
    case TaskKind::checkUnderside:
        return Text::tr("Overhang %1 short or more: a pleat. Turn up a few places: the back is "
                        "caught, and flat.")
            .arg(length(kPleat, unit));
    case TaskKind::shift:
        return Text::tr("Sweep below with a palm, lift together on the count, slide, fold back, "
                        "hold the backing, return batting, then top.");
    case TaskKind::foldBack:
        return Text::tr("A straight fold, batting and top together, nothing dragged.");
    case TaskKind::foldForward:
        return Text::tr("Rolled down, smoothed from the fold outwards.");
    case TaskKind::cool:
        return Text::tr("Iron up on its heel, away from the edge.");
    case TaskKind::settle:
        return Text::tr("As long as the can says; cans closed, hands washed.");
    case TaskKind::turnOver:
        return Text::tr("Lift together on the count; turn it like a page.");
    case TaskKind::handOver:
        return saidOf(ways, &WayWords::putAway);
    default:
        return language::said(zoneStepWords(kind).how);
    }
}

int taskPoints(const Task& task, const QuiltPlan& quilt) {
    const Zone* zone = findZone(quilt, task.zone);
    return zone ? int(zone->points.size()) : 0;
}

int pointsIn(const QuiltPlan& quilt, int pass) {
    int n = 0;
    for (const auto& z : quilt.zones)
        if (z.pass == pass)
            n += int(z.points.size());
    return n;
}

} // namespace bastewright::sheets
