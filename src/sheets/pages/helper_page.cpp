#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/helper_part.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/table_picture.h"
#include "sheets/printable.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <set>

namespace bastewright::sheets {
namespace {

constexpr double kPictureColumn = 150, kColumnGap = 14;

Block nameBlock(const SheetContext& c, const Helper& h) {
    constexpr double kBadge = 42, kBeside = kBadge + 14;
    const QString name = isolated(h.name);
    int type = type::kName;
    while (type > type::kLead && TextBlock{name, c.width - kBeside, {type, true}}.lines() > 2)
        type -= 2;
    auto text = std::make_shared<TextBlock>(name, c.width - kBeside,
                                            TextStyle{.size = type, .bold = true, .maxLines = 3});
    const double height = std::max(kBadge + 2, text->height());
    return {
        .height = height,
        .keepWithNext = true,
        .newPage = true,
        .draw = [text, letter = c.crew.letter(h.name)](QPainter& p, QRectF at) {
            badge(p, {at.left() + kBadge / 2 + 1, at.top() + kBadge / 2 + 1}, kBadge, letter, true);
            text->draw(
                p, {at.left() + kBeside, at.top() + std::max(0.0, (kBadge - text->height()) / 2)});
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
    if (pins > 0)
        words << Text::tr("you place %1").arg(pointCount(pins, Basting::With::pins));
    if (dots > 0)
        words << Text::tr("you place %1").arg(pointCount(dots, Basting::With::dots));
    return words.join(Text::tr(" · "));
}

QString whoIsWho(const SheetContext& c, const Helper& h) {
    std::vector<std::string> others;
    for (const auto& o : c.session.setting.helpers)
        if (o.name != h.name)
            others.push_back(o.name);
    return others.empty() ? QString{} : Text::tr("With %1.").arg(c.crew.spoken(others));
}

/// A task as a line of the checklist: box, time, what, with whom, where to stand.
Block taskRow(const SheetContext& c, const std::string& person, const Task& t, const PassPart& part,
              double width) {
    constexpr double kTime = 24, kWhat = 70, kPad = 2.5;
    std::vector<Span> words{
        {taskLine(t, *part.quilt, c.with(std::size_t(t.job)), c.unit()), !t.zone.empty()}};
    std::vector<std::string> others = t.people;
    std::erase(others, person);
    if (!others.empty())
        words.push_back({t.kind == TaskKind::shift || t.kind == TaskKind::turnOver
                             ? Text::tr("; lift with %1").arg(c.crew.spoken(others))
                             : Text::tr("; with %1").arg(c.crew.spoken(others))});
    if (const auto* place = placeOf(t, person))
        words.push_back({(part.seated ? Text::tr("; sit at %1") : Text::tr("; stand at %1"))
                             .arg(part.placeNumber(*place))});
    auto what = std::make_shared<TextBlock>(words, width - kWhat, TextStyle{type::kCheck});
    auto time = std::make_shared<TextBlock>(clock(c.start(), t.start), kWhat - kTime,
                                            TextStyle{type::kCheck, true});
    return {.height = what->height() + 2 * kPad, .draw = [=](QPainter& p, QRectF at) {
                tickBox(p, {at.left() + 1, at.top() + kPad + 1.5, 15, 15});
                time->draw(p, {at.left() + kTime, at.top() + kPad});
                what->draw(p, {at.left() + kWhat, at.top() + kPad});
                rule(p, at.bottomLeft(), width);
            }};
}

/// True where the table lies so wide that its picture goes above the tasks instead of beside them.
bool isWide(const PassPart& part) {
    return ratio(part.pass->table.width(), part.pass->table.length()) > 1.7;
}

/// The small picture of the table with the person's places and zones.
Block placePicture(const PassPart& part, double width) {
    // A little over a point to the inch keeps a zone's id readable on a long table.
    constexpr double kUsual = 150, kTallest = 300, kMarks = 50, kScale = 1.3;
    const double limit =
        std::clamp(part.pass->table.length().in() * kScale + kMarks, kUsual, kTallest);
    TablePicture show{.near = true, .mine = part.zones};
    for (const auto& place : part.places)
        show.places.push_back({place, QString::number(part.placeNumber(place)), true});
    const double height =
        pictureHeight(*part.quilt, *part.pass, show, width, isWide(part) ? kUsual : limit);
    return {.height = height,
            .draw = [=, quilt = part.quilt, pass = part.pass](QPainter& p, QRectF at) {
                drawTable(p, {at.topLeft(), QSizeF{width, height}}, *quilt, *pass, show);
            }};
}

/// The numbered places in words.
Block placeList(const PassPart& part, double width) {
    constexpr double kAbove = 4;
    auto text = std::make_shared<TextBlock>(part.placesInWords(), width, TextStyle{type::kCheck});
    return {.height = kAbove + text->height(), .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft() + QPointF{0, kAbove});
            }};
}

Block passHeading(const SheetContext& c, const Stretch& s, bool continued) {
    QString text = c.passName(s.quilt, s.pass);
    if (continued || !s.first)
        text = Text::tr("%1, continued").arg(text);
    auto words = std::make_shared<TextBlock>(
        text, c.width, TextStyle{.size = type::kLead, .bold = true, .maxLines = 2});
    return {.height = words->height() + 3,
            .before = 14,
            .keepWithNext = true,
            .draw = [words](QPainter& p, QRectF at) {
                words->draw(p, at.topLeft());
                rule(p, at.bottomLeft() - QPointF{0, 1}, at.width(), ink::kLine);
            }};
}

/// Puts blocks below one another on the left and one on the right into a block that is never
/// parted.
Block beside(std::vector<Block> left, Block right) {
    double height = 0;
    for (const auto& b : left)
        height += b.height;
    auto rows = std::make_shared<std::vector<Block>>(std::move(left));
    auto picture = std::make_shared<Block>(std::move(right));
    return {.height = std::max(height, picture->height), .draw = [=](QPainter& p, QRectF at) {
                double y = at.top();
                for (const auto& b : *rows) {
                    b.draw(p, {at.left(), y, at.width(), b.height});
                    y += b.height;
                }
                picture->draw(
                    p, {at.right() - kPictureColumn, at.top(), kPictureColumn, picture->height});
            }};
}

Flow stretchFlow(const SheetContext& c, const std::string& person, const Stretch& s) {
    Flow flow{passHeading(c, s, false)};
    const auto again = std::make_shared<Block>(passHeading(c, s, true));
    const PassPart part = partOf(c, person, s.quilt, s.pass);
    const bool places = !part.places.empty();
    std::size_t next = 0;
    if (s.first && part.pass && (places || !part.zones.empty())) {
        if (isWide(part)) {
            flow.push_back(placePicture(part, c.width));
            flow.back().keepWithNext = true;
            if (places)
                flow.push_back(placeList(part, c.width));
        } else {
            Block right = placePicture(part, kPictureColumn);
            std::vector<Block> left;
            const double room = c.width - kPictureColumn - kColumnGap;
            for (double h = 0; next < s.tasks.size() && h < right.height; ++next) {
                left.push_back(taskRow(c, person, *s.tasks[next], part, room));
                h += left.back().height;
            }
            if (places)
                left.push_back(placeList(part, room));
            flow.push_back(beside(std::move(left), std::move(right)));
        }
    }
    for (; next < s.tasks.size(); ++next) {
        flow.push_back(taskRow(c, person, *s.tasks[next], part, c.width));
        flow.back().repeat = again;
    }
    return flow;
}

/// What good work looks like, for every kind of task this person has.
Flow checks(const SheetContext& c, const std::vector<Stretch>& all) {
    Flow flow{heading(Text::tr("How, and what to check"), c.width)};
    std::set<QString> said;
    for (const auto& s : all)
        for (const Task* t : s.tasks) {
            const auto with = c.with(s.quilt);
            const QString words = taskCheck(t->kind, with, c.unit());
            if (!said.insert(words).second)
                continue;
            flow.push_back(paragraph(
                std::vector<Span>{{taskName(t->kind, with) + QStringLiteral(". "), true}, {words}},
                c.width, type::kCheck, 4));
        }
    return flow;
}

} // namespace

Flow helperPages(const SheetContext& c, const Helper& helper) {
    Flow flow{nameBlock(c, helper)};
    flow.push_back(paragraph(summary(c, helper), c.width, type::kCheck, 8));
    if (const QString others = whoIsWho(c, helper); !others.isEmpty())
        flow.push_back(paragraph(others, c.width, type::kCheck, 2));
    const auto all = stretches(c.plan, helper.name);
    if (all.empty()) {
        flow.push_back(
            paragraph(Text::tr("The plan has no task for you yet. Ask the lead: another pair "
                               "of hands is always wanted at a shift."),
                      c.width, type::kCheck, 16));
        return flow;
    }
    for (const auto& s : all)
        flow += stretchFlow(c, helper.name, s);
    flow += checks(c, all);
    return flow;
}

} // namespace bastewright::sheets
