#pragma once

#include "view/photo/photo_desk.h"

#include <QColor>
#include <QPointer>
#include <QQuickPaintedItem>

/// A photo as large as there is room for, with the quadrilateral of four corners: what is outside
/// is dimmed, its sides are drawn, and lines of a straight grid lie inside as they would on the
/// quilt.
class CornersItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(PhotoDesk* photos READ photos WRITE setPhotos NOTIFY changed REQUIRED)
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
    PhotoDesk* photos() const { return photos_; }
    void setPhotos(PhotoDesk* photos);
    QRectF place() const;
    void paint(QPainter* painter) override;

signals:
    void changed();
    void placeChanged();

private:
    void paintGrid(QPainter& painter, const QPolygonF& quad) const;
    void paintLens(QPainter& painter) const;

    QPointer<PhotoDesk> photos_;
    int held_ = -1;
    qreal margin_ = 0, line_ = 1, lens_ = 0;
    QColor ink_{Qt::black}, mark_{Qt::yellow};
    QImage scaled_; ///< of the picture, for the size it was last painted in
    qint64 scaledKey_ = 0;
};
