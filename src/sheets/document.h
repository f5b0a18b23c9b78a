#pragma once

#include "sheets/pages/pages.h"

class QPainter;
class QPagedPaintDevice;

namespace bastewright::sheets {

/// Composes the sections into pages and paints them, running heads included.
/// `QPainter` is scaled to points before the first page.
void paintDocument(QPainter& painter, QPagedPaintDevice& device, const PageFrame& frame,
                   const QString& sessionName, const std::vector<Section>& sections);

} // namespace bastewright::sheets
