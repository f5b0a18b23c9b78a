#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/pages.h"
#include "sheets/pages/pass_picture.h"
#include "sheets/steps.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

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

/// Beyond the edge as it stands; ending on the table with a minus, which the heading explains.
QString signedLength(Length l, Unit unit) {
    return l < Length{} ? QChar{0x2212} + length(-l, unit) : length(l, unit);
}

Flow sides(const SheetContext& c, const QuiltPlan& quilt, const Pass& pass) {
    const bool floor = quilt.surface.floor;
    std::vector<Column> columns{{Text::tr("Side"), 0}};
    if (!floor)
        for (const QString& layer :
             {Text::tr("Backing over the edge"), Text::tr("Batting over the edge"),
              Text::tr("Top over the edge")})
            columns.push_back({layer, -1, true});
    columns.push_back({Text::tr("Backing past the top"), -1, true});
    columns.push_back({Text::tr("Batting past the top"), -1, true});
    columns.push_back({Text::tr("As seen"), 66});

    std::vector<std::vector<Cell>> rows;
    for (const Side s : kSides) {
        rows.push_back({Cell{sideName(s), true}});
        if (!floor)
            for (const auto* layer :
                 {&pass.backingOverhang, &pass.battingOverhang, &pass.topOverhang})
                rows.back().push_back(Cell{signedLength((*layer)[s], c.unit())});
        rows.back().push_back(Cell{length(pass.backingSpare[s], c.unit())});
        rows.back().push_back(Cell{length(pass.battingSpare[s], c.unit())});
        rows.back().push_back(Cell::write());
    }
    Flow flow{
        heading(Text::tr("Compare on all four sides before the first pin"), c.width, type::kCheck)};
    flow += table(columns, rows, c.width, {.size = type::kBody, .rowPadding = 2});
    if (!floor)
        flow.push_back(
            paragraph(Text::tr("Minus: ends on the table. %1 short of the figure or more: "
                               "look underneath for a pleat.")
                          .arg(length(kPleat, c.unit())),
                      c.width, type::kHead, 3));
    for (auto& block : flow)
        block.keepWithNext = &block != &flow.back();
    return flow;
}

/// One place in full; of several, the sides.
QString whereWords(const std::vector<StandingPlace>& places, const Rect& table) {
    QStringList where;
    for (const auto& place : places)
        where << placeWords(place, table);
    where.removeDuplicates();
    if (where.size() < 2)
        return where.join(QString{});
    QStringList sides;
    for (const auto& place : places)
        sides << sideName(place.side);
    sides.removeDuplicates();
    return sides.size() == 1 ? Text::tr("%1 side").arg(sides[0])
                             : Text::tr("%1 sides").arg(listed(sides));
}

Flow steps(const SheetContext& c, std::size_t q, const Pass& pass) {
    std::vector<std::vector<Cell>> rows;
    for (const auto& step : stepsOf(c.plan, q, pass.number))
        rows.push_back({Cell::tick(), Cell{clock(c.start(), step.start), true},
                        Cell{stepLine(step, c.plan.quilts[q], pass.number, c.with(q), c.unit())},
                        Cell::people(c.crew.letters(step.people)),
                        Cell{whereWords(step.places, pass.table)}});
    if (rows.empty())
        return {};
    Flow flow{heading(Text::tr("Steps"), c.width, type::kCheck)};
    flow += table({{{}, 0},
                   {Text::tr("Time"), 0},
                   {Text::tr("What"), -2},
                   {Text::tr("Who"), 0},
                   {Text::tr("Where"), -1}},
                  rows, c.width, {.size = type::kBody, .rowPadding = 2.5, .together = 4});
    return flow;
}

Flow onePass(const SheetContext& c, std::size_t q, const Pass& pass) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const auto t = passTimes(c.plan, q, pass.number);
    QStringList below{c.quiltName(q)};
    if (c.severalTables())
        below << Text::tr("table %1").arg(quilt.surface.number);
    if (t)
        below << Text::tr("%1 to %2").arg(clock(c.start(), t->start), clock(c.start(), t->end));
    below << pointCount(pointsIn(quilt, pass.number), c.with(q))
          << (pass.zones.size() == 1 ? Text::tr("zone %1").arg(zoneList(pass.zones))
                                     : Text::tr("zones %1").arg(zoneList(pass.zones)));
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
