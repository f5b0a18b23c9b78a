#include "view/layer_rows.h"

#include "view/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

using namespace bastewright;

namespace rows {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rows", text);
}

QString bought(Length l, Unit unit) {
    if (l == Length{})
        return tr("Nothing to buy");
    return unit == Unit::inch ? words::fromCore(formatYardsUp(l))
                              : QStringLiteral("%1 m").arg(l.mm() / 1000, 0, 'f', 2);
}

QString area(double squareInches, Unit unit) {
    return unit == Unit::inch ? tr("%1 sq ft left over").arg(squareInches / 144, 0, 'f', 1)
                              : tr("%1 m² left over").arg(squareInches * 0.00064516, 0, 'f', 2);
}

/// "4 in on every side", or the two ways where they differ.
QString sides(const PerSide<Length>& s, Unit unit) {
    if (s.head == s.left && s.head == s.foot && s.left == s.right)
        return tr("%1 past the top on every side").arg(words::length(s.head, unit));
    return tr("past the top: head %1, foot %2, left %3, right %4")
        .arg(words::length(s.head, unit), words::length(s.foot, unit), words::length(s.left, unit),
             words::length(s.right, unit));
}

Length least(const PerSide<Length>& s) {
    return std::min({s.head, s.foot, s.left, s.right});
}

/// The cure that the proof of sizes names for a layer of the quilt whose fields begin so.
QString cureFor(const Findings& findings, const std::string& quilt, const std::string& layer) {
    for (const Finding& f : findings)
        if (f.level != Finding::Level::note && !f.cure.empty() &&
            f.field.starts_with(quilt + "/" + layer + "/") &&
            f.text.english().starts_with("The " + layer + " is "))
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
                            const std::string& fieldPrefix) {
    QList<QVariantList> out;
    for (const Pass& pass : plan.passes)
        for (const auto& [name, core, spare, overage] :
             {std::tuple{tr("backing"), std::string{"backing"}, pass.backingSpare,
                         job.backing.overage},
              std::tuple{tr("batting"), std::string{"batting"}, pass.battingSpare,
                         job.batting.overage}}) {
            const Length low = least(spare), half = overage / 2;
            const bool stop = low < Length{}, warn = !stop && low < half;
            const QString all = sides(spare, job.unit);
            const QString text =
                stop || warn ? tr("%1.").arg(all)
                             : tr("%1. %2 of it may be lost to creep before it must be cured.")
                                   .arg(all, words::length(low - half, job.unit));
            out.push_back({tr("Pass %1, %2").arg(pass.number).arg(name),
                           stop   ? QStringLiteral("stop")
                           : warn ? QStringLiteral("warn")
                                  : QStringLiteral("fine"),
                           text, stop || warn ? cureFor(findings, fieldPrefix, core) : QString{}});
        }
    return out;
}

QString battingWords(const Job& job, const QuiltPlan& plan) {
    const BattingPlan& batting = *plan.batting;
    QStringList parts;
    const QString whole = words::size(plan.layers.batting, job.unit);
    if (batting.joins.empty() && !batting.pack.empty())
        parts << tr("%1, from a %2 pack.").arg(whole, words::fromCore(batting.pack));
    else if (batting.joins.empty())
        parts << tr("%1, from one piece.").arg(whole);
    else
        parts << tr("%1 from %2 pieces; bring %3 of joining strip.")
                     .arg(whole)
                     .arg(batting.pieces.size())
                     .arg(words::length(batting.strip, job.unit));
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
        return measured ? tr("as measured") : tr("as planned, from washed cloth");
    };
    const QString batting = words::size(plan.layers.batting, job.unit);
    return tr("Top %1, by its largest readings. Batting %2. Backing %3, %4. Each is centred under "
              "the top.")
        .arg(words::size(plan.layers.top, job.unit),
             job.batting.width && job.batting.length ? tr("%1, as measured").arg(batting) : batting,
             words::size(plan.layers.backing, job.unit),
             made(job.backing.width && job.backing.length));
}

} // namespace rows
