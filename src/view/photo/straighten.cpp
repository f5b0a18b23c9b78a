#include "view/photo/straighten.h"

#include <QBuffer>
#include <QImageWriter>
#include <QLineF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

using namespace bastewright;

namespace photo {
namespace {

/// Twice the area of the triangle, positive where it turns clockwise as pixels lie.
qreal turn(QPointF a, QPointF b, QPointF c) {
    return (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
}

QPolygonF polygon(const Corners& c) {
    return QPolygonF{{c[0], c[1], c[2], c[3]}};
}

QSize keptSize(const Corners& c, QSizeF shape) {
    const qreal across = std::max(QLineF{c[0], c[1]}.length(), QLineF{c[3], c[2]}.length()),
                down = std::max(QLineF{c[0], c[3]}.length(), QLineF{c[1], c[2]}.length());
    // As many pixels to the inch as the picture has where it has most, within what is kept.
    const qreal scale = std::min(std::max(across / shape.width(), down / shape.height()),
                                 kKeptSide / std::max(shape.width(), shape.height()));
    return (shape * scale).toSize().expandedTo({1, 1});
}

} // namespace

bool areCorners(const Corners& c) {
    constexpr qreal kSpeck = 200; // square pixels, twice over
    return std::ranges::all_of(std::array{0, 1, 2, 3}, [&](int i) {
        return turn(c[std::size_t(i)], c[std::size_t((i + 1) % 4)], c[std::size_t((i + 2) % 4)]) >
               kSpeck;
    });
}

std::optional<QTransform> homography(const Corners& corners, QSizeF size) {
    const QPolygonF to{
        {{0, 0}, {size.width(), 0}, {size.width(), size.height()}, {0, size.height()}}};
    QTransform out;
    if (!areCorners(corners) || !QTransform::quadToQuad(polygon(corners), to, out))
        return {};
    return out;
}

QImage straightened(const QImage& image, const Corners& corners, QSizeF shape) {
    if (image.isNull() || shape.isEmpty() || !areCorners(corners))
        return {};
    const QSize size = keptSize(corners, shape);
    const auto map = homography(corners, size);
    if (!map)
        return {};
    QImage out{size, QImage::Format_RGB32};
    out.fill(Qt::white);
    QPainter painter{&out};
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setTransform(*map);
    painter.drawImage(0, 0, image);
    return out;
}

std::optional<Photo> asPhoto(const QImage& image) {
    if (image.isNull())
        return {};
    for (const int quality : {88, 80, 70, 55, 40, 25, 10}) {
        QByteArray bytes;
        QBuffer buffer{&bytes};
        buffer.open(QIODevice::WriteOnly);
        QImageWriter writer{&buffer, "jpeg"};
        writer.setQuality(quality);
        if (!writer.write(image))
            return {};
        if (auto photo = Photo::ofJpeg({bytes.constData(), std::size_t(bytes.size())}))
            return photo;
    }
    return {};
}

} // namespace photo
