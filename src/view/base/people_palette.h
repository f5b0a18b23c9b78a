#pragma once

#include "job/job.h"

#include <QBrush>
#include <QColor>
#include <QPen>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <string>
#include <vector>

class QPainter;

/// How people are told apart, as covered buttons: a letter first, a weave second, a colour third.
/// The colours are what yellow (now) and red-brown (check first) leave of Okabe and Ito's palette
/// for every kind of colour vision, and four more that differ from those in lightness.
namespace people {

inline constexpr int kMarks = 7; ///< marks repeat after so many; letters do not

QColor fill(int mark);
Qt::BrushStyle pattern(int mark);
/// Of the pattern on the fill.
QColor ink(int mark);

/// A letter each, the same as on the sheets.
QStringList letters(const std::vector<bastewright::Helper>& helpers);
/// These people in one short line for the table: their names, or their letters where the names
/// would take more than a glance (24 characters).
QString atAGlance(const std::vector<std::string>& people,
                  const std::vector<bastewright::Helper>& helpers);
/// Paints somebody's mark into a square: a disc with their pattern and colour, and in it their
/// letter on plain ground.
void paintMark(QPainter& painter, QRectF square, int mark, const QString& letter,
               const QString& family);
/// Fills an area with somebody's fabric; `edge` outlines it.
void paintFabric(QPainter& painter, const QRectF& area, int mark, const QPen& edge);
QStringList names(const std::vector<bastewright::Helper>& helpers);

} // namespace people
