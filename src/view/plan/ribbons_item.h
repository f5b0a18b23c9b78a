#pragma once

#include "view/plan/rows_desk.h"

#include <QPointer>
#include <QQuickPaintedItem>

/// Draws the two ribbons that place the pins: marks along a row, and rows down the side with the
/// one at hand; the same drawing as on the sheets.
class RibbonsItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(RowsDesk* desk READ desk WRITE setDesk NOTIFY deskChanged REQUIRED)
    Q_PROPERTY(qreal textSize MEMBER textSize_)

public:
    explicit RibbonsItem(QQuickItem* parent = nullptr);
    RowsDesk* desk() const { return desk_; }
    void setDesk(RowsDesk* desk);
    void paint(QPainter* painter) override;

signals:
    void deskChanged();

private:
    QPointer<RowsDesk> desk_;
    qreal textSize_ = 16;
};
