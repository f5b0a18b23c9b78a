#pragma once

#include "view/plan/plan_presenter.h"

#include <QObject>
#include <QRectF>
#include <QStringList>
#include <QtQmlIntegration>

#include <optional>
#include <utility>

/// How the pins are placed, in a sentence with its ribbons, and the row that was tapped on the
/// quilt.
class RowsDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(bool shown READ shown NOTIFY changed)
    Q_PROPERTY(bool any READ any NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    /// What there is to say beside the title, one sentence each.
    Q_PROPERTY(QStringList details READ details NOTIFY changed)
    /// The row at hand and its pins; empty where the pins stand in no rows.
    Q_PROPERTY(QString rowTitle READ rowTitle NOTIFY changed)
    Q_PROPERTY(QString rowText READ rowText NOTIFY changed)
    /// What the two ribbons beside each other have on them.
    Q_PROPERTY(QString marksTitle READ marksTitle NOTIFY changed)
    /// The row on the quilt, in inches.
    Q_PROPERTY(QRectF area READ area NOTIFY changed)
    Q_PROPERTY(bool inRows READ inRows NOTIFY changed)

public:
    explicit RowsDesk(PlanPresenter* plan, QObject* parent = nullptr);

    /// Shows the row nearest to this place of the quilt (inches).
    Q_INVOKABLE void look(qreal x, qreal y);
    Q_INVOKABLE void close();
    /// The next row, for keys and for who cannot tap.
    Q_INVOKABLE void step(int by);

    /// The plan tells of rows, or of a figure for every block.
    bool any() const;
    bool shown() const { return at_.has_value() && any(); }
    bool inRows() const { return rows() != nullptr; }
    QString title() const;
    QStringList details() const;
    QString rowTitle() const;
    QString rowText() const;
    QString marksTitle() const;
    QRectF area() const;
    /// Null where pins stand in no rows.
    const bastewright::PinRows* rows() const;
    bastewright::Unit unit() const;
    /// Number of the row at hand, from 0.
    std::optional<std::size_t> row() const { return rows() ? at_ : std::nullopt; }

signals:
    void changed();

private:
    const bastewright::Job* job() const { return plan_->quilt().job(); }
    void refresh();
    void show(std::optional<std::size_t> at);

    PlanPresenter* plan_;
    std::optional<std::size_t> at_;
    /// What the plan tells of, to see whether a new one tells of something else.
    std::pair<decltype(bastewright::QuiltPlan::rows), decltype(bastewright::QuiltPlan::blocks)>
        known_;
};
