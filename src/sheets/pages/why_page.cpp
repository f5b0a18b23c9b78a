#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/session_ways.h"
#include "sheets/parts.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/quilt_picture.h"
#include "sheets/printable.h"
#include "sheets/task_words.h"
#include "sheets/two_columns.h"
#include "sheets/words.h"
#include "ways/way.h"

#include <QPainter>

#include <algorithm>
#include <set>

namespace bastewright::sheets {
namespace {

/// What the numbers of pins, dots or stitches stand under.
QString pointsHeading(const SheetContext& c) {
    const Way& first = wayOf(c.job(0));
    const bool same = std::ranges::none_of(
        allWays(), [&](const Way& way) { return &way != &first && c.isAny(way); });
    return same ? language::said(first.words.heading) : Text::tr("How many");
}

using Facts = std::vector<std::pair<QString, QString>>;

QString surfaceWords(const SheetContext& c, const QuiltPlan& quilt) {
    const auto& s = quilt.surface;
    if (s.floor)
        return Text::tr("the floor");
    const QString lies = s.quiltLengthAlongLength
                             ? Text::tr("the quilt's length along the long side")
                             : Text::tr("the quilt's length across, head to a long side");
    return Text::tr("%1, %2; %3")
        .arg(language::said(s.name), size({s.length, s.width}, c.unit()), lies);
}

/// `close`: sizes in one row, and what the table of its passes says left out.
Facts quiltFacts(const SheetContext& c, std::size_t q, bool close = false) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const Basting& basting = c.job(q).basting;
    Facts rows;
    const QString top = size(quilt.layers.top, c.unit()),
                  batting = size(quilt.layers.batting, c.unit()),
                  backing = size(quilt.layers.backing, c.unit());
    if (close)
        rows = {{Text::tr("Sizes"),
                 Text::tr("top %1, batting %2, backing %3").arg(top, batting, backing)}};
    else
        rows = {
            {Text::tr("Top"), top}, {Text::tr("Batting"), batting}, {Text::tr("Backing"), backing}};
    rows.push_back({Text::tr("Basted with"),
                    Text::tr("%1, %2 apart, %3 zones")
                        .arg(pointCounts(c.job(q), quilt), length(basting.spacing, c.unit()))
                        .arg(quilt.zones.size())});
    rows.push_back(
        {c.severalTables() ? Text::tr("Table %1").arg(quilt.surface.number) : Text::tr("Table"),
         surfaceWords(c, quilt)});
    if (!close)
        rows.push_back({Text::tr("Passes"), QString::number(quilt.passes.size())});
    const auto chosen = std::ranges::find(quilt.alternatives, true, &Alternative::chosen);
    if (chosen != quilt.alternatives.end() && !chosen->why.empty())
        rows.push_back({Text::tr("Why so"), language::said(chosen->why)});
    if (const auto first = passTimes(c.plan, q, 1)) {
        Seconds end = first->end;
        for (const auto& pass : quilt.passes)
            if (const auto t = passTimes(c.plan, q, pass.number))
                end = std::max(end, t->end);
        rows.push_back(
            {Text::tr("Time"),
             Text::tr("%1 to %2").arg(clock(c.start(), first->start), clock(c.start(), end))});
    }
    return rows;
}

/// Picture on the left, facts on the right, never parted.
Block quiltBlock(const SheetContext& c, std::size_t q, double tallest) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const double pictureWidth = c.width * 0.4;
    const Rect top{Length{}, Length{}, quilt.layers.top.width, quilt.layers.top.length};
    const double pictureHeight = heightFor(top, pictureWidth, tallest) + 4;
    const double textX = pictureWidth + 22;
    auto rows = std::make_shared<Flow>(facts(quiltFacts(c, q), c.width - textX, 86));
    double textHeight = 0;
    for (const auto& b : *rows)
        textHeight += b.before + b.height;
    return {.height = std::max(pictureHeight, textHeight),
            .before = 10,
            .draw = [rows, &quilt, photo = c.photo(q), pictureWidth, pictureHeight,
                     textX](QPainter& p, QRectF at) {
                drawQuilt(p, {at.topLeft(), QSizeF{pictureWidth, pictureHeight}}, quilt, photo);
                double y = at.top();
                for (const auto& b : *rows) {
                    b.draw(p, {at.left() + textX, y + b.before, at.width() - textX, b.height});
                    y += b.before + b.height;
                }
            }};
}

/// "closes pins, lifts".
QString canDo(const Helper& h) {
    QStringList can;
    if (h.seated)
        can << Text::tr("seated");
    if (h.closes)
        can << Text::tr("closes pins");
    if (h.irons)
        can << Text::tr("irons");
    if (h.lifts && !h.seated)
        can << Text::tr("lifts");
    return can.join(Text::tr(", "));
}

Flow people(const SheetContext& c) {
    std::vector<std::vector<Cell>> rows;
    for (const auto& h : c.session.setting.helpers)
        rows.push_back({Cell::people({c.crew.letter(h.name)}), Cell{isolated(h.name), true},
                        Cell{hoursWords(h)}, Cell{length(h.reach, c.unit())}, Cell{canDo(h)}});
    Flow flow{heading(Text::tr("People"), c.width)};
    flow += table({{{}, 0},
                   {Text::tr("Name"), -1},
                   {Text::tr("Here"), 0},
                   {Text::tr("Reach"), 0, true},
                   {Text::tr("Can"), -1}},
                  rows, c.width, {.rowPadding = 2, .together = kAllRows});
    return flow;
}

Flow findings(const SheetContext& c, double width, int size) {
    if (c.plan.findings.empty())
        return {};
    std::vector<std::vector<Cell>> rows;
    std::set<Sentence> said; // what holds for several quilts is said once
    for (const auto& f : c.plan.findings) {
        if (!said.insert(f.text).second)
            continue;
        std::vector<Span> words{{levelName(f.level) + QStringLiteral(". "), true},
                                {language::said(f.text)}};
        if (!f.cure.empty())
            words.push_back({QStringLiteral(" ") + language::said(f.cure)});
        rows.push_back({Cell{words}});
    }
    const bool small = size < type::kBody;
    Flow flow{
        heading(Text::tr("To know before you start"), width, small ? type::kCheck : type::kLead)};
    flow += table({{{}, -1}}, rows, width,
                  {.size = size, .rowPadding = small ? 0.5 : 2.0, .headings = false});
    return flow;
}

/// "13:00 to 13:20", or nothing.
QString whenWords(const SheetContext& c, std::size_t q, int pass) {
    const auto t = passTimes(c.plan, q, pass);
    return t ? Text::tr("%1 to %2").arg(clock(c.start(), t->start), clock(c.start(), t->end))
             : QString{};
}

Flow passes(const SheetContext& c) {
    std::vector<std::vector<Cell>> rows;
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q)
        for (const auto& pass : c.plan.quilts[q].passes)
            rows.push_back(
                {Cell{c.passName(q, pass.number), true}, Cell{whenWords(c, q, pass.number)},
                 Cell{pass.number == 1 ? Text::tr("laid down") : shiftWords(pass.shift, c.unit())},
                 Cell{QString::number(pass.zones.size())},
                 Cell{QString::number(pointsIn(c.plan.quilts[q], pass.number))}});
    Flow flow{heading(Text::tr("The passes"), c.width)};
    flow += table({{Text::tr("Pass"), c.severalQuilts() ? -1.0 : 0.0},
                   {Text::tr("When"), 0},
                   {Text::tr("Shift"), -1},
                   {Text::tr("Zones"), 0, true},
                   {pointsHeading(c), 0, true}},
                  rows, c.width, {.rowPadding = 2, .together = kAllRows});
    return flow;
}

/// How much the session's page holds of what is long.
struct Fullness {
    double tallest;           ///< a quilt's picture
    std::size_t alternatives; ///< 0: they have a page of their own
};

Block sessionTitle(const SheetContext& c) {
    const auto& plan = c.plan;
    const QString people_ = c.session.setting.helpers.size() == 1
                                ? Text::tr("1 person")
                                : Text::tr("%1 people").arg(c.session.setting.helpers.size());
    QString below = Text::tr("%1 to %2 · %3 · %4")
                        .arg(clock(c.start(), Seconds{}), clock(c.start(), plan.finish),
                             span(wholeMinutes(plan.finish)), people_);
    if (plan.finishBound > Seconds{} &&
        clock(c.start(), plan.finishBound) != clock(c.start(), plan.finish))
        below += Text::tr(" · no order of this work ends before %1")
                     .arg(clock(c.start(), plan.finishBound));
    Block block = title(c.sessionName(), below, c.width);
    block.newPage = true;
    return block;
}

Flow wholePage(const SheetContext& c, const Fullness& full) {
    Flow flow{sessionTitle(c)};
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q) {
        if (c.severalQuilts())
            flow.push_back(heading(c.quiltName(q), c.width));
        flow.push_back(quiltBlock(c, q, full.tallest));
    }
    flow += findings(c, c.width, type::kBody);
    flow += passes(c);
    flow += people(c);
    if (full.alternatives > 0)
        flow += waysWeighed(c, full.alternatives);
    return flow;
}

/// For many quilts, passes and people: words alone, each quilt with its passes, in two columns.
/// `whole`: no quilt's part goes from one column into the other.
Flow inColumns(const SheetContext& c, bool whole) {
    constexpr TableStyle kClose{.size = type::kSmall, .rowPadding = 0.5, .together = 2};
    const double width = columnWidth(c.width);
    Flow lists;
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q) {
        const std::size_t first = lists.size();
        lists.push_back(heading(c.quiltName(q), width, type::kCheck));
        lists += facts(quiltFacts(c, q, true), width, 72, type::kSmall);
        std::vector<std::vector<Cell>> rows;
        for (const auto& pass : c.plan.quilts[q].passes)
            rows.push_back({Cell{QString::number(pass.number), true},
                            Cell{whenWords(c, q, pass.number)},
                            Cell{QString::number(pass.zones.size())},
                            Cell{QString::number(pointsIn(c.plan.quilts[q], pass.number))}});
        lists += table({{Text::tr("Pass"), 0},
                        {Text::tr("When"), -1},
                        {Text::tr("Zones"), 0, true},
                        {pointsHeading(c), 0, true}},
                       rows, width, kClose);
        for (std::size_t i = first; whole && i + 1 < lists.size(); ++i)
            lists[i].keepWithNext = true;
    }
    lists += findings(c, width, type::kSmall);
    std::vector<std::vector<Cell>> rows;
    for (const auto& h : c.session.setting.helpers)
        rows.push_back({Cell::people({c.crew.letter(h.name)}),
                        Cell{std::vector<Span>{
                            {isolated(h.name), true},
                            {Text::tr(": %1; reach %2; %3")
                                 .arg(hoursWords(h), length(h.reach, c.unit()), canDo(h))}}}});
    lists.push_back(heading(Text::tr("People"), width, type::kCheck));
    TableStyle plain = kClose;
    plain.headings = false;
    lists += table({{{}, 0}, {{}, -1}}, rows, width, plain);
    for (auto& block : lists)
        block.before = std::min(block.before, 8.0);
    return {sessionTitle(c), inTwoColumns(std::move(lists))};
}

/// The page of its own for the ways, where the session's has no room for them.
Flow waysPage(const SheetContext& c) {
    constexpr std::size_t kMost = 6;
    Flow ways = waysWeighed(c, kMost);
    if (ways.empty())
        return {};
    Flow flow{title(Text::tr("Ways that were weighed"), c.sessionName(), c.width)};
    flow.front().newPage = true;
    flow += std::move(ways);
    return flow;
}

} // namespace

Flow whyPage(const SheetContext& c) {
    const auto onePage = [&](const Flow& flow) { return paginate(flow, c.height).size() == 1; };
    const Fullness fullest{c.severalQuilts() ? 190.0 : 250.0, 6};
    for (const Fullness& full : {fullest, Fullness{190, 4}, Fullness{150, 3}})
        if (Flow flow = wholePage(c, full); onePage(flow))
            return flow;
    for (const double tallest : {fullest.tallest, 150.0})
        if (Flow flow = wholePage(c, {tallest, 0}); onePage(flow)) {
            flow += waysPage(c);
            return flow;
        }
    Flow flow = inColumns(c, true);
    if (!onePage(flow))
        flow = inColumns(c, false);
    flow += waysPage(c);
    return flow;
}

} // namespace bastewright::sheets
