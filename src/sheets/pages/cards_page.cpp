#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/card_pictures.h"
#include "sheets/task_words.h"
#include "sheets/words.h"
#include "ways/way.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

/// Who places the points of a zone.
QStringList placers(const SheetContext& c, std::size_t quilt, const Zone& zone) {
    QStringList letters;
    for (const auto& t : c.plan.tasks)
        if (t.job == int(quilt) && t.zone == zone.id && isFirstWork(t.kind))
            letters += c.crew.letters(t.people);
    letters.removeDuplicates();
    return letters;
}

std::vector<ZoneCard> zoneCards(const SheetContext& c, std::size_t quilt) {
    std::vector<ZoneCard> cards;
    const QuiltPlan& q = c.plan.quilts[quilt];
    for (const auto& pass : q.passes)
        for (const auto& id : pass.zones)
            if (const Zone* zone = findZone(q, id))
                cards.push_back(
                    {zoneWord(id), placers(c, quilt, *zone),
                     pointCounts(c.job(quilt), std::vector{zone}),
                     c.severalQuilts()
                         ? Text::tr("%1, pass %2").arg(c.quiltName(quilt)).arg(pass.number)
                         : Text::tr("Pass %1").arg(pass.number)});
    return cards;
}

std::vector<CornerMark> cornerMarks(const SheetContext& c, std::size_t quilt) {
    std::vector<CornerMark> marks;
    for (const auto& pass : c.plan.quilts[quilt].passes) {
        const Rect fresh = pass.fresh.bounds();
        for (const Side down : {Side::head, Side::foot})
            for (const Side across : {Side::left, Side::right}) {
                const Length x = across == Side::left ? fresh.x0 : fresh.x1;
                const Length y = down == Side::head ? fresh.y0 : fresh.y1;
                marks.push_back({down, across, QString::number(pass.number),
                                 Text::tr("%1 from the left").arg(length(x, c.unit())),
                                 Text::tr("%1 from the head").arg(length(y, c.unit()))});
            }
    }
    return marks;
}

/// Cards of one kind in rows with cut lines between them; a row is never divided.
template <class Card>
Flow rowsOf(const std::vector<Card>& cards, double width, const Block& repeat) {
    Flow flow;
    const auto perRow = std::max<std::size_t>(1, std::size_t(width / Card::kWidth));
    for (std::size_t i = 0; i < cards.size(); i += perRow) {
        const std::vector<Card> row(cards.begin() + std::ptrdiff_t(i),
                                    cards.begin() +
                                        std::ptrdiff_t(std::min(cards.size(), i + perRow)));
        flow.push_back({.height = Card::kHeight,
                        .repeat = std::make_shared<Block>(repeat),
                        .draw = [row](QPainter& p, QRectF at) {
                            QRectF box{at.topLeft(), QSizeF{Card::kWidth, Card::kHeight}};
                            for (const auto& card : row) {
                                drawCard(p, box, card);
                                box.translate(Card::kWidth, 0);
                            }
                        }});
    }
    return flow;
}

/// The true-scale line, and what to do where it does not come out.
Block checkLine(double width) {
    auto text = std::make_shared<TextBlock>(
        Text::tr("This line is 100 mm long. Where it is not, print again at 100 %, not fitted to "
                 "the page."),
        width - kCheckLine - 18, TextStyle{type::kSmall});
    return {.height = std::max(text->height(), 20.0) + 8,
            .keepWithNext = true,
            .draw = [text](QPainter& p, QRectF at) {
                drawCheckLine(p, at.topLeft() + QPointF{1, 12});
                text->draw(p, at.topLeft() + QPointF{kCheckLine + 18, 0});
            }};
}

} // namespace

Flow cardPages(const SheetContext& c, std::size_t quilt) {
    const auto zones = zoneCards(c, quilt);
    if (zones.empty())
        return {};
    const Block line = checkLine(c.width);
    Flow flow{title(Text::tr("Cards for the zones"),
                    Text::tr("%1 · cut out; lay each on its zone with the heavy corner on the "
                             "zone's head-left corner; take it away before pinning")
                        .arg(c.quiltName(quilt)),
                    c.width)};
    flow.front().newPage = true;
    flow.push_back(line);
    flow += rowsOf(zones, c.width, line);

    flow.push_back(title(Text::tr("Marks for the corners"),
                         Text::tr("%1 · four for each pass: pin them so that the heavy corner lies "
                                  "on the corner of what is basted in it")
                             .arg(c.quiltName(quilt)),
                         c.width));
    flow.back().newPage = true;
    flow.push_back(line);
    const Job& job = c.job(quilt);
    if (job.basting.spacing <= kLongestGauge)
        flow.push_back({.height = kGaugeHeight + 14,
                        .keepWithNext = true,
                        .draw = [&job, unit = c.unit()](QPainter& p, QRectF at) {
                            drawGauge(p, at.topLeft(), job.basting.spacing, unit);
                        }});
    flow += rowsOf(cornerMarks(c, quilt), c.width, line);
    return flow;
}

} // namespace bastewright::sheets
