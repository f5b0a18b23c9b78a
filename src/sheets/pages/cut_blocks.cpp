#include "sheets/pages/cut_blocks.h"

#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pictures/layer_pictures.h"
#include "sheets/pictures/mapping.h"
#include "sheets/set_text.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>
#include <map>

namespace bastewright::sheets {
namespace {

Block cutHead(const SheetContext& c, std::size_t q, const QString& words, double width) {
    const QString text = c.severalQuilts() ? Text::tr("%1: %2").arg(c.quiltName(q), words) : words;
    const auto block = set(text, width, serif(type::kCheck));
    return {.height = block->height() + 4,
            .before = 12,
            .keepWithNext = true,
            .draw = [=](QPainter& p, QRectF at) {
                block->draw(p, at.topLeft());
                rule(p, at.bottomLeft() - QPointF{0, 1}, width);
            }};
}

Block smallPrint(const std::vector<Span>& words, double width, double before = 4) {
    const auto text = set(words, width, closeText(type::kSmall));
    return {.height = text->height(), .before = before, .draw = [text](QPainter& p, QRectF at) {
                text->draw(p, at.topLeft());
            }};
}

Block smallPrint(const QString& words, double width, double before = 4) {
    return smallPrint(std::vector<Span>{{words}}, width, before);
}

/// "1: 58 × 96 in · 2a: 6 × 33 in": in the order of cutting, across and along the fabric.
std::vector<Span> cutsOf(const SheetContext& c, const BackingPlan& plan,
                         const std::string& fabric) {
    std::vector<Span> out;
    int number = 0;
    for (const auto& cut : plan.cuts) {
        if (cut.fabric != fabric)
            continue;
        if (!out.empty())
            out.push_back({Text::tr(" · ")});
        out.push_back({Text::tr("%1.").arg(++number) + QChar{0x00A0}, true});
        out.push_back({Text::tr("piece %1, %2")
                           .arg(QString::fromStdString(cut.piece),
                                size({cut.onCloth.width(), cut.onCloth.length()}, c.unit()))});
    }
    return out;
}

/// The number a panel's name begins with; lengths of one strip have one number.
std::string numberOf(const BackingPanel& panel) {
    return panel.name.substr(0, panel.name.find_first_not_of("0123456789"));
}

bool endToEnd(const Rect& a, const Rect& b) {
    const bool stacked = a.x0 == b.x0 && a.x1 == b.x1 && (a.y1 == b.y0 || b.y1 == a.y0);
    const bool beside = a.y0 == b.y0 && a.y1 == b.y1 && (a.x1 == b.x0 || b.x1 == a.x0);
    return stacked || beside;
}

/// "First sew 2a, 2b and 2c end to end; then the panels as drawn."
QString sewWords(const BackingPlan& plan) {
    QStringList first;
    std::map<std::string, std::vector<const BackingPanel*>> strips;
    for (const auto& panel : plan.panels)
        strips[numberOf(panel)].push_back(&panel);
    for (const auto& [number, panels] : strips) {
        QStringList joined;
        for (const BackingPanel* a : panels)
            if (std::ranges::any_of(panels, [&](const BackingPanel* b) {
                    return a != b && endToEnd(a->area, b->area);
                }))
                joined << QString::fromStdString(a->name);
        if (!joined.isEmpty())
            first << Text::tr("First sew %1 end to end.").arg(listed(joined));
    }
    if (plan.panels.size() == 1)
        return Text::tr("One piece, no seam.");
    first << Text::tr("Then the panels as drawn.");
    return first.join(QChar::Space);
}

Block cutPicture(double height, std::function<void(QPainter&, QRectF)> draw) {
    return {.height = height, .before = 4, .keepWithNext = true, .draw = std::move(draw)};
}

} // namespace

Flow cutBacking(const SheetContext& c, std::size_t quilt, double width, double pictures) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (!q.backing || q.backing->panels.empty())
        return {};
    const BackingPlan& plan = *q.backing;
    Flow flow{cutHead(c, quilt, Text::tr("Cut the backing"), width)};
    const double squaring = c.job(quilt).backing.squaring.in();
    for (const ClothLength& cloth : clothsOf(c.job(quilt), plan)) {
        flow.push_back(smallPrint(
            {{cloth.fabric.empty() ? Text::tr("Fabric") : QString::fromStdString(cloth.fabric),
              true},
             {Text::tr(", %1 between selvages").arg(length(cloth.width, c.unit()))}},
            width, 5));
        flow.back().keepWithNext = true;
        flow.push_back(cutPicture(heightFor(extentOf(cloth), width, 88 * pictures) + 24,
                                  [=, &plan, unit = c.unit()](QPainter& p, QRectF at) {
                                      drawCloth(p, at, plan, cloth, unit);
                                  }));
        flow.push_back(smallPrint(cutsOf(c, plan, cloth.fabric), width, 2));
    }
    flow.push_back(smallPrint(squaring > 0
                                  ? Text::tr("Square the cut ends, cut off the selvages; then "
                                             "in the order of the numbers. Cut away from you, "
                                             "close the cutter when you put it down.")
                                  : Text::tr("Cut off the selvages; then in the order of the "
                                             "numbers. Cut away from you, close the cutter "
                                             "when you put it down."),
                              width));
    flow.push_back(cutHead(
        c, quilt, Text::tr("Sew the backing, %1").arg(size(q.layers.backing, c.unit())), width));
    const Rect whole{Length{}, Length{}, q.layers.backing.width, q.layers.backing.length};
    flow.push_back(cutPicture(heightFor(whole, width * 0.7, 150 * pictures) + 18,
                              [&plan, &q, unit = c.unit()](QPainter& p, QRectF at) {
                                  drawBacking(p, at, plan, q, unit);
                              }));
    flow.push_back(
        smallPrint(sewWords(plan) + QChar::Space +
                       Text::tr("Seams %1, pressed open. The triangles are the middles of "
                                "the sides: mark them with a thread.")
                           .arg(length(c.job(quilt).backing.seam, c.unit())),
                   width));
    return flow;
}

Flow cutBatting(const SheetContext& c, std::size_t quilt, double width, double pictures) {
    const QuiltPlan& q = c.plan.quilts[quilt];
    if (!q.batting)
        return {};
    const BattingPlan& plan = *q.batting;
    const QString to = size(q.layers.batting, c.unit());
    const bool joined = plan.pieces.size() > 1;
    Flow flow{cutHead(c, quilt,
                      joined ? Text::tr("Join the batting, %1").arg(to)
                             : Text::tr("Trim the batting to %1").arg(to),
                      width)};
    if (joined) {
        const Rect whole{Length{}, Length{}, q.layers.batting.width, q.layers.batting.length};
        flow.push_back(cutPicture(heightFor(whole, width * 0.7, 150 * pictures) + 4,
                                  [&plan, &q, unit = c.unit()](QPainter& p, QRectF at) {
                                      drawBatting(p, at, plan, q, unit);
                                  }));
    }
    QStringList cuts;
    const auto names = pieceNames(plan);
    for (std::size_t i = 0; joined && i < plan.pieces.size(); ++i)
        if (const auto& piece = plan.pieces[i]; !piece.onPiece.empty())
            cuts << Text::tr("%1: %2").arg(
                names[i], size({piece.onPiece.width(), piece.onPiece.length()}, c.unit()));
    for (const BattingSplit& s : plan.splits)
        cuts << (s.acrossWidth ? Text::tr("%1 in two, at %2 of its width")
                               : Text::tr("%1 in two, at %2 of its length"))
                    .arg(QString::fromStdString(s.name), length(s.at, c.unit()));
    if (!cuts.isEmpty())
        flow.push_back(smallPrint({{Text::tr("Cut first:") + QChar::Space, true},
                                   {Text::tr("%1.").arg(cuts.join(Text::tr("; ")))}},
                                  width));
    int number = 0;
    std::vector<Span> joins;
    for (const auto& join : plan.joins) {
        const bool down = join.from.x == join.to.x;
        if (!joins.empty())
            joins.push_back({Text::tr(" · ")});
        joins.push_back({Text::tr("%1.").arg(++number) + QChar{0x00A0}, true});
        joins.push_back({down ? Text::tr("%1 from the left, %2 long")
                                    .arg(length(join.from.x, c.unit()),
                                         length(abs(join.to.y - join.from.y), c.unit()))
                              : Text::tr("%1 from the head, %2 long")
                                    .arg(length(join.from.y, c.unit()),
                                         length(abs(join.to.x - join.from.x), c.unit()))});
    }
    if (!joins.empty()) {
        flow.push_back(smallPrint(joins, width));
        flow.push_back(
            smallPrint(Text::tr("Overlap the two, cut once through both, peel the strips "
                                "away, bring the edges together with no gap, then join."),
                       width));
    }
    if (!plan.joinCost.empty())
        flow.push_back(smallPrint(language::said(plan.joinCost), width));
    else if (plan.strip > Length{})
        flow.push_back(smallPrint(
            Text::tr("Bring %1 of joining strip.").arg(length(plan.strip, c.unit())), width));
    QStringList left;
    for (const auto& name : plan.leftOver)
        left << language::said(name);
    if (!left.isEmpty())
        flow.push_back(smallPrint(Text::tr("Left over: %1.").arg(listed(left)), width));
    flow.push_back(
        smallPrint(Text::tr("Let it rest flat overnight. Mark the middle of each side."), width));
    return flow;
}

} // namespace bastewright::sheets
