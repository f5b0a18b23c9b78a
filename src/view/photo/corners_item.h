#pragma once

#include <QColor>
#include <QImage>
#include <QList>
#include <QPointF>
#include <QQuickPaintedItem>
#include <QRectF>

/// A photo as large as there is room for, with the quadrilateral of four corners: what is outside
/// is dimmed, its sides are drawn, and lines of a straight grid lie inside as they would on the
/// quilt.
class CornersItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QImage picture MEMBER picture_ NOTIFY changed)
    /// From (0, 0) to (1, 1) of the picture: head left, head right, foot right, foot left.
    Q_PROPERTY(QList<QPointF> corners MEMBER corners_ NOTIFY changed)
    /// What stays free round the picture, so that a corner at its edge can be taken hold of.
    Q_PROPERTY(qreal margin MEMBER margin_ NOTIFY changed)
    /// The corner that is being moved, shown enlarged where no finger is; -1 for none.
    Q_PROPERTY(int held MEMBER held_ NOTIFY changed)
    /// Across the enlargement, pixels.
    Q_PROPERTY(qreal lens MEMBER lens_ NOTIFY changed)
    Q_PROPERTY(qreal line MEMBER line_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    Q_PROPERTY(QColor mark MEMBER mark_ NOTIFY changed)
    /// Where the picture lies in the item.
    Q_PROPERTY(QRectF place READ place NOTIFY placeChanged)

public:
    explicit CornersItem(QQuickItem* parent = nullptr);
    QRectF place() const;
    void paint(QPainter* painter) override;

signals:
    void changed();
    void placeChanged();

private:
    void paintGrid(QPainter& painter, const QPolygonF& quad) const;
    void paintLens(QPainter& painter) const;

    QImage picture_;
    QList<QPointF> corners_;
    int held_ = -1;
    qreal margin_ = 0, line_ = 1, lens_ = 0;
    QColor ink_{Qt::black}, mark_{Qt::yellow};
    QImage scaled_; ///< of the picture, for the size it was last painted in
    qint64 scaledKey_ = 0;
};
