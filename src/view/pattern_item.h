#pragma once

#include "view/pattern_desk.h"

#include <QPointer>
#include <QQuickPaintedItem>

/// Draws the pattern that is looked at, numbered; the same drawing as on the sheets.
class PatternItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(PatternDesk* desk READ desk WRITE setDesk NOTIFY deskChanged REQUIRED)
    Q_PROPERTY(qreal textSize MEMBER textSize_)

public:
    explicit PatternItem(QQuickItem* parent = nullptr);
    PatternDesk* desk() const { return desk_; }
    void setDesk(PatternDesk* desk);
    void paint(QPainter* painter) override;

signals:
    void deskChanged();

private:
    QPointer<PatternDesk> desk_;
    qreal textSize_ = 16;
};
