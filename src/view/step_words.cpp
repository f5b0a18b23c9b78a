#include "view/step_words.h"

#include "sheets/hold_order.h"
#include "sheets/words.h"
#include "view/words.h"

#include <QCoreApplication>

using namespace bastewright;

namespace step_words {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(StepWords)
};

/// "Clamp in this order: foot 44, head 44, left 15 …": figures are from the left or from the head.
QString holdLine(const Pass& pass, Hold::Kind kind, Unit unit) {
    QStringList places;
    for (const auto& hold : sheets::holdOrder(pass))
        if (hold.kind == kind)
            places << Text::tr("%1 %2").arg(words::side(hold.side), words::length(hold.at, unit));
    if (places.isEmpty())
        return {};
    const QString order = places.join(QStringLiteral(" · "));
    return kind == Hold::Kind::clamp ? Text::tr("Clamps, in this order: %1").arg(order)
                                     : Text::tr("Tape, in this order: %1").arg(order);
}

QStringList rollLines(const Pass& pass, Unit unit) {
    QStringList out;
    for (const auto& roll : pass.rolls) {
        if (roll.folded)
            out << Text::tr("Fold %1 of the %2 side in pleats on a support")
                       .arg(words::length(roll.rolled, unit), words::side(roll.side));
        else if (roll.clips > 0)
            out << Text::tr("Roll %1 of the %2 side: a roll %3 thick, %4 clips that hold %5")
                       .arg(words::length(roll.rolled, unit), words::side(roll.side),
                            words::length(roll.diameter, unit))
                       .arg(roll.clips)
                       .arg(words::length(roll.clipHolds, unit));
        else
            out << Text::tr("Roll %1 of the %2 side: a roll %3 thick, tied, as no clip on hand "
                            "holds it")
                       .arg(words::length(roll.rolled, unit), words::side(roll.side),
                            words::length(roll.diameter, unit));
    }
    return out;
}

} // namespace

QStringList lines(TaskKind kind, const SurfacePlan& surface, const Pass& pass, Unit unit) {
    QStringList out;
    const auto add = [&out](const QString& line) {
        if (!line.isEmpty())
            out << line;
    };
    const bool first = kind == TaskKind::layBacking;
    if (kind == TaskKind::shift) {
        if (pass.liftPeople > 1)
            add(Text::tr("%1 people move it, about %2 kg")
                    .arg(pass.liftPeople)
                    .arg(words::amount(pass.liftKilograms)));
        out += rollLines(pass, unit);
    }
    if (first || kind == TaskKind::layTop)
        add(Text::tr("Middle on the middle of the first area: %1 from the left, %2 from the head")
                .arg(words::length(pass.fresh.bounds().middle().x, unit),
                     words::length(pass.fresh.bounds().middle().y, unit)));
    if (kind == TaskKind::clamp || kind == TaskKind::reclamp) {
        add(holdLine(pass, Hold::Kind::clamp, unit));
        if (kind != TaskKind::reclamp)
            add(holdLine(pass, Hold::Kind::tape, unit));
    }
    if (kind == TaskKind::smooth && !pass.smoothTowards.empty())
        add(Text::tr("Towards: %1").arg(sheets::sidesList(pass.smoothTowards)));
    if (first)
        out += rollLines(pass, unit);
    if (surface.floor && (first || kind == TaskKind::shift))
        add(Text::tr("On the floor: kneel on a pad, and change places often"));
    return out;
}

bool compares(TaskKind kind) {
    return kind == TaskKind::layBacking || kind == TaskKind::layTop || kind == TaskKind::shift ||
           kind == TaskKind::checkUnderside;
}

QList<QVariantList> sides(const SurfacePlan& surface, const Pass& pass, Unit unit) {
    QList<QVariantList> rows;
    for (const Side side : kSides) {
        const Length over = pass.backingOverhang[side];
        rows.push_back(
            {words::side(side),
             surface.floor || over <= Length{} ? Text::tr("lies") : words::length(over, unit),
             words::length(pass.backingSpare[side], unit),
             words::length(pass.battingSpare[side], unit)});
    }
    return rows;
}

QString question(Check check, Unit unit) {
    switch (check) {
    case Check::palmGlides:
        return Text::tr("A palm glides over the top, no ripple ahead?");
    case Check::underside:
        return Text::tr("The underside is flat, and caught all over?");
    case Check::spare:
        return Text::tr("Four sides as planned, none %1 short?")
            .arg(words::length(sheets::kPleat, unit));
    }
    return {};
}

QString cure(Check check) {
    switch (check) {
    case Check::palmGlides:
        return Text::tr("Smooth again from the basted part outwards; open what stands in the way "
                        "and close it afterwards.");
    case Check::underside:
        return Text::tr("Open the places round the fold or gap, draw the backing flat from below, "
                        "and baste them again.");
    case Check::spare:
        return Text::tr("A pleat, or a layer has crept: feel below from the short side inwards, "
                        "open there, and draw that layer out.");
    }
    return {};
}

} // namespace step_words
