#include "sheets/pages/lead_calls.h"

#include "sheets/calls.h"
#include "sheets/ink.h"
#include "sheets/pages/helper_calls.h"
#include "sheets/set_text.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

/// Passes that go by the same calls.
struct CallsOfPasses {
    std::vector<Call> calls;
    std::vector<const Way*> ways;
    std::vector<int> passes; ///< empty: all
};

/// As the passes come; of a quilt that is basted in one way it is one.
std::vector<CallsOfPasses> callsByPasses(const SheetContext& c, std::size_t q) {
    std::vector<CallsOfPasses> out;
    for (const Pass& pass : c.plan.quilts[q].passes) {
        const auto ways = c.ways(q, pass.number);
        auto same = std::ranges::find(out, ways, &CallsOfPasses::ways);
        if (same == out.end()) {
            out.push_back({callsOf(ways), ways, {}});
            same = out.end() - 1;
        }
        same->passes.push_back(pass.number);
    }
    if (out.size() == 1)
        out.front().passes.clear();
    return out;
}

SetText callsTitle(const SheetContext& c, const CallsOfPasses& of) {
    const auto n = of.calls.size();
    const QString words =
        of.passes.empty() ? Text::tr("%1 calls a pass. Nobody goes on before you call.").arg(n)
        : of.passes.size() == 1
            ? Text::tr("Pass %1: %2 calls. Nobody goes on before you call.")
                  .arg(of.passes.front())
                  .arg(n)
            : Text::tr("Passes %1: %2 calls each. Nobody goes on before you call.")
                  .arg(numbers(of.passes))
                  .arg(n);
    return set(words, c.width, serif(type::kCheck));
}

/// The calls from left to right, each with its sign above its words.
Block callStrip(const SheetContext& c, const CallsOfPasses& of) {
    struct Column {
        Sign sign;
        SetText name, words;
    };
    constexpr double kSign = 24, kApart = 7;
    const auto& all = of.calls;
    const double each = (c.width - kApart * double(all.size() - 1)) / double(all.size());
    auto columns = std::make_shared<std::vector<Column>>();
    QStringList said;
    for (const Call call : all)
        said << callName(call);
    const TextStyle name =
        serif(sizeForWords(said, each, type::kBody, type::kLeast), Qt::AlignLeft, 2);
    double names = 0, words = 0;
    for (const Call call : all) {
        columns->push_back({signOf(call), set(callName(call), each, name),
                            set(callForLead(call, of.ways), each, closeText(type::kLeast))});
        names = std::max(names, columns->back().name->height());
        words = std::max(words, columns->back().words->height());
    }
    const auto title = callsTitle(c, of);
    const double top = title->height() + 6;
    return {.height = top + kSign + 3 + names + words + 7,
            .before = 7,
            .draw = [=](QPainter& p, QRectF at) {
                title->draw(p, at.topLeft());
                for (std::size_t i = 0; i < columns->size(); ++i) {
                    const double x = at.left() + double(i) * (each + kApart);
                    const double y = at.top() + top;
                    const Column& column = (*columns)[i];
                    drawSign(p, {x, y, kSign, kSign}, column.sign, ink::kDark);
                    if (i + 1 < columns->size())
                        arrow(p, {x + kSign + 8, y + kSign / 2},
                              {x + each + kApart - 6, y + kSign / 2}, ink::kThin);
                    column.name->draw(p, {x, y + kSign + 3});
                    column.words->draw(p, {x, y + kSign + 3 + names});
                }
                rule(p, at.bottomLeft(), at.width(), ink::kLine);
            }};
}

/// The same one after another in lines, where there is less room: sign, name and words of a call
/// stay together.
Block callLines(const SheetContext& c, const CallsOfPasses& of) {
    struct Item {
        Sign sign;
        SetText words;
        QPointF at;
    };
    constexpr double kSign = 12, kBeside = 3, kApart = 10, kBetween = 2;
    const auto& all = of.calls;
    const auto title = callsTitle(c, of);
    auto items = std::make_shared<std::vector<Item>>();
    double x = 0, y = title->height() + 4, line = 0;
    for (const Call call : all) {
        const auto words =
            set({{callName(call) + QChar::Space, true}, {callForLead(call, of.ways)}},
                c.width - kSign - kBeside, closeText(type::kLeast));
        const double width = kSign + kBeside + words->naturalWidth();
        if (x > 0 && x + width > c.width) {
            x = 0;
            y += line + kBetween;
            line = 0;
        }
        items->push_back({signOf(call), words, {x, y}});
        line = std::max({line, kSign, words->height()});
        x += width + kApart;
    }
    return {.height = y + line + 6, .before = 7, .draw = [=](QPainter& p, QRectF at) {
                title->draw(p, at.topLeft());
                for (const Item& item : *items) {
                    const QPointF corner = at.topLeft() + item.at;
                    drawSign(p, {corner, QSizeF{kSign, kSign}}, item.sign, ink::kDark);
                    item.words->draw(p, corner + QPointF{kSign + kBeside, 0});
                }
                rule(p, at.bottomLeft(), at.width(), ink::kLine);
            }};
}

} // namespace

Flow callsOfQuilt(const SheetContext& c, std::size_t quilt, bool close) {
    const auto all = callsByPasses(c, quilt);
    Flow flow;
    for (const CallsOfPasses& of : all)
        flow.push_back(close || all.size() > 1 ? callLines(c, of) : callStrip(c, of));
    return flow;
}

} // namespace bastewright::sheets
