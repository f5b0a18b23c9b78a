#include "sheets/pages/helper_rows.h"

#include "sheets/ink.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <chrono>

namespace bastewright::sheets {
namespace {

using std::chrono::minutes;

constexpr double kBox = 15, kTime = 24, kWhat = 70; // where box, time and words begin
constexpr double kPlace = 18;                       // ring with the number of the place
constexpr auto kWait = minutes{8};                  // shorter ones pass by themselves

/// One task as a row.
class Row {
public:
    Row(const SheetContext& c, const std::string& person, const Task& t, const PassPart& part,
        double width, double padding, const QString& where)
        : width_{width}
        , padding_{padding}
        , time_{clock(c.start(), t.start), kWhat - kTime, TextStyle{type::kCheck, true}}
        , what_{words(c, person, t, part, where), width - kWhat - kPlace - 4, TextStyle{type::kCheck}} {
        if (const auto* place = placeOf(t, person))
            place_ = part.placeNumber(*place);
    }
    double height() const { return what_.height() + 2 * padding_; }
    void draw(QPainter& p, QRectF at) const {
        tickBox(p, {at.left() + 1, at.top() + padding_ + 1.5, kBox, kBox});
        time_.draw(p, {at.left() + kTime, at.top() + padding_});
        what_.draw(p, {at.left() + kWhat, at.top() + padding_});
        if (place_ > 0)
            badge(p, {at.left() + width_ - kPlace / 2 - 1, at.top() + padding_ + 9}, kPlace,
                  QString::number(place_), true);
        rule(p, at.bottomLeft(), width_);
    }

private:
    static std::vector<Span> words(const SheetContext& c, const std::string& person, const Task& t,
                                   const PassPart& part, const QString& where) {
        std::vector<Span> out{
            {taskLine(t, *part.quilt, c.with(std::size_t(t.job)), c.unit()), !t.zone.empty()}};
        std::vector<std::string> others = t.people;
        std::erase(others, person);
        if (!others.empty())
            out.push_back({t.kind == TaskKind::shift || t.kind == TaskKind::turnOver
                               ? Text::tr("; lift with %1").arg(c.crew.spoken(others))
                               : Text::tr("; with %1").arg(c.crew.spoken(others))});
        if (!where.isEmpty())
            out.push_back({Text::tr("; %1").arg(where)});
        return out;
    }

    double width_, padding_;
    TextBlock time_, what_;
    int place_ = 0;
};

/// Zones with the same kind of work after one another: the work once, then a box, a time, a zone,
/// its count and a place for each, as many in a line as fit.
class GatheredRow {
public:
    GatheredRow(const SheetContext& c, const std::string& person,
                const std::vector<const Task*>& tasks, const PassPart& part, double width,
                double padding)
        : width_{width}
        , padding_{padding}
        , work_{zoneWork(tasks[0]->kind, c.with(std::size_t(tasks[0]->job))), kWork,
                TextStyle{type::kCheck, true}} {
        for (const Task* t : tasks) {
            const auto* place = placeOf(*t, person);
            items_.push_back(
                {TextBlock{std::vector<Span>{
                               {clock(c.start(), t->start) + QChar{0x00A0}},
                               {QString::fromStdString(t->zone), true},
                               {QStringLiteral(": %1").arg(taskPoints(*t, *part.quilt))}},
                           width - kWork, TextStyle{type::kCheck}},
                 place ? part.placeNumber(*place) : 0});
            each_ = std::max(each_, kText + items_.back().text.naturalWidth() + kPlace + 20);
        }
        perLine_ = std::max(1, int((width - kWork) / each_));
    }
    double height() const {
        const int lines = (int(items_.size()) + perLine_ - 1) / perLine_;
        return std::max(work_.height(), lines * line()) + 2 * padding_;
    }
    void draw(QPainter& p, QRectF at) const {
        work_.draw(p, {at.left(), at.top() + padding_});
        for (int i = 0; i < int(items_.size()); ++i) {
            const auto& item = items_[std::size_t(i)];
            const QPointF from{at.left() + kWork + (i % perLine_) * each_,
                               at.top() + padding_ + (i / perLine_) * line()};
            tickBox(p, {from.x(), from.y() + 1.5, kBox, kBox});
            item.text.draw(p, from + QPointF{kText, 0});
            if (item.place > 0)
                badge(p, from + QPointF{each_ - kPlace / 2 - 15, 9.5}, kPlace,
                      QString::number(item.place), true);
        }
        rule(p, at.bottomLeft(), width_);
    }

private:
    struct Item {
        TextBlock text;
        int place = 0;
    };
    static constexpr double kWork = 86, kText = 20;
    static double line() { return type::kCheck * 1.3 + 4; }

    double width_, padding_, each_ = 0;
    TextBlock work_;
    std::vector<Item> items_;
    int perLine_ = 1;
};

template <class R>
Block blockOf(std::shared_ptr<R> row) {
    return {.height = row->height(), .draw = [row](QPainter& p, QRectF at) { row->draw(p, at); }};
}

/// "13:37 free until 13:50: rest, and drink something".
Block waitRow(const SheetContext& c, Seconds from, Seconds until, double width, double padding) {
    auto text = std::make_shared<TextBlock>(
        std::vector<Span>{{clock(c.start(), from), true},
                          {Text::tr("  free until %1: rest").arg(clock(c.start(), until))}},
        width - kTime, TextStyle{.size = type::kCheck, .ink = ink::kQuiet});
    return {.height = text->height() + 2 * padding, .draw = [=](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft() + QPointF{kTime, padding});
                rule(p, at.bottomLeft(), width);
            }};
}

/// When the person's work before a task ended; nothing for the first.
std::optional<Seconds> endBefore(const Plan& plan, const std::string& person, const Task& task) {
    std::optional<Seconds> end;
    for (const auto& t : plan.tasks)
        if (t.start < task.start && std::ranges::count(t.people, person) > 0)
            end = std::max(end.value_or(t.end), t.end);
    return end;
}

} // namespace

std::vector<Block> checklistRows(const SheetContext& c, const std::string& person,
                                 const std::vector<const Task*>& tasks, const PassPart& part,
                                 double width, const ChecklistStyle& style,
                                 const QString& where) {
    std::vector<Block> rows;
    const auto sameRun = [&](const Task& a, const Task& b) {
        return a.kind == b.kind && !a.zone.empty() && !b.zone.empty() && a.people.size() == 1 &&
               b.people.size() == 1;
    };
    for (std::size_t i = 0; i < tasks.size();) {
        const auto free = endBefore(c.plan, person, *tasks[i]);
        if (free && tasks[i]->start - *free >= kWait)
            rows.push_back(waitRow(c, *free, tasks[i]->start, width, style.padding));
        std::size_t end = i + 1;
        while (style.gathered && end < tasks.size() && sameRun(*tasks[i], *tasks[end]) &&
               tasks[end]->start - tasks[end - 1]->end < kWait)
            ++end;
        if (end - i > 1)
            rows.push_back(blockOf(std::make_shared<GatheredRow>(
                c, person,
                std::vector<const Task*>(tasks.begin() + std::ptrdiff_t(i),
                                         tasks.begin() + std::ptrdiff_t(end)),
                part, width, style.padding)));
        else
            rows.push_back(
                blockOf(std::make_shared<Row>(c, person, *tasks[i], part, width, style.padding, where)));
        i = end;
    }
    return rows;
}

} // namespace bastewright::sheets
