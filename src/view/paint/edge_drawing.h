#pragma once

#include "view/paint/quilt_drawing.h"

/// What stands along the edges of a table: walls, holds, rolls and people.
namespace drawing {

/// A point of a side of the table: its x at head and foot, its y at left and right is `along`.
QPointF onEdge(const QRectF& table, bastewright::Side side, double along);

void paintWalls(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map);
void paintRolls(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map);
/// Clamps as clamps, tape as strips, each with the number of its round where that can be read.
void paintHolds(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map);
/// Everybody's place of the pass: a band of their fabric along the edge, and their covered button.
void paintPlaces(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map);

} // namespace drawing
