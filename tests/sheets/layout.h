#pragma once

#include <QString>

/// How the sheets look on the page, judged from the outside.
namespace bastewright {

/// No heading, of a part or of a table's columns, is the last thing on its page or in its column;
/// no text reaches into the margin; no two texts are written over one another; nothing is drawn
/// below the page's frame, as a picture would be that was cut.
void expectWholePages(const QString& path);

} // namespace bastewright
