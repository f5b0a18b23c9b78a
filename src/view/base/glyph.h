#pragma once

#include <QColor>
#include <QQuickPaintedItem>

/// Our own line drawings for buttons, by name; drawn on a 24 × 24 grid and scaled.
class Glyph : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed)
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY changed)

public:
    explicit Glyph(QQuickItem* parent = nullptr);
    QString name() const { return name_; }
    void setName(const QString& name);
    QColor color() const { return color_; }
    void setColor(const QColor& color);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString name_;
    QColor color_;
};
