#include "sheets/pages/lead_words.h"

#include "language/said.h"
#include "sheets/parts.h"
#include "sheets/printable.h"
#include "sheets/words.h"
#include "ways/point_words.h"
#include "ways/way.h"

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

const Task* taskOf(const Plan& plan, std::size_t q, int pass, TaskKind kind) {
    const auto found = std::ranges::find_if(plan.tasks, [&](const Task& t) {
        return t.kind == kind && t.job == int(q) && t.pass == pass;
    });
    return found == plan.tasks.end() ? nullptr : &*found;
}

/// "19 in towards C and D and 3 in towards the head".
QString wayWords(Vec way, const std::vector<Stretch>& standing, Unit unit) {
    QStringList out;
    const auto add = [&](Length by, Side minus, Side plus) {
        if (abs(by) >= Length::inch64ths(16))
            out << Text::tr("%1 toward %2")
                       .arg(halves(abs(by), unit),
                            tableSide(standing, by < Length{} ? minus : plus));
    };
    if (abs(way.dy) > abs(way.dx)) {
        add(way.dy, Side::head, Side::foot);
        add(way.dx, Side::left, Side::right);
    } else {
        add(way.dx, Side::left, Side::right);
        add(way.dy, Side::head, Side::foot);
    }
    return listed(out);
}

QString smoothWords(const Pass& pass, const std::vector<Stretch>& standing) {
    if (pass.pulled)
        return {};
    if (pass.smoothTowards.empty() || pass.smoothTowards.size() == 4)
        return Text::tr("Smooth from the middle outward.");
    QStringList sides;
    for (const Side side : pass.smoothTowards)
        sides << tableSideBrief(standing, side);
    sides.removeDuplicates();
    return Text::tr("Smooth to %1.").arg(sides.join(Text::tr(", ")));
}

/// What carries the quilt beyond a side of the table; empty where it hangs.
QString carriedBy(Beyond beyond) {
    switch (beyond) {
    case Beyond::chairs:
        return Text::tr("chairs");
    case Beyond::spareTable:
        return Text::tr("spare table");
    case Beyond::nothing:
    case Beyond::hangs:
    case Beyond::rolled:
    case Beyond::onTable:
        break;
    }
    return {};
}

/// "33 in (A, B: chairs), 4 in (C, D)"; empty where nothing of the backing hangs.
QString hangWords(const Pass& pass, const std::vector<Stretch>& standing, Unit unit) {
    QStringList out;
    for (const Side side : kSides)
        if (pass.backingOverhang[side] > Length{} && pass.beyond[side] != Beyond::onTable) {
            const QString where = tableSideBrief(standing, side),
                          carried = carriedBy(pass.beyond[side]);
            out << Text::tr("%1 (%2)").arg(
                halves(pass.backingOverhang[side], unit),
                carried.isEmpty() ? where : Text::tr("%1: %2").arg(where, carried));
        }
    return out.join(Text::tr(", "));
}

/// Everybody who pins, with all their pins: "A 117, B 130".
QString bowls(const SheetContext& c, std::size_t q) {
    QStringList out;
    for (const auto& h : c.session.setting.helpers) {
        int n = 0;
        for (const auto& pass : c.plan.quilts[q].passes)
            n += c.pinsOf(h.name, q, pass);
        if (n > 0)
            out << c.mark(h.name, q) + QChar{0x00A0} + QString::number(n);
    }
    return out.join(Text::tr(", "));
}

} // namespace

QString called(const std::string& name) {
    return shortName(name);
}

QString names(const std::vector<std::string>& people) {
    QStringList out;
    for (const auto& name : people)
        out << called(name);
    return listed(out);
}

QString howMany(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    const auto passes = std::ranges::count(q.passes, false, &Pass::pulled);
    const QString count = pointCounts(c.job(quilt), q);
    const QString rounds = passes == 1 ? Text::tr("1 pass") : Text::tr("%1 passes").arg(passes);
    return q.rows ? Text::tr("%1 in %2 rows, %3.").arg(count).arg(q.rows->lines.size()).arg(rounds)
                  : Text::tr("%1, %2.").arg(count, rounds);
}

QString moveWords(const SheetContext& c, std::size_t quilt, const Pass& pass) {
    const auto standing = sheets::standing(c.plan, quilt, pass);
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (&pass == &q.passes.front()) {
        const Point middle{q.layers.top.width / 2, q.layers.top.length / 2};
        const Point table = pass.table.middle();
        const QString way = wayWords({middle.x - table.x, middle.y - table.y}, standing, c.unit());
        return way.isEmpty() ? Text::tr("Middle on the table's middle.")
                             : Text::tr("Off the middle: %1.").arg(way);
    }
    const QString way = wayWords(pass.shift, standing, c.unit());
    if (pass.pulled)
        return Text::tr("Pull it across %1. It stays held; nothing is laid.").arg(way);
    return way.isEmpty() ? Text::tr("It stays where it lies.") : Text::tr("Move it %1.").arg(way);
}

std::vector<Span> passWords(const SheetContext& c, std::size_t quilt, const Pass& pass) {
    const auto standing = sheets::standing(c.plan, quilt, pass);
    QStringList first;
    const bool isFirst = &pass == &c.plan.quilts[quilt].passes.front();
    if (isFirst) {
        first << Text::tr("Backing wrong side up.");
    } else {
        const Task* shift = taskOf(c.plan, quilt, pass.number, TaskKind::shift);
        if (shift && shift->people.size() == 1)
            first << Text::tr("%1 moves it.").arg(names(shift->people));
        else if (shift && !shift->people.empty())
            first << Text::tr("%1 lift.").arg(names(shift->people));
        else
            first << Text::tr("Hands to lift: %1.").arg(pass.liftPeople);
    }
    if (const QString smooth = smoothWords(pass, standing); !smooth.isEmpty())
        first << smooth;
    std::vector<Span> out{{first.join(QChar::Space) + QChar::Space}};
    if (!c.plan.quilts[quilt].surface.floor) {
        const QString hang = hangWords(pass, standing, c.unit());
        out.push_back({hang.isEmpty() ? Text::tr("The backing ends on the table all round.")
                       : isFirst      ? Text::tr("Backing hangs %1.").arg(hang)
                                      : Text::tr("Hangs %1.").arg(hang),
                       true});
    }
    for (const Roll& roll : pass.rolls)
        out.push_back({QChar::Space + Text::tr("%1.").arg(rollWords(roll, c.unit()))});
    return out;
}

QString rollWords(const Roll& roll, Unit unit) {
    if (roll.folded)
        return Text::tr("%1: %2 folded on a support")
            .arg(sideName(roll.side), length(roll.rolled, unit));
    const QString up =
        Text::tr("%1: roll up %2, %3 thick")
            .arg(sideName(roll.side), length(roll.rolled, unit), length(roll.diameter, unit));
    if (roll.clips == 0)
        return Text::tr("%1, and tie it").arg(up);
    if (roll.clipHolds <= Length{}) // none on hand is large enough; the list to bring has its size
        return Text::tr("%1; %2 clips").arg(up).arg(roll.clips);
    return Text::tr("%1; %2 clips of %3").arg(up).arg(roll.clips).arg(length(roll.clipHolds, unit));
}

std::vector<Span> setUpWords(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    std::vector<Span> out{{Text::tr("Set up.") + QChar::Space, true}};
    QStringList words;
    if (!q.surface.floor)
        words << Text::tr("Legs locked.");
    if (q.surface.tables.size() > 1)
        words << Text::tr("A towel over the join.");
    if (q.surface.floor)
        words << Text::tr("Swept floor, pads for knees.");
    words << Text::tr("A letter at every place, a mark at the middle of every side.");
    if (q.rows)
        words << Text::tr("The ribbon with the rows along the edge.");
    out.push_back({words.join(QChar::Space)});
    if (const QString all = bowls(c, quilt); !all.isEmpty()) {
        out.push_back({QChar::Space + Text::tr("Open the pins into bowls:") + QChar::Space, true});
        out.push_back({all + QLatin1Char('.')});
    }
    return out;
}

std::vector<Span> rollUpWords(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    std::vector<Span> out{{Text::tr("Roll up for quilting.") + QChar::Space, true}};
    const auto rolling = std::ranges::find_if(c.plan.tasks, [&](const Task& t) {
        return t.job == int(quilt) && t.kind == TaskKind::handOver && !t.people.empty();
    });
    const QString who = rolling == c.plan.tasks.end() ? QString{}
                        : rolling->people.size() == 1
                            ? Text::tr("%1 rolls it up:").arg(names(rolling->people))
                            : Text::tr("%1 roll it up:").arg(names(rolling->people));
    out.push_back({Text::tr("Clamps off.") + QChar::Space});
    if (!who.isEmpty())
        out.push_back({who + QChar::Space});
    // Both sides are said together where they are rolled alike.
    QStringList rolls;
    const auto& all = q.machineRolls;
    const bool alike = all.size() == 2 && all[0].rolled == all[1].rolled &&
                       all[0].diameter == all[1].diameter && all[0].clips == all[1].clips &&
                       all[0].clipHolds == all[1].clipHolds && all[0].folded == all[1].folded;
    for (const Roll& roll : all)
        if (!alike || &roll == &all.front())
            rolls << rollWords(roll, c.unit());
    if (alike)
        rolls << Text::tr("%1 alike").arg(sideName(all[1].side));
    if (!rolls.isEmpty())
        out.push_back({Text::tr("%1.").arg(rolls.join(Text::tr("; ")))});
    for (const Way* way : c.ways(quilt)) {
        const auto in = pointsOf(c.job(quilt), q.zones, *way);
        if (way->words.rolledUp)
            out.push_back({QChar::Space + language::said(way->words.rolledUp(in))});
        else
            out.push_back({QChar::Space + Text::tr("%1 stay in; the others go back into the box.")
                                              .arg(pointCount(int(in), way->with))});
    }
    return out;
}

std::vector<Span> careWords(const SheetContext& c) {
    const auto careOf = [&](bool fromBox) {
        QStringList out;
        for (const Way& way : allWays())
            if (way.fromBox == fromBox && c.isAny(way))
                out << language::said(way.words.care);
        return out;
    };
    QStringList words{
        Text::tr("Nobody climbs on a table."), Text::tr("Lift together on the count, knees bent."),
        Text::tr("Nothing on the floor where people walk; children and animals elsewhere.")};
    words += careOf(true);
    if (std::ranges::any_of(c.plan.supplies, [](const Supply& s) {
            return s.kind == Supply::Kind::pins || s.kind == Supply::Kind::needles;
        }))
        words << Text::tr("Sweep with a magnet at the end, away from pacemakers and other "
                          "implants.");
    words += careOf(false);
    words << Text::tr("Labels of products, local rules and professional advice come first.");
    return {{Text::tr("Take care.") + QChar::Space, true}, {words.join(QChar::Space)}};
}

} // namespace bastewright::sheets
