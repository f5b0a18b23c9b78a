#pragma once

#include "sheets/sheet_set.h"

#include <QByteArray>
#include <QString>
#include <tl/expected.hpp>

namespace bastewright::sheets {

/// The pages as a PDF: exact size, title, language, outline. The error is one sentence: they could
/// not be drawn, or are wanted in greys and printing cannot be opened.
tl::expected<QByteArray, QString> pdfOf(const SheetSet& set, const SheetOptions& options);

} // namespace bastewright::sheets
