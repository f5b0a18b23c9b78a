#pragma once

#include "view/photo/straighten.h"

#include <QColor>
#include <QImage>
#include <QPainter>

namespace bastewright {

/// A photo as large as one may be kept: patches with a print in every one, so that it codes badly.
inline Photo quiltPhoto() {
    QImage image{628, photo::kKeptSide, QImage::Format_RGB32};
    QPainter p{&image};
    unsigned seed = 1;
    const auto next = [&](int most) {
        seed = seed * 1664525U + 1013904223U; // Numerical Recipes' generator
        return int(seed >> 16) % most;
    };
    for (int y = 0; y < image.height(); y += 4)
        for (int x = 0; x < image.width(); x += 4)
            p.fillRect(x, y, 4, 4,
                       QColor::fromHsv((x / 80 * 47 + y / 80 * 31) % 360, 120, 120 + next(120)));
    p.end();
    return *photo::asPhoto(image);
}

} // namespace bastewright
