#include "sheets/sheet_set.h"

#include "sheets/ink.h"
#include "sheets/pages/pages.h"
#include "sheets/text_block.h"
#include "sheets/words.h"

#include <QPainter>

namespace bastewright {

using namespace sheets;

namespace {

/// Whose page it is, of what session, and which of how many, so that sheets that were dropped find
/// back together.
void runningFoot(QPainter& p, const PageFrame& frame, const QString& session, const QString& person,
                 int page, int pages) {
    const QString count = Text::tr("page %1 of %2").arg(page).arg(pages);
    const double y = frame.foot() + PageFrame::kFoot - 13;
    const double countWidth = textWidth(count, {type::kHead}) + 1;
    // Person and job share what the page's number leaves; each is elided, never cut.
    const double half = (frame.contentWidth() - countWidth - 24) / 2;
    const auto put = [&](const QString& text, double x, double width, bool bold,
                         Qt::Alignment align) {
        TextStyle style{type::kHead, bold, align, 1};
        style.ink = ink::kQuiet;
        TextBlock{text, width, style}.draw(p, {x, y});
    };
    put(person, frame.left(), half, true, Qt::AlignLeft);
    put(session, frame.left() + half + 12, half, false, Qt::AlignLeft);
    put(count, frame.left() + frame.contentWidth() - countWidth, countWidth, false, Qt::AlignRight);
}

} // namespace

SheetSet::SheetSet(const Session& session, const Plan& plan, const SheetOptions& options)
    : frame_{PageFrame::of(options.paper)}
    , context_{std::make_unique<const SheetContext>(session, plan, frame_)} {
    for (auto& section : sectionsFor(*context_, options)) {
        if (options.bothSides && pages_.size() % 2 == 1)
            pages_.push_back({.placed = {}, .person = {}, .number = 0});
        auto pages = paginate(section.flow, frame_.contentHeight());
        outline_.push_back({section.person, int(pages_.size()), 0});
        for (std::size_t i = 0; i < pages.size(); ++i) {
            for (const auto& placed : pages[i])
                if (!placed.block.bookmark.isEmpty())
                    outline_.push_back({placed.block.bookmark, int(pages_.size()), 1});
            pages_.push_back({std::move(pages[i]), section.person, int(i) + 1, int(pages.size())});
        }
    }
}

SheetSet::~SheetSet() = default;
SheetSet::SheetSet(SheetSet&&) noexcept = default;
SheetSet& SheetSet::operator=(SheetSet&&) noexcept = default;

QString SheetSet::title() const {
    return Text::tr("%1: sheets").arg(context_->sessionName());
}

void SheetSet::paint(QPainter& painter, int page) const {
    const Page& one = pages_.at(std::size_t(page));
    if (one.number == 0)
        return;
    runningFoot(painter, frame_, context_->sessionName(), one.person, one.number, one.of);
    for (const auto& placed : one.placed)
        placed.block.draw(painter, {frame_.left(), frame_.top() + placed.y, frame_.contentWidth(),
                                    placed.block.height});
}

} // namespace bastewright
