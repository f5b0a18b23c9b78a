#include "view/paint/quilt_face.h"

#include "view/paint/cloth.h"
#include "view/paint/quilt_drawing.h"

#include <QPainter>

using namespace bastewright;

QuiltFaceItem::QuiltFaceItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &QuiltFaceItem::changed, this, [this] { update(); });
}

void QuiltFaceItem::setFace(const QuiltFace& face) {
    if (face == face_)
        return;
    face_ = face;
    emit changed();
}

void QuiltFaceItem::paint(QPainter* painter) {
    if (!face_.top())
        return;
    const auto area = topRect(*face_.top());
    if (area.empty())
        return;
    const QRectF inches = drawing::inches(area);
    const auto map = drawing::fitted(inches, size(), 2);
    painter->setRenderHint(QPainter::Antialiasing);
    cloth::paintTop(*painter, *face_.top(), map);
    painter->setPen(QPen{ink_, 1.5});
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(map.mapRect(inches));
}
