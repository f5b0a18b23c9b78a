#include "view/plan/ribbons_item.h"

#include "sheets/pictures/ribbon_pictures.h"

#include <QPainter>

namespace {
constexpr qreal kSheetNumbers = 9; // points; the numbers beside the marks
}

RibbonsItem::RibbonsItem(QQuickItem* parent)
    : QQuickPaintedItem{parent} {}

void RibbonsItem::setDesk(RowsDesk* desk) {
    if (desk == desk_)
        return;
    if (desk_)
        desk_->disconnect(this);
    desk_ = desk;
    if (desk_)
        connect(desk_, &RowsDesk::changed, this, [this] { update(); });
    update();
    emit deskChanged();
}

void RibbonsItem::paint(QPainter* painter) {
    const auto* rows = desk_ ? desk_->rows() : nullptr;
    if (!rows)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    // As on the sheet: dark on white in every light.
    painter->fillRect(QRectF{0, 0, width(), height()}, Qt::white);
    const qreal scale = textSize_ / kSheetNumbers;
    painter->scale(scale, scale);
    const QRectF box{4, 4, width() / scale - 8, height() / scale - 8};
    const qreal half = box.height() / 2;
    bastewright::sheets::drawMarksRibbon(*painter, {box.left(), box.top(), box.width(), half},
                                         *rows, desk_->unit());
    bastewright::sheets::drawSideRibbon(*painter, {box.left(), box.top() + half, box.width(), half},
                                        *rows, desk_->unit(), desk_->row());
}
