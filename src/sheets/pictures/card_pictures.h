#pragma once

#include "measures/geometry.h"
#include "measures/length_text.h"

#include <QRectF>
#include <QString>
#include <QStringList>

class QPainter;

/// What is cut out and laid on the quilt, at true scale: a point is 1/72 in on paper.
namespace bastewright::sheets {

constexpr double fromMillimetres(double mm) {
    return mm / 25.4 * 72;
}

/// The label of a zone.
struct ZoneCard {
    static constexpr double kWidth = fromMillimetres(60), kHeight = fromMillimetres(46);
    QString zone;
    QStringList letters; ///< who places the points
    QString count;       ///< "18 pins"
    QString pass;        ///< "Pass 2"
};

/// A mark for a corner of what is basted in a pass; its own corner of that name is heavy.
struct CornerMark {
    static constexpr double kWidth = fromMillimetres(44), kHeight = fromMillimetres(40);
    Side down = Side::head, across = Side::left;
    QString pass;
    QString fromLeft, fromHead; ///< where on the top it lies
};

/// With cut lines all round.
void drawCard(QPainter& p, QRectF box, const ZoneCard& card);
void drawCard(QPainter& p, QRectF box, const CornerMark& mark);

/// A level line of 100 mm with a tick at every 10 mm.
inline constexpr double kCheckLine = fromMillimetres(100);
void drawCheckLine(QPainter& p, QPointF from);

/// A strip as long as two points may lie apart, to measure with at the table.
inline constexpr Length kLongestGauge = Length::inches(6);
inline constexpr double kGaugeHeight = fromMillimetres(16);
void drawGauge(QPainter& p, QPointF topLeft, Length spacing, Unit unit);

} // namespace bastewright::sheets
