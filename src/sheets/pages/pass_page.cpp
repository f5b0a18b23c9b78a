#include "sheets/columns.h"
#include "sheets/hold_order.h"
#include "sheets/ink.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/quilt_picture.h"
#include "sheets/pictures/table_picture.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kPanel = 148; // width of the column of facts beside the picture

struct PanelRow {
    TextBlock name, value;
};

const Task* shiftInto(const SheetContext& c, std::size_t q, int pass) {
    const auto found = std::ranges::find_if(c.plan.tasks, [&](const Task& t) {
        return t.kind == TaskKind::shift && t.job == int(q) && t.pass == pass;
    });
    return found == c.plan.tasks.end() ? nullptr : &*found;
}

QString holdsWords(const Pass& pass) {
    int clamps = 0, tapes = 0;
    for (const auto& h : holdOrder(pass))
        ++(h.kind == Hold::Kind::clamp ? clamps : tapes);
    QStringList words;
    if (clamps > 0)
        words << (clamps == 1 ? Text::tr("1 clamp") : Text::tr("%1 clamps").arg(clamps));
    if (tapes > 0)
        words << (tapes == 1 ? Text::tr("1 tape") : Text::tr("%1 tapes").arg(tapes));
    return words.isEmpty() ? QString{}
                           : Text::tr("%1, in the order of the numbers").arg(listed(words));
}

QString rollWords(const Roll& roll, Unit unit) {
    if (roll.folded)
        return Text::tr("%1: %2 folded on a support")
            .arg(sideName(roll.side), length(roll.rolled, unit));
    return Text::tr("%1: roll up %2, %3 thick; %4 clips of %5")
        .arg(sideName(roll.side), length(roll.rolled, unit), length(roll.diameter, unit))
        .arg(roll.clips)
        .arg(length(roll.clipHolds, unit));
}

std::vector<std::pair<QString, QString>> panelFacts(const SheetContext& c, std::size_t q,
                                                    const Pass& pass) {
    std::vector<std::pair<QString, QString>> rows;
    if (pass.number > 1) {
        rows.push_back({Text::tr("Shift"), shiftWords(pass.shift, c.unit())});
        const Task* shift = shiftInto(c, q, pass.number);
        QString who = pass.liftPeople == 1 ? Text::tr("1 person")
                                           : Text::tr("%1 people").arg(pass.liftPeople);
        if (shift && !shift->people.empty())
            who = c.crew.spoken(shift->people);
        rows.push_back({Text::tr("Lift together"), who});
    }
    if (const QString holds = holdsWords(pass); !holds.isEmpty())
        rows.push_back({Text::tr("Hold"), holds});
    rows.push_back({Text::tr("Smooth towards"), sidesList(pass.smoothTowards)});
    QStringList rolls;
    for (const auto& roll : pass.rolls)
        rolls << rollWords(roll, c.unit());
    if (!rolls.isEmpty())
        rows.push_back({Text::tr("Beyond the table"), rolls.join(QChar{'\n'})});
    return rows;
}

/// The picture with the column of facts beside it; into later passes the shift is drawn above the
/// facts.
Block passPicture(const SheetContext& c, std::size_t q, const Pass& pass) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const double pictureWidth = c.width - kPanel - 14;
    const Rect world = worldOf(quilt, pass, true);
    const double pictureHeight =
        heightFor(world, pictureWidth - 2 * kPictureRim, 400) + 2 * kPictureRim;
    const Pass* before = findPass(quilt, pass.number - 1);
    const double shiftHeight = before ? 116 : 0;

    auto rows = std::make_shared<std::vector<PanelRow>>();
    double panelHeight = shiftHeight;
    TextStyle quiet{type::kHead, true};
    quiet.ink = ink::kQuiet;
    for (const auto& [name, value] : panelFacts(c, q, pass)) {
        rows->push_back(
            {TextBlock{name, kPanel, quiet}, TextBlock{value, kPanel, TextStyle{type::kBody}}});
        panelHeight += rows->back().name.height() + rows->back().value.height() + 9;
    }
    const TablePicture show{
        .layers = true, .holds = true, .rolls = true, .smoothing = true, .counts = true};
    return {.height = std::max(pictureHeight, panelHeight),
            .before = 4,
            .keepWithNext = true,
            .draw = [=, &quilt, &pass](QPainter& p, QRectF at) {
                drawTable(p, {at.topLeft(), QSizeF{pictureWidth, at.height()}}, quilt, pass, show);
                const double x = at.right() - kPanel;
                double y = at.top();
                if (before)
                    drawShift(p, {x, y, kPanel, shiftHeight - 10}, quilt, *before, pass);
                y += shiftHeight;
                for (const auto& row : *rows) {
                    row.name.draw(p, {x, y});
                    y += row.name.height();
                    row.value.draw(p, {x, y});
                    y += row.value.height() + 9;
                }
            }};
}

Block legend(const SheetContext& c, bool first) {
    QStringList words{Text::tr("strong frame: what is basted now, zone by zone, with the count"),
                      Text::tr("dark squares: clamps; white: tape"),
                      Text::tr("thin lines round the top: batting (dashed) and backing")};
    if (!first)
        words.insert(1, Text::tr("hatched: basted already"));
    auto text = std::make_shared<TextBlock>(words.join(Text::tr(" · ")), c.width,
                                            TextStyle{.size = type::kHead, .ink = ink::kQuiet});
    return {.height = text->height(), .before = 4, .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft());
            }};
}

Cell overhang(Length l, Unit unit) {
    return l < Length{} ? Cell{Text::tr("%1 inside").arg(length(-l, unit))} : Cell{length(l, unit)};
}

Flow sides(const SheetContext& c, const QuiltPlan& quilt, const Pass& pass) {
    std::vector<std::vector<Cell>> rows;
    for (const Side s : kSides)
        rows.push_back({Cell{sideName(s), true},
                        quilt.surface.floor ? Cell{Text::tr("on the floor")}
                                            : overhang(pass.backingOverhang[s], c.unit()),
                        quilt.surface.floor ? Cell{Text::tr("on the floor")}
                                            : overhang(pass.topOverhang[s], c.unit()),
                        Cell{length(pass.backingSpare[s], c.unit())},
                        Cell{length(pass.battingSpare[s], c.unit())}, Cell::write()});
    Flow flow{heading(Text::tr("Compare on all four sides before pinning"), c.width, type::kCheck)};
    flow += table({{Text::tr("Side"), 0},
                   {Text::tr("Backing beyond the edge"), -1, true},
                   {Text::tr("Top beyond the edge"), -1, true},
                   {Text::tr("Backing past the top"), -1, true},
                   {Text::tr("Batting past the top"), -1, true},
                   {Text::tr("As seen"), -1}},
                  rows, c.width, {.size = type::kBody, .rowPadding = 2.5});
    for (auto& block : flow)
        block.keepWithNext = &block != &flow.back();
    return flow;
}

Flow steps(const SheetContext& c, std::size_t q, const Pass& pass) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    std::vector<std::vector<Cell>> rows;
    for (const auto& t : c.plan.tasks) {
        if (t.job != int(q) || t.pass != pass.number)
            continue;
        QStringList where;
        for (const auto& place : t.places)
            where << placeWords(place, pass.table);
        where.removeDuplicates();
        rows.push_back({Cell::tick(), Cell{clock(c.start(), t.start), true},
                        Cell{taskLine(t, quilt, c.with(q), c.unit())},
                        Cell::people(c.crew.letters(t.people)), Cell{where.join(Text::tr("; "))}});
    }
    if (rows.empty())
        return {};
    Flow flow{heading(Text::tr("Steps"), c.width, type::kCheck)};
    flow += table({{{}, 0},
                   {Text::tr("Time"), 0},
                   {Text::tr("What"), -1.5},
                   {Text::tr("Who"), 0},
                   {Text::tr("Where"), -1}},
                  rows, c.width, {.size = type::kBody, .rowPadding = 2.5});
    return flow;
}

Flow onePass(const SheetContext& c, std::size_t q, const Pass& pass) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const auto t = passTimes(c.plan, q, pass.number);
    QStringList below{c.quiltName(q)};
    if (t)
        below << Text::tr("%1 to %2").arg(clock(c.start(), t->start), clock(c.start(), t->end));
    below << (pass.zones.size() == 1 ? Text::tr("zone %1").arg(zoneList(pass.zones))
                                     : Text::tr("zones %1").arg(zoneList(pass.zones)))
          << pointCount(pointsIn(quilt, pass.number), c.with(q));
    Flow flow{title(Text::tr("Pass %1 of %2").arg(pass.number).arg(quilt.passes.size()),
                    below.join(Text::tr(" · ")), c.width)};
    flow.front().newPage = true;
    flow.push_back(passPicture(c, q, pass));
    flow.push_back(legend(c, pass.number == 1));
    flow += sides(c, quilt, pass);
    flow += steps(c, q, pass);
    return flow;
}

} // namespace

Flow passPages(const SheetContext& c, std::size_t quilt) {
    Flow flow;
    for (const auto& pass : c.plan.quilts[quilt].passes)
        flow += onePass(c, quilt, pass);
    return flow;
}

} // namespace bastewright::sheets
