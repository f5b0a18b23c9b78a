#include "sheets/pages/pass_picture.h"

#include "sheets/hold_order.h"
#include "sheets/ink.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/quilt_picture.h"
#include "sheets/pictures/table_picture.h"
#include "sheets/task_words.h"
#include "sheets/text_block.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kPanel = 148; // width of the column of facts
constexpr double kShift = 104; // height of the picture of the shift
constexpr double kTallest = 372;

using Facts = std::vector<std::pair<QString, QString>>;

const Task* shiftInto(const SheetContext& c, std::size_t q, int pass) {
    const auto found = std::ranges::find_if(c.plan.tasks, [&](const Task& t) {
        return t.kind == TaskKind::shift && t.job == int(q) && t.pass == pass;
    });
    return found == c.plan.tasks.end() ? nullptr : &*found;
}

QString holdsWords(const Pass& pass) {
    int clamps = 0, tapes = 0;
    for (const auto& h : holdOrder(pass))
        ++(h.kind == Hold::Kind::clamp ? clamps : tapes);
    QStringList words;
    if (clamps > 0)
        words << (clamps == 1 ? Text::tr("1 clamp") : Text::tr("%1 clamps").arg(clamps));
    if (tapes > 0)
        words << (tapes == 1 ? Text::tr("1 tape") : Text::tr("%1 tapes").arg(tapes));
    return words.isEmpty() ? QString{}
                           : Text::tr("%1, in the order of the numbers").arg(listed(words));
}

QString rollWords(const Roll& roll, Unit unit) {
    if (roll.folded)
        return Text::tr("%1: %2 folded on a support")
            .arg(sideName(roll.side), length(roll.rolled, unit));
    return Text::tr("%1: roll up %2, %3 thick; %4 clips of %5")
        .arg(sideName(roll.side), length(roll.rolled, unit), length(roll.diameter, unit))
        .arg(roll.clips)
        .arg(length(roll.clipHolds, unit));
}

Facts shiftFacts(const SheetContext& c, std::size_t q, const Pass& pass) {
    const Task* shift = shiftInto(c, q, pass.number);
    const QString hands =
        pass.liftPeople == 1 ? Text::tr("1 person") : Text::tr("%1 people").arg(pass.liftPeople);
    return {{Text::tr("Shift"), shiftWords(pass.shift, c.unit())},
            {Text::tr("Lift together"),
             shift && !shift->people.empty() ? c.crew.spoken(shift->people) : hands}};
}

Facts otherFacts(const SheetContext& c, const Pass& pass) {
    Facts rows;
    if (const QString holds = holdsWords(pass); !holds.isEmpty())
        rows.push_back({Text::tr("Hold"), holds});
    rows.push_back({Text::tr("Smooth towards"), sidesList(pass.smoothTowards)});
    for (const auto& roll : pass.rolls)
        rows.push_back({&roll == &pass.rolls.front() ? Text::tr("Beyond the table") : QString{},
                        rollWords(roll, c.unit())});
    return rows;
}

/// Names over values, and above them the picture of the shift where there is one.
Block panel(const SheetContext& c, std::size_t q, const Pass& pass) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const Pass* before = findPass(quilt, pass.number - 1);
    Facts facts = before ? shiftFacts(c, q, pass) : Facts{};
    for (auto& fact : otherFacts(c, pass))
        facts.push_back(std::move(fact));

    auto texts = std::make_shared<std::vector<std::pair<double, TextBlock>>>();
    double y = before ? kShift : 0;
    for (const auto& [name, value] : facts) {
        if (!name.isEmpty()) {
            texts->emplace_back(
                y, TextBlock{name, kPanel,
                             TextStyle{.size = type::kHead, .bold = true, .ink = ink::kQuiet}});
            y += texts->back().second.height();
        }
        texts->emplace_back(y, TextBlock{value, kPanel, TextStyle{type::kBody}});
        y += texts->back().second.height() + 8;
    }
    return {.height = y, .draw = [texts, before, &quilt, &pass](QPainter& p, QRectF at) {
                if (before)
                    drawShift(p, {at.topLeft(), QSizeF{kPanel, kShift - 8}}, quilt, *before, pass);
                for (const auto& [down, text] : *texts)
                    text.draw(p, at.topLeft() + QPointF{0, down});
            }};
}

} // namespace

Block passPicture(const SheetContext& c, std::size_t q, const Pass& pass) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const double width = c.width - kPanel - 14;
    const TablePicture show{
        .layers = true, .holds = true, .rolls = true, .smoothing = true, .counts = true};
    const double height = pictureHeight(quilt, pass, show, width, kTallest);
    const auto facts = std::make_shared<Block>(panel(c, q, pass));
    return {.height = std::max(height, facts->height),
            .before = 4,
            .keepWithNext = true,
            .draw = [=, &quilt, &pass](QPainter& p, QRectF at) {
                drawTable(p, {at.topLeft(), QSizeF{width, height}}, quilt, pass, show);
                facts->draw(p, {at.right() - kPanel, at.top(), kPanel, facts->height});
            }};
}

} // namespace bastewright::sheets
