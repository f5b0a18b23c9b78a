#pragma once

#include "session/table_scene.h"
#include "view/base/planned.h"
#include "view/paint/quilt_drawing.h"

#include <QImage>
#include <QQuickPaintedItem>

#include <optional>
#include <vector>

/// The quilt on its table, to scale; tapped places are answered as zones. One painted item, so that
/// thousands of pins cost one picture and no scene graph nodes.
class QuiltItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(PlannedQuilt quilt READ quilt WRITE setQuilt NOTIFY quiltChanged)
    Q_PROPERTY(int pass READ pass WRITE setPass NOTIFY passChanged)
    Q_PROPERTY(QString zone READ zone WRITE setZone NOTIFY zoneChanged)
    Q_PROPERTY(qreal moved READ moved WRITE setMoved NOTIFY movedChanged)
    /// Seconds from the start at which the session is shown as it will be; -1 for the pass as
    /// planned.
    Q_PROPERTY(qreal moment READ moment WRITE setMoment NOTIFY momentChanged)
    Q_PROPERTY(qreal textSize READ textSize WRITE setTextSize NOTIFY lookChanged)
    Q_PROPERTY(bool figures READ figures WRITE setFigures NOTIFY lookChanged)
    Q_PROPERTY(bool points READ points WRITE setPoints NOTIFY lookChanged)
    Q_PROPERTY(QString family MEMBER family_ NOTIFY lookChanged)
    Q_PROPERTY(QColor ground MEMBER ground_ NOTIFY lookChanged)
    Q_PROPERTY(QColor paper MEMBER paper_ NOTIFY lookChanged)
    Q_PROPERTY(QColor ink MEMBER ink_ NOTIFY lookChanged)
    Q_PROPERTY(QColor wood MEMBER wood_ NOTIFY lookChanged)
    Q_PROPERTY(QColor woodDark MEMBER woodDark_ NOTIFY lookChanged)
    Q_PROPERTY(QColor backing MEMBER backing_ NOTIFY lookChanged)
    Q_PROPERTY(QColor batting MEMBER batting_ NOTIFY lookChanged)
    Q_PROPERTY(QColor accent MEMBER accent_ NOTIFY lookChanged)
    Q_PROPERTY(QColor now MEMBER now_ NOTIFY lookChanged)
    Q_PROPERTY(QColor nowInk MEMBER nowInk_ NOTIFY lookChanged)

public:
    explicit QuiltItem(QQuickItem* parent = nullptr);

    /// The zone drawn at a place of the item; empty where there is none.
    Q_INVOKABLE QString zoneAt(qreal x, qreal y) const;
    /// The middle of a zone in the item, for marks laid over it; (-1, -1) for none.
    Q_INVOKABLE QPointF placeOf(const QString& zone) const;

    /// A place of the item on the quilt, in inches, and back; (0, 0) without a plan.
    Q_INVOKABLE QPointF inchesAt(qreal x, qreal y) const;
    Q_INVOKABLE QPointF pixelsAt(qreal x, qreal y) const;

    void paint(QPainter* painter) override;

    PlannedQuilt quilt() const { return quilt_; }
    void setQuilt(const PlannedQuilt& quilt);
    int pass() const { return pass_; }
    void setPass(int pass);
    QString zone() const { return zone_; }
    void setZone(const QString& zone);
    qreal moved() const { return moved_; }
    void setMoved(qreal moved);
    qreal moment() const { return moment_; }
    void setMoment(qreal moment);
    qreal textSize() const { return textSize_; }
    void setTextSize(qreal size);
    bool figures() const { return figures_; }
    void setFigures(bool on);
    bool points() const { return points_; }
    void setPoints(bool on);

signals:
    void quiltChanged();
    void passChanged();
    void zoneChanged();
    void movedChanged();
    void momentChanged();
    void lookChanged();

private:
    QTransform toPixels() const;
    /// The top as cloth, drawn once for a scale.
    const QImage& topAt(double pixelsPerInch);

    PlannedQuilt quilt_;
    QImage top_; ///< the top as cloth, for the size it was last painted in
    double topScale_ = 0;
    int pass_ = 1, passBefore_ = 1;
    QString zone_, family_;
    std::optional<bastewright::TableScenes> scenes_; ///< of quilt_, made when a moment is asked for
    qreal moved_ = 1, moment_ = -1, textSize_ = 16;
    bool figures_ = true, points_ = true;
    QColor ground_, paper_, ink_, wood_, woodDark_, backing_, batting_, accent_, now_, nowInk_;
};
