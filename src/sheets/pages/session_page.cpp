#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/quilt_picture.h"
#include "sheets/printable.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

using Facts = std::vector<std::pair<QString, QString>>;

QString surfaceWords(const SheetContext& c, const QuiltPlan& quilt) {
    const auto& s = quilt.surface;
    if (s.floor)
        return Text::tr("the floor");
    const QString lies = s.quiltLengthAlongLength
                             ? Text::tr("the quilt's length along the long side")
                             : Text::tr("the quilt's length across, head to a long side");
    return Text::tr("%1, %2; %3")
        .arg(QString::fromStdString(s.name), size({s.length, s.width}, c.unit()), lies);
}

Facts quiltFacts(const SheetContext& c, std::size_t q) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const auto with = c.with(q);
    const Basting& basting = c.job(q).basting;
    int points = 0;
    for (const auto& z : quilt.zones)
        points += int(z.points.size());
    Facts rows{{Text::tr("Top"), size(quilt.layers.top, c.unit())},
               {Text::tr("Batting"), size(quilt.layers.batting, c.unit())},
               {Text::tr("Backing"), size(quilt.layers.backing, c.unit())},
               {Text::tr("Basted with"),
                Text::tr("%1, %2 apart, %3 zones")
                    .arg(pointCount(points, with), length(basting.spacing, c.unit()))
                    .arg(quilt.zones.size())},
               {Text::tr("Table"), surfaceWords(c, quilt)},
               {Text::tr("Passes"), QString::number(quilt.passes.size())}};
    const auto chosen = std::ranges::find(quilt.alternatives, true, &Alternative::chosen);
    if (chosen != quilt.alternatives.end() && !chosen->why.empty())
        rows.push_back({Text::tr("Why so"), QString::fromStdString(chosen->why)});
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
            .draw = [rows, &quilt, pictureWidth, pictureHeight, textX](QPainter& p, QRectF at) {
                drawQuilt(p, {at.topLeft(), QSizeF{pictureWidth, pictureHeight}}, quilt);
                double y = at.top();
                for (const auto& b : *rows) {
                    b.draw(p, {at.left() + textX, y + b.before, at.width() - textX, b.height});
                    y += b.before + b.height;
                }
            }};
}

/// The chosen way and the best of the others, in the plan's order.
std::vector<Alternative> foremost(const std::vector<Alternative>& all, std::size_t most) {
    std::vector<Alternative> out;
    for (const auto& a : all)
        if (a.chosen || out.size() < most)
            out.push_back(a);
    return out;
}

/// "4 × 4.1 kg, 2 people"
QString liftWords(const Alternative& a) {
    if (!a.workable || a.passes < 2)
        return {};
    return Text::tr("%1 × %2 kg by %3")
        .arg(a.passes - 1)
        .arg(std::round(a.liftKilograms * 10) / 10)
        .arg(a.liftPeople);
}

Flow alternatives(const SheetContext& c, const QuiltPlan& quilt, std::size_t most) {
    if (quilt.alternatives.size() < 2)
        return {};
    std::vector<std::vector<Cell>> rows;
    for (const auto& a : foremost(quilt.alternatives, most)) {
        const bool b = a.chosen;
        const QString lies = a.quiltLengthAlongLength ? Text::tr("along") : Text::tr("across");
        std::vector<Span> way{{QString::fromStdString(a.surface), true}};
        if (!a.why.empty())
            way.push_back({Text::tr(": %1").arg(QString::fromStdString(a.why))});
        rows.push_back({Cell{b ? Text::tr("chosen") : QString{}, true}, Cell{way}, Cell{lies, b},
                        Cell{startName(a.start), b}, Cell{QString::number(a.passes), b},
                        Cell{a.workable ? span(a.predicted) : Text::tr("out of reach"), b},
                        Cell{liftWords(a), b},
                        Cell{a.reach > Length{} ? length(a.reach, c.unit()) : QString{}, b}});
    }
    Flow flow{heading(c.severalQuilts()
                          ? Text::tr("The ways that were weighed: %1")
                                .arg(quilt.name.empty() ? QString{} : isolated(quilt.name))
                          : Text::tr("The ways that were weighed"),
                      c.width)};
    flow += table({{{}, 0},
                   {Text::tr("Table"), -1},
                   {Text::tr("Lies"), 0},
                   {Text::tr("Start"), 0},
                   {Text::tr("Passes"), 0, true},
                   {Text::tr("Time"), 0, true},
                   {Text::tr("Lifts"), 62, true},
                   {Text::tr("Reach"), 0, true}},
                  rows, c.width, {.size = type::kSmall, .rowPadding = 2, .together = 3});
    if (const auto more = quilt.alternatives.size() - rows.size(); more > 0)
        flow.push_back(paragraph(Text::tr("and %1 more that take longer").arg(more), c.width,
                                 type::kSmall, 3));
    return flow;
}

Flow people(const SheetContext& c) {
    std::vector<std::vector<Cell>> rows;
    for (const auto& h : c.session.setting.helpers) {
        QStringList can;
        if (h.seated)
            can << Text::tr("seated");
        if (h.closes)
            can << Text::tr("closes pins");
        if (h.irons)
            can << Text::tr("irons");
        if (h.lifts && !h.seated)
            can << Text::tr("lifts");
        rows.push_back({Cell::people({c.crew.letter(h.name)}), Cell{isolated(h.name), true},
                        Cell{hoursWords(h)}, Cell{length(h.reach, c.unit())},
                        Cell{can.join(Text::tr(", "))}});
    }
    Flow flow{heading(Text::tr("People"), c.width)};
    flow += table({{{}, 0},
                   {Text::tr("Name"), -1},
                   {Text::tr("Here"), 0},
                   {Text::tr("Reach"), 0, true},
                   {Text::tr("Can"), -1}},
                  rows, c.width, {.rowPadding = 2, .together = kAllRows});
    return flow;
}

Flow findings(const SheetContext& c) {
    if (c.plan.findings.empty())
        return {};
    std::vector<std::vector<Cell>> rows;
    for (const auto& f : c.plan.findings) {
        std::vector<Span> words{{QString::fromStdString(f.text)}};
        if (!f.cure.empty())
            words.push_back({QStringLiteral(" ") + QString::fromStdString(f.cure)});
        rows.push_back({Cell{levelName(f.level), true}, Cell{words}});
    }
    Flow flow{heading(Text::tr("To know before you start"), c.width)};
    flow += table({{{}, 72}, {{}, -1}}, rows, c.width, {.headings = false});
    return flow;
}

Flow passes(const SheetContext& c) {
    std::vector<std::vector<Cell>> rows;
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q)
        for (const auto& pass : c.plan.quilts[q].passes) {
            const auto t = passTimes(c.plan, q, pass.number);
            rows.push_back(
                {Cell{c.passName(q, pass.number), true},
                 Cell{t ? Text::tr("%1 to %2")
                              .arg(clock(c.start(), t->start), clock(c.start(), t->end))
                        : QString{}},
                 Cell{pass.number == 1 ? Text::tr("laid down") : shiftWords(pass.shift, c.unit())},
                 Cell{QString::number(pass.zones.size())},
                 Cell{QString::number(pointsIn(c.plan.quilts[q], pass.number))}});
        }
    Flow flow{heading(Text::tr("The passes"), c.width)};
    flow += table({{Text::tr("Pass"), c.severalQuilts() ? -1.0 : 0.0},
                   {Text::tr("When"), 0},
                   {Text::tr("Shift"), -1},
                   {Text::tr("Zones"), 0, true},
                   {Text::tr("Points"), 0, true}},
                  rows, c.width, {.rowPadding = 2, .together = kAllRows});
    return flow;
}

Flow help(const SheetContext& c) {
    if (c.plan.help.empty())
        return {};
    std::vector<std::vector<Cell>> rows;
    for (const auto& h : c.plan.help) {
        const QString passes =
            h.passesSaved == 1 ? Text::tr("1 pass") : Text::tr("%1 passes").arg(h.passesSaved);
        rows.push_back({Cell{QString::fromStdString(h.change)}, Cell{span(h.saved), true},
                        Cell{h.passesSaved > 0 ? passes : QString{}}});
    }
    Flow flow{heading(Text::tr("What would help most"), c.width)};
    flow += table({{Text::tr("Change"), -1}, {Text::tr("Saves"), 0, true}, {{}, 0, true}}, rows,
                  c.width, {.rowPadding = 2, .together = kAllRows});
    return flow;
}

/// How much the session's page holds of what is long.
struct Fullness {
    double tallest; ///< a quilt's picture
    std::size_t alternatives;
};

Flow wholePage(const SheetContext& c, const Fullness& full) {
    const auto& plan = c.plan;
    const QString people_ = c.session.setting.helpers.size() == 1
                                ? Text::tr("1 person")
                                : Text::tr("%1 people").arg(c.session.setting.helpers.size());
    QString below = Text::tr("%1 to %2 · %3 · %4")
                        .arg(clock(c.start(), Seconds{}), clock(c.start(), plan.finish),
                             span(plan.finish), people_);
    if (plan.finishBound > Seconds{} &&
        clock(c.start(), plan.finishBound) != clock(c.start(), plan.finish))
        below += Text::tr(" · no order of this work ends before %1")
                     .arg(clock(c.start(), plan.finishBound));
    Flow flow{title(c.sessionName(), below, c.width)};
    for (std::size_t q = 0; q < plan.quilts.size(); ++q) {
        if (c.severalQuilts())
            flow.push_back(heading(c.quiltName(q), c.width));
        flow.push_back(quiltBlock(c, q, full.tallest));
    }
    flow += findings(c);
    flow += passes(c);
    flow += people(c);
    for (std::size_t q = 0; q < plan.quilts.size(); ++q)
        flow += alternatives(c, plan.quilts[q], full.alternatives);
    flow += help(c);
    flow.front().newPage = true;
    return flow;
}

} // namespace

Flow sessionPage(const SheetContext& c) {
    const Fullness fullest{c.severalQuilts() ? 190.0 : 250.0, 6};
    for (const Fullness& full : {fullest, Fullness{190, 4}, Fullness{150, 3}}) {
        Flow flow = wholePage(c, full);
        if (paginate(flow, c.height).size() == 1)
            return flow;
    }
    return wholePage(c, fullest);
}

} // namespace bastewright::sheets
