#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/pages.h"
#include "sheets/pages/pass_picture.h"
#include "sheets/parts.h"
#include "sheets/steps.h"
#include "sheets/task_words.h"
#include "sheets/two_columns.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kRoomy = 345; // a column so wide takes the sides to compare

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

Flow sides(const SheetContext& c, const QuiltPlan& quilt, const Pass& pass, double width,
           bool close) {
    const bool floor = quilt.surface.floor;
    std::vector<Column> columns{{Text::tr("Side"), 0}};
    if (!floor)
        for (const QString& layer :
             {Text::tr("Backing over the edge"), Text::tr("Batting over the edge"),
              Text::tr("Top over the edge")})
            columns.push_back({layer, -1, true});
    columns.push_back({Text::tr("Backing overage"), -1, true});
    columns.push_back({Text::tr("Batting overage"), -1, true});
    columns.push_back({Text::tr("Seen"), width < c.width ? 26.0 : 66.0});

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
        heading(Text::tr("Compare on all four sides before the first pin"), width, type::kCheck)};
    flow.back().before = close ? 6 : 16;
    flow += table(
        columns, rows, width,
        {.size = width < c.width ? type::kSmall : type::kBody, .rowPadding = close ? 0.5 : 2});
    if (!floor)
        flow.push_back(
            paragraph(Text::tr("Minus: ends on the table. %1 short of the figure or more: "
                               "look underneath for a pleat.")
                          .arg(length(kPleat, c.unit())),
                      width, type::kHead, 3));
    for (auto& block : flow)
        block.keepWithNext = &block != &flow.back();
    return flow;
}

QString holdSentence(const Hold& hold, const QString& sides, Unit unit) {
    const bool clamps = hold.kind == Hold::Kind::clamp;
    if (hold.count == 1)
        return (clamps ? Text::tr("%1: 1 clamp.") : Text::tr("%1: 1 piece of tape.")).arg(sides);
    return (clamps ? Text::tr("%1: %2 clamps a side, about %3 apart.")
                   : Text::tr("%1: %2 pieces of tape a side, about %3 apart."))
        .arg(sides)
        .arg(hold.count)
        .arg(length(hold.apart, unit));
}

/// "Head and foot 7 clamps each, about 17 in apart; left and right 2 each, about 15 in apart. In
/// the order of the numbers; one number is set by two people at once."
Block holdList(const Pass& pass, Unit unit, double width) {
    std::vector<Span> words;
    for (std::size_t i = 0; i < pass.holds.size(); ++i) {
        const Hold& hold = pass.holds[i];
        QStringList sides{sideName(hold.side)};
        while (i + 1 < pass.holds.size() && pass.holds[i + 1].count == hold.count &&
               pass.holds[i + 1].kind == hold.kind && pass.holds[i + 1].apart == hold.apart)
            sides << sideName(pass.holds[++i].side);
        words.push_back({holdSentence(hold, listed(sides), unit) + QLatin1Char(' ')});
    }
    words.push_back({Text::tr("In the order of the numbers, middles first; two people facing each "
                              "other set one number at the same moment.")});
    auto text = std::make_shared<TextBlock>(words, width, TextStyle{type::kSmall});
    return {.height = text->height(), .before = 5, .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft());
            }};
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

/// How closely a pass's page is set; the later ones are taken where the earlier run over it.
enum class Setting { roomy, close, columns };

Flow steps(const SheetContext& c, std::size_t q, const Pass& pass, Setting setting) {
    const bool close = setting != Setting::roomy, columns = setting == Setting::columns;
    std::vector<std::vector<Cell>> rows;
    for (const auto& step : stepsOf(c.plan, q, pass.number)) {
        rows.push_back({Cell::tick(), Cell{clock(c.start(), step.start), true},
                        Cell{stepLine(step, c.plan.quilts[q], pass.number, c.with(q), c.unit())},
                        Cell::people(c.crew.letters(step.people))});
        if (!columns) // else left to everybody's own sheet
            rows.back().push_back(Cell{whereWords(step.places, pass.table)});
    }
    if (rows.empty())
        return {};
    Flow flow{heading(Text::tr("Steps"), c.width, type::kCheck)};
    flow.back().before = close ? 6 : 16;
    if (columns) {
        flow.push_back(
            inTwoColumns(table({{{}, 0}, {{}, 0}, {{}, -1}, {{}, 0}}, rows, columnWidth(c.width),
                               {.size = type::kSmall, .rowPadding = 0, .headings = false})));
        return flow;
    }
    flow += table({{{}, 0},
                   {Text::tr("Time"), 0},
                   {Text::tr("What"), -2},
                   {Text::tr("Who"), 0},
                   {Text::tr("Where"), -1}},
                  rows, c.width,
                  {.size = close ? type::kSmall : type::kBody,
                   .rowPadding = close ? 0.25 : 2.5,
                   .together = 4});
    return flow;
}

/// The title, what follows the picture, and between them the picture as large as asked.
class PassPage {
public:
    PassPage(const SheetContext& c, std::size_t q, const Pass& pass, Setting setting)
        : c_{c}
        , q_{q}
        , pass_{pass}
        , close_{setting != Setting::roomy}
        , columns_{setting == Setting::columns}
        , steps_{steps(c, q, pass, setting)} {
        const QuiltPlan& quilt = c.plan.quilts[q];
        QStringList below{c.quiltName(q)};
        if (c.severalTables())
            below << Text::tr("table %1").arg(quilt.surface.number);
        if (const auto t = passTimes(c.plan, q, pass.number))
            below << Text::tr("%1 to %2").arg(clock(c.start(), t->start), clock(c.start(), t->end));
        below << pointCount(pointsIn(quilt, pass.number), c.with(q))
              << (pass.zones.size() == 1 ? Text::tr("zone %1").arg(zoneList(pass.zones))
                                         : Text::tr("zones %1").arg(zoneList(pass.zones)));
        title_ = title(Text::tr("Pass %1 of %2").arg(pass.number).arg(quilt.passes.size()),
                       below.join(Text::tr(" · ")), c.width);
        title_.newPage = true;
        if (c.severalQuilts())
            title_.bookmark = c.passName(q, pass.number);
        if (!close_ || pass.number == 1)
            under_.push_back(legend(c, pass.number == 1));
        if (!pass.holds.empty())
            under_.push_back(holdList(pass, c.unit(), c.width));
    }

    Flow with(double tallest) const {
        const QuiltPlan& quilt = c_.plan.quilts[q_];
        const double beside = besidePicture(c_, q_, pass_, tallest);
        const bool roomy = beside >= kRoomy;
        Flow flow{title_, passPicture(c_, q_, pass_, tallest,
                                      roomy ? sides(c_, quilt, pass_, beside, true) : Flow{})};
        flow += Flow{under_};
        if (!roomy)
            flow += sides(c_, quilt, pass_, c_.width, close_);
        flow += Flow{steps_};
        return flow;
    }

    /// With the largest picture at which all is on one page; nothing where none is small enough.
    Flow onOnePage() const {
        const double smallest = columns_ ? kSmallest : kLeast;
        Flow least = with(smallest);
        const auto pages = paginate(least, c_.height);
        if (pages.size() > 1)
            return {};
        // What is left of the page, and the room beside the facts, go to the picture; a larger one
        // makes their column narrower, so that the first guess may be too large.
        const auto& last = pages.front().back();
        double tallest = least[1].height + c_.height - last.y - last.block.height;
        for (; tallest > smallest; tallest -= kStep) {
            Flow larger = with(std::min(kTallest, tallest));
            if (paginate(larger, c_.height).size() == 1)
                return larger;
        }
        return least;
    }

    static constexpr double kTallest = 372, kLeast = 200, kSmallest = 160, kStep = 20;

private:
    const SheetContext& c_;
    std::size_t q_;
    const Pass& pass_;
    bool close_, columns_;
    Block title_;
    Flow under_, steps_;
};

/// On one page where it fits with a smaller picture and closer rows; else with the large picture.
Flow onePass(const SheetContext& c, std::size_t q, const Pass& pass) {
    for (const Setting setting : {Setting::roomy, Setting::close, Setting::columns})
        if (Flow flow = PassPage{c, q, pass, setting}.onOnePage(); !flow.empty())
            return flow;
    return PassPage{c, q, pass, Setting::roomy}.with(PassPage::kTallest);
}

} // namespace

Flow passPages(const SheetContext& c, std::size_t quilt) {
    Flow flow;
    for (const auto& pass : c.plan.quilts[quilt].passes)
        flow += onePass(c, quilt, pass);
    return flow;
}

} // namespace bastewright::sheets
