#pragma once

#include "sheets/sheet_set.h"

#include <QPageLayout>

#include <functional>

class QPagedPaintDevice;

namespace bastewright::sheets {

/// The whole paper, upright, without margins: the pages keep their own.
QPageLayout pageLayout(Paper paper);

/// Paints all pages on a device that is set to the paper. `before` is called before each page, from
/// 0; where it returns false the rest is left out. False where the device refuses, or on a stop.
bool paintPages(QPagedPaintDevice& device, const SheetSet& set,
                const std::function<bool(int page)>& before = {});

} // namespace bastewright::sheets
