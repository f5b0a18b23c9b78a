#pragma once

#include <QFont>
#include <QString>

/// The sheets' typographic scale: few sizes, each with one use. Sizes in points.
namespace bastewright::sheets {

namespace type {
inline constexpr int kLeast = 9;   ///< labels in pictures; nothing is smaller
inline constexpr int kHead = 10;   ///< running foot, names of columns
inline constexpr int kSmall = 11;  ///< the lead's page, tables with many columns, captions
inline constexpr int kBody = 12;   ///< other text of the lead
inline constexpr int kCheck = 14;  ///< helpers' text: read standing, at arm's length
inline constexpr int kLead = 17;   ///< headings within a page, the calls on a helper's sheet
inline constexpr int kTitle = 28;  ///< the title of a page
inline constexpr int kFinish = 36; ///< when it will be finished
inline constexpr int kName = 40;   ///< the name on a helper's sheet
} // namespace type

/// The first of our preferred families that is installed; DejaVu Sans comes with the program.
/// Needs a QGuiApplication.
QFont font(int size, bool bold = false);

/// The face of titles, names and large figures: a bold serif, where one is installed.
QFont titleFont(int size);

/// True where some installed font has a real bold for this script. Where none has, a bold that is
/// made by drawing every letter twice is worse than none.
bool hasBold(const QString& letters);

} // namespace bastewright::sheets
