#pragma once

#include "sheets/sheet_set.h"

#include <QPageLayout>

#include <functional>

class QPagedPaintDevice;

namespace bastewright::sheets {

/// The whole paper, upright, without margins: the pages keep their own.
QPageLayout pageLayout(Paper paper);

/// Paints all pages on a device that is set to the paper. `before` is called before each page, from
/// 0. False where the device refuses.
bool paintPages(QPagedPaintDevice& device, const SheetSet& set,
                const std::function<void(int page)>& before = {});

} // namespace bastewright::sheets
