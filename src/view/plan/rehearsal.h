#pragma once

#include "session/table_scene.h"
#include "view/plan/plan_presenter.h"

#include <QElapsedTimer>
#include <QTimer>

#include <optional>

/// The whole session played through beforehand: the moment looked at, its words, and the clock that
/// moves it. An afternoon passes in a minute.
class Rehearsal : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    Q_PROPERTY(qreal moment READ moment WRITE setMoment NOTIFY moved) ///< seconds from the start
    Q_PROPERTY(qreal span READ span NOTIFY changed)
    Q_PROPERTY(bool playing READ playing WRITE setPlaying NOTIFY changed)
    Q_PROPERTY(QString clock READ clock NOTIFY moved)
    Q_PROPERTY(QString passText READ passText NOTIFY moved)
    /// "Ada closes C4; Bo and Cai slide the quilt 24 in towards the head."
    Q_PROPERTY(QString caption READ caption NOTIFY moved)
    Q_PROPERTY(QList<qreal> passes READ passes NOTIFY changed) ///< when each begins, seconds

public:
    explicit Rehearsal(PlanPresenter* plan, QObject* parent = nullptr);

    qreal moment() const { return moment_; }
    void setMoment(qreal seconds);
    qreal span() const;
    bool playing() const { return timer_.isActive(); }
    void setPlaying(bool playing);
    QString clock() const;
    QString passText() const;
    QString caption() const;
    QList<qreal> passes() const;

    /// To the next, or with -1 the last, moment at which something begins.
    Q_INVOKABLE void step(int by);

signals:
    void moved();
    void changed();

private:
    void refresh();
    void tick();

    PlanPresenter* plan_;
    PlannedPtr shown_;
    std::optional<bastewright::TableScenes> scenes_;
    qreal moment_ = 0;
    QTimer timer_;
    QElapsedTimer since_;
};
