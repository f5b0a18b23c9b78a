#pragma once

#include "sheets/pictures/layer_pictures.h"
#include "view/plan/layers_presenter.h"

#include <QColor>
#include <QPointer>
#include <QQuickPaintedItem>

/// Draws how a layer is made, to scale: a length of cloth with its cuts, the pieced backing, or the
/// joined batting. The same drawings as on the sheets.
class LayersItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(LayersPresenter* layers READ layers WRITE setLayers NOTIFY looked REQUIRED)
    Q_PROPERTY(What what MEMBER what_ NOTIFY looked)
    Q_PROPERTY(int cloth MEMBER cloth_ NOTIFY looked)
    Q_PROPERTY(qreal textSize MEMBER textSize_ NOTIFY looked)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY looked)
    Q_PROPERTY(QColor paper MEMBER paper_ NOTIFY looked)
    Q_PROPERTY(QColor rest MEMBER rest_ NOTIFY looked)
    Q_PROPERTY(QColor hatch MEMBER hatch_ NOTIFY looked)
    Q_PROPERTY(QColor table MEMBER table_ NOTIFY looked)
    /// What pieces of backing are made of; transparent for paper.
    Q_PROPERTY(QColor fabric MEMBER fabric_ NOTIFY looked)
    /// Height for its width at which a cloth fills it.
    Q_PROPERTY(qreal wanted READ wanted NOTIFY wantedChanged)

public:
    enum class What { Cloth, Backing, Batting };
    Q_ENUM(What)

    explicit LayersItem(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

    LayersPresenter* layers() const { return layers_; }
    void setLayers(LayersPresenter* layers);
    qreal wanted() const;

signals:
    void looked();
    void wantedChanged();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    bastewright::sheets::LayerLook look() const;
    qreal scaled() const; ///< pixels for a point of the sheets

    QPointer<LayersPresenter> layers_;
    What what_ = What::Backing;
    int cloth_ = 0;
    qreal textSize_ = 16;
    QColor ink_, paper_, rest_, hatch_, table_, fabric_{Qt::transparent};
};
