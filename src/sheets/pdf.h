#pragma once

#include "sheets/sheet_set.h"

#include <QByteArray>

namespace bastewright::sheets {

/// The pages as a PDF: exact size, title, language, outline. Empty where they could not be drawn.
QByteArray pdfOf(const SheetSet& set, const SheetOptions& options);

} // namespace bastewright::sheets
