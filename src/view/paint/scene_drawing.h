#pragma once

#include "view/base/planned.h"
#include "view/paint/quilt_drawing.h"

#include <functional>

/// What a moment of a session adds to the picture of a pass: zones as far as they are, and people.
namespace drawing {

/// How many of a zone's points are in.
std::size_t pointsIn(const bastewright::ZoneScene& zone, std::size_t points);

/// Zones as far as they are: open ones dashed round, closed ones sewn down, what is being worked in
/// a yellow frame and sewn as far as its share. `drawTop` paints a part of the top as cloth, in
/// inches.
void paintZones(QPainter& painter, const Scene& scene, const Look& look, const QTransform& map,
                const std::function<void(const QRectF&)>& drawTop);

/// Everybody's mark where they stand; who waits without a place, or is away, is in no place.
void paintPeople(QPainter& painter, const bastewright::TableScene& moment,
                 const PlannedQuilt& quilt, const Scene& scene, const Look& look,
                 const QTransform& map, QSizeF size);

} // namespace drawing
