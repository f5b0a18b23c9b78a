#pragma once

#include "view/edit/job_editor.h"
#include "view/plan/plan_presenter.h"

#include <QObject>
#include <QtQmlIntegration>

/// Takes another of the ways that were compared: what the job asks for follows, and the plan it.
class WayDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// The starts of the surface that is planned: x and y of the first field's middle on the quilt
    /// (inches), title, row of the way, chosen. Starts in the same place are one.
    Q_PROPERTY(TableRows* starts READ starts CONSTANT)
    /// Something was asked for, so the quickest may not be taken.
    Q_PROPERTY(bool asked READ asked NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    WayDesk(JobEditor* editor, PlanPresenter* plan, QObject* parent = nullptr);

    /// Asks for the way in this row of the alternatives.
    Q_INVOKABLE void take(int row);
    /// Asks for the start nearest to this place of the quilt (inches), on the tables as they stand.
    Q_INVOKABLE void startNear(qreal x, qreal y);
    Q_INVOKABLE void takeQuickest();

    TableRows* starts() { return &starts_; }
    bool asked() const;
    QString problem() const { return problem_; }

signals:
    void changed();

private:
    void refresh();
    void apply(const QString& what, bastewright::Session next);

    JobEditor* editor_;
    PlanPresenter* plan_;
    TableRows starts_;
    QString problem_;
};
