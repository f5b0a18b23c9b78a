#pragma once

#include "view/plan/why.h"

#include <QObject>
#include <QtQmlIntegration>

/// Opens a figure of the plan to its why: the rule, what it was worked out from, the bound, and the
/// trade's reason.
class WhyDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// figure, title, value: every figure that opens, for a list of them
    Q_PROPERTY(TableRows* figures READ figures CONSTANT)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString value READ value NOTIFY changed)
    /// The reason in one sentence that a child understands.
    Q_PROPERTY(QString plain READ plain NOTIFY changed)
    Q_PROPERTY(QString rule READ rule NOTIFY changed)
    Q_PROPERTY(QString bound READ bound NOTIFY changed)
    Q_PROPERTY(QString reason READ reason NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    /// label, value
    Q_PROPERTY(TableRows* inputs READ inputs CONSTANT)

public:
    explicit WhyDesk(PlanPresenter* plan, QObject* parent = nullptr);

    /// One of "passes", "points", "finish", "backing", "batting", "spare", "clips", "weight". False
    /// where the plan has no such figure.
    Q_INVOKABLE bool open(const QString& figure);

    TableRows* figures() { return &figures_; }
    TableRows* inputs() { return &inputs_; }
    QString title() const { return why_.title; }
    QString value() const { return why_.value; }
    QString plain() const { return why_.plain; }
    QString rule() const { return why_.rule; }
    QString bound() const { return why_.bound; }
    QString reason() const { return why_.reason; }
    QString source() const { return why_.source; }

signals:
    void changed();

private:
    void refresh();

    PlanPresenter* plan_;
    Why why_;
    TableRows figures_, inputs_;
};
