#include "view/table/step_words.h"

#include "sheets/words.h"
#include "view/base/words.h"
#include "ways/way.h"

#include <QCoreApplication>

#include <algorithm>

using namespace bastewright;

namespace step_words {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(StepWords)
};

/// "Clamps: head 7, foot 7, left 2, right 2; about 17 in apart, middles first".
QString holdLine(const Pass& pass, Hold::Kind kind, Unit unit) {
    QStringList sides;
    Length apart;
    for (const Hold& hold : pass.holds)
        if (hold.kind == kind) {
            sides << Text::tr("%1 %2").arg(words::side(hold.side)).arg(hold.count);
            apart = std::max(apart, hold.apart);
        }
    if (sides.isEmpty())
        return {};
    const QString all = sides.join(QStringLiteral(", "));
    const QString how =
        kind == Hold::Kind::clamp ? Text::tr("Clamps: %1").arg(all) : Text::tr("Tape: %1").arg(all);
    return apart == Length{}
               ? how
               : Text::tr("%1; about %2 apart, middles first").arg(how, words::length(apart, unit));
}

/// What rests on something, by sides.
QStringList beyondLines(const Pass& pass) {
    QStringList out;
    for (const Side side : kSides) {
        if (pass.beyond[side] == Beyond::chairs)
            out << Text::tr("Rest the %1 side on chairs").arg(words::side(side));
        if (pass.beyond[side] == Beyond::spareTable)
            out << Text::tr("Rest the %1 side on the spare table").arg(words::side(side));
    }
    return out;
}

/// Common practice; labels and local rules come before it.
QStringList cautions(const Job& job, const QuiltPlan& quilt) {
    QStringList out{
        Text::tr("Check that the legs of the tables are locked. Nobody climbs on a table."),
        Text::tr("Children and pets stay out, nobody walks barefoot."),
        Text::tr("Lift together, on one person's count, and only as much as is easy.")};
    for (const Way* way : waysOf(job, quilt.zones))
        for (const Sentence& caution : way->words.cautions)
            out << words::fromCore(caution);
    out << Text::tr("Cutters closed when they are put down.")
        << Text::tr("Labels of products, the house's rules and a doctor's advice come first.");
    return out;
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
            out << Text::tr(
                       "Roll %1 of the %2 side: a roll %3 thick, tied, as no clip we have holds it")
                       .arg(words::length(roll.rolled, unit), words::side(roll.side),
                            words::length(roll.diameter, unit));
    }
    return out;
}

} // namespace

QStringList lines(TaskKind kind, const Job& job, const QuiltPlan& quilt, const Pass& pass,
                  Unit unit) {
    QStringList out;
    const auto add = [&out](const QString& line) {
        if (!line.isEmpty())
            out << line;
    };
    const bool first = kind == TaskKind::layBacking;
    if (kind == TaskKind::setUp)
        out += cautions(job, quilt);
    if (kind == TaskKind::shift) {
        if (pass.liftPeople > 1)
            add(Text::tr("%1 people move it, about %2")
                    .arg(pass.liftPeople)
                    .arg(words::weight(pass.liftKilograms, unit)));
        if (pass.pulled)
            add(Text::tr("Nothing is laid: the quilt, held, is only pulled across"));
        out += beyondLines(pass);
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
        add(Text::tr("Toward: %1").arg(sheets::sidesList(pass.smoothTowards)));
    if (first) {
        out += beyondLines(pass);
        out += rollLines(pass, unit);
    }
    if (quilt.surface.floor && (first || kind == TaskKind::shift))
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
    case Check::cautions:
        return Text::tr("Has everybody heard this?");
    case Check::palmGlides:
        return Text::tr("Does your palm glide over it without pushing up a ripple?");
    case Check::underside:
        return Text::tr("Is it flat underneath, and caught all over?");
    case Check::spare:
        return Text::tr("Four sides as planned, none %1 short?")
            .arg(words::length(sheets::kPleat, unit));
    }
    return {};
}

QString cure(Check check) {
    switch (check) {
    case Check::cautions:
        return Text::tr("Read it out before anybody begins.");
    case Check::palmGlides:
        return Text::tr("Smooth again from the basted part outwards; open what stands in the way "
                        "and close it afterwards.");
    case Check::underside:
        return Text::tr("Open the places round the fold or gap, draw the backing flat from below, "
                        "and baste them again.");
    case Check::spare:
        return Text::tr(
            "There is a pleat, or a layer has crept: feel underneath from the side "
            "that hangs short toward the middle, undo the basting there, pull that layer "
            "flat, and baste it again.");
    }
    return {};
}

} // namespace step_words
