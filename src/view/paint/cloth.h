#pragma once

#include "job/top.h"

#include <QBrush>
#include <QColor>
#include <QImage>
#include <QPainterPath>
#include <QRectF>
#include <QTransform>

#include <vector>

class QPainter;

/// Draws a quilt as fabric: its top, the layers under it, what is sewn down, pins. Lengths are
/// inches of the quilt's frame, mapped to pixels by a transform without rotation.
namespace cloth {

/// How much of what is outside this pass gives way to the ground.
inline constexpr qreal kWashed = 0.62;
/// From one line of quilting to the next.
inline constexpr qreal kSewnInches = 2.8;
/// Twill of tags, thread of stitches; what outlines both on cloth of any colour.
inline const QColor kThread{0xff, 0xfd, 0xf6}, kOutline{0x14, 0x1a, 0x28};

/// The fabrics of a top, lightest last.
struct Fabrics {
    QColor border, second, accent, light;
};

/// A top's own, each in the places it is drawn in; usual ones where none are told.
Fabrics fabricsOf(const bastewright::Top& top);

/// The blocks of its grid, row by row; none where there is no grid.
std::vector<bastewright::Rect> blocksOf(const bastewright::Top& top);

/// The whole top: its photo; where there is none, blocks and their patches in turn from its
/// fabrics, sashing light, border dark, every seam a fine crease.
void paintTop(QPainter& painter, const bastewright::Top& top, const QTransform& map);

/// The same, once, as a picture of this many pixels that covers the area.
QImage pictureOf(const bastewright::Top& top, QRectF area, QSize pixels);

/// The seams alone, as fine creases.
void paintSeams(QPainter& painter, const bastewright::Top& top, const QTransform& map);

/// The backing's fabric, to fill with.
QBrush backingFabric(const QColor& colour);

/// A woven layer that is larger than the top; batting has a soft edge.
void paintBacking(QPainter& painter, const QRectF& pixels, const QColor& colour);
void paintBatting(QPainter& painter, const QRectF& pixels, const QColor& colour);

/// Lines of stitches over what is basted: this cloth is sewn down.
void paintSewn(QPainter& painter, const QPainterPath& pixels, qreal pixelsPerInch);

/// A dashed line inside a rectangle: its pins are open. Nothing else is dashed.
void paintOpen(QPainter& painter, const QRectF& pixels, qreal line, const QColor& thread = kThread,
               const QColor& outline = kOutline);

/// Boards of a table under and round the quilt.
void paintWood(QPainter& painter, const QRectF& pixels, const QColor& wood, const QColor& dark);

/// A stitch of thread along `angle` (radians), `length` pixels long.
void paintStitch(QPainter& painter, QPointF at, qreal length, qreal angle, qreal line);

/// A patch of spray: what it wets, a little within its edges.
void paintPatch(QPainter& painter, const QRectF& pixels, qreal line);

/// A safety pin along `angle` (radians), `length` pixels long; open ones stand apart at the tip.
void paintPin(QPainter& painter, QPointF at, qreal length, qreal angle, bool open);

} // namespace cloth
