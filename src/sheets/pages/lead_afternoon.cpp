#include "sheets/pages/lead_afternoon.h"

#include "language/said.h"
#include "sheets/ink.h"
#include "sheets/pages/lead_words.h"
#include "sheets/parts.h"
#include "sheets/set_text.h"
#include "sheets/task_words.h"
#include "sheets/words.h"
#include "ways/way.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

/// Width of the column of times and numbers: beside a pass's number stand two words.
double timeColumn(const SheetContext& c, std::size_t q) {
    constexpr double kLeastWidth = 62, kNumber = 24;
    double words = textWidth(Text::tr("pass"), quiet(type::kHead));
    for (const Way* way : c.ways(q))
        words = std::max(words, textWidth(pointCount(200, way->with), quiet(type::kHead)));
    return std::max(kLeastWidth, kNumber + words);
}

/// A line of the afternoon without a picture: set up, a break, somebody comes or goes.
Block timeLine(const QString& time, const std::vector<Span>& words, double width, double timeWidth,
               int size) {
    const auto when = set(time, timeWidth, serif(type::kLead));
    const auto text = set(words, width - timeWidth - 4, closeText(size));
    const double height = std::max(when->height(), text->height()) + 6;
    return {.height = height, .draw = [=](QPainter& p, QRectF at) {
                when->draw(p, at.topLeft() + QPointF{0, 2});
                text->draw(p, at.topLeft() + QPointF{timeWidth + 4, 4});
                rule(p, at.bottomLeft(), at.width());
            }};
}

/// Who puts in how many, each with a box to tick.
class Ticks {
public:
    Ticks(const SheetContext& c, std::size_t q, const Pass& pass, double width)
        : width_{width} {
        for (const auto& h : c.session.setting.helpers)
            if (const int n = c.pointsOf(h.name, q, pass); n > 0)
                all_.push_back({c.mark(h.name, q), QString::number(n)});
        std::ranges::sort(all_, {}, &One::letter);
        perRow_ = std::max(1, int(width / kEach));
    }
    double height() const {
        return all_.empty() ? 0 : double((int(all_.size()) + perRow_ - 1) / perRow_) * kRow;
    }
    void draw(QPainter& p, QPointF at) const {
        const double each =
            std::min(kMost, width_ / std::min(double(perRow_), std::max(1.0, double(all_.size()))));
        for (int i = 0; i < int(all_.size()); ++i) {
            const QPointF from = at + QPointF{(i % perRow_) * each, (i / perRow_) * kRow + 3};
            tickBox(p, {from, QSizeF{11, 11}});
            const TextBlock letter{all_[std::size_t(i)].letter, 40, serif(type::kBody)};
            letter.draw(p, from + QPointF{15, -1.5});
            TextStyle plain{type::kSmall};
            TextBlock{all_[std::size_t(i)].count, 40, plain}.draw(
                p, from + QPointF{15 + letter.naturalWidth() + 4, -1.5});
        }
    }

private:
    struct One {
        QString letter, count;
    };
    static constexpr double kEach = 50, kMost = 66, kRow = 16;
    std::vector<One> all_;
    double width_;
    int perRow_ = 1;
};

Block passRow(const SheetContext& c, std::size_t q, const Pass& pass, double width,
              const LeadSetting& setting) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const double shape = thumbShape(quilt, Side::foot);
    const double thumb = std::clamp((setting.thumb - 15) * shape + 24, 44.0, 96.0);
    const double timeWidth = timeColumn(c, q);
    const double textAt = timeWidth + 2 + thumb + 8, room = width - textAt;
    const auto times = passTimes(c.plan, q, pass.number);
    const auto when =
        set(times ? clock(c.start(), times->start) : QString{}, timeWidth, serif(type::kLead));
    const auto number = set(QString::number(pass.number), timeWidth, serif(type::kTitle));
    const auto unit = set(pass.pulled ? Text::tr("pull across") : Text::tr("pass"), timeWidth,
                          quiet(type::kHead));
    const auto count =
        set(pointCounts(c.job(q), quilt, pass.number), timeWidth - 24, quiet(type::kHead));
    const auto move = set(std::vector<Span>{{moveWords(c, q, pass), true}}, room,
                          closeText(setting.close ? setting.text : setting.text + 1));
    const auto words = set(passWords(c, q, pass), room, closeText(setting.text));
    const auto ticks = std::make_shared<const Ticks>(c, q, pass, room);
    const double text = move->height() + words->height() + ticks->height() + 4;
    // The number's line is higher than its figures.
    const double left = when->height() + number->height() - 6;
    const double height = std::max({setting.thumb, text, left}) + 7;
    return {.height = height,
            .draw = [=, &quilt, &pass, unitOf = c.unit()](QPainter& p, QRectF at) {
                const double y = at.top() + 4;
                when->draw(p, {at.left(), y});
                const double low = at.bottom() - 1 - number->height();
                number->draw(p, {at.left(), low});
                const double beside = at.left() + number->naturalWidth() + 5;
                unit->draw(p, {beside, low + number->height() - unit->height() - count->height()});
                count->draw(p, {beside, low + number->height() - count->height()});
                drawThumb(p, {at.left() + timeWidth + 4, y, thumb, at.height() - 8},
                          {&quilt, &pass, Side::foot, {}, true}, unitOf);
                move->draw(p, {at.left() + textAt, y});
                words->draw(p, {at.left() + textAt, y + move->height() + 1});
                ticks->draw(p, {at.left() + textAt, at.bottom() - 4 - ticks->height()});
                rule(p, at.bottomLeft(), at.width());
            }};
}

/// Who takes the rows of somebody who leaves: the neighbours along the table.
std::vector<std::string> takersOf(const SheetContext& c, std::size_t q, const std::string& person) {
    for (auto pass = c.plan.quilts[q].passes.rbegin(); pass != c.plan.quilts[q].passes.rend();
         ++pass) {
        const auto all = standing(c.plan, q, *pass);
        const auto own = std::ranges::find(all, person, &Stretch::person);
        if (own == all.end() || all.size() < 2)
            continue;
        std::vector<std::string> beside;
        if (own != all.begin())
            beside.push_back((own - 1)->person);
        if (own + 1 != all.end())
            beside.push_back((own + 1)->person);
        return beside;
    }
    return {};
}

struct Moment {
    Seconds at{};
    int order = 0; ///< of what begins at one time
    Block block;
};

} // namespace

std::vector<Block> afternoon(const SheetContext& c, std::size_t q, double width,
                             const LeadSetting& setting) {
    std::vector<Moment> all;
    const QuiltPlan& quilt = c.plan.quilts[q];
    const auto add = [&](Seconds at, int order, const std::vector<Span>& words) {
        all.push_back(
            {at, order,
             timeLine(clock(c.start(), at), words, width, timeColumn(c, q), setting.text)});
    };
    Seconds first = c.plan.finish, last{};
    for (const auto& t : c.plan.tasks)
        if (t.job == int(q)) {
            first = std::min(first, t.start);
            last = std::max(last, t.end);
            if (t.kind == TaskKind::handOver)
                add(t.start, 4, rollUpWords(c, q));
        }
    if (std::ranges::none_of(c.plan.tasks, [&](const Task& t) {
            return t.job == int(q) && t.kind == TaskKind::handOver;
        }))
        add(last, 4, rollUpWords(c, q));
    add(first, 0, setUpWords(c, q));
    for (const Pass& pass : quilt.passes)
        if (const auto times = passTimes(c.plan, q, pass.number))
            all.push_back({times->start, 3, passRow(c, q, pass, width, setting)});
    for (const PlannedBreak& b : c.plan.breaks) {
        if (b.start < first || b.start > last)
            continue;
        std::optional<int> pass; // that is broken off, or was the last before
        for (const Pass& p : quilt.passes)
            if (const auto times = passTimes(c.plan, q, p.number); times && times->start < b.start)
                pass = p.number;
        QStringList whose;
        for (const Way* way : c.ways(q, pass))
            whose << language::said(way->words.atBreaks);
        if (!b.people.empty())
            whose = {Text::tr("%1 alone.").arg(names(b.people))};
        add(b.start, 1,
            {{Text::tr("Break, %1.").arg(span(b.end - b.start)) + QChar::Space, true},
             {whose.join(QChar::Space)}});
    }
    for (const auto& h : c.session.setting.helpers) {
        if (std::ranges::none_of(c.plan.tasks, [&](const Task& t) {
                return t.job == int(q) && std::ranges::count(t.people, h.name) > 0;
            }))
            continue;
        const auto after = [&](ClockTime t) {
            return t.sinceMidnight - c.session.setting.start.sinceMidnight;
        };
        if (h.from && after(*h.from) > first && after(*h.from) < last)
            add(after(*h.from), 2,
                {{Text::tr("%1 comes").arg(called(h.name)), true},
                 {Text::tr(" and takes a share of the neighbors' rows.")}});
        if (h.until && after(*h.until) > first &&
            after(*h.until) <= std::max(last, c.plan.range.late)) {
            const std::vector<std::string> takers = takersOf(c, q, h.name);
            add(after(*h.until), 2,
                {{takers.empty() ? Text::tr("%1 leaves, nothing half done.").arg(called(h.name))
                  : takers.size() == 1 ? Text::tr("%1 leaves, nothing half done; %2 takes over.")
                                             .arg(called(h.name), names(takers))
                                       : Text::tr("%1 leaves, nothing half done; %2 take over.")
                                             .arg(called(h.name), names(takers)),
                  true}});
        }
    }
    std::ranges::stable_sort(all, [](const Moment& a, const Moment& b) {
        return std::pair{a.at, a.order} < std::pair{b.at, b.order};
    });
    std::vector<Block> out;
    for (auto& moment : all)
        out.push_back(std::move(moment.block));
    return out;
}

} // namespace bastewright::sheets
