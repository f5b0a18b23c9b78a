#include "language/said.h"
#include "plan/supply.h"
#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/cut_blocks.h"
#include "sheets/pages/pages.h"
#include "sheets/set_text.h"
#include "sheets/two_columns.h"
#include "sheets/words.h"

#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace bastewright::sheets {
namespace {

constexpr double kBringGutter = 18; // as between the columns of what follows

QString amount(double n, Supply::Kind kind, Unit unit) {
    if (isSaidInEighths(kind, unit))
        return language::figure(QString::fromStdString(inEighths(n)));
    return QLocale{}.toString(n, 'f', std::abs(n - std::round(n)) < 0.005 ? 0 : 2);
}

/// "544", "5⅜ yd"; of pins the unit is how long they are, which stands behind the name.
QString supplyFigure(const Supply& s, double n, Unit unit) {
    const QString count = amount(n, s.kind, unit);
    return s.unit.empty() || s.kind == Supply::Kind::pins
               ? count
               : count + QChar{0x00A0} + language::said(s.unit);
}

QString supplyName(const Supply& s) {
    return s.kind == Supply::Kind::pins && !s.unit.empty()
               ? Text::tr("%1, %2").arg(language::said(s.item), language::said(s.unit))
               : language::said(s.item);
}

/// What must still be got, the headline of the sheet.
QString toGet(const Plan& plan) {
    QStringList out;
    for (const auto& s : plan.supplies)
        if (s.buy > 0)
            out << Text::tr("%1 %2").arg(supplyFigure(s, s.buy, plan.unit), language::said(s.item));
    return out.isEmpty() ? Text::tr("Nothing: all of it is there.") : out.join(Text::tr(", "));
}

Block bringHead(const SheetContext& c) {
    const auto title = set(Text::tr("Bring and cut"), c.width, serif(type::kTitle));
    TextStyle one{type::kBody};
    one.maxLines = 2;
    const auto below = set(c.sessionName(), c.width, one);
    const auto get =
        set(std::vector<Span>{{Text::tr("Still to get:") + QChar::Space, true}, {toGet(c.plan)}},
            c.width, TextStyle{type::kBody});
    return {.height = title->height() + below->height() + get->height() + 12,
            .keepWithNext = true,
            .newPage = true,
            .draw =
                [=](QPainter& p, QRectF at) {
                    double y = at.top();
                    title->draw(p, {at.left(), y});
                    below->draw(p, {at.left(), y += title->height()});
                    get->draw(p, {at.left(), y + below->height() + 4});
                    rule(p, at.bottomLeft() - QPointF{0, 1}, at.width(), ink::kLine);
                },
            .bookmark = Text::tr("Bring and cut")};
}

/// A box, how many of what, how many of them to get, who brings it.
Block supplyRow(const Supply& s, Unit unit, double width) {
    constexpr double kBox = 14, kNeed = 48, kGet = 48, kWho = 36;
    const double nameAt = kBox + 6 + kNeed + 8, room = width - nameAt - kGet - kWho - 12;
    TextStyle right{type::kBody, true};
    right.align = Qt::AlignRight;
    const auto need = set(supplyFigure(s, s.need, unit), kNeed, right);
    const auto get = set(s.buy > 0 ? supplyFigure(s, s.buy, unit) : QString{}, kGet, right);
    const auto name = set(supplyName(s), room, TextStyle{type::kBody});
    const double height = std::max({need->height(), get->height(), name->height(), kBox}) + 7;
    return {.height = height, .draw = [=](QPainter& p, QRectF at) {
                tickBox(p, {at.left() + 1, at.top() + 3, kBox, kBox});
                need->draw(p, {at.left() + kBox + 6, at.top() + 3});
                name->draw(p, {at.left() + nameAt, at.top() + 3});
                get->draw(p, {at.right() - kWho - 8 - kGet, at.top() + 3});
                rule(p, {at.right() - kWho, at.top() + 3 + kBox}, kWho);
            }};
}

Block listHead(double width) {
    const auto title = set(Text::tr("Bring"), width, serif(type::kCheck));
    const auto get = set(Text::tr("get"), 60, quiet(type::kHead));
    const auto who = set(Text::tr("who"), 60, quiet(type::kHead));
    return {
        .height = title->height() + 6, .keepWithNext = true, .draw = [=](QPainter& p, QRectF at) {
            title->draw(p, at.topLeft());
            get->draw(p, {at.right() - 44 - get->naturalWidth(), at.top() + 4});
            who->draw(p, {at.right() - who->naturalWidth(), at.top() + 4});
            rule(p, at.bottomLeft() - QPointF{0, 2}, at.width(), ink::kThin);
        }};
}

Flow bringList(const SheetContext& c, double width) {
    Flow flow{listHead(width)};
    for (const auto& s : c.plan.supplies)
        flow.push_back(supplyRow(s, c.plan.unit, width));
    QStringList more;
    for (const auto& h : c.session.setting.helpers)
        if (h.seated)
            more << Text::tr("a chair for %1").arg(QString::fromStdString(h.name));
    if (std::ranges::any_of(c.plan.quilts, restsOnChairs))
        more << Text::tr("chairs under what hangs");
    const auto brings = [&](Supply::Kind kind) {
        return std::ranges::count(c.plan.supplies, kind, &Supply::kind) > 0;
    };
    const bool pins = brings(Supply::Kind::pins), needles = brings(Supply::Kind::needles);
    if (pins)
        more << Text::tr("a bowl for everybody's pins");
    more << Text::tr("these sheets");
    if (pins)
        more << Text::tr("a magnet for lost pins*");
    else if (needles)
        more << Text::tr("a magnet for lost needles*");
    flow.push_back(paragraph(
        {{Text::tr("And:") + QChar::Space, true}, {Text::tr("%1.").arg(more.join(Text::tr(", ")))}},
        width, type::kSmall, 6));
    for (const auto& s : c.plan.supplies)
        if (!s.note.empty())
            flow.push_back(paragraph(
                {{language::said(s.item) + QStringLiteral(": "), true}, {language::said(s.note)}},
                width, type::kSmall, 5));
    if (pins)
        flow.push_back(paragraph(Text::tr("Pins with a tenth to spare. Opened in advance they save "
                                          "the first minutes."),
                                 width, type::kHead, 6));
    if (pins || needles)
        flow.push_back(paragraph(
            Text::tr("* Keep it away from pacemakers and other implants, and from electronics."),
            width, type::kHead, 2));
    return flow;
}

/// Two flows beside each other as far as they fit; what is left of the right one goes on in two
/// columns. The left one fits on a page.
Flow sideBySidePages(const Flow& left, double leftWidth, const Flow& right, double room) {
    auto first = std::make_shared<std::vector<PlacedPage>>();
    Flow rest;
    for (const Flow* flow : {&left, &right}) {
        auto pages = paginate(*flow, room);
        const std::size_t taken = pages.empty() ? 0 : pages.front().size();
        first->push_back(pages.empty() ? PlacedPage{} : std::move(pages.front()));
        rest.insert(rest.end(), flow->begin() + std::ptrdiff_t(taken), flow->end());
    }
    double high = 0;
    for (const PlacedPage& column : *first)
        if (!column.empty())
            high = std::max(high, column.back().y + column.back().block.height);
    Flow out{{.height = high, .draw = [=](QPainter& p, QRectF at) {
                  double x = at.left(), width = leftWidth;
                  for (const PlacedPage& column : *first) {
                      for (const Placed& one : column)
                          one.block.draw(p, {x, at.top() + one.y, width, one.block.height});
                      x += leftWidth + kBringGutter;
                      width = at.width() - leftWidth - kBringGutter;
                  }
              }}};
    if (!rest.empty()) {
        out.push_back(inTwoColumns(std::move(rest)));
        out.back().before = 8;
    }
    return out;
}

} // namespace

Flow bringPage(const SheetContext& c) {
    const Block head = bringHead(c);
    const double room = c.height - head.height - 1;
    const double leftWidth = c.width * 0.54, rightWidth = c.width - leftWidth - kBringGutter;
    const Flow list = bringList(c, leftWidth);
    const auto set = [&](double pictures) {
        Flow cutting;
        for (std::size_t q = 0; q < c.plan.quilts.size(); ++q) {
            cutting += cutBacking(c, q, rightWidth, pictures);
            cutting += cutBatting(c, q, rightWidth, pictures);
        }
        if (!cutting.empty())
            cutting.front().before = 0;
        Flow flow{head};
        if (paginate(list, room).size() == 1) {
            flow += sideBySidePages(list, leftWidth, cutting, room);
        } else { // so much to bring that it runs over: one after the other
            flow += bringList(c, c.width);
            flow.push_back(inTwoColumns(std::move(cutting)));
        }
        return flow;
    };
    Flow best = set(1);
    for (const double pictures : {0.85, 0.7, 0.55})
        if (Flow flow = set(pictures);
            paginate(flow, c.height).size() < paginate(best, c.height).size())
            best = std::move(flow);
    return best;
}

} // namespace bastewright::sheets
