#include "app/taken_photo.h"

#include "view/paint/cloth.h"

#include <QPainter>
#include <QPolygonF>
#include <QTransform>

namespace bastewright::app {

QImage takenPhoto(const Top& top) {
    const Rect area = topRect(top);
    const QSizeF inches{area.width().in(), area.length().in()};
    const QImage cloth = cloth::pictureOf(top, {{0, 0}, inches}, (inches * 10).toSize());
    QImage out{1600, 1200, QImage::Format_RGB32};
    out.fill(QColor{0x8a, 0x6a, 0x48});
    const qreal w = cloth.width(), h = cloth.height();
    QTransform seen;
    QTransform::quadToQuad(QPolygonF{{{0, 0}, {w, 0}, {w, h}, {0, h}}},
                           QPolygonF{{{480, 90}, {1120, 150}, {1290, 1110}, {330, 1050}}}, seen);
    QPainter p{&out};
    p.setRenderHint(QPainter::SmoothPixmapTransform);
    p.setTransform(seen);
    p.drawImage(0, 0, cloth);
    return out;
}

} // namespace bastewright::app
