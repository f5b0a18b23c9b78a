#include "sheets/pages/pass_picture.h"

#include "sheets/columns.h"
#include "sheets/hold_order.h"
#include "sheets/ink.h"
#include "sheets/pages/lead_words.h"
#include "sheets/pictures/mapping.h"
#include "sheets/pictures/quilt_picture.h"
#include "sheets/pictures/table_picture.h"
#include "sheets/task_words.h"
#include "sheets/text_block.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

constexpr double kPanel = 110; // least width of the column of facts
constexpr double kBesidePicture = 14;
constexpr double kShift = 96; // height of the picture of the shift

using Facts = std::vector<std::pair<QString, QString>>;

const Task* shiftInto(const SheetContext& c, std::size_t q, int pass) {
    const auto found = std::ranges::find_if(c.plan.tasks, [&](const Task& t) {
        return t.kind == TaskKind::shift && t.job == int(q) && t.pass == pass;
    });
    return found == c.plan.tasks.end() ? nullptr : &*found;
}

/// As the crow flies, to the eighth of an inch.
Length distance(Vec shift) {
    return Length::nearestInches(std::hypot(shift.dx.in(), shift.dy.in()));
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
    return listed(words);
}

/// What hangs and what rests on something, by sides.
QStringList beyondWords(const Pass& pass) {
    QStringList hangs, chairs, table;
    for (const Side side : kSides) {
        if (pass.beyond[side] == Beyond::hangs)
            hangs << sideName(side);
        if (pass.beyond[side] == Beyond::chairs)
            chairs << sideName(side);
        if (pass.beyond[side] == Beyond::spareTable)
            table << sideName(side);
    }
    QStringList out;
    if (!hangs.isEmpty())
        out << Text::tr("%1: hangs, its weight helps").arg(listed(hangs));
    if (!chairs.isEmpty())
        out << Text::tr("%1: rests on chairs").arg(listed(chairs));
    if (!table.isEmpty())
        out << Text::tr("%1: rests on the spare table").arg(listed(table));
    return out;
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
    rows.push_back({Text::tr("Smooth toward"), sidesList(pass.smoothTowards)});
    QStringList beyond = beyondWords(pass);
    for (const auto& roll : pass.rolls)
        beyond << rollWords(roll, c.unit());
    for (const QString& line : beyond)
        rows.push_back({&line == &beyond.front() ? Text::tr("Beyond the table") : QString{}, line});
    return rows;
}

const TablePicture kShow{
    .layers = true, .holds = true, .rolls = true, .smoothing = true, .counts = true};

QSizeF sizeOf(const SheetContext& c, std::size_t q, const Pass& pass, double tallest) {
    constexpr double kAnyScale = 1e6;
    return pictureSize(c.plan.quilts[q], pass, kShow, kAnyScale, {c.width, tallest});
}

/// True where the picture leaves no room for a column of facts: they stand below it.
bool isWide(const SheetContext& c, QSizeF picture) {
    return c.width - picture.width() - kBesidePicture < kPanel;
}

/// Blocks below one another.
void drawDown(QPainter& p, QPointF at, const Flow& flow, double width) {
    double y = at.y();
    for (const auto& block : flow) {
        y += block.before;
        block.draw(p, {at.x(), y, width, block.height});
        y += block.height;
    }
}

/// Names and values in a column.
Flow factRows(const SheetContext& c, std::size_t q, const Pass& pass, bool shifted, double width) {
    Facts facts = shifted ? shiftFacts(c, q, pass) : Facts{};
    for (auto& fact : otherFacts(c, pass))
        facts.push_back(std::move(fact));
    Flow flow;
    for (const auto& [name, value] : facts) {
        std::vector<Span> words{{value}};
        if (!name.isEmpty())
            words.insert(words.begin(), {name + QStringLiteral(": "), true});
        flow.push_back(paragraph(words, width, type::kBody, 3));
    }
    return flow;
}

/// The facts, and the picture of the shift above them, or beside them where there is room.
Flow panel(const SheetContext& c, std::size_t q, const Pass& pass, double width) {
    constexpr double kBroad = 250, kSmallShift = 96;
    const QuiltPlan& quilt = c.plan.quilts[q];
    const Pass* before = findPass(quilt, pass.number - 1);
    if (!before)
        return factRows(c, q, pass, false, width);
    const bool broad = width >= kBroad;
    const QSizeF size{broad ? kSmallShift : kPanel, kShift - 6};
    const QString by = length(distance(pass.shift), c.unit());
    const auto shift = [=, &quilt, &pass](QPainter& p, QPointF at) {
        drawShift(p, {at, size}, quilt, *before, pass, by);
    };
    if (!broad) {
        Flow flow{
            {.height = kShift, .draw = [=](QPainter& p, QRectF at) { shift(p, at.topLeft()); }}};
        flow += factRows(c, q, pass, true, width);
        return flow;
    }
    const auto rows =
        std::make_shared<Flow>(factRows(c, q, pass, true, width - kSmallShift - kBesidePicture));
    return {{.height = std::max(kShift, heightOf(*rows)), .draw = [=](QPainter& p, QRectF at) {
                 drawDown(p, at.topLeft(), *rows, width - kSmallShift - kBesidePicture);
                 shift(p, {at.right() - kSmallShift, at.top()});
             }}};
}

} // namespace

double besidePicture(const SheetContext& c, std::size_t q, const Pass& pass, double tallest) {
    const QSizeF picture = sizeOf(c, q, pass, tallest);
    return isWide(c, picture) ? c.width : c.width - picture.width() - kBesidePicture;
}

Block passPicture(const SheetContext& c, std::size_t q, const Pass& pass, double tallest,
                  Flow more) {
    const QuiltPlan& quilt = c.plan.quilts[q];
    const QSizeF size = sizeOf(c, q, pass, tallest);
    const double width = besidePicture(c, q, pass, tallest);
    const auto beside = std::make_shared<Flow>(panel(c, q, pass, width));
    *beside += std::move(more);
    const bool below = isWide(c, size);
    const double facts = heightOf(*beside), apart = 8;
    return {.height = below ? size.height() + apart + facts : std::max(size.height(), facts),
            .before = 4,
            .keepWithNext = true,
            .draw = [=, &quilt, &pass, photo = c.photo(q)](QPainter& p, QRectF at) {
                TablePicture show = kShow;
                show.photo = photo;
                const double in = below ? (at.width() - size.width()) / 2 : 0;
                drawTable(p, {at.topLeft() + QPointF{in, 0}, size}, quilt, pass, show);
                drawDown(p,
                         {at.right() - width, below ? at.top() + size.height() + apart : at.top()},
                         *beside, width);
            }};
}

} // namespace bastewright::sheets
