#pragma once

#include "job/photo.h"
#include "measures/geometry.h"

#include <QImage>
#include <QRectF>
#include <QTransform>

class QPainter;

/// The photo of a top as a picture. Those asked for last are kept, each decoded once; any thread
/// may ask.
namespace bastewright::sheets {

/// The longer side, in pixels, that a photo is decoded to at most.
inline constexpr int kPhotoShown = 800;

/// In its colours; null where there is no photo, or what it holds does not decode.
QImage photoInColour(const Photo& photo);

/// Gray and so pale that what is printed over it is read as on white; null as above.
QImage photoOnPaper(const Photo& photo);

/// Lays a picture of the whole top on the page, as far as the clip leaves it; `toPage` is from
/// inches of the quilt's frame.
void drawTopPhoto(QPainter& p, const QImage& photo, const Rect& top, const QTransform& toPage,
                  const QRectF& clip);

} // namespace bastewright::sheets
