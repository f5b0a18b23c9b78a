#pragma once

#include "sheets/flow.h"
#include "sheets/sheets.h"

#include <QString>

#include <memory>
#include <vector>

class QPainter;

namespace bastewright {

namespace sheets {
struct SheetContext;
}

/// The sheets of a session, composed into pages that can be painted one by one: on a PDF, a printer
/// or a screen. Session and plan must live as long. To be used on the thread that made it: it holds
/// laid-out text.
class SheetSet {
public:
    SheetSet(const Session& session, const Plan& plan, const SheetOptions& options);
    ~SheetSet();
    SheetSet(SheetSet&&) noexcept;
    SheetSet& operator=(SheetSet&&) noexcept;

    int pages() const { return int(pages_.size()); }
    const sheets::PageFrame& frame() const { return frame_; }
    /// "Harbour Lights: sheets".
    QString title() const;

    /// Paints a page, from 0, with a painter scaled to points whose origin is the paper's upper
    /// left corner.
    void paint(QPainter& painter, int page) const;

    /// A line of the outline: whose pages or which sheet begins where.
    struct Mark {
        QString title;
        int page = 0;  ///< from 0
        int level = 0; ///< 0: the lead, a helper, the cards; 1: a sheet of theirs
    };
    const std::vector<Mark>& outline() const { return outline_; }

private:
    struct Page {
        sheets::PlacedPage placed;
        QString person;
        int number = 1, of = 1; ///< within the person's part; number 0: a blank back
    };

    sheets::PageFrame frame_;
    std::unique_ptr<const sheets::SheetContext> context_;
    std::vector<Page> pages_;
    std::vector<Mark> outline_;
};

} // namespace bastewright
