#pragma once

#include "planners/whole/remedy.h"
#include "view/edit/job_editor.h"
#include "view/plan/plan_presenter.h"

#include <QObject>
#include <QtQmlIntegration>

/// Findings with what cures them, and what would help most with a trial: each is a change of the
/// session that can be undone, shown before and after.
class Remedies : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// level, text, cure, first, second: the last two are what buttons say; empty for none
    Q_PROPERTY(TableRows* findings READ findings CONSTANT)
    /// The gravest finding, and what its buttons say; empty for none.
    Q_PROPERTY(QString worst READ worst NOTIFY findingsChanged)
    Q_PROPERTY(QString worstFirst READ worstFirst NOTIFY findingsChanged)
    Q_PROPERTY(QString worstSecond READ worstSecond NOTIFY findingsChanged)
    /// It is more than a tip.
    Q_PROPERTY(bool serious READ serious NOTIFY findingsChanged)
    /// A change was tried and its plan is awaited or shown.
    Q_PROPERTY(bool trying READ trying NOTIFY changed)
    Q_PROPERTY(QString tried READ tried NOTIFY changed)
    Q_PROPERTY(QString before READ before NOTIFY changed)
    /// Empty while it is planned.
    Q_PROPERTY(QString after READ after NOTIFY changed)

public:
    Remedies(JobEditor* editor, PlanPresenter* plan, QObject* parent = nullptr);

    /// Applies the first (0) or second (1) cure of a finding.
    Q_INVOKABLE void cure(int finding, int which);
    /// Tries what would help, by its place in the list.
    Q_INVOKABLE void tryHelp(int help);
    Q_INVOKABLE void keep();
    Q_INVOKABLE void takeBack();

    TableRows* findings() { return &rows_; }
    QString worst() const { return worst_; }
    QString worstFirst() const { return worstFirst_; }
    QString worstSecond() const { return worstSecond_; }
    bool serious() const { return serious_; }
    bool trying() const { return !tried_.isEmpty(); }
    QString tried() const { return tried_; }
    QString before() const { return before_; }
    QString after() const { return after_; }

signals:
    void changed();
    void findingsChanged();

private:
    void refresh();
    void begin(const QString& what, bastewright::Session next);
    QString figures() const;

    JobEditor* editor_;
    PlanPresenter* plan_;
    std::vector<std::vector<bastewright::Remedy>> cures_; ///< by finding as listed
    TableRows rows_;
    QString worst_, worstFirst_, worstSecond_;
    bool serious_ = false;
    QString tried_, before_, after_;
    bastewright::Session triedSession_;
};
