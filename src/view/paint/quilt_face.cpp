#include "view/paint/quilt_face.h"

#include "view/paint/quilt_drawing.h"

#include <QPainter>

using namespace bastewright;

std::vector<Rect> blocksOf(const Top& top) {
    std::vector<Rect> out;
    if (!top.grid)
        return out;
    const BlockGrid& grid = *top.grid;
    const Point first = grid.firstBlock(topRect(top));
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            const Length x = first.x + column * (grid.block + grid.sashing);
            const Length y = first.y + row * (grid.blockHeight() + grid.sashing);
            out.push_back({x, y, x + grid.block, y + grid.blockHeight()});
        }
    return out;
}

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
    const auto map = drawing::fitted(drawing::inches(area), size(), 2, false);
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(Qt::NoPen);
    painter->setBrush(cloth_);
    painter->drawRect(map.mapRect(drawing::inches(area)));
    const auto blocks = blocksOf(*face_.top());
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const auto columns = std::size_t(face_.top()->grid->columns);
        QColor fill = patch_;
        fill.setAlpha((i / columns + i % columns) % 2 == 0 ? 255 : 130);
        painter->setBrush(fill);
        painter->drawRect(map.mapRect(drawing::inches(blocks[i])));
    }
    QColor thin = ink_;
    thin.setAlpha(110);
    painter->setPen(QPen{thin, 0.8});
    for (const auto& s : seamsOf(*face_.top()))
        painter->drawLine(map.map(QPointF{s.from.x.in(), s.from.y.in()}),
                          map.map(QPointF{s.to.x.in(), s.to.y.in()}));
    painter->setPen(QPen{ink_, 1.5});
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(map.mapRect(drawing::inches(area)));
}
