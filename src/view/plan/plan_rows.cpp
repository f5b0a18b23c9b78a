#include "view/plan/plan_rows.h"

#include "planners/surface/reachable.h"
#include "view/base/people_palette.h"
#include "view/base/words.h"
#include "view/plan/why.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace bastewright;

namespace rows {
QString tr(const char* text) {
    return QCoreApplication::translate("rows", text);
}

namespace {

Unit unitOf(const Planned& planned) {
    return planned.session.jobs.front().unit;
}

/// So many are looked at before more are asked for.
constexpr int kWaysAtOnce = 5;

int liftsOf(const Alternative& a) {
    return a.passes + a.pulls - 1;
}

/// "4 lifts"
QString liftCount(const Alternative& a) {
    const int count = liftsOf(a);
    return count < 1 ? tr("no lift") : count == 1 ? tr("1 lift") : tr("%1 lifts").arg(count);
}

/// "4 lifts of 4.1 kg by 2 people"
QString liftWords(const Alternative& a, Unit unit) {
    if (liftsOf(a) < 1)
        return tr("Nothing to lift");
    const QString people = a.liftPeople == 1 ? tr("1 person") : tr("%1 people").arg(a.liftPeople);
    return tr("%1 of %2 by %3").arg(liftCount(a), words::weight(a.liftKilograms, unit), people);
}

/// "26 in deep: everybody reaches it"
QString reachWords(const Alternative& a, const Planned& planned) {
    if (a.reach == Length{})
        return tr("Nothing is out of reach");
    const auto& helpers = planned.session.setting.helpers;
    const auto reaching = std::count_if(helpers.begin(), helpers.end(), [&](const Helper& h) {
        return leaningReach(h) >= a.reach;
    });
    QString deep = tr("%1 deep").arg(words::length(a.reach, unitOf(planned)));
    if (helpers.empty())
        return deep;
    if (reaching == std::ssize(helpers))
        return tr("%1: everybody reaches it").arg(deep);
    return tr("%1: %2 of %3 reach all of it").arg(deep).arg(reaching).arg(helpers.size());
}

/// "128 in of shifts"
QString shiftWords(const Alternative& a, Unit unit) {
    if (a.passes < 2)
        return {};
    return tr("%1 of shifts").arg(words::length(a.shifted, unit));
}

/// Lifts, reach and shifts, a line each.
QString costWords(const Alternative& a, const Planned& planned) {
    QStringList lines{liftWords(a, unitOf(planned)), reachWords(a, planned)};
    if (const QString shifts = shiftWords(a, unitOf(planned)); !shifts.isEmpty())
        lines << shifts;
    return lines.join(QLatin1Char('\n'));
}

} // namespace

QList<QVariantList> ofAlternatives(const Planned& planned, std::size_t quilt) {
    QList<QVariantList> out;
    if (quilt >= planned.plan.quilts.size())
        return out;
    int shown = 0;
    for (const auto& a : planned.plan.quilts[quilt].alternatives) {
        const bool first = a.chosen || (a.workable && shown < kWaysAtOnce);
        shown += first;
        out.push_back(
            {words::fromCore(a.surface), words::start(a.start),
             a.quiltLengthAlongLength ? tr("quilt along the table") : tr("quilt across the table"),
             a.passes, a.workable ? words::about(a.predicted) : tr("cannot be reached"),
             liftCount(a), a.chosen, a.workable, words::fromCore(a.why),
             a.workable ? costWords(a, planned) : QString{},
             a.start == Basting::Start::besideMiddle, first});
    }
    return out;
}

QList<QVariantList> ofSupplies(const Planned& planned) {
    QList<QVariantList> out;
    const Unit unit = planned.plan.unit;
    for (const auto& s : planned.plan.supplies)
        out.push_back({words::fromCore(s.item), words::amount(s, s.need, unit),
                       words::amount(s, s.have, unit), words::amount(s, s.buy, unit),
                       words::fromCore(s.unit), s.buy > 0, why::ofSupply(s.kind),
                       words::fromCore(s.note)});
    return out;
}

QList<QVariantList> ofPeople(const Planned& planned) {
    const auto& helpers = planned.session.setting.helpers;
    const auto names = people::names(helpers);
    const auto letters = people::letters(helpers);
    const auto start = planned.session.setting.start;
    QList<QVariantList> out;
    for (qsizetype i = 0; i < names.size(); ++i) {
        Seconds work{}, first{}, last{};
        int tasks = 0;
        QStringList lines;
        for (const auto& task : planned.plan.tasks) {
            if (std::find(task.people.begin(), task.people.end(), words::toCore(names[i])) ==
                task.people.end())
                continue;
            if (tasks++ == 0)
                first = task.start;
            last = std::max(last, task.end);
            work += task.end - task.start;
            const QString what = task.zone.empty()
                                     ? words::task(task.kind)
                                     : QStringLiteral("%1 · %2").arg(words::zone(task.zone),
                                                                     words::zoneTask(task.kind));
            lines << QStringLiteral("%1   %2").arg(words::clock(start, task.start), what);
        }
        const QString hours =
            tasks == 0 ? tr("nothing to do")
                       : tr("%1 to %2").arg(words::clock(start, first), words::clock(start, last));
        out.push_back({letters[i], int(i), names[i], hours,
                       tasks == 0 ? QString{} : tr("%1 at work").arg(words::span(work)),
                       lines.join(QLatin1Char('\n'))});
    }
    return out;
}

QList<QVariantList> ofHelp(const Planned& planned) {
    QList<QVariantList> out;
    for (const auto& h : planned.plan.help) {
        const QString time = words::span(h.saved);
        out.push_back({words::fromCore(h.change),
                       h.passesSaved < 1 ? tr("saves %1").arg(time)
                       : h.passesSaved == 1
                           ? tr("saves %1 and one pass").arg(time)
                           : tr("saves %1 and %2 passes").arg(time).arg(h.passesSaved)});
    }
    return out;
}

QList<QVariantList> ofPasses(const Planned& planned, std::size_t quilt) {
    QList<QVariantList> out;
    if (quilt >= planned.plan.quilts.size())
        return out;
    const auto& plan = planned.plan.quilts[quilt];
    const auto start = planned.session.setting.start;
    for (const auto& pass : plan.passes) {
        Seconds from = Seconds::max(), until{};
        for (const auto& task : planned.plan.tasks)
            if (task.job == int(quilt) && task.pass == pass.number) {
                from = std::min(from, task.start);
                until = std::max(until, task.end);
            }
        const auto zones = int(std::ranges::count(plan.zones, pass.number, &Zone::pass));
        const bool timed = from <= until;
        out.push_back({pass.number, tr("Pass %1").arg(pass.number), zones,
                       words::points(planned.session.jobs[quilt], plan.zones, pass.number),
                       timed ? words::span(until - from) : QString{},
                       timed ? words::clock(start, from) : QString{}});
    }
    return out;
}

} // namespace rows
