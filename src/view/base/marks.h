#pragma once

#include <QColor>
#include <QQuickPaintedItem>

/// A person's mark: a disc with their pattern and colour, and their letter on plain ground in it.
class PersonMark : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int mark MEMBER mark_ NOTIFY changed)
    Q_PROPERTY(QString letter MEMBER letter_ NOTIFY changed)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY changed)

public:
    explicit PersonMark(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    int mark_ = 0;
    QString letter_, family_;
};

/// A strip of somebody's fabric: their hours, or their stretch of an edge.
class FabricBand : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int mark MEMBER mark_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)

public:
    explicit FabricBand(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    int mark_ = 0;
    QColor ink_;
};

/// A running stitch along the inside of a rectangle: our frame round what may be tapped first.
class StitchFrame : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QColor color MEMBER color_ NOTIFY changed)
    Q_PROPERTY(qreal radius MEMBER radius_ NOTIFY changed)
    Q_PROPERTY(qreal thickness MEMBER thickness_ NOTIFY changed)

public:
    explicit StitchFrame(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QColor color_;
    qreal radius_ = 4, thickness_ = 1.5;
};

/// How far a zone is, without words: empty, half hatched with open pins, or solid and ticked.
class StateMark : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString state MEMBER state_ NOTIFY changed)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY changed)
    Q_PROPERTY(QColor fill MEMBER fill_ NOTIFY changed)

public:
    explicit StateMark(QQuickItem* parent = nullptr);
    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QString state_;
    QColor ink_, fill_;
};
