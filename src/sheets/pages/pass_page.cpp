#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/lead_words.h"
#include "sheets/pages/pages.h"
#include "sheets/pages/pass_picture.h"
#include "sheets/parts.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kRoomy = 345; // a column so wide takes the sides to compare

Block legend(bool first, double width) {
    QStringList words{Text::tr("strong frame: what is basted now, zone by zone, with the count"),
                      Text::tr("dark squares: clamps; white: tape"),
                      Text::tr("thin lines round the top: batting (dashed) and backing")};
    if (!first)
        words.insert(1, Text::tr("hatched: basted already"));
    auto text = std::make_shared<TextBlock>(words.join(Text::tr(" · ")), width,
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

/// How closely a pass's page is set; the latter is taken where the former runs over it.
enum class Setting { roomy, close };

/// Everybody who has points in the pass: which rows and marks, how many, and a box to tick.
Flow shares(const SheetContext& c, std::size_t q, const Pass& pass, Setting setting) {
    const bool close = setting == Setting::close;
    std::vector<std::vector<Cell>> rows;
    for (const Helper& helper : c.session.setting.helpers)
        for (const Part& part : c.parts.at(helper.name))
            if (part.quilt == q && part.pass == &pass && part.points > 0)
                rows.push_back(
                    {Cell::tick(), Cell::people({c.mark(helper.name, q)}),
                     Cell{{{called(helper.name), true},
                           {part.rows.isEmpty() ? QString{} : Text::tr(": %1").arg(part.rows)}}},
                     Cell{pointCounts(c.job(q), part.zones)}});
    if (rows.empty())
        return {};
    Flow flow{heading(Text::tr("Who does what"), c.width, type::kCheck)};
    flow.back().before = close ? 6 : 16;
    flow += table({{{}, 0}, {{}, 0}, {{}, -1}, {{}, 0, true}}, rows, c.width,
                  {.size = close ? type::kSmall : type::kBody,
                   .rowPadding = close ? 0.25 : 2.5,
                   .headings = false,
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
        , close_{setting == Setting::close}
        , shares_{shares(c, q, pass, setting)} {
        const QuiltPlan& quilt = c.plan.quilts[q];
        QStringList below{c.quiltName(q)};
        if (c.severalTables())
            below << Text::tr("table %1").arg(quilt.surface.number);
        if (const auto t = passTimes(c.plan, q, pass.number))
            below << Text::tr("%1 to %2").arg(clock(c.start(), t->start), clock(c.start(), t->end));
        below << pointCounts(c.job(q), quilt, pass.number)
              << (pass.zones.size() == 1 ? Text::tr("zone %1").arg(zoneList(pass.zones))
                                         : Text::tr("zones %1").arg(zoneList(pass.zones)));
        title_ = title(Text::tr("Pass %1 of %2").arg(pass.number).arg(quilt.passes.size()),
                       below.join(Text::tr(" · ")), c.width);
        title_.newPage = true;
        if (c.severalQuilts())
            title_.bookmark = c.passName(q, pass.number);
    }

    Flow with(double tallest) const {
        const QuiltPlan& quilt = c_.plan.quilts[q_];
        const double beside = besidePicture(c_, q_, pass_, tallest);
        // What is told of the picture, or the sides to compare, stand in the column beside it.
        const bool column = beside < c_.width, roomy = column && beside >= kRoomy;
        Flow flow{title_, passPicture(c_, q_, pass_, tallest,
                                      roomy    ? sides(c_, quilt, pass_, beside, true)
                                      : column ? told(beside)
                                               : Flow{})};
        if (roomy || !column)
            flow += told(c_.width);
        if (!roomy)
            flow += sides(c_, quilt, pass_, c_.width, close_);
        flow += Flow{shares_};
        return flow;
    }

    /// With the largest picture, of at least half the page, at which all is on one page; nothing
    /// where there is none.
    Flow onOnePage() const {
        for (double tallest = kTallest * c_.height; tallest >= kLeast * c_.height; tallest -= kStep)
            if (Flow flow = with(tallest); paginate(flow, c_.height).size() == 1)
                return flow;
        return {};
    }

    /// With a picture of half the page, over as many pages as it takes.
    Flow overSeveral() const { return with(kLeast * c_.height); }

private:
    /// What the picture means, and how it is held.
    Flow told(double width) const {
        Flow flow;
        if (!pass_.holds.empty())
            flow.push_back(holdList(pass_, c_.unit(), width));
        if (!close_ || pass_.number == 1)
            flow.push_back(legend(pass_.number == 1, width));
        return flow;
    }

    static constexpr double kTallest = 0.66, kLeast = 0.5; ///< of the page
    static constexpr double kStep = 20;

    const SheetContext& c_;
    std::size_t q_;
    const Pass& pass_;
    bool close_;
    Block title_;
    Flow shares_;
};

/// On one page where it fits with closer rows; else over two.
Flow onePass(const SheetContext& c, std::size_t q, const Pass& pass) {
    for (const Setting setting : {Setting::roomy, Setting::close})
        if (Flow flow = PassPage{c, q, pass, setting}.onOnePage(); !flow.empty())
            return flow;
    return PassPage{c, q, pass, Setting::close}.overSeveral();
}

} // namespace

Flow passPages(const SheetContext& c, std::size_t quilt) {
    Flow flow;
    for (const auto& pass : c.plan.quilts[quilt].passes)
        flow += onePass(c, quilt, pass);
    return flow;
}

} // namespace bastewright::sheets
