#include "sheets/pages/helper_rows.h"

#include "sheets/ink.h"
#include "sheets/printable.h"
#include "sheets/task_words.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <memory>

namespace bastewright::sheets {
namespace {

constexpr double kBox = 15;   // to tick
constexpr double kPlace = 18; // ring with the number of the place

/// One task as a row.
class Row {
public:
    Row(const SheetContext& c, const std::string& person, const Task& t, const PassPart& part,
        double width, const ChecklistStyle& style, const QString& where)
        : width_{width}
        , padding_{style.padding}
        , timeAt_{style.columns ? 20.0 : 24.0}
        , wordsAt_{style.columns ? 63.0 : 70.0}
        , time_{clock(c.start(), t.start), wordsAt_ - timeAt_, style.text(true)} {
        if (const auto* place = placeOf(t, person))
            place_ = part.placeNumber(*place);
        const double room = width - wordsAt_ - (place_ > 0 ? kPlace + 4 : 0);
        auto spans =
            style.columns ? fewWords(c, person, t, *part.quilt) : words(c, person, t, *part.quilt);
        if (!where.isEmpty())
            spans.push_back({Text::tr("; %1").arg(where)});
        what_ = std::make_unique<TextBlock>(spans, room, style.text());
    }
    double height() const { return what_->height() + 2 * padding_; }
    void draw(QPainter& p, QRectF at) const {
        const double middle = at.top() + padding_ + time_.height() / 2;
        tickBox(p, {at.left() + 1, middle - kBox / 2, kBox, kBox});
        time_.draw(p, {at.left() + timeAt_, at.top() + padding_});
        what_->draw(p, {at.left() + wordsAt_, at.top() + padding_});
        if (place_ > 0)
            badge(p, {at.left() + width_ - kPlace / 2 - 1, middle}, kPlace, QString::number(place_),
                  true);
        rule(p, at.bottomLeft(), width_);
    }

private:
    static bool isLift(const Task& t) {
        return t.kind == TaskKind::shift || t.kind == TaskKind::turnOver;
    }
    static std::vector<std::string> othersOf(const Task& t, const std::string& person) {
        std::vector<std::string> others = t.people;
        std::erase(others, person);
        return others;
    }
    static std::vector<Span> words(const SheetContext& c, const std::string& person, const Task& t,
                                   const QuiltPlan& quilt) {
        std::vector<Span> out{
            {taskLine(t, quilt, c.with(std::size_t(t.job)), c.unit()), !t.zone.empty()}};
        if (const auto others = othersOf(t, person); !others.empty())
            out.push_back({isLift(t) ? Text::tr("; lift with %1").arg(c.crew.spoken(others))
                                     : Text::tr("; with %1").arg(c.crew.spoken(others))});
        return out;
    }
    /// The others by their marks: the list of everybody at the top has their names.
    static std::vector<Span> fewWords(const SheetContext& c, const std::string& person,
                                      const Task& t, const QuiltPlan& quilt) {
        std::vector<Span> out{
            {taskBrief(t, quilt, c.with(std::size_t(t.job)), c.unit()), !t.zone.empty()}};
        if (const auto others = othersOf(t, person); !others.empty()) {
            QStringList marks;
            for (const QString& letter : c.crew.letters(others))
                marks << isolated(letter.toStdString());
            out.push_back({isLift(t) ? Text::tr("; lift with %1").arg(listed(marks))
                                     : Text::tr("; with %1").arg(listed(marks))});
        }
        return out;
    }

    double width_, padding_, timeAt_, wordsAt_;
    TextBlock time_;
    std::unique_ptr<TextBlock> what_;
    int place_ = 0;
};

/// Zones with the same kind of work after one another: the work once, then a box, a time, a zone,
/// its count and a place for each, as many in a line as fit. In a broad row the work has a column
/// of its own; in a narrow one it takes the first place of the grid.
class GatheredRow {
public:
    GatheredRow(const SheetContext& c, const std::string& person,
                const std::vector<const Task*>& tasks, const PassPart& part, double width,
                const ChecklistStyle& style)
        : width_{width}
        , padding_{style.padding} {
        double each = 0;
        for (const Task* t : tasks) {
            const auto* place = placeOf(*t, person);
            items_.push_back(
                {TextBlock{
                     std::vector<Span>{{clock(c.start(), t->start) + QChar{0x00A0}},
                                       {zoneWord(t->zone), true},
                                       {QStringLiteral(": %1").arg(taskPoints(*t, *part.quilt))}},
                     width, style.text()},
                 place ? part.placeNumber(*place) : 0});
            each = std::max(each, kText + items_.back().text.naturalWidth() + 3 + kPlace);
        }
        const QString work = zoneWork(tasks[0]->kind, c.with(std::size_t(tasks[0]->job)));
        if (style.columns) {
            perLine_ = std::max(1, int((width + kGap) / (each + kGap)));
            each_ = width / perLine_;
            head_ = perLine_ > 1 ? each_ : 0;
        } else {
            head_ = kWork;
            each_ = each + 14;
            perLine_ = std::max(1, int((width - kWork) / each_));
        }
        inGrid_ = style.columns;
        work_ = std::make_unique<TextBlock>(work, head_ > 0 ? head_ - 4 : width, style.text(true));
    }
    double height() const {
        const QPointF last = at(int(items_.size()) - 1);
        return std::max(work_->height(), last.y() + line()) + 2 * padding_;
    }
    void draw(QPainter& p, QRectF box) const {
        work_->draw(p, {box.left(), box.top() + padding_});
        for (int i = 0; i < int(items_.size()); ++i) {
            const auto& item = items_[std::size_t(i)];
            const QPointF from = box.topLeft() + QPointF{0, padding_} + at(i);
            const double middle = from.y() + item.text.height() / 2;
            tickBox(p, {from.x() + 1, middle - kBox / 2, kBox, kBox});
            item.text.draw(p, from + QPointF{kText, 0});
            if (item.place > 0)
                badge(p, {from.x() + kText + item.text.naturalWidth() + 3 + kPlace / 2, middle},
                      kPlace, QString::number(item.place), true);
        }
        rule(p, box.bottomLeft(), width_);
    }

private:
    struct Item {
        TextBlock text;
        int place = 0;
    };
    static constexpr double kWork = 86, kText = 20, kGap = 2;
    double line() const { return items_.front().text.height() + 2; }

    /// Upper left corner of an item, from that of the row.
    QPointF at(int i) const {
        if (!inGrid_) {
            const int column = i % perLine_, row = i / perLine_;
            return {head_ + column * each_, row * line()};
        }
        if (head_ == 0)
            return {0, work_->height() + i * line()};
        const double first = std::max(line(), work_->height() + 1);
        const int cell = i + 1, row = cell / perLine_;
        return {(cell % perLine_) * each_, row == 0 ? 0 : first + (row - 1) * line()};
    }

    double width_, padding_, each_ = 0, head_ = 0;
    std::unique_ptr<TextBlock> work_;
    std::vector<Item> items_;
    int perLine_ = 1;
    bool inGrid_ = false;
};

template <class R>
Block blockOf(std::shared_ptr<R> row) {
    return {.height = row->height(), .draw = [row](QPainter& p, QRectF at) { row->draw(p, at); }};
}

} // namespace

Block restRow(const SheetContext& c, const Rest& rest, double width, const ChecklistStyle& style) {
    constexpr double kIndent = 24;
    const QString until = clock(c.start(), rest.until);
    auto text = std::make_shared<TextBlock>(
        std::vector<Span>{{clock(c.start(), rest.from), true},
                          {rest.asked ? Text::tr("  break until %1").arg(until)
                                      : Text::tr("  free until %1: rest").arg(until),
                           rest.asked}},
        width - kIndent,
        TextStyle{.size = type::kCheck,
                  .ink = rest.asked ? ink::kDark : ink::kQuiet,
                  .close = style.columns});
    const double padding = style.padding;
    return {.height = text->height() + 2 * padding, .draw = [=](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft() + QPointF{kIndent, padding});
                rule(p, at.bottomLeft(), width);
            }};
}

std::vector<Block> checklistRows(const SheetContext& c, const std::string& person,
                                 const std::vector<const Task*>& tasks, const PassPart& part,
                                 double width, const ChecklistStyle& style,
                                 std::vector<Rest>& rests, const QString& where) {
    std::vector<Block> rows;
    const auto restBefore = [&](const Task& t) {
        return !rests.empty() && rests.front().from <= t.start;
    };
    const auto gathers = [](const Task& t) { return !t.zone.empty() && t.people.size() == 1; };
    for (std::size_t i = 0; i < tasks.size();) {
        for (; restBefore(*tasks[i]); rests.erase(rests.begin()))
            rows.push_back(restRow(c, rests.front(), width, style));
        std::size_t end = i + 1;
        while (style.gathered && end < tasks.size() && gathers(*tasks[i]) && gathers(*tasks[end]) &&
               tasks[end]->kind == tasks[i]->kind && !restBefore(*tasks[end]))
            ++end;
        if (end - i > 1 || (style.columns && gathers(*tasks[i])))
            rows.push_back(blockOf(std::make_shared<GatheredRow>(
                c, person,
                std::vector<const Task*>(tasks.begin() + std::ptrdiff_t(i),
                                         tasks.begin() + std::ptrdiff_t(end)),
                part, width, style)));
        else
            rows.push_back(
                blockOf(std::make_shared<Row>(c, person, *tasks[i], part, width, style, where)));
        i = end;
    }
    return rows;
}

} // namespace bastewright::sheets
