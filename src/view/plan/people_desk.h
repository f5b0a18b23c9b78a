#pragma once

#include "view/base/table_rows.h"
#include "view/edit/job_editor.h"
#include "view/plan/plan_presenter.h"

#include <QObject>
#include <QtQmlIntegration>

/// The people of the session as cards: who they are, when they are there, what they can do. Hours
/// are minutes of the day, moved in steps of a quarter of an hour; at either end of the day shown
/// somebody comes with the beginning or stays to the end.
class PeopleDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// letter, mark, name, hours (words), from, until (minutes), lifts, irons, sits, pins, breath
    Q_PROPERTY(TableRows* people READ people CONSTANT)
    Q_PROPERTY(int step READ step CONSTANT) ///< of hours that are dragged, minutes
    Q_PROPERTY(int dayFrom READ dayFrom NOTIFY changed)
    Q_PROPERTY(int dayUntil READ dayUntil NOTIFY changed)
    /// When the plan finishes, minutes; -1 without one.
    Q_PROPERTY(int finish READ finish NOTIFY changed)
    Q_PROPERTY(QString finishText READ finishText NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(bool full READ full NOTIFY changed)
    /// Some quilt is sprayed, so that it counts who has trouble breathing.
    Q_PROPERTY(bool sprays READ sprays NOTIFY changed)

public:
    static constexpr int kStep = 15; ///< minutes

    PeopleDesk(JobEditor* editor, PlanPresenter* plan, QObject* parent = nullptr);

    /// `sign`: "lifts", "irons", "sits", "pins" or "breath".
    Q_INVOKABLE void flip(int person, const QString& sign);
    Q_INVOKABLE void setHours(int person, int from, int until);
    /// One name, or several with commas between; without any a numbered one.
    Q_INVOKABLE bool add(const QString& names);
    Q_INVOKABLE void remove(int person);
    Q_INVOKABLE QString clock(int minutes) const;
    Q_INVOKABLE QString nameOf(int person) const; ///< empty for nobody

    TableRows* people() { return &people_; }
    int step() const { return kStep; }
    int dayFrom() const { return dayFrom_; }
    int dayUntil() const { return dayUntil_; }
    int finish() const { return finish_; }
    QString finishText() const;
    QString problem() const { return problem_; }
    bool full() const;
    bool sprays() const;

signals:
    void changed();

private:
    void refresh();
    bool apply(const QString& what, bastewright::Session next);

    JobEditor* editor_;
    PlanPresenter* plan_;
    TableRows people_;
    int dayFrom_ = 0, dayUntil_ = 0, finish_ = -1;
    QString problem_;
};
