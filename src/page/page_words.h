#pragma once

#include <QByteArray>

namespace bastewright::page {

/// A file of the page with every `{{sentence}}` in the language spoken now. `script` writes them as
/// they stand in the text of a script, else as they stand in HTML.
QByteArray inLanguage(const QByteArray& file, bool script);

} // namespace bastewright::page
