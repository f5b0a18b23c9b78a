#pragma once

#include <QFont>

/// The sheets' typographic scale: few sizes, each with one use. Sizes in points.
namespace bastewright::sheets {

namespace type {
inline constexpr int kHead = 10;  ///< running head, and the smallest text outside pictures
inline constexpr int kSmall = 11; ///< tables with many columns, captions
inline constexpr int kBody = 12;  ///< the lead's text
inline constexpr int kCheck = 14; ///< helpers' text: read standing, at arm's length
inline constexpr int kLead = 17;  ///< headings within a page
inline constexpr int kTitle = 26; ///< the title of a page
inline constexpr int kName = 34;  ///< the name on a helper's sheet
} // namespace type

/// The first of our preferred families that is installed; DejaVu Sans comes with the program.
/// Needs a QGuiApplication.
QFont font(int size, bool bold = false);

} // namespace bastewright::sheets
