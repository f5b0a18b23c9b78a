#pragma once

#include "view/paint/quilt_face.h"

#include <QPointF>
#include <QTransform>

/// The top to scale for measuring: blocks, sashing and border, every seam, and how crooked it is.
class TopItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QuiltFace face READ face WRITE setFace NOTIFY changed)
    /// Draws the outline as the readings say, with what is off made this much larger; 0 for not.
    Q_PROPERTY(int exaggeration READ exaggeration NOTIFY changed)
    Q_PROPERTY(bool crooked MEMBER crooked_ NOTIFY changed)
    Q_PROPERTY(QPointF begun MEMBER begun_ NOTIFY changed)
    Q_PROPERTY(qreal line MEMBER line_ NOTIFY changed)
    /// What is said of the borders at the sides, and at head and foot, where the grid adds up to
    /// another size; the grid's own outline is dashed then.
    Q_PROPERTY(QString sides MEMBER sides_ NOTIFY changed)
    Q_PROPERTY(QString ends MEMBER ends_ NOTIFY changed)
    Q_PROPERTY(qreal textSize MEMBER textSize_ NOTIFY changed)
    Q_PROPERTY(QColor cloth MEMBER cloth_ NOTIFY changed)
    Q_PROPERTY(QColor patch MEMBER patch_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    Q_PROPERTY(QColor accent MEMBER accent_ NOTIFY changed)

public:
    explicit TopItem(QQuickItem* parent = nullptr);
    QuiltFace face() const { return face_; }
    void setFace(const QuiltFace& face);
    int exaggeration() const;

    /// The place of the top at a place of the item, in inches.
    Q_INVOKABLE QPointF placeAt(qreal x, qreal y) const;
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QTransform map() const;
    void paintCrooked(QPainter& painter) const;
    void paintGridOff(QPainter& painter) const;
    bool showsGrid() const { return !crooked_ && !(sides_.isEmpty() && ends_.isEmpty()); }

    QuiltFace face_;
    bool crooked_ = false;
    QPointF begun_{-1, -1};
    QString sides_, ends_;
    qreal line_ = 1, textSize_ = 12;
    QColor cloth_, patch_, ink_, accent_;
};
