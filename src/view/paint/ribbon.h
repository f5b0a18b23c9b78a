#pragma once

#include <QColor>
#include <QQuickPaintedItem>
#include <QtQmlIntegration>

/// A twill ribbon whose notched end points from what is said on it to what comes next.
class Ribbon : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor color MEMBER colour_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    /// The notch is at the left.
    Q_PROPERTY(bool mirrored MEMBER mirrored_ NOTIFY changed)

public:
    explicit Ribbon(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QColor colour_{Qt::yellow}, ink_{Qt::black};
    bool mirrored_ = false;
};
