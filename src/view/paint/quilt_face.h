#pragma once

#include "job/job.h"

#include <QColor>
#include <QQuickPaintedItem>

#include <memory>

/// The top of a quilt, as the shelf shows it before anything is planned.
class QuiltFace {
    Q_GADGET
    QML_VALUE_TYPE(quiltFace)

public:
    QuiltFace() = default;
    explicit QuiltFace(bastewright::Top top)
        : top_{std::make_shared<const bastewright::Top>(std::move(top))} {}

    bool operator==(const QuiltFace& o) const {
        return top_ == o.top_ || (top_ && o.top_ && *top_ == *o.top_);
    }
    const bastewright::Top* top() const { return top_.get(); }

private:
    std::shared_ptr<const bastewright::Top> top_;
};

/// Draws a QuiltFace to scale in the middle of the item, as cloth.
class QuiltFaceItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QuiltFace face READ face WRITE setFace NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)

public:
    explicit QuiltFaceItem(QQuickItem* parent = nullptr);
    QuiltFace face() const { return face_; }
    void setFace(const QuiltFace& face);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QuiltFace face_;
    QColor ink_;
};
