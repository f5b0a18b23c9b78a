#pragma once

#include "sheets/sheet_set.h"

#include <QByteArray>

namespace bastewright::sheets {

/// Adds an outline, the language of the text and the wish that a reader shows the title to a PDF
/// that has none, as an incremental update (ISO 32000-1, 7.5.6): the bytes there are stay as they
/// are. A file of another build than Qt's writer makes is returned unchanged.
QByteArray withOutline(const QByteArray& pdf, const std::vector<SheetSet::Mark>& marks,
                       const QString& language);

} // namespace bastewright::sheets
