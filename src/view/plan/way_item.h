#pragma once

#include "view/base/planned.h"

#include <QColor>
#include <QQuickPaintedItem>

/// One of the ways that were compared, small: the quilt as cloth, washed out but for what lies on
/// the table in the first pass, and the table under it. On the floor there is no table.
class WayItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(PlannedQuilt quilt MEMBER quilt_ NOTIFY changed)
    /// Its row among the alternatives of the plan.
    Q_PROPERTY(int way MEMBER way_ NOTIFY changed)
    Q_PROPERTY(qreal line MEMBER line_ NOTIFY changed)
    Q_PROPERTY(QColor ground MEMBER ground_ NOTIFY changed)
    Q_PROPERTY(QColor wood MEMBER wood_ NOTIFY changed)
    Q_PROPERTY(QColor woodDark MEMBER woodDark_ NOTIFY changed)
    Q_PROPERTY(QColor now MEMBER now_ NOTIFY changed)
    Q_PROPERTY(QColor nowInk MEMBER nowInk_ NOTIFY changed)

public:
    explicit WayItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    PlannedQuilt quilt_;
    int way_ = -1;
    qreal line_ = 1;
    QColor ground_, wood_, woodDark_, now_, nowInk_;
};
