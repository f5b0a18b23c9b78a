#include "sheets/columns.h"
#include "sheets/ink.h"
#include "sheets/pages/pages.h"
#include "sheets/parts.h"
#include "sheets/pictures/card_pictures.h"
#include "sheets/set_text.h"
#include "sheets/words.h"

#include <QPainter>

#include <set>

namespace bastewright::sheets {
namespace {

/// One label to cut out: a word or letter as large as it fits, and below it what it is for.
struct Label {
    QString word, below;
};

constexpr double kLabelWidth = fromMillimetres(84), kLabelHeight = fromMillimetres(50);

void drawLabel(QPainter& p, QRectF box, const Label& one) {
    p.setPen(QPen{ink::kRule, ink::kThin});
    p.setBrush(Qt::NoBrush);
    p.drawRect(box);
    int size = 72;
    while (size > type::kTitle && textWidth(one.word, serif(size)) > box.width() - 20)
        --size;
    const TextBlock word{one.word, box.width() - 12, serif(size, Qt::AlignHCenter, 1)};
    const TextBlock below{one.below, box.width() - 12, quiet(type::kBody, Qt::AlignHCenter)};
    const double top = box.top() + (box.height() - word.height() - below.height()) / 2;
    word.draw(p, {box.left() + 6, top});
    below.draw(p, {box.left() + 6, top + word.height()});
}

std::vector<Label> labels(const SheetContext& c) {
    std::vector<Label> out;
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q) {
        out.push_back({Text::tr("HEAD"), c.quiltName(q)});
        out.push_back({Text::tr("FOOT"), c.quiltName(q)});
    }
    std::set<std::pair<int, std::string>> seen;
    for (const auto& quilt : c.plan.quilts)
        for (const auto& pass : quilt.passes)
            for (const auto& s : pass.stretches)
                if (seen.insert({quilt.surface.number, s.place}).second)
                    out.push_back({QString::fromStdString(s.place),
                                   c.severalTables()
                                       ? Text::tr("place at table %1").arg(quilt.surface.number)
                                       : Text::tr("place at the table")});
    return out;
}

} // namespace

Flow labelsPage(const SheetContext& c) {
    Flow flow{title(Text::tr("Labels"),
                    Text::tr("Cut out; tape the letters where their people stand, from the lead's "
                             "round the table; pin head and foot to the quilt."),
                    c.width)};
    flow.front().newPage = true;
    const auto all = labels(c);
    const auto perRow = std::max<std::size_t>(1, std::size_t(c.width / kLabelWidth));
    for (std::size_t i = 0; i < all.size(); i += perRow) {
        const std::vector<Label> row(all.begin() + std::ptrdiff_t(i),
                                     all.begin() +
                                         std::ptrdiff_t(std::min(all.size(), i + perRow)));
        flow.push_back({.height = kLabelHeight, .draw = [row](QPainter& p, QRectF at) {
                            QRectF box{at.topLeft(), QSizeF{kLabelWidth, kLabelHeight}};
                            for (const Label& one : row) {
                                drawLabel(p, box, one);
                                box.translate(kLabelWidth, 0);
                            }
                        }});
    }
    return flow;
}

} // namespace bastewright::sheets
