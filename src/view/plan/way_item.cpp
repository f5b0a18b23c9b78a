#include "view/plan/way_item.h"

#include "view/paint/cloth.h"
#include "view/paint/quilt_drawing.h"

#include <QPainter>

#include <algorithm>

using namespace bastewright;

namespace {

/// The table of a way as it lies in its first pass, inches of the quilt's frame; empty on the
/// floor.
QRectF firstTable(const QuiltPlan& plan, const Alternative& way) {
    if (plan.surface.floor || way.surfaceLength <= Length{} || way.surfaceWidth <= Length{})
        return {};
    QSizeF size{way.surfaceLength.in(), way.surfaceWidth.in()};
    if (way.quiltLengthAlongLength)
        size.transpose();
    QRectF out{{0, 0}, size};
    out.moveCenter({(plan.layers.top.width / 2 + way.offCentre.dx).in(),
                    (plan.layers.top.length / 2 + way.offCentre.dy).in()});
    return out;
}

} // namespace

WayItem::WayItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &WayItem::changed, this, [this] { update(); });
}

void WayItem::paint(QPainter* painter) {
    const QuiltPlan* plan = quilt_.plan();
    if (!plan || way_ < 0 || std::size_t(way_) >= plan->alternatives.size())
        return;
    const Alternative& way = plan->alternatives[std::size_t(way_)];
    const QRectF top{0, 0, plan->layers.top.width.in(), plan->layers.top.length.in()};
    const QRectF table = firstTable(*plan, way);
    const QTransform map = drawing::fitted(top | table, size(), line_ * 3);
    const QRectF cloth = map.mapRect(top), wood = map.mapRect(table);
    const qreal ratio = painter->device() ? painter->device()->devicePixelRatioF() : 1;
    const QImage picture =
        cloth::pictureOf(quilt_.job()->top, top, (cloth.size() * ratio).toSize());
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    painter->drawImage(cloth, picture);
    QColor veil = ground_;
    veil.setAlphaF(float(cloth::kWashed));
    if (table.isEmpty())
        return;
    painter->fillRect(cloth, veil);
    cloth::paintWood(*painter, wood, wood_, woodDark_);
    const QRectF on = wood.adjusted(line_ * 2, line_ * 2, -line_ * 2, -line_ * 2) & cloth;
    painter->save();
    painter->setClipRect(on, Qt::IntersectClip);
    painter->drawImage(cloth, picture);
    painter->restore();
    painter->setBrush(Qt::NoBrush);
    for (const auto& [colour, width] :
         {std::pair{nowInk_, line_ * 2.2}, std::pair{now_, line_ * 1.3}}) {
        painter->setPen(QPen{colour, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin});
        painter->drawRect(on);
    }
}
