#pragma once

#include "view/paint/quilt_face.h"

#include <QImage>
#include <QQuickPaintedItem>
#include <QRectF>
#include <QVariantList>

/// The part of a top that one zone is, as it lies on the table: half pale while it waits, with open
/// pins and a dashed line while it is open, sewn down once it is closed.
class ClothPiece : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QuiltFace face MEMBER face_ NOTIFY changed)
    /// Inches of the top.
    Q_PROPERTY(QRectF area MEMBER area_ NOTIFY changed)
    /// Quarter turns, clockwise, from head up to how it lies.
    Q_PROPERTY(int quarter MEMBER quarter_ NOTIFY changed)
    /// "waiting", "open" or "closed".
    Q_PROPERTY(QString stage MEMBER stage_ NOTIFY changed)
    /// Where pins or dots go, inches of the top.
    Q_PROPERTY(QVariantList places MEMBER places_ NOTIFY changed)
    Q_PROPERTY(qreal line MEMBER line_ NOTIFY changed)
    /// Plain ground in place of cloth, for high contrast.
    Q_PROPERTY(bool plain MEMBER plain_ NOTIFY changed)
    Q_PROPERTY(QColor ground MEMBER ground_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)

public:
    explicit ClothPiece(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    /// The cloth of the area, upright, drawn once for a size.
    const QImage& picture();

    QuiltFace face_, drawn_;
    QRectF area_, drawnArea_;
    int quarter_ = 0;
    QString stage_;
    QVariantList places_;
    qreal line_ = 1;
    bool plain_ = false;
    QColor ground_{Qt::white}, ink_{Qt::black};
    QImage picture_;
};
