#include "language/said.h"
#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/pictures/ribbon_pictures.h"
#include "sheets/words.h"
#include "ways/point_words.h"
#include "ways/way.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

constexpr double kRibbon = 78;    ///< height of a ribbon's drawing
constexpr double kPicture = 0.36; ///< most of the page's height
constexpr double kLeast = 0.2;    ///< least of it

/// Marks in a line: '1 at 1½ in, 2 at 6 in …'.
QString list(const std::vector<Length>& marks, Unit unit) {
    QStringList out;
    for (const Length at : marks)
        out << length(at, unit);
    return out.join(QStringLiteral(" · "));
}

/// Picture and ribbons; the picture takes what the rest leaves of the page, so that all of it
/// stands on one. `above`: height of what stands above.
Flow rowsFlow(const SheetContext& c, std::size_t q, double above) {
    constexpr double kBefore = 4;
    const PinRows& rows = *c.plan.quilts[q].rows;
    const bool across = rows.along == PinRows::Along::width;
    Flow flow;
    const auto ribbon = [&](const QString& title, auto draw) {
        flow.push_back(heading(title, c.width));
        flow.push_back({.height = kRibbon, .draw = draw});
    };
    const Unit unit = c.unit();
    ribbon(across ? Text::tr("Ribbon along a row, from the left edge")
                  : Text::tr("Ribbon along a row, from the head"),
           [&rows, unit](QPainter& p, QRectF at) { drawMarksRibbon(p, at, rows, unit); });
    const auto marks = [&](const QString& which, const std::vector<Length>& of, double before) {
        flow.push_back(paragraph({{which, true}, {list(of, unit)}}, c.width, type::kBody, before));
    };
    if (rows.ribbons.odd == rows.ribbons.even) {
        marks(Text::tr("All rows: "), rows.ribbons.odd, 0);
    } else {
        marks(Text::tr("Odd rows (black): "), rows.ribbons.odd, 0);
        marks(Text::tr("Even rows (white): "), rows.ribbons.even, 2);
    }
    ribbon(across ? Text::tr("Ribbon down the side, from the head: where the rows lie")
                  : Text::tr("Ribbon along the head, from the left: where the rows lie"),
           [&rows, unit](QPainter& p, QRectF at) { drawSideRibbon(p, at, rows, unit); });
    flow.push_back(paragraph({{Text::tr("Rows: "), true}, {list(rows.ribbons.side, unit)}}, c.width,
                             type::kBody, 0));
    const double left = c.height - above - heightOf(flow) - kBefore;
    const Rect top = topRect(c.job(q).top);
    const auto seams = std::make_shared<std::vector<Segment>>(seamsOf(c.job(q).top));
    flow.insert(flow.begin(), {.height = std::clamp(left, c.height * kLeast, c.height * kPicture),
                               .before = kBefore,
                               .draw = [top, seams, &rows](QPainter& p, QRectF at) {
                                   drawRows(p, at, top, *seams, rows);
                               }});
    return flow;
}

} // namespace

Flow rowsPage(const SheetContext& c, std::size_t quilt) {
    const QuiltPlan& plan = c.plan.quilts[quilt];
    if (!plan.rows && !plan.blocks)
        return {};
    const Job& job = c.job(quilt);
    const Way& way = wayOf(job);
    Flow flow{title(language::said(way.words.where), c.quiltName(quilt), c.width)};
    flow.front().newPage = true;
    const auto say = [&](const Sentence& s, int size, double before) {
        flow.push_back(paragraph(language::said(s), c.width, size, before));
    };
    say(plan.rows ? rowsSentence(*plan.rows, job) : blocksSentence(*plan.blocks, job), type::kLead,
        4);
    for (const Sentence& s :
         plan.rows ? rowsDetails(*plan.rows, job) : blocksDetails(*plan.blocks, job))
        say(s, type::kBody, 2);
    for (const Finding& f : c.plan.findings)
        if (f.kind == Finding::Kind::dotsPlanned && f.quilt == int(quilt))
            say(core::says("%1 They lie at the same marks.", f.text), type::kBody, 2);
    if (plan.rows) {
        flow += rowsFlow(c, quilt, heightOf(flow));
        return flow;
    }
    const auto blocks = std::make_shared<PinBlocks>(*plan.blocks);
    const Length pin = way.point.length(job.basting);
    flow.push_back({.height = c.height * kPicture,
                    .before = 8,
                    .draw = [blocks, pin, job](QPainter& p, QRectF at) {
                        drawBlock(p, at, *blocks, job.top, pin);
                    }});
    return flow;
}

} // namespace bastewright::sheets
