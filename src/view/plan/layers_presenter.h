#pragma once

#include "view/base/table_rows.h"
#include "view/edit/job_editor.h"
#include "view/plan/plan_presenter.h"

#include <QObject>
#include <QtQmlIntegration>

#include <vector>

/// How backing and batting of the quilt in hand are made, and whether they reach: every way to
/// piece the backing with its price, what is left over, the spare in every pass. A way can be
/// looked at without being chosen. Follows the newest plan.
class LayersPresenter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(TableRows* choices READ choices CONSTANT)
    Q_PROPERTY(TableRows* battingChoices READ battingChoices CONSTANT)
    Q_PROPERTY(TableRows* spare READ spare CONSTANT)
    /// The row of `choices` whose drawings are shown.
    Q_PROPERTY(int shown READ shown WRITE setShown NOTIFY changed)
    Q_PROPERTY(bool previewing READ previewing NOTIFY changed)
    Q_PROPERTY(int cloths READ cloths NOTIFY changed)
    Q_PROPERTY(bool hasBacking READ hasBacking NOTIFY changed)
    /// What to buy for the backing: "Buy 5⅜ yd".
    Q_PROPERTY(QString buyText READ buyText NOTIFY changed)
    Q_PROPERTY(QString backingText READ backingText NOTIFY changed)
    Q_PROPERTY(QString savingText READ savingText NOTIFY changed)
    Q_PROPERTY(QString battingText READ battingText NOTIFY changed)
    Q_PROPERTY(QString spareText READ spareText NOTIFY changed)

public:
    LayersPresenter(PlanPresenter* plan, JobEditor* editor, QObject* parent = nullptr);

    /// Changes the job so that the planner takes this way. Returns a sentence where it cannot.
    Q_INVOKABLE QString take(int row);

    /// The same for a way to buy the batting.
    Q_INVOKABLE QString takeBatting(int row);

    /// What a length of cloth is called, and how wide it is.
    Q_INVOKABLE QString clothName(int cloth) const;

    PlannedQuilt quilt() const { return plan_->quilt(); }
    /// The way that is shown; nothing where the backing is not pieced here.
    const bastewright::BackingPlan* backing() const;

    TableRows* choices() { return &choices_; }
    TableRows* battingChoices() { return &battingChoices_; }
    TableRows* spare() { return &spare_; }
    int shown() const { return shown_; }
    void setShown(int row);
    bool previewing() const;
    int cloths() const;
    bool hasBacking() const { return backing() != nullptr; }
    QString buyText() const;
    QString backingText() const;
    QString savingText() const;
    QString battingText() const;
    QString spareText() const;

signals:
    void changed();

private:
    void refresh();
    /// Laid out, in the order of the plan's alternatives.
    const std::vector<bastewright::BackingPlan>& ways() const;
    /// The job changed so that it asks for a way; the job itself where nothing carries the choice.
    bastewright::Job asking(std::size_t way) const;
    bool canTake(std::size_t way) const;

    PlanPresenter* plan_;
    JobEditor* editor_;
    TableRows choices_, battingChoices_, spare_;
    int shown_ = -1;
    PlannedQuilt looked_; ///< what all of this is about
};
