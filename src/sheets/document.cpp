#include "sheets/document.h"

#include "sheets/ink.h"
#include "sheets/text_block.h"
#include "sheets/words.h"

#include <QPagedPaintDevice>
#include <QPainter>

namespace bastewright::sheets {
namespace {

void runningHead(QPainter& p, const PageFrame& frame, const QString& session, const QString& person,
                 std::size_t page, std::size_t pages) {
    const QString count = Text::tr("page %1 of %2").arg(page).arg(pages);
    const double y = PageFrame::kSide;
    const double countWidth = textWidth(count, {type::kHead}) + 1;
    // Person and job share what the page's number leaves; each is elided, never cut.
    const double half = (frame.contentWidth() - countWidth - 24) / 2;
    const auto put = [&](const QString& text, double x, double width, bool bold,
                         Qt::Alignment align) {
        TextStyle style{type::kHead, bold, align, 1};
        style.ink = bold ? ink::kDark : ink::kQuiet;
        TextBlock{text, width, style}.draw(p, {x, y});
    };
    put(person, frame.left(), half, true, Qt::AlignLeft);
    put(session, frame.left() + half + 12, half, false, Qt::AlignLeft);
    put(count, frame.left() + frame.contentWidth() - countWidth, countWidth, false, Qt::AlignRight);
    rule(p, {frame.left(), y + 15}, frame.contentWidth(), ink::kThin);
}

} // namespace

void paintDocument(QPainter& painter, QPagedPaintDevice& device, const PageFrame& frame,
                   const QString& sessionName, const std::vector<Section>& sections) {
    bool first = true;
    for (const auto& section : sections) {
        const auto pages = paginate(section.flow, frame.contentHeight());
        for (std::size_t i = 0; i < pages.size(); ++i) {
            if (!first)
                device.newPage();
            first = false;
            runningHead(painter, frame, sessionName, section.person, i + 1, pages.size());
            for (const auto& placed : pages[i])
                placed.block.draw(painter, {frame.left(), frame.top() + placed.y,
                                            frame.contentWidth(), placed.block.height});
        }
    }
}

} // namespace bastewright::sheets
