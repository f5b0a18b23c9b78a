#pragma once

#include <QQuickItem>
#include <QRectF>
#include <QString>

namespace bastewright::app {

/// An item in words, for messages of tests: its name, its text, its size.
QString describe(const QQuickItem& item);

/// Where the ink of a text item lies, in the item: its lines without the empty part above the
/// letters of the first and below those of the last; alignment and padding are heeded.
QRectF inkRect(const QQuickItem& text);

/// Pixels of the type as it is painted, also where it was shrunk to fit.
qreal sizeOfType(const QQuickItem& text);

/// Why not all of a text can be read: elided, or larger than its item. Empty where all can.
QString whatIsCut(const QQuickItem& text);

/// A word that is broken over two lines at a place where no language would; empty for none. Texts
/// that are meant to break anywhere (addresses) never count.
QString brokenWord(const QQuickItem& text);

} // namespace bastewright::app
