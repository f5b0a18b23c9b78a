#include "language/said.h"
#include "plan/pin_words.h"
#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/helper_pictures.h"
#include "sheets/pages/helper_rows.h"
#include "sheets/pages/pages.h"
#include "sheets/printable.h"
#include "sheets/task_words.h"
#include "sheets/two_columns.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <set>

namespace bastewright::sheets {
namespace {

constexpr double kColumnGap = 12;

Block textBlock(const std::vector<Span>& words, double width, const TextStyle& style,
                double before) {
    auto text = std::make_shared<TextBlock>(words, width, style);
    return {.height = text->height(), .before = before, .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft());
            }};
}

Block nameBlock(const SheetContext& c, const Helper& h, const ChecklistStyle& style = {}) {
    const double badgeSize = style.columns ? 32 : 42, beside = badgeSize + 14;
    const QString name = isolated(h.name);
    int type = style.columns ? type::kTitle : type::kName;
    while (type > type::kLead && TextBlock{name, c.width - beside, {type, true}}.lines() > 2)
        type -= 2;
    auto text = std::make_shared<TextBlock>(name, c.width - beside,
                                            TextStyle{.size = type, .bold = true, .maxLines = 3});
    const double height = std::max(badgeSize + 2, text->height());
    return {.height = height,
            .keepWithNext = true,
            .newPage = true,
            .draw = [=, letter = c.crew.letter(h.name)](QPainter& p, QRectF at) {
                const double middle = badgeSize / 2 + 1;
                badge(p, at.topLeft() + QPointF{middle, middle}, badgeSize, letter, true);
                text->draw(p, at.topLeft() +
                                  QPointF{beside, std::max(0.0, middle - text->height() / 2)});
            }};
}

QString summary(const SheetContext& c, const Helper& h) {
    int pins = 0, dots = 0;
    std::optional<Seconds> first, last;
    for (const auto& t : c.plan.tasks) {
        if (std::ranges::count(t.people, h.name) == 0)
            continue;
        first = std::min(first.value_or(t.start), t.start);
        last = std::max(last.value_or(t.end), t.end);
        const auto q = std::size_t(t.job);
        if (q >= c.plan.quilts.size())
            continue;
        const Zone* zone = findZone(c.plan.quilts[q], t.zone);
        if (zone && t.kind == TaskKind::placeOpen)
            pins += int(zone->points.size());
        if (zone && t.kind == TaskKind::dotLower)
            dots += int(zone->points.size());
    }
    QStringList words{Text::tr("Here %1").arg(hoursWords(h))};
    if (first)
        words << Text::tr("tasks %1 to %2").arg(clock(c.start(), *first), clock(c.start(), *last));
    QStringList points;
    if (pins > 0)
        points << pointCount(pins, Basting::With::pins);
    if (dots > 0)
        points << pointCount(dots, Basting::With::dots);
    if (!points.isEmpty())
        words << Text::tr("%1 to place").arg(listed(points));
    return words.join(Text::tr(" · "));
}

QString whoIsWho(const SheetContext& c, const Helper& h) {
    std::vector<std::string> others;
    for (const auto& o : c.session.setting.helpers)
        if (o.name != h.name)
            others.push_back(o.name);
    return others.empty() ? QString{} : Text::tr("With %1.").arg(c.crew.spoken(others));
}

/// The numbered places in words.
Block placeList(const PassPart& part, double width) {
    constexpr double kAbove = 3;
    std::vector<Span> words{{part.seated ? Text::tr("Sit: ") : Text::tr("Stand: ")}};
    for (auto& span : part.placesInWords())
        words.push_back(std::move(span));
    auto text = std::make_shared<TextBlock>(words, width, TextStyle{type::kCheck});
    return {.height = kAbove + text->height(), .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft() + QPointF{0, kAbove});
            }};
}

/// In a strip the pictures carry the passes' names: their headings are no more than a line.
Block passHeading(const SheetContext& c, const Stretch& s, bool continued, double width,
                  const ChecklistStyle& style) {
    QString text = c.passName(s.quilt, s.pass);
    if (continued || (!s.first && !style.strip))
        text = Text::tr("%1, continued").arg(text);
    const int size = style.heading();
    auto words = std::make_shared<TextBlock>(
        text, width, TextStyle{.size = size, .bold = true, .maxLines = 2, .close = style.columns});
    const double below = style.strip ? 1 : 3;
    return {.height = words->height() + below,
            .before = style.columns ? 4.0
                      : style.strip ? 5.0
                                    : 9.0,
            .keepWithNext = true,
            .draw = [words](QPainter& p, QRectF at) {
                words->draw(p, at.topLeft());
                rule(p, at.bottomLeft() - QPointF{0, 1}, at.width(), ink::kLine);
            }};
}

/// Rows on the left with the picture on the right, in one block that is never parted.
Block beside(std::vector<Block> left, Block right) {
    double height = 0;
    for (const auto& b : left)
        height += b.height;
    auto rows = std::make_shared<std::vector<Block>>(std::move(left));
    auto picture = std::make_shared<Block>(std::move(right));
    return {.height = std::max(height, picture->height + 3), .draw = [=](QPainter& p, QRectF at) {
                double y = at.top();
                for (const auto& b : *rows) {
                    b.draw(p, {at.left(), y, at.width(), b.height});
                    y += b.height;
                }
                picture->draw(p, {at.left(), at.top() + 3, at.width(), picture->height});
            }};
}

Flow stretchFlow(const SheetContext& c, const std::string& person, const Stretch& s, double width,
                 std::vector<Rest>& rests, const ChecklistStyle& style) {
    // Somebody who works at two tables in turn: a single task says in its own row where it is.
    const bool inRow = style.strip && !style.columns && c.severalQuilts() && s.tasks.size() == 1;
    Flow flow;
    if (!inRow)
        flow.push_back(passHeading(c, s, false, width, style));
    const auto again = std::make_shared<Block>(passHeading(c, s, true, width, style));
    const PassPart part = partOf(c, person, s.quilt, s.pass);
    const bool pictured = s.first && !style.strip && hasPicture(part);
    if (pictured)
        width -= placePicture(part, style).width() + kColumnGap;
    auto rows = checklistRows(c, person, s.tasks, part, width, style, rests,
                              inRow ? c.passName(s.quilt, s.pass) : QString{});
    if (pictured && !part.places.empty())
        rows.insert(rows.begin(), placeList(part, width));
    std::size_t next = 0;
    if (pictured) {
        // As many rows as the picture is high, or a few more: what is left begins a block.
        Block picture = placePicture(part, style).block();
        std::vector<Block> left;
        for (double h = 0; next < rows.size() && h < picture.height; ++next) {
            left.push_back(rows[next]);
            h += rows[next].height;
        }
        flow.push_back(beside(std::move(left), std::move(picture)));
    }
    for (; next < rows.size(); ++next) {
        flow.push_back(rows[next]);
        if (!inRow)
            flow.back().repeat = again;
    }
    return flow;
}

/// What good work looks like, for every kind of task this person has. In columns three kinds share
/// a paragraph.
Flow checks(const SheetContext& c, const std::vector<Stretch>& all, double width,
            const ChecklistStyle& style) {
    Flow flow{heading(Text::tr("How, and what to check"), width, style.heading())};
    flow.back().before = 7;
    std::set<QString> said;
    std::vector<Span> words;
    const auto close = [&] {
        if (!words.empty())
            flow.push_back(textBlock(words, width, style.text(), 2));
        words.clear();
    };
    for (const auto& s : all)
        for (const Task* t : s.tasks) {
            const auto with = c.with(s.quilt);
            const QString how = taskCheck(t->kind, with, c.unit());
            if (!said.insert(how).second)
                continue;
            if (!words.empty())
                words.push_back({QStringLiteral(" ")});
            words.push_back({taskName(t->kind, with) + QStringLiteral(". "), true});
            words.push_back({how});
            if (!style.columns || said.size() % 3 == 0)
                close();
        }
    close();
    return flow;
}

/// How the pins are placed, for whoever places some.
Flow placing(const SheetContext& c, const std::vector<Stretch>& all, double width,
             const ChecklistStyle& style) {
    std::set<std::size_t> quilts;
    for (const auto& s : all)
        for (const Task* t : s.tasks)
            if (t->kind == TaskKind::placeOpen || t->kind == TaskKind::dotLower ||
                t->kind == TaskKind::dotUpper)
                quilts.insert(s.quilt);
    Flow flow;
    for (const std::size_t q : quilts) {
        const QuiltPlan& plan = c.plan.quilts[q];
        if (!plan.rows && !plan.blocks)
            continue;
        const QString where = Text::tr("Where each one goes");
        flow.push_back(
            heading(c.severalQuilts() ? Text::tr("%1: %2").arg(where, c.quiltName(q)) : where,
                    width, style.heading()));
        const Sentence said =
            plan.rows ? rowsSentence(*plan.rows, c.job(q)) : blocksSentence(*plan.blocks, c.job(q));
        flow.push_back(textBlock({{language::said(said)}}, width, style.text(), 2));
    }
    return flow;
}

Flow checklist(const SheetContext& c, const Helper& helper, const std::vector<Stretch>& all,
               const ChecklistStyle& style) {
    Flow flow{nameBlock(c, helper, style)};
    const auto line = [&](const QString& words, double before) {
        flow.push_back(textBlock({{words}}, c.width, style.text(), before));
    };
    line(summary(c, helper), 5);
    if (const QString others = whoIsWho(c, helper); !others.isEmpty())
        line(others, 0);
    if (style.strip)
        flow += pictureStrip(c, helper.name, all, style);
    const double width = style.columns ? columnWidth(c.width) : c.width;
    auto rests = restsOf(c.session, c.plan, helper.name);
    Flow lists;
    for (const auto& s : all)
        lists += stretchFlow(c, helper.name, s, width, rests, style);
    for (const auto& rest : rests) // after the last task
        lists.push_back(restRow(c, rest, width, style));
    lists += placing(c, all, width, style);
    lists += checks(c, all, width, style);
    if (style.columns) {
        flow.push_back(inTwoColumns(std::move(lists)));
        flow.back().before = 8;
    } else {
        flow += std::move(lists);
    }
    return flow;
}

} // namespace

Flow helperPages(const SheetContext& c, const Helper& helper) {
    constexpr std::size_t kMost = 2; // pages, front and back of one sheet
    const auto all = stretches(c.plan, helper.name);
    if (all.empty()) {
        Flow flow{nameBlock(c, helper)};
        flow.push_back(paragraph(summary(c, helper), c.width, type::kCheck, 8));
        flow.push_back(
            paragraph(Text::tr("The plan has no task for you yet. Ask the lead: another pair "
                               "of hands is always wanted at a shift."),
                      c.width, type::kCheck, 16));
        return flow;
    }
    constexpr ChecklistStyle kClose{
        .gathered = true, .strip = true, .padding = 1, .picture = {165, 160}};
    ChecklistStyle columns = kClose;
    columns.columns = true;
    columns.padding = 0.25;
    columns.picture = {140, 130};
    const ChecklistStyle styles[] = {
        {},
        {.padding = 1.5, .picture = {190, 185}},
        {.gathered = true, .padding = 1.5, .picture = {190, 185}},
        kClose,
        columns,
    };
    Flow best;
    std::size_t least = 0;
    for (const auto& style : styles) {
        if (!style.strip && least > kMost + 1)
            continue; // a little closer will not do
        Flow flow = checklist(c, helper, all, style);
        const std::size_t pages = paginate(flow, c.height).size();
        if (least == 0 || pages < least) {
            best = std::move(flow);
            least = pages;
        }
        if (least <= kMost)
            break;
    }
    return best;
}

} // namespace bastewright::sheets
