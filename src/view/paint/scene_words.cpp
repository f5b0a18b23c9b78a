#include "view/paint/scene_words.h"

#include "language/said.h"
#include "view/base/words.h"

#include <QCoreApplication>

#include <algorithm>

using namespace bastewright;

namespace words {
namespace {

QString listed(const std::vector<std::string>& people) {
    return language::said(core::listed(people, people.size()));
}

QString slide(const Planned& planned, const Task& task) {
    const auto& passes = planned.plan.quilts[std::size_t(task.job)].passes;
    const auto pass = std::find_if(passes.begin(), passes.end(),
                                   [&](const Pass& p) { return p.number == task.pass; });
    QStringList ways;
    if (pass != passes.end()) {
        const auto way = [&](Length by, Side ahead, Side back) {
            if (by != Length{})
                ways << tr("%1 toward the %2")
                            .arg(length(abs(by), planned.plan.unit),
                                 side(by > Length{} ? ahead : back));
        };
        way(pass->shift.dx, Side::right, Side::left);
        way(pass->shift.dy, Side::foot, Side::head);
    }
    return ways.size() < 2 ? ways.value(0) : tr("%1 and %2").arg(ways[0], ways[1]);
}

// Of whole passes: %1 is who, %2 the way.
QString pattern(TaskKind kind, bool one) {
    switch (kind) {
    case TaskKind::setUp:
        return one ? tr("%1 sets up") : tr("%1 set up");
    case TaskKind::clamp:
        return one ? tr("%1 clamps the backing") : tr("%1 clamp the backing");
    case TaskKind::layBacking:
        return one ? tr("%1 lays the backing") : tr("%1 lay the backing");
    case TaskKind::layBatting:
        return one ? tr("%1 lays the batting") : tr("%1 lay the batting");
    case TaskKind::layTop:
        return one ? tr("%1 lays the top") : tr("%1 lay the top");
    case TaskKind::reclamp:
        return one ? tr("%1 moves the clamps to all three layers")
                   : tr("%1 move the clamps to all three layers");
    case TaskKind::smooth:
        return one ? tr("%1 smooths") : tr("%1 smooth");
    case TaskKind::checkUnderside:
        return one ? tr("%1 checks underneath") : tr("%1 check underneath");
    case TaskKind::shift:
        return one ? tr("%1 slides the quilt %2") : tr("%1 slide the quilt %2");
    case TaskKind::foldBack:
        return one ? tr("%1 folds batting and top back") : tr("%1 fold batting and top back");
    case TaskKind::foldForward:
        return one ? tr("%1 folds them forward") : tr("%1 fold them forward");
    case TaskKind::cool:
        return tr("The quilt cools; nobody touches it");
    case TaskKind::settle:
        return tr("The spray sets; nobody touches it");
    case TaskKind::turnOver:
        return one ? tr("%1 turns the quilt over") : tr("%1 turn the quilt over");
    case TaskKind::handOver:
        return one ? tr("%1 rolls it up for quilting") : tr("%1 roll it up for quilting");
    default:
        return {};
    }
}

} // namespace

QString deed(const Planned& planned, const Task& task) {
    const bool one = task.people.size() == 1;
    const QString who = task.people.empty() ? tr("Nobody yet") : listed(task.people);
    if (isOfZone(task.kind))
        return fromCore(zoneStepWords(task.kind).doing(toCore(who), toCore(zone(task.zone)), one));
    QString line = pattern(task.kind, one);
    if (line.contains(QLatin1String("%1")))
        line = line.arg(who);
    if (line.contains(QLatin1String("%2")))
        line.replace(QLatin1String("%2"), slide(planned, task));
    return line.trimmed();
}

QString moment(const Planned& planned, int quilt, const TableScene& scene, Seconds at) {
    QStringList deeds;
    for (const Task* task : scene.going)
        deeds << deed(planned, *task);
    if (!deeds.isEmpty())
        return deeds.join(tr("; ")) + QLatin1Char('.');
    if (at >= planned.plan.finish)
        return tr("Everything is basted.");
    for (const auto& task : planned.plan.tasks)
        if (task.job == quilt && task.start > at)
            return tr("Waiting until %1.").arg(clock(planned.session.setting.start, task.start));
    return tr("This quilt is done.");
}

} // namespace words
