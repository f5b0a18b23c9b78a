#pragma once

#include "view/plan_presenter.h"

#include <QObject>
#include <QRectF>
#include <QtQmlIntegration>

#include <optional>

/// The pattern of the block that was tapped on the quilt, with every point's distances.
class PatternDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(bool shown READ shown NOTIFY changed)
    Q_PROPERTY(bool any READ any NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString text READ text NOTIFY changed)
    /// The block on the quilt, in inches.
    Q_PROPERTY(QRectF area READ area NOTIFY changed)
    /// number, fromLeft, fromHead: from the tile's head-left corner to the middle of each
    Q_PROPERTY(TableRows* points READ points CONSTANT)

public:
    explicit PatternDesk(PlanPresenter* plan, QObject* parent = nullptr);

    /// Shows the pattern at this place of the quilt (inches).
    Q_INVOKABLE void look(qreal x, qreal y);
    Q_INVOKABLE void close();
    /// The next of the patterns, for keys and for who cannot tap.
    Q_INVOKABLE void step(int by);

    /// The plan has patterns.
    bool any() const { return plan_->quilt().plan() && !plan_->quilt().plan()->patterns.empty(); }
    bool shown() const { return pattern() != nullptr; }
    QString title() const;
    QString text() const;
    QRectF area() const { return area_; }
    TableRows* points() { return &rows_; }
    /// Null for none.
    const bastewright::PointPattern* pattern() const;
    bastewright::Length pin() const;

signals:
    void changed();

private:
    void show(std::optional<std::size_t> at, const QRectF& area);

    PlanPresenter* plan_;
    std::optional<std::size_t> at_;
    QRectF area_;
    TableRows rows_;
};
