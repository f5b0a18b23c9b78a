#include "view/pattern_item.h"

#include "sheets/pictures/piece_pictures.h"

#include <QPainter>

namespace {
constexpr qreal kSheetNumbers = 9; // points; the numbers beside the pins
}

PatternItem::PatternItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {}

void PatternItem::setDesk(PatternDesk* desk) {
    if (desk == desk_)
        return;
    if (desk_)
        desk_->disconnect(this);
    desk_ = desk;
    if (desk_)
        connect(desk_, &PatternDesk::changed, this, [this] { update(); });
    update();
    emit deskChanged();
}

void PatternItem::paint(QPainter* painter) {
    const auto* pattern = desk_ ? desk_->pattern() : nullptr;
    if (!pattern)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    // As on the sheet: dark on white in every light.
    painter->fillRect(QRectF{0, 0, width(), height()}, Qt::white);
    const qreal scale = textSize_ / kSheetNumbers;
    painter->scale(scale, scale);
    bastewright::sheets::drawPattern(*painter, {0, 0, width() / scale, height() / scale}, *pattern,
                                     desk_->pin());
}
