#pragma once

#include "view/plan/plan_presenter.h"

/// Which pass and which zone the planning screen looks at, and what it says of them.
class PassPresenter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(int number READ number WRITE setNumber NOTIFY changed)
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(QString zone READ zone WRITE setZone NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString steps READ steps NOTIFY changed)
    Q_PROPERTY(QString zoneTitle READ zoneTitle NOTIFY changed)
    Q_PROPERTY(QString zoneText READ zoneText NOTIFY changed)
    Q_PROPERTY(TableRows* passes READ passes CONSTANT)

public:
    explicit PassPresenter(PlanPresenter* plan, QObject* parent = nullptr);

    int number() const { return number_; }
    /// Outside 1…count it is moved to the nearest.
    void setNumber(int number);
    int count() const;
    QString zone() const { return zone_; }
    /// Looks at a zone, and at the pass it belongs to; empty for none.
    void setZone(const QString& id);
    /// The next zone in reading order, for keys; starts at the first.
    Q_INVOKABLE void stepZone(int by);

    QString title() const;
    QString steps() const;
    QString zoneTitle() const;
    QString zoneText() const;
    TableRows* passes() { return &passes_; }

signals:
    void changed();

private:
    void refresh();
    const bastewright::Pass* pass() const;
    const bastewright::Zone* zoneInHand() const;

    PlanPresenter* plan_;
    int number_ = 1;
    QString zone_;
    TableRows passes_;
};
