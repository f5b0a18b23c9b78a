#include "view/plan/layer_rows.h"

#include "planners/proof/proof.h"
#include "view/base/words.h"
#include "view/plan/plan_rows.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

using namespace bastewright;

namespace rows {
namespace {

QString bought(Length l, Unit unit) {
    return l == Length{} ? tr("Nothing to buy") : words::lengthToBuy(l, unit);
}

QString area(double squareInches, Unit unit) {
    return unit == Unit::inch ? tr("%1 sq ft left over").arg(squareInches / 144, 0, 'f', 1)
                              : tr("%1 m² left over").arg(squareInches * 0.00064516, 0, 'f', 2);
}

/// "4 in of overage on every side", or the two ways where they differ.
QString overageWords(const LayerSpare& s, Unit unit) {
    if (s.sides.overage == s.ends.overage)
        return tr("%1 of overage on every side, in every pass")
            .arg(words::length(s.ends.overage, unit));
    return tr("%1 of overage at head and foot, %2 at the sides, in every pass")
        .arg(words::length(s.ends.overage, unit), words::length(s.sides.overage, unit));
}

/// What squaring and creep leave of it on the scantier sides.
QString leftWords(const LayerSpare& s, Unit unit) {
    const SpareLeft& low = s.sides.left() < s.ends.left() ? s.sides : s.ends;
    const QString creep = words::length(kCreep, unit), left = words::length(low.left(), unit);
    return low.squaring >= Length::inch64ths(8) // what is said is to the eighth
               ? tr("The top leans and takes %1 of it, and layers creep up to %2 while they are "
                    "basted: %3 are left to trim square.")
                     .arg(words::length(low.squaring, unit), creep, left)
               : tr("Layers creep up to %1 while they are basted: %2 are left to trim square.")
                     .arg(creep, left);
}

/// The cure that the proof of sizes names for a layer of a quilt.
QString cureFor(const Findings& findings, int quilt, const std::string& layer) {
    for (const Finding& f : findings)
        if (f.kind == Finding::Kind::layerShort && f.quilt == quilt && f.subject == layer)
            return words::fromCore(f.cure);
    return {};
}

} // namespace

QVariantList ofBackingWay(const BackingAlternative& way, Unit unit, bool mayTake) {
    const QString seams = way.seams == 0   ? tr("no seam")
                          : way.seams == 1 ? tr("1 seam")
                                           : tr("%1 seams").arg(way.seams);
    return {bought(way.bought, unit),
            seams,
            area(way.waste, unit),
            words::fromCore(way.text),
            way.wanted.empty() ? QString{} : tr("Needs %1.").arg(words::fromCore(way.wanted)),
            way.chosen,
            mayTake};
}

QList<QVariantList> ofSpare(const Job& job, const QuiltPlan& plan, const Findings& findings,
                            int quilt) {
    QList<QVariantList> out;
    for (const auto& [name, core, size, overage] :
         {std::tuple{tr("Backing"), std::string{"backing"}, plan.layers.backing,
                     job.backing.overage},
          std::tuple{tr("Batting"), std::string{"batting"}, plan.layers.batting,
                     job.batting.overage}}) {
        const LayerSpare spare = spareOf(job.top, size);
        const Length low = std::min(spare.sides.overage - spare.sides.squaring,
                                    spare.ends.overage - spare.ends.squaring);
        const bool stop = low < Length{}, warn = !stop && low < overage / 2;
        const QString all = overageWords(spare, job.unit);
        out.push_back(
            {name,
             stop   ? QStringLiteral("stop")
             : warn ? QStringLiteral("warn")
                    : QStringLiteral("fine"),
             stop ? tr("%1.").arg(all) : tr("%1. %2").arg(all, leftWords(spare, job.unit)),
             stop || warn ? cureFor(findings, quilt, core) : QString{}});
    }
    return out;
}

QVariantList ofBattingWay(const BattingAlternative& way) {
    return {words::fromCore(way.text), way.chosen};
}

QString battingWords(const Job& job, const QuiltPlan& plan) {
    const BattingPlan& batting = *plan.batting;
    QStringList parts;
    const QString whole = words::size(plan.layers.batting, job.unit);
    QStringList buy;
    for (const auto& thing : batting.toBring)
        buy << words::fromCore(thing);
    if (!buy.isEmpty())
        parts << tr("%1. To buy: %2").arg(whole, buy.join(QLatin1Char(' ')));
    else if (batting.joins.empty())
        parts << tr("%1, from one piece.").arg(whole);
    else
        parts << tr("%1, joined from %2 leftovers.").arg(whole).arg(batting.pieces.size());
    if (!batting.joinCost.empty())
        parts << words::fromCore(batting.joinCost);
    for (const BattingSplit& s : batting.splits)
        parts << tr("First cut %1 in two, at %2 of its %3.")
                     .arg(words::fromCore(s.name), words::length(s.at, job.unit),
                          s.acrossWidth ? tr("width") : tr("length"));
    QStringList left;
    for (const auto& name : batting.leftOver)
        left << words::fromCore(name);
    if (!left.isEmpty())
        parts << tr("Left over: %1.").arg(left.join(QStringLiteral("; ")));
    return parts.join(QLatin1Char(' '));
}

QString sizesWords(const Job& job, const QuiltPlan& plan) {
    const auto made = [&](bool measured) {
        return measured ? tr("as measured") : tr("as planned, from washed fabric");
    };
    const QString batting = words::size(plan.layers.batting, job.unit);
    return tr("Top %1, by its largest readings. Batting %2. Backing %3, %4. Each is centered under "
              "the top.")
        .arg(words::size(plan.layers.top, job.unit),
             job.batting.width && job.batting.length ? tr("%1, as measured").arg(batting) : batting,
             words::size(plan.layers.backing, job.unit),
             made(job.backing.width && job.backing.length));
}

} // namespace rows
