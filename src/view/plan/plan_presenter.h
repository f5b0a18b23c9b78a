#pragma once

#include "view/base/planned.h"
#include "view/base/table_rows.h"

#include <QObject>
#include <QtQmlIntegration>

/// The plan as a whole, as the planning screen tells it: its headline and its lists.
class PlanPresenter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(bool planned READ isPlanned NOTIFY changed)
    Q_PROPERTY(bool good READ good NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(PlannedQuilt quilt READ quilt NOTIFY changed)
    Q_PROPERTY(int quiltIndex READ quiltIndex WRITE setQuiltIndex NOTIFY changed)
    Q_PROPERTY(QString passesText READ passesText NOTIFY changed)
    Q_PROPERTY(QString pointsText READ pointsText NOTIFY changed)
    Q_PROPERTY(QString spanText READ spanText NOTIFY changed)
    /// The middle of the simulated afternoons, and nine in ten of them: "15:07", "14:40–15:49".
    Q_PROPERTY(QString finishText READ finishText NOTIFY changed)
    Q_PROPERTY(QString rangeText READ rangeText NOTIFY changed)
    Q_PROPERTY(QString surfaceText READ surfaceText NOTIFY changed)
    Q_PROPERTY(QString boundText READ boundText NOTIFY changed)
    Q_PROPERTY(QString findingsText READ findingsText NOTIFY changed)
    Q_PROPERTY(QString suppliesText READ suppliesText NOTIFY changed)
    Q_PROPERTY(QString backingText READ backingText NOTIFY changed)
    Q_PROPERTY(QString battingText READ battingText NOTIFY changed)
    Q_PROPERTY(TableRows* alternatives READ alternatives CONSTANT)
    /// How many of them are not among the first few.
    Q_PROPERTY(int furtherWays READ furtherWays NOTIFY changed)
    Q_PROPERTY(TableRows* supplies READ supplies CONSTANT)
    Q_PROPERTY(TableRows* people READ people CONSTANT)
    Q_PROPERTY(TableRows* help READ help CONSTANT)

public:
    explicit PlanPresenter(QObject* parent = nullptr);

    void show(PlannedPtr planned);
    void clear();
    void setBusy(bool busy);

    const PlannedPtr& planned() const { return planned_; }
    bool isPlanned() const { return planned_ != nullptr; }
    /// When it is over, from the start: the middle of the simulated afternoons, as predicted where
    /// none were simulated; 0 without a plan.
    bastewright::Seconds finish() const;
    /// True where nothing in the plan, the checks included, forbids starting.
    bool good() const;
    bool busy() const { return busy_; }
    PlannedQuilt quilt() const { return {planned_, quilt_}; }
    int quiltIndex() const { return quilt_; }
    void setQuiltIndex(int index);

    QString passesText() const;
    QString pointsText() const;
    QString spanText() const;
    QString finishText() const;
    QString rangeText() const;
    QString surfaceText() const;
    QString boundText() const;
    QString findingsText() const;
    QString suppliesText() const;
    QString backingText() const;
    QString battingText() const;

    int furtherWays() const;
    TableRows* alternatives() { return &alternatives_; }
    TableRows* supplies() { return &supplies_; }
    TableRows* people() { return &people_; }
    TableRows* help() { return &help_; }

signals:
    void changed();
    void busyChanged();

private:
    PlannedPtr planned_;
    int quilt_ = 0;
    bool busy_ = false;
    TableRows alternatives_, supplies_, people_, help_;
};
