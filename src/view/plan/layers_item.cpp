#include "view/plan/layers_item.h"

#include "view/paint/cloth.h"

#include <QPainter>

using namespace bastewright;

namespace {
constexpr qreal kCheckPoints = 14; // the size of the sheets' figures in such drawings
} // namespace

LayersItem::LayersItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {
    connect(this, &LayersItem::looked, this, [this] {
        update();
        emit wantedChanged();
    });
}

void LayersItem::setLayers(LayersPresenter* layers) {
    if (layers == layers_)
        return;
    if (layers_)
        layers_->disconnect(this);
    layers_ = layers;
    if (layers_)
        connect(layers_, &LayersPresenter::changed, this, &LayersItem::looked);
    emit looked();
}

void LayersItem::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickPaintedItem::geometryChange(now, before);
    if (now.width() != before.width())
        emit wantedChanged();
}

qreal LayersItem::scaled() const {
    return textSize_ / kCheckPoints;
}

sheets::LayerLook LayersItem::look() const {
    sheets::LayerLook out{ink_, paper_, rest_, hatch_, table_};
    if (fabric_.alpha() > 0) {
        out.fabric = cloth::backingFabric(fabric_);
        // Threads keep their size on the screen.
        out.fabric.setTransform(QTransform::fromScale(1 / scaled(), 1 / scaled()));
    }
    return out;
}

qreal LayersItem::wanted() const {
    const BackingPlan* plan = layers_ ? layers_->backing() : nullptr;
    if (!plan || what_ != What::Cloth)
        return 0;
    const auto cloths = sheets::clothsOf(*layers_->quilt().job(), *plan);
    if (cloth_ < 0 || std::size_t(cloth_) >= cloths.size())
        return 0;
    const Rect r = sheets::extentOf(cloths[std::size_t(cloth_)]);
    const qreal wide = std::max(1.0, width() - 28 * scaled());
    return wide * r.length().in() / std::max(1.0, r.width().in()) +
           sheets::aroundCloth(look()) * scaled();
}

void LayersItem::paint(QPainter* painter) {
    const QuiltPlan* quilt = layers_ ? layers_->quilt().plan() : nullptr;
    if (!quilt)
        return;
    const Unit unit = layers_->quilt().job()->unit;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->scale(scaled(), scaled());
    const QRectF box{0, 0, width() / scaled(), height() / scaled()};
    const BackingPlan* backing = layers_->backing();
    if (what_ == What::Batting) {
        if (quilt->batting)
            sheets::drawBatting(*painter, box, *quilt->batting, *quilt, unit, look());
    } else if (backing && what_ == What::Backing) {
        sheets::drawBacking(*painter, box, *backing, *quilt, unit, look());
    } else if (backing) {
        const auto cloths = sheets::clothsOf(*layers_->quilt().job(), *backing);
        if (cloth_ >= 0 && std::size_t(cloth_) < cloths.size())
            sheets::drawCloth(*painter, box, *backing, cloths[std::size_t(cloth_)], unit, look());
    }
}
