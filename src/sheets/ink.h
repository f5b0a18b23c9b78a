#pragma once

#include <QColor>
#include <QPointF>
#include <QRectF>
#include <QString>

class QPainter;

/// The few marks every sheet is drawn with. All read in black and white: a state is a shape, a
/// pattern or a word, and the two tints only help where there is colour.
namespace bastewright::sheets {

namespace ink {
inline const QColor kDark{0x1a, 0x1a, 0x1a};
inline const QColor kQuiet{0x55, 0x55, 0x55}; ///< secondary text: 7:1 on white
inline const QColor kRule{0x9a, 0x9a, 0x9a};
inline const QColor kTable{0xe6, 0xe2, 0xdb}; ///< the table's top
inline const QColor kFresh{0xff, 0xf1, 0xcc}; ///< what is basted in this pass
inline const QColor kNow{0xd0, 0xd0, 0xd0};   ///< what is basted in this pass, or is one's own
inline const QColor kNowOnPhoto{0, 0, 0, 40}; ///< the same where the photo shows through
inline const QColor kFreshOnPhoto{0xff, 0xe0, 0x80, 0x60};
inline const QColor kPaper{0xff, 0xff, 0xff};
inline const QColor kHatch{0x8c, 0x8c, 0x8c};
inline constexpr double kHair = 0.4, kThin = 0.7, kLine = 1.1, kBold = 2.0;
} // namespace ink

/// A level rule from x to x + width.
void rule(QPainter& p, QPointF from, double width, double weight = ink::kHair);

/// An empty box to tick.
void tickBox(QPainter& p, QRectF box);

/// A person's letter in a ring. `solid`: white on dark, for the person the sheet belongs to.
void badge(QPainter& p, QPointF centre, double diameter, const QString& letter, bool solid = false);

/// Slanting hatch over a rectangle.
void hatch(QPainter& p, QRectF area, double pitch = 4.5);

/// An arrow with a filled head, `weight` the shaft's.
void arrow(QPainter& p, QPointF from, QPointF to, double weight = ink::kBold);

inline constexpr int kSmallestLabel = 9; ///< points

/// A short word centred on a point, at most `maxWidth` wide: set smaller where it must, then
/// elided. Returns the size it was set in.
int label(QPainter& p, QPointF centre, const QString& text, int size, double maxWidth,
          bool bold = false, const QColor& colour = ink::kDark);

/// The same on a ground of white, so that it reads over hatching and lines.
int labelOnWhite(QPainter& p, QPointF centre, const QString& text, int size, double maxWidth,
                 bool bold = false);

} // namespace bastewright::sheets
