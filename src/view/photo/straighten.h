#pragma once

#include "job/photo.h"

#include <QImage>
#include <QPointF>
#include <QSizeF>
#include <QTransform>

#include <array>
#include <optional>

/// From a photo of a quilt, taken from anywhere, to the quilt alone, seen from straight above.
namespace photo {

/// In a picture, in pixels: head left, head right, foot right, foot left.
using Corners = std::array<QPointF, 4>;

/// The longer side of what is kept, in pixels, at most.
inline constexpr int kKeptSide = 800;

/// A quilt's corners go round it one way, bulge nowhere inwards and enclose more than a speck.
bool areCorners(const Corners& corners);

/// The plane homography that takes the corners to those of a picture of this size; nothing where
/// they are none.
std::optional<QTransform> homography(const Corners& corners, QSizeF size);

/// The quilt alone in the proportions of `shape`, its longer side at most `kKeptSide` pixels and no
/// larger than it is in the picture; null where the corners are none.
QImage straightened(const QImage& image, const Corners& corners, QSizeF shape);

/// As a photo to keep: coded as well as its limits allow. Nothing for a null image.
std::optional<bastewright::Photo> asPhoto(const QImage& image);

} // namespace photo
