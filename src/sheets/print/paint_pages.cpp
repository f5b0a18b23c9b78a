#include "sheets/print/paint_pages.h"

#include <QPagedPaintDevice>
#include <QPainter>

namespace bastewright::sheets {

QPageLayout pageLayout(Paper paper) {
    const QPageSize size{paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter};
    return {size, QPageLayout::Portrait, QMarginsF{0, 0, 0, 0}};
}

bool paintPages(QPagedPaintDevice& device, const SheetSet& set,
                const std::function<void(int page)>& before) {
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    // The pages are drawn in points whatever the device's resolution.
    painter.scale(device.logicalDpiX() / 72.0, device.logicalDpiY() / 72.0);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int page = 0; page < set.pages(); ++page) {
        if (before)
            before(page);
        if (page > 0 && !device.newPage())
            return false;
        set.paint(painter, page);
    }
    return painter.end();
}

} // namespace bastewright::sheets
